package prescriptive

import (
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// PlainByNote returns a wall without verticals that a footnote of table (8)
// offers for q where its own cell does not: by note m a plain 12 in wall of
// f'c ≥ 3,500 psi, by note l a wall 2 in thinner than a cell that needs none,
// with f'c ≥ 4,000 psi. The cell returned is the one whose note is used.
//
// Source: IRC 2021 Table R404.1.2(8), footnotes l and m.
func PlainByNote(q Query) (Cell, bool) {
	own := Lookup(q)
	if q.Centred || !own.Found || own.None {
		return Cell{}, false
	}
	if own.Note == "m" && q.Fc >= irc.NoteMStrength {
		own.None, own.Bar, own.Spacing = true, rebar.Bar{}, 0
		return own, true
	}
	if q.Fc < irc.NoteLStrength {
		return Cell{}, false
	}
	thicker := own
	thicker.Nominal += int(irc.NoteLLess.Inches())
	thicker = thicker.read()
	return thicker, thicker.Found && thicker.None && thicker.Note == "l"
}

// Depth returns d as the tables were computed, for a wall of the actual
// thickness: table (8) places the bars under 1.25 in of cover at the inside
// face, table (3) at the centre line.
//
// Source: IRC 2021 R404.1.3.3.7.2, Tables R404.1.2(3) and (8).
func (c Cell) Depth(thickness units.Length) units.Length {
	if c.Table == TableCentred {
		return thickness / 2
	}
	return max(0, thickness-irc.BarCover-c.Bar.Diameter/2)
}
