//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// speak chooses the language of the page.
func (p *tab) speak(code string) {
	p.t.Helper()
	p.pick("#language", code)
	p.until(fmt.Sprintf("document.documentElement.lang === %q", code))
	p.quiet()
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
	}
}
