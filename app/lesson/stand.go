package lesson

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

// stand is a wall as it stands in a picture: where, how large, and how it is
// bent. Levels are inches above the footing's top; everything that ends in px
// is CSS pixels.
type stand struct {
	s         *scene
	x, y, k   float64 // face A at the footing's top, pixels per inch
	h, t      float64 // height and thickness, inches
	toe, heel float64 // of the footing, inches
	foot      float64 // its thickness, inches
	shift     float64 // px by which the whole has slid toward B
	bend      bend
}

// bend is how far the whole face has moved toward B at each level, in px. The
// whole face is the one that is squeezed: at a break the wall turns about it,
// and the other face gapes.
type bend struct {
	u      func(level float64) float64
	breaks []float64 // levels at which the wall has come apart
	whole  calc.Face
}

// straight is no bend at all.
func straight() bend { return bend{u: func(float64) float64 { return 0 }, whole: calc.FaceA} }

// elastic is the bend of a diagram, px pixels for each inch that the strip
// moves.
func elastic(d *statics.Diagram, px float64) bend {
	return bend{u: func(y float64) float64 { return px * d.Deflection(units.Length(y)).Inches() }, whole: calc.FaceA}
}

// broken adds a break at a level of a wall that is held at 0 and at top: both
// halves turn, and stand off by px there.
func (b bend) broken(at, top, px float64) bend {
	if px <= 0 || at <= 0 || at >= top {
		return b
	}
	u := b.u
	b.u = func(y float64) float64 {
		if y <= at {
			return u(y) + px*y/at
		}
		return u(y) + px*(top-y)/(top-at)
	}
	b.breaks = append(append([]float64{}, b.breaks...), at)
	return b
}

// leaning adds a turn about the foot, px pixels for each inch of height. The
// wall then stands on its edge at face B.
func (b bend) leaning(px float64) bend {
	u := b.u
	b.u = func(y float64) float64 { return u(y) + px*y }
	b.whole = calc.FaceB
	return b
}

// px is where a level lies.
func (w *stand) px(level float64) float64 { return w.y - level*w.k }

// slope is how far the wall leans at a level, seen from one side of it.
func (w *stand) slope(level, side float64) float64 {
	const e = 0.05
	a, b := level, level+side*e
	return (w.bend.u(b) - w.bend.u(a)) / ((b - a) * w.k)
}

// pair returns the spots of both faces at a level, seen from one side of it:
// the section stays square to the wall.
func (w *stand) pair(level, side float64) (a, b spot) {
	m := w.slope(level, side)
	n := math.Hypot(1, m)
	u, t := w.bend.u(level)+w.shift, w.t*w.k
	if w.bend.whole == calc.FaceB {
		b = spot{w.x + t + u, w.px(level)}
		return spot{b.x - t/n, b.y - t*m/n}, b
	}
	a = spot{w.x + u, w.px(level)}
	return a, spot{a.x + t/n, a.y + t*m/n}
}

// piece is a stretch of the wall that is in one, with the spots of its faces
// from the foot up.
type piece struct {
	from, to float64
	a, b     []spot
}

func (w *stand) pieces() []piece {
	ends := append(append([]float64{0}, w.bend.breaks...), w.h)
	var out []piece
	for i := 1; i < len(ends); i++ {
		p := piece{from: ends[i-1], to: ends[i]}
		n := max(3, int((p.to-p.from)*w.k/9))
		for j := 0; j <= n; j++ {
			side := 1.0
			if j == n {
				side = -1
			}
			a, b := w.pair(p.from+(p.to-p.from)*float64(j)/float64(n), side)
			p.a, p.b = append(p.a, a), append(p.b, b)
		}
		out = append(out, p)
	}
	return out
}

// faceA returns the soil side of the wall from the foot up to a level.
func (w *stand) faceA(top float64) []spot { return w.face(top, calc.FaceA) }

func (w *stand) face(top float64, f calc.Face) []spot {
	n := max(4, int(top*w.k/9))
	out := make([]spot, 0, n+1)
	for j := 0; j <= n; j++ {
		a, b := w.pair(top*float64(j)/float64(n), -1)
		if f == calc.FaceB {
			a = b
		}
		out = append(out, a)
	}
	return out
}

// draw draws the wall, and what gapes where it has come apart.
func (w *stand) draw() {
	all := w.pieces()
	for _, p := range all {
		t := new(track).points(p.a, true)
		for j := len(p.b) - 1; j >= 0; j-- {
			t.to(p.b[j].x, p.b[j].y)
		}
		w.s.concrete(t.close())
	}
	for i := 1; i < len(all); i++ {
		low, high := all[i-1], all[i]
		n := len(low.a) - 1
		w.s.path("crack", new(track).move(low.a[n].x, low.a[n].y).to(low.b[n].x, low.b[n].y).to(high.b[0].x, high.b[0].y).close())
	}
}

// footing draws the footing.
func (w *stand) footing() {
	left, right := w.x-w.heel*w.k+w.shift, w.x+(w.t+w.toe)*w.k+w.shift
	w.s.block(left, w.y, right-left, w.foot*w.k)
}
