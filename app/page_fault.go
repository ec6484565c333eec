package main

import (
	"fmt"
	"strconv"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// told is a message at the lower edge, with what can be done about it.
type told struct {
	text string
	acts []act
}

// act is one thing that can be done.
type act struct {
	says string
	do   func(app.Context)
}

func (p *page) renderTold() app.UI {
	box := app.Div().ID("told").Class("told").Role("status").Aria("live", "polite")
	if p.told.text == "" {
		return box
	}
	body := []app.UI{app.Span().Text(p.told.text)}
	for i, a := range p.told.acts {
		body = append(body, app.Button().ID("told-"+strconv.Itoa(i)).Type("button").DataSet("act", strconv.Itoa(i)).OnClick(p.onTold).Text(a.says))
	}
	body = append(body, app.Button().ID("told-close").Type("button").DataSet("act", "close").OnClick(p.onTold).Text(p.word("page.told.close")))
	return box.Body(body...)
}

// caught recovers from a fault in a handler: the page says so and goes on, and
// the walls are as they were when they were last drawn.
func (p *page) caught() {
	if fault := recover(); fault != nil {
		p.failed(fault)
	}
}

func (p *page) failed(fault any) {
	p.fault = fmt.Sprint(fault)
	p.drag, p.hold = nil, nil
	p.walls[p.here].wall = p.drawn
}

// renderFaultNote says that something went wrong inside.
func (p *page) renderFaultNote() app.UI {
	box := app.Div().ID("fault").Class("fault").Role("alert")
	if p.fault == "" {
		return box.Attr("hidden", "true")
	}
	return box.Body(p.faultBody()...)
}

func (p *page) faultBody() []app.UI {
	return []app.UI{
		app.P().Text(p.word("page.fault")),
		app.P().Body(
			app.Button().ID("fault-saved").Type("button").Class("plain").OnClick(p.onFaultSaved).Text(p.word("page.fault.saved")),
			app.Button().ID("fault-file").Type("button").Class("plain").OnClick(p.onExport).Text(p.word("page.kept.export")),
			app.Button().ID("fault-example").Type("button").Class("plain").OnClick(p.onFaultExample).Text(p.word("page.fault.example")),
		),
		app.P().Text(p.fault),
	}
}

// renderFault stands for the whole page when the page itself cannot be drawn.
func (p *page) renderFault(fault any) app.UI {
	p.fault = fmt.Sprint(fault)
	return app.Div().ID("page").Class("page").Body(
		app.Header().Body(app.H1().Text(p.word("page.name"))),
		app.Main().Body(app.Div().ID("fault").Class("fault").Role("alert").Body(p.faultBody()...)),
	)
}
