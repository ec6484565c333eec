package main

import (
	"standingbeam/app/draw"
	"standingbeam/app/keep"
	"standingbeam/app/view"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// page is the one page of the program. Handlers change its state and stop;
// Render computes everything else.
type page struct {
	app.Compo

	walls   []kept // every wall, the one on the screen among them
	here    int    // which of walls is on the screen
	speaker words.Speaker
	redraw  func()           // draws the page anew
	around  func()           // draws what is around it anew
	visit   app.EventHandler // follows a link to a lesson
	theme   string           // "light", "dark", "glare", "" = as the device
	show    draw.Show
	stage   calc.Stage // of the picture, "" = finished

	focus  string          // path of the field being typed in
	typing string          // the same, until a tap that left it is over
	began  began           // the wall before that typing
	open   map[string]bool // what is unfolded
	check  string          // key of the check whose working is open
	size   place           // of the picture, CSS pixels
	tall   tall            // of the headline
	drag   *drag
	hold   *hold

	touch      bool   // a finger is what points
	device     bool   // the device's own keys are wanted all the same
	padFor     string // path of the field that the keypad is open for
	sixteenths bool   // it shows the sixteenths of an inch

	frame    app.Func // settles before the next frame is painted
	settling bool     // it is asked for

	self        app.Context // of the page, which outlasts the buttons of a message
	told        told
	tellings    int
	announced   string // read aloud
	changes     int    // counts changes, so that a pause can be noticed
	keeper      keeper
	reports     chan keep.Report
	late        chan loaded // what was kept, when it comes late
	saved       int         // changes at the last save
	storage     string      // id of what is said of the storage
	early       bool        // something was typed before the program had come
	installable bool
	apple       bool // to be installed by the menu of an Apple browser
	fault       string
	embed       *embedded // nil: the page stands for itself

	// compute is view.New; a test can make it fail.
	compute func(view.Form, view.Good) (view.View, view.Good)
	seen    view.View     // as last drawn
	drawn   wallfile.Wall // the wall that was drawn then
}

// kept is one wall with the last answer that it had.
type kept struct {
	wall wallfile.Wall
	good view.Good
}

// place is a size in CSS pixels.
type place struct{ width, height float64 }

// The picture on a phone, and while nothing has been measured.
var phonePicture = place{390, 300}

// firstPage is the page as it first appears.
func firstPage() *page {
	return &page{
		walls:   []kept{{wall: view.Example()}},
		open:    map[string]bool{},
		size:    phonePicture,
		reports: make(chan keep.Report, 64),
		compute: view.New,
	}
}

// Render draws the page. A fault in it must not freeze the page, so it shows
// itself and offers the walls.
func (p *page) Render() (ui app.UI) {
	defer func() {
		if fault := recover(); fault != nil {
			ui = p.renderFault(fault)
		}
	}()
	v := p.look()
	class := "page"
	if p.padded() {
		class = "page padded"
	}
	return app.Div().ID("page").Class(class).Body(
		p.renderTop(v),
		app.Main().Body(
			app.Div().Class("work").Body(
				app.Div().Class("see").Body(p.renderAnswer(v), p.renderFigure(v)),
				p.renderChoices(v),
			),
			p.renderChecks(v),
			p.renderResults(v),
		),
		p.renderFoot(v),
		p.renderEmbedded(v),
		p.renderTold(),
		app.Div().ID("announce").Class("unseen").Role("status").Aria("live", "polite").Text(p.announced),
	)
}

// look computes the view of the wall on the screen and keeps its answer.
func (p *page) look() view.View {
	k := &p.walls[p.here]
	form := view.Form{
		Wall: k.wall, Speaker: p.speaker, Show: p.show, Stage: p.stage, Focus: p.focus, Typed: p.began.path == p.focus && p.began.now == k.wall, Check: p.check,
		Open: p.open, Width: max(p.size.width, 240), Height: max(p.size.height, 220), // the least that is drawn
	}
	if p.drag != nil {
		form.Hold = p.drag.window
	}
	last := k.good
	if p.began.path != "" && p.began.now == k.wall {
		last = p.began.good // not what a text half typed happened to mean
	}
	p.seen, k.good = p.compute(form, last)
	p.drawn = k.wall
	return p.seen
}

// word is a plain word of the page.
func (p *page) word(id string) string { return p.speaker.Word(id) }
