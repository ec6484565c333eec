package calc

import (
	"standingbeam/calc/stability"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// footMoment is the service and the factored moment that a fixed foot hands to
// the footing; it presses the toe.
func (s *StageResult) footMoment() (m, mu units.MomentPerLength) {
	r := s.Reactions[0]
	m, mu = r.ServiceMoment, r.FactoredMoment
	if m < 0 {
		m, mu = -m, -mu
	}
	return m, mu
}

// stripBody is the footing of a wall held at its top: the weights with factor
// dead (live loads with live), pressing evenly, and the moment m of a fixed
// foot. The wall, held at top and foot, keeps the footing level.
func (w *wall) stripBody(dead, live float64, m units.MomentPerLength) stability.Body {
	b := w.body(ground{a: w.GradeA, b: w.GradeB, state: w.heldState(), low: 1, q: w.Surcharge, onHeel: true,
		dead: w.Axial.Dead, live: w.Axial.Live})
	var n float64
	for _, x := range b.Weights {
		f := dead
		if x.Name == liveLoad || x.Name == onHeel {
			f = live
		}
		n += f * float64(x.Force)
	}
	width := w.Footing.Width
	out := stability.Body{Width: width, Weights: []stability.Weight{{Name: "all", Force: units.ForcePerLength(n), Arm: width / 2}}}
	if m > 0 {
		// A couple: a force at one inch.
		out.Drive = []stability.Push{{Name: "foot", Force: units.ForcePerLength(m), Height: 1 * units.Inch}}
	}
	return out
}

// checkStripBase asks for the bearing of a held wall's footing, and for what
// its longer projection carries.
func (w *wall) checkStripBase(s *StageResult) {
	if !w.Footing.Given {
		return
	}
	if w.checkStripBearing(s) {
		_, mu := s.footMoment()
		w.stripToe(max(w.Footing.Toe, w.heel()), mu)
	}
}

// checkStripBearing asks for the bearing of a held wall's footing at service
// loads, and reports whether the load stays on it.
func (w *wall) checkStripBearing(s *StageResult) bool {
	w.assume("bearing-even")
	m, _ := s.footMoment()
	c := chain()
	w.recordStrip(c, 1, 1)
	w.recordFootMoment(c, m, false)
	r := stability.Check(w.stripBody(1, 1, m), &stability.Workings{Resultant: c, Bearing: c})
	if r.Overturned {
		w.failed("bearing", s.Name, units.Pressure, "1806.2", note("resultant-outside"), by(w.ibc.Name), service)
		return false
	}
	w.ask("bearing", s.Name, units.Of(r.BearingMax, units.Pressure), units.Of(w.Footing.Bearing, units.Pressure), "1806.2", by(w.ibc.Name), service, steps(c))
	return true
}

// stripToe designs a projection of length l for the factored pressure under it,
// the greater of 1.4 D and 1.2 D + 1.6 L, with 1.6 of a fixed foot's moment.
func (w *wall) stripToe(l units.Length, mu units.MomentPerLength) {
	if l <= 0 {
		return
	}
	worst, dead, live := stability.Check(w.stripBody(w.lf.Dead, w.lf.Live, mu), nil), w.lf.Dead, w.lf.Live
	if r := stability.Check(w.stripBody(w.lf.DeadOnly, 0, mu), nil); r.BearingMax > worst.BearingMax {
		worst, dead, live = r, w.lf.DeadOnly, 0
	}
	toe := w.toeUnder(worst, l, 0)
	m, _ := toe.at(0)
	c := chain()
	w.recordStripToe(c, stripToe{dead: dead, live: live, foot: mu, bearing: worst, length: l}, m)
	w.projection(cantilever{id: "toe", stage: Finished, role: ToeBar, length: l, moment: m, steps: c,
		shearSteps: func(from units.Length) *working.Chain {
			return w.stripToeShear(stripToe{dead: dead, live: live, foot: mu, bearing: worst, length: l}, from)
		}, under: []factoredBody{{toe: toe}}}, &w.toeBars)
}
