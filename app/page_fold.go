package main

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// fold is a part of the page that is closed until it is opened. What is closed
// is not drawn at all.
type fold struct {
	app.Compo

	Page    *page
	ID      string
	Title   string
	Summary string
	Class   string
	Open    bool
	Level   int // of the heading, 0 = none
	Body    func() []app.UI
}

func (f *fold) Render() app.UI {
	button := app.Button().ID("fold-"+f.ID).Type("button").DataSet("fold", f.ID).
		Aria("expanded", yesNo(f.Open)).Aria("controls", "part-"+f.ID).OnClick(f.Page.onFold)
	if f.Summary == "" {
		button.Body(app.Span().Text(f.Title))
	} else {
		button.Body(app.Span().Text(f.Title), app.Small().Text(f.Summary))
	}
	var inside []app.UI
	if f.Open {
		inside = f.Body()
	}
	part := app.Div().ID("part-" + f.ID).Class("fold-body").Body(inside...)
	if !f.Open {
		part.Attr("hidden", "true")
	}
	return app.Div().Class("fold", f.Class).Body(button, part)
}
