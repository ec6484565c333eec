//go:build browser

package pagetest

import (
	"slices"
	"strings"
	"testing"
)

// An address that asks for a lesson, or for a part of another page, does not
// show the example first; one that asks for nothing does.
func TestNoFlash(t *testing.T) {
	h := newHost(t, distDir, "/")
	for _, test := range []struct {
		rest  string
		shown bool
	}{{"", true}, {"#wall", true}, {"#why", false}, {"#why/height/9ft", false}, {"#embed&show=picture", false}} {
		t.Run(test.rest, func(t *testing.T) {
			half := make(chan struct{})
			h.mu.Lock()
			h.half = half
			h.mu.Unlock()
			p := openTab(t, phone)
			p.visit(h.url(test.rest))
			p.until(`document.getElementById("app-wasm-loader-bar").value > 0.2`) // styled, and drawn
			if got := eval[bool](p, `document.getElementById("answer").checkVisibility({visibilityProperty: true})`); got != test.shown {
				t.Errorf("while the program comes the example is shown: %v, want %v", got, test.shown)
			}
			close(half)
			p.ready()
			p.until(`document.querySelector("#front > :not([hidden])").checkVisibility({visibilityProperty: true})`)
		})
	}
}

// notesFrames has every page note what is to be seen in each frame: the ground
// that it stands on, the language it is said to be in, and what the answer says.
const notesFrames = `{
	window.frames_ = [];
	const note = () => {
		const answer = document.querySelector("#today h2");
		if (document.body) {
			const seen = answer && answer.checkVisibility({visibilityProperty: true}) ? answer.textContent.trim() : "";
			const now = [getComputedStyle(document.body).backgroundColor, document.documentElement.lang, seen].join("|");
			if (frames_.at(-1) !== now) frames_.push(now);
		}
		requestAnimationFrame(note);
	};
	note();
}`

// frames are the states that the page was seen in since it began to load.
func (p *tab) frames() []string {
	p.t.Helper()
	p.frame()
	return eval[[]string](p, "frames_")
}

// hold has the program stop half way until the channel is closed, and shows
// that the page is drawn by then.
func (p *tab) hold(h *host, show func()) (release chan struct{}) {
	p.t.Helper()
	release = make(chan struct{})
	h.mu.Lock()
	h.half = release
	h.mu.Unlock()
	show()
	p.until(`document.getElementById("app-wasm-loader-bar").value > 0.2`)
	return release
}

// forgetSite takes the site out of the browser, so that the next load comes
// from the host; what a person has entered and chosen stays.
const forgetSite = `(async () => {
	for (const r of await navigator.serviceWorker.getRegistrations()) { await r.unregister(); }
	for (const name of await caches.keys()) { await caches.delete(name); }
	return true;
})()`

// The look that was chosen holds from the first frame, long before the program
// has come, and to the end; one for a page of another site does not.
func TestThemeFromTheFirstFrame(t *testing.T) {
	for _, test := range []struct{ theme, ground string }{
		{"dark", "rgb(20, 19, 15)"}, {"glare", "rgb(255, 255, 255)"}, {"light", "rgb(255, 253, 248)"},
	} {
		t.Run(test.theme, func(t *testing.T) {
			h := newHost(t, distDir, "/")
			p := openTab(t, phone)
			other := "dark"
			if test.theme == "dark" {
				other = "light"
			}
			p.media("prefers-color-scheme", other)
			p.open(h.url(""))
			p.theme(test.theme)
			p.saved()
			p.offlineReady()
			eval[bool](p, forgetSite)
			p.beforeEachPage(notesFrames)
			release := p.hold(h, func() { p.visit(h.url("")) })
			p.shot("first-frame-" + test.theme)
			close(release)
			p.ready()
			p.offlineReady()
			for _, frame := range p.frames() {
				if !strings.HasPrefix(frame, test.ground) {
					t.Errorf("a frame stands on %s, not on %s", frame, test.ground)
				}
			}
			p.reload() // kept, from the worker
			for _, frame := range p.frames() {
				if !strings.HasPrefix(frame, test.ground) {
					t.Errorf("of the kept page a frame stands on %s, not on %s", frame, test.ground)
				}
			}
			p.visit("about:blank")
			p.open(h.url("#embed&theme=" + other))
			if got := eval[string](p, `document.documentElement.dataset.theme`); got != other {
				t.Errorf("in a page of another site it looks %q, not %q", got, other)
			}
		})
	}
}

// Whoever reads Spanish sees the page in Spanish from the first thing that is
// to be seen, on the first visit and on every other, and so the other way round.
func TestLanguageFromTheFirstFrame(t *testing.T) {
	h := newHost(t, distDir, "/tools/x/")
	p := openTab(t, phone)
	p.browserSpeaks("es-MX")
	p.beforeEachPage(notesFrames)
	release := p.hold(h, func() { p.visit(h.url("")) })
	p.until(`document.querySelector("#today h2").checkVisibility({visibilityProperty: true})`)
	p.shot("first-frame-spanish")
	if got := p.text("#today .answer-title"); !strings.HasPrefix(got, "RELLENE SOLO HASTA") {
		t.Errorf("before the program has come it says %q", got)
	}
	p.axe()
	close(release)
	p.ready()
	p.offlineReady()
	p.seenOnly("es", "Hoy: limitado")
	h.stop()
	p.reload() // kept, from the worker, without a network
	p.seenOnly("es", "Hoy: limitado")
	p.speak("en")
	p.saved()
	p.reload()
	p.seenOnly("en", "Today: limited")
}

// seenOnly fails for a frame in another language, or that says another thing.
func (p *tab) seenOnly(lang, says string) {
	p.t.Helper()
	all := p.frames()
	if !slices.ContainsFunc(all, func(frame string) bool { return strings.HasSuffix(frame, "|"+lang+"|"+says) }) {
		p.t.Errorf("%s is never said: %q", says, all)
	}
	for _, frame := range all {
		if !strings.HasSuffix(frame, "|"+lang+"|"+says) && !strings.HasSuffix(frame, "|"+lang+"|") {
			p.t.Errorf("a frame shows %q, not %s", frame, says)
		}
	}
}

// Where the page in Spanish does not come, the document's own is shown after a
// while, and the program puts its own in the place of it.
func TestLanguageThatDoesNotCome(t *testing.T) {
	h := newHost(t, distDir, "/")
	h.serveOld(t.TempDir(), "/es.html")
	p := openTab(t, phone)
	p.expect("404")
	p.browserSpeaks("es")
	release := p.hold(h, func() { p.visit(h.url("")) })
	shown := `document.getElementById("answer").checkVisibility({visibilityProperty: true})`
	if eval[bool](p, shown) {
		t.Error("the page in English is shown at once")
	}
	p.until(`(document.getAnimations().forEach((a) => a.finish()), ` + shown + `)`)
	close(release)
	p.ready()
	if got := p.text("#today h2"); got != "Hoy: limitado" {
		t.Errorf("in the end it says %q", got)
	}
}
