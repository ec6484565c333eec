package calc

import (
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

// needsOf reads the moments and shears that one stage asks of the wall held at
// its top. pu is the axial load that helps for certain.
func (w *wall) needsOf(s *StageResult, pu units.ForcePerLength) (ms []momentNeed, vs []shearNeed) {
	for _, p := range s.Moments {
		if p.Factored <= 1e-9 {
			continue
		}
		joint := p.At == 0 && w.Foot.Fixed
		ms = append(ms, momentNeed{stage: s.Name, face: p.TensionFace, m: p.Factored, at: p.At, pu: pu, joint: joint})
	}
	main := FaceB
	if len(ms) > 0 {
		main = ms[0].face
	}
	v := s.Shears[0]
	need := shearNeed{stage: s.Name, face: main, v: v.Factored, at: v.At}
	if w.Foot.Held == SlabTight {
		need.tight = s // 7.4.3.2, read so by judgement
	}
	vs = append(vs, need)
	return ms, vs
}

// answerHeld designs a wall held at its top, in stage st with the supports and
// pushes given: plain where chapter 14 carries it, else reinforced. extra are
// the needs of other stages that the same bars must cover.
func (w *wall) answerHeld(s *StageResult, supports []statics.Support, extraM []momentNeed, extraV []shearNeed) {
	pu := units.ForcePerLength(w.lf.DeadHelps * float64(w.Axial.Dead))
	ms, vs := w.needsOf(s, pu)
	if pu > 0 {
		ms, vs = w.fillingNeeds(s, supports, ms, vs)
	}
	w.brackets(&ms)
	w.bracketShear(s, supports, &vs)
	held := len(extraM) == 0
	first := len(w.r.Checks)
	plainOK := w.checkPlain(ms, vs) && held && !w.Foot.Fixed
	w.plainOK = plainOK
	all, allV := append(ms, extraM...), append(vs, extraV...)
	fixedPlain := w.Vertical.Fixed && !w.meetsMinimum(w.wallRule) && plainOK
	asPlain := plainOK && (!w.Vertical.Fixed || fixedPlain)
	if w.built != nil {
		asPlain = w.built.plain
	}
	for i := first; i < len(w.r.Checks); i++ {
		w.r.Checks[i].Decides = asPlain
	}
	w.r.Plain = asPlain
	if asPlain && !w.Vertical.Fixed {
		w.setDowels()
		return
	}
	all = w.magnified(all)
	w.pickVerticals(all, allV, w.wallRule)
	w.setDowels()
	mid := len(w.r.Checks)
	w.checkReinforced(all, allV, w.wallRule, !asPlain)
	if plainOK && !asPlain && verdict(w.r.Checks[mid:]) != Holds {
		w.answerAsPlain()
	}
}

// answerAsPlain lets chapter 14 decide for a wall that passes wholly by it and
// not by chapter 11: its bars are then shown to compare.
func (w *wall) answerAsPlain() {
	w.r.Plain = true
	for i := range w.r.Checks {
		switch c := &w.r.Checks[i]; c.ID {
		case "plain-flexure", "plain-shear", "plain-compression", "minimum-thickness":
			c.Decides = true
		case "flexure", "shear", "axial-flexure", "slenderness", "minimum-vertical", "bar-spacing", "minimum-horizontal":
			c.Decides = false
		}
	}
}

// meetsMinimum reports whether the person's verticals reach the rule's
// minimum; below it the wall counts as plain.
func (w *wall) meetsMinimum(rule barRule) bool {
	set := w.personsBars(FaceB)
	return set.area() >= units.AreaPerLength(rule(set).Ratio*w.Thickness.Inches())*(1-1e-9) || w.FourThirds
}

// fillingNeeds adds the stage in which the wall is filled and braced but
// carries no house yet: the axial load helps in the finished stage only.
func (w *wall) fillingNeeds(s *StageResult, supports []statics.Support, ms []momentNeed, vs []shearNeed) ([]momentNeed, []shearNeed) {
	pushes := s.Pushes
	fill, ok := w.analyse(Filling, pushes, supports, 0, 0)
	if !ok {
		return ms, vs
	}
	fm, fv := w.needsOf(fill, 0)
	return append(ms, fm...), append(vs, fv...)
}

// brackets adds the moment of an axial load at the brace: of one that stands
// toward B, with tension on A; of one toward A where 1.4 D is the greatest, for
// the span has the moment of 1.2 D + 1.6 L.
func (w *wall) brackets(ms *[]momentNeed) {
	m, face := w.bracketMoment(), FaceA
	if w.Axial.Eccentricity <= 0 {
		if _, u := w.spanCouple(); m <= u {
			return
		}
		face = FaceB
	}
	*ms = append(*ms, momentNeed{stage: Finished, face: face, m: m, at: w.Brace})
}

// bracketShear adds the shear at the brace of an axial load that stands toward
// B, where it is the greater: its couple is held by the two supports.
func (w *wall) bracketShear(s *StageResult, supports []statics.Support, vs *[]shearNeed) {
	if w.Axial.Eccentricity <= 0 || w.Axial.Dead+w.Axial.Live <= 0 {
		return
	}
	if v := w.heldReactions(s.Pushes, supports).topU; v > s.Shears[0].Factored {
		*vs = append(*vs, shearNeed{stage: s.Name, face: FaceA, v: v, at: w.Brace})
	}
}
