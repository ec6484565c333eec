//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"
)

// On a phone that lies, the answer, the picture with its handles and the height
// stand on the first screen beside each other. Answer and picture stay while
// the rest runs, and while the keypad is open.
func TestTurnedPhone(t *testing.T) {
	h := newHost(t, distDir, "/")
	for _, s := range []screen{turned, {667, 375, 2, true}} {
		for _, language := range []string{"en", "es"} {
			p := openTab(t, phone)
			p.open(h.url(""))
			p.show(s)
			p.until(`document.getElementById("figure").clientWidth < innerWidth`)
			p.speak(language)
			for _, condition := range fourConditions {
				p.choose(condition)
				what := fmt.Sprint(s.width, " ", language, " ", condition)
				eval[bool](p, `(scrollTo(0, 0), true)`)
				p.frame()
				p.onScreen(what, "#today", "#finished", ".cautions", "#figure", "#handle-height", "#handle-grade\\.a", "input[name=condition]:checked + .card-face", `[data-step="height+"]`, `[data-step="height-"]`, "#f-height")
				p.gripped(what)
				p.place(`[data-path="soil"]`)
				p.onScreen(what+", below", "#today", "#finished", "#figure", "#handle-height", `[data-path="soil"]`)
				p.tap(heightField)
				p.until(`!!document.querySelector(".pad:not([hidden])")`)
				p.keys("99")
				p.quiet()
				p.onScreen(what+", typing", "#today", "#finished", "#figure", "#f-height", ".pad:not([hidden])", "#stale")
				p.keys("\b\b9 ft")
				p.strike("!done")
				p.quiet()
			}
			p.axe()
		}
	}
}

// gripped fails unless every handle lies over what is drawn to be gripped.
func (p *tab) gripped(what string) {
	p.t.Helper()
	if wrong := eval[[]string](p, `(() => {
		const middle = (e) => { const r = e.getBoundingClientRect(); return [r.left + r.width / 2, r.top + r.height / 2]; };
		const drawn = [...document.querySelectorAll("#picture circle.p-grip")].map(middle);
		const handles = [...document.querySelectorAll(".handle:not(.unplaced)")];
		return (handles.length ? [] : ["no handles"]).concat(handles.filter((e) => { const [x, y] = middle(e); return !drawn.some(([a, b]) => Math.hypot(a - x, b - y) < 1.5); }).map((e) => e.id + " at " + middle(e)));
	})()`); len(wrong) > 0 {
		p.t.Errorf("%s: nothing is drawn under %v", what, wrong)
	}
}

// onScreen fails unless elements are wholly on the screen and nothing lies
// over their middle but what belongs to the picture.
func (p *tab) onScreen(what string, selectors ...string) {
	p.t.Helper()
	for _, selector := range selectors {
		if wrong := eval[string](p, fmt.Sprintf(`(() => {
			const e = document.querySelector(%q);
			if (!e || !e.checkVisibility()) return "is not shown";
			const r = e.getBoundingClientRect();
			if (r.left < -1 || r.top < -1 || r.right > innerWidth + 1 || r.bottom > innerHeight + 1) return "is at " + [r.left, r.top, r.right, r.bottom].map(Math.round);
			const over = document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2);
			return e.contains(over) || over.contains(e) || over.closest(".sight, .card") === e.closest(".sight, .card") && over.closest(".sight, .card") ? "" : "lies under " + (over.id || over.className);
		})()`, selector)); wrong != "" {
			p.t.Errorf("%s: %s %s", what, strings.TrimPrefix(selector, "#"), wrong)
		}
	}
}
