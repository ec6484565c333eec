// Command empty is the least page that the framework and the storage make: one
// heading. `make bench` compares what a first visit transfers with it.
package main

import "github.com/maxence-charriere/go-app/v10/pkg/app"

type page struct{ app.Compo }

func (p *page) OnMount(ctx app.Context) {
	ctx.Async(openStorage)
	app.Window().Get("document").Get("documentElement").Get("dataset").Set("ready", "1")
}

func (p *page) Render() app.UI { return app.H1().Text("Empty") }

func routes() { app.Route("/", func() app.Composer { return &page{} }) }
