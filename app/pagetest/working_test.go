//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// openCheck opens the working of the check with that key by a script.
func (p *tab) openCheck(key string) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(() => { const b = document.querySelector('.check > button[data-key=%q]');
		if (b.getAttribute("aria-expanded") !== "true") b.click(); return true; })()`, key))
	p.quiet()
}

// keysOf are the keys of the checks that have a working.
func (p *tab) keysOf() []string {
	p.t.Helper()
	p.unfold("rest", "compared")
	return eval[[]string](p, `[...document.querySelectorAll(".check > button")].filter((b) => b.dataset.state !== "idle").map((b) => b.dataset.key)`)
}

// workingFaults are what is wrong with the working that is open.
const workingFaults = `(() => {
	const w = document.querySelector(".check > button[aria-expanded=true] + .working"), found = [];
	if (!w || w.hidden) return ["no working is open"];
	const said = (s) => w.querySelector(s)?.textContent.trim();
	if (!said(".working-question")) found.push("no question");
	if (!said(".working-source")) found.push("no source");
	if (document.documentElement.scrollWidth > innerWidth) found.push("the page is " + document.documentElement.scrollWidth + " wide");
	for (const e of w.querySelectorAll(".sum, svg, table, .uses")) {
		const r = e.getBoundingClientRect();
		if (r.left < 0 || r.right > innerWidth + .5) found.push(e.className.baseVal ?? e.className + " reaches from " + r.left + " to " + r.right);
	}
	for (const e of w.querySelectorAll(".sum")) {
		if (e.scrollWidth > e.clientWidth && (innerWidth > 350 || !/auto|scroll/.test(getComputedStyle(e).overflowX))) found.push("cut: " + e.textContent);
		if (e.scrollHeight > e.clientHeight) found.push("cut below: " + e.scrollHeight + " of " + e.clientHeight + e.textContent);
		if (!e.getAttribute("aria-label").includes("=")) found.push("not read aloud: " + e.textContent);
		if (!e.querySelector("math")) found.push("not typeset: " + e.textContent);
	}
	for (const s of w.querySelectorAll("svg")) {
		const k = s.getBoundingClientRect().width / s.viewBox.baseVal.width;
		if (s.getAttribute("role") !== "img" || !s.querySelector("title").textContent || !s.querySelector("desc").textContent) found.push("a picture without a name");
		for (const e of s.querySelectorAll("text")) {
			if (parseFloat(getComputedStyle(e).fontSize) * k < 12) found.push("small: " + e.textContent);
			const r = e.getBoundingClientRect(), o = s.getBoundingClientRect();
			if (r.left < o.left - 1 || r.right > o.right + 1 || r.top < o.top - 2 || r.bottom > o.bottom + 2) found.push("outside the picture: " + e.textContent);
		}
		const texts = [...s.querySelectorAll("text")].map((e) => [e.textContent, e.getBoundingClientRect()]);
		for (const [i, [a, r]] of texts.entries()) for (const [b, q] of texts.slice(i + 1))
			if (r.left < q.right - 1 && q.left < r.right - 1 && r.top < q.bottom - 5 && q.top < r.bottom - 5) found.push(a + " over " + b);
	}
	return found;
})()`

// Every working of every condition opens in its place and fits the screen, with
// typeset formulas and pictures, by a finger and by the keyboard, in both
// systems of units; axe finds nothing.
func TestWorkings(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"phone": phone, "narrow": {320, 640, 2, true}, "desk": desk} {
		t.Run(name, func(t *testing.T) {
			p := openTab(t, s)
			p.open(h.url(""))
			pictures, formulas := 0, 0
			for i, condition := range fourConditions {
				if name == "narrow" && i%2 == 0 {
					continue // the others have the longer formulas
				}
				p.choose(condition)
				if i%2 == 1 {
					p.press("#units")
				}
				for _, key := range p.keysOf() {
					p.openCheck(key)
					if found := eval[[]string](p, workingFaults); len(found) > 0 {
						t.Errorf("%s, %s: %s", condition, key, strings.Join(found, "; "))
					}
					pictures += eval[int](p, `document.querySelectorAll(".working .sketch").length`)
					formulas += eval[int](p, `document.querySelectorAll(".working .sum math").length`)
				}
				p.opensAndFollows(condition, s.touch)
				if name != "narrow" {
					p.axe()
				}
				p.shotOfWorking(fmt.Sprintf("working-%s-%s", name, strings.ReplaceAll(condition, " ", "-")))
			}
			if pictures < 30 || formulas < 300 {
				t.Errorf("%d pictures and %d formulas", pictures, formulas)
			}
		})
	}
}

// shotOfWorking keeps a picture of the screen from the open working on.
func (p *tab) shotOfWorking(name string) {
	p.t.Helper()
	eval[bool](p, `(document.querySelector(".check > button[aria-expanded=true]").scrollIntoView({block: "start", behavior: "instant"}), true)`)
	p.frame()
	p.shot(name)
}

// opensAndFollows closes and opens a working, and goes back over three values,
// each to the step that it comes from.
func (p *tab) opensAndFollows(condition string, touch bool) {
	p.t.Helper()
	button := `.check[data-check="plain-flexure"] > button`
	if condition == "free top" || condition == "soil both sides" {
		button = `.check[data-check="overturning"] > button`
	}
	press := func(selector string) {
		p.t.Helper()
		if touch {
			p.tap(selector)
		} else {
			eval[bool](p, fmt.Sprintf(`(document.querySelector(%q).focus(), true)`, selector))
			p.keys(kb.Enter)
		}
		p.quiet()
	}
	open := func() bool {
		return eval[bool](p, fmt.Sprintf(`document.querySelector(%q).getAttribute("aria-expanded") === "true"`, button))
	}
	if open() {
		press(button)
	}
	if open() {
		p.t.Errorf("%s: the working does not close", condition)
	}
	press(button)
	if !open() {
		p.t.Fatalf("%s: the working does not open", condition)
	}
	// From the step that is farthest from what is given, each time on to the one
	// of its values that is.
	const farthest = `((steps) => { const far = (id) => Math.max(0, ...[...document.getElementById(id).querySelectorAll(".use")].map((u) => 1 + far(u.dataset.step)));
		return steps.sort((a, b) => far(b) - far(a))[0] ?? ""; })`
	step := eval[string](p, farthest+`([...document.querySelectorAll(".working .sum-step")].map((s) => s.id))`)
	for i := range 3 {
		next := eval[string](p, fmt.Sprintf(farthest+`([...document.getElementById(%q).querySelectorAll(".use")].map((u) => u.dataset.step))`, step))
		if next == "" {
			p.t.Fatalf("%s: the chain ends after %d values", condition, i)
		}
		press(fmt.Sprintf(`#%s .use[data-step=%q]`, step, next))
		at := eval[string](p, `document.activeElement.id`)
		inside := eval[bool](p, `(() => { const r = document.activeElement.getBoundingClientRect(); return r.top >= -1 && r.top < innerHeight; })()`)
		if at != next || !inside {
			p.t.Errorf("%s: the value of %s leads to %q, in view: %v, want %s", condition, step, at, inside, next)
			return
		}
		step = next
	}
}

// Without MathML the formulas are lines of text.
func TestWorkingsWithoutMathML(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.beforeEachPage(`delete window.MathMLElement`)
	p.open(h.url(""))
	for _, condition := range fourConditions {
		p.choose(condition)
		for _, key := range p.keysOf() {
			p.openCheck(key)
			found := eval[[]string](p, `(() => { const w = document.querySelector(".check > button[aria-expanded=true] + .working"), found = [];
				if (w.querySelector(".sum math, .given math")) found.push("a formula is MathML");
				for (const e of w.querySelectorAll(".sum")) if (!/^\S.* = .*\d/.test(e.textContent) || e.textContent.includes("<")) found.push(e.textContent);
				if (document.documentElement.scrollWidth > innerWidth) found.push("the page is " + document.documentElement.scrollWidth + " wide");
				return found; })()`)
			if len(found) > 0 {
				t.Errorf("%s, %s: %s", condition, key, strings.Join(found, "; "))
			}
		}
	}
	p.shotOfWorking("working-text")
}
