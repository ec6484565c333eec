package calc_test

import (
	"math"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/working"
)

// TestWorkings evaluates the steps of every check again from their formulas
// and terms; the last step of a chain must be the check's demand or capacity.
func TestWorkings(t *testing.T) {
	seen := map[string]bool{}
	one := func(in calc.Input, r calc.Result) {
		for _, c := range r.Checks {
			if len(c.Steps) == 0 {
				continue
			}
			seen[c.ID] = true
			chain := working.Chain{Steps: c.Steps}
			if err := chain.Verify(); err != nil {
				t.Errorf("%s: %v\n%+v", c.ID, err, in)
				continue
			}
			end := c.Steps[len(c.Steps)-1].Value
			if !(close9(end.Base, c.Demand.Base) || close9(end.Base, c.Capacity.Base)) {
				t.Errorf("%s: the working ends in %s = %v, demand %v, capacity %v\n%+v", c.ID, c.Steps[len(c.Steps)-1].Symbol, end, c.Demand, c.Capacity, in)
			}
		}
	}
	walls(6, many, func(in calc.Input, r calc.Result) {
		one(in, r)
		one(in, explain(t, in))
	})
	for _, cases := range examples {
		for _, e := range cases() {
			one(e.in, explain(t, e.in))
		}
	}
	if len(seen) < 25 {
		t.Errorf("workings of %d checks only", len(seen))
	}
}

func close9(a, b float64) bool { return math.Abs(a-b) <= 1e-9*max(1e-3, math.Abs(a), math.Abs(b)) }
