//go:build browser

package pagetest

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// speak chooses the language of the page.
func (p *tab) speak(code string) {
	p.t.Helper()
	p.pick(`:is(#language, #why-language):not([hidden] *)`, code)
	p.until(fmt.Sprintf("document.documentElement.lang === %q", code))
	p.quiet()
}

// speakAsNamed has the page speak Spanish in a test that is called so.
func (p *tab) speakAsNamed(name string) {
	p.t.Helper()
	if strings.HasSuffix(name, "in Spanish") {
		p.speak("es")
	}
}

// pick chooses from a list as a hand does.
func (p *tab) pick(selector, value string) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(() => { const s = document.querySelector(%q); s.value = %q;
		s.dispatchEvent(new Event("change", {bubbles: true})); return true; })()`, selector, value))
}

// browserSpeaks has the browser ask for a language.
func (p *tab) browserSpeaks(tag string) {
	p.t.Helper()
	agent := eval[string](p, `navigator.userAgent`)
	if _, err := chromedp.Call(p.ctx, emulation.SetUserAgentOverride, emulation.SetUserAgentOverrideParams{UserAgent: agent, AcceptLanguage: tag}); err != nil {
		p.t.Fatal(err)
	}
}

// A first visit is spoken to in the language of the browser, the document says
// which it is, and what is chosen is kept. Neither units nor the decimal sign
// hang on it.
func TestLanguage(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.browserSpeaks("es-MX")
	p.open(h.url(""))
	for selector, want := range map[string]string{"#today .answer-title": "RELLENE SOLO HASTA 1 ft 9 in", "#today h2": "Hoy: limitado", "#walls": "Sótano este"} {
		if got := strings.ReplaceAll(p.text(selector), "\u00a0", " "); got != want {
			t.Errorf("%s says %q, want %q", selector, got, want)
		}
	}
	if got := eval[string](p, `document.documentElement.lang`); got != "es" {
		t.Errorf("the document is said to be in %q", got)
	}
	spanish := p.file()
	p.speak("en")
	if got := p.text("#today .answer-title"); got != "FILL ONLY TO 1\u00a0ft\u00a09\u00a0in" {
		t.Errorf("in English it says %q", got)
	}
	if got := eval[string](p, `[...document.querySelector("#language").options].map((o) => o.text + " " + o.lang).join(", ")`); got != "English en, Español es" {
		t.Errorf("there is to choose: %s", got)
	}
	if !bytes.Equal(bytes.Replace(spanish, []byte("Sótano este"), []byte("East cellar wall"), 1), p.file()) {
		t.Error("the language changed the wall")
	}
	p.saved()
	p.reload()
	if got := eval[string](p, `document.documentElement.lang + " " + document.querySelector("#today h2").textContent`); got != "en Today: limited" {
		t.Errorf("after a reload it says %q", got)
	}
	p.goTo("why")
	p.speak("es")
	if got := p.text("#why-title"); got != "Por qué los muros llevan varillas" {
		t.Errorf("the lessons say %q", got)
	}
	p.press("#why-back")
	p.until(`document.getElementById("why").hidden`)
	if got := p.text("#today h2"); got != "Hoy: limitado" {
		t.Errorf("behind the lessons the page says %q", got)
	}
	inside := openTab(t, phone)
	inside.open(h.url("#embed&lang=es-US&lesson=height"))
	inside.until(`document.getElementById("why-title").textContent === "Un poco más alto, mucha más flexión"`)
	if got := eval[string](inside, `document.documentElement.lang`); got != "es" {
		t.Errorf("in another page the document is said to be in %q", got)
	}
}

// Whoever reads Spanish gets the same answer, in every condition.
func TestAnswersInSpanish(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.speak("es")
	for _, condition := range fourConditions {
		p.choose(condition)
		for _, height := range []string{"9 pies", "5 ft"} {
			p.setHeight(height)
			p.quiet()
			p.agrees(condition + " of " + height)
			if got := eval[string](p, `document.getElementById("today").dataset.state + " " + document.querySelector("#today .answer-title").textContent`); !strings.HasPrefix(got, "fails NO RELLENE") && !strings.HasPrefix(got, "fails RELLENE SOLO HASTA") && got != "holds PUEDE RELLENAR" {
				t.Errorf("%s of %s: today it says %q", condition, height, got)
			}
		}
	}
}

// With a decimal comma every number is written and read with one.
func TestDecimalComma(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.speak("es")
	p.press("#units")
	p.press("input[name=decimal][value=comma]")
	value := `document.querySelector('[data-path="height"]').value`
	if got := eval[string](p, value); got != "2,74 m" {
		t.Errorf("the height reads %q", got)
	}
	p.setHeight("3,125")
	p.quiet()
	if got := eval[string](p, value); got != "3,13 m" {
		t.Errorf("3,125 reads %q", got)
	}
	field := func() string { p.quiet(); return eval[string](p, value) }
	p.tap(heightField)
	if got := field(); got != "3,125 m" {
		t.Errorf("a field that is begun shows %q", got)
	}
	for _, test := range []struct{ typed, stands, left string }{
		{"3,05", "3,05", "3,05 m"}, {"3.05", "3.05", "3,05 m"}, {"3,125", "3,125", "3,13 m"},
	} {
		p.typeInto(heightField, test.typed)
		if got := field(); got != test.stands {
			t.Errorf("%q is typed, and %q stands there", test.typed, got)
		}
		p.keys(kb.Enter)
		if got := field(); got != test.left {
			t.Errorf("%q is left as %q, want %q", test.typed, got, test.left)
		}
	}
	p.tap(heightField)
	p.keys(kb.ArrowUp)
	if got := field(); got != "3,2 m" {
		t.Errorf("stepped up in the field it shows %q", got)
	}
	p.keys(kb.ArrowDown)
	p.quiet()
	p.setHeight("3,125")
	p.quiet()
	if file := string(p.file()); !strings.Contains(file, `"3.125 m"`) {
		t.Errorf("the file says %s", file)
	}
	p.saved()
	p.reload()
	if got := eval[string](p, value); got != "3,13 m" {
		t.Errorf("after a reload the height reads %q", got)
	}
	p.press("input[name=decimal][value=point]")
	if got := eval[string](p, value); got != "3.13 m" {
		t.Errorf("with a point it reads %q", got)
	}
}

// What is said before the program has come is said in the browser's language.
func TestLoadingInSpanish(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.browserSpeaks("es")
	h.serveOld(t.TempDir(), "/web/app.wasm")
	p.expect("404")
	p.expect("starting failed")
	p.visit(h.url(""))
	p.until(`(document.querySelector("#app-waits p")?.textContent ?? "") !== ""`)
	if got := p.text("#app-waits p"); !strings.HasPrefix(got, "La calculadora no ha llegado entera.") {
		t.Errorf("it says %q", got)
	}
	if got := p.text("#app-stopped-reload"); got != "Cargar la página otra vez" {
		t.Errorf("the button says %q", got)
	}
}

// The page in Spanish, to be looked at.
func TestShotsInSpanish(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"phone": phone, "desk": desk, "narrow": {320, 640, 2, true}} {
		p := openTab(t, s)
		p.open(h.url(""))
		p.speak("es")
		for _, condition := range fourConditions {
			eval[bool](p, fmt.Sprintf(`(() => { document.querySelector('input[name=condition][value=%q]').click(); return true; })()`, condition))
			p.quiet()
			eval[bool](p, `(scrollTo(0, 0), true)`)
			p.shot(fmt.Sprintf("es-%s-%s", name, strings.ReplaceAll(condition, " ", "-")))
		}
		eval[bool](p, `(document.querySelector(".check > button").click(), true)`)
		p.unfold("more", "push", "hold", "today", "carry", "compared", "idle")
		p.whole("es-" + name + "-open")
		for _, at := range []string{"why", "why/height/10ft", "why/place/4in", "why/heights/9ft", "why/check"} {
			p.goTo(at)
			eval[bool](p, `(document.getElementById("why-show")?.click(), true)`)
			p.frame()
			p.whole("es-" + name + "-" + strings.ReplaceAll(at, "/", "-"))
		}
	}
}
