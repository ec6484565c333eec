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

// began is the wall before a field was typed in, and what it has become by
// that: while it is still that, the typing goes on from where it began.
type began struct {
	path      string
	from, now wallfile.Wall
	good      view.Good // the answer that it had
}

// input takes what was typed.
func (p *page) input(ctx app.Context, path, text string) {
	if p.began.path != path || p.began.now != *p.wall() {
		p.began = began{path: path, from: *p.wall(), good: p.walls[p.here].good}
	}
	p.began.now = view.Type(p.began.from, path, text, p.speaker)
	*p.wall() = p.began.now
	p.changed(ctx)
}

func (p *page) onInput(ctx app.Context, e app.Event) {
	defer p.caught()
	p.input(ctx, data(ctx, "path"), ctx.JSSrc().Get("value").String())
}

// onFocus shows the field as it was typed, all of it selected, so that the
// next key begins anew.
func (p *page) onFocus(ctx app.Context, e app.Event) {
	defer p.caught()
	p.focus = data(ctx, "path")
	p.typing = p.focus
	ctx.JSSrc().Set("value", p.wall().Field(p.focus))
	ctx.JSSrc().Call("select")
	ctx.Defer(p.settle)
}

// onBlur gives what was typed its unit, if it has none.
func (p *page) onBlur(ctx app.Context, e app.Event) {
	defer p.caught()
	p.began = began{}
	if path := data(ctx, "path"); p.focus == path {
		p.focus = ""
		if view.Commit(p.wall(), path, p.speaker) {
			p.changed(ctx)
		}
	}
	ctx.Defer(p.settle)
	// What shows beside a field while it is typed in goes a little later, so
	// that what is being tapped at the moment does not move away.
	ctx.After(tapTime, func(ctx app.Context) {
		defer p.caught()
		p.typing = p.focus
	})
}

// tapTime is how long a tap may take from touching to the click.
const tapTime = 400 * time.Millisecond

// onFieldKey steps a length by the arrow keys and ends typing with Enter.
func (p *page) onFieldKey(ctx app.Context, e app.Event) {
	defer p.caught()
	path := data(ctx, "path")
	switch e.Get("key").String() {
	case "Enter":
		ctx.JSSrc().Call("blur")
	case "ArrowUp":
		p.stepField(ctx, e, path, +1)
	case "ArrowDown":
		p.stepField(ctx, e, path, -1)
	default:
		ctx.PreventUpdate()
	}
}

func (p *page) stepField(ctx app.Context, e app.Event, path string, by int) {
	if !view.CanStep(path) {
		return
	}
	e.PreventDefault()
	p.step(ctx, path, by)
}

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

func (p *page) applyTheme() {
	set := app.Window().Get("document").Get("documentElement").Get("dataset")
	if p.theme == "" {
		set.Delete("theme")
		return
	}
	set.Set("theme", p.theme)
}

// changed notes that the walls or the settings are other than before: they are
// kept soon, and read aloud after a pause.
func (p *page) changed(ctx app.Context) {
	p.changes++
	now := p.changes
	ctx.Defer(p.settle)
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
