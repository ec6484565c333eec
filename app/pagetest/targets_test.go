//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// handheld are the phones on which every target is measured.
var handheld = map[string]screen{"390": phone, "320": {320, 568, 2, true}, "turned": turned}

// primary is what is used most: 56 px. All else has 44.
const primary = `.step, .entry, .handle, .card input, .key, .fold > button, .check > button, .kept-open,
	.why-card, .why-choice:enabled, .why-slide input, .why-around .plain, .why .pick input`

// targets fails unless everything in a part of the page that can be tapped is
// as large as a finger needs, and nothing there lies beyond the screen's edge.
func (p *tab) targets(what, within string) {
	p.t.Helper()
	type found struct {
		All   int
		Wrong []string
	}
	got := eval[found](p, fmt.Sprintf(`(() => {
		const all = [...document.querySelectorAll("button, input, select, textarea, a, summary, [role=slider]")]
			.filter((e) => e.closest(%q) && !e.closest(".unseen") && e.checkVisibility({visibilityProperty: true}));
		const wrong = all.flatMap((e) => {
			const r = e.getBoundingClientRect(), least = e.matches(%q) ? 56 : 44;
			const out = !e.closest(".scroll, .sight") && (r.left < -.5 || r.right > innerWidth + .5);
			return out || r.width < least - .01 || r.height < least - .01 ?
				[(e.id || e.className || e.tagName) + " " + (e.dataset.step || e.dataset.path || e.dataset.act || e.dataset.key || e.name || "") + " " + r.width.toFixed(1) + "×" + r.height.toFixed(1) + (out ? " at " + r.left : "")] : [];
		});
		return {All: all.length, Wrong: wrong};
	})()`, within, primary))
	if len(got.Wrong) > 0 {
		p.t.Errorf("%s: %s", what, strings.Join(got.Wrong, "; "))
	}
	if got.All == 0 {
		p.t.Errorf("%s: there is nothing to tap", what)
	}
}

func inEverySize(t *testing.T, run func(t *testing.T, s screen, language string)) {
	for name, s := range handheld {
		for _, language := range []string{"en", "es"} {
			t.Run(name+" "+language, func(t *testing.T) { run(t, s, language) })
		}
	}
}

// Everything that can be tapped is large enough: the page with all that it can
// open, every working, what it asks before it erases, and the keypads.
func TestTargetsOfThePage(t *testing.T) {
	h := newHost(t, distDir, "/")
	inEverySize(t, func(t *testing.T, s screen, language string) {
		p := openTab(t, s)
		p.open(h.url(""))
		p.speak(language)
		p.targets("as it comes", "body")
		p.openAll()
		p.unfold("about")
		eval[bool](p, `(document.getElementById("erase").click(), true)`)
		p.until(toldSomething)
		eval[bool](p, `(document.querySelectorAll("#install, #install-apple, #language").forEach((e) => { e.hidden = false; }), true)`)
		p.targets("the question", "#told")
		eval[bool](p, `(document.getElementById("told-close").click(), true)`)
		p.until(`!(` + toldSomething + `)`)
		for _, condition := range fourConditions {
			p.choose(condition)
			p.targets(condition, "body")
		}
		workings := eval[int](p, `document.querySelectorAll(".check > button").length`)
		for i := range workings {
			eval[bool](p, fmt.Sprintf(`(() => { const b = document.querySelectorAll(".check > button")[%d]; if (b.getAttribute("aria-expanded") !== "true") b.click(); return true; })()`, i))
			p.until(fmt.Sprintf(`!!document.querySelectorAll(".check > button")[%d].parentElement.querySelector(".working:not([hidden]) .working-source")`, i))
			p.targets(fmt.Sprint("working ", i), ".check")
		}
		for _, path := range []string{"height", "soil.equivalent fluid"} {
			if path != "height" {
				p.strike("!digits", "!done")
				p.quiet()
				p.pick(`#f-soil`, "equivalent fluid")
				p.quiet()
			}
			field := fmt.Sprintf(`[id="f-%s"]`, path)
			if !eval[bool](p, fmt.Sprintf(`!!document.querySelector('%s')`, field)) {
				t.Fatalf("%s is not asked", path)
			}
			p.tap(field)
			p.until(`!!document.querySelector(".pad:not([hidden])")`)
			p.quiet()
			p.targets(path+" on the keypad", "body")
			if path == "height" {
				p.strike("!fractions")
				p.until(`!!document.querySelector(".pad-fractions")`)
				p.targets("sixteenths", "body")
			}
		}
		p.strike("!device")
		p.until(`!!document.querySelector(".pad-device")`)
		p.targets("with the device's keys", "body")
	})
}

// The same of the lessons, asked and answered, with their tables open.
func TestTargetsOfTheLessons(t *testing.T) {
	h := newHost(t, distDir, "/")
	inEverySize(t, func(t *testing.T, s screen, language string) {
		p := openTab(t, s)
		p.open(h.url(""))
		p.speak(language)
		for _, at := range lessonAddresses {
			p.goTo(at)
			p.targets(at, "#why")
			eval[bool](p, `(document.querySelectorAll("#why-question > .quiet:not([hidden]), .why-choice[data-guess='2']:enabled, #why-numbers[aria-expanded=false]").forEach((b) => b.click()), true)`)
			p.quiet()
			p.targets(at+" answered", "#why")
		}
	})
}

// fingered begins the calculator in a frame anew, where a finger points: the
// tab's own touch does not reach into the frame of another site.
func (q *tab) fingered() {
	q.t.Helper()
	if _, err := chromedp.Call(q.ctx, emulation.SetTouchEmulationEnabled, emulation.SetTouchEmulationEnabledParams{Enabled: true}); err != nil {
		q.t.Fatal(err)
	}
	eval[bool](q, `(delete document.documentElement.dataset.ready, location.reload(), true)`)
	q.ready()
	if !eval[bool](q, `matchMedia("(pointer: coarse)").matches`) {
		q.t.Fatal("no finger points in the frame")
	}
}

// The same in a page of another site, whatever of it is shown there.
func TestTargetsInAnotherPage(t *testing.T) {
	h := newHost(t, distDir, "/")
	inEverySize(t, func(t *testing.T, s screen, language string) {
		b := newBuilder(t, around(h, element(h, "a", `lang="`+language+`"`)))
		p := openTab(t, s)
		p.visitBuilder(h, b)
		p.begun("a")
		q := p.inside("a")
		q.fingered()
		q.openAll()
		p.fits("a", q)
		q.targets("all", "body")
		eval[bool](q, `(document.querySelector("#f-height").focus(), true)`)
		q.until(`!!document.querySelector(".pad:not([hidden])")`)
		q.quiet()
		q.targets("the keypad", "body")
		for _, show := range []string{"picture", "answer"} {
			eval[bool](p, fmt.Sprintf(`(document.getElementById("a").setAttribute("show", %q), true)`, show))
			q.until(fmt.Sprintf(`document.documentElement.dataset.embed === %q`, show))
			q.quiet()
			q.targets(show, "body")
		}
		b.page = around(h, element(h, "a", `lesson="height" lang="`+language+`"`))
		p.visit(b.origin + "/")
		p.until(`document.getElementById("a").shadowRoot?.querySelector("iframe").className === ""`)
		q = p.inside("a")
		p.fits("a", q)
		q.targets("a lesson", "body")
	})
}
