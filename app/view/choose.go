package view

import (
	"strings"

	"standingbeam/app/wallfile"
	"standingbeam/calc/soil"
)

// Choices of the page that stand for several fields of the wall file.
const (
	soilPath       = "soil"
	waterPath      = "page.water"
	verticalPath   = "page.verticals"
	horizontalPath = "page.horizontals"
	dowelPath      = "page.dowels"
)

// unset is the value of the choice that leaves a field out. It is written,
// since an empty value would not be.
const unset = "unset"

// combination is a choice that stands for several fields.
type combination struct {
	values func() []string
	get    func(w *wallfile.Wall) string
	set    func(w *wallfile.Wall, value string)
}

var combined = map[string]combination{
	soilPath:       {soilValues, soilValue, setSoil},
	waterPath:      {words2("drained", "standing"), waterValue, setWater},
	verticalPath:   {words2("chosen", "fixed"), fixedValue("bars.vertical"), setFixed("bars.vertical", "No. 5", "16 in")},
	horizontalPath: {words2("chosen", "fixed"), fixedValue("bars.horizontal"), setFixed("bars.horizontal", "No. 4", "24 in")},
	dowelPath:      {words2("chosen", "given", "none"), dowelValue, setDowels},
}

func words2(v ...string) func() []string { return func() []string { return v } }

// soilValues are the ways to know the soil, the usual classes first.
func soilValues() []string {
	out := []string{"unknown"}
	for _, c := range soil.Classes() {
		out = append(out, "class:"+c)
	}
	return append(out, "equivalent fluid", "friction angle")
}

func soilValue(w *wallfile.Wall) string {
	switch by := w.Field("soil.by"); by {
	case "class":
		return "class:" + w.Field("soil.class")
	case "":
		return "unknown"
	default:
		return by
	}
}

// setSoil leaves what was typed for the other ways where it is: only "by"
// changes.
func setSoil(w *wallfile.Wall, value string) {
	if class, ok := strings.CutPrefix(value, "class:"); ok {
		w.Set("soil.by", "class")
		w.Set("soil.class", class)
		return
	}
	w.Set("soil.by", value)
	if value == "equivalent fluid" && w.Field("soil.equivalent fluid") == "" {
		w.Set("soil.equivalent fluid", "45 pcf")
	}
	if value == "friction angle" {
		fillIn(w, "soil.friction angle", "30 deg")
		fillIn(w, "soil.unit weight", "120 pcf")
	}
}

func fillIn(w *wallfile.Wall, path, text string) {
	if w.Field(path) == "" {
		w.Set(path, text)
	}
}

func waterValue(w *wallfile.Wall) string {
	if w.Field("water") == "" {
		return "drained"
	}
	return "standing"
}

// setWater lets water stand at the footing's top at first: its level is then
// typed or dragged.
func setWater(w *wallfile.Wall, value string) {
	if value == "drained" {
		w.Set("water", "")
		return
	}
	fillIn(w, "water", "2 ft")
}

func fixedValue(path string) func(*wallfile.Wall) string {
	return func(w *wallfile.Wall) string {
		if w.Field(path+".size") == "" {
			return "chosen"
		}
		return "fixed"
	}
}

func setFixed(path, size, spacing string) func(*wallfile.Wall, string) {
	return func(w *wallfile.Wall, value string) {
		if value == "chosen" {
			for _, key := range []string{"size", "spacing", "face", "depth"} {
				w.Set(path+"."+key, "")
			}
			return
		}
		fillIn(w, path+".size", size)
		fillIn(w, path+".spacing", spacing)
	}
}

func dowelValue(w *wallfile.Wall) string {
	if by := w.Field("dowels.by"); by != "" {
		return by
	}
	return "chosen"
}

func setDowels(w *wallfile.Wall, value string) {
	switch value {
	case "chosen":
		w.Set("dowels.by", "")
	case "given":
		w.Set("dowels.by", value)
		fillIn(w, "dowels.size", "No. 4")
		fillIn(w, "dowels.spacing", "24 in")
	default:
		w.Set("dowels.by", value)
	}
}

// combined makes the field of such a choice.
func (q *questions) combined(path string, c combination) Field {
	one := Field{Path: path, Label: q.label(path), Text: c.get(q.w), Help: q.help(path)}
	for _, v := range c.values() {
		one.Choices = append(one.Choices, Choice{Value: v, Label: q.combinedLabel(path, v), Chosen: v == one.Text})
	}
	if path == soilPath {
		one.Problem = q.problems["soil.class"]
		one.Down, one.Up = q.s.Word("page.soil.before"), q.s.Word("page.soil.after")
	}
	return one
}

func (q *questions) combinedLabel(path, value string) string {
	if class, ok := strings.CutPrefix(value, "class:"); ok {
		return q.s.Choice("soil.class", class)
	}
	if path == soilPath {
		return q.s.Choice("soil.by", value)
	}
	return q.s.Word(path + "." + value)
}

// Choose takes an answer that was chosen from a list. With the condition goes
// what is usual for it, see usual.go.
func Choose(w *wallfile.Wall, path, value string) {
	if value == unset {
		value = ""
	}
	if c, ok := combined[path]; ok {
		c.set(w, value)
		return
	}
	if path == "condition" {
		follow(w, w.Condition, value)
	}
	w.Set(path, value)
}
