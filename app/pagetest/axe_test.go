//go:build browser

package pagetest

import "testing"

// axePlace is a screen of the page, or a state of one, and the way to it.
type axePlace struct {
	name  string
	reach func(p *tab)
}

// axePlaces lead from one to the next, and the last back to the first.
var axePlaces = []axePlace{
	{"held by the floor", func(p *tab) { p.choose("braced top") }},
	{"free", func(p *tab) { p.choose("free top") }},
	{"tied", func(p *tab) { p.choose("tied to slab") }},
	{"soil on both sides", func(p *tab) { p.choose("soil both sides") }},
	{"a faulty field and its keys", func(p *tab) {
		p.choose("braced top")
		p.tap(heightField)
		p.typeInto(heightField, "25 ft")
	}},
	{"kept walls, one deleted", func(p *tab) {
		p.setHeight("9 ft 0 in")
		p.press("#walls")
		p.press(`[data-act="copy"][data-wall="0"]`)
		p.press(`[data-act="delete"][data-wall="1"]`)
	}},
	{"everything open", func(p *tab) {
		p.press("#told-close")
		p.openAll()
	}},
	{"erasing is asked", func(p *tab) {
		p.unfold("about")
		p.press("#erase")
	}},
	{"an update is offered", func(p *tab) {
		p.press("#told-close")
		eval[bool](p, `(goappOnUpdate(), true)`)
		p.until(toldSomething)
	}},
	{"the lessons", func(p *tab) {
		p.press("#told-close")
		p.press("#walls")
		p.goTo("why")
	}},
}

// Axe finds nothing on any screen, in any language and theme. The lessons take
// the themes in turn.
func TestAccessibleEverywhere(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	themes := []string{"light", "dark", "glare"}
	check := func(what string, names ...string) {
		t.Helper()
		for _, theme := range names {
			p.theme(theme)
			if !p.axeFinds(what + ", " + theme) {
				return
			}
		}
	}
	for _, lang := range []string{"en", "es"} {
		p.speak(lang)
		for _, place := range axePlaces {
			place.reach(p)
			check(lang+", "+place.name, themes...)
		}
		lessons := eval[[]string](p, `[...new Set([...document.querySelectorAll("#why a[href*='#why/']")].map((a) => a.hash.slice(1)))]`)
		if len(lessons) < 10 {
			t.Fatalf("there are %d lessons to be seen", len(lessons))
		}
		for i, at := range lessons {
			p.goTo(at)
			check(lang+", "+at, themes[i%3])
			eval[bool](p, `(document.querySelectorAll(".why-choice[data-guess='2']:enabled, #why-numbers[aria-expanded=false]").forEach((b) => b.click()), true)`)
			p.quiet()
			check(lang+", guessed "+at, themes[i%3])
		}
		p.press("#why-back")
		p.quiet()
		if !eval[bool](p, `document.getElementById("why").hidden`) {
			p.press("#why-back")
		}
		p.until(`document.getElementById("why").hidden`)
	}
}

// Nor does it where less motion is wanted, or where the device has colors of
// its own, whose contrast is the device's.
func TestAccessibleByDevice(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.media("prefers-reduced-motion", "reduce")
	p.open(h.url(""))
	p.openAll()
	p.axe()
	p.media("forced-colors", "active")
	p.frame()
	p.shot("forced-colors-axe")
	if found := eval[[]string](p, `axe.run(document, {rules: {"color-contrast": {enabled: false}}})
		.then((r) => r.violations.map((v) => v.id + " " + v.nodes[0].target))`); len(found) > 0 {
		t.Errorf("with the device's colors axe finds %q", found)
	}
}

// axeInAll runs axe on what is to be seen, in both languages and every theme.
func (p *tab) axeInAll(what string) {
	p.t.Helper()
	for _, lang := range []string{"es", "en"} {
		p.speak(lang)
		for _, theme := range []string{"dark", "glare", "light"} {
			p.theme(theme)
			if !p.axeFinds(lang + ", " + what + ", " + theme) {
				return
			}
		}
	}
}

// axeFinds runs axe and is false when the test has failed.
func (p *tab) axeFinds(what string) bool {
	p.t.Helper()
	p.axe()
	if p.t.Failed() {
		p.t.Log("on " + what)
	}
	return !p.t.Failed()
}
