package calc

import "standingbeam/calc/units"

// complete lists the checks of the contract that were not asked of this wall,
// each with the reason, so that none is missing in silence.
func (w *wall) complete() {
	asked := map[string]bool{}
	for _, c := range w.r.Checks {
		asked[c.ID] = true
	}
	st := Finished
	add := func(why string, ids ...string) {
		for _, id := range ids {
			if !asked[id] {
				asked[id] = true
				w.without(id, st, "", note(why))
			}
		}
	}
	if w.plainOK {
		add("plain-carries", "flexure", "shear", "minimum-vertical", "bar-spacing")
	}
	if w.freeStem() {
		add("plain-joint", "plain-shear")
	}
	switch {
	case w.Condition == TiedToSlab && w.Tie.Before == Rakers:
		st = BeforeSlab
		add("rakers-hold", "overturning", "sliding", "resultant-in-middle-third")
		st = Finished
		if !asked["bearing"] && !w.Footing.Given {
			asked["bearing"] = true
			w.leaveOpen("bearing", Finished, units.Quantity{Kind: units.Pressure}, "1806.2", note("needs-footing"), by(w.ibc.Name))
		}
	case (w.freeStem() || w.Condition == TiedToSlab) && !w.Footing.Given:
		add("needs-footing", "resultant-in-middle-third")
	}
	if w.freeStem() || w.Condition == TiedToSlab {
		add("no-projection", "toe-flexure", "toe-shear", "heel-flexure", "heel-shear")
	}
	add("nothing-bends", "plain-flexure", "plain-shear", "flexure", "shear", "minimum-vertical", "minimum-horizontal", "bar-spacing",
		"minimum-thickness", "deflection", "dowel-lap", "dowel-hook", "joint-shear-friction")
}
