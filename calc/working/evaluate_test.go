package working

import (
	"math"
	"testing"

	"standingbeam/calc/units"
)

// The formulas and numbers are sums done by hand.
func TestEvaluate(t *testing.T) {
	for _, test := range []struct {
		step Step
		want float64
	}{
		{Step{Formula: "2 x + 3 y/4 − 1", With: []Term{Number("x", 5), Number("y", 8)}}, 15},
		{Step{Formula: "6/(2 x) y", With: []Term{Number("x", 3), Number("y", 5)}}, 5},
		{Step{Formula: "√x y", With: []Term{Number("x", 16), Number("y", 3)}}, 12},
		{Step{Formula: "x^(1/3)", With: []Term{Number("x", 27)}}, 3},
		{Step{Formula: "x^1.5 - x^2", With: []Term{Number("x", 4)}}, -8},
		{Step{Formula: "min(x; 2 x; max(1; x/2))", With: []Term{Number("x", 3)}}, 1.5},
		{Step{Formula: "√(2/(1 + d/10))", With: []Term{Number("d", 70)}}, 0.5},
		{Step{Formula: "−x + f'c", With: []Term{Number("x", 1), Number("f'c", 3)}}, 2},
		{Step{Formula: "1 − sin(φ')", With: []Term{T("φ'", 30*units.Degree, units.Degrees)}}, 0.5},
		{Step{Formula: "λs λ", With: []Term{Number("λs", 0.5), Number("λ", 6)}}, 3},
		// 12·8²/6 = 128 in³ on a strip of 12 in, 10.667 in³ per inch.
		{Step{Formula: "b h^2/6", With: []Term{T("b", 12*units.Inch, units.Size), T("h", 8*units.Inch, units.Size)},
			Value: units.Quantity{Kind: units.Modulus}}, 128.0 / 12},
		// 100 psf on 3 ft: 450 lb-ft per ft, the same number in lb-in per in.
		{Step{Formula: "w L^2/2", With: []Term{T("w", 100*units.PSF, units.Pressure), T("L", 3*units.Foot, units.Level)},
			Value: units.Quantity{Kind: units.LineMoment}}, 450},
	} {
		got, err := test.step.Evaluate()
		if err != nil || math.Abs(got.Base-test.want) > 1e-12 {
			t.Errorf("%s = %v, %v, want %v", test.step.Formula, got.Base, err, test.want)
		}
	}
}

func TestEvaluateFaults(t *testing.T) {
	for _, formula := range []string{"", "x", "2 +", "(2", "2)", "2 $ 3", "min(1, 2)", "(1; 2)", "√"} {
		if got, err := (Step{Formula: formula}).Evaluate(); err == nil {
			t.Errorf("%q gives %v and no error", formula, got)
		}
	}
}

// Verify must see a wrong value, a term that is not in the formula and a term
// that contradicts an earlier step.
func TestVerify(t *testing.T) {
	two := units.Quantity{Base: 2}
	for _, test := range []struct {
		name  string
		steps []Step
		good  bool
	}{
		{"right", []Step{{Symbol: "a", Formula: "1 + 1", Value: two}, {Symbol: "c", Formula: "a", With: []Term{Number("a", 2)}, Value: two}}, true},
		{"wrong value", []Step{{Symbol: "a", Formula: "1 + 1.001", Value: two}}, false},
		{"term not in it", []Step{{Symbol: "a", Formula: "2 x", With: []Term{Number("x", 1), Number("y", 1)}, Value: two}}, false},
		{"contradiction", []Step{{Symbol: "x", Formula: "2", Value: two}, {Symbol: "a", Formula: "x + 1", With: []Term{Number("x", 1)}, Value: two}}, false},
		{"fault", []Step{{Symbol: "a", Formula: "2 x", Value: two}}, false},
	} {
		if err := (&Chain{Steps: test.steps}).Verify(); (err == nil) != test.good {
			t.Errorf("%s: %v", test.name, err)
		}
	}
}

func FuzzEvaluate(f *testing.F) {
	f.Add("min(5 λ √f'c Sm; 0.85 f'c Sm)")
	f.Add("2^^(")
	f.Fuzz(func(t *testing.T, formula string) {
		if len(formula) > 200 {
			return
		}
		_, _ = Step{Formula: formula, With: []Term{Number("x", 2)}}.Evaluate()
	})
}
