package calc

import (
	"standingbeam/calc/footing"
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
	moment units.MomentPerLength
	load   float64        // on the heel, per area
	under  []factoredBody // the toe's, the worst of them counts
	steps  *working.Chain
	atStem bool // reinforced shear at the stem's face, else d from it

	shearSteps func(from units.Length) *working.Chain // starts the working of the shear
}

// shear is the factored shear at a distance from the stem's face.
func (p *cantilever) shear(from units.Length) units.ForcePerLength {
	most := units.ForcePerLength(p.load * max(0, (p.length-from).Inches()))
	for i := range p.under {
		_, v := p.under[i].toe.at(from)
		most = max(most, v)
	}
	return most
}

// heelOf is the heel under ground g: it carries the soil on it, the greater of
// 1.4 D and 1.2 D + 1.6 surcharge; the pressure under it is left out, which is
// safe. Shear at the stem's face (by judgement).
func (w *wall) heelOf(st Stage, g ground, c *working.Chain) cantilever {
	l := w.heel()
	dead := float64(concreteWeight)*w.Footing.Thickness.Inches() + float64(w.soilColumn(1*units.Inch, g.a))
	q := float64(g.q.Dead + g.q.Live)
	wu := max(w.lf.DeadOnly*dead, w.lf.Dead*dead+w.lf.Earth*q)
	m := units.MomentPerLength(wu * l.Inches() * l.Inches() / 2)
	if c.On() {
		w.recordOnHeel(c, g, wu)
		c.Add("Mu", "wu L^2 / 2", units.Of(m, units.LineMoment), "statics", term("wu", units.Stress(wu), units.Pressure), term("L", l, units.Level))
	}
	p := cantilever{id: "heel", stage: st, role: HeelBar, length: l, moment: m, load: wu, steps: c, atStem: true}
	if c.On() {
		p.shearSteps = func(from units.Length) *working.Chain { return w.heelShear(g, wu, from) }
	}
	return p
}

// toeOf is the toe under ground g: the factored pressure under it, of the
// worst of the combinations with the resultant that each has, less the toe's
// own weight with the same factor; of a wall that carries a house also without
// it, for it is filled before the house stands on it.
func (w *wall) toeOf(st Stage, g ground, c *working.Chain) cantilever {
	l := w.Footing.Toe
	cases := w.factored(g)
	if g.dead > 0 {
		before := g
		before.dead = 0
		cases = append(cases, w.factored(before)...)
	}
	worst, mu := cases[0], units.MomentPerLength(0)
	for _, f := range cases {
		if m, _ := f.toe.at(0); m > mu {
			worst, mu = f, m
		}
	}
	if c.On() && mu > 0 {
		w.recordBody(c, worst.under(w, g), worst.body, worst.dead, true)
		stability.Check(worst.body, &stability.Workings{Resultant: c, Bearing: c})
		w.recordToe(c, worst, mu)
	}
	p := cantilever{id: "toe", stage: st, role: ToeBar, length: l, moment: mu, under: cases, steps: c}
	if c.On() {
		p.shearSteps = func(from units.Length) *working.Chain { return w.toeShear(g, cases, from) }
	}
	return p
}

// footingWeight is the footing's own weight on the ground.
func (w *wall) footingWeight() units.Stress {
	return units.Stress(float64(concreteWeight) * w.Footing.Thickness.Inches())
}

// toePart is the toe on the ground with the pressure of one combination. A
// resultant outside the base puts the whole of it at the edge.
type toePart struct {
	projection footing.Projection
	length     units.Length
	edge       units.ForcePerLength // of an overturned body
}

// toeUnder is the toe over length l under the pressures of r, less the weight
// own on it.
func (w *wall) toeUnder(r stability.Result, l units.Length, own units.Stress) toePart {
	if r.Overturned {
		return toePart{length: l, edge: max(0, r.Normal)}
	}
	return toePart{length: l, projection: footing.Toe(footing.Base{Width: w.Footing.Width, Toe: l, Stem: w.Thickness,
		AtToe: r.BearingToe, AtHeel: r.BearingHeel, Contact: r.Contact, OnToe: own})}
}

func (t toePart) at(from units.Length) (units.MomentPerLength, units.ForcePerLength) {
	if from > t.length {
		return 0, 0
	}
	if t.edge > 0 {
		return units.MomentPerLength(float64(t.edge) * (t.length - from).Inches()), t.edge
	}
	m, v := t.projection.At(from)
	return max(0, m), max(0, v)
}

// factoredBody is the free body under one load combination.
type factoredBody struct {
	live, onHeel bool                 // the loads that are on it
	house        units.ForcePerLength // the dead load on it
	dead         float64
	body         stability.Body
	toe          toePart
}

// factored are the free bodies of 1.4 D, of 0.9 D + 1.6 H and of 1.2 D + 1.6 L +
// 1.6 H, the latter with and without the surcharge on the heel (ASCE 7-16
// 2.3.1). Soil weight is D, groundwater counts with H, soil that opposes at its
// own factor.
func (w *wall) factored(g ground) []factoredBody {
	out := take(&w.room.cases, 8, 8)
	add := func(g ground, b stability.Body, dead float64) {
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
		own := units.Stress(dead) * w.footingWeight()
		out = append(out, factoredBody{g.live > 0, g.onHeel, g.dead, dead, b, w.toeUnder(stability.Check(b, nil), w.Footing.Toe, own)})
	}
	helps := w.body(g)
	with := g
	if g.dead > 0 {
		with.live = w.Axial.Live
	}
	var full stability.Body
	if with == g {
		full = w.copied(helps)
	} else {
		full = w.body(with)
	}
	still := w.copied(helps)
	still.Drive, still.Resist, still.Uplift, still.Passive = nil, nil, nil, 0
	add(g, still, w.lf.DeadOnly)
	add(g, helps, w.lf.DeadHelps)
	add(with, full, w.lf.Dead)
	if g.q != (Surcharge{}) && w.heel() > 0 {
		with.onHeel = true
		add(with, w.body(with), w.lf.Dead)
	}
	return out
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

// plainFrom is where the shear of a plain projection is asked: h from the
// stem's face (14.4.3.3), the heel's at the face.
func (p cantilever) plainFrom(ps plain.Section) units.Length {
	if p.atStem {
		return 0
	}
	return ps.H
}

// plainCarries reports whether plain concrete carries the projection; the
// footing must be 8 in thick at least (14.3.2.1).
func (w *wall) plainCarries(p cantilever, ps plain.Section) bool {
	return w.Footing.Thickness >= w.aci.PlainFooting && !over(p.moment, ps.DesignMoment(nil)) && !over(p.shear(p.plainFrom(ps)), ps.DesignShear(nil))
}
