package main

import (
	"strings"
	"time"

	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// What is pressed: the steppers, which repeat while they are held, and the
// keys that a phone's number pad lacks.

// onStep is one step of a stepper. A press that was held has stepped already;
// a click of no pointer is a key's.
func (p *page) onStep(ctx app.Context, e app.Event) {
	defer p.caught()
	h := p.hold
	p.hold = nil
	if h != nil && h.times > 0 && e.Get("detail").Int() > 0 {
		return
	}
	path, by := stepOf(data(ctx, "step"))
	p.step(ctx, path, by)
}

// stepOf reads "height+".
func stepOf(s string) (path string, by int) {
	if path, ok := strings.CutSuffix(s, "-"); ok {
		return path, -1
	}
	return strings.TrimSuffix(s, "+"), +1
}

func (p *page) step(ctx app.Context, path string, by int) {
	view.StepBy(p.wall(), path, by, p.speaker)
	p.changed(ctx)
}

// hold is a stepper that is being pressed.
type hold struct {
	step  string
	times int  // it has repeated
	over  bool // it repeats no more
	left  int  // changes of the page when it had stepped
}

// After about a second the steps are larger.
const (
	holdDelay  = 450 * time.Millisecond
	holdRepeat = 110 * time.Millisecond
	holdSmall  = 6
	holdLarge  = 3
)

func (p *page) onHold(ctx app.Context, e app.Event) {
	defer p.caught()
	h := &hold{step: data(ctx, "step")}
	p.hold = h
	ctx.PreventUpdate()
	// A finger is kept by what it touched first, and would never leave it.
	if pointer := e.Get("pointerId"); ctx.JSSrc().Call("hasPointerCapture", pointer).Bool() {
		ctx.JSSrc().Call("releasePointerCapture", pointer)
	}
	ctx.After(holdDelay, func(ctx app.Context) { p.repeat(ctx, h) })
}

// repeat steps again until the press ends or something else is changed.
func (p *page) repeat(ctx app.Context, h *hold) {
	defer p.caught()
	if p.hold != h || h.over || h.times > 0 && h.left != p.changes {
		ctx.PreventUpdate()
		return
	}
	h.times++
	path, by := stepOf(h.step)
	if h.times > holdSmall {
		by *= holdLarge
	}
	p.step(ctx, path, by)
	h.left = p.changes
	ctx.After(holdRepeat, func(ctx app.Context) { p.repeat(ctx, h) })
}

// onRelease ends a press: the pointer is lifted or leaves, or the focus goes.
// The click that may follow finds whether it was held.
func (p *page) onRelease(ctx app.Context, e app.Event) {
	defer p.caught()
	ctx.PreventUpdate()
	p.release()
}

func (p *page) release() {
	if p.hold != nil {
		p.hold.over = true
	}
}

// onKeyDown keeps the focus in the field whose key is pressed.
func (p *page) onKeyDown(ctx app.Context, e app.Event) {
	defer p.caught()
	e.PreventDefault()
	ctx.PreventUpdate()
}

// typed returns a text after a key was pressed with from to to selected, and
// where the caret then is. A blank is written as "_", since an attribute loses
// it at its ends.
func typed(text string, from, to int, key string) (string, int) {
	r := []rune(text)
	from, to = min(max(from, 0), len(r)), min(max(to, 0), len(r))
	if key == "back" {
		if from == to && from > 0 {
			from--
		}
		key = ""
	}
	key = strings.ReplaceAll(key, "_", " ")
	before := string(r[:from])
	if before == "" || strings.HasSuffix(before, " ") {
		key = strings.TrimLeft(key, " ")
	}
	return before + key + string(r[to:]), len([]rune(before + key))
}
