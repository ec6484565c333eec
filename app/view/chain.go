package view

import (
	"standingbeam/app/words"
	"standingbeam/calc/working"
)

// Working writes the chain behind a number, for papers that show the checks
// with everything open.
func Working(s words.Speaker, chain []working.Step) []Step { return steps(s, chain) }
