package calc

import (
	"standingbeam/calc/plain"
	"standingbeam/calc/stability"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// cantilever is what a projection of the footing must carry, factored.
type cantilever struct {
	id     string // "heel" or "toe"
	stage  Stage
	role   BarRole
	length units.Length
	cover  units.Length
	moment units.MomentPerLength
	shear  func(from units.Length) units.ForcePerLength // at a distance from the stem's face
	steps  *working.Chain
	atStem bool // reinforced shear at the stem's face, else d from it
}

// heelOf is the heel under ground g: it carries the soil on it, the greater of
// 1.4 D and 1.2 D + 1.6 surcharge; the pressure under it is left out, which is
// safe. Shear at the stem's face (by judgement).
func (w *wall) heelOf(st Stage, g ground, c *working.Chain) cantilever {
	l := w.heel()
	dead := float64(concreteWeight)*w.Footing.Thickness.Inches() + float64(w.soilColumn(1*units.Inch, g.a))
	q := 0.0
	if g.surcharge {
		q = float64(w.Surcharge.Dead + w.Surcharge.Live)
	}
	wu := max(w.lf.DeadOnly*dead, w.lf.Dead*dead+w.lf.Earth*q)
	m := units.MomentPerLength(wu * l.Inches() * l.Inches() / 2)
	if c.On() {
		c.Add("wu", "max(1.4 D; 1.2 D + 1.6 q)", units.Of(units.Stress(wu), units.Pressure), "5.3.1",
			term("D", units.Stress(dead), units.Pressure), term("q", units.Stress(q), units.Pressure))
		c.Add("Mu", "wu L^2 / 2", units.Of(m, units.LineMoment), "", term("wu", units.Stress(wu), units.Pressure), term("L", l, units.Level))
	}
	return cantilever{id: "heel", stage: st, role: HeelBar, length: l, cover: 1.5 * units.Inch, moment: m, steps: c, atStem: true,
		shear: func(from units.Length) units.ForcePerLength {
			return units.ForcePerLength(wu * max(0, (l-from).Inches()))
		}}
}

// toeOf is the toe under ground g: the factored pressure under it, of the
// worst of the combinations with the resultant that each has, less the toe's
// own weight with the same factor.
func (w *wall) toeOf(st Stage, g ground, c *working.Chain) cantilever {
	l := w.Footing.Toe
	own := float64(concreteWeight) * w.Footing.Thickness.Inches()
	cases := w.factored(g)
	load := func(f factoredBody, l units.Length) (m, v float64) {
		m, v = w.under(f.result, l)
		x := l.Inches()
		return m - f.dead*own*x*x/2, v - f.dead*own*x
	}
	worst, mu := cases[0], 0.0
	for _, f := range cases {
		if m, _ := load(f, l); m > mu {
			worst, mu = f, m
		}
	}
	if c.On() {
		stability.Check(worst.body, &stability.Workings{Resultant: c, Bearing: c})
		mq, _ := w.under(worst.result, l)
		c.Add("Mu", "Mq − f wc L^2 / 2", units.Of(units.MomentPerLength(mu), units.LineMoment), "5.3.1",
			term("Mq", units.MomentPerLength(mq), units.LineMoment), number("f", worst.dead),
			term("wc", units.Stress(own), units.Pressure), term("L", l, units.Level))
	}
	return cantilever{id: "toe", stage: st, role: ToeBar, length: l, cover: footingCover, moment: units.MomentPerLength(mu), steps: c,
		shear: func(from units.Length) units.ForcePerLength {
			most := 0.0
			for _, f := range cases {
				if rest := l - from; rest > 0 {
					_, v := load(f, rest)
					most = max(most, v)
				}
			}
			return units.ForcePerLength(most)
		}}
}

// factoredBody is the free body under one load combination.
type factoredBody struct {
	dead   float64
	body   stability.Body
	result stability.Result
}

// factored are the free bodies of 0.9 D + 1.6 H and 1.2 D + 1.6 L + 1.6 H, the
// latter with and without the surcharge on the heel (ASCE 7-16 2.3.1). Soil
// weight is D, groundwater counts with H, soil that opposes at its own factor.
func (w *wall) factored(g ground) []factoredBody {
	out := make([]factoredBody, 0, 3)
	add := func(g ground, dead float64) {
		b := w.body(g)
		for i := range b.Weights {
			f := dead
			if n := b.Weights[i].Name; n == liveLoad || n == onHeel {
				f = w.lf.Live
			}
			b.Weights[i].Force *= units.ForcePerLength(f)
		}
		for i := range b.Drive {
			b.Drive[i].Force *= units.ForcePerLength(w.lf.Earth)
		}
		for i := range b.Resist {
			b.Resist[i].Force *= units.ForcePerLength(g.low)
		}
		for i := range b.Uplift {
			b.Uplift[i].Force *= units.ForcePerLength(w.lf.Earth)
		}
		out = append(out, factoredBody{dead, b, stability.Check(b, nil)})
	}
	add(g, w.lf.DeadHelps)
	if g.dead > 0 {
		g.live = w.Axial.Live
	}
	add(g, w.lf.Dead)
	if g.surcharge && w.Surcharge != (Surcharge{}) && w.heel() > 0 {
		g.onHeel = true
		add(g, w.lf.Dead)
	}
	return out
}

// under integrates the pressure under the outer length l of the toe: its
// moment about the inner end and its sum. A resultant outside the base puts
// the whole of it at the edge.
func (w *wall) under(r stability.Result, l units.Length) (m, v float64) {
	x := l.Inches()
	if r.Overturned {
		v = max(0, float64(r.Normal))
		return v * x, v
	}
	q0 := float64(r.BearingToe)
	slope := (float64(r.BearingHeel) - q0) / w.Footing.Width.Inches()
	if r.Contact < w.Footing.Width && r.Eccentricity < 0 {
		return w.underFromHeel(r, x)
	}
	if r.Contact < w.Footing.Width {
		slope = -q0 / r.Contact.Inches()
		if c := r.Contact.Inches(); x > c {
			v = q0 * c / 2
			return v * (x - c/3), v
		}
	}
	v = q0*x + slope*x*x/2
	m = q0*x*x/2 + slope*x*x*x/6
	return m, v
}

// underFromHeel is under where the heel is pressed and the toe's edge is not.
func (w *wall) underFromHeel(r stability.Result, x float64) (m, v float64) {
	free := (w.Footing.Width - r.Contact).Inches()
	if x <= free {
		return 0, 0
	}
	p := x - free
	rate := float64(r.BearingHeel) / r.Contact.Inches()
	v = rate * p * p / 2
	return v * p / 3, v
}

// designHeel and designToe answer the two projections.
func (w *wall) designHeel(st Stage, g ground) {
	if w.heel() > 0 {
		w.projection(w.heelOf(st, g, chain()), &w.heelBars)
	}
}

func (w *wall) designToe(st Stage, g ground, q stability.Result) {
	if w.Footing.Toe <= 0 {
		return
	}
	if q.Overturned {
		reason := note("resultant-outside")
		w.failed("toe-flexure", st, units.LineMoment, "13.2.7", reason)
		w.failed("toe-shear", st, units.LineForce, "13.2.7", reason)
		return
	}
	w.projection(w.toeOf(st, g, chain()), &w.toeBars)
}

// plainFooting is the footing as plain concrete: 2 in taken off where it is
// cast against soil (14.5.1.7).
func (w *wall) plainFooting() plain.Section {
	return plain.Section{Fc: w.Material.Fc, H: w.Footing.Thickness - w.aci.PlainSoilLoss, Lambda: 1, Phi: w.aci.PhiPlain}
}

// plainCarries reports whether plain concrete carries the projection; the
// footing must be 8 in thick at least (14.3.2.1).
func (w *wall) plainCarries(p cantilever, ps plain.Section) bool {
	return w.Footing.Thickness >= w.aci.PlainFooting && p.moment <= ps.DesignMoment(nil) && p.shear(ps.H) <= ps.DesignShear(nil)
}
