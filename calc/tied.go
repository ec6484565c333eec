package calc

import (
	"math"

	"standingbeam/calc/concrete"
	"standingbeam/calc/rebar"
	"standingbeam/calc/soil"
	"standingbeam/calc/tieslab"
	"standingbeam/calc/units"
)

// tieLevel is the level at which the slab on the retained ground holds the
// wall: its mid-depth where it is cast against the wall, the wall's top where
// it lies over it.
func (w *wall) tieLevel() units.Length {
	return min(w.Height, w.GradeA+w.Tie.SlabThickness/2)
}

// answerTied designs a wall tied at its top into a slab on the retained
// ground, and the stage before that slab is cast: its fill is already there.
func (w *wall) answerTied() {
	level := w.tieLevel()
	w.Brace = level
	before, extraM, extraV := w.beforeSlab()
	couple, coupleU := w.spanCouple()
	supports := w.heldSupports(level)
	s, ok := w.analyse(Finished, w.pushes(soil.AtRest, w.GradeA, w.GradeB, 0, w.Surcharge, w.lowFactor()), supports, couple, coupleU)
	if !ok {
		return
	}
	w.layout(level)
	w.answerHeld(s, supports, extraM, extraV)
	w.checkDowels(!w.r.Plain)
	h := w.heldReactions(s.Pushes, supports)
	w.checkTie(h)
	w.checkFoot(h)
	w.checkHorizontals()
	w.checkDeflection(s)
	w.checkTiedBase(s, before == nil)
	if before == nil {
		w.warn("rakers-need-design")
		return
	}
	g := ground{a: w.GradeA, b: w.GradeB, state: soil.Active, q: w.wetSlab(), low: w.lowFactor()}
	w.checkJoint(BeforeSlab, absForce(before.Shears[0].Factored))
	w.checkBase(before, BeforeSlab, g)
}

// checkTiedBase asks for the finished wall's bearing and heel, which carries
// the fill and the slab on it; and for the toe where no stage without the slab
// asks more of it.
func (w *wall) checkTiedBase(s *StageResult, toe bool) {
	if !w.Footing.Given {
		return
	}
	ok := w.checkStripBearing(s)
	w.designHeel(Finished, w.onSlab())
	if _, mu := s.footMoment(); ok && toe {
		w.stripToe(w.Footing.Toe, mu)
	}
}

// onSlab is the finished ground with the slab and what stands on it.
func (w *wall) onSlab() ground {
	q := w.Surcharge
	q.Dead = max(q.Dead, w.wetSlab().Dead)
	return ground{a: w.GradeA, b: w.GradeB, state: soil.AtRest, q: q, low: w.lowFactor()}
}

// beforeSlab analyses the stage in which the fill stands and the slab does
// not, unless rakers hold the wall.
func (w *wall) beforeSlab() (*StageResult, []momentNeed, []shearNeed) {
	if w.Tie.Before == Rakers {
		return nil, nil, nil
	}
	s, ok := w.analyse(BeforeSlab, w.pushes(soil.Active, w.GradeA, w.GradeB, 0, w.wetSlab(), w.lowFactor()), clampedFoot, 0, 0)
	if !ok {
		return nil, nil, nil
	}
	ms, vs := w.stemNeeds(s)
	return s, ms, vs
}

// wetSlab is the slab's own weight on the fill at the moment it is cast: it
// pushes already and does not tie yet.
func (w *wall) wetSlab() Surcharge {
	return Surcharge{Dead: units.Stress(float64(concreteWeight) * w.Tie.SlabThickness.Inches())}
}

// checkTie asks for the tie bars, their development in wall and slab, and for
// what holds the slab.
func (w *wall) checkTie(h held) {
	w.r.Layout.TieLevel, w.r.Layout.TieThick = w.Brace, w.Tie.SlabThickness
	bar, spacing := w.tieBars(h.topU)
	c := w.forReaction(h.topU, true, true)
	capacity := units.ForcePerLength(w.aci.PhiFlexure * float64(bar.PerLength(spacing)) * w.Material.Fy.PSI())
	w.recordSteel(c, "As", bar, spacing)
	c.Add("φTn", "φ As fy", units.Of(capacity, units.LineForce), "22.4.3.1", number("φ", w.aci.PhiFlexure),
		term("As", bar.PerLength(spacing), units.SteelArea), term("fy", w.Material.Fy, units.Strength))
	w.ask("tie-tension", Finished, units.Of(h.topU, units.LineForce), units.Of(capacity, units.LineForce), "22.4.3.1", at(w.Brace), steps(c))
	set := rebar.Setting{Fc: w.Material.Fc, Fy: w.Material.Fy, Lambda: 1, SpacingSixDb: spacing >= 6*bar.Diameter, SideCoverSixDb: true}
	hc := chain()
	hook := rebar.Hook(bar, set, hc)
	room := w.Thickness - w.cover(FaceB, bar)
	w.record(hc, "lav", "h − cc", units.Of(room, units.Size), "geometry", term("h", w.Thickness, units.Size), term("cc", w.cover(FaceB, bar), units.Size))
	w.ask("tie-development-wall", Finished, units.Of(hook, units.Size), units.Of(room, units.Size), "25.4.3", steps(hc))
	set.Fc, set.Favorable = slabFc, w.Tie.SlabThickness/2-bar.Diameter/2 >= bar.Diameter
	dc := chain()
	ld := rebar.Development(bar, set, dc)
	into := units.Length(math.Ceil(ld.Inches() - 1e-9))
	if w.Tie.SlabLength > 0 {
		w.ask("tie-development-slab", Finished, units.Of(ld, units.Size), units.Of(w.Tie.SlabLength, units.Size), "25.4.2", steps(dc))
	} else {
		w.leaveOpen("tie-development-slab", Finished, units.Of(ld, units.Size), "25.4.2", note("needs-slab-length"), steps(dc))
	}
	w.r.Bars = append(w.r.Bars, Bar{Role: TieBar, Direction: "into the slab", Size: bar.Number, Spacing: spacing, Cover: w.Tie.SlabThickness/2 - bar.Diameter/2,
		Hook: rebar.HookTail(bar), HookAvail: room, Length: into, Rulebook: w.aci.Name, Clause: "22.4.3.1"})
	w.checkDrag(h.top)
	w.assume("slab-steel-continuous")
}

// tieBars picks bars into the slab, the smallest that carry the tie no farther
// apart than 3 slab thicknesses or 18 in (7.7.2.3).
func (w *wall) tieBars(tu units.ForcePerLength) (rebar.Bar, units.Length) {
	widest := minLength(3*w.Tie.SlabThickness, concrete.SlabMinimum(w.Tie.SlabThickness).MaxSpacing)
	for _, n := range []int{4, 5, 6} {
		bar, _ := rebar.ByNumber(n)
		as := float64(tu) / (w.aci.PhiFlexure * w.Material.Fy.PSI())
		s := widest
		if as > 0 {
			s = minLength(s, units.Length(float64(bar.Area)/as))
		}
		if s = buildable(s); s >= w.closestSpacing() {
			return bar, s
		}
	}
	bar, _ := rebar.ByNumber(6)
	return bar, w.closestSpacing()
}

// least is a force that is none, beside the rounding of the sums.
const least = 0.01 * units.PLF

// checkDrag asks whether the slab can pull: the friction of its dead weight
// beyond the sliding wedge (for soil at rest the whole wall height), factor
// 1.5, live load left out; or an opposite wall up to its own top reaction,
// given as the strength; or
// a tie of given strength.
func (w *wall) checkDrag(t units.ForcePerLength) {
	if t <= least {
		w.without("slab-drag", Finished, "1807.2.3", note("nothing-pulls"), by(w.ibc.Name))
		return
	}
	switch w.Tie.Anchor {
	case OppositeWall:
		w.assume("opposite-wall")
		if w.Tie.Strength == 0 {
			w.leaveOpen("slab-drag", Finished, units.Of(t, units.LineForce), "1604.4", note("needs-opposite-reaction", units.Of(t, units.LineForce)), service, by(w.ibc.Name))
			return
		}
		w.ask("slab-drag", Finished, units.Of(t, units.LineForce), units.Of(w.Tie.Strength, units.LineForce), "1604.4", service, by(w.ibc.Name))
		return
	case TieStrength:
		if w.Tie.Strength == 0 {
			w.leaveOpen("slab-drag", Finished, units.Of(t, units.LineForce), "1604.4", note("needs-tie-strength"), service, by(w.ibc.Name))
			return
		}
		w.ask("slab-drag", Finished, units.Of(t, units.LineForce), units.Of(w.Tie.Strength, units.LineForce), "1604.4", service, by(w.ibc.Name))
		return
	}
	slab := tieslab.Slab{Height: w.Height, Length: w.Tie.SlabLength, Weight: w.wetSlab().Dead, Friction: w.Tie.Friction, Ground: soil.AtRest}
	w.r.Layout.Wedge = slab.Wedge()
	need, ok := slab.Needed(t, w.ibc.StabilityFactor, nil)
	need = units.Length(math.Ceil(need.Inches() - 1e-9))
	if w.Tie.SlabLength == 0 || !ok {
		w.leaveOpen("slab-drag", Finished, units.Of(need, units.Level), "1807.2.3", note("needs-slab-length"), service, by(w.ibc.Name))
		return
	}
	c := w.forReaction(t, false, true)
	if len(c.Steps) > 0 {
		c.Add("T", "Rt", units.Of(t, units.LineForce), "statics", term("Rt", t, units.LineForce))
	}
	drag := slab.Drag(c)
	fs := float64(drag / t)
	c.Add("FS", "D / T", units.Quantity{Base: fs}, "", term("D", drag, units.LineForce), term("T", t, units.LineForce))
	check := w.askFactor("slab-drag", Finished, fs, "1807.2.3", steps(c))
	if check.State == Fails {
		n := note("slab-must-be-longer", units.Of(need, units.Level))
		check.Because = &n
	}
}
