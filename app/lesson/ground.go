package lesson

import "standingbeam/calc"

// ground draws the earth: up to level a behind face A, up to level b before
// face B, and everything below the footing's top. It follows the bent wall.
func (w *stand) ground(a, b float64) {
	s := w.s
	s.earth(box(-2, w.y, s.w+4, s.h-w.y+2))
	if a > 0 {
		s.earth(w.bank(a, calc.FaceA))
	}
	if b > 0 {
		s.earth(w.bank(b, calc.FaceB))
	}
	w.surface(a, calc.FaceA)
	w.surface(b, calc.FaceB)
}

// bank is the outline of the earth beside one face.
func (w *stand) bank(level float64, f calc.Face) *track {
	end := -2.0
	if f == calc.FaceB {
		end = w.s.w + 2
	}
	face := w.face(level, f)
	t := new(track).move(end, w.y).to(face[0].x, w.y).points(face, false)
	return t.to(end, w.px(level)).close()
}

// surface is the line of the ground beside one face.
func (w *stand) surface(level float64, f calc.Face) {
	all := w.face(level+0.001, f)
	x, end := all[len(all)-1].x, -2.0
	if f == calc.FaceB {
		end = w.s.w + 2
	}
	w.s.line("surface", x, w.px(level), end, w.px(level))
}

// water draws standing water behind face A up to a level: its body, its
// triangle and its waves.
func (w *stand) water(level float64) {
	if level <= 0 {
		return
	}
	s, y := w.s, w.px(level)
	s.path("water body", w.bank(level, calc.FaceA))
	s.line("water level", -2, y, w.x+w.bend.u(level), y)
	x := 20.0
	s.path("water tip", new(track).move(x-8, y-13).to(x+8, y-13).to(x, y-1).close())
	s.path("water wave", new(track).move(x-8, y+4).to(x+8, y+4).move(x-5, y+8).to(x+5, y+8))
	s.off(x-9, y-14, 18, 24)
}

// slabAtFoot draws a slab on side B on the footing.
func (w *stand) slabAtFoot(there bool) {
	left := w.x + w.t*w.k + 1
	if there {
		w.s.block(left, w.px(4), w.s.w-left+3, 4*w.k)
		return
	}
	w.s.rect("unbuilt", left, w.px(4), w.s.w-left+3, 4*w.k)
}

// Depth of a house floor, in inches: a 2×10 joist with its boards and sill
// (nominal sizes of the trade, drawn to scale).
const floorDepth = 11.5

// floor draws a floor that lies on the wall's top, over side B.
func (w *stand) floor(there bool) {
	s, y := w.s, w.px(w.h+floorDepth)
	x := w.x + 2
	if !there {
		s.rect("unbuilt", x, y, s.w-x+3, floorDepth*w.k)
		return
	}
	s.rect("wood", x, y, s.w-x+3, floorDepth*w.k)
	s.line("grain", x, y+1.2*w.k, s.w+2, y+1.2*w.k)
	s.line("grain", x, w.px(w.h+1.5), s.w+2, w.px(w.h+1.5))
	s.off(x, y, s.w-x, floorDepth*w.k)
}

// floorAt is the level at which the floor pushes.
func (w *stand) floorAt() float64 { return w.h + floorDepth/2 }
