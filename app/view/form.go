package view

import (
	"standingbeam/app/draw"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"
)

// Form is everything that the page is made from.
type Form struct {
	Wall    wallfile.Wall
	Speaker words.Speaker
	Show    draw.Show
	Stage   calc.Stage  // of the picture, "" = finished
	Hold    draw.Window // the picture's window while a handle is dragged
	Width   float64     // of the picture in CSS pixels
	Height  float64
	Focus   string          // path of the field that has the focus
	Typed   bool            // something was typed into it
	Check   string          // key of the check whose working is open
	Open    map[string]bool // parts of the page that are open; others stay empty
}

// New makes the page of a form. last is the answer that the wall had before;
// the one it has now is returned with the page.
func New(f Form, last Good) (View, Good) {
	good, problems, stale := answer(f, last)
	s := f.Speaker.For(good.Result.Input.Condition)
	v := View{Name: name(f)}
	v.Lines = headline(s, good.Result)
	v.Cautions = s.Notes(good.Result.Cautions)
	for i, c := range v.Cautions {
		v.Cautions[i] = Unbroken(c)
	}
	if stale {
		v.Stale = s.Word("page.stale")
	}
	v.Announce = announcement(s, v, problems)
	v.Cards = cards(f)
	q := newQuestions(f, good, problems)
	v.Steppers, v.Groups = q.steppers(), q.groups()
	v.Rulebooks = rulebooks(s, good.Result)
	v.Rulebooks.Choice = q.field("rulebook")
	v.Picture = picture(f, s, good.Result)
	v.Checks, v.Compared, v.Idle = sortChecks(s, good.Result.Checks, f.Check)
	v.Bars = bars(s, good.Result)
	v.Chart, v.Spread = chart(s, good.Result), spread(s, good.Result)
	v.Engineer, v.Warnings, v.Assumptions = s.Notes(good.Result.Engineer), s.Notes(good.Result.Warnings), s.Notes(good.Result.Assumptions)
	for _, id := range []string{"page.safety.law", "page.safety.engineer", "page.safety.dig", "page.safety.forms", "page.safety.brace", "page.safety.bars"} {
		v.Safety = append(v.Safety, s.Word(id))
	}
	v.About = about(f, s, good.Result)
	return v, good
}

// about says what the program does and does not, while that part is open.
func about(f Form, s words.Speaker, r calc.Result) []string {
	if !f.Open["about"] {
		return nil
	}
	return []string{
		s.Word("page.about.does"),
		s.Sentence("page.about.books", r.Editions[calc.Engineered], r.Editions[calc.Residential]),
		s.Word("page.about.limits"), s.Word("page.about.local"), s.Word("page.about.offline"),
	}
}

func name(f Form) string {
	if f.Wall.Name == "" {
		return f.Speaker.Word("page.unnamed")
	}
	return f.Wall.Name
}

// headline puts the two lines in order: what fails first.
func headline(s words.Speaker, r calc.Result) [2]Line {
	finished, today := s.Headline(r)
	a, b := line(s, "finished", finished), line(s, "today", today)
	a.Lesson, b.Lesson = lessonOf(r), "wait"
	if order[b.State] < order[a.State] {
		return [2]Line{b, a}
	}
	return [2]Line{a, b}
}

// lessonOf is the lesson that says most of the finished wall: by water, by who
// must still be asked to hold it, else by how it is held.
func lessonOf(r calc.Result) string {
	switch {
	case r.Input.Water.Standing:
		return "water"
	case r.Input.Condition == calc.BracedTop && r.Verdict == calc.Open:
		return "hold"
	}
	return [...]string{calc.BracedTop: "side", calc.FreeTop: "heel", calc.TiedToSlab: "slab", calc.SoilBothSides: "both"}[r.Input.Condition]
}

func line(s words.Speaker, id string, l words.Line) Line {
	return Line{ID: id, State: state(l.State), When: s.Word("page." + id), Mark: l.Mark, Title: Unbroken(l.Title), Detail: Unbroken(l.Detail)}
}

// announcement is what is read aloud after a change: a problem first, else the
// headline.
func announcement(s words.Speaker, v View, problems []wallfile.Problem) string {
	text := ""
	if len(problems) > 0 {
		text = problemText(s, problems[0]) + " "
	}
	for _, l := range v.Lines {
		text += s.Sentence("page.announce", l.When, l.Mark, l.Title) + " "
	}
	return text[:len(text)-1]
}

// picture draws the section.
func picture(f Form, s words.Speaker, r calc.Result) Picture {
	stage, stages := stageChoices(s, r, f.Stage)
	p := draw.Section(r, draw.Options{Width: f.Width, Height: f.Height, Speaker: s, Show: f.Show, Stage: stage, Hold: f.Hold})
	out := Picture{SVG: p.SVG, Width: f.Width, Height: f.Height, Handles: p.Handles, Window: p.Window, Title: p.Title, Desc: p.Desc}
	out.Stages = stages
	if stage != calc.Finished && len(stages) > 0 {
		out.Stage = s.Sentence("page.stage.drawn", s.Stage(stage))
	}
	if f.Open["more"] {
		out.Head, out.Rows = p.Head, p.Rows
	}
	for _, show := range []draw.Show{draw.Bending, draw.Shear, draw.Deflected} {
		out.Shows = append(out.Shows, Choice{Value: showName(show), Label: s.Word("page.show." + showName(show)), Chosen: show == f.Show})
	}
	return out
}

func showName(show draw.Show) string {
	switch show {
	case draw.Shear:
		return "shear"
	case draw.Deflected:
		return "deflection"
	}
	return "bending"
}

// ShowOf reads the name of a curve.
func ShowOf(name string) draw.Show {
	switch name {
	case "shear":
		return draw.Shear
	case "deflection":
		return draw.Deflected
	}
	return draw.Bending
}

// conditions in the order of the cards, by their words in the wall file.
var conditions = []struct {
	value string
	is    calc.Condition
}{
	{"braced top", calc.BracedTop}, {"free top", calc.FreeTop},
	{"tied to slab", calc.TiedToSlab}, {"soil both sides", calc.SoilBothSides},
}

func cards(f Form) []Card {
	out := make([]Card, 0, len(conditions))
	for _, c := range conditions {
		out = append(out, Card{
			Value: c.value, Label: f.Speaker.Word("page.card." + c.value), SVG: draw.Card(c.is),
			Chosen: f.Wall.Condition == c.value,
		})
	}
	return out
}
