package view

import (
	"strconv"

	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// questions makes the fields of one form.
type questions struct {
	f        Form
	s        words.Speaker
	w        *wallfile.Wall
	in       calc.Input // as last computed, with what was assumed filled in
	problems map[string]string
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
