package calc

import (
	"standingbeam/calc/units"
)

// answerFree designs a wall that stands as a cantilever on its footing under
// ground g: the stem as a one-way slab (13.3.6.1), the footing, and the
// stability of the whole.
func (w *wall) answerFree(g ground, st Stage) {
	couple, coupleU := w.stemCouple()
	s, ok := w.analyse(st, w.pushes(g.state, g.a, g.b, 0, g.q, g.low), clampedFoot, couple, coupleU)
	if !ok {
		return
	}
	w.layout(0)
	ms, vs := w.stemNeeds(s)
	w.plainStem(s)
	ms = w.magnified(ms)
	w.pickVerticals(ms, vs, w.stemRule)
	w.setDowels()
	w.checkReinforced(ms, vs, w.stemRule, true)
	w.checkDowels(true)
	w.checkJoint(st, absForce(s.Shears[0].Factored))
	w.checkHorizontals()
	w.checkDeflection(s)
	w.checkBase(s, st, g)
	w.assume("no-returns")
	w.assume("permit-height")
	if w.Footing.Passive && w.Footing.Given {
		w.assume("passive-rate", units.Of(passiveRate, units.Weight))
	}
	if w.GradeB > 0 && w.Condition == FreeTop {
		w.assume("low-side-left-out", units.Of(w.GradeB, units.Level))
	}
}

// stemNeeds reads the joint's moment and shear of a cantilever stage.
func (w *wall) stemNeeds(s *StageResult) (ms []momentNeed, vs []shearNeed) {
	face := FaceA
	for _, p := range s.Moments {
		if p.Factored > 1e-9 {
			ms = append(ms, momentNeed{stage: s.Name, face: p.TensionFace, m: p.Factored, at: p.At, joint: p.At == 0})
			if p.At == 0 {
				face = p.TensionFace
			}
		}
	}
	if len(ms) == 0 {
		ms = append(ms, momentNeed{stage: s.Name, face: FaceA, joint: true})
	}
	return ms, []shearNeed{{stage: s.Name, face: face, v: s.Shears[0].Factored, at: s.Shears[0].At, joint: true}}
}

// plainStem shows, to compare, what plain concrete has at the joint of an
// unbraced wall: nothing (14.2.2.2, 14.4.1.3).
func (w *wall) plainStem(s *StageResult) {
	m := s.peak(FaceA)
	w.ask("plain-flexure", s.Name, units.Of(m.Factored, units.LineMoment), units.Quantity{Kind: units.LineMoment},
		"14.2.2.2", at(0), compareOnly, because(note("plain-joint")),
		steps(w.forMoment(momentNeed{stage: s.Name, face: FaceA, m: m.Factored, at: m.At})))
	w.without("minimum-thickness", s.Name, "11.3.1.1", note("thickness-by-strength"))
}

// checkBase asks for the stability of the whole and for heel and toe; without
// a footing these are open.
func (w *wall) checkBase(s *StageResult, st Stage, g ground) {
	if !w.Footing.Given {
		for _, q := range []struct {
			id   string
			kind units.Kind
		}{{"overturning", units.None}, {"sliding", units.None}, {"bearing", units.Pressure}, {"heel-flexure", units.LineMoment},
			{"heel-shear", units.LineForce}, {"toe-flexure", units.LineMoment}, {"toe-shear", units.LineForce}} {
			w.leaveOpen(q.id, st, units.Quantity{Kind: q.kind}, "1807.2.3", note("needs-footing"), by(w.ibc.Name))
		}
		return
	}
	r, q := w.checkStability(st, g)
	s.Stability = stabilityOf(r, q)
	if g.dead > 0 {
		// It is filled before the house stands on it.
		bare := g
		bare.dead = 0
		w.checkStability(Filling, bare)
	}
	if w.Condition != TiedToSlab {
		w.designHeel(st, g)
	}
	w.designToe(st, g, q)
}
