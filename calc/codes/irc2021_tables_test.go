package codes

import (
	"fmt"
	"testing"

	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

// printed writes a cell as the files of the tables do.
func printed(c WallCell) string {
	switch {
	case c.None:
		return "NR"
	case c.Design:
		return "DR"
	}
	return fmt.Sprintf("#%d@%.0f", c.Bar, c.Spacing.Inches())
}

// Every cell of Table R404.1.2(8): 27 rows, 4 thicknesses, 3 columns.
func TestInsideCells(t *testing.T) {
	rows := reference.Rows(t, "irc/r404_1_2_8.csv")
	if len(rows) != 324 {
		t.Errorf("%d cells, want 324", len(rows))
	}
	for _, r := range rows {
		c, ok := IRC2021().InsideCell(r.Int("height"), r.Int("fill"), r.Int("nominal"), r.Int("column"))
		if !ok || printed(c) != r.Text("result") || c.Note != r.Text("note") {
			t.Errorf("%d/%d/%d/%d is %s %s, want %s %s", r.Int("nominal"), r.Int("height"), r.Int("fill"), r.Int("column"),
				printed(c), c.Note, r.Text("result"), r.Text("note"))
		}
	}
}

// Every cell of Table R404.1.2(3): 18 rows, 3 columns.
func TestCentredCells(t *testing.T) {
	rows := reference.Rows(t, "irc/r404_1_2_3.csv")
	if len(rows) != 54 {
		t.Errorf("%d cells, want 54", len(rows))
	}
	for _, r := range rows {
		c, ok := IRC2021().CentredCell(r.Int("height"), r.Int("fill"), r.Int("column"))
		if !ok || printed(c) != r.Text("result") || c.Note != r.Text("note") {
			t.Errorf("%d/%d/%d is %s, want %s", r.Int("height"), r.Int("fill"), r.Int("column"), printed(c), r.Text("result"))
		}
	}
}

// Outside its rows and columns a table has no cell.
func TestNoCell(t *testing.T) {
	for _, c := range [][4]int{{4, 4, 8, 30}, {11, 4, 8, 30}, {8, 3, 8, 30}, {8, 9, 8, 30}, {8, 7, 7, 30}, {8, 7, 4, 30}, {8, 7, 14, 30}, {8, 7, 8, 40}, {8, 7, 8, 0}} {
		if got, ok := IRC2021().InsideCell(c[0], c[1], c[2], c[3]); ok {
			t.Errorf("table (8) has a cell %v: %v", c, got)
		}
	}
	for _, c := range [][3]int{{7, 4, 30}, {11, 4, 30}, {8, 3, 30}, {8, 9, 30}, {8, 7, 75}} {
		if got, ok := IRC2021().CentredCell(c[0], c[1], c[2]); ok {
			t.Errorf("table (3) has a cell %v: %v", c, got)
		}
	}
}

// steel is the area a cell of table (8) asks for, in²/in; a design counts as
// more than any.
func steel(h, f, n, column int) float64 {
	area := map[int]float64{4: 0.20, 5: 0.31, 6: 0.44}
	c, _ := IRC2021().InsideCell(h, f, n, column)
	switch {
	case c.Design:
		return 1
	case c.None:
		return 0
	}
	return area[c.Bar] / c.Spacing.Inches()
}

// Heavier ground and a deeper fill never ask for less steel.
func TestMorePushNeedsNoLess(t *testing.T) {
	for h := 5; h <= 10; h++ {
		for f := 4; f <= h; f++ {
			for n := 6; n <= 12; n += 2 {
				for column := 30; column <= 60; column += 15 {
					here := steel(h, f, n, column)
					if column < 60 && steel(h, f, n, column+15) < here {
						t.Errorf("%d/%d/%d: column %d asks for more than the next", n, h, f, column)
					}
					if f < h && steel(h, f+1, n, column) < here {
						t.Errorf("%d/%d/%d/%d asks for more than a foot deeper", n, h, f, column)
					}
				}
			}
		}
	}
}

// Every entry of Table R404.1.2(9).
func TestAlternate(t *testing.T) {
	rows := reference.Rows(t, "irc/r404_1_2_9.csv")
	if len(rows) != 41*15 {
		t.Errorf("%d entries, want %d", len(rows), 41*15)
	}
	for _, r := range rows {
		got, ok := IRC2021().Alternate(r.Int("printed"), units.Length(r.Number("spacing")), r.Int("bar"), r.Int("grade"))
		if !ok || int(got) != r.Int("alternative") {
			t.Errorf("No. %d at %s by No. %d, Grade %d: %v, want %s", r.Int("printed"), r.Text("spacing"), r.Int("bar"), r.Int("grade"), got, r.Text("alternative"))
		}
	}
	for _, c := range []struct {
		bar       int
		spacing   units.Length
		to, grade int
	}{{3, 20, 4, 60}, {7, 20, 4, 60}, {4, 7, 5, 60}, {4, 49, 5, 60}, {4, 20, 7, 60}, {4, 20, 3, 60}, {4, 20, 5, 50}} {
		if got, ok := IRC2021().Alternate(c.bar, c.spacing, c.to, c.grade); ok {
			t.Errorf("%+v has an alternative %v", c, got)
		}
	}
}

// Table (9) keeps the strength: bars in proportion to area times grade, rounded
// down to the inch or up by less than one, and never beyond 48 in.
func TestAlternateKeepsStrength(t *testing.T) {
	area := map[int]float64{4: 0.20, 5: 0.31, 6: 0.44}
	for _, r := range reference.Rows(t, "irc/r404_1_2_9.csv") {
		exact := r.Number("spacing") * area[r.Int("bar")] / area[r.Int("printed")] * r.Number("grade") / 60
		got := r.Number("alternative")
		if got > 48 || exact < 48 && (got < exact-1 || got > exact+0.5001) {
			t.Errorf("No. %d at %s by No. %d, Grade %d: %v, in proportion %.2f", r.Int("printed"), r.Text("spacing"), r.Int("bar"), r.Int("grade"), got, exact)
		}
	}
}

func TestBarLengths(t *testing.T) {
	for _, r := range reference.Rows(t, "irc/r608_5_4_1.csv") {
		got, ok := IRC2021().BarLengths(r.Int("bar"), r.Int("grade"))
		if !ok {
			t.Errorf("No. %d, Grade %d is missing", r.Int("bar"), r.Int("grade"))
		}
		r.Near("lap", got.Lap.Inches())
		r.Near("straight", got.Straight.Inches())
		r.Near("hook", got.Hook.Inches())
		r.Near("hook thin", got.HookThin.Inches())
	}
	for _, c := range [][2]int{{3, 60}, {7, 60}, {5, 50}, {5, 75}} {
		if _, ok := IRC2021().BarLengths(c[0], c[1]); ok {
			t.Errorf("No. %d, Grade %d has lengths", c[0], c[1])
		}
	}
}
