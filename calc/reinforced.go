package calc

import (
	"standingbeam/calc/concrete"
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// pickVerticals sets the layers of verticals: the person's, else one layer on
// the face that is asked most, and a second one where the other face is not
// carried by the first where it lies.
func (w *wall) pickVerticals(moments []momentNeed, shears []shearNeed, rule barRule) {
	w.pulled = FaceA
	if w.freeStem() {
		w.pulled = w.mainFace(moments)
	}
	if w.built != nil {
		w.vert, w.vertA = w.built.vert, w.built.vertA
		return
	}
	if w.Vertical.Fixed {
		w.vert = w.personsBars(w.mainFace(moments))
		return
	}
	main := w.mainFace(moments)
	w.vert, _ = w.choose(main, most(moments, main), w.mostShear(shears, main), w.ruleFor(main, rule), w.roomFor(moments, main))
	other := FaceA
	if main == FaceA {
		other = FaceB
	}
	// An unbraced stem has bars of its own.
	stem := w.standsAlone() && other == FaceA && most(moments, FaceA) > 0
	if m := most(moments, other); stem || m > w.capacity(other, 0, nil) || !w.ductile(m, other) || w.mostShear(shears, other)(w.depth(w.vert, other)) > w.shearCapacity(other) {
		w.vertA, _ = w.choose(other, m, w.mostShear(shears, other), w.ruleFor(other, rule), w.roomFor(moments, other))
	}
}

// standsAlone reports whether a wall that a slab will tie has to stand as an
// unbraced stem before.
func (w *wall) standsAlone() bool { return w.Condition == TiedToSlab && w.Tie.Before == StandsAlone }

// stemFace reports whether the bars on face f carry an unbraced stem: those on
// the open side of a wall that a slab will tie only where it has no others.
func (w *wall) stemFace(f Face) bool {
	return w.freeStem() || w.standsAlone() && (f != FaceB || w.vert.fixed)
}

// ruleFor is the rule of the layer on face f: an unbraced stem is a one-way
// slab.
func (w *wall) ruleFor(f Face, rule barRule) barRule {
	if w.stemFace(f) {
		return w.stemRule
	}
	return rule
}

// roomFor is the embedment that the hooks of the layer on face f have; zero
// where no bending passes the joint on that face.
func (w *wall) roomFor(moments []momentNeed, f Face) units.Length {
	for _, n := range moments {
		if n.face == f && n.joint {
			return w.hookRoom()
		}
	}
	return 0
}

func (w *wall) personsBars(main Face) barSet {
	v := w.Vertical
	bar, _ := rebar.ByNumber(v.Size)
	set := barSet{bar: bar, spacing: v.Spacing, face: v.Face, d: v.Depth, fixed: true}
	if set.face == FaceUnset {
		set.face = main
	}
	return set
}

func (w *wall) mainFace(moments []momentNeed) Face {
	if a, b := most(moments, FaceA), most(moments, FaceB); a > b || w.freeStem() && b <= 0 {
		return FaceA
	}
	return FaceB
}

func most(all []momentNeed, f Face) (m units.MomentPerLength) {
	for _, n := range all {
		if n.face == f {
			m = max(m, n.m)
		}
	}
	return m
}

// mostShear is the greatest shear with tension on face f, by the depth d of the
// strip that takes it.
func (w *wall) mostShear(all []shearNeed, f Face) func(d units.Length) units.ForcePerLength {
	return func(d units.Length) (v units.ForcePerLength) {
		for _, n := range all {
			if n.face == f {
				v = max(v, n.atD(w, d).v)
			}
		}
		return v
	}
}

func (w *wall) shearCapacity(f Face) units.ForcePerLength {
	set := w.bestSet(f)
	if set.none() {
		return 0
	}
	return w.section(set, f).Shear(0, true, nil)
}

// checkReinforced asks for bending, shear, steel and spacing of the wall with
// its verticals, chapters 7, 11 and 22. decides tells whether the wall is
// answered as reinforced.
func (w *wall) checkReinforced(moments []momentNeed, shears []shearNeed, rule barRule, decides bool) {
	if w.vert.none() {
		return
	}
	for _, n := range moments {
		w.checkFlexure(n, moments, decides)
	}
	w.checkAxial(moments, decides)
	for _, n := range shears {
		set := w.bestSet(n.face)
		n = n.atD(w, w.depth(set, n.face))
		c := w.forShear(n)
		w.recordSet(c, set, n.face)
		w.ask("shear", n.stage, units.Of(n.v, units.LineForce), units.Of(w.section(set, n.face).Shear(0, true, c), units.LineForce),
			"22.5.5.1", at(n.at), steps(c), decidesIf(decides))
	}
	w.checkLayer(w.vert, rule, moments, decides)
	if !w.vertA.none() {
		w.checkLayer(w.vertA, rule, moments, decides)
	}
}

// checkFlexure asks for one moment of all. At the footing joint only the dowels
// pass.
func (w *wall) checkFlexure(n momentNeed, all []momentNeed, decides bool) {
	c := w.forMoment(n)
	w.helping(c, n.pu)
	w.recordSet(c, w.bestSet(n.face), n.face)
	clause := "22.3"
	capacity := w.capacity(n.face, n.pu, c)
	if n.joint && w.Footing.Given {
		jc := w.forMoment(n)
		w.recordDowels(jc, n.face)
		if joint := w.jointMoment(n.face, w.Material.Fc, jc); joint < capacity*(1-1e-9) {
			capacity, c, clause = joint, jc, "22.3; 25.4"
		}
	}
	unbraced := w.freeStem() || n.stage == BeforeSlab
	check := w.ask("flexure", n.stage, units.Of(n.m, units.LineMoment), units.Of(capacity, units.LineMoment), clause, at(n.at), steps(c), decidesIf(decides))
	reason := note("not-tension-controlled")
	brittle := func(sec concrete.Section) bool { return sec.As > 0 && !sec.Flexure(nil).TensionControlled }
	set := w.bestSet(n.face)
	switch {
	case n.pu > 0:
	case n.joint && unbraced && n.m > 0 && w.Footing.Given && brittle(w.jointSection(n.face, w.Material.Fc)):
		check.State, check.Because = Fails, &reason
	case !brittle(w.section(set, n.face)):
	// Bars on the far face; in a stem they serve a greater moment there, and none
	// at its foot.
	case set.face != n.face && set.face != Centre && (!unbraced || n.m <= 0 || !n.joint && n.m <= most(all, set.face)) &&
		w.ductile(n.m, n.face) && check.State == Holds:
		reason = note("part-of-the-bars")
		check.Because = &reason
	default:
		check.State, check.Because = Fails, &reason
	}
}

// ductile reports whether a tension-controlled section, or that part of the bars
// which makes one, carries m with tension on face f (7.3.3.1).
func (w *wall) ductile(m units.MomentPerLength, f Face) bool {
	sec := w.section(w.bestSet(f), f)
	if m <= 0 || sec.Flexure(nil).TensionControlled {
		return true
	}
	part, ok := sec.SteelFor(m)
	return ok && part <= sec.As
}

// effectiveHeight is k lu: the height up to the brace, k = 1; twice the height
// of a free stem, whose top can lean (6.6.4.4.3).
func (w *wall) effectiveHeight() units.Length {
	if w.freeStem() {
		return 2 * w.Height
	}
	return w.Brace
}

// magnified returns the needs with the second-order moment of the axial load,
// ACI 318-19 6.6.4. A wall held at its top has the least one in its span, a
// free stem at its foot.
func (w *wall) magnified(ms []momentNeed) []momentNeed {
	pu := w.greatestAxial()
	if pu <= 0 {
		return ms
	}
	out := append([]momentNeed(nil), ms...)
	if !w.freeStem() {
		out = append(out, momentNeed{stage: Finished, face: FaceB, at: w.Brace / 2})
	}
	for i := range out {
		m, ok := concrete.MagnifiedMoment(out[i].m, pu, w.Material.Fc, w.Thickness, w.effectiveHeight(), 1, nil)
		if !ok {
			w.failed("slenderness", Finished, units.LineForce, "6.6.4.5, 6.2.5.3", note("too-slender", units.Of(pu, units.LineForce)))
			w.engineer("too-slender", units.Of(pu, units.LineForce))
			return ms
		}
		out[i].m = max(out[i].m, m)
	}
	return out
}

// greatestAxial is the greater of 1.4 D and 1.2 D + 1.6 L.
func (w *wall) greatestAxial() units.ForcePerLength {
	d, l := float64(w.Axial.Dead), float64(w.Axial.Live)
	return units.ForcePerLength(max(w.lf.DeadOnly*d, w.lf.Dead*d+w.lf.Live*l))
}

// checkAxial asks for the greatest moment beside the greatest axial load:
// above the balance point more load leaves less strength in bending.
func (w *wall) checkAxial(moments []momentNeed, decides bool) {
	pu := w.greatestAxial()
	if pu <= 0 {
		return
	}
	for _, f := range [2]Face{FaceB, FaceA} {
		m := most(moments, f)
		if m <= 0 {
			continue
		}
		c := w.forAxial(moments, f, pu)
		w.recordSet(c, w.bestSet(f), f)
		capacity := w.section(w.bestSet(f), f).FlexureWithAxial(pu, c).Design
		w.ask("axial-flexure", Finished, units.Of(m, units.LineMoment), units.Of(capacity, units.LineMoment), "22.4.1", steps(c), decidesIf(decides))
	}
}

// roleOf names a layer of verticals: a second set on the soil side of a wall
// held at its top stands there for a stage or for the moment at a bracket.
func (w *wall) roleOf(set barSet) BarRole {
	if set.face == FaceA && !w.freeStem() && !w.vertA.none() {
		return SoilVerticalBar
	}
	return VerticalBar
}

// checkLayer asks for minimum steel and spacing of one layer.
func (w *wall) checkLayer(set barSet, rule barRule, moments []momentNeed, decides bool) {
	rule = w.ruleFor(set.face, rule)
	min := rule(set)
	need := units.AreaPerLength(min.Ratio * w.Thickness.Inches())
	opts := []option{decidesIf(decides), of(w.roleOf(set))}
	if w.FourThirds && set.area() < need && w.enough(moments, 4.0/3) && !w.stemFace(set.face) {
		w.without("minimum-vertical", Finished, min.Clause, note("four-thirds-chosen"))
	} else {
		c := chain()
		c.Add("As,min", "ρ h", units.Of(need, units.SteelArea), min.Clause, number("ρ", min.Ratio), term("h", w.Thickness, units.Size))
		w.recordSteel(c, "As", set.bar, set.spacing)
		w.ask("minimum-vertical", Finished, units.Of(need, units.SteelArea), units.Of(set.area(), units.SteelArea), min.Clause, append(opts, steps(c))...)
	}
	c := w.more()
	w.recordSpacing(c, min.MaxSpacing, w.tensionCover(set))
	w.ask("bar-spacing", Finished, units.Of(set.spacing, units.Size), units.Of(min.MaxSpacing, units.Size), w.spacingClause(rule, set), append(opts, steps(c))...)
	w.checkCover(set, opts)
}

func (w *wall) spacingClause(rule barRule, set barSet) string {
	if rule(set).Clause == w.wallRule(set).Clause {
		return "11.7.2.1"
	}
	return "7.7.2.2, 24.3.2"
}

// enough reports whether the verticals carry factor times every need.
func (w *wall) enough(moments []momentNeed, factor float64) bool {
	for _, n := range moments {
		if units.MomentPerLength(factor)*n.m > w.capacity(n.face, n.pu, nil) {
			return false
		}
	}
	return true
}
