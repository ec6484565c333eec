package sheet

import (
	"standingbeam/calc"
)

// editions names the rulebook that decides and the one beside it.
func (s *scene) editions() (decides, other string) {
	a, b := calc.Engineered, calc.Residential
	if s.r.Governs == calc.Residential {
		a, b = b, a
	}
	return s.r.Editions[a], s.r.Editions[b]
}

// cautions are what matters today, what to mind, and what an engineer must
// answer, in that order.
func (s *scene) cautions() (out []string) {
	out = append(out, s.sp.Notes(s.r.Cautions)...)
	return append(out, s.sp.Notes(s.r.Warnings)...)
}

// governing is the deciding check that is worst: one that fails without a
// number, else the greatest ratio. Nil when there is none.
func governing(r *calc.Result) *calc.Check {
	var worst *calc.Check
	most := -1.0
	for i := range r.Checks {
		c := &r.Checks[i]
		if !c.Decides || c.State == calc.NotApplicable || c.State == calc.Open {
			continue
		}
		ratio, ok := c.Ratio()
		if !ok {
			if c.State != calc.Fails {
				continue
			}
			ratio = 1e9
		}
		if ratio > most {
			worst, most = c, ratio
		}
	}
	return worst
}
