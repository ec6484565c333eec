package view

import (
	"strconv"

	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// ask is a question of the page: a field of the wall file or a choice of ours
// that stands for several (see choose.go), and when it is asked.
type ask struct {
	path string
	when func(w *wallfile.Wall) bool // nil = always
}

func always(paths ...string) []ask {
	out := make([]ask, 0, len(paths))
	for _, p := range paths {
		out = append(out, ask{path: p})
	}
	return out
}

func is(path string, values ...string) func(*wallfile.Wall) bool {
	return func(w *wallfile.Wall) bool {
		text := w.Field(path)
		for _, v := range values {
			if text == v {
				return true
			}
		}
		return false
	}
}

func given(path string) func(*wallfile.Wall) bool {
	return func(w *wallfile.Wall) bool { return w.Field(path) != "" }
}

func either(a ...func(*wallfile.Wall) bool) func(*wallfile.Wall) bool {
	return func(w *wallfile.Wall) bool {
		for _, f := range a {
			if f(w) {
				return true
			}
		}
		return false
	}
}

func both(a, b func(*wallfile.Wall) bool) func(*wallfile.Wall) bool {
	return func(w *wallfile.Wall) bool { return a(w) && b(w) }
}

// What the questions hang on.
var (
	onFooting  = is("condition", "free top", "tied to slab", "soil both sides")
	tied       = is("condition", "tied to slab")
	twoSided   = is("condition", "soil both sides")
	heldByFrom = either(is("condition", "braced top"), both(twoSided, is("top", "braced")))
	slabAtFoot = is("foot.held by", "slab tight to wall", "slab later")
)

// The dimensions under the thumb, in their order.
var stepperAsks = []ask{
	{"height", nil},
	{"grade.a", nil},
	{"grade.b", twoSided},
	{"top", twoSided},
	{"thickness", nil},
	{soilPath, nil},
	{"soil.equivalent fluid", is("soil.by", "equivalent fluid")},
	{"soil.friction angle", is("soil.by", "friction angle")},
	{"footing.width", onFooting},
	{"footing.toe", onFooting},
}

// The questions, in the trade's words.
var groupAsks = []struct {
	id   string
	asks []ask
}{
	{"push", []ask{
		{"soil.pressure", is("soil.by", "equivalent fluid")},
		{"soil.unit weight", nil},
		{"swells", is("soil.by", "", "unknown")},
		{waterPath, nil},
		{"water", given("water")},
		{"soil.saturated weight", given("water")},
		{"surcharge.dead", nil},
		{"surcharge.live", nil},
		{"low side", twoSided},
		{"axial.dead", nil},
		{"axial.live", nil},
		{"axial.eccentricity", either(given("axial.dead"), given("axial.live"))},
	}},
	{"hold", []ask{
		{"floor edge", heldByFrom},
		{"floor", heldByFrom},
		{"brace", heldByFrom},
		{"tie.slab thickness", tied},
		{"tie.slab length", tied},
		{"tie.anchor", tied},
		{"tie.friction", both(tied, is("tie.anchor", "", "slab drag"))},
		{"tie.strength", both(tied, is("tie.anchor", "tie"))},
		{"tie.before the slab", tied},
		{"foot.held by", nil},
		{"foot.slab thickness", slabAtFoot},
		{"foot.slab underside", slabAtFoot},
		{"foot.fixed", heldByFrom},
		{"footing.width", is("condition", "braced top")},
		{"footing.thickness", nil},
		{"footing.toe", is("condition", "braced top")},
		{"footing.allowable bearing", nil},
		{"footing.friction", nil},
		{"footing.passive from", nil},
	}},
	{"today", always("today.floor", "today.slab", "today.concrete")},
	{"carry", []ask{
		{"concrete", nil},
		{"steel", nil},
		{"cover.a", nil},
		{"cover.b", nil},
		{"sizes", nil},
		{verticalPath, nil},
		{"bars.vertical.size", given("bars.vertical.size")},
		{"bars.vertical.spacing", given("bars.vertical.size")},
		{"bars.vertical.face", given("bars.vertical.size")},
		{"bars.vertical.depth", given("bars.vertical.size")},
		{horizontalPath, nil},
		{"bars.horizontal.size", given("bars.horizontal.size")},
		{"bars.horizontal.spacing", given("bars.horizontal.size")},
		{"bars.horizontal.face", given("bars.horizontal.size")},
		{"bars.horizontal.depth", given("bars.horizontal.size")},
		{dowelPath, nil},
		{"dowels.size", is("dowels.by", "given")},
		{"dowels.spacing", is("dowels.by", "given")},
		{"dowels.up", is("dowels.by", "given")},
		{"dowels.position", is("dowels.by", "given")},
		{"joint", nil},
		{"minimum steel", nil},
		{"seismic category", nil},
	}},
}

// questions makes the fields of one form.
type questions struct {
	f        Form
	s        words.Speaker
	w        *wallfile.Wall
	in       calc.Input // as last computed, with what was assumed filled in
	problems map[string]string
	info     map[string]wallfile.FieldInfo
}

func newQuestions(f Form, good Good, problems []wallfile.Problem) *questions {
	q := &questions{f: f, s: f.Speaker.For(good.Result.Input.Condition), w: &f.Wall, in: good.Result.Input}
	q.problems = make(map[string]string, len(problems))
	for _, p := range problems {
		if q.problems[p.Field] == "" {
			q.problems[p.Field] = problemText(q.s, p)
		}
	}
	return q
}

func (q *questions) steppers() []Field { return q.fields(stepperAsks) }

func (q *questions) fields(asks []ask) []Field {
	out := make([]Field, 0, len(asks))
	for _, a := range asks {
		if a.when == nil || a.when(q.w) {
			out = append(out, q.field(a.path))
		}
	}
	return out
}

// groups makes the questions. Those of a closed group are not made, but its
// problems show.
func (q *questions) groups() []Group {
	out := make([]Group, 0, len(groupAsks))
	for _, g := range groupAsks {
		one := Group{ID: g.id, Title: q.s.Word("page.group." + g.id), Summary: q.s.Word("page.group." + g.id + ".about")}
		for _, a := range g.asks {
			if (a.when == nil || a.when(q.w)) && q.problems[a.path] != "" {
				one.Faulty = true
			}
		}
		if q.f.Open[g.id] || one.Faulty {
			one.Fields = q.fields(g.asks)
		}
		out = append(out, one)
	}
	return out
}

// field makes one question.
func (q *questions) field(path string) Field {
	if c, ok := combined[path]; ok {
		return q.combined(path, c)
	}
	info, _ := infoOf(path)
	text := q.w.Field(path)
	one := Field{Path: path, Label: q.label(path), Text: text, Shown: q.shown(path, text, info), Problem: q.problems[path], Help: q.help(path)}
	if one.Choices = q.choices(path, text, info); one.Choices != nil {
		return one
	}
	one.Hint = q.hint(path, info)
	one.Short = quantity(info) && (info.Quantity == units.Level || info.Quantity == units.Size)
	one.Number = quantity(info) && !(info.Min.Base < 0) // a phone's number pad has no minus
	if CanStep(path) {
		one.Down, one.Up = q.s.Sentence("page.less", one.Label), q.s.Sentence("page.more-of", one.Label)
	}
	return one
}

// label is the short name of a dimension under the thumb, else that of the
// field.
func (q *questions) label(path string) string {
	if q.s.TwoSided && q.s.Has("page.label."+path+".two-sided") {
		return q.s.Word("page.label." + path + ".two-sided")
	}
	if q.s.Has("page.label." + path) {
		return q.s.Word("page.label." + path)
	}
	return q.s.Field(path)
}

func (q *questions) help(path string) string {
	if q.s.Has("page.help." + path) {
		return q.s.Word("page.help." + path)
	}
	return ""
}

// choices of a field: what is taken when nothing is chosen, then the answers.
// A field that is typed has none.
func (q *questions) choices(path, text string, info wallfile.FieldInfo) []Choice {
	var out []Choice
	if none := "page.unset." + path; q.s.Has(none) || text == "" {
		out = append(out, Choice{Value: unset, Label: q.s.Word(none), Chosen: text == ""})
	}
	switch info.Kind {
	case wallfile.Choice, wallfile.YesNo:
		for _, c := range info.Choices {
			out = append(out, Choice{Value: c, Label: q.s.Choice(path, c), Chosen: c == text})
		}
	case wallfile.Bar:
		for n := 3; n <= 11; n++ {
			value := "No. " + strconv.Itoa(n)
			out = append(out, Choice{Value: value, Label: q.s.BarSize(n), Chosen: value == text})
		}
	default:
		return nil
	}
	return out
}

func problemText(s words.Speaker, p wallfile.Problem) string { return p.Say(s) }
