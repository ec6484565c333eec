package draw

import (
	"math"

	"standingbeam/calc"
)

// scales sets the pixels per unit of the curve and of the push. Those of a
// held window stay while everything fits.
func (p *picture) scales(held Window) {
	w := &p.window
	k := math.Inf(1)
	for _, f := range []calc.Face{calc.FaceA, calc.FaceB} {
		room := w.RightOf
		if f == calc.FaceA {
			room = w.LeftOf
		}
		if n := p.curve.need(f); n > 0 {
			if p.curve.show == Deflected {
				k = math.Min(k, 0.6*room/n)
			} else {
				k = math.Min(k, room/step(n))
			}
			if held.Curve > 0 && n*held.Curve > room+8 {
				held.Curve = 0
			}
		}
	}
	if w.Curve = k; math.IsInf(k, 1) {
		w.Curve = 0
	}
	if held.Curve > 0 && p.curve.show != Deflected {
		w.Curve = held.Curve
	}
	most := math.Max(p.push[0].most, p.push[1].most)
	w.Push = w.Reach / step(most)
	if held.Push > 0 && most*held.Push <= w.Reach+8 {
		w.Push = held.Push
	}
}

// step returns the least of the preferred numbers (a tenth of a decade apart)
// that is not below v: scales jump by steps, so that a growing curve is seen
// to grow.
func step(v float64) float64 {
	if !(v > 0) {
		return 1
	}
	n := math.Ceil(math.Log10(v)*10 - 1e-6)
	return math.Pow(10, n/10)
}
