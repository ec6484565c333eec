//go:build browser

package pagetest

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// press clicks an element by script, wherever it is.
func (p *tab) press(selector string) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(document.querySelector(%q).click(), true)`, selector))
	p.quiet()
}

// keptNames are the names in the list of kept walls.
func (p *tab) keptNames() string {
	p.t.Helper()
	return strings.Join(eval[[]string](p, `[...document.querySelectorAll(".kept-open")].map((b) => b.querySelector("span").firstChild.textContent)`), ", ")
}

func (p *tab) wantNames(what, want string) {
	p.t.Helper()
	if got := p.keptNames(); got != want {
		p.t.Errorf("%s: the walls are %q, want %q", what, got, want)
	}
}

// Several walls are kept, opened, copied, renamed and deleted, deletion can be
// undone, and all of it is there after a reload.
func TestKeptWalls(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.press("#walls")
	p.wantNames("at first", "East cellar wall")
	p.press(`[data-act="copy"][data-wall="0"]`)
	p.wantNames("copied", "East cellar wall, East cellar wall 2")
	p.typeInto(`[data-path="name"]`, "Garage wall")
	p.keys(kb.Enter)
	p.quiet()
	p.wantNames("renamed", "East cellar wall, Garage wall")
	p.choose("free top")
	p.typeInto(`[data-path="height"]`, "10 ft 2 in")
	p.keys(kb.Enter)
	p.quiet()
	p.press(`.kept-open[data-wall="0"]`)
	if got := p.now("height"); got != 108 {
		t.Errorf("the first wall is %v in high, want 108", got)
	}
	p.press("#walls")
	p.press(`[data-act="delete"][data-wall="1"]`)
	p.wantNames("deleted", "East cellar wall")
	p.press("#told-0")
	p.wantNames("undone", "East cellar wall, Garage wall")
	p.press(`.kept-open[data-wall="1"]`)
	p.saved()
	p.reload()
	if got := p.now("height"); got != 122 {
		t.Errorf("after a reload the wall is %v in high, want 122", got)
	}
	if got := eval[string](p, `document.querySelector("input[name=condition]:checked").value`); got != "free top" {
		t.Errorf("after a reload the condition is %q", got)
	}
	p.press("#walls")
	p.wantNames("reloaded", "East cellar wall, Garage wall")
	p.press(`[data-act="delete"][data-wall="1"]`)
	p.press(`[data-act="delete"][data-wall="0"]`)
	p.wantNames("all deleted", "East cellar wall")
	p.press("#told-0")
	p.wantNames("last undone", "East cellar wall")
	if got := p.now("height"); got != 108 {
		t.Errorf("the wall that came back is %v in high", got)
	}
}

// Who goes by the keyboard keeps the place when what was pressed goes away, and
// what was done by it is kept.
func TestFocusStays(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, desk)
	p.open(h.url(""))
	enter := func(selector, want string) {
		t.Helper()
		eval[bool](p, fmt.Sprintf(`(document.querySelector(%q).focus(), true)`, selector))
		p.keys(kb.Enter)
		p.quiet()
		if got := eval[bool](p, fmt.Sprintf(`document.activeElement.matches(%q)`, want)); !got {
			t.Errorf("after Enter on %s the focus is on %s, not on %s", selector, eval[string](p, `document.activeElement.outerHTML.slice(0, 200)`), want)
		}
	}
	enter("#walls", "#walls")
	enter(`[data-act="copy"][data-wall="0"]`, `[data-act="copy"][data-wall="0"]`)
	enter("#wall-new", "#wall-new")
	enter(`[data-act="delete"][data-wall="2"]`, `.kept-open[data-wall="1"]`)
	enter("#told-0", `.kept-open[data-wall="2"]`)
	enter(`[data-act="delete"][data-wall="0"]`, `.kept-open[data-wall="0"]`)
	enter("#told-0", `.kept-open[data-wall="0"]`)
	enter(`.kept-open[data-wall="1"]`, "#walls")
	// The page does not get to know that it is left, as when a phone kills it.
	eval[bool](p, `["pagehide", "visibilitychange"].every((name) => (addEventListener(name, (e) => e.stopImmediatePropagation(), true), true))`)
	p.saved()
	name := p.text("#walls span")
	p.reload()
	if got := p.text("#walls span"); got != name {
		t.Errorf("the wall that was opened is %q, after a reload it is %q", name, got)
	}
}

// saved waits until what is on the screen has been handed over to be kept.
func (p *tab) saved() {
	p.t.Helper()
	eval[bool](p, `new Promise((done) => setTimeout(done, 400, true))`)
}

// What is half typed comes back as it was typed.
func TestHalfTypedComesBack(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.typeInto(`[data-path="height"]`, "11 f")
	p.saved()
	p.reload()
	if got := eval[string](p, `document.querySelector('[data-path="height"]').value`); got != "11 f" {
		t.Errorf("the field came back as %q", got)
	}
	if p.text(`[id="f-height-problem"]`) == "" {
		t.Error("the problem did not come back with it")
	}
}

// The units, the theme and what the picture shows are chosen, and the wall
// stays what it was.
func TestUnitsAndTheme(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	before := p.file()
	p.press("#units")
	if got := eval[string](p, `document.querySelector('[data-path="height"]').value`); got != "2.74 m" {
		t.Errorf("9 ft reads %q in metric, want 2.74 m", got)
	}
	p.agrees("metric")
	p.press("#units")
	if after := p.file(); !bytes.Equal(before, after) {
		t.Errorf("changing the units there and back made\n%s\nof\n%s", after, before)
	}
	p.press(`input[name=theme][value=dark]`)
	if got := eval[string](p, `getComputedStyle(document.body).backgroundColor`); got != "rgb(20, 19, 15)" {
		t.Errorf("in dark the page is %s", got)
	}
	p.saved()
	p.reload()
	if got := eval[string](p, `document.documentElement.dataset.theme`); got != "dark" {
		t.Errorf("after a reload the theme is %q", got)
	}
}

// A file that the page saves can be opened again, and one with faults is
// refused with its faults.
func TestFiles(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.choose("tied to slab")
	file := p.file()
	var content struct {
		Format int
		Walls  []map[string]any
	}
	if err := json.Unmarshal(file, &content); err != nil || content.Format != 1 || len(content.Walls) != 1 {
		t.Fatalf("the file is no wall file (%v):\n%s", err, file)
	}
	name := filepath.Join(t.TempDir(), "walls.json")
	if err := os.WriteFile(name, bytes.Replace(file, []byte("East cellar wall"), []byte("From a file"), 1), 0o600); err != nil {
		t.Fatal(err)
	}
	p.press("#walls")
	p.do(chromedp.SetUploadFiles("#import-file", []string{name}))
	p.until(`document.querySelector("#walls span").textContent === "From a file"`)
	p.agrees("opened from a file")
	if err := os.WriteFile(name, []byte(`{"format":1,"walls":[{"name":"Bad","height":9}]}`), 0o600); err != nil {
		t.Fatal(err)
	}
	p.press("#walls")
	p.do(chromedp.SetUploadFiles("#import-file", []string{name}))
	p.until(`document.querySelector("#told").textContent.includes("bare number")`)
	if got := p.text("#walls span"); got != "From a file" {
		t.Errorf("a bad file changed the wall to %q", got)
	}
}

// A fault inside a handler shows itself, and the page goes on.
func TestFaultIsSurvived(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.typeInto(`[data-path="height"]`, "10 ft")
	p.keys(kb.Enter)
	p.saved()
	// An event without what a handler counts on.
	eval[bool](p, `(document.querySelector('[data-handle="height"]').dispatchEvent(new Event("pointerdown")), true)`)
	p.until(`!document.getElementById("fault").hidden`)
	p.tap(`[data-step="thickness+"]`)
	p.quiet()
	if got := eval[string](p, `document.querySelector('[data-path="thickness"]').value`); got != "12 in" {
		t.Errorf("after the fault a stepper leads to %q", got)
	}
	p.press("#fault-saved")
	p.until(`document.getElementById("fault").hidden`)
	if got := p.now("height"); got != 120 {
		t.Errorf("the saved wall came back %v in high, want 120", got)
	}
}

// What is typed into the page before the program has come is not lost.
func TestTypedBeforeTheProgram(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	typing := page.AddScriptToEvaluateOnNewDocumentParams{Source: `document.addEventListener("DOMContentLoaded", () => {
		document.querySelector('[data-path="height"]').value = "11 ft"; });`}
	if _, err := chromedp.Call(p.ctx, page.AddScriptToEvaluateOnNewDocument, typing); err != nil {
		t.Fatal(err)
	}
	p.open(h.url(""))
	if got := p.now("height"); got != 132 {
		t.Errorf("the wall is %v in high, want 132", got)
	}
}
