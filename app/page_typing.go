package main

import (
	"time"

	"standingbeam/app/view"
	"standingbeam/app/wallfile"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// What is typed.

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
