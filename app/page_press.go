package main

import (
	"strings"
	"time"

	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// What is pressed: the steppers, which repeat while they are held, and the
// keys that a phone's number pad lacks.

// onStep is one step of a stepper. A press that was held has stepped already.
func (p *page) onStep(ctx app.Context, e app.Event) {
	defer p.caught()
	if p.hold != nil && p.hold.repeated {
		p.hold = nil
		return
	}
	p.hold = nil
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
	step     string
	repeated bool
}

const (
	holdDelay  = 450 * time.Millisecond
	holdRepeat = 110 * time.Millisecond
)

func (p *page) onHold(ctx app.Context, e app.Event) {
	defer p.caught()
	h := &hold{step: data(ctx, "step")}
	p.hold = h
	ctx.PreventUpdate()
	ctx.After(holdDelay, func(ctx app.Context) { p.repeat(ctx, h) })
}

func (p *page) repeat(ctx app.Context, h *hold) {
	defer p.caught()
	if p.hold != h {
		ctx.PreventUpdate()
		return
	}
	h.repeated = true
	path, by := stepOf(h.step)
	p.step(ctx, path, by)
	ctx.After(holdRepeat, func(ctx app.Context) { p.repeat(ctx, h) })
}

// onRelease ends a press. The click that follows finds whether it was held.
func (p *page) onRelease(ctx app.Context, e app.Event) {
	defer p.caught()
	ctx.PreventUpdate()
	if h := p.hold; h != nil {
		p.hold = &hold{repeated: h.repeated && e.Get("type").String() == "pointerup"}
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
