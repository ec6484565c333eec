package calc_test

import (
	"math"
	"slices"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// bare is a random wall that the floor will hold, with nothing at its top
// today, on a footing with short projections.
func (r random) bare() calc.Input {
	w := basement(r.inches(72, 132), 0, units.UnitWeight(r.in(30, 80, 5))*pcf)
	w.GradeA = w.Height - r.inches(0, 12)
	w.Thickness = units.Length(r.in(7.5, 14, 0.5))
	w.Soil.Weight = units.UnitWeight(r.in(100, 130, 10)) * pcf
	w.Material.Fc = units.Stress(r.in(2500, 5000, 500))
	w.Footing = calc.Footing{Given: true, Width: w.Thickness + r.inches(8, 30), Thickness: r.inches(12, 18), NoToe: true,
		Bearing: units.Stress(r.in(2000, 12000, 1000)) * psf, Friction: r.in(0.3, 0.8, 0.1)}
	w.Today = calc.Today{Given: true, Concrete: min(w.Material.Fc, units.Stress(r.in(500, 5000, 500))), Slab: r.odds(2)}
	if r.odds(3) {
		w.Surcharge = calc.Surcharge{Dead: units.Stress(r.in(0, 100, 25)) * psf, Live: units.Stress(r.in(0, 100, 20)) * psf}
	}
	if r.odds(2) {
		w.Dowels = calc.Dowels{Fixed: true, Size: 4 + r.IntN(3), Spacing: r.inches(8, 36), Up: r.inches(8, 24), Position: pick(r, calc.FaceA, calc.Centre)}
	}
	return w
}

// TestUnbracedFill computes by hand what a wall with nothing at its top stands:
// at the height that is permitted all holds, and one inch more fails by what
// the answer names.
func TestUnbracedFill(t *testing.T) {
	r := seeded(11)
	governs := map[string]int{}
	for range 600 {
		w := r.bare()
		w.Rulebook = pick(r, calc.Engineered, calc.Residential)
		a := design(t, w)
		hand := aloneOf(w, a)
		level := float64(a.UnbracedFill)
		if why := hand.failing(level); level > 0 && len(why) > 0 {
			t.Errorf("fill to %v in: by hand it fails in %s\n%+v", level, why, w)
		}
		if level < float64(w.GradeA) {
			hand.steps = 1e-3
			why := hand.failing(level + 1)
			governs[a.Today.Governs]++
			if !slices.Contains(why, a.Today.Governs) {
				t.Errorf("fill to %v in: %s governs, by hand one inch more fails in %v\n%+v", level, a.Today.Governs, why, w)
			}
		}
	}
	for _, why := range []string{"joint-bending", "sliding", "overturning", "bearing", "joint-shear-friction", "section-above-dowels"} {
		if governs[why] == 0 {
			t.Errorf("%s never governs: %v", why, governs)
		}
	}
}

// TestMoreNeverLowersTheFill hardens today's concrete or sets dowels closer:
// the permitted fill never falls.
func TestMoreNeverLowersTheFill(t *testing.T) {
	r := seeded(12)
	for range 400 {
		w := r.bare()
		more, what := w, "concrete"
		more.Today.Concrete = min(w.Material.Fc, w.Today.Concrete+500*units.PSI)
		if w.Dowels.Fixed && r.odds(2) {
			more, what = w, "dowels"
			more.Dowels.Spacing = max(8*in, w.Dowels.Spacing-r.inches(1, 8))
		}
		a, b := design(t, w), design(t, more)
		if b.UnbracedFill < a.UnbracedFill || b.Today.Level < a.Today.Level || b.Today.Permission < a.Today.Permission {
			t.Errorf("more %s: fill from %v to %v, permission %v to %v\n%+v", what, a.UnbracedFill, b.UnbracedFill, a.Today.Permission, b.Today.Permission, w)
		}
	}
}

// TestFillingChart computes by hand each row of the chart of walls with soil on
// both sides, floor to come: with the low side at its level the high side's
// stands, and one inch more fails. Its rows go from an empty low side to its
// final level, and with nothing on the low side it is the unbraced fill.
func TestFillingChart(t *testing.T) {
	r := seeded(14)
	rows, full := 0, 0
	for range 300 {
		w := r.bare()
		w.Condition, w.TopHeld, w.Surcharge, w.LowSideMayGo = calc.SoilBothSides, true, calc.Surcharge{}, r.odds(4)
		w.GradeB = r.inches(6, w.GradeA.Inches())
		w.Rulebook = pick(r, calc.Engineered, calc.Residential)
		a := design(t, w)
		hand := aloneOf(w, a)
		if hand.lowFactor = 0.9; w.LowSideMayGo {
			hand.lowFactor = 0
		}
		if a.Chart[0].Low > 0 || a.Chart[len(a.Chart)-1].Low < w.GradeB || a.Chart[0].High > a.UnbracedFill || a.Chart[0].High < a.UnbracedFill {
			t.Errorf("chart %v, unbraced fill %v, low side %v", a.Chart, a.UnbracedFill, w.GradeB)
		}
		for i, p := range a.Chart {
			if p.High < p.Low || p.High > w.GradeA || i > 0 && p.Low <= a.Chart[i-1].Low {
				t.Errorf("row %+v of %v\n%+v", p, a.Chart, w)
			}
			rows++
			hand.low, hand.steps = float64(p.Low), 0
			if why := hand.failing(float64(p.High)); p.High > p.Low && len(why) > 0 {
				t.Errorf("low %v, high %v: by hand it fails in %v\n%+v", p.Low, p.High, why, w)
			}
			if p.High >= w.GradeA {
				full++
				continue
			}
			// From a low side between two inches the levels tried are too.
			more := 1.0
			if whole := float64(p.Low); whole > math.Floor(whole) {
				more = 2
			}
			hand.steps = 1e-3
			if why := hand.failing(float64(p.High) + more); !slices.Contains(why, p.Governs) {
				t.Errorf("low %v, high %v: %s governs, by hand one inch more fails in %v\n%+v", p.Low, p.High, p.Governs, why, w)
			}
		}
	}
	if rows < 600 || full < 15 {
		t.Errorf("%d rows, %d of them to the full height", rows, full)
	}
}
