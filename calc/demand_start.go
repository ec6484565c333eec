package calc

import (
	"standingbeam/calc/concrete"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// more is a chain for a working that only Explain shows.
func (w *wall) more() *working.Chain {
	if w.quiet {
		return nil
	}
	return chain()
}

// record adds a step that only Explain shows.
func (w *wall) record(c *working.Chain, symbol, formula string, value units.Quantity, clause string, with ...working.Term) {
	if !w.quiet {
		c.Add(symbol, formula, value, clause, with...)
	}
}

// forMoment starts the working of a check that asks for a factored moment.
func (w *wall) forMoment(n momentNeed) *working.Chain {
	c := chain()
	if w.quiet {
		return c
	}
	if w.recordMoment(c, n) {
		return c
	}
	pu := w.greatestAxial()
	if pu <= 0 {
		return chain()
	}
	// The moment of the second order: of the greatest moment there, or of none.
	base := n
	base.m = 0
	if s := w.stageOf(n.stage); s != nil {
		for _, p := range s.Moments {
			if p.TensionFace == n.face && near(p.At, n.at) {
				base.m = p.Factored
			}
		}
	}
	if base.m == 0 && w.Axial.Eccentricity > 0 && near(n.at, w.Brace) {
		base.m = w.bracketMoment()
	}
	*c = working.Chain{}
	if base.m > 0 && !w.recordMoment(c, base) {
		return chain()
	}
	if !w.recordMagnified(c, base.m, n.m, n.pu > 0) {
		return chain()
	}
	return c
}

// recordMoment writes the moment of a stage, or of an axial load at the brace;
// false where it is neither.
func (w *wall) recordMoment(c *working.Chain, n momentNeed) bool {
	if s := w.stageOf(n.stage); s != nil && n.m > 0 {
		for _, p := range s.Moments {
			if p.TensionFace == n.face && near(p.At, n.at) && alike(p.Factored, n.m) {
				return w.reckon(s, true, w.coupleOf(s)).moment(c, n)
			}
		}
	}
	if e := w.Axial.Eccentricity; (e > 0 && n.face == FaceA || e < 0 && n.face == FaceB) && near(n.at, w.Brace) && alike(w.bracketMoment(), n.m) {
		c.Add("Mu", "max(1.4 Pd; 1.2 Pd + 1.6 Pl) ea", units.Of(n.m, units.LineMoment), "5.3.1", w.axialTerms()...)
		return true
	}
	return false
}

// bracketMoment is the factored moment of an axial load about the wall's
// middle, of 1.4 D or 1.2 D + 1.6 L.
func (w *wall) bracketMoment() units.MomentPerLength {
	return units.MomentPerLength(float64(w.greatestAxial()) * absLength(w.Axial.Eccentricity).Inches())
}

func (w *wall) axialTerms() []working.Term {
	return []working.Term{term("Pd", w.Axial.Dead, units.LineForce), term("Pl", w.Axial.Live, units.LineForce),
		term("ea", absLength(w.Axial.Eccentricity), units.Size)}
}

// recordMagnified writes the moment of the second order, and reports whether
// it is the one asked for. apart keeps its axial load apart from the one that
// helps in bending.
func (w *wall) recordMagnified(c *working.Chain, base, want units.MomentPerLength, apart bool) bool {
	pu := w.greatestAxial()
	m := chain()
	w.recordGreatest(m, "Pu")
	m.Add("Ec", "57000 √f'c", units.Of(concrete.ModulusOfElasticity(w.Material.Fc), units.Strength), "19.2.2.1",
		term("f'c", w.Material.Fc, units.Strength))
	if w.freeStem() {
		m.Add("lu", "2 ht", units.Of(w.effectiveHeight(), units.Level), "6.6.4.4.3", term("ht", w.Height, units.Level))
	}
	got, ok := concrete.MagnifiedMoment(base, pu, w.Material.Fc, w.Thickness, w.effectiveHeight(), 1, m)
	if !ok || !alike(got, want) {
		return false
	}
	if apart {
		renamed(m.Steps, "Pu", "Pu,max")
	}
	c.Steps = append(c.Steps, m.Steps...)
	return true
}

// recordGreatest writes the greatest axial load.
func (w *wall) recordGreatest(c *working.Chain, symbol string) {
	c.Add(symbol, "max(1.4 Pd; 1.2 Pd + 1.6 Pl)", units.Of(w.greatestAxial(), units.LineForce), "5.3.1",
		w.axialTerms()[:2]...)
}

// helping writes the axial load that helps in bending.
func (w *wall) helping(c *working.Chain, pu units.ForcePerLength) {
	if !w.quiet && pu > 0 {
		c.Add("Pu", "0.9 Pd", units.Of(pu, units.LineForce), "5.3.1", w.axialTerms()[:1]...)
	}
}

// renamed gives a symbol another name in steps that are nobody else's.
func renamed(steps []working.Step, from, to string) {
	for i := range steps {
		s := &steps[i]
		if s.Symbol == from {
			s.Symbol = to
		}
		for j := range s.With {
			if s.With[j].Symbol == from {
				s.With[j].Symbol = to
				s.Formula = working.Rename(s.Formula, from, to)
			}
		}
	}
}

// forShear starts the working of a check that asks for a factored shear.
func (w *wall) forShear(n shearNeed) *working.Chain {
	c := chain()
	if s := w.stageOf(n.stage); !w.quiet && s != nil && w.reckon(s, true, w.coupleOf(s)).shear(c, n) {
		return c
	}
	return chain()
}

// forReaction starts the working of a check that asks for a reaction of the
// wall held at its top: at service or at factored level, of the top or of the
// foot.
func (w *wall) forReaction(v units.ForcePerLength, factored, top bool) *working.Chain {
	s := w.stageOf(Finished)
	if w.quiet || s == nil || absForce(v) <= least {
		return chain()
	}
	couples := [2]units.MomentPerLength{}
	couples[1], _ = w.axialCouples()
	if factored {
		_, couples[1] = w.axialCouples()
	}
	for _, couple := range couples {
		c := chain()
		if w.reckon(s, factored, couple).reaction(c, v, top) {
			return c
		}
	}
	return chain()
}

// forJoint starts the working of the shear across the footing joint.
func (w *wall) forJoint(st Stage, v units.ForcePerLength) *working.Chain {
	if s := w.stageOf(st); s != nil && !s.held() {
		return w.forShear(shearNeed{stage: st, v: v})
	}
	return w.forReaction(v, true, false)
}

// coupleOf is the couple that the analysis of a stage put on the brace.
func (w *wall) coupleOf(s *StageResult) units.MomentPerLength {
	if w.Axial.Eccentricity == 0 || s.Name == BeforeSlab || (s.Name == Filling && s.held()) {
		return 0
	}
	if w.freeStem() {
		_, u := w.stemCouple()
		return u
	}
	_, u := w.spanCouple()
	return u
}

// forAxial starts the working of a check of the greatest moment with tension
// on face f beside the greatest axial load.
func (w *wall) forAxial(moments []momentNeed, f Face, pu units.ForcePerLength) *working.Chain {
	c := chain()
	if w.quiet {
		return c
	}
	for _, n := range moments {
		if n.face == f && n.m == most(moments, f) {
			n.pu = 0
			c = w.forMoment(n)
			break
		}
	}
	if !has(c, "Pu") {
		w.recordGreatest(c, "Pu")
	}
	return c
}

// forPlainAxial starts the working of the compression face of plain concrete:
// the moment m is the greatest of the stages, or that of the eccentricity e.
func (w *wall) forPlainAxial(moments []momentNeed, m units.MomentPerLength, e float64) *working.Chain {
	c := chain()
	if w.quiet {
		return c
	}
	for _, n := range moments {
		if n.m == m {
			c = w.forMoment(n)
			break
		}
	}
	if !has(c, "Pu") {
		w.recordGreatest(c, "Pu")
	}
	if pu := w.greatestAxial(); !has(c, "Mu") && alike(float64(m), float64(pu)*e) {
		c.Add("Mu", "Pu max(0.1 h; ea)", units.Of(m, units.LineMoment), "14.4.2.1", term("Pu", pu, units.LineForce),
			term("h", w.Thickness, units.Size), w.axialTerms()[2])
	}
	return c
}
