//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"
)

// lessonIDs are all lessons.
var lessonIDs = []string{"beam", "height", "side", "crack", "place", "water", "hold", "heel", "slab", "both", "wait", "heights"}

// crowded names the labels of pictures that lie on each other or are cut off,
// measured on what is drawn.
const crowded = `[...document.querySelectorAll(".why-figure > svg")].flatMap((svg) => {
	const all = [...svg.querySelectorAll("text.p-say:not(.p-pin-letter)")].map((e) => ({text: e.textContent, box: e.getBBox()})), view = svg.viewBox.baseVal;
	if (Math.abs(view.width - svg.clientWidth) > 1 || Math.abs(view.height - svg.clientHeight) > 1) return ["drawn for " + view.width + "×" + view.height + " in " + svg.clientWidth + "×" + svg.clientHeight];
	return all.flatMap(({text, box: b}, i) => (b.x < 0 || b.y < 0 || b.x + b.width > view.width || b.y + b.height > view.height ? [text + " is cut off"] : [])
		.concat(all.slice(i + 1).filter(({box: c}) => Math.min(b.x + b.width, c.x + c.width) - Math.max(b.x, c.x) > 0 && Math.min(b.y + b.height, c.y + c.height) - Math.max(b.y, c.y) > 2).map((o) => text + " lies on " + o.text)));
})`

// moveControl puts the control of a lesson to its first or its last place.
func (p *tab) moveControl(last bool) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(() => { const last = %t, s = document.getElementById("why-slider"), named = [...document.querySelectorAll("input[name=why-at]")];
		if (named.length) { named.at(last ? -1 : 0).click(); return true; }
		s.value = last ? s.max : 0; s.dispatchEvent(new Event("input", {bubbles: true})); return true; })()`, last))
	p.frame()
	p.frame()
}

// Every lesson, asked, answered, and with its control at both ends, on every
// screen, in English, and in Spanish in the look whose type is heaviest: no
// label lies on another or is cut off. Once it is answered, the picture is on
// the screen together with its control, and with what it says.
func TestLessonLooks(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"390": phone, "320": {320, 568, 2, true}, "turned": turned, "desk": desk} {
		for language, l := range map[string]look{"en": looks[0], "es": looks[2]} {
			t.Run(name+" "+language, func(t *testing.T) {
				p := openIn(t, s, h.url(""), l)
				p.speak(language)
				for _, id := range lessonIDs {
					p.looksWell(language, id)
				}
				p.judgesWell(language)
			})
		}
	}
}

// looksWell goes through one lesson.
func (p *tab) looksWell(language, id string) {
	p.t.Helper()
	fits := func(state string) {
		p.t.Helper()
		if wrong := eval[[]string](p, crowded); len(wrong) > 0 {
			p.t.Errorf("%s %s, %s: %s", language, id, state, strings.Join(wrong, "; "))
		}
	}
	p.goTo("why/" + id)
	p.quiet()
	fits("asked")
	p.tap(`.why-choice[data-guess="3"]`)
	p.until(`document.getElementById("why-verdict").checkVisibility()`)
	p.quiet()
	for _, state := range []string{"answered", "at the start", "at the end"} {
		if state != "answered" {
			p.moveControl(state == "at the end")
		}
		fits(state)
		p.onScreen(language+" "+id+", "+state, "#why-figure", "#why-control")
	}
	p.place("#why-say")
	p.onScreen(language+" "+id+", below", "#why-figure", "#why-say")
}

// judgesWell judges the three walls.
func (p *tab) judgesWell(language string) {
	p.t.Helper()
	p.goTo("why/check")
	for n := range 3 {
		p.tap(fmt.Sprintf(`.why-choice[data-of="%d"][data-guess="%d"]`, n, 3-n))
		p.quiet()
		if wrong := eval[[]string](p, crowded); len(wrong) > 0 {
			p.t.Errorf("%s, wall %d: %s", language, n, strings.Join(wrong, "; "))
		}
	}
}
