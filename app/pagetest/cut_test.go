//go:build browser

package pagetest

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
)

// The first load is cut off after every tenth of its bytes. What has come of
// the page stays to be seen with a word about it, and the page becomes whole by
// a press of a button, by a signal, or by the next load; then it works without
// a network.
func TestCutWhileThePageComes(t *testing.T) {
	whole := func() int {
		h := newHost(t, distDir, "/")
		h.line = &line{}
		p := openTab(t, phone)
		p.open(h.url(""))
		return h.line.mend()
	}()
	for tenth := 1; tenth <= 10; tenth++ {
		t.Run(fmt.Sprintf("%d0", tenth), func(t *testing.T) {
			h := newHost(t, distDir, "/")
			h.line = &line{after: whole * tenth / 10}
			p := openTab(t, phone)
			p.expectBreaks()
			p.visit(h.url(""))
			p.until(`document.documentElement.dataset.ready === "1" || ` + toldOfBreak)
			if !eval[bool](p, `document.getElementById("finished").getBoundingClientRect().height > 40`) {
				t.Error("the answer of the page is not to be seen")
			}
			if tenth == 5 {
				p.shot("cut-while-loading")
				p.axe()
			}
			h.line.mend()
			switch tenth % 3 {
			case 0:
				p.reload()
			case 1:
				eval[bool](p, `dispatchEvent(new Event("online"))`)
			case 2:
				p.tapIfThere("#app-waits a")
			}
			p.wholeOffline(h)
		})
	}
}

// toldOfBreak holds while the page says that the program has not come. Where
// the starting script has not come either, the document says it, after a while
// that is not waited for.
const toldOfBreak = `!!document.querySelector("#app-waits[role=alert]:not([hidden]) a") ||
	typeof pauses === "undefined" && document.readyState === "complete" &&
	(document.getAnimations().forEach((a) => a.finish()), getComputedStyle(document.getElementById("app-waits")).visibility === "visible")`

// expectBreaks lets pass what a browser says of a broken line.
func (p *tab) expectBreaks() {
	p.expect("browser error: Failed to load resource")
}

// wholeOffline waits until the page works and is kept, and has it work again
// with its host gone.
func (p *tab) wholeOffline(h *host) {
	p.t.Helper()
	p.ready()
	p.until(`document.getElementById("app-waits") === null`)
	p.works()
	p.offlineReady()
	p.sameSite(distDir)
	h.stop()
	p.reload()
	p.works()
	if styled := eval[int](p, `[...document.querySelectorAll("link[rel=stylesheet]")].filter((l) => !l.sheet).length`); styled != 0 {
		p.t.Errorf("%d style sheets have not come", styled)
	}
}

// The line breaks while the worker fetches its files: the page does not
// notice, nothing counts as kept before all of it is, and what has come is not
// fetched again.
func TestCutWhileItIsKept(t *testing.T) {
	whole := func() int {
		h := newHost(t, distDir, "/")
		h.storable("no-store") // else the browser has most of it already
		h.line = &line{from: "/worker.js"}
		p := openTab(t, phone)
		p.open(h.url(""))
		p.offlineReady()
		return h.line.mend()
	}()
	for tenth := 1; tenth <= 10; tenth++ {
		t.Run(fmt.Sprintf("%d0", tenth), func(t *testing.T) {
			h := newHost(t, distDir, "/")
			h.storable("no-store")
			h.line = &line{from: "/worker.js", after: whole * tenth / 10}
			p := openTab(t, phone)
			p.expectBreaks()
			p.open(h.url(""))
			p.breaks(h)
			p.works()
			if eval[bool](p, `caches.match("current-version").then((note) => !!note)`) {
				p.sameSite(distDir) // the break came after the last byte
			}
			h.requests()
			h.line.mend()
			if tenth%2 == 0 {
				p.reload()
			} else {
				eval[bool](p, `dispatchEvent(new Event("online"))`)
			}
			p.wholeOffline(h)
		})
	}
}

// breaks waits until the line of the host has broken.
func (p *tab) breaks(h *host) {
	p.t.Helper()
	for range 600 {
		if h.line.broken() {
			return
		}
		p.frame()
	}
	p.t.Fatal("the line never broke")
}

// The line breaks in the middle of one file after the other.
func TestCutInEachFile(t *testing.T) {
	for _, file := range []string{"/", "/early.js", "/web/app.css", "/wasm_exec.js", "/start.js"} {
		t.Run(file, func(t *testing.T) {
			name := file
			if name == "/" {
				name = "/index.html"
			}
			data, err := os.ReadFile(filepath.Join(distDir, name))
			if err != nil {
				t.Fatal(err)
			}
			h := newHost(t, distDir, "/")
			h.plain = true
			h.line = &line{from: file, after: headerBytes + len(data)/2}
			p := openTab(t, phone)
			p.expectBreaks()
			_ = chromedp.Do(p.ctx, chromedp.Navigate(h.url(""))) // breaks
			p.breaks(h)
			// The starting script may not be there to tell: then the document does,
			// after a while that is not waited for.
			p.until(`(document.getAnimations().forEach((a) => a.finish()),
				getComputedStyle(document.getElementById("app-waits")).visibility === "visible")`)
			if !eval[bool](p, `document.querySelector("h1").getBoundingClientRect().height > 10`) {
				t.Error("nothing of the page is to be seen")
			}
			h.line.mend()
			p.tap("#app-waits a")
			p.wholeOffline(h)
		})
	}
}

// What has come of a document that was cut off offers to try again sooner than
// one that only waits for its scripts.
func TestCutDocumentSaysItSoon(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	release := p.hold(h, func() { p.visit(h.url("")) })
	delay := `getComputedStyle(document.getElementById("app-waits")).animationDelay`
	whole := eval[string](p, delay)
	cut := eval[string](p, `(document.getElementById("app-end").remove(), `+delay+`)`)
	if whole != "20s" || cut != "5s" {
		t.Errorf("a whole document says it after %s, one that was cut off after %s; want 20s and 5s", whole, cut)
	}
	close(release)
	p.ready()
}

// tapIfThere presses what may have gone by then.
func (p *tab) tapIfThere(selector string) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(document.querySelector(%q)?.click(), true)`, selector))
}
