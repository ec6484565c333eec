//go:build browser

package pagetest

import (
	"fmt"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

// finger puts a finger on the screen, moves it or lifts it.
func (p *tab) finger(kind input.DispatchTouchEventType, at ...*input.TouchPoint) {
	p.t.Helper()
	if at == nil {
		at = []*input.TouchPoint{}
	}
	if _, err := chromedp.Call(p.ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: at}); err != nil {
		p.t.Fatal(err)
	}
}

// heights notes every height that the wall has from now on, in inches.
func (p *tab) heights() {
	p.t.Helper()
	eval[bool](p, `(() => { const h = document.getElementById("handle-height"), at = () => Number(h.getAttribute("aria-valuenow"));
		window.heights = [at()];
		new MutationObserver(() => { if (at() !== heights.at(-1)) heights.push(at()); }).observe(h, {attributes: true, attributeFilter: ["aria-valuenow"]});
		return true; })()`)
}

// A stepper that is held goes on, in larger steps after a while, to whole feet,
// and stays at the limit; the click of letting go adds nothing.
func TestHeldStepperGoesFaster(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.setHeight("2 ft")
	p.quiet()
	p.heights()
	x, y := p.place(`[data-step="height+"]`).middle()
	p.finger(input.DispatchTouchEventTypeTouchStart, &input.TouchPoint{X: x, Y: y})
	p.until(`heights.at(-1) === 240`)
	p.finger(input.DispatchTouchEventTypeTouchEnd)
	p.quiet()
	got := eval[[]int](p, `heights`)
	n := len(got)
	if n < 12 || got[n-1] != 240 {
		t.Fatalf("the heights were %v", got)
	}
	for i := 1; i < n; i++ {
		if step := got[i] - got[i-1]; step <= 0 || step%4 != 0 {
			t.Errorf("a step of %d in: %v", step, got)
		}
	}
	if early, late := got[3]-got[0], got[n-1]-got[n-4]; early > 24 || late < 36 {
		t.Errorf("three steps led by %d in at first and by %d at last: %v", early, late, got)
	}
	for _, height := range got[n-5:] {
		if height%12 != 0 {
			t.Errorf("no whole feet at the end: %v", got)
		}
	}
	p.tap(`[data-step="height-"]`)
	p.until(`heights.at(-1) === 236`)
}

// Whatever ends a press ends the steps: the finger is lifted, called off or
// slides away, the focus or the window goes, the page is hidden, or something
// else changes the wall under it.
func TestHeldStepperStops(t *testing.T) {
	h := newHost(t, distDir, "/")
	at := func(p *tab, dx float64) *input.TouchPoint {
		x, y := p.place(`[data-step="height+"]`).middle()
		return &input.TouchPoint{X: x + dx, Y: y}
	}
	script := func(s string) func(*tab) {
		return func(p *tab) { eval[bool](p, "("+s+", true)") }
	}
	for name, end := range map[string]func(*tab){
		"lifted":     func(p *tab) { p.finger(input.DispatchTouchEventTypeTouchEnd) },
		"called off": func(p *tab) { p.finger(input.DispatchTouchEventTypeTouchCancel) },
		"slid away":  func(p *tab) { p.finger(input.DispatchTouchEventTypeTouchMove, at(p, -70)) },
		"window":     script(`dispatchEvent(new Event("blur"))`),
		"hidden":     script(`document.dispatchEvent(new Event("visibilitychange"))`),
		"focus":      script(`document.querySelector('[data-step="height+"]').focus(), document.activeElement.blur()`),
		"other wall": script(`document.getElementById("wall-new").click()`),
		"condition":  script(`document.querySelector('input[name=condition][value="free top"]').click()`),
	} {
		p := openTab(t, phone)
		p.open(h.url(""))
		eval[bool](p, `(document.getElementById("walls").click(), true)`)
		p.setHeight("2 ft")
		p.quiet()
		p.heights()
		p.finger(input.DispatchTouchEventTypeTouchStart, at(p, 0))
		p.until(`heights.length > 2`)
		end(p)
		p.frame()
		// A step more would have come twice within this while.
		eval[bool](p, fmt.Sprintf(`(window.length0 = heights.length, new Promise((done) => setTimeout(() => done(true), %d)))`, 250))
		if got := eval[[]int](p, `heights`); len(got) > eval[int](p, `length0`) {
			t.Errorf("%s: the steps went on: %v", name, got)
		}
		if name != "lifted" && name != "called off" {
			p.finger(input.DispatchTouchEventTypeTouchEnd)
			p.quiet()
			if got := eval[[]int](p, `heights`); len(got) > eval[int](p, `length0`) {
				t.Errorf("%s: letting go stepped once more: %v", name, got)
			}
		}
	}
}
