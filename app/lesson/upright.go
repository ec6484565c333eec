package lesson

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// room says how a wall is placed in its picture.
type room struct {
	tallest units.Length // what must fit, so that a taller wall does not shrink the picture
	above   float64      // inches kept over it
	left    float64      // share of the width where face A stands
}

// upright places a wall in the picture.
func (k *kit) upright(w *calc.Input, r room) *stand {
	st := &stand{s: k.scene, h: w.Height.Inches(), t: w.Thickness.Inches(), foot: w.Footing.Thickness.Inches(), bend: straight()}
	st.toe = (w.Footing.Width - w.Thickness).Inches() / 2
	if !w.Footing.NoToe {
		st.toe = w.Footing.Toe.Inches()
	}
	st.heel = (w.Footing.Width - w.Thickness).Inches() - st.toe
	const top, bottom = 8.0, 10.0
	st.k = (k.h - top - bottom) / (math.Max(r.tallest.Inches(), st.h) + r.above + st.foot)
	st.y = k.h - bottom - st.foot*st.k
	st.x = r.left * k.w
	return st
}

// room beside face B, in px, up to the right edge less a margin.
func (w *stand) roomB(margin float64) float64 {
	return math.Max(10, w.s.w-margin-w.x-w.t*w.k)
}

// faceX are the lines of the faces of the wall before it bends.
func (w *stand) faceX() (a, b float64) { return w.x, w.x + w.t*w.k }

// letters marks the places that a question asks about.
func (w *stand) letters(at ...spot) {
	for i, p := range at {
		w.s.circle("pin", p.x, p.y, 13)
		w.s.letter("pin-letter", string(rune('A'+i)), p.x, p.y)
		w.s.off(p.x-13, p.y-13, 26, 26)
	}
}
