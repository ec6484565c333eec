//go:build browser

package pagetest

import (
	"fmt"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

// box is the place of an element on the screen, in CSS pixels.
type box struct {
	X, Y, Width, Height float64
}

func (b box) middle() (x, y float64) { return b.X + b.Width/2, b.Y + b.Height/2 }

// place scrolls the first element that matches into view and returns where it
// then is.
func (p *tab) place(selector string) box {
	p.t.Helper()
	return eval[box](p, fmt.Sprintf(`(() => {
		const element = document.querySelector(%q);
		element.scrollIntoView({block: "center", behavior: "instant"});
		const r = element.getBoundingClientRect();
		return {X: r.x, Y: r.y, Width: r.width, Height: r.height};
	})()`, selector))
}

// tap touches the middle of an element as a finger does.
func (p *tab) tap(selector string) {
	p.t.Helper()
	x, y := p.place(selector).middle()
	if p.fox != nil {
		p.fox.touch("touch", x, y)
		return
	}
	p.do(chromedp.TapXY(x, y))
}

// click presses the mouse in the middle of an element.
func (p *tab) click(selector string) {
	p.t.Helper()
	x, y := p.place(selector).middle()
	if p.fox != nil {
		p.fox.touch("mouse", x, y)
		return
	}
	p.do(chromedp.MouseClickXY(x, y))
}

// typeInto replaces the text of a field, key by key.
func (p *tab) typeInto(selector, text string) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(() => { const f = document.querySelector(%q); f.focus(); f.select(); return true; })()`, selector))
	p.keys(text)
}

// keys presses keys on what has the focus; kb.ArrowUp and the like are named
// in chromedp's package kb.
func (p *tab) keys(keys string) {
	p.t.Helper()
	if p.fox != nil {
		p.fox.keys(keys)
		return
	}
	p.do(chromedp.KeyEvent(keys))
}

// dragTouch drags an element by dx, dy with a finger, in steps moves.
func (p *tab) dragTouch(selector string, dx, dy float64, steps int) {
	p.t.Helper()
	x, y := p.place(selector).middle()
	if p.fox != nil {
		p.fox.drag("touch", x, y, dx, dy, steps)
		p.frame()
		return
	}
	touch := func(kind input.DispatchTouchEventType, at ...*input.TouchPoint) {
		p.t.Helper()
		params := input.DispatchTouchEventParams{Type: kind, TouchPoints: at}
		if at == nil {
			params.TouchPoints = []*input.TouchPoint{}
		}
		if _, err := chromedp.Call(p.ctx, input.DispatchTouchEvent, params); err != nil {
			p.t.Fatal(err)
		}
	}
	touch(input.DispatchTouchEventTypeTouchStart, &input.TouchPoint{X: x, Y: y})
	for i := 1; i <= steps; i++ {
		part := float64(i) / float64(steps)
		touch(input.DispatchTouchEventTypeTouchMove, &input.TouchPoint{X: x + dx*part, Y: y + dy*part})
		p.frame()
	}
	touch(input.DispatchTouchEventTypeTouchEnd)
	p.frame()
}

// dragMouse drags an element by dx, dy with the mouse, in steps moves.
func (p *tab) dragMouse(selector string, dx, dy float64, steps int) {
	p.t.Helper()
	x, y := p.place(selector).middle()
	if p.fox != nil {
		p.fox.drag("mouse", x, y, dx, dy, steps)
		p.frame()
		return
	}
	p.do(chromedp.DragAndDropXY(x, y, x+dx, y+dy, steps))
	p.frame()
}

// frame waits until the page has been drawn twice, so that what an event has
// changed is there.
func (p *tab) frame() {
	p.t.Helper()
	eval[bool](p, `new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))`)
}

// slow makes the processor as many times slower; 1 is its own speed.
func (p *tab) slow(times float64) {
	p.t.Helper()
	if _, err := chromedp.Call(p.ctx, emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: times}); err != nil {
		p.t.Fatal(err)
	}
}

// media sets media features such as prefers-color-scheme, name and value.
func (p *tab) media(features ...string) {
	p.t.Helper()
	var list []*emulation.MediaFeature
	for i := 0; i+1 < len(features); i += 2 {
		list = append(list, &emulation.MediaFeature{Name: features[i], Value: features[i+1]})
	}
	if _, err := chromedp.Call(p.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: list}); err != nil {
		p.t.Fatal(err)
	}
}
