// Package prescriptive reads the wall tables of the residential code, IRC 2021
// R404.1.2 (1), (3), (8) and (9): which verticals a wall that is held at top
// and foot needs, by height, fill, soil and thickness. The tables allow no
// interpolation: height, fill and soil go up to the next row or column.
package prescriptive

import (
	"math"

	"standingbeam/calc/codes"
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

var irc = codes.IRC2021()

// Query is what the tables ask. Thickness is the actual one, Height the
// unsupported height, Fill the unbalanced fill, Fluid the soil's column in psf
// per ft, and Centred asks for bars at the centre line.
type Query struct {
	Thickness, Height, Fill units.Length
	Fluid                   units.UnitWeight
	Fc, Fy                  units.Stress
	Centred                 bool
}

// Cell is the answer of a table, as printed for Grade 60.
//
// With Found false the wall is outside the table: see [Outside]. Otherwise
// one of None (no verticals), Design (an engineer's design is required), or
// bars at a spacing. Note is the printed footnote: l, m or j.
type Cell struct {
	Table              string // "R404.1.2(8)"
	Nominal            int    // in
	HeightRow, FillRow int    // ft
	Column             int    // psf per ft
	None, Design       bool
	Bar                rebar.Bar
	Spacing            units.Length
	Note               string
	Found              bool
}

// Names of the tables.
const (
	TableInside  = "R404.1.2(8)" // bars at the inside face
	TableCentred = "R404.1.2(3)" // 8 in nominal, bars at the centre line
)

// hair is the part of an inch by which a length may pass a row through
// rounding alone, as when it was typed in metres.
const hair units.Length = 1e-6

// upToFoot returns the next whole foot, at least least.
func upToFoot(l units.Length, least int) int {
	return max(least, int(math.Ceil((l - hair).Feet())))
}

// nominal returns the greatest nominal thickness of the tables that the wall
// has: the actual may be 0.5 in less (R608.3). A thicker wall than 12 in reads
// the 12 in row.
func nominal(thickness units.Length) int {
	for n := 12; n >= 6; n -= 2 {
		if thickness+hair >= units.Length(n)-irc.ThicknessLoss {
			return n
		}
	}
	return 0
}

// column returns the next column of the tables up from the fluid.
func column(fluid units.UnitWeight) int {
	switch pcf := fluid.PCF() - 1e-6; {
	case pcf <= 30:
		return 30
	case pcf <= 45:
		return 45
	}
	return 60
}

// Lookup returns the cell of Table R404.1.2(8), or of (3) where the bars are to
// be at the centre line, which is printed for 8 in nominal only.
func Lookup(q Query) Cell {
	n := nominal(q.Thickness)
	cell := Cell{Table: TableInside, Nominal: n}
	if q.Centred {
		cell.Table = TableCentred
	}
	if outside(q, nil) {
		return cell
	}
	least := 5
	if q.Centred {
		least = 8
	}
	cell.HeightRow, cell.FillRow, cell.Column = upToFoot(q.Height, least), upToFoot(q.Fill, 4), column(q.Fluid)
	return cell.read()
}

// read fills in what is printed in the cell.
func (c Cell) read() Cell {
	var printed codes.WallCell
	if c.Table == TableCentred {
		printed, c.Found = irc.CentredCell(c.HeightRow, c.FillRow, c.Column)
	} else {
		printed, c.Found = irc.InsideCell(c.HeightRow, c.FillRow, c.Nominal, c.Column)
	}
	c.None, c.Design, c.Note, c.Spacing = printed.None, printed.Design, printed.Note, printed.Spacing
	c.Bar, _ = rebar.ByNumber(printed.Bar)
	return c
}
