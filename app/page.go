package main

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// page is the one page of the program.
type page struct {
	app.Compo

	height string
}

func (p *page) OnInit() { p.height = "8" }

func (p *page) OnMount(ctx app.Context) {
	app.Window().Get("document").Get("documentElement").Get("dataset").Set("ready", "1")
}

func (p *page) Render() app.UI {
	return app.Main().Body(
		app.H1().Text("Standing Beam"),
		app.Label().For("height").Text("Height of the wall, ft"),
		app.Input().ID("height").Type("number").Value(p.height).OnInput(p.ValueTo(&p.height)),
		app.P().ID("answer").Text("The wall is "+p.height+" ft high."),
	)
}
