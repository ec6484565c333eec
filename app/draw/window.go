package draw

import (
	"math"

	"standingbeam/calc"
)

// frameNew chooses the window. The scale follows from the height; where the
// footing is too wide for it, from the width.
func (p *picture) frameNew() {
	show := windowFor(p.h)
	z := p.zones()
	top, bottom := 14.0, 0.0
	s := p.o.Height / (show + p.above + p.foot)
	for range 3 {
		top = math.Max(14, 44-p.above*s)
		if p.above == 0 {
			top = column + 4
		}
		if p.in.Condition == calc.TiedToSlab {
			top = math.Max(top, 42) // the tie's force is written over the slab
		}
		_, bottom = p.below(s)
		s = (p.o.Height - top - bottom) / (show + p.above)
	}
	s = math.Min(s, 0.16*p.o.Width/p.t)
	for range 60 {
		if p.across(s, z) {
			break
		}
		s *= 0.95
	}
	line, bottom := p.below(s)
	spare := math.Max(0, p.o.Height-top-bottom-(show+p.above)*s)
	p.window.Scale, p.window.Show = s, p.o.Show
	p.window.FootTop = p.o.Height - bottom - 0.3*spare
	p.window.Line = p.window.FootTop + line
}

// below returns how far under the footing's top its dimension line lies, and
// the room that is kept under it in all.
func (p *picture) below(s float64) (line, room float64) {
	d := p.foot * s
	if p.st != nil && p.st.Stability != nil {
		d += bearing + 20
	}
	if !p.real || p.low() {
		return d + 12, math.Max(d+24, 50)
	}
	line = math.Max(target, d+17)
	if p.held {
		// Between footing and dimension the foot's reaction is written.
		line = math.Max(line, p.foot*s/2+60)
	}
	return line, line + target/2
}

// zones are the shares of the picture's width.
type zones struct {
	left, right   float64 // columns of dimension lines
	extra         float64 // slab to be seen beyond the push
	push          float64
	curveA        float64
	curveB        float64
	gutter        float64 // room for labels on the open side
	leftW, rightW float64
}

func (p *picture) zones() zones {
	z := zones{left: 2 * target, push: 52, gutter: 72}
	if p.in.Water.Standing {
		z.left += 36
	}
	if p.twoGrounds() {
		z.right, z.gutter = target, 26
	}
	if p.in.Condition == calc.TiedToSlab {
		z.extra, z.gutter = 44, 56
	}
	needA, needB := p.curve.need(calc.FaceA), p.curve.need(calc.FaceB)
	if needA+needB == 0 {
		needB = 1
	}
	z.curveA, z.curveB = 126*needA/(needA+needB), 126*needB/(needA+needB)
	if z.curveA > 60 {
		z.curveA -= 30
		z.gutter += 66
	}
	z.leftW = z.extra + z.push + z.curveA
	z.rightW = z.curveB + z.gutter
	return z
}

// across sets where the wall stands at scale s and the zones beside it, and
// reports whether everything has its room.
func (p *picture) across(s float64, z zones) bool {
	w, wall := p.o.Width, p.t*s
	flex := w - z.left - z.right - wall
	unit := flex / (z.leftW + z.rightW)
	if spare := z.gutter * (unit - 1.2); spare > 0 {
		// On a wide sheet the curve gets what labels do not need.
		z.rightW -= spare / unit
		z.gutter -= spare / unit
		unit = flex / (z.leftW + z.rightW)
	}
	if unit <= 0.2 {
		return false
	}
	want := z.left + z.leftW*unit
	const least = 0.62 // of a zone's share
	lo := math.Max(z.left+least*z.leftW*unit, p.edge()+p.roomy(p.heel)*s)
	hi := math.Min(w-z.right-wall-least*z.rightW*unit, w-p.edge()-wall-p.roomy(p.toe)*s)
	a := math.Min(math.Max(want, lo), hi)
	leftUnit := math.Min((a-z.left)/z.leftW, 1.6*unit)
	rightUnit := math.Min((w-z.right-wall-a)/z.rightW, 1.6*unit)
	p.window.FaceA = a
	p.window.LeftOf, p.window.RightOf = math.Min(z.curveA*leftUnit, 300), math.Min(z.curveB*rightUnit, 300)
	p.window.Reach = math.Min(z.push*leftUnit, 110) - 6
	p.window.Back = 0
	if z.curveA > 20 {
		p.window.Back = p.window.LeftOf + 6
		// The push acts on the plane at the back of the heel: drawn there where
		// that leaves the curve its room.
		if heel := p.heel * s; heel > p.window.Back-24 && heel < p.window.Back+24 {
			p.window.Back, p.window.LeftOf = heel, math.Min(p.window.LeftOf, heel-5)
		}
	}
	return lo <= hi+1e-9
}
