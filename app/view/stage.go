package view

import (
	"standingbeam/app/words"
	"standingbeam/calc"
)

// stageChoices are the stages that can be drawn, and the one that is: the one
// wanted where the wall has it, else the finished wall.
func stageChoices(s words.Speaker, r calc.Result, want calc.Stage) (calc.Stage, []Choice) {
	drawn := calc.Finished
	for _, st := range r.Stages {
		if st.Name == want {
			drawn = want
		}
	}
	if len(r.Stages) < 2 {
		return drawn, nil
	}
	out := make([]Choice, 0, len(r.Stages))
	for _, st := range r.Stages {
		out = append(out, Choice{Value: string(st.Name), Label: s.Stage(st.Name), Chosen: st.Name == drawn})
	}
	return drawn, out
}
