package main

import (
	"fmt"

	"standingbeam/app/lesson"
	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// lessonPage shows the lessons. What it shows is computed from its form on
// every render; the address holds the form.
type lessonPage struct {
	app.Compo

	Front    *front
	Fragment string
	Speaker  words.Speaker

	form    lesson.Form
	seen    lesson.View // as last drawn
	paper   lesson.Paper
	printed lesson.Form // what paper is of
	size    place       // of the picture, CSS pixels
	system  *words.System
	changes int
	heard   string // read aloud
	noted   string // what a button has done
	fault   string
}

// The picture of a lesson while nothing has been measured.
var lessonPicture = place{390, 330}

func (l *lessonPage) OnInit() {
	l.size = lessonPicture
	l.form = lesson.Read(l.speaker(), l.Fragment)
}

// speaker is the page's, in the units chosen among the lessons.
func (l *lessonPage) speaker() words.Speaker {
	s := l.Speaker
	if l.system != nil {
		s.System = *l.system
	}
	return s
}

func (l *lessonPage) word(id string) string { return l.speaker().Word("lesson." + id) }

// OnUpdate follows the address, unless it is this page that has written it,
// and the page's units.
func (l *lessonPage) OnUpdate(ctx app.Context) {
	defer l.caught()
	if !lesson.Is(l.Fragment) {
		l.system = nil
		return
	}
	switch f := lesson.Read(l.speaker(), l.Fragment); {
	case l.Fragment != lesson.Address(l.form):
		l.open(ctx, f)
	case l.form.Speaker != l.speaker():
		l.form = lesson.Turn(l.form, l.speaker())
	}
}

// open shows another screen from its top.
func (l *lessonPage) open(ctx app.Context, f lesson.Form) {
	l.form, l.heard, l.noted, l.fault = f, "", "", ""
	ctx.Defer(func(ctx app.Context) {
		app.Window().Call("scrollTo", 0, 0)
		if title := app.Window().GetElementByID("why-title"); title.Truthy() {
			title.Call("focus", map[string]any{"preventScroll": true})
		}
		l.settle(ctx)
	})
}

// OnMount draws for the space that there is.
func (l *lessonPage) OnMount(ctx app.Context) { ctx.Defer(l.settle) }

// OnResize draws the picture for the space that it has.
func (l *lessonPage) OnResize(ctx app.Context) { ctx.Defer(l.settle) }

// settle measures the picture, and gives the slider its place: while its
// limits change the browser may have moved it.
func (l *lessonPage) settle(ctx app.Context) {
	defer l.caught()
	if slider := app.Window().GetElementByID("why-slider"); slider.Truthy() {
		slider.Set("value", l.form.At)
	}
	shown := app.Window().GetElementByID("why-figure")
	if !shown.Truthy() {
		return
	}
	now := place{shown.Get("clientWidth").Float(), shown.Get("clientHeight").Float()}
	if now.width < 200 || now.height < 150 || now == l.size {
		return
	}
	l.size = now
	ctx.Update()
}

// Render draws the lessons; nothing while the address asks for none.
func (l *lessonPage) Render() (ui app.UI) {
	defer func() {
		if fault := recover(); fault != nil {
			l.fault = fmt.Sprint(fault)
			ui = app.Div().ID("why").Class("page why").Body(l.renderTop(), app.P().Class("fault").Role("alert").Text(l.word("fault")+" "+l.fault))
		}
	}()
	root := app.Div().ID("why").Class("page why")
	if !lesson.Is(l.Fragment) {
		return root.Attr("hidden", "true")
	}
	f := l.form
	f.Speaker, f.Width, f.Height = l.speaker(), l.size.width, l.size.height
	l.seen = lesson.New(f)
	return root.Body(
		l.renderTop(),
		app.Main().Class("why-main").Body(l.renderScreen()...),
		app.Div().ID("why-heard").Class("unseen").Role("status").Aria("live", "polite").Text(l.heard),
		l.renderPaper(),
	)
}

// renderScreen is the screen that is shown: the list, a lesson, or the check.
func (l *lessonPage) renderScreen() []app.UI {
	switch {
	case l.seen.ID == "":
		return []app.UI{l.renderList()}
	case len(l.seen.Cases) > 0:
		return []app.UI{l.renderCheck()}
	}
	return []app.UI{l.renderLesson()}
}

// caught recovers from a fault in a handler: the list of lessons is left to
// go on from.
func (l *lessonPage) caught() {
	if fault := recover(); fault != nil {
		l.fault = fmt.Sprint(fault)
		l.form = lesson.Form{Speaker: l.speaker()}
	}
}
