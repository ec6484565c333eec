//go:build browser

package pagetest

import (
	"fmt"
	"os"
	"testing"
)

func readFile(t *testing.T, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// Messages from anybody but the page around change nothing in the calculator,
// and messages from anybody but the calculator nothing in the element.
func TestEmbedHearsNobodyElse(t *testing.T) {
	h := newHost(t, distDir, "/")
	stranger := newBuilder(t, `<!doctype html><title>A stranger</title><script>
		onmessage = (e) => {
			if (e.source !== parent) return;
			const m = JSON.parse(e.data);
			for (let i = 0; i < parent.length; i++) parent[i].postMessage(JSON.stringify(m.frame), "*");
			parent.postMessage(JSON.stringify(m.page), "*");
			parent.postMessage("sent", "*");
		};
	</script>`)
	b := newBuilder(t, around(h, element(h, "a", `height="8 ft"`)+`<iframe id="stranger" src="`+stranger.origin+`/"></iframe>`))
	p := openTab(t, desk)
	p.expect("request to another origin: " + stranger.origin)
	p.visitBuilder(h, b)
	p.begun("a")
	q := p.inside("a")
	height := p.fits("a", q)
	eval[bool](p, `(async () => {
		window.changes = 0;
		document.getElementById("a").addEventListener("change", () => changes++);
		const sent = new Promise((done) => addEventListener("message", (e) => e.data === "sent" && done(true)));
		document.getElementById("stranger").contentWindow.postMessage(JSON.stringify({
			frame: {"standing-beam": 1, asks: "set", as: "height=12+ft&show=picture"},
			page: {"standing-beam": 1, says: "change", height: 99, answer: {verdict: "holds"}},
		}), "*");
		return sent;
	})()`)
	// Of the right origin, but not of this shape.
	for _, message := range []string{
		`"set"`, `{"standing-beam": 1, asks: "set", as: "height=12+ft"}`, `JSON.stringify({"standing-beam": 2, asks: "set", as: "height=12+ft"})`,
		`JSON.stringify({"standing-beam": 1, asks: "set", as: "height=12+ft", more: 1})`, `JSON.stringify({asks: "set", as: "height=12+ft"})`, `null`, `new Map()`, `"{"`,
	} {
		eval[bool](p, fmt.Sprintf(`(document.getElementById("a").shadowRoot.querySelector("iframe").contentWindow.postMessage(%s, "*"), true)`, message))
	}
	// The last is in order: when it has come, so have all before it.
	eval[bool](p, `(document.getElementById("a").setAttribute("name", "Last"), true)`)
	p.until(`document.getElementById("a").wall.walls[0].name === "Last"`)
	q.wantHeight("8 ft 0 in")
	if got := eval[string](q, `document.documentElement.dataset.embed`); got != "all" {
		t.Errorf("a stranger changed the page to %q", got)
	}
	if got := p.fits("a", q); got != height {
		t.Errorf("the height is %v, before %v", got, height)
	}
	if got := eval[int](p, `changes`); got != 1 {
		t.Errorf("%d changes were told, want the last alone", got)
	}
	if got := p.verdict("a"); got != "open" {
		t.Errorf("a stranger changed the verdict to %q", got)
	}
}

// A calculator that was told another page is around it speaks with nobody.
func TestEmbedSpeaksToItsHostOnly(t *testing.T) {
	h := newHost(t, distDir, "/")
	b := newBuilder(t, `<!doctype html><title>A thief</title><script>window.heard = []; onmessage = (e) => heard.push(e.data);</script>
		<iframe id="f" width="600" height="600" src="`+h.url("#embed&height=8+ft&host=https%3A%2F%2Fbuilder.example")+`"></iframe>`)
	p := openTab(t, desk)
	p.expect("target origin") // the browser says that it did not deliver
	p.visitBuilder(h, b)
	q := p.frameAt(h.url("#embed&height=8+ft&host=https%3A%2F%2Fbuilder.example"))
	q.expect("target origin")
	q.until(`!!document.querySelector('link[href^="web/embed.css"]').sheet`)
	q.setHeight("9 ft 0 in")
	q.wantHeight("9 ft 0 in")
	eval[bool](p, `(document.getElementById("f").contentWindow.postMessage(JSON.stringify({"standing-beam": 1, asks: "set", as: "height=12+ft"}), "*"), true)`)
	q.saved()
	q.wantHeight("9 ft 0 in")
	if heard := eval[[]string](p, `heard`); len(heard) > 0 {
		t.Errorf("the page around heard %v", heard)
	}
}

// The element works in a page whose own policy is strict, leaves nothing
// behind in it but the element, and is not reached by its style.
func TestEmbedBreaksNothing(t *testing.T) {
	h := newHost(t, distDir, "/")
	b := newBuilder(t, "")
	b.files["/count.js"] = []byte(`window.before = Object.getOwnPropertyNames(window);`)
	b.files["/style.css"] = []byte(`iframe { border: 10px solid red; width: 50px; } slot { color: red; }`)
	b.page = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Strict</title><link rel="stylesheet" href="/style.css"><script src="/count.js"></script>` +
		around(h, element(h, "a", `show="answer" data-x="1" onclick-x="2" class="c" wide="1"`))
	b.policy = "default-src 'none'; img-src http://" + h.addr + "; style-src 'self'; script-src 'self' http://" + h.addr + "; frame-src http://" + h.addr
	p := openTab(t, desk)
	p.visitBuilder(h, b)
	p.begun("a")
	p.fits("a", p.inside("a"))
	if left := eval[[]string](p, `Object.getOwnPropertyNames(window).filter((n) => !before.includes(n) && !/^(before|a|\d+)$/.test(n))`); len(left) > 0 {
		t.Errorf("the script left %v", left)
	}
	if width := eval[float64](p, `document.getElementById("a").shadowRoot.querySelector("iframe").getBoundingClientRect().width - document.getElementById("a").clientWidth`); width != 0 {
		t.Errorf("the frame differs from the element by %v px", width)
	}
	if changed := eval[string](p, `document.getElementById("a").getAttribute("style") || ""`); changed != "" {
		t.Errorf("the element was given a style: %s", changed)
	}
}

// The colors of a house reach the page and its picture, and those that nobody
// could read are refused.
func TestEmbedColors(t *testing.T) {
	h := newHost(t, distDir, "/")
	b := newBuilder(t, around(h, element(h, "a", `color-paper="#10263d" color-ink="#f4efe4" color-steel="#9fd0ff"`)+element(h, "b", `color-paper="#888888" color-ink="#777777"`)))
	p := openTab(t, desk)
	p.visitBuilder(h, b)
	p.begun("a")
	q := p.inside("a")
	if got := eval[string](q, `getComputedStyle(document.body).backgroundColor + " " + getComputedStyle(document.querySelector(".picture .p-bar")).stroke`); got != "rgb(16, 38, 61) rgb(159, 208, 255)" {
		t.Errorf("the colors are %s", got)
	}
	q.openAll()
	q.axe()
	p.begun("b")
	q = p.inside("b")
	if got := eval[string](q, `getComputedStyle(document.body).backgroundColor`); got != "rgb(255, 253, 248)" {
		t.Errorf("refused colors leave %s", got)
	}
}
