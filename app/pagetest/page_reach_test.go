//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"
)

var everyFold = []string{"more", "push", "hold", "today", "carry", "rest", "compared", "idle"}

// openAll shows everything that the page can show at once.
func (p *tab) openAll() {
	p.t.Helper()
	p.unfold(everyFold...)
	eval[bool](p, `(() => { const b = document.getElementById("walls"); if (b.getAttribute("aria-expanded") !== "true") b.click();
		const c = document.querySelector(".check > button"); if (c && c.getAttribute("aria-expanded") !== "true") c.click(); return true; })()`)
	p.quiet()
}

// Whatever is to be tapped is at least 44 px on each side, the dimensions, the
// conditions and the handles 56, and nothing lies beyond the screen's edge, on
// a narrow phone and with text of twice the size.
func TestTargetsAndWidth(t *testing.T) {
	h := newHost(t, distDir, "/")
	for _, s := range []struct {
		name string
		screen
		text string
	}{
		{"390", phone, ""}, {"320", screen{320, 640, 2, true}, ""}, {"390 at twice the text", phone, "200%"}, {"1280", desk, ""}, {"768", screen{768, 1024, 1, true}, ""},
		{"390 in Spanish", phone, ""}, {"320 in Spanish", screen{320, 640, 2, true}, ""}, {"390 at twice the text in Spanish", phone, "200%"}, {"1280 in Spanish", desk, ""},
	} {
		t.Run(s.name, func(t *testing.T) {
			p := openTab(t, s.screen)
			p.open(h.url(""))
			p.speakAsNamed(s.name)
			if s.text != "" {
				eval[bool](p, fmt.Sprintf(`(document.documentElement.style.setProperty("font-size", %q), true)`, s.text))
			}
			p.openAll()
			for _, condition := range fourConditions {
				p.choose(condition)
				p.targets(condition, "body")
				if over := eval[[]string](p, `document.documentElement.scrollWidth <= innerWidth ? [] :
					[...document.querySelectorAll("body *")].filter((e) => e.getBoundingClientRect().right > innerWidth + 1 && !e.closest(".scroll, .sight"))
						.slice(0, 6).map((e) => e.tagName + "." + e.className + "#" + e.id)`); len(over) > 0 {
					t.Errorf("%s: wider than the screen: %s", condition, strings.Join(over, "; "))
				}
			}
		})
	}
}

// The picture stays in view while the steppers below it are used.
func TestPictureStaysInView(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	for _, selector := range []string{`[data-step="height+"]`, `[data-step="thickness+"]`, `[data-path="soil"]`} {
		b := p.place(selector)
		r := eval[box](p, `(() => { const r = document.getElementById("figure").getBoundingClientRect(); return {X: r.x, Y: r.y, Width: r.width, Height: r.height}; })()`)
		if r.Y < -1 || r.Y+r.Height > 844 {
			t.Errorf("%s: the picture lies at %v", selector, r)
		}
		if b.Y < r.Y+r.Height-1 {
			t.Errorf("%s at %v lies under the picture at %v", selector, b, r)
		}
	}
}
