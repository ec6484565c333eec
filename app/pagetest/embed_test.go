//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// The page that shows it all, on another site's address, on a phone and on a
// desk: every element comes, is as high as what is in it, and says its answer.
func TestEmbedDemo(t *testing.T) {
	h := newHost(t, distDir, "/tools/x/")
	for name, s := range map[string]screen{"phone": phone, "desk": desk} {
		t.Run(name, func(t *testing.T) {
			b := newBuilder(t, "")
			demo(t, h, b)
			p := openTab(t, s)
			p.visitBuilder(h, b)
			for _, id := range []string{"east", "held", "free", "house"} {
				eval[bool](p, fmt.Sprintf(`(document.getElementById(%q).scrollIntoView(), true)`, id))
				p.begun(id)
				q := p.inside(id)
				if id == "east" {
					p.bounded(id)
				} else {
					p.fits(id, q)
				}
				p.frame()
				p.shot("embed-" + name + "-" + id)
				if name == "desk" && id != "free" {
					q.axe() // while it is in view: others are not drawn
				}
				if got, want := p.verdict(id), eval[string](q, `document.getElementById("finished").dataset.state`); got != want {
					t.Errorf("%s: the element says %q, the page in it %q", id, got, want)
				}
			}
			if s.width > 1000 {
				p.axe()
			}
			if over := eval[int](p, `document.documentElement.scrollWidth - innerWidth`); over > 0 {
				t.Errorf("the page is %d px too wide", over)
			}
			p.noCookies()
		})
	}
}

// The page that shows it all lies beside the calculator too, where both are of
// one origin.
func TestEmbedDemoAtHome(t *testing.T) {
	h := newHost(t, distDir, "/tools/x/")
	p := openTab(t, phone)
	p.visit(h.url("embed/"))
	p.begun("east")
	p.press("#metric")
	p.until(`document.getElementById("says").textContent.includes("mm")`)
	p.press("#lower")
	p.until(`document.getElementById("east").wall.walls[0].grade.a === "6 ft"`)
}

// What a person does in the calculator is told to the page around, which can
// ask for another wall and for other looks in turn.
func TestEmbedTalks(t *testing.T) {
	h := newHost(t, distDir, "/")
	b := newBuilder(t, around(h, element(h, "a", `condition="free top" height="6 ft" grade-a="6 ft"`)))
	p := openTab(t, desk)
	p.visitBuilder(h, b)
	p.begun("a")
	eval[bool](p, `(window.told = [], document.getElementById("a").addEventListener("change", (e) => told.push(e.detail)), true)`)
	q := p.inside("a")
	q.wantHeight("6 ft 0 in")
	before := p.fits("a", q)
	q.setHeight("7 ft 2 in")
	p.until(`told.some((d) => d.file.walls[0].height === "7 ft 2 in")`)
	file := eval[string](p, `JSON.stringify(document.getElementById("a").wall)`)
	if got, want := p.verdict("a"), solve(t, []byte(file)).Walls[0].Verdict; got != want {
		t.Errorf("the element says %q, solve says %q of\n%s", got, want, file)
	}

	eval[bool](p, `(() => { const a = document.getElementById("a"), file = a.wall; file.walls[0].height = "8 ft"; file.walls[0].grade.a = "7 ft"; a.wall = file; return true; })()`)
	q.wantHeight("8 ft 0 in")
	p.until(`document.getElementById("a").wall.walls[0].grade.a === "7 ft"`)
	eval[bool](p, `(document.getElementById("a").wall = {height: "9"}, true)`)
	q.wantHeight("8 ft 0 in")

	eval[bool](p, `(() => { const a = document.getElementById("a"); a.setAttribute("units", "metric"); a.setAttribute("show", "picture"); return true; })()`)
	q.until(`document.documentElement.dataset.embed === "picture" && document.querySelector("#figure").textContent.includes("2.44 m")`)
	q.quiet()
	if after := p.fits("a", q); after >= before/2 {
		t.Errorf("the picture alone is %v high, all was %v", after, before)
	}
	whole := p.another(phone)
	whole.open(eval[string](q, `document.getElementById("whole").href`))
	whole.until(`document.getElementById("f-height").value === "2.44 m" && document.documentElement.dataset.embed === "all"`)
	eval[bool](p, `(document.getElementById("a").setAttribute("height", "10 ft"), true)`)
	q.until(`document.querySelector("#figure").textContent.includes("3.05 m")`)

	// Moved within the page, the calculator begins anew with the same wall.
	eval[bool](p, `(() => { const a = document.getElementById("a"); a.wall = {...a.wall.walls[0], height: "11 ft"}; return true; })()`)
	p.until(`document.getElementById("a").wall.walls[0].height === "11 ft"`)
	eval[bool](p, `(told.length = 0, document.querySelector("main").prepend(document.getElementById("a")), true)`)
	p.until(`told.some((d) => d.file.walls[0].height === "11 ft")`)
}

// Changes are kept where that is asked for, under a name of their own, and
// nowhere else.
func TestEmbedKeeps(t *testing.T) {
	h := newHost(t, distDir, "/")
	b := newBuilder(t, around(h, element(h, "kept", `height="8 ft" keep="one"`)+element(h, "other", `height="8 ft" keep="two"`)+element(h, "lost", `height="8 ft"`)))
	p := openTab(t, desk)
	p.visitBuilder(h, b)
	for _, id := range []string{"kept", "lost"} {
		p.begun(id)
		q := p.inside(id)
		q.setHeight("8 ft 6 in")
		p.until(fmt.Sprintf(`document.getElementById(%q).wall.walls[0].height === "8 ft 6 in"`, id))
		if id == "kept" {
			q.saved()
		}
	}
	p.do(chromedp.Reload())
	for id, height := range map[string]string{"kept": "8 ft 6 in", "other": "8 ft", "lost": "8 ft"} {
		p.begun(id)
		if got := eval[string](p, fmt.Sprintf(`document.getElementById(%q).wall.walls[0].height`, id)); got != height {
			t.Errorf("%s: after a reload the wall is %s high, want %s", id, got, height)
		}
	}
	p.noCookies()
	// The calculator's own page does not see any of it.
	q := p.another(phone)
	q.open(h.url(""))
	q.wantHeight("9 ft 0 in")
}

// With the calculator's server gone, the page around still shows it, from a
// script of its own.
func TestEmbedOffline(t *testing.T) {
	h := newHost(t, distDir, "/tools/x/")
	b := newBuilder(t, "")
	b.files["/beam.js"] = readFile(t, distDir+"/embed/element.js")
	b.page = strings.Replace(around(h, element(h, "a", fmt.Sprintf(`from="%s" condition="free top" height="5 ft"`, h.url("")))), h.url("embed/element.js"), "/beam.js", 1)
	p := openTab(t, phone)
	p.visitBuilder(h, b)
	p.begun("a")
	p.inside("a").offlineReady()
	h.stop()
	p.expect("net::ERR_CONNECTION_REFUSED") // the picture in the element
	p.do(chromedp.Reload())
	p.begun("a")
	q := p.inside("a")
	q.wantHeight("5 ft 0 in")
	q.works()
	p.fits("a", q)
}

// Where scripts are off, where they are refused, and where the calculator may
// not be shown, the link with its picture is there.
func TestEmbedFallsBack(t *testing.T) {
	h := newHost(t, distDir, "/")
	shown := func(p *tab) {
		p.t.Helper()
		p.until(`(() => { const i = document.querySelector("standing-beam img"), r = i.getBoundingClientRect();
			return i.complete && i.naturalWidth === 720 && r.width > 100 && r.height > 100 && i.checkVisibility({visibilityProperty: true}); })()`)
		x, y := p.place("standing-beam img").middle()
		if !eval[bool](p, fmt.Sprintf(`document.elementFromPoint(%v, %v)?.closest("a")?.href === %q`, x, y, h.url(""))) {
			p.t.Error("the link with the picture cannot be reached")
		}
	}
	page := around(h, element(h, "a", ""))
	t.Run("off", func(t *testing.T) {
		p := openTab(t, phone)
		if _, err := chromedp.Call(p.ctx, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true}); err != nil {
			t.Fatal(err)
		}
		p.visitBuilder(h, newBuilder(t, page))
		shown(p)
		p.shot("embed-without-scripts")
	})
	t.Run("refused by the page around", func(t *testing.T) {
		b := newBuilder(t, page)
		b.policy = "script-src 'none'"
		p := openTab(t, phone)
		p.expect("script-src")
		p.expect("Content Security Policy")
		p.visitBuilder(h, b)
		shown(p)
	})
	t.Run("frames refused", func(t *testing.T) {
		b := newBuilder(t, page)
		b.policy = "frame-src 'none'"
		p := openTab(t, phone)
		p.expect("frame-src")
		p.expect("Content Security Policy")
		p.visitBuilder(h, b)
		p.until(`!!customElements.get("standing-beam")`)
		p.frame()
		shown(p)
	})
	t.Run("gone", func(t *testing.T) {
		b := newBuilder(t, page)
		gone := newHost(t, distDir, "/")
		b.page = strings.Replace(page, `<standing-beam `, `<standing-beam from="`+gone.url("")+`" `, 1)
		gone.stop()
		p := openTab(t, phone)
		p.expect("request to another origin: http://" + gone.addr)
		p.expect("net::ERR_CONNECTION_REFUSED")
		p.visitBuilder(h, b)
		p.until(`!!customElements.get("standing-beam")`)
		shown(p)
	})
}
