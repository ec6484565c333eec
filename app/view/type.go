package view

import (
	"standingbeam/app/entry"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
)

// Type is the wall start with a text typed into one of its fields. A height
// within its limits takes the fill along when it comes below it, as a stepper
// does. Everything is reckoned from start, the wall before the typing began:
// the 1 of 12 ft takes nothing down for good.
func Type(start wallfile.Wall, path, text string, s words.Speaker) wallfile.Wall {
	start.Set(path, text)
	info, ok := infoOf(path)
	if !ok || !quantity(info) {
		return start
	}
	v, err := entry.Quantity(text, info.Quantity, reading(info, s))
	if low, high := bounds(&start, info, s); err == nil && v.Base >= low && v.Base <= high {
		takeAlong(&start, path, v.Base, s)
	}
	return start
}
