package view

import (
	"standingbeam/app/entry"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"
)

// Good is the last answer that a wall had, and the form that it had it for. A
// field that cannot be read leaves its last good text in the calculation, so
// that the picture stays and the other fields go on working.
type Good struct {
	Known  bool
	Wall   wallfile.Wall
	Result calc.Result

	input calc.Input
}

// Explained is the same answer with every working in full, for paper.
func (g Good) Explained() calc.Result {
	if r, err := calc.Explain(g.input); err == nil {
		return r
	}
	return g.Result
}

// options for reading what is typed on the page.
func options(s words.Speaker) entry.Options {
	return entry.Options{Metric: s.System == words.Metric, Comma: s.DecimalComma}
}

// answer computes the form's wall, or as much of it as can be read. It returns
// what was computed and every problem of the form; stale says that the answer
// is not that of the form as it stands.
func answer(f Form, last Good) (good Good, problems []wallfile.Problem, stale bool) {
	good, problems = compute(f.Wall, f)
	if good.Known {
		return good, nil, false
	}
	if !last.Known {
		last, _ = compute(Example(), Form{})
	}
	problems = ownProblems(f, last, problems)
	patched := f.Wall
	for _, p := range problems {
		patched.Set(p.Field, last.Wall.Field(p.Field))
	}
	if good, _ = compute(patched, f); good.Known {
		return good, problems, true
	}
	return last, problems, true
}

// limiting are the fields that set the limits of others.
var limiting = []string{"height", "thickness", "grade.a", "footing.width"}

// ownProblems leaves out what is only refused because a field that limits it
// cannot be read: an unreadable height is no fault of the fill.
func ownProblems(f Form, last Good, problems []wallfile.Problem) []wallfile.Problem {
	var own []wallfile.Problem
	patched := f.Wall
	for _, path := range limiting {
		for _, p := range problems {
			if p.Field == path {
				own = append(own, p)
				patched.Set(path, last.Wall.Field(path))
				_, problems = compute(patched, f)
				break
			}
		}
	}
	return append(own, problems...)
}

// compute answers a wall, if every field of it can be used; with the workings
// of the demands only while one is open.
func compute(w wallfile.Wall, f Form) (Good, []wallfile.Problem) {
	in, problems := w.Input(options(f.Speaker))
	if len(problems) > 0 {
		return Good{}, problems
	}
	ask := calc.Design
	if f.Check != "" {
		ask = calc.Explain
	}
	r, err := ask(in)
	if err != nil {
		return Good{}, []wallfile.Problem{{Field: "height", ID: "not-computed", Text: w.Height}}
	}
	return Good{Known: true, Wall: w, Result: r, input: in}, nil
}
