package calc

import (
	"standingbeam/calc/stability"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// recordStrip writes what presses on the footing of a wall held at its top,
// with the factors dead and live; 1 and 1 are service loads.
func (w *wall) recordStrip(c *working.Chain, dead, live float64) {
	if w.quiet {
		return
	}
	g := ground{a: w.GradeA, b: w.GradeB, state: w.heldState(), low: 1, q: w.Surcharge, onHeel: true, dead: w.Axial.Dead, live: w.Axial.Live}
	b := w.body(g)
	l := w.loadsOf(g, dead, live, dead != 1 || live != 1)
	l.geometry()
	names := stability.SymbolsOf(b)
	e, n := expr{}, 0.0
	for i, x := range b.Weights {
		f := dead
		if x.Name == liveLoad || x.Name == onHeel {
			if f = live; f == 0 {
				continue
			}
		}
		x.Force *= units.ForcePerLength(f)
		l.weight(x, names.Weights[i])
		if len(e.text) > 0 {
			e.say(" + ")
		}
		e.symbol(term(names.Weights[i][0], x.Force, units.LineForce))
		n += float64(x.Force)
	}
	merge(c, forces(l.c.Steps))
	e.to(c, "W,all", units.Of(units.ForcePerLength(n), units.LineForce), "statics")
	c.Add("x,all", "B/2", units.Of(w.Footing.Width/2, units.Level), "geometry", l.width())
}

// stripToe is a projection of the footing of a wall held at its top, under one
// load combination: the factors of its loads, the moment of a fixed foot, the
// bearing and the projection's length.
type stripToe struct {
	dead, live float64
	foot       units.MomentPerLength
	bearing    stability.Result
	length     units.Length
}

// recordFootMoment writes the moment that a fixed foot hands to the footing, as
// the force at 1 in that stands for it.
func (w *wall) recordFootMoment(c *working.Chain, m units.MomentPerLength, factored bool) {
	s := w.stageOf(Finished)
	if w.quiet || m <= 0 || s == nil {
		return
	}
	couple, _ := w.spanCouple()
	if factored {
		couple = w.coupleOf(s)
	}
	mf := term("Mf", m, units.LineMoment)
	for _, face := range [2]Face{FaceA, FaceB} {
		steps := chain()
		if w.reckon(s, factored, couple).moment(steps, momentNeed{face: face, m: m}) {
			steps.Steps[len(steps.Steps)-1].Symbol = "Mf"
			merge(c, steps.Steps)
			break
		}
	}
	c.Add("P,foot", "Mf/y,foot", units.Of(units.ForcePerLength(m), units.LineForce), "statics", mf, term("y,foot", 1*units.Inch, units.Level))
}

// start writes the bearing under the projection, and whether it is even.
func (t *stripToe) start(w *wall, c *working.Chain) (even bool) {
	w.recordStrip(c, t.dead, t.live)
	if t.foot <= 0 {
		n := units.ForcePerLength(float64(t.bearing.BearingToe) * w.Footing.Width.Inches())
		c.Add("qu", "W,all/B", units.Of(t.bearing.BearingToe, units.Pressure), "statics", term("W,all", n, units.LineForce), term("B", w.Footing.Width, units.Level))
		return true
	}
	w.recordFootMoment(c, t.foot, true)
	stability.Check(w.stripBody(t.dead, t.live, t.foot), &stability.Workings{Resultant: c, Bearing: c})
	return false
}

// recordStripToe writes the moment m of the projection.
func (w *wall) recordStripToe(c *working.Chain, t stripToe, m units.MomentPerLength) {
	if w.quiet {
		return
	}
	if t.start(w, c) {
		c.Add("Mu", "qu L^2/2", units.Of(m, units.LineMoment), "statics", term("qu", t.bearing.BearingToe, units.Pressure), term("L", t.length, units.Level))
		return
	}
	u := w.underToe(t.bearing, t.length)
	if !u.known {
		c.Steps = nil
		return
	}
	u.moment(c, "Mu", m)
}

// stripToeShear starts the working of the shear of the projection at a distance
// from the stem.
func (w *wall) stripToeShear(t stripToe, from units.Length) *working.Chain {
	c := chain()
	if w.quiet || from >= t.length {
		return c
	}
	at := t.reach(w.sectionAt(from, w.toeBars))
	if t.start(w, c) {
		q := t.bearing.BearingToe
		c.Add("Vu", "qu "+at.text, units.Of(units.ForcePerLength(float64(q)*at.length.Inches()), units.LineForce), "statics",
			append(at.with, term("qu", q, units.Pressure))...)
		return c
	}
	u := w.underToe(t.bearing, t.length)
	if !u.known {
		return chain()
	}
	u.shear(c, at)
	return c
}

func (t *stripToe) reach(s working.Term) reach {
	return reach{"(L − " + s.Symbol + ")", []working.Term{term("L", t.length, units.Level), s}, t.length - units.Length(s.Value.Base)}
}
