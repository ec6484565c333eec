//go:build browser

package pagetest

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// lessonAddresses are the screens of the lessons: asked, shown, and moved.
var lessonAddresses = []string{
	"why", "why/beam", "why/beam/45deg", "why/height", "why/height/10ft", "why/side/floor", "why/crack/8ft", "why/place/4in",
	"why/water/6ft", "why/hold/8ft", "why/heel/20in", "why/slab/22ft", "why/both/4ft", "why/wait/5ft", "why/heights/9ft", "why/check",
}

// goTo opens an address within the page and waits until it is drawn.
func (p *tab) goTo(fragment string) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(() => { location.hash = %q; return true; })()`, fragment))
	p.until(`!document.getElementById("why").hidden`)
	p.frame()
}

// hash is what stands behind the # of the address.
func (p *tab) hash() string {
	p.t.Helper()
	return eval[string](p, `location.hash`)
}

// From the wall to the lessons, a guess, the control by finger, button and
// key, and back: the address follows, and the wall is as it was left.
func TestLessonFlow(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.setHeight("11 ft 0 in")
	p.goTo("why")
	p.until(`document.querySelectorAll(".why-card").length === 13`)
	p.tap(`.why-card[href="#why/height"]`)
	p.until(`location.hash === "#why/height" && !!document.getElementById("why-question")`)
	if eval[bool](p, `document.getElementById("why-slider").checkVisibility() || document.getElementById("why-verdict").checkVisibility()`) {
		t.Error("the answer shows before the guess")
	}
	p.tap(`.why-choice[data-guess="3"]`)
	p.until(`document.getElementById("why-verdict").checkVisibility()`)
	if text := p.text("#why-verdict"); !strings.Contains(text, "Right.") || !strings.Contains(text, "1.95") {
		t.Errorf("the answer says %q", text)
	}
	if p.hash() != "#why/height/10ft" {
		t.Errorf("the address is %s", p.hash())
	}
	p.tap("#why-less")
	p.tap("#why-less")
	p.tap("#why-less")
	p.until(`location.hash === "#why/height/9ft"`)
	p.frame()
	if text := p.text("#why-say"); !strings.Contains(text, "1.42") || !strings.Contains(text, "1.27") {
		t.Errorf("at 9 ft it says %q", text)
	}
	eval[bool](p, `(document.getElementById("why-slider").focus(), true)`)
	p.keys(kb.ArrowRight)
	p.until(`location.hash === "#why/height/9ft4in"`)
	p.until(`document.getElementById("why-heard").textContent.includes("9 ft 4 in")`)
	before := eval[string](p, `document.querySelector("#why-figure svg").outerHTML`)
	p.dragTouch("#why-slider", 0, 0, 1)
	p.until(`location.hash !== "#why/height/9ft4in"`)
	if eval[string](p, `document.querySelector("#why-figure svg").outerHTML`) == before {
		t.Error("the picture does not follow the thumb")
	}
	p.reload()
	p.until(`document.getElementById("why-verdict").checkVisibility()`)
	eval[bool](p, `(history.back(), true)`)
	p.until(`location.hash === "#why"`)
	p.until(`document.querySelectorAll(".why-card").length === 13`)
	p.tap("#why-back")
	p.until(`document.getElementById("why").hidden && document.getElementById("page").checkVisibility()`)
	p.wantHeight("11 ft 0 in")
	p.works()
}

// The link to the list and the wall work wherever one came from, and units
// turn the lesson at the place where it stands.
func TestLessonLinks(t *testing.T) {
	h := newHost(t, distDir, "/tools/x/")
	p := openTab(t, phone)
	p.open(h.url("#why/water/4ft"))
	p.until(`document.getElementById("why-verdict").checkVisibility()`)
	p.tap("#why-units")
	p.until(`location.hash === "#why/water/1.2m"`)
	for range 2 {
		p.tap("#why-list")
		p.until(`location.hash === "#why" && document.querySelectorAll(".why-card").length === 13`)
		p.tap(`.why-card[href="#why/side"]`)
		p.until(`location.hash === "#why/side" && !!document.querySelector("#why-question > .quiet")`)
		p.tap(`#why-question > .quiet`)
		p.until(`location.hash === "#why/side/nothing"`)
		eval[bool](p, `(document.querySelector('input[name=why-at][value="1"]').click(), true)`)
		p.until(`location.hash === "#why/side/floor"`)
	}
	p.tap("#why-next")
	p.until(`location.hash === "#why/crack"`)
	p.tap("#why-back")
	p.until(`document.getElementById("why").hidden`)
	p.goTo("why/check")
	for i, guess := range []int{2, 1, 3} {
		p.tap(fmt.Sprintf(`.why-choice[data-of="%d"][data-guess="%d"]`, i, guess))
		p.until(fmt.Sprintf(`document.getElementById("why-case-%d-verdict").checkVisibility()`, i))
	}
	p.until(`document.getElementById("why-score").textContent.startsWith("3 ")`)
}

// A lesson stands in a page of another site without a way out to the wall.
func TestLessonEmbedded(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url("#embed&lesson=height%2F9ft&units=metric"))
	p.until(`!document.getElementById("why").hidden && document.getElementById("why-verdict").checkVisibility()`)
	if eval[bool](p, `document.getElementById("why-back").checkVisibility()`) {
		t.Error("the lesson leads out to the wall")
	}
	if text := p.text("#why-say"); !strings.Contains(text, "\u00a0m ") {
		t.Errorf("it says %q", text)
	}
	p.tap("#why-more")
	p.frame()
	if !strings.HasPrefix(p.hash(), "#embed") {
		t.Errorf("the address that was given is now %s", p.hash())
	}
}

// Whatever is to be tapped is at least 56 px high and wide, nothing lies
// beyond the screen's edge, and axe finds nothing.
func TestLessonReach(t *testing.T) {
	h := newHost(t, distDir, "/")
	for _, s := range []struct {
		name string
		screen
		scheme, text string
	}{
		{"390", phone, "light", ""}, {"320 dark", screen{320, 640, 2, true}, "dark", ""}, {"390 at twice the text", phone, "light", "200%"}, {"1280", desk, "dark", ""},
		{"390 in Spanish", phone, "light", ""}, {"320 in Spanish", screen{320, 640, 2, true}, "light", ""}, {"390 at twice the text in Spanish", phone, "light", "200%"},
	} {
		t.Run(s.name, func(t *testing.T) {
			p := openTab(t, s.screen)
			p.media("prefers-color-scheme", s.scheme)
			p.open(h.url("#why"))
			p.speakAsNamed(s.name)
			if s.text != "" {
				eval[bool](p, fmt.Sprintf(`(document.documentElement.style.setProperty("font-size", %q), true)`, s.text))
			}
			for _, at := range lessonAddresses {
				p.goTo(at)
				small := eval[[]string](p, `[...document.querySelectorAll("#why :is(button, input, a)")].filter((e) => e.checkVisibility() && !e.matches(":disabled")).flatMap((e) => {
					const r = e.getBoundingClientRect();
					return r.width < 55.99 || r.height < 55.99 ? [(e.id || e.className || e.name) + " " + r.width.toFixed(1) + "×" + r.height.toFixed(1)] : [];
				})`)
				if len(small) > 0 {
					t.Errorf("%s: too small: %s", at, strings.Join(small, "; "))
				}
				if over := eval[[]string](p, `document.documentElement.scrollWidth <= innerWidth ? [] :
					[...document.querySelectorAll("#why *")].filter((e) => e.getBoundingClientRect().right > innerWidth + 1 && !e.closest(".scroll, svg"))
						.slice(0, 6).map((e) => e.tagName + "." + e.className + "#" + e.id)`); len(over) > 0 {
					t.Errorf("%s: wider than the screen: %s", at, strings.Join(over, "; "))
				}
			}
			for _, at := range []string{"why", "why/height", "why/heights/9ft", "why/side/slab", "why/check"} {
				p.goTo(at)
				if n := eval[bool](p, `!!document.getElementById("why-numbers") && document.getElementById("why-numbers").checkVisibility()`); n {
					eval[bool](p, `(document.getElementById("why-numbers").click(), true)`)
					p.frame()
				}
				p.axe()
			}
		})
	}
}

// On paper a lesson is one page, in both languages: the question over the
// fold, the answer and three pictures under it.
func TestLessonOnPaper(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, desk)
	p.open(h.url(""))
	for language, words := range map[string][]string{
		"en": {"fold here", "Answer:", "Keep in mind:"}, "es": {"doble aquí", "Respuesta:", "Para recordar:"},
	} {
		p.speak(language)
		for _, id := range lessonIDs {
			p.goTo("why/" + id)
			printed, err := chromedp.Call(p.ctx, page.PrintToPDF, page.PrintToPDFParams{PaperWidth: 8.5, PaperHeight: 11})
			if err != nil {
				t.Fatal(err)
			}
			file := filepath.Join(t.TempDir(), "paper.pdf")
			if err := os.WriteFile(file, printed.Data, 0o644); err != nil {
				t.Fatal(err)
			}
			out, err := exec.Command("pdftotext", "-layout", file, "-").Output()
			if err != nil {
				t.Fatal(err)
			}
			text := string(out)
			for _, want := range append([]string{p.text("#why-title")}, words...) {
				if !strings.Contains(text, want) {
					t.Errorf("%s, %s: the paper lacks %q", language, id, want)
				}
			}
			if pages := strings.Count(text, "\f"); pages != 1 {
				t.Errorf("%s, %s: %d pages", language, id, pages)
			}
			if screen := p.text("#why-question > .quiet"); strings.Contains(text, screen) {
				t.Errorf("%s, %s: the screen is printed too: %q", language, id, screen)
			}
		}
	}
}
