package view

import (
	"standingbeam/app/words"
	"standingbeam/calc"
)

// What the printed papers say in the same words as the page.

// Books sets the book that decides beside the other.
func Books(s words.Speaker, r calc.Result) Rulebooks { return rulebooks(s, r) }

// Soils is what each class that an unknown soil may be asks for.
func Soils(s words.Speaker, r calc.Result) []Spread { return spread(s, r) }
