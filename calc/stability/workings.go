package stability

import (
	"strconv"
	"strings"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// record writes the sum of a check that was done.
func (w *Workings) record(b *Body, r *Result) {
	w.overturning(b, r)
	w.sliding(b, r)
	w.resultant(b, r)
	w.bearing(b, r)
}

// sum collects the terms of a sum and its formula.
type sum struct {
	formula strings.Builder
	with    []working.Term
}

func (s *sum) add(sign, formula string, with ...working.Term) {
	if s.formula.Len() > 0 || sign == "−" {
		if s.formula.Len() > 0 {
			s.formula.WriteByte(' ')
		}
		s.formula.WriteString(sign)
		s.formula.WriteByte(' ')
	}
	s.formula.WriteString(formula)
	s.with = append(s.with, with...)
}

// symbol names entry i of a list: the letter with the entry's name below it,
// or with its number.
func symbol(letter, name string, i int) string {
	if name == "" {
		return letter + strconv.Itoa(i+1)
	}
	return letter + "_" + strings.ReplaceAll(name, " ", "_")
}

// weights adds W x of every weight.
func (s *sum) weights(letter, arm string, ws []Weight) {
	for i, v := range ws {
		p, a := symbol(letter, v.Name, i), symbol(arm, v.Name, i)
		s.add("+", p+" "+a, working.T(p, v.Force, units.LineForce), working.T(a, v.Arm, units.Level))
	}
}

// pushes adds P y of every push.
func (s *sum) pushes(letter, arm string, ps []Push) {
	for i, v := range ps {
		p, a := symbol(letter, v.Name, i), symbol(arm, v.Name, i)
		s.add("+", p+" "+a, working.T(p, v.Force, units.LineForce), working.T(a, v.Height, units.Level))
	}
}

// to writes the sum as a step; an empty one is 0.
func (s *sum) to(c *working.Chain, symbol string, value units.Quantity) {
	f := s.formula.String()
	if f == "" {
		f = "0"
	}
	c.Add(symbol, f, value, "", s.with...)
}

// moments writes Mr and Mo.
func moments(c *working.Chain, b *Body, r *Result) {
	var mr, mo sum
	mr.weights("W", "x", b.Weights)
	mr.pushes("R", "z", b.Resist)
	mr.to(c, "Mr", units.Of(r.Righting, units.LineMoment))
	mo.pushes("P", "y", b.Drive)
	mo.weights("U", "u", b.Uplift)
	mo.to(c, "Mo", units.Of(r.Overturning, units.LineMoment))
}

func (w *Workings) overturning(b *Body, r *Result) {
	c := w.Overturning
	if !c.On() {
		return
	}
	moments(c, b, r)
	if r.Overturning > 0 {
		c.Add("FS", "Mr/Mo", units.Quantity{Base: r.OverturningFactor}, "",
			working.T("Mr", r.Righting, units.LineMoment), working.T("Mo", r.Overturning, units.LineMoment))
	}
}

// normal writes N.
func normal(c *working.Chain, b *Body, r *Result) {
	var n sum
	for i, v := range b.Weights {
		p := symbol("W", v.Name, i)
		n.add("+", p, working.T(p, v.Force, units.LineForce))
	}
	for i, v := range b.Uplift {
		p := symbol("U", v.Name, i)
		n.add("−", p, working.T(p, v.Force, units.LineForce))
	}
	n.to(c, "N", units.Of(r.Normal, units.LineForce))
}

func (w *Workings) sliding(b *Body, r *Result) {
	c := w.Sliding
	if !c.On() {
		return
	}
	normal(c, b, r)
	var h, g sum
	for i, v := range b.Drive {
		p := symbol("P", v.Name, i)
		h.add("+", p, working.T(p, v.Force, units.LineForce))
	}
	h.to(c, "H", units.Of(r.Driving, units.LineForce))
	if r.Normal > 0 {
		g.add("+", "μ N", working.Number("μ", b.Friction), working.T("N", r.Normal, units.LineForce))
		if b.Adhesion > 0 {
			g.add("+", "A", working.T("A", b.Adhesion, units.LineForce))
		}
	}
	if b.Passive > 0 {
		g.add("+", "Pp", working.T("Pp", b.Passive, units.LineForce))
	}
	for i, v := range b.Resist {
		p := symbol("R", v.Name, i)
		g.add("+", p, working.T(p, v.Force, units.LineForce))
	}
	g.to(c, "F", units.Of(r.SlidingResistance, units.LineForce))
	if r.Driving > 0 {
		c.Add("FS", "F/H", units.Quantity{Base: r.SlidingFactor}, "",
			working.T("F", r.SlidingResistance, units.LineForce), working.T("H", r.Driving, units.LineForce))
	}
}

// place writes x and e.
func place(c *working.Chain, b *Body, r *Result) {
	c.Add("x", "(Mr − Mo)/N", units.Of(r.Resultant, units.Level), "",
		working.T("Mr", r.Righting, units.LineMoment), working.T("Mo", r.Overturning, units.LineMoment),
		working.T("N", r.Normal, units.LineForce))
	c.Add("e", "B/2 − x", units.Of(r.Eccentricity, units.Level), "",
		working.T("B", b.Width, units.Level), working.T("x", r.Resultant, units.Level))
}

func (w *Workings) resultant(b *Body, r *Result) {
	c := w.Resultant
	if !c.On() {
		return
	}
	moments(c, b, r)
	normal(c, b, r)
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
	e := working.T("e", r.Eccentricity, units.Level)
	if r.MiddleThird {
		c.Add("q_toe", "N/B (1 + 6 e/B)", units.Of(r.BearingToe, units.Pressure), "", n, width, e)
		c.Add("q_heel", "N/B (1 − 6 e/B)", units.Of(r.BearingHeel, units.Pressure), "", n, width, e)
		return
	}
	x := working.T("x", r.Resultant, units.Level)
	if r.Eccentricity > 0 {
		c.Add("c", "3 x", units.Of(r.Contact, units.Level), "", x)
	} else {
		c.Add("c", "3 (B − x)", units.Of(r.Contact, units.Level), "", width, x)
	}
	c.Add("q", "2 N/c", units.Of(r.BearingMax, units.Pressure), "", n, working.T("c", r.Contact, units.Level))
}
