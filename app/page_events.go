package main

import (
	"strings"
	"time"

	"standingbeam/app/view"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// Handlers read what they act on from the element that was used, so that one
// handler serves a list whatever its order, and each recovers from its own
// faults, since a fault that escapes stops the page.

// wall is the form of the wall on the screen.
func (p *page) wall() *wallfile.Wall { return &p.walls[p.here].wall }

// onChoose takes an answer that was chosen from a list.
func (p *page) onChoose(ctx app.Context, e app.Event) {
	defer p.caught()
	p.choose(ctx, data(ctx, "path"), ctx.JSSrc().Get("value").String())
}

func (p *page) choose(ctx app.Context, path, value string) {
	view.Choose(p.wall(), path, value)
	p.changed(ctx)
}

func (p *page) onCard(ctx app.Context, e app.Event) {
	defer p.caught()
	p.check = ""
	p.choose(ctx, "condition", ctx.JSSrc().Get("value").String())
}

func (p *page) onShow(ctx app.Context, e app.Event) {
	defer p.caught()
	p.show = view.ShowOf(ctx.JSSrc().Get("value").String())
	ctx.Defer(p.settle)
}

func (p *page) onStage(ctx app.Context, e app.Event) {
	defer p.caught()
	p.stage = calc.Stage(ctx.JSSrc().Get("value").String())
	ctx.Defer(p.settle)
}

// onFold opens or closes a part of the page.
func (p *page) onFold(ctx app.Context, e app.Event) {
	defer p.caught()
	id := data(ctx, "fold")
	p.open[id] = !p.open[id]
	ctx.Defer(p.settle)
}

// onCheck opens the working of a check, or closes it.
func (p *page) onCheck(ctx app.Context, e app.Event) {
	defer p.caught()
	if key := data(ctx, "key"); p.check == key {
		p.check = ""
	} else {
		p.check = key
	}
}

// onUnits changes between feet and inches and metric. What is being typed gets
// its unit first, so that it keeps its meaning.
func (p *page) onUnits(ctx app.Context, e app.Event) {
	defer p.caught()
	for i := range p.walls {
		view.CommitAll(&p.walls[i].wall, p.speaker)
	}
	if p.speaker.System == words.US {
		p.speaker.System = words.Metric
	} else {
		p.speaker.System = words.US
	}
	p.changed(ctx)
}

func (p *page) onTheme(ctx app.Context, e app.Event) {
	defer p.caught()
	p.theme = strings.TrimPrefix(ctx.JSSrc().Get("value").String(), "device")
	p.applyTheme()
	p.changed(ctx)
}

// applyTheme dresses the document. The style of the glare is laid over the
// others where it was chosen, else where the device asks for more contrast;
// where the device has colors of its own, they stay.
func (p *page) applyTheme() {
	p.applyLanguage()
	document := app.Window().Get("document")
	set := document.Get("documentElement").Get("dataset")
	if p.theme == "" {
		set.Delete("theme")
	} else {
		set.Set("theme", p.theme)
	}
	media := "screen and (forced-colors: none)"
	if p.theme != glare {
		media += " and (prefers-contrast: more)"
	}
	if sheet := app.Window().GetElementByID("glare"); sheet.Truthy() {
		sheet.Set("media", media)
	}
}

// glare is the theme for strong sun.
const glare = "glare"

// changed notes that the walls or the settings are other than before: they are
// kept soon, and read aloud after a pause, even when what was pressed has gone.
func (p *page) changed(app.Context) {
	ctx := p.self
	p.changes++
	now := p.changes
	ctx.Defer(p.settleSoon)
	ctx.After(saveDelay, func(ctx app.Context) {
		ctx.PreventUpdate()
		if p.changes == now {
			p.save()
		}
	})
	ctx.After(speakDelay, func(ctx app.Context) {
		defer p.caught()
		if p.changes != now || p.announced == p.seen.Announce {
			ctx.PreventUpdate()
			return
		}
		p.announced = p.seen.Announce
	})
}

const (
	saveDelay  = 200 * time.Millisecond
	speakDelay = time.Second
)

// data reads a data attribute of the element that was used.
func data(ctx app.Context, name string) string {
	return ctx.JSSrc().Get("dataset").Get(name).String()
}
