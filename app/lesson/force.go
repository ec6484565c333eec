package lesson

import (
	"math"

	"standingbeam/calc"
)

// pressure is what pushes on one side at a level, at service loads, in psi.
func pressure(st *calc.StageResult, side byte, level float64) float64 {
	sum := 0.0
	for i := range st.Pushes {
		p := &st.Pushes[i]
		from, to := p.From.Inches(), p.To.Inches()
		if p.Side != side || level > from || level < to || from <= to || level <= to && to > 0 {
			continue // where one layer ends and the next begins, only the lower counts
		}
		sum += float64(p.Bottom) + float64(p.Top-p.Bottom)*(level-to)/(from-to)
	}
	return sum
}

// push draws what pushes on one side up to a level, px pixels for each psi:
// the figure of the pressure and arrows that end on the wall.
func (w *stand) push(st *calc.StageResult, side byte, top, px float64) {
	w.pushBody(st, side, top, px)
	w.pushArrows(st, side, top, px)
}

// toward is the face that a side pushes on, and where it pushes from.
func toward(side byte) (f calc.Face, dir float64) {
	if side == 'b' {
		return calc.FaceB, 1
	}
	return calc.FaceA, -1
}

// figure is the outline of the pressure on one side.
func (w *stand) figure(st *calc.StageResult, side byte, top, px float64) *track {
	f, dir := toward(side)
	face := w.face(top, f)
	t := new(track).points(face, true)
	for i := len(face) - 1; i >= 0; i-- {
		level := top * float64(i) / float64(len(face)-1)
		t.to(face[i].x+dir*px*pressure(st, side, math.Min(level, top-1e-6)), face[i].y)
	}
	return t.close()
}

func (w *stand) pushBody(st *calc.StageResult, side byte, top, px float64) {
	if top < 1 {
		return
	}
	w.s.path("push body", w.figure(st, side, top, px))
	reach := px * pressure(st, side, 1e-6)
	x := w.x - reach
	if side == 'b' {
		x = w.x + w.t*w.k
	}
	w.s.off(x, w.px(top*0.45), reach, w.y-w.px(top*0.45))
}

func (w *stand) pushArrows(st *calc.StageResult, side byte, top, px float64) {
	f, dir := toward(side)
	gap := math.Max(16, w.k*top/8)
	for y := w.px(0) - gap*0.35; y > w.px(top)+gap*0.3; y -= gap {
		level := (w.y - y) / w.k
		length := px * pressure(st, side, level)
		a, b := w.pair(level, -1)
		if f == calc.FaceB {
			a = b
		}
		w.s.arrow("push", a.x+dir*length, y, a.x+dir, y, 8)
	}
}
