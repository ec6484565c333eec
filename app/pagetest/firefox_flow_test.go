//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// The main flows in Debian's Firefox: the four conditions against the command
// line, a finger's drag, keys, a wrong entry, a working, a lesson.
func TestFirefoxMainFlows(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openFirefox(t, phone)
	p.open(h.url(""))
	for _, condition := range fourConditions {
		p.choose(condition)
		p.agrees(condition)
		before := p.now("height")
		p.dragTouch(handle("height"), 0, 100, 10)
		p.quiet()
		if after := p.now("height"); !(after < before-12) {
			t.Errorf("%s: dragged down by 100 px, the wall went from %v to %v in", condition, before, after)
		}
		p.agrees(condition + " dragged")
		p.quiet() // the list of walls gives the focus back
		p.typeInto(heightField, "9 ft")
		p.keys(kb.Enter)
		p.typeInto(`[data-path="grade.a"]`, "8 ft 4 in")
		p.keys(kb.Enter)
		p.quiet()
		if got := p.now("height"); got != 108 {
			t.Errorf("%s: 9 ft typed reads as %v in", condition, got)
		}
	}
	before := p.now("height")
	p.tap(`[data-step="height+"]`)
	p.quiet()
	if got := p.now("height"); got != before+4 {
		t.Errorf("a step leads from %v to %v in", before, got)
	}
	p.dragMouse(handle("height"), 0, 40, 5)
	p.quiet()
	if got := p.now("height"); got >= before+4 {
		t.Errorf("the mouse drags the wall to %v in", got)
	}
	p.typeInto(heightField, "25 ft")
	p.quiet()
	if problem := p.text(`[id="f-height-problem"]`); !strings.Contains(problem, "20 ft") {
		t.Errorf("the problem does not say the range: %q", problem)
	}
	p.setHeight("10 ft")
	p.wantHeight("10 ft 0 in")
	p.tap(`[data-check="flexure"] > button`)
	p.until(`!!document.querySelector(".check > button[aria-expanded=true] + .working:not([hidden]) math")`)
	if wide := eval[float64](p, `document.documentElement.scrollWidth - innerWidth`); wide > 0 {
		t.Errorf("the page is %v px wider than the screen", wide)
	}
	p.visit(h.url("#why"))
	p.until(`!document.querySelector("#tool:not([hidden])") && document.querySelector("h1, h2").textContent !== ""`)
}

// Firefox keeps the wall, and shows it again with the server gone, at the root
// and under a path, with a query.
func TestFirefoxOffline(t *testing.T) {
	for _, path := range []string{"/", "/tools/x/"} {
		t.Run(path, func(t *testing.T) {
			h := newHost(t, distDir, path)
			p := openFirefox(t, phone)
			p.open(h.url(""))
			p.setHeight("11 ft")
			p.wantHeight("11 ft 0 in")
			p.offlineReady()
			p.sameSite(distDir)
			p.kept("11 ft")
			h.stop()
			p.reload()
			p.wantHeight("11 ft 0 in")
			for i, rest := range []string{"?q=1", "index.html?a=b&c"} {
				p.open(h.url(rest))
				p.setHeight(fmt.Sprintf("%d ft", 8+i))
				p.wantHeight(fmt.Sprintf("%d ft 0 in", 8+i))
			}
		})
	}
}
