package embed

import (
	"hash/fnv"
	"strconv"

	"standingbeam/app/entry"
	"standingbeam/app/view"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc/units"
)

// Speaker writes and reads as the page around wants.
func (a Ask) Speaker() words.Speaker {
	return words.Speaker{Lang: a.Lang, System: a.System, DecimalComma: a.Comma}
}

// Wall is the wall that is asked for. What is not said is as in the example of
// the page, and as usual for how the wall is held; the ground then stands as
// far below the top as in the example.
func (a Ask) Wall() wallfile.Wall {
	w := view.Example()
	w.Set("name", a.Speaker().Word("page.example"))
	given := map[string]bool{}
	for _, f := range a.Fields {
		given[f.Path] = true
		if f.Path != "condition" {
			w.Set(f.Path, f.Text)
		}
	}
	if given["height"] && !given["grade.a"] {
		a.fillBelowTop(&w)
	}
	for _, f := range a.Fields {
		if f.Path == "condition" {
			view.Choose(&w, f.Path, f.Text)
		}
	}
	for _, f := range a.Fields {
		w.Set(f.Path, f.Text)
	}
	if !given["soil.by"] {
		soilAsGiven(&w, given)
	}
	return w
}

// fillBelowTop sets the ground of side A 8 in below the top, or 200 mm.
func (a Ask) fillBelowTop(w *wallfile.Wall) {
	top, err := entry.Quantity(w.Height, units.Level, a.reading("height"))
	if err != nil {
		return
	}
	metric := a.System == words.Metric
	below := float64(8 * units.Inch)
	if metric {
		below = float64(200 * units.Millimetre)
	}
	w.Set("grade.a", entry.Spell(units.Quantity{Base: max(0, top.Base-below), Kind: units.Level}, metric))
}

func (a Ask) reading(path string) entry.Options {
	info, _ := wallfile.Info(path)
	if a.System == words.Metric {
		return entry.Options{Metric: true, Comma: a.Comma, Unit: info.Metric}
	}
	return entry.Options{Comma: a.Comma, Unit: info.US}
}

// soilAsGiven says by what the ground is known, where only that is given.
func soilAsGiven(w *wallfile.Wall, given map[string]bool) {
	for _, by := range []struct{ path, word string }{
		{"soil.class", "class"}, {"soil.equivalent fluid", "equivalent fluid"}, {"soil.friction angle", "friction angle"},
	} {
		if given[by.path] {
			w.Set("soil.by", by.word)
			return
		}
	}
}

// Problems are the faults of the wall that is asked for.
func (a Ask) Problems() []wallfile.Problem {
	_, problems := a.Wall().Input(entry.Options{Metric: a.System == words.Metric, Comma: a.Comma})
	return problems
}

// KeptName is the name under which changes are kept. A site that asks for
// another wall under the same name begins anew.
func (a Ask) KeptName() string {
	h := fnv.New64a()
	for _, f := range a.Fields {
		h.Write([]byte(f.Path + "\x00" + f.Text + "\x00"))
	}
	return "embed-" + a.KeepAs + "-" + strconv.FormatUint(h.Sum64(), 16)
}
