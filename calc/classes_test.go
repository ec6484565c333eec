package calc_test

import (
	"math"
	"strconv"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

// TestClassesThroughDesign holds the pressure at the foot of a wall of 8 ft
// against IBC 2021 Table 1610.1: active where the top is free, at rest where a
// floor or a slab holds it, also where the floor is said to be rigid; active
// again under a flexible floor up to 8 ft below grade (1610.1). A class that is
// unsuitable as backfill stops the answer.
func TestClassesThroughDesign(t *testing.T) {
	for _, row := range reference.Rows(t, "design/classes.csv") {
		class := calc.Soil{Basis: calc.SoilClass, Class: row.Text("symbol")}
		free := stem(8*ft, class)
		if row.Text("active") == "" {
			r := design(t, free)
			if !r.Stopped || len(r.Stages) > 0 || r.Verdict != calc.Open || r.Today.Permission != calc.DoNotFill {
				t.Errorf("%s: stopped %v, verdict %v, today %v; want no number", class.Class, r.Stopped, r.Verdict, r.Today.Permission)
			}
			continue
		}
		held := basement(8*ft, 8*ft, 0)
		held.Soil = class
		tied := tiedWall()
		tied.Soil, tied.Floor = class, calc.FloorFlexible
		flexible, deep := held, basement(9*ft, 9*ft, 0)
		flexible.Floor = calc.FloorFlexible
		deep.Soil, deep.Floor = class, calc.FloorFlexible
		for _, test := range []struct {
			name   string
			in     calc.Input
			column string
			depth  float64
		}{
			{"free", free, "active", 8}, {"held by the floor", held, "at rest", 8}, {"tied to a slab", tied, "at rest", 8},
			{"flexible floor", flexible, "active", 8}, {"flexible floor, 9 ft", deep, "at rest", 9},
		} {
			got := read(t, design(t, test.in), "pressure at foot") / float64(psf)
			if want := row.Number(test.column) * test.depth; math.Abs(got-want) > 1e-9*want {
				t.Errorf("%s, %s: %v psf at the foot, want %v", class.Class, test.name, got, want)
			}
		}
	}
}

// TestUnknownSoil holds the engineered side of "don't know" against the worst
// at-rest class of IBC 2021 Table 1610.1, 100 psf per ft, and of a free wall
// against the worst active one, 60; the answer stays open until somebody has
// said that the ground does not swell, and swelling ground stops it.
func TestUnknownSoil(t *testing.T) {
	held := basement(8*ft, 8*ft, 0)
	held.Soil, held.Rulebook = calc.Soil{}, calc.RulebookUnset
	r := design(t, held)
	if got := read(t, r, "pressure at foot") / float64(psf); math.Abs(got-800) > 1e-9 {
		t.Errorf("held: %v psf, want 800", got)
	}
	if got := read(t, design(t, stem(8*ft, calc.Soil{})), "pressure at foot") / float64(psf); math.Abs(got-480) > 1e-9 {
		t.Errorf("free: %v psf, want 480", got)
	}
	if c := check(t, r, "soil-suitable"); c.State != calc.Open || !c.Decides || r.Verdict == calc.Holds {
		t.Errorf("swelling not answered: state %v, decides %v, verdict %v", c.State, c.Decides, r.Verdict)
	}
	if r.Governs != calc.Engineered {
		t.Error("the tables decide although nobody has said that the ground does not swell")
	}
	var spread []string
	for _, s := range r.Spread {
		spread = append(spread, strconv.Itoa(int(math.Round(s.Fluid.PCF()))))
	}
	if len(spread) != 4 || spread[0] != "30" || spread[1] != "45" || spread[2] != "60" || spread[3] != "100" {
		t.Errorf("spread over %v, want 30 45 60 100", spread)
	}
	held.Soil.Swells = calc.Yes
	if r := design(t, held); !r.Stopped || len(r.Checks) != 1 {
		t.Error("swelling ground gets an answer")
	}
}

// TestTableHorizontals holds the count of horizontals of a wall answered by
// the tables against IRC 2021 Table R404.1.2(1).
func TestTableHorizontals(t *testing.T) {
	for _, row := range reference.Rows(t, "irc/r404_1_2_1.csv") {
		w := basement(units.Length(row.Number("height"))*ft, 4*ft, 30*pcf)
		w.Rulebook = calc.Residential
		for _, b := range design(t, w).Bars {
			if b.Role == calc.HorizontalBar && (b.Count != row.Int("count") || b.Size != 4) {
				t.Errorf("%v ft: %d No. %d, want %d No. 4", w.Height.Feet(), b.Count, b.Size, row.Int("count"))
			}
		}
	}
}
