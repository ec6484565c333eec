package calc

import (
	"standingbeam/calc/stability"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// sectionAt is the distance from the stem at which the shear of a projection is
// asked: d where it has bars, else its thickness.
func (w *wall) sectionAt(from units.Length, a across) working.Term {
	if a.none() {
		return term("h", from, units.Size)
	}
	return term("d", from, units.Size)
}

// recordOnHeel writes the factored load on the heel.
func (w *wall) recordOnHeel(c *working.Chain, g ground, wu float64) {
	dead := float64(concreteWeight)*w.Footing.Thickness.Inches() + float64(w.soilColumn(1*units.Inch, g.a))
	q := units.Of(g.q.Dead+g.q.Live, units.Pressure)
	d := units.Of(units.Stress(dead), units.Pressure)
	if !w.quiet {
		l := w.loadsOf(g, 1, 1, false)
		if w.Footing.NoToe {
			l.geometry()
			c.Steps = append(c.Steps, l.c.Steps[0])
		}
		c.Add("L", "B − Lt − tw", units.Of(w.heel(), units.Level), "geometry", l.width(), l.toe(), l.thick())
		e := expr{}
		e.symbol(l.concrete()).say(" ").symbol(l.deep())
		if g.a > 0 {
			e.say(" + ")
			l.column(&e, false)
		}
		e.to(c, "D", d, "statics")
	}
	c.Add("wu", "max(1.4 D; 1.2 D + 1.6 q)", units.Of(units.Stress(wu), units.Pressure), "5.3.1",
		working.Term{Symbol: "D", Value: d}, working.Term{Symbol: "q", Value: q})
}

// heelShear starts the working of the heel's shear at the stem's face.
func (w *wall) heelShear(g ground, wu float64, from units.Length) *working.Chain {
	c := chain()
	if w.quiet || from != 0 {
		return c
	}
	w.recordOnHeel(c, g, wu)
	c.Add("Vu", "wu L", units.Of(units.ForcePerLength(wu*w.heel().Inches()), units.LineForce), "statics",
		term("wu", units.Stress(wu), units.Pressure), term("L", w.heel(), units.Level))
	return c
}

// under is the bearing under a toe as the working of the bearing has it.
type under struct {
	r           stability.Result
	edge, heel  working.Term // pressure at the toe's edge; at the heel's, of a base that is pressed all over
	contact     working.Term // else
	width, l    working.Term
	own, normal working.Term // the toe's own weight, no symbol where it is left out
	known       bool         // the toe's edge is pressed
}

func (w *wall) underToe(r stability.Result, length units.Length) under {
	u := under{r: r, width: term("B", w.Footing.Width, units.Level), l: term("L", length, units.Level), normal: term("N", r.Normal, units.LineForce)}
	switch {
	case r.Overturned:
	case r.MiddleThird:
		u.edge, u.heel, u.known = term("q,toe", r.BearingToe, units.Pressure), term("q,heel", r.BearingHeel, units.Pressure), true
	case r.Eccentricity > 0:
		u.edge, u.contact, u.known = term("q", r.BearingToe, units.Pressure), term("Lc", r.Contact, units.Level), true
	}
	return u
}

// start writes the toe's length and its own weight.
func (u *under) start(w *wall, c *working.Chain, dead float64) {
	if w.quiet {
		return
	}
	l := w.loadsOf(ground{}, dead, 0, true)
	c.Add("L", "Lt", u.l.Value, "geometry", l.toe())
	c.Add("wf", l.dead+"γc tf", u.own.Value, "5.3.1", l.concrete(), l.deep())
}

// reach is what lies between the toe's edge and a section, written as L or as
// L less the distance from the stem.
type reach struct {
	text   string
	with   []working.Term
	length units.Length
}

// pressure writes the bearing at the section, and false where it lies beyond
// the pressed part of the base or nothing is known of it.
func (u *under) pressure(c *working.Chain, symbol string, at reach) (working.Term, bool) {
	q, a := u.edge.Value.Base, at.length.Inches()
	with := append([]working.Term{u.edge}, at.with...)
	if u.heel.Symbol != "" {
		v := q - (q-u.heel.Value.Base)*a/u.width.Value.Base
		t := term(symbol, units.Stress(v), units.Pressure)
		c.Add(symbol, "q,toe − (q,toe − q,heel) "+at.text+"/B", t.Value, "statics", append(with, u.heel, u.width)...)
		return t, true
	}
	if a > u.contact.Value.Base {
		return working.Term{}, false
	}
	t := term(symbol, units.Stress(q*(1-a/u.contact.Value.Base)), units.Pressure)
	c.Add(symbol, "q (1 − "+at.text+"/Lc)", t.Value, "statics", append(with, u.contact)...)
	return t, true
}

// moment writes the moment of the bearing about the stem's face.
func (u *under) moment(c *working.Chain, symbol string, m units.MomentPerLength) {
	q := units.Of(m, units.LineMoment)
	if qf, ok := u.pressure(c, "qf", reach{"L", []working.Term{u.l}, units.Length(u.l.Value.Base)}); ok {
		c.Add(symbol, "(2 "+u.edge.Symbol+" + qf) L^2/6", q, "statics", u.edge, qf, u.l)
	} else {
		c.Add(symbol, "q Lc/2 (L − Lc/3)", q, "statics", u.edge, u.contact, u.l)
	}
}

// shear writes the shear of the bearing less the toe's own weight beyond a
// section.
func (u *under) shear(c *working.Chain, at reach) {
	a, q := at.length.Inches(), u.edge.Value.Base
	with := append(at.with, u.edge)
	formula, v := "q Lc/2", q*u.contact.Value.Base/2
	own := ""
	if u.own.Symbol != "" {
		own, with = " − wf "+at.text, append(with, u.own)
	}
	if qv, ok := u.pressure(c, "qv", at); ok {
		formula, v, with = "("+u.edge.Symbol+" + qv) "+at.text+"/2", (q+qv.Value.Base)/2*a, append(with, qv)
	} else {
		with = append(with, u.contact)
	}
	c.Add("Vu", formula+own, units.Of(units.ForcePerLength(v-u.own.Value.Base*a), units.LineForce), "statics", with...)
}

// under is the ground of a combination on ground g.
func (f *factoredBody) under(w *wall, g ground) ground {
	g.onHeel, g.live, g.dead = f.onHeel, 0, f.house
	if f.live {
		g.live = w.Axial.Live
	}
	return g
}

// recordToe writes the moment at the stem's face, mu: the pressure's less that
// of the toe's own weight.
func (w *wall) recordToe(c *working.Chain, f factoredBody, mu units.MomentPerLength) {
	u := w.underToe(stability.Check(f.body, nil), f.toe.length)
	u.own = term("wf", units.Stress(f.dead)*w.footingWeight(), units.Pressure)
	u.start(w, c, f.dead)
	if f.toe.edge > 0 {
		c.Add("Mu", "N L", units.Of(mu, units.LineMoment), "5.3.1", u.normal, u.l)
		return
	}
	l := f.toe.length.Inches()
	mq := term("Mq", units.MomentPerLength(float64(mu)+u.own.Value.Base*l*l/2), units.LineMoment)
	if !w.quiet && u.known {
		u.moment(c, "Mq", units.MomentPerLength(mq.Value.Base))
	}
	c.Add("Mu", "Mq − wf L^2/2", units.Of(mu, units.LineMoment), "statics", mq, u.own, u.l)
}

// toeShear starts the working of the toe's shear at a distance from the stem:
// of the combination that gives the greatest.
func (w *wall) toeShear(g ground, cases []factoredBody, from units.Length) *working.Chain {
	c := chain()
	worst, vu := cases[0], units.ForcePerLength(0)
	for _, f := range cases {
		if _, v := f.toe.at(from); v > vu {
			worst, vu = f, v
		}
	}
	if w.quiet || vu <= 0 {
		return c
	}
	u := w.underToe(stability.Check(worst.body, nil), worst.toe.length)
	w.recordBody(c, worst.under(w, g), worst.body, worst.dead, true)
	stability.Check(worst.body, &stability.Workings{Resultant: c, Bearing: c})
	if worst.toe.edge > 0 {
		c.Add("Vu", "N", units.Of(vu, units.LineForce), "statics", u.normal)
		return c
	}
	if !u.known {
		return chain()
	}
	u.own = term("wf", units.Stress(worst.dead)*w.footingWeight(), units.Pressure)
	u.start(w, c, worst.dead)
	s := w.sectionAt(from, w.toeBars)
	u.shear(c, reach{"(L − " + s.Symbol + ")", []working.Term{u.l, s}, worst.toe.length - from})
	return c
}

// recordFriction writes the force that presses the footing of a held wall on
// the ground and the push on the footing's own depth.
func (w *wall) recordFriction(c *working.Chain, dead units.ForcePerLength, b stability.Body, n, below units.ForcePerLength) {
	if w.quiet {
		return
	}
	g := ground{a: w.GradeA, b: w.GradeB, state: w.heldState(), q: w.Surcharge, low: w.lowFactor(), dead: dead}
	all := chain()
	w.recordBody(all, g, b, 1, false)
	merge(c, forces(all.Steps))
	names := stability.SymbolsOf(b)
	e := expr{}
	for i, x := range b.Weights {
		if i > 0 {
			e.say(" + ")
		}
		e.symbol(term(names.Weights[i][0], x.Force, units.LineForce))
	}
	for i, x := range b.Uplift {
		e.say(" − ").symbol(term(names.Uplift[i][0], x.Force, units.LineForce))
	}
	if n > 0 {
		e.to(c, "N", units.Of(n, units.LineForce), "statics")
	}
	if below <= 0 {
		return
	}
	e = expr{}
	for i, p := range b.Drive {
		if i > 0 {
			e.say(" + ")
		}
		e.symbol(term(names.Drive[i][0], p.Force, units.LineForce))
	}
	l := w.loadsOf(g, 1, 1, false)
	for _, bl := range w.blocks(nil, g.state, g.a, 0, 0, g.q) {
		e.say(" − ")
		l.push(&e, bl, false)
	}
	e.to(c, "Pf", units.Of(below, units.LineForce), "statics")
}
