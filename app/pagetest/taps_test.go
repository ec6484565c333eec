//go:build browser

package pagetest

import (
	"math/rand/v2"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

const (
	randomTaps = 1000
	tapSeed    = 20260601
)

// hands are random taps and drags at phone size, always the same for a seed.
type hands struct {
	*tab
	random *rand.Rand
}

// A thousand random taps and drags on whatever is there leave no error and no
// frozen page: the wall, its workings and papers, the kept walls, the lessons.
func TestRandomTaps(t *testing.T) {
	t.Logf("seed %d", tapSeed)
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	// What leaves the page, or opens a window of the browser, stays out.
	p.beforeEachPage(`window.print = () => {};
		HTMLInputElement.prototype.showPicker = HTMLSelectElement.prototype.showPicker = () => {};
		document.addEventListener("click", (event) => {
			if (event.target.closest?.("input[type=file], a[download], a[target=_blank]")) { event.preventDefault(); }
		}, true);`)
	p.open(h.url(""))
	a := hands{p, rand.New(rand.NewPCG(tapSeed, 1))}
	for i := 1; i <= randomTaps; i++ {
		if i%100 == 60 { // so that no screen is left out
			a.follow([]string{"#why", "#why/height", "#why/check", "#"}[i/100%4])
		}
		a.tapAnywhere()
		if i%50 == 0 {
			a.alive(i)
		}
	}
}

// follow goes to a fragment as a link within the page does.
func (a hands) follow(fragment string) {
	a.t.Helper()
	eval[bool](a.tab, `(location.hash = "`+fragment+`", true)`)
	a.frame()
}

// tapAnywhere taps or drags something that can be used, anywhere on the page;
// one time in five just a place on the screen.
func (a hands) tapAnywhere() {
	a.t.Helper()
	x, y := a.random.Float64()*389, a.random.Float64()*843
	if a.random.IntN(5) > 0 {
		at := eval[box](a.tab, `(() => {
			const usable = [...document.querySelectorAll("button, a[href], select, input, [data-handle], label")]
				.filter((e) => e.checkVisibility({visibilityProperty: true}) && !e.matches(".unseen, #units ~ *") && !e.closest(".embedded"));
			const one = usable[Math.floor(`+jsNumber(a.random.Float64())+` * usable.length)];
			if (!one) { return {X: 10, Y: 10, Width: 0, Height: 0}; }
			one.scrollIntoView({block: "center", behavior: "instant"});
			const r = one.getBoundingClientRect();
			return {X: r.x, Y: r.y, Width: r.width, Height: r.height};
		})()`)
		x, y = at.middle()
	}
	x, y = min(max(x, 1), 389), min(max(y, 1), 843)
	a.touchAt(input.DispatchTouchEventTypeTouchStart, &input.TouchPoint{X: x, Y: y})
	if a.random.IntN(3) == 0 {
		dx, dy := a.random.Float64()*200-100, a.random.Float64()*300-150
		for step := 1; step <= 3; step++ {
			part := float64(step) / 3
			a.touchAt(input.DispatchTouchEventTypeTouchMove, &input.TouchPoint{X: min(max(x+dx*part, 1), 389), Y: min(max(y+dy*part, 1), 843)})
		}
	}
	a.touchAt(input.DispatchTouchEventTypeTouchEnd)
	a.frame()
}

func (a hands) touchAt(kind input.DispatchTouchEventType, at ...*input.TouchPoint) {
	a.t.Helper()
	if at == nil {
		at = []*input.TouchPoint{}
	}
	if _, err := chromedp.Call(a.ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: at}); err != nil {
		a.t.Fatal(err)
	}
}

// alive tries whether the page answers: a stepper of the wall, or whatever a
// lesson has, changes the picture.
func (a hands) alive(taps int) {
	a.t.Helper()
	if eval[bool](a.tab, `document.documentElement.dataset.stopped === "1" || !document.getElementById("fault").hidden`) {
		a.t.Fatalf("after %d taps: the page has a fault: %s", taps, a.text("body"))
	}
	a.follow("#")
	a.until(`!document.getElementById("tool").hidden`)
	a.quiet()
	// Some wall may stand at a limit, or not be readable: then a fresh one.
	if a.stepsChange() {
		return
	}
	eval[bool](a.tab, `(() => {
		const walls = document.getElementById("walls");
		if (walls.getAttribute("aria-expanded") !== "true") { walls.click(); }
		return true;
	})()`)
	a.quiet()
	a.press("#wall-new")
	a.quiet()
	if !a.stepsChange() {
		a.t.Fatalf("after %d taps no step changes the picture", taps)
	}
}

// stepsChange presses one stepper after the other until the picture changes.
func (a hands) stepsChange() bool {
	a.t.Helper()
	return eval[bool](a.tab, `(async () => {
		const picture = () => document.getElementById("picture").outerHTML;
		for (const step of ["height+", "height-", "thickness+", "thickness-", "grade.a-", "grade.a+"]) {
			const before = picture();
			document.querySelector('[data-step="' + step + '"]')?.click();
			for (let i = 0; i < 20; i++) {
				await new Promise(requestAnimationFrame);
				if (picture() !== before) { return true; }
			}
		}
		return false;
	})()`)
}
