package view

import (
	"strings"
	"sync"

	"standingbeam/app/entry"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc/units"
)

// shown is what stands in a field: what was typed while it is being typed and
// while it cannot be read, else its value as the reader writes it.
func (q *questions) shown(path, text string, info wallfile.FieldInfo) string {
	switch {
	case path == q.f.Focus && !q.f.Typed:
		return Begin(q.w, path, q.s)
	case text == "" || path == q.f.Focus || q.problems[path] != "" || !quantity(info):
		return text
	}
	v, err := entry.Quantity(text, info.Quantity, reading(info, q.f.Speaker))
	switch {
	case err != nil || info.Quantity == units.None:
		return text
	case path == "footing.width":
		return q.s.Length(units.Length(v.Base)) // as the picture says it
	case info.Quantity != units.Level && info.Quantity != units.Size && readersOwn(text, info, q.s):
		return text
	}
	return q.s.Quantity(v)
}

// Begin is the text that stands in a field when typing in it begins: what is in
// the file, with the reader's decimal sign.
func Begin(w *wallfile.Wall, path string, s words.Speaker) string {
	text := w.Field(path)
	if info, ok := infoOf(path); ok && s.DecimalComma && quantity(info) {
		if _, err := entry.Quantity(text, info.Quantity, entry.Options{Strict: true}); err == nil {
			return strings.ReplaceAll(text, ".", ",")
		}
	}
	return text
}

// readersOwn reports whether a text is written in a unit of the reader's
// system, if not in the one that we would take: 60 ksi stays 60 ksi.
func readersOwn(text string, info wallfile.FieldInfo, s words.Speaker) bool {
	metric := false
	for _, symbol := range []string{"MPa", "kPa", "kN"} {
		metric = metric || strings.Contains(text, symbol)
	}
	return info.US == info.Metric || metric == (s.System == words.Metric)
}

// quantity reports whether a field is typed as a number.
func quantity(info wallfile.FieldInfo) bool { return info.Kind == wallfile.Quantity }

// reading are the options by which a field of the page is read.
func reading(info wallfile.FieldInfo, s words.Speaker) entry.Options {
	o := options(s)
	o.Unit = info.US
	if o.Metric {
		o.Unit = info.Metric
	}
	return o
}

// hint is what is taken where nothing is written.
func (q *questions) hint(path string, info wallfile.FieldInfo) string {
	if v, ok := q.taken(path); ok {
		if CanStep(path) {
			return q.s.Quantity(v) // there is no room for more, and the help says it
		}
		return q.s.Sentence("page.taken", q.s.Quantity(v))
	}
	if q.s.Has("page.left-out." + path) {
		return q.s.Word("page.left-out." + path)
	}
	return q.s.Unit(info.Quantity)
}

// taken is the value that the calculation assumed for a field left out.
func (q *questions) taken(path string) (units.Quantity, bool) {
	in := q.in
	var v units.Quantity
	switch path {
	case "soil.unit weight":
		v = units.Of(in.Soil.Weight, units.Weight)
	case "soil.saturated weight":
		v = units.Of(in.Soil.Saturated, units.Weight)
	case "foot.slab thickness":
		v = units.Of(in.Foot.SlabThickness, units.Size)
	case "footing.toe":
		v = units.Of(in.Footing.Toe, units.Size)
	case "footing.allowable bearing":
		v = units.Of(in.Footing.Bearing, units.Pressure)
	case "footing.friction":
		v = units.Of(in.Footing.Friction, units.None)
	case "tie.friction":
		v = units.Of(in.Tie.Friction, units.None)
	case "brace":
		v = units.Of(in.Brace, units.Level)
	}
	return v, v.Base > 0
}

// Commit gives the text of a field the unit that it was read in, so that it
// keeps its meaning in a file and when the units change. It reports whether
// the text was changed.
func Commit(w *wallfile.Wall, path string, s words.Speaker) bool {
	info, ok := infoOf(path)
	text := w.Field(path)
	if !ok || !quantity(info) || text == "" {
		return false
	}
	if _, err := entry.Quantity(text, info.Quantity, entry.Options{Strict: true}); err == nil {
		return false
	}
	v, err := entry.Quantity(text, info.Quantity, reading(info, s))
	if err != nil {
		return false
	}
	if own := text + " " + reading(info, s).Unit; info.Quantity != units.Level && info.Quantity != units.Size {
		if _, err := entry.Quantity(own, info.Quantity, entry.Options{Strict: true}); err == nil {
			return w.Set(path, own) // 60 is kept as 60 ksi, not as 60,000 psi
		}
	}
	return w.Set(path, entry.Spell(v, s.System == words.Metric))
}

// infos are the fields of the file by their paths. Their ranges take some
// computing, so it is done once.
var infos = sync.OnceValue(func() map[string]wallfile.FieldInfo {
	all := make(map[string]wallfile.FieldInfo)
	for _, info := range wallfile.Fields() {
		all[info.Path] = info
	}
	return all
})

func infoOf(path string) (wallfile.FieldInfo, bool) {
	info, ok := infos()[path]
	return info, ok
}

// CommitAll commits every field of a wall.
func CommitAll(w *wallfile.Wall, s words.Speaker) {
	for path := range infos() {
		Commit(w, path, s)
	}
}
