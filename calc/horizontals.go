package calc

import (
	"standingbeam/calc/concrete"
	"standingbeam/calc/prescriptive"
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// horizontalRule is the minimum of the wall's horizontals: chapter 11 for a
// wall held at its top, shrinkage and temperature steel (24.4.3) for a free
// stem.
func (w *wall) horizontalRule(b rebar.Bar) concrete.Minimum {
	if w.freeStem() {
		return concrete.ShrinkageMinimum(w.Thickness)
	}
	return concrete.WallHorizontalMinimum(b, w.Material.Fy, w.Thickness)
}

func (w *wall) freeStem() bool {
	return w.Condition == FreeTop || (w.Condition == SoilBothSides && !w.TopHeld)
}

// pickHorizontals chooses the horizontals: the person's, else least steel of
// No. 4 to No. 6 at the rule's minimum.
func (w *wall) pickHorizontals() (rebar.Bar, units.Length) {
	if w.Horizontal.Fixed {
		b, _ := rebar.ByNumber(w.Horizontal.Size)
		return b, w.Horizontal.Spacing
	}
	var best rebar.Bar
	var spacing units.Length
	for _, n := range []int{4, 5, 6} {
		bar, _ := rebar.ByNumber(n)
		min := w.horizontalRule(bar)
		need := min.Ratio * w.Thickness.Inches()
		s := buildable(minLength(min.MaxSpacing, units.Length(float64(bar.Area)/need*(1+1e-9))))
		if s < w.closestSpacing() {
			continue
		}
		a, b := bar.PerLength(s), best.PerLength(max(spacing, 1))
		if spacing == 0 || a < b-1e-9 || (a < b+1e-9 && s > spacing) {
			best, spacing = bar, s
		}
	}
	if spacing == 0 {
		best, _ = rebar.ByNumber(6)
		spacing = w.closestSpacing()
	}
	return best, spacing
}

// checkHorizontals asks for the horizontals of a reinforced wall. Chapter 14
// asks none of a plain wall; the residential table (1) still does.
func (w *wall) checkHorizontals() {
	if w.r.Plain && !w.Horizontal.Fixed {
		w.without("minimum-horizontal", Finished, "14.1", note("plain-needs-none"))
		return
	}
	bar, s := w.pickHorizontals()
	min := w.horizontalRule(bar)
	need := units.AreaPerLength(min.Ratio * w.Thickness.Inches())
	c := chain()
	c.Add("As,min", "ρ h", units.Of(need, units.SteelArea), min.Clause, number("ρ", min.Ratio), term("h", w.Thickness, units.Size))
	w.recordSteel(c, "As", bar, s)
	w.ask("minimum-horizontal", Finished, units.Of(need, units.SteelArea), units.Of(bar.PerLength(s), units.SteelArea), min.Clause, steps(c), decidesIf(!w.r.Plain), of(HorizontalBar))
	sc := w.more()
	w.recordSpacing(sc, min.MaxSpacing, 0)
	w.ask("bar-spacing", Finished, units.Of(s, units.Size), units.Of(min.MaxSpacing, units.Size), w.horizontalSpacingClause(), steps(sc), decidesIf(!w.r.Plain), of(HorizontalBar))
}

func (w *wall) horizontalSpacingClause() string {
	if w.freeStem() {
		return "24.4.3.3"
	}
	return "11.7.3.1"
}

// tableHorizontals are the counted No. 4 of IRC 2021 Table R404.1.2(1): one
// within 12 in of the top and one near mid-height up to 8 ft, near each third
// point above.
func (w *wall) tableHorizontals() Bar {
	_, places := prescriptive.Horizontals(w.Height)
	b := Bar{Role: HorizontalBar, Direction: "horizontal", Face: Centre, Size: 4,
		Rulebook: w.r.Editions[Residential], Clause: "Table R404.1.2(1)"}
	for _, p := range places {
		y := units.Length(p * w.Height.Inches())
		if p >= 1 {
			y = w.Height - 6*units.Inch
		}
		b.Levels = append(b.Levels, y)
	}
	b.Count = len(b.Levels)
	return b
}
