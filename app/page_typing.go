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

// onFocus shows what is in the field, all of it selected, so that the next key
// begins anew.
func (p *page) onFocus(ctx app.Context, e app.Event) {
	defer p.caught()
	p.focus = data(ctx, "path")
	p.typing = p.focus
	ctx.JSSrc().Set("value", view.Begin(p.wall(), p.focus, p.speaker))
	ctx.JSSrc().Call("select")
	p.padFor, p.sixteenths = "", false
	if line := ctx.JSSrc().Call("closest", ".row"); line.Truthy() && line.Call("querySelector", ".pad").Truthy() {
		p.padFor = p.focus // a name is typed with the device's own keys
	}
	ctx.Defer(p.settle)
}

// onAgain brings back the keypad that was closed over its field.
func (p *page) onAgain(ctx app.Context, e app.Event) {
	defer p.caught()
	p.padFor = data(ctx, "path")
	ctx.Defer(p.settle)
}

// onBlur gives what was typed its unit, if it has none.
func (p *page) onBlur(ctx app.Context, e app.Event) {
	defer p.caught()
	if to := e.Get("relatedTarget"); to.Truthy() && to.Call("closest", ".pad").Truthy() {
		return // a key was given the focus by other means than a finger
	}
	p.began = began{}
	if path := data(ctx, "path"); p.focus == path {
		p.focus = ""
		if view.Commit(p.wall(), path, p.speaker) {
			p.changed(ctx)
		}
	}
	p.self.Defer(p.settle)
	// What shows beside a field while it is typed in goes a little later, so
	// that what is being tapped at the moment does not move away.
	p.self.After(tapTime, func(ctx app.Context) {
		defer p.caught()
		p.typing = p.focus
		ctx.Defer(p.settle)
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
		p.endTyping(ctx.JSSrc())
		ctx.Defer(p.settle)
	case "Escape":
		p.padFor = ""
		ctx.Defer(p.settle)
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
