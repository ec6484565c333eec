package stability

import (
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// record writes the sum of a check that was done.
func (w *Workings) record(b *Body, r *Result) {
	if !w.Overturning.On() && !w.Sliding.On() && !w.Resultant.On() && !w.Bearing.On() {
		return
	}
	list := itemize(b)
	var turning, weight working.Chain // what two of the chains begin with
	if w.Overturning.On() || w.Resultant.On() {
		moments(&turning, list, r)
	}
	if w.Sliding.On() || w.Resultant.On() {
		normal(&weight, list, r)
	}
	w.overturning(turning.Steps, r)
	w.sliding(weight.Steps, list, b, r)
	w.resultant(turning.Steps, weight.Steps, b, r)
	w.bearing(b, r)
}

// moments writes Mr and Mo.
func moments(c *working.Chain, list items, r *Result) {
	mr := newSum(2 * (len(list.weights) + len(list.resist)))
	mr.moments(list.weights)
	mr.moments(list.resist)
	mr.to(c, "Mr", units.Of(r.Righting, units.LineMoment))
	mo := newSum(2 * (len(list.drive) + len(list.uplift)))
	mo.moments(list.drive)
	mo.moments(list.uplift)
	mo.to(c, "Mo", units.Of(r.Overturning, units.LineMoment))
}

// safety writes FS, but for a factor that is a bound.
func safety(c *working.Chain, formula string, fs float64, with ...working.Term) {
	if fs > 0 && fs < Unlimited {
		c.Add("FS", formula, units.Quantity{Base: fs}, "", with...)
	}
}

func (w *Workings) overturning(turning []working.Step, r *Result) {
	c := w.Overturning
	if !c.On() {
		return
	}
	c.Steps = append(c.Steps, turning...)
	safety(c, "Mr/Mo", r.OverturningFactor,
		working.T("Mr", r.Righting, units.LineMoment), working.T("Mo", r.Overturning, units.LineMoment))
}

// normal writes N.
func normal(c *working.Chain, list items, r *Result) {
	n := newSum(len(list.weights) + len(list.uplift))
	n.forces("+", list.weights)
	n.forces("−", list.uplift)
	n.to(c, "N", units.Of(r.Normal, units.LineForce))
}

func (w *Workings) sliding(weight []working.Step, list items, b *Body, r *Result) {
	c := w.Sliding
	if !c.On() {
		return
	}
	c.Steps = append(c.Steps, weight...)
	h, f := newSum(len(list.drive)), newSum(len(list.resist)+4)
	h.forces("+", list.drive)
	h.to(c, "H", units.Of(r.Driving, units.LineForce))
	if r.Normal > 0 {
		if b.MostFriction > 0 {
			rub := working.T("Fμ", b.friction(r), units.LineForce)
			c.Add("Fμ", "min(μ N; ca Lc)", rub.Value, "IBC 2021 1806.2", working.Number("μ", b.Friction), working.T("N", r.Normal, units.LineForce),
				working.T("ca", b.MostFriction, units.Pressure), working.T("Lc", r.Contact, units.Level))
			f.product("+", rub)
		} else {
			f.product("+", working.Number("μ", b.Friction), working.T("N", r.Normal, units.LineForce))
		}
		if b.Adhesion > 0 {
			f.product("+", working.T("A", b.Adhesion, units.LineForce))
		}
	}
	if b.Passive > 0 {
		f.product("+", working.T("Pp", b.Passive, units.LineForce))
	}
	f.forces("+", list.resist)
	f.to(c, "F", units.Of(r.SlidingResistance, units.LineForce))
	safety(c, "F/H", r.SlidingFactor,
		working.T("F", r.SlidingResistance, units.LineForce), working.T("H", r.Driving, units.LineForce))
}

// place writes x and e, and not twice where one chain holds both parts.
func place(c *working.Chain, b *Body, r *Result) {
	if n := len(c.Steps); n > 0 && c.Steps[n-1].Symbol == "e" {
		return
	}
	c.Add("x", "(Mr − Mo)/N", units.Of(r.Resultant, units.Level), "",
		working.T("Mr", r.Righting, units.LineMoment), working.T("Mo", r.Overturning, units.LineMoment),
		working.T("N", r.Normal, units.LineForce))
	c.Add("e", "B/2 − x", units.Of(r.Eccentricity, units.Level), "",
		working.T("B", b.Width, units.Level), working.T("x", r.Resultant, units.Level))
}

func (w *Workings) resultant(turning, weight []working.Step, b *Body, r *Result) {
	c := w.Resultant
	if !c.On() {
		return
	}
	c.Steps = append(append(c.Steps, turning...), weight...)
	if r.Normal > 0 {
		place(c, b, r)
	}
}

func (w *Workings) bearing(b *Body, r *Result) {
	c := w.Bearing
	if !c.On() || !(r.Normal > 0) {
		return
	}
	place(c, b, r)
	if r.Overturned {
		return
	}
	n := working.T("N", r.Normal, units.LineForce)
	width := working.T("B", b.Width, units.Level)
	if r.MiddleThird {
		e := working.T("e", r.Eccentricity, units.Level)
		c.Add("q,toe", "N/B (1 + 6 e/B)", units.Of(r.BearingToe, units.Pressure), "", n, width, e)
		c.Add("q,heel", "N/B (1 − 6 e/B)", units.Of(r.BearingHeel, units.Pressure), "", n, width, e)
		c.Add("q", "max(q,toe; q,heel)", units.Of(r.BearingMax, units.Pressure), "",
			working.T("q,toe", r.BearingToe, units.Pressure), working.T("q,heel", r.BearingHeel, units.Pressure))
		return
	}
	x := working.T("x", r.Resultant, units.Level)
	if r.Eccentricity > 0 {
		c.Add("Lc", "3 x", units.Of(r.Contact, units.Level), "", x)
	} else {
		c.Add("Lc", "3 (B − x)", units.Of(r.Contact, units.Level), "", width, x)
	}
	if r.BearingMax < Unlimited {
		c.Add("q", "2 N/Lc", units.Of(r.BearingMax, units.Pressure), "", n, working.T("Lc", r.Contact, units.Level))
	}
}
