//go:build browser

package pagetest

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"os/exec"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// shownCheck is a check as the page shows it.
type shownCheck struct{ ID, Stage, State, Name, Amount, Figure string }

// quiet waits until nothing on the page has changed for a while.
func (p *tab) quiet() {
	p.t.Helper()
	eval[bool](p, `new Promise((done) => {
		let timer = setTimeout(finish, 100);
		const watch = new MutationObserver(() => { clearTimeout(timer); timer = setTimeout(finish, 100); });
		watch.observe(document.body, {subtree: true, childList: true, attributes: true, characterData: true});
		function finish() { watch.disconnect(); done(true); }
	})`)
}

// shownChecks opens every list of checks and reads them.
func (p *tab) shownChecks() []shownCheck {
	p.t.Helper()
	for _, fold := range []string{"rest", "compared", "idle"} {
		eval[bool](p, fmt.Sprintf(`(() => { const b = document.getElementById("fold-%s"); if (b.getAttribute("aria-expanded") !== "true") b.click(); return true; })()`, fold))
		p.quiet()
	}
	return eval[[]shownCheck](p, `[...document.querySelectorAll("[data-check]")].map((c) => ({
		ID: c.dataset.check, Stage: c.dataset.stage, State: c.dataset.state,
		Name: c.querySelector(".check-name").textContent,
		Amount: c.querySelector(".check-amount").textContent,
		Figure: c.querySelector(".check-figure").textContent}))`)
}

// file is the wall file that the page saves.
func (p *tab) file() []byte {
	p.t.Helper()
	return []byte(eval[string](p, `(async () => {
		const make = URL.createObjectURL;
		let blob;
		URL.createObjectURL = (b) => { blob = b; return make.call(URL, b); };
		const open = document.getElementById("walls").getAttribute("aria-expanded") === "true";
		if (!open) document.getElementById("walls").click();
		while (!document.getElementById("export")) await new Promise(requestAnimationFrame);
		document.getElementById("export").click();
		while (!blob) await new Promise(requestAnimationFrame);
		URL.createObjectURL = make;
		document.getElementById("walls").click();
		while (document.getElementById("export")) await new Promise(requestAnimationFrame);
		return blob.text();
	})()`))
}

// solved is what the command line prints for a file.
type solved struct {
	Walls []struct {
		Name, Verdict string
		Checks        []struct {
			ID, Stage, State string
			Ratio            *float64
			Decides          bool
		}
	}
}

func solve(t *testing.T, file []byte) solved {
	t.Helper()
	command := exec.Command(buildTool, "solve", "-json", "-")
	command.Stdin = bytes.NewReader(file)
	var stderr bytes.Buffer
	command.Stderr = &stderr
	out, err := command.Output()
	if err != nil {
		t.Fatalf("solve: %v: %s\n%s", err, stderr.String(), file)
	}
	var s solved
	if err := json.Unmarshal(out, &s); err != nil {
		t.Fatal(err)
	}
	return s
}

// agrees holds the page's checks against those of the command line for the
// same wall.
func (p *tab) agrees(what string) {
	p.t.Helper()
	shown, answer := p.shownChecks(), solve(p.t, p.file())
	name := p.text("#walls span")
	wall := answer.Walls[len(answer.Walls)-1] // the last one is on the screen
	if wall.Name != name {
		p.t.Fatalf("%s: solve answers %q, on the screen is %q", what, wall.Name, name)
	}
	if got := eval[string](p, `document.getElementById("finished").dataset.state`); got != wall.Verdict {
		p.t.Errorf("%s: the page says %s, solve says %s", what, got, wall.Verdict)
	}
	if len(shown) != len(wall.Checks) {
		p.t.Errorf("%s: %d checks on the page, %d in solve", what, len(shown), len(wall.Checks))
	}
	used := map[int]bool{}
	for _, c := range wall.Checks {
		figure := ""
		if c.Ratio != nil && c.State != "not applicable" {
			figure = strconv.FormatFloat(math.Max(0, math.Ceil(*c.Ratio*100-1e-7)/100), 'f', 2, 64)
			if *c.Ratio > 99 {
				figure = "over 99"
			}
		}
		state := strings.Replace(c.State, "not applicable", "idle", 1)
		found := false
		for i, s := range shown {
			if !used[i] && s.ID == c.ID && s.Stage == c.Stage && s.State == state && s.Figure == figure {
				used[i], found = true, true
				break
			}
		}
		if !found {
			p.t.Errorf("%s: solve has %s (%s) %s %s, which the page does not show", what, c.ID, c.Stage, c.State, figure)
		}
	}
}

func (p *tab) choose(condition string) {
	p.t.Helper()
	p.tap(fmt.Sprintf("input[name=condition][value=%q]", condition))
	p.quiet()
}

// handle is the CSS selector of a handle.
func handle(path string) string { return fmt.Sprintf("[data-handle=%q]", path) }

// now is the value of a handle in inches.
func (p *tab) now(path string) float64 {
	p.t.Helper()
	return eval[float64](p, fmt.Sprintf(`Number(document.querySelector(%q).getAttribute("aria-valuenow"))`, handle(path)))
}

var fourConditions = []string{"braced top", "free top", "tied to slab", "soil both sides"}

// In every condition the page and the command line agree, before and after a
// finger has dragged the wall's top by 150 pixels.
func TestPageAgreesWithSolve(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	for _, condition := range fourConditions {
		p.choose(condition)
		p.agrees(condition)
		before := p.now("height")
		x, y := p.place(handle("height")).middle()
		p.dragTouch(handle("height"), 0, 150, 15)
		p.quiet()
		if eval[float64](p, fmt.Sprintf(`document.elementFromPoint(%v, %v) ? 1 : 0`, x, y)) != 1 {
			t.Error("the handle is off the screen")
		}
		after := p.now("height")
		if !(after < before-12) {
			t.Errorf("%s: dragged down by 150 px, the wall went from %v to %v in", condition, before, after)
		}
		p.agrees(condition + " dragged")
		p.typeInto(`[data-path="height"]`, "9 ft")
		p.keys(kb.Enter)
		p.typeInto(`[data-path="grade.a"]`, "8 ft 4 in")
		p.keys(kb.Enter)
		p.quiet()
	}
}

// A drag moves the wall by what the picture's scale says, however the picture
// changes under it, and gives back the fill when it goes back.
func TestDragFollowsTheFinger(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	foot := eval[float64](p, `(() => { const r = document.querySelector("#picture").getBoundingClientRect(); return r.height; })()`)
	if foot < 250 {
		t.Fatalf("the picture is %v px high", foot)
	}
	heightBefore, fillBefore := p.now("height"), p.now("grade.a")
	top, fill := p.place(handle("height")), p.place(handle("grade.a"))
	perInch := (fill.Y - top.Y) / (heightBefore - fillBefore)
	if perInch <= 0 {
		t.Fatalf("the handles are at %v and %v", top, fill)
	}
	p.dragTouch(handle("height"), 0, 100, 10)
	p.quiet()
	want := heightBefore - 100/perInch
	if got := p.now("height"); math.Abs(got-want) > 1.01 {
		t.Errorf("dragged down by 100 px at %.3f px an inch: %v in, want %v", perInch, got, want)
	}
	if got := p.now("grade.a"); got > p.now("height") {
		t.Errorf("the fill stands at %v above the wall at %v", got, p.now("height"))
	}
}

// Everything can be done with keys: the condition, a stepper, a handle, a
// working, and the list of kept walls.
func TestKeyboardOnly(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, desk)
	p.open(h.url(""))
	reach := func(selector string) {
		t.Helper()
		for range 200 {
			if eval[bool](p, fmt.Sprintf(`document.activeElement && document.activeElement.matches(%q)`, selector)) {
				return
			}
			p.keys(kb.Tab)
		}
		t.Fatalf("Tab never reaches %s", selector)
	}
	start := p.now("height")
	reach(handle("height"))
	p.keys(kb.ArrowUp)
	p.quiet()
	if got := p.now("height"); got != start+1 {
		t.Errorf("arrow up: %v in, want %v", got, start+1)
	}
	p.keys(kb.PageDown)
	p.quiet()
	if got := p.now("height"); got != start-11 {
		t.Errorf("page down: %v in, want %v", got, start-11)
	}
	p.keys(kb.End)
	p.quiet()
	if got := p.now("height"); got != 240 {
		t.Errorf("end: %v in, want 240", got)
	}
	p.keys(kb.PageUp)
	p.quiet()
	p.keys(kb.Home)
	p.quiet()
	if got := p.now("height"); got != 24 {
		t.Errorf("home: %v in, want 24", got)
	}
	if !eval[bool](p, fmt.Sprintf(`document.activeElement.matches(%q)`, handle("height"))) {
		t.Error("the handle lost the focus while it was moved")
	}
	reach("input[name=condition]")
	p.keys(kb.ArrowRight)
	p.quiet()
	if got := eval[string](p, `document.querySelector("input[name=condition]:checked").value`); got != "free top" {
		t.Errorf("arrow right in the conditions leads to %q", got)
	}
	reach(`[data-step="height+"]`)
	p.keys(" ")
	p.quiet()
	if got := p.now("height"); got != 28 {
		t.Errorf("a press of the stepper leads to %v in, want 28", got)
	}
	reach(".check > button")
	p.keys(kb.Enter)
	p.quiet()
	if !eval[bool](p, `!!document.querySelector(".check > button[aria-expanded=true] + .working:not([hidden])")`) {
		t.Error("Enter does not open a working")
	}
}

// Typing keeps what is typed, says what is wrong at the field and leaves the
// last picture.
func TestBadTyping(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	picture := func() string { return eval[string](p, `document.getElementById("picture").outerHTML`) }
	before := picture()
	const field = `[data-path="height"]`
	p.typeInto(field, "25 ft")
	p.quiet()
	if problem := p.text(`[id="f-height-problem"]`); !strings.Contains(problem, "20 ft") || !strings.Contains(problem, "2 ft") {
		t.Errorf("the problem does not say the range: %q", problem)
	}
	if eval[string](p, `document.querySelector('[data-path="height"]').value`) != "25 ft" {
		t.Error("what was typed was changed")
	}
	if picture() != before {
		t.Error("the last picture did not stay")
	}
	p.tap(`[data-step="grade.a-"]`)
	p.quiet()
	if picture() == before {
		t.Error("another field no longer works")
	}
	if eval[string](p, `document.querySelector('[data-path="height"]').value`) != "25 ft" {
		t.Error("what was typed was lost when another field was used")
	}
	p.typeInto(field, `8' 6 1/2"`)
	p.keys(kb.Enter)
	p.quiet()
	if got := p.now("height"); got != 102.5 {
		t.Errorf("8' 6 1/2\" reads as %v in", got)
	}
	if got := eval[string](p, `document.querySelector('[data-path="height"]').value`); got != "8 ft 6 1/2 in" {
		t.Errorf("after Enter the field shows %q", got)
	}
}
