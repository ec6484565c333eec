package calc

import (
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// closest is the least spacing that is offered: a crew can place and vibrate
// it (judgement; 25.2.1 allows less).
const closest = 4 * units.Inch

// tiesUnder is the spacing of bars of Grade 80 under which their development
// asks for ties across them, ACI 318-19 25.4.2.2 (from memory).
const tiesUnder = 6 * units.Inch

// closestSpacing is the least spacing that is offered in this wall's steel.
func (w *wall) closestSpacing() units.Length {
	if rebar.NeedsTies(w.Material.Fy, closest) {
		return tiesUnder
	}
	return closest
}

// stone is the largest stone of the concrete, which nobody asks for: 3/4 in,
// the usual one (common practice, no source).
const stone = 0.75 * units.Inch

// checkClearance asks whether bars fixed by the person leave room between them
// for the concrete, 25.2.1, and for their development; in the residential book
// verticals lie no nearer than half the wall's thickness (R404.1.3.3.7.6).
func (w *wall) checkClearance() {
	ask := func(role BarRole, size int, spacing units.Length) {
		bar, known := rebar.ByNumber(size)
		if !known {
			return
		}
		least, clause, book := bar.Diameter+rebar.ClearSpacing(bar, stone), "25.2.1", w.aci.Name
		if rebar.NeedsTies(w.Material.Fy, spacing) {
			least, clause = tiesUnder, "25.4.2.2"
		}
		if half := w.Thickness / 2; w.r.Governs == Residential && role == VerticalBar && half > least {
			least, clause, book = half, "R404.1.3.3.7.6", w.r.Editions[Residential]
		}
		w.ask("bar-clearance", Finished, units.Of(least, units.Size), units.Of(spacing, units.Size), clause, of(role), by(book))
	}
	if v := w.Vertical; v.Fixed {
		ask(VerticalBar, v.Size, v.Spacing)
	}
	if h := w.Horizontal; h.Fixed {
		ask(HorizontalBar, h.Size, h.Spacing)
	}
	if d := w.Dowels; d.Fixed && !d.None {
		ask(DowelBar, d.Size, d.Spacing)
	}
}
