package calc_test

import (
	"math"
	"strings"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

// TestHandCalculations compares the walls tied to a slab and the walls with
// soil on both sides number by number with testdata/reference/design/hand.csv,
// which holds the steps. Nothing is published for these.
func TestHandCalculations(t *testing.T) {
	walls := byHand()
	used := map[string]bool{}
	for _, row := range reference.Rows(t, "design/hand.csv") {
		name, q := row.Text("case"), row.Text("quantity")
		in, ok := walls[name]
		if !ok {
			t.Fatalf("no wall for %q", name)
		}
		used[name] = true
		r := design(t, in)
		var got float64
		if level, ok := strings.CutPrefix(q, "chart "); ok {
			got = chartAt(t, r, levelOf(t, level))
		} else if rest, ok := strings.CutPrefix(q, "before: "); ok {
			got = read(t, only(r, calc.BeforeSlab), rest)
		} else {
			got = read(t, r, q)
		}
		tol := row.HalfDigit("value")
		if row.Text("tol") != "" {
			tol = row.Number("tol")
		}
		if got /= unitOf[row.Text("unit")]; !(math.Abs(got-row.Number("value")) <= tol+1e-9*math.Abs(got)) {
			t.Errorf("%s: %s = %v, want %s (%s)", name, q, got, row.Text("value"), row.Text("source"))
		}
	}
	if len(used) != len(walls) {
		t.Errorf("%d of %d walls are compared", len(used), len(walls))
	}
}

// byHand are the walls of the hand calculations.
func byHand() map[string]calc.Input {
	slab := calc.Input{Condition: calc.TiedToSlab, Height: 6 * ft, GradeA: 68 * in, Thickness: 10 * in,
		Foot:      calc.Foot{Held: calc.SlabTight, SlabThickness: 4 * in},
		Soil:      calc.Soil{Basis: calc.SoilClass, Class: "SM", Weight: 120 * pcf},
		Surcharge: calc.Surcharge{Dead: 50 * psf, Live: 40 * psf},
		Material:  material(3000 * units.PSI),
		Tie:       calc.Tie{SlabThickness: 4 * in, SlabLength: 40 * ft, Friction: 0.40},
		Footing:   calc.Footing{Given: true, Width: 5 * ft, Thickness: 12 * in, Toe: 1 * ft, Bearing: 3000 * psf, Friction: 0.45}}
	free := calc.Input{Condition: calc.SoilBothSides, Height: 5 * ft, GradeA: 54 * in, GradeB: 30 * in, Thickness: 8 * in,
		Soil:     calc.Soil{Basis: calc.SoilClass, Class: "SW", Weight: 120 * pcf},
		Material: material(3000 * units.PSI),
		Footing:  calc.Footing{Given: true, Width: 40 * in, Thickness: 10 * in, Toe: 1 * ft, Bearing: 3000 * psf, Friction: 0.30}}
	return map[string]calc.Input{"tied, foot on the ground": tiedWall(), "tied, slab at the foot": slab,
		"both, top held": bothWall(), "both, top free": free}
}

// only returns the answer with one stage, as the finished one, and its checks.
func only(r calc.Result, st calc.Stage) calc.Result {
	out := r
	out.Stages, out.Checks = nil, nil
	for _, s := range r.Stages {
		if s.Name == st {
			s.Name = calc.Finished
			out.Stages = append(out.Stages, s)
		}
	}
	for _, c := range r.Checks {
		if c.Stage == st {
			out.Checks = append(out.Checks, c)
		}
	}
	return out
}

// chartAt is the allowed level of the high side with the low side at low.
func chartAt(t *testing.T, r calc.Result, low units.Length) float64 {
	t.Helper()
	for _, p := range r.Chart {
		if p.Low >= low-1e-9 && p.Low <= low+1e-9 {
			return float64(p.High)
		}
	}
	t.Fatalf("the chart has no row for %v in", low)
	return 0
}
