package calc

import (
	"standingbeam/calc/soil"
	"standingbeam/calc/stability"
	"standingbeam/calc/units"
)

// Names of the weights that carry a load factor of their own.
const (
	liveLoad = "live load"
	onHeel   = "surcharge"
)

// commonPractice stands for the rulebook of a rule of the trade.
const commonPractice = "common practice, no source"

// ground is what stands against the free body of wall and footing.
type ground struct {
	a, b   units.Length
	state  soil.State
	q      Surcharge
	onHeel bool // the surcharge also stands on the heel: bearing only
	low    float64
	dead   units.ForcePerLength // dead load on the wall that is there for certain
	live   units.ForcePerLength // live load on the wall: bearing only
}

// body builds the free body of wall and footing, at service loads, about the
// toe's lower edge. The push acts on the vertical plane at the back of the
// heel, down to the footing's bottom. Soil weight counts once, on the heel;
// soil on the toe only where both sides are filled.
func (w *wall) body(g ground) stability.Body {
	f := w.Footing
	tf, t := f.Thickness, w.Thickness
	b := stability.Body{Width: f.Width, Friction: f.Friction, MostFriction: w.mostFriction}
	b.Drive = take(&w.room.pushes, 5, 30)
	b.Weights = take(&w.room.weights, 6, 36)
	var buf [6]soil.Block
	for _, p := range w.blocks(buf[:0], g.state, g.a, g.b, -tf, g.q) {
		force, height := p.Resultant()
		push := stability.Push{Name: pushName(p), Force: force, Height: height + tf}
		switch {
		case p.Side == 'a':
			b.Drive = append(b.Drive, push)
		case g.low > 0 && g.b > 0:
			if b.Resist == nil {
				b.Resist = take(&w.room.pushes, 5, 30)
			}
			b.Resist = append(b.Resist, push)
		}
	}
	line := func(width, height units.Length, weight units.UnitWeight) units.ForcePerLength {
		return units.ForcePerLength(width.Inches() * height.Inches() * float64(weight))
	}
	add := func(name string, force units.ForcePerLength, arm units.Length) {
		if force > 0 {
			b.Weights = append(b.Weights, stability.Weight{Name: name, Force: force, Arm: arm})
		}
	}
	heel := w.heel()
	add("stem", line(t, w.Height, concreteWeight), f.Toe+t/2)
	add("footing", line(f.Width, tf, concreteWeight), f.Width/2)
	add("heel soil", w.soilColumn(heel, g.a), f.Toe+t+heel/2)
	if g.low > 0 && w.Condition == SoilBothSides {
		add("toe soil", line(f.Toe, g.b, w.Soil.Weight), f.Toe/2)
	}
	add("dead load", g.dead, f.Toe+t/2-w.Axial.Eccentricity)
	add(liveLoad, g.live, f.Toe+t/2-w.Axial.Eccentricity)
	if g.onHeel {
		q := float64(g.q.Dead + g.q.Live)
		add(onHeel, units.ForcePerLength(q*heel.Inches()), f.Toe+t+heel/2)
	}
	w.addWater(&b, g.a)
	w.addPassive(&b, g)
	return b
}

// soilColumn is the weight of the soil over a width of footing, saturated
// below standing water.
func (w *wall) soilColumn(width, grade units.Length) units.ForcePerLength {
	wet := units.Length(0)
	if w.Water.Standing {
		wet = min(w.Water.Level, grade)
	}
	per := float64(w.Soil.Weight)*float64(grade-wet) + float64(w.Soil.Saturated)*float64(wet)
	return units.ForcePerLength(width.Inches() * per)
}

// addWater adds the uplift under the footing: full head at the heel, the head
// of the footing's own thickness at the toe, linear between.
func (w *wall) addWater(b *stability.Body, grade units.Length) {
	if !w.Water.Standing || grade <= 0 {
		return
	}
	f := w.Footing
	head := min(w.Water.Level, grade)
	even := float64(soil.WaterWeight) * f.Thickness.Inches() * f.Width.Inches()
	slope := float64(soil.WaterWeight) * head.Inches() * f.Width.Inches() / 2
	b.Uplift = append(b.Uplift,
		stability.Weight{Name: "water under the footing", Force: units.ForcePerLength(even), Arm: f.Width / 2},
		stability.Weight{Name: "head at the heel", Force: units.ForcePerLength(slope), Arm: f.Width * 2 / 3})
}

// passiveRate is the presumptive lateral bearing of the weakest class, 100 psf
// per foot of depth (IBC 2021 Table 1806.2).
const passiveRate = 100 * units.PCF

// addPassive adds passive resistance before the footing where it is asked for,
// never together with a slab in front, nor with the low side's own push, nor
// where that soil may be dug away.
func (w *wall) addPassive(b *stability.Body, g ground) {
	f := w.Footing
	if !f.Passive || w.Foot.Held != GroundOnly || w.LowSideMayGo || len(b.Resist) > 0 {
		return
	}
	grade := g.b
	deep := (grade + f.Thickness).Inches()
	shallow := max(0, (grade - f.PassiveFrom).Inches())
	if deep > shallow {
		b.Passive = units.ForcePerLength(float64(passiveRate) / 2 * (deep*deep - shallow*shallow))
	}
}

func pushName(b soil.Block) string {
	switch b.Cause {
	case soil.Water:
		return "water"
	case soil.SurchargeDead, soil.SurchargeLive:
		return "surcharge"
	}
	return "soil"
}

// stands answers the free body: stability with the surcharge off the heel and
// without live load, and bearing as the worst with and without them.
func (w *wall) stands(g ground, k *stability.Workings) (body, bearing stability.Result) {
	var record *stability.Workings
	g.live = 0
	b := w.body(g)
	if k != nil {
		record = &stability.Workings{Overturning: k.Overturning, Sliding: k.Sliding, Resultant: k.Resultant}
		w.recordBody(k.Overturning, g, b, 1, false)
		merge(k.Resultant, k.Overturning.Steps)
		merge(k.Sliding, forces(k.Overturning.Steps))
	}
	body = stability.Check(b, record)
	worst := g
	bearing = body
	var buf [3]ground
	for _, try := range w.bearingCases(buf[:0], g) {
		if r := stability.Check(w.body(try), nil); r.BearingMax > bearing.BearingMax {
			bearing, worst = r, try
		}
	}
	if k != nil {
		both := stability.Workings{Resultant: k.Bearing, Bearing: k.Bearing}
		b := w.body(worst)
		w.recordBody(k.Bearing, worst, b, 1, false)
		stability.Check(b, &both)
	}
	return body, bearing
}

// bearingCases are the variable loads that press on the ground: the surcharge
// on the heel and the live load on the wall, alone and together. It appends
// them to out.
func (w *wall) bearingCases(out []ground, g ground) []ground {
	heel := g.q != (Surcharge{}) && w.heel() > 0
	live := g.dead > 0 || (g.dead == w.Axial.Dead && w.Axial.Live > 0)
	for _, c := range [3][2]bool{{true, false}, {false, true}, {true, true}} {
		if (c[0] && !heel) || (c[1] && (!live || w.Axial.Live <= 0)) {
			continue
		}
		try := g
		try.onHeel = c[0]
		if c[1] {
			try.live = w.Axial.Live
		}
		out = append(out, try)
	}
	return out
}

// stabilityOf joins the two: factors and place of the resultant from the body,
// pressures and contact from the case of the greatest bearing.
func stabilityOf(r, q stability.Result) *Stability {
	return &Stability{Normal: r.Normal, Driving: r.Driving, Resisting: r.SlidingResistance,
		Overturning: r.Overturning, Righting: r.Righting,
		OverturningFactor: r.OverturningFactor, SlidingFactor: r.SlidingFactor,
		Resultant: r.Resultant, Eccentricity: r.Eccentricity, Contact: q.Contact,
		BearingToe: q.BearingToe, BearingHeel: q.BearingHeel, BearingMax: q.BearingMax,
		Overturned: r.Overturned, MiddleThird: r.MiddleThird}
}

// checkStability asks for overturning, sliding, the resultant and bearing.
func (w *wall) checkStability(st Stage, g ground) (body, bearing stability.Result) {
	k := &stability.Workings{Overturning: chain(), Sliding: chain(), Resultant: chain(), Bearing: chain()}
	r, q := w.stands(g, k)
	w.askFactor("overturning", st, r.OverturningFactor, "1807.2.3", steps(k.Overturning))
	w.checkSliding(st, r, k)
	limit := w.Footing.Width / 6
	k.Resultant.Add("e,abs", "max(e; −e)", units.Of(absLength(r.Eccentricity), units.Level), "", term("e", r.Eccentricity, units.Level))
	w.ask("resultant-in-middle-third", st, units.Of(absLength(r.Eccentricity), units.Size), units.Of(limit, units.Size),
		"", by(commonPractice), service, compareOnly, steps(k.Resultant))
	if q.Overturned {
		w.failed("bearing", st, units.Pressure, "1806.2", note("resultant-outside"), by(w.ibc.Name), service)
	} else {
		w.ask("bearing", st, units.Of(q.BearingMax, units.Pressure), units.Of(w.Footing.Bearing, units.Pressure),
			"1806.2", by(w.ibc.Name), service, steps(k.Bearing))
	}
	return r, q
}

// checkSliding asks for sliding at 1.5. A slab in front, cast tight, takes
// what friction lacks, 1.5 Ph − μN; it must exist before the fill.
func (w *wall) checkSliding(st Stage, r stability.Result, k *stability.Workings) {
	if w.Foot.Held != SlabTight || w.footLevel() > 0 || st == BeforeSlab || r.SlidingFactor >= w.ibc.StabilityFactor {
		w.askFactor("sliding", st, r.SlidingFactor, "1807.2.3", steps(k.Sliding))
		return
	}
	w.askFactor("sliding", st, r.SlidingFactor, "1807.2.3", steps(k.Sliding), compareOnly, because(note("slab-takes-the-rest")))
	need := units.ForcePerLength(w.ibc.StabilityFactor*float64(r.Driving) - float64(r.SlidingResistance))
	w.checkSlabStrut(st, need)
}
