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
// number, else the greatest ratio. A load outside the footing says no more than
// that the wall turns over, which has a number of its own. Nil when there is
// none.
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
			if ratio = 1e9; c.Because != nil && c.Because.ID == "resultant-outside" {
				ratio = 0
			}
		}
		if ratio > most {
			worst, most = c, ratio
		}
	}
	return worst
}

// governs names the governing check with its numbers and its rule, "" where
// there is none.
func (s *scene) governs() string {
	g := governing(s.r)
	if g == nil {
		return ""
	}
	return s.sp.Sentence("sheet.governs", s.sp.CheckName(*g), s.amount(*g), s.source(g.Rulebook, g.Clause))
}
