package soil

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"standingbeam/calc/units"
)

// rows reads a table of testdata/reference/soil without its head.
func rows(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open("../../testdata/reference/soil/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil || len(all) < 10 {
		t.Fatalf("%d rows, %v", len(all), err)
	}
	return all[1:]
}

// number reads a cell, 0 for a blank one.
func number(t *testing.T, cell string) float64 {
	t.Helper()
	if cell == "" {
		return 0
	}
	v, err := strconv.ParseFloat(cell, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// IBC 2021 Table 1610.1 and IRC 2021 Table R405.1, every row.
func TestClasses(t *testing.T) {
	table := rows(t, "classes.csv")
	if got := Classes(); len(got) != len(table) {
		t.Errorf("%d classes, want %d", len(got), len(table))
	}
	fluid := func(symbol, what, cell string, got units.UnitWeight, ok bool) {
		want := number(t, cell)
		if ok != (cell != "") || math.Abs(got.PCF()-want) > 1e-9 {
			t.Errorf("%s %s = %v, %v, want %q", symbol, what, got.PCF(), ok, cell)
		}
	}
	for _, row := range table {
		for _, symbol := range []string{row[0], strings.ToLower(row[0])} {
			known, suitable := ClassKnown(symbol)
			if !known || suitable != (row[1] != "") {
				t.Errorf("%s: known %v, suitable %v", symbol, known, suitable)
			}
			g, ok := ClassFluid(symbol, Active)
			fluid(symbol, "active", row[1], g, ok)
			g, ok = ClassFluid(symbol, AtRest)
			fluid(symbol, "at rest", row[2], g, ok)
			g, ok = TableColumn(symbol)
			fluid(symbol, "column", row[3], g, ok)
			if Swells(symbol) != (row[4] == "high") {
				t.Errorf("%s swells: %v, volume change %s", symbol, Swells(symbol), row[4])
			}
			if want := strings.HasPrefix(row[0], "O") || row[0] == "Pt"; Organic(symbol) != want {
				t.Errorf("%s organic: %v", symbol, !want)
			}
		}
	}
	if w := WorstAtRest().PCF(); math.Abs(w-100) > 1e-9 {
		t.Errorf("worst at rest %v, want 100", w)
	}
	if w := WorstActive().PCF(); math.Abs(w-60) > 1e-9 {
		t.Errorf("worst active %v, want 60", w)
	}
}

func TestUnknownClass(t *testing.T) {
	for _, symbol := range []string{"", "GX", "GW ", "SM/SC", "sand"} {
		known, suitable := ClassKnown(symbol)
		_, a := ClassFluid(symbol, Active)
		_, c := TableColumn(symbol)
		if known || suitable || a || c || Swells(symbol) || Organic(symbol) {
			t.Errorf("%q counts as a class", symbol)
		}
	}
}
