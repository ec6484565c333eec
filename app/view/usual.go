package view

import (
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
)

// usual is what a wall of a condition has where nobody has said otherwise:
// sizes of the trade, to be changed (common practice, no source).
type usual map[string]string

var usualOf = map[string]usual{
	"braced top": {
		"grade.b": "0 in", "foot.held by": "slab tight to wall", "foot.slab thickness": "4 in",
		"footing.width": "24 in", "footing.thickness": "12 in",
	},
	"free top": {
		"grade.b": "0 in", "foot.held by": "slab tight to wall", "foot.slab thickness": "4 in",
		"footing.width": "5 ft", "footing.thickness": "12 in", "footing.toe": "18 in",
		"footing.allowable bearing": "2000 psf", "footing.friction": "0.40",
	},
	"tied to slab": {
		"grade.b": "0 in", "foot.held by": "slab tight to wall", "foot.slab thickness": "4 in", "surcharge.dead": "50 psf",
		"footing.width": "3 ft", "footing.thickness": "12 in", "footing.toe": "12 in",
		"footing.allowable bearing": "2000 psf", "footing.friction": "0.40",
		"tie.slab thickness": "4 in", "tie.slab length": "24 ft", "tie.friction": "0.35",
		"tie.anchor": "opposite wall", "tie.before the slab": "rakers",
	},
	"soil both sides": {
		"top": "free", "grade.b": "5 ft 4 in", "foot.held by": "ground only",
		"footing.width": "5 ft", "footing.thickness": "12 in",
		"footing.allowable bearing": "2000 psf", "footing.friction": "0.40",
	},
}

// follow changes what is as usual for one condition to what is usual for
// another. What a person has said stays as it was said.
func follow(w *wallfile.Wall, from, to string) {
	was, will := usualOf[from], usualOf[to]
	for path := range was {
		if _, both := will[path]; !both && w.Field(path) == was[path] {
			w.Set(path, "")
		}
	}
	for path, text := range will {
		if now := w.Field(path); now == "" || now == was[path] {
			w.Set(path, text)
		}
	}
	if _, low := will["grade.b"]; low && w.Field("grade.b") == will["grade.b"] {
		keepBelow(w, "grade.b", "grade.a")
	}
}

// keepBelow takes a level that was only usual down to another that it may not
// exceed.
func keepBelow(w *wallfile.Wall, path, limit string) {
	speaker := words.Speaker{}
	if high := valueOf(w, limit, speaker); high.Base > 0 {
		lower(w, path, high.Base, speaker)
	}
}
