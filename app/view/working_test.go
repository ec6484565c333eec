package view

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// The sums of a textbook, with their numbers put in: ACI 318-19 22.2.2.4.1 and
// 22.3.2 for No. 4 at 18 in in an 8 in wall, by hand.
func TestNumbers(t *testing.T) {
	for _, test := range []struct {
		formula string
		with    []term
		want    string
	}{
		{"As fy/(0.85 f'c b)", []term{{symbol: "As", value: 0.13333}, {symbol: "fy", value: 60000}, {symbol: "f'c", value: 3000}, {symbol: "b", value: 12}}, "0.1333 · 60,000 / (0.85 · 3,000 · 12)"},
		{"φ Mn", []term{{symbol: "φ", value: 0.9}, {symbol: "Mn", value: 4579.2}}, "0.9 · 4,579"},
		{"5 λ √f'c Sm", []term{{symbol: "λ", value: 1}, {symbol: "f'c", value: 3000}, {symbol: "Sm", value: 128}}, "5 · 1 · √3,000 · 128"},
		{"bw d", []term{{symbol: "b", value: 1}, {symbol: "bw", value: 12}, {symbol: "d", value: 7}}, "12 · 7"},
		{"min(a; b + c)", []term{{symbol: "a", value: 1}, {symbol: "b", value: 2}, {symbol: "c", value: 3}}, "min(1; 2 + 3)"},
		{"w h^2/2", []term{{symbol: "w", value: 45}, {symbol: "h", value: 7}}, "45 · 7^2 / 2"},
	} {
		if got := numbers(test.formula, test.with); got != test.want {
			t.Errorf("numbers(%q) = %q, want %q", test.formula, got, test.want)
		}
	}
}

// What is written comes out: each line of numbers, computed again as it
// stands, gives the result beside it to the digits that are written.
func TestNumbersComeOut(t *testing.T) {
	sums := 0
	for _, c := range conditions {
		for _, variant := range [][]string{{}, {"axial.dead", "1200 lb/ft", "axial.live", "800 lb/ft"}, {"water", "3 ft"}, {"height", "12 ft", "grade.a", "11 ft"}, {"rulebook", "engineered"}} {
			w := setting(held(c.value), variant...)
			good, problems := compute(w, words.Speaker{})
			if !good.Known {
				t.Fatalf("%s %v: %v", c.value, variant, problems)
			}
			for _, check := range good.Result.Checks {
				for i, step := range steps(words.Speaker{}, check.Steps) {
					if step.Numbers == "" {
						continue
					}
					sums++
					again := working.Step{Formula: strings.NewReplacer(",", "", " · ", " ").Replace(step.Numbers)}
					got, err := again.Evaluate()
					want, _ := strconv.ParseFloat(strings.ReplaceAll(strings.Fields(strings.ReplaceAll(step.Result, "−", "-"))[0], ",", ""), 64)
					if err != nil || math.Abs(got.Base-want) > 3e-3*math.Abs(want)+1e-3 {
						t.Errorf("%s %s, step %d: %s = %s = %s comes out as %v (%v)", c.value, check.ID, i, step.Symbol, step.Formula, step.Numbers, got.Base, err)
					}
				}
			}
		}
	}
	if sums < 100 {
		t.Errorf("only %d sums were looked at", sums)
	}
}

func TestSignificant(t *testing.T) {
	for _, test := range []struct {
		v    float64
		want string
	}{
		{0, "0"}, {1, "1"}, {0.133333, "0.1333"}, {4579.52, "4,580"}, {60000, "60,000"}, {1234567, "1,234,567"},
		{-12.5, "−12.5"}, {0.00012346, "0.0001235"}, {math.NaN(), "–"}, {math.Inf(-1), "–"}, {0.9, "0.9"},
	} {
		if got := significant(test.v); got != test.want {
			t.Errorf("significant(%v) = %q, want %q", test.v, got, test.want)
		}
	}
}

// A metric reader sees the result in both, since the formula is in inches and
// pounds.
func TestResultInMetric(t *testing.T) {
	q := units.Of(1000*units.LbFtPerFt, units.LineMoment)
	// 1 lb-ft/ft is 4.4482216 N exactly.
	if got := result(words.Speaker{System: words.Metric}, q); got != "1,000 lb-ft/ft = 4.45 kN-m/m" {
		t.Errorf("result = %q", got)
	}
}
