package codes

import "standingbeam/calc/units"

// WallCell is one cell of a wall table as printed. With None and Design false
// the cell asks for bars of size Bar at Spacing, Grade 60. Note is the printed
// footnote, "" for none.
type WallCell struct {
	None    bool
	Design  bool
	Bar     int
	Spacing units.Length
	Note    string
}

// unpack reads the packed form of a cell.
func (c wallCell) unpack() WallCell {
	notes := [4]string{"", "j", "l", "m"}
	cell := WallCell{Note: notes[min(c/noteJ, 3)]}
	switch body := c % noteJ; body {
	case nr:
		cell.None = true
	case dr:
		cell.Design = true
	default:
		cell.Bar = int(body / 100)
		cell.Spacing = units.Length(body%100) * units.Inch
	}
	return cell
}

// InsideCell returns a cell of Table R404.1.2(8), flat walls with the bars at
// the inside face: wall height 5 to 10 ft, fill 4 ft up to the height, nominal
// thickness 6, 8, 10 or 12 in, column 30, 45 or 60 psf per ft. It is false
// outside these: the rows are to be chosen by the caller, rounding up.
func (IRC) InsideCell(height, fill, nominal, column int) (WallCell, bool) {
	row, ok := rowOf(height, fill, 5)
	col, okColumn := columnOf(column)
	if !ok || !okColumn || nominal < 6 || nominal > 12 || nominal%2 != 0 {
		return WallCell{}, false
	}
	return insideCells[row][(nominal-6)/2*3+col].unpack(), true
}

// CentredCell returns a cell of Table R404.1.2(3), flat walls of 8 in nominal
// with the bars at the centre line: wall height 8 to 10 ft, otherwise as
// [IRC.InsideCell].
func (IRC) CentredCell(height, fill, column int) (WallCell, bool) {
	row, ok := rowOf(height, fill, 8)
	col, okColumn := columnOf(column)
	if !ok || !okColumn {
		return WallCell{}, false
	}
	return centredCells[row][col].unpack(), true
}

// rowOf counts the rows before (height, fill) in a table whose least wall is
// first ft high; each height has rows of fill from 4 ft up to the height.
func rowOf(height, fill, first int) (int, bool) {
	if height < first || height > 10 || fill < 4 || fill > height {
		return 0, false
	}
	row := fill - 4
	for h := first; h < height; h++ {
		row += h - 3
	}
	return row, true
}

// columnOf returns the place of a column of the wall tables.
func columnOf(column int) (int, bool) {
	switch column {
	case 30, 45, 60:
		return column/15 - 2, true
	}
	return 0, false
}

// Alternate returns the spacing by Table R404.1.2(9) that replaces the printed
// spacing (8 to 48 in) of a printed No. 4, 5 or 6 bar in Grade 60, when bars
// No. to in grade 40 or 60 are used instead. Spacings stop at 48 in.
func (IRC) Alternate(printed int, spacing units.Length, to, grade int) (units.Length, bool) {
	s := int(spacing.Inches())
	if printed < 4 || printed > 6 || to < 4 || to > 6 || !(spacing >= 8 && spacing <= 48) {
		return 0, false
	}
	group := (printed - 4) * 5
	var column int
	switch {
	case grade == 60 && to == printed:
		return units.Length(s), true
	case grade == 60:
		column = group + to - 4
		if to > printed {
			column--
		}
	case grade == 40:
		column = group + 2 + to - 4
	default:
		return 0, false
	}
	return units.Length(alternateSpacings[s-8][column]), true
}

// BarLengths are the lengths of IRC 2021 Table R608.5.4(1) for one bar.
type BarLengths struct {
	Lap      units.Length // tension lap
	Straight units.Length // straight development
	Hook     units.Length // standard hook, side cover ≥ 2.5 in, tail cover of 90° ≥ 2 in
	HookThin units.Length // standard hook, less cover
}

var barLengths = [3][2]BarLengths{
	{{20, 15, 6, 8}, {30, 23, 9, 12}},   // No. 4: Grade 40, Grade 60
	{{25, 19, 7, 10}, {38, 28, 11, 15}}, // No. 5
	{{30, 23, 8, 12}, {45, 34, 13, 18}}, // No. 6
}

// BarLengths returns the lap, development and hook lengths for a No. 4, 5 or 6
// bar of Grade 40 or 60.
func (IRC) BarLengths(bar, grade int) (BarLengths, bool) {
	if bar < 4 || bar > 6 || grade != 40 && grade != 60 {
		return BarLengths{}, false
	}
	return barLengths[bar-4][grade/20-2], true
}
