package statics

import "standingbeam/calc/units"

// sway fills slope and deflection of the segments: the moments integrated up
// from the foot, and then the strip moved and turned onto its base.
func (s *Strip) sway(segs []Segment, b base, hs []hold) {
	var th, u float64
	for i := range segs {
		g := &segs[i]
		g.Slope, g.Deflection = th, units.Length(u)
		l := g.length()
		th, u = g.slope(l, s.EI), g.deflection(l, s.EI)
	}
	var turn, move float64
	gp, tp := locate(segs, b.p)
	if b.fixed {
		turn = -gp.slope(tp, s.EI)
		move = -gp.deflection(tp, s.EI) - turn*b.p
	} else {
		gq, tq := locate(segs, b.q)
		up := hs[0].force*hs[0].give/s.EI - gp.deflection(tp, s.EI)
		uq := hs[1].force*hs[1].give/s.EI - gq.deflection(tq, s.EI)
		turn = (uq - up) / (b.q - b.p)
		move = up - turn*b.p
	}
	for i := range segs {
		segs[i].Slope += turn
		segs[i].Deflection += units.Length(move + turn*segs[i].From.Inches())
	}
}
