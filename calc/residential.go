package calc

import (
	"math"

	"standingbeam/calc/codes"
	"standingbeam/calc/prescriptive"
	"standingbeam/calc/rebar"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// tableColumn is the residential column for the soil: a class's by IRC 2021
// Table R405.1, a given equivalent fluid as it is, 60 for an unknown soil.
func (w *wall) tableColumn() (units.UnitWeight, bool) {
	switch w.Soil.Basis {
	case SoilClass:
		c, ok := soil.TableColumn(w.Soil.Class)
		return c, ok
	case SoilFluid:
		return w.Soil.Fluid, true
	case SoilUnknown:
		return 60 * units.PCF, true
	}
	return 0, false
}

// tableFill is the unbalanced fill for the table: the ground on side A, and
// the top of a slab that lies on it.
func (w *wall) tableFill() units.Length {
	return w.GradeA + units.Length(float64(w.Surcharge.Dead)/float64(concreteWeight))
}

// tableAnswer asks the residential tables, with every reason why the wall is
// outside them.
func (w *wall) tableAnswer() {
	column, listed := w.tableColumn()
	q := prescriptive.Query{Thickness: w.Thickness, Height: w.Height, Fill: w.tableFill(), Fluid: column,
		Fc: w.Material.Fc, Fy: w.Material.Fy, Centred: w.Vertical.Fixed && w.Vertical.Face == Centre}
	t := &w.r.Table
	t.Name = w.r.Editions[Residential] + " R404.1.2(8)"
	if q.Centred {
		t.Name = w.r.Editions[Residential] + " R404.1.2(3)"
	}
	add := func(id string, args ...units.Quantity) { t.Reasons = append(t.Reasons, note(id, args...)) }
	w.tableConditions(add, listed)
	for _, r := range prescriptive.Outside(q) {
		add("table-"+r.ID, r.Limit)
	}
	cell := prescriptive.Lookup(q)
	if other, ok := prescriptive.PlainByNote(q); ok {
		t.ByNote = other.Note
		cell.None, cell.Bar, cell.Spacing = true, rebar.Bar{}, 0
		w.assume("table-note-"+other.Note, units.Of(w.Material.Fc, units.Strength))
	}
	if cell.Found && cell.None && w.highSeismic() {
		irc := codes.IRC2021()
		cell.None, cell.Spacing = false, irc.PlainSeismicSpacing
		cell.Bar, _ = rebar.ByNumber(irc.PlainSeismicBar)
		w.assume("table-seismic-bars")
	}
	w.cell = cell
	if cell.Found && cell.Design {
		add("table-design-required")
	}
	if cell.Found {
		t.Row, t.FillRow = units.Length(cell.HeightRow)*units.Foot, units.Length(cell.FillRow)*units.Foot
		t.Column = units.UnitWeight(cell.Column) * units.PCF
		t.Plain, t.Footnote = cell.None, cell.Note
		if p, ok := prescriptive.InSteel(cell, w.Material.Fy); ok {
			t.Size, t.Spacing = p.Bar.Number, p.Spacing
		} else if !cell.None && !cell.Design {
			add("table-grade-not-offered")
		}
		for _, a := range prescriptive.Alternatives(cell) {
			t.Others = append(t.Others, Alternative{Size: a.Bar.Number, Fy: a.Grade, Spacing: a.Spacing})
		}
	}
	t.Inside = cell.Found && len(t.Reasons) == 0
}

// tableConditions adds the reasons that lie outside the table's own rows.
func (w *wall) tableConditions(add func(string, ...units.Quantity), listed bool) {
	if w.Condition != BracedTop {
		add("table-not-this-condition")
	}
	if w.Brace < w.Height-units.Foot || w.GradeA > w.Brace {
		add("table-brace-below-top", units.Of(w.Brace, units.Level))
	}
	if !listed {
		add("table-soil-not-listed")
	}
	if w.Water.Standing {
		add("table-water")
	}
	if w.Surcharge.Live > 0 {
		add("table-surcharge")
	}
	if w.Condition == BracedTop && w.Foot.Held == GroundOnly && w.tableFill() > 4*units.Foot*(1+1e-9) {
		add("table-foot-not-held", units.Of(4*units.Foot, units.Level))
	}
	beyond := w.Seismic == "E" || w.Seismic == "F" // the residential code covers A to D2, R301.2.2
	if w.highSeismic() && (beyond || over(w.Height, 8*units.Foot) || over(w.GradeA, 4*units.Foot) || over(3000*units.PSI, w.Material.Fc) || over(60*units.KSI, w.Material.Fy)) {
		add("table-seismic")
	}
	axial := float64(w.Axial.Dead + w.Axial.Live)
	if limit := 1.2 * w.Thickness.Inches() * w.Material.Fc.PSI() / 12; axial > limit { // IBC 2021 1807.1.6.2
		add("table-axial", units.Of(units.ForcePerLength(limit), units.LineForce))
	}
	// By judgement: ACI 318-19 11.5.3.1 asks the middle third of its simple method.
	if third := w.Thickness / 6; axial > 0 && over(absLength(w.Axial.Eccentricity), third) {
		add("table-eccentric", units.Of(third, units.Size))
	}
	if w.Soil.Swells == Unanswered && w.Soil.Basis == SoilUnknown {
		add("table-swelling-unanswered")
	}
}

// chooseRulebook decides which rulebook gives the headline: the person's
// choice, else the tables where the wall is inside them.
func (w *wall) chooseRulebook() {
	g := w.Rulebook
	if g == RulebookUnset {
		g = Engineered
		if w.r.Table.Inside {
			g = Residential
		}
	}
	w.r.Governs = g
	w.compareTable(g)
	if g != Residential {
		return
	}
	w.r.Compare, w.r.ComparePlain = nil, w.r.Plain
	if !w.vert.none() {
		w.r.Compare = []Bar{w.engineeredBar()}
	}
	for i := range w.r.Checks {
		if !staysDeciding(w.r.Checks[i].ID) {
			w.r.Checks[i].Decides = false
		}
	}
	w.takeTableBars()
	w.checkTable(true)
	w.checkTableHorizontals(true)
}

func (w *wall) engineeredBar() Bar {
	b := w.verticalBar(w.vert, VerticalBar)
	b.Rulebook, b.Clause = w.aci.Name, "11.6.1"
	return b
}

// staysDeciding lists the checks that the tables do not answer: what the floor
// edge and the foot must take, and the ground under the footing.
func staysDeciding(id string) bool {
	switch id {
	case "floor-edge", "foot-support", "bearing", "soil-suitable", "seismic-earth":
		return true
	}
	return false
}

// takeTableBars puts the printed cell in the place of the engineered bars: the
// cover is 1.25 in from the inside face (IRC 2021 Table R404.1.2(8), note h).
func (w *wall) takeTableBars() {
	w.alone = nil // it stands by the bars that are taken
	t := w.r.Table
	w.r.Plain = t.Inside && t.Plain && !w.Vertical.Fixed
	if w.built != nil {
		w.r.Plain, w.vert, w.vertA = w.built.plain, w.built.vert, w.built.vertA
		w.setDowels()
		return
	}
	w.vertA = barSet{}
	if w.Vertical.Fixed {
		return
	}
	if !t.Inside || t.Plain {
		w.vert = barSet{}
	} else {
		bar, _ := rebar.ByNumber(t.Size)
		w.vert = barSet{bar: bar, spacing: t.Spacing, face: FaceB, d: w.cell.Depth(w.Thickness)}
		if w.cell.Table == prescriptive.TableCentred {
			w.vert.face = Centre
		}
	}
	w.setDowels()
}

// checkTable asks whether the bars are at least those of the printed cell.
func (w *wall) checkTable(decides bool) {
	t := w.r.Table
	edition := w.r.Editions[Residential]
	if !t.Inside {
		w.leaveOpen("table-bars", Finished, units.Quantity{Kind: units.SteelArea}, t.Name, note("outside-table"), by(edition), decidesIf(decides))
		return
	}
	need := units.AreaPerLength(0)
	if !t.Plain {
		bar, _ := rebar.ByNumber(t.Size)
		need = bar.PerLength(t.Spacing)
	}
	have := w.vert.area()
	opts := []option{by(edition), decidesIf(decides), of(VerticalBar)}
	if w.Vertical.Fixed && !t.Plain {
		// Bars nearer the middle, or on the wrong face, count by their own d.
		share := float64(w.depth(w.vert, FaceB) / w.cell.Depth(w.Thickness))
		have = units.AreaPerLength(float64(have) * min(1, share))
		if w.vert.face == FaceA {
			opts = append(opts, because(note("bars-on-wrong-face")))
		}
	}
	w.ask("table-bars", Finished, units.Of(need, units.SteelArea), units.Of(have, units.SteelArea), t.Name, opts...)
	if w.Vertical.Fixed && !t.Plain {
		w.ask("bar-spacing", Finished, units.Of(w.vert.spacing, units.Size), units.Of(widestTable, units.Size), "R404.1.3.3.7.6",
			by(edition), decidesIf(decides), of(VerticalBar))
	}
}

// checkTableHorizontals asks whether horizontals fixed by the person are at
// least the counted No. 4 of table (1).
func (w *wall) checkTableHorizontals(decides bool) {
	if !w.Horizontal.Fixed {
		return
	}
	want, _ := prescriptive.Horizontals(w.Height)
	have := math.Floor(float64(w.Height/w.Horizontal.Spacing) + 1e-9)
	if w.Horizontal.Size < prescriptive.HorizontalBar() {
		have = 0
	}
	w.ask("table-horizontals", Finished, units.Quantity{Base: float64(want)}, units.Quantity{Base: have}, "Table R404.1.2(1)",
		by(w.r.Editions[Residential]), decidesIf(decides), of(HorizontalBar))
}

// widestTable is the widest spacing of the residential tables, IRC 2021
// R404.1.3.3.7.6.
const widestTable = 48 * units.Inch

// compareTable notes the table's bars beside an engineered answer.
func (w *wall) compareTable(g Rulebook) {
	t := w.r.Table
	if g != Engineered || !t.Inside {
		return
	}
	w.r.ComparePlain = t.Plain
	if !t.Plain {
		w.r.Compare = []Bar{{Role: VerticalBar, Direction: "vertical", Face: FaceB, Size: t.Size, Spacing: t.Spacing,
			Cover: 1.25 * units.Inch, Rulebook: w.r.Editions[Residential], Clause: t.Name}}
	}
	w.checkTable(false)
}
