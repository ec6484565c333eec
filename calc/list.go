package calc

import (
	"math"

	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// checkDowels asks for the lap of dowels and verticals and for the hook in the
// footing. A free wall's hook must be whole; elsewhere a short hook lowers the
// dowels' strength, which the other checks carry.
func (w *wall) checkDowels(decides bool) {
	d := w.dowel
	if d.absent {
		w.without("dowel-lap", Finished, "25.5.2", note("no-dowels"))
		w.without("dowel-hook", Finished, "25.4.3", note("no-dowels"))
		return
	}
	if w.vert.none() {
		w.without("dowel-lap", Finished, "25.5.2", note("nothing-to-lap"))
	} else {
		w.ask("dowel-lap", Finished, units.Of(d.lap, units.Size), units.Of(d.up, units.Size), "25.5.2", steps(w.lapWorking()), decidesIf(decides))
	}
	w.checkLapGap(decides)
	hc := chain()
	rebar.Hook(d.bar, w.setting(d.barSet, w.Material.Fc), hc)
	if !w.Footing.Given {
		w.leaveOpen("dowel-hook", Finished, units.Of(d.ldh, units.Size), "25.4.3", note("needs-footing"), steps(hc), decidesIf(w.freeStem()))
		return
	}
	w.record(hc, "lav", "max(0; tf − 3)", units.Of(d.down, units.Size), "20.5.1.3.1", term("tf", w.Footing.Thickness, units.Size))
	must := w.freeStem() || w.Foot.Fixed || (w.Condition == TiedToSlab && w.Tie.Before == StandsAlone)
	w.ask("dowel-hook", Finished, units.Of(d.ldh, units.Size), units.Of(d.down, units.Size), "25.4.3.1", steps(hc), decidesIf(must && decides))
	if w.vert.none() {
		return
	}
	if d.fixed && (w.freeStem() || w.standsAlone()) {
		// At the joint they are the bars of the stem.
		c, most := w.more(), w.stemRule(d.barSet).MaxSpacing
		w.recordSpacing(c, most, w.tensionCover(d.barSet))
		w.ask("bar-spacing", Finished, units.Of(d.spacing, units.Size), units.Of(most, units.Size), "7.7.2.2, 24.3.2", steps(c), decidesIf(decides), of(DowelBar))
	}
	rule := w.wallRule(d.barSet)
	need := rule.Ratio * w.Thickness.Inches()
	sc := w.more()
	if sc.On() {
		sc.Add("As,min", "ρ h", units.Of(units.AreaPerLength(need), units.SteelArea), rule.Clause, number("ρ", rule.Ratio), term("h", w.Thickness, units.Size))
	}
	w.recordSteel(sc, "As", d.bar, d.spacing)
	w.ask("dowel-steel", Finished, units.Of(units.AreaPerLength(need), units.SteelArea), units.Of(d.area(), units.SteelArea), "16.3.4.2", steps(sc), decidesIf(decides))
}

// checkLapGap asks for the distance, centre to centre, of dowels and verticals
// that are lapped without touching, 25.5.1.3, where the person gave the place of one of them.
func (w *wall) checkLapGap(decides bool) {
	d, v := w.dowel, w.vert
	apart := func(v barSet) units.Length { return absLength(w.depth(v, FaceB) - w.depth(d.barSet, FaceB)) }
	switch {
	case w.vertA.none():
	case w.standsAlone() || w.Foot.Fixed:
		v = w.lapped() // the bending passes the joint there
	case apart(w.vertA) < apart(v):
		v = w.vertA
	}
	if v.none() || (!d.fixed && !v.fixed) {
		return
	}
	gap := apart(v)
	c := w.more()
	if c.On() {
		c = w.lapWorking()
	}
	c.Add("gmax", "min(lst/5; 6)", units.Of(rebar.NoncontactGapLimit(d.lap), units.Size), "25.5.1.3", term("lst", d.lap, units.Size))
	w.ask("lap-gap", Finished, units.Of(gap, units.Size), units.Of(rebar.NoncontactGapLimit(d.lap), units.Size), "25.5.1.3", steps(c), decidesIf(decides))
}

// listBars lists every set of bars that is to be placed.
func (w *wall) listBars() {
	var bars []Bar
	for _, set := range []barSet{w.vert, w.vertA} {
		if !set.none() {
			bars = append(bars, w.verticalBar(set, w.roleOf(set)))
		}
	}
	bars = append(bars, w.horizontalBars()...)
	if d := w.dowel; !d.absent && d.bar.Number != 0 {
		bars = append(bars, w.dowelBar())
	}
	bars = append(bars, w.r.Bars...)
	if w.Footing.Given {
		bars = append(bars, w.alongFooting())
	}
	w.r.Bars = bars
}

func (w *wall) verticalBar(b barSet, role BarRole) Bar {
	out := Bar{Role: role, Direction: "vertical", Face: b.face, Size: b.bar.Number, Spacing: b.spacing,
		Depth: w.depth(b, b.face), Fixed: b.fixed, Rulebook: w.aci.Name, Clause: "11.6.1"}
	out.Cover = w.coverOf(b)
	if !w.dowel.absent && w.Footing.Given {
		lap := w.dowel.lap
		if !w.vertA.none() && b.face != w.lapped().face {
			lap = rebar.LapB(b.bar, w.setting(b, w.Material.Fc), nil) // of its own bars: no dowels stand there
		}
		out.Lap = units.Length(math.Ceil(lap.Inches() - 1e-9))
	}
	if w.r.Governs == Residential && !b.fixed {
		out.Rulebook, out.Clause = w.r.Editions[Residential], w.r.Table.Name
	}
	if w.freeStem() {
		out.Clause = "7.6.1.1"
	}
	return out
}

func (w *wall) dowelBar() Bar {
	d := w.dowel
	b := Bar{Role: DowelBar, Direction: "vertical", Face: d.face, Size: d.bar.Number, Spacing: d.spacing, Up: d.up, Down: d.down,
		HookAvail: d.down, Hook: rebar.HookTail(d.bar), Depth: w.depth(d.barSet, d.face), Fixed: d.fixed, Rulebook: w.aci.Name, Clause: "16.3.4.2"}
	if w.vert.none() {
		b.Rulebook, b.Clause = w.r.Editions[Residential], "R404.1.3.3.7.8"
	} else if w.r.Governs == Residential && !d.fixed {
		b.Rulebook, b.Clause = commonPractice, ""
	}
	return b
}

// horizontalBars lists the horizontals by the rulebook that governs, and the
// pair that the trade sets at the top (common practice, no source).
func (w *wall) horizontalBars() []Bar {
	pair := Bar{Role: TopBar, Direction: "horizontal", Face: Centre, Size: 4, Count: 2, Levels: []units.Length{w.Height - 3*units.Inch},
		Rulebook: commonPractice}
	pair.Lap = w.lapAlong(pair.Size, true)
	if (w.r.Governs == Residential || w.r.Plain) && !w.Horizontal.Fixed {
		h := w.tableHorizontals()
		h.Lap = w.lapAlong(h.Size, true)
		return []Bar{h, pair}
	}
	bar, s := w.pickHorizontals()
	min := w.horizontalRule(bar)
	h := Bar{Role: HorizontalBar, Direction: "horizontal", Face: w.vert.face, Size: bar.Number, Spacing: s, Fixed: w.Horizontal.Fixed,
		Rulebook: w.aci.Name, Clause: min.Clause}
	if h.Face == FaceUnset {
		h.Face = Centre
	}
	h.Lap = w.lapAlong(bar.Number, true)
	return []Bar{h, pair}
}

// lapAlong is the lap of a bar that runs along the wall or its footing, class B
// (25.5.2.1), up to a whole inch. High is a bar with more than 12 in of
// concrete below it (25.4.2.5). It serves the bars of the tables and of the
// trade too, which print none.
func (w *wall) lapAlong(size int, high bool) units.Length {
	bar, known := rebar.ByNumber(size)
	if !known {
		return 0
	}
	setting := rebar.Setting{Fc: w.Material.Fc, Fy: w.Material.Fy, Lambda: 1, Favorable: true, TopBar: high}
	return units.Length(math.Ceil(rebar.LapB(bar, setting, nil).Inches() - 1e-9))
}

// alongFooting lists the bars along the footing: where it has bars across,
// shrinkage steel 0.0018 Ag (24.4.3.2); else the two that the trade sets
// (common practice, no source).
func (w *wall) alongFooting() Bar {
	f := w.Footing
	b := Bar{Role: FootingBar, Direction: "along the footing", Size: 4, Count: 2, Cover: footingCover, Rulebook: commonPractice}
	if f.Thickness >= 12*units.Inch || w.Thickness >= 10*units.Inch {
		b.Size = 5
	}
	for _, x := range w.r.Bars {
		if x.Role == ToeBar || x.Role == HeelBar {
			bar, _ := rebar.ByNumber(b.Size)
			n := int(math.Ceil(0.0018*f.Width.Inches()*f.Thickness.Inches()/float64(bar.Area) - 1e-9))
			b.Count, b.Rulebook, b.Clause = max(2, n), w.aci.Name, "24.4.3.2"
		}
	}
	b.Lap = w.lapAlong(b.Size, false)
	return b
}
