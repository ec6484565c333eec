package calc

import (
	"standingbeam/calc/units"
)

// today answers whether the wall may be filled today, from how it is held
// today and today's concrete. An open question never counts as holding.
func (w *wall) today() {
	t := &w.r.Today
	if w.GradeA <= 0 {
		t.Permission, t.Level = MayFill, 0
		return
	}
	if w.Today.Concrete == 0 {
		w.assume("today-full-strength", units.Of(w.Material.Fc, units.Strength))
	}
	if w.heldToday() {
		missing := w.notYet()
		switch {
		case len(missing) > 0:
			t.Because = append(t.Because, missing...)
		case verdict(w.r.Checks) == Fails:
			t.Because = append(t.Because, note("finished-fails"))
			return
		case w.freeStem() && w.Condition == SoilBothSides && !w.anyOrder():
			t.Because = append(t.Because, note("fill-by-chart"))
		default:
			t.Permission, t.Level = MayFill, w.GradeA
			return
		}
	} else {
		t.Because = append(t.Because, w.missingToday()...)
		t.Because = append(t.Because, w.forbidden()...)
	}
	if w.r.Governs == Residential && w.GradeA < bracingFrom {
		t.Because = append(t.Because, note("bracing-waived", units.Of(bracingFrom, units.Level)))
	}
	w.standToday(t)
}

// heldToday reports whether what holds the finished wall is there today.
func (w *wall) heldToday() bool {
	foot := w.Foot.Held != SlabTight || w.Today.Slab
	switch w.Condition {
	case FreeTop:
		return foot
	case TiedToSlab:
		return w.Today.Slab
	case SoilBothSides:
		if !w.TopHeld {
			return true
		}
	}
	return w.Today.Floor && foot
}

// anyOrder reports whether each side may be filled first, with the other one
// empty.
func (w *wall) anyOrder() bool {
	r := w.r
	return len(r.Chart) > 0 && r.Chart[0].High >= w.GradeA && (w.GradeB <= 0 || r.LowFirst.Low >= w.GradeB)
}

// missingToday says what does not hold yet.
func (w *wall) missingToday() (out []Note) {
	switch w.Condition {
	case TiedToSlab:
		if !w.Today.Slab {
			out = append(out, note("tie-slab-not-cast"))
		}
	default:
		if !w.freeStem() && !w.Today.Floor {
			out = append(out, note("nothing-holds-top"))
		}
		if w.Foot.Held == SlabTight && !w.Today.Slab {
			out = append(out, note("slab-not-in"))
		}
	}
	if w.Condition != FreeTop || w.Foot.Held != GroundOnly {
		w.caution("not-held-today")
	}
	return out
}

// notYet lists what in the finished answer does not hold with today's
// concrete: failing and open checks that decide.
func (w *wall) notYet() (out []Note) {
	r := w.r
	fc := w.todayFc()
	if fc < fcMin*(1-1e-9) {
		// What fails in the weakest concrete that is asked fails in this one.
		out = append(out, note("concrete-too-young", units.Of(fc, units.Strength), units.Of(fcMin, units.Strength)))
	}
	if fc = max(fc, fcMin); fc < w.Material.Fc || w.Axial != (Axial{}) {
		in := w.given
		in.Today = Today{}
		in.Material.Fc, in.Axial, in.Rulebook = fc, Axial{}, w.r.Governs
		weak := answer(in, w.asBuilt())
		r = &weak
	}
	for _, c := range r.Checks {
		if c.Decides && c.State != Holds && c.State != NotApplicable {
			id := "today-check-fails"
			if c.State == Open {
				id = "today-check-open"
			}
			out = append(out, noteText(id, c.ID))
		}
	}
	return out
}

// standToday answers with the height that the wall stands by itself.
func (w *wall) standToday(t *TodayAnswer) {
	if !w.Footing.Given {
		t.Permission = DoNotFill
		t.Because = append(t.Because, note("needs-footing"))
		return
	}
	for _, n := range t.Because {
		if n.ID != "" && w.forbids(n.Text) {
			t.Permission = DoNotFill
			return
		}
	}
	level, governs := w.highest(0, w.GradeA, w.todayFc())
	if w.freeStem() && w.Condition == SoilBothSides && w.GradeB > 0 && w.r.LowFirst.Low < level {
		level, governs = w.r.LowFirst.Low, w.r.LowFirst.Governs
	}
	t.Level, t.Governs = level, governs
	switch {
	case level >= w.GradeA && verdict(w.r.Checks) == Fails:
		// The last inch of fill makes it the finished wall.
		t.Permission, t.Level = DoNotFill, 0
		if !w.heldToday() {
			t.Because = append(t.Because, note("finished-fails"))
		}
	case level >= w.GradeA:
		t.Permission = MayFill
	case level >= leastFill:
		t.Permission = FillOnlyTo
	default:
		t.Permission = DoNotFill
		t.Level = 0
	}
}

// forbidden lists what does not hold of the finished wall and would forbid any
// fill, for a wall that is not held today: what is not known of the ground is
// not known of a low fill either.
func (w *wall) forbidden() (out []Note) {
	for _, c := range w.r.Checks {
		if c.Decides && (c.State == Fails || c.State == Open) && w.forbids(c.ID) {
			out = append(out, noteText("today-check-"+map[State]string{Fails: "fails", Open: "open"}[c.State], c.ID))
		}
	}
	return out
}

// forbids reports whether a check that does not hold forbids any fill: one that
// the height of fill does not answer.
func (w *wall) forbids(check string) bool {
	switch check {
	case "":
		return false
	case "soil-suitable", "seismic-earth", "strip", "slenderness":
		return true
	case "overturning", "sliding", "bearing", "flexure", "shear", "joint-shear-friction", "foot-support", "level-difference",
		"heel-flexure", "heel-shear", "toe-flexure", "toe-shear":
		return false
	}
	return w.freeStem()
}

// bracingFrom is the unbalanced fill from which the residential code asks for
// bracing before the fill, IRC 2021 R404.1.7. Strength and sliding are asked
// below it too.
const bracingFrom = 4 * units.Foot

// leastFill is the least height of fill worth permitting (judgement).
const leastFill = 6 * units.Inch
