//go:build browser

package pagetest

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// A height that is typed below the fill takes the fill along, and gives it
// back when the typing goes on; a text half typed never becomes the answer
// that stays.
func TestTypedHeightTakesTheFill(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	fill := func() string { return eval[string](p, `document.querySelector('[data-path="grade.a"]').value`) }
	before := fill()
	p.typeInto(heightField, "7 ft")
	p.until(`document.querySelector('[data-path="grade.a"]').value === "7 ft 0 in"`)
	p.typeInto(heightField, "2")
	p.until(`document.querySelector('[data-path="grade.a"]').value === "2 ft 0 in"`)
	p.keys("5 ft")
	p.until(`document.getElementById("answer").dataset.stale === "true"`)
	if got := fill(); got != before {
		t.Errorf("while 25 ft is typed the fill is %q, it was %q", got, before)
	}
	if shown := p.text("#figure"); !strings.Contains(shown, "9 ft 0 in") {
		t.Errorf("while 25 ft is typed the picture shows %q", shown)
	}
	p.typeInto(heightField, "12")
	p.keys(kb.Enter)
	p.wantHeight("12 ft 0 in")
	if got := fill(); got != before {
		t.Errorf("after 12 ft was typed the fill is %q, it was %q", got, before)
	}
}

// The keys go through the page in the order in which it is read on a phone.
func TestKeysFollowTheScreen(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	type stop struct {
		Name string
		Top  float64
	}
	stops := eval[[]stop](p, `[...document.querySelectorAll("#tool main button, #tool main input, #tool main select")]
		.filter((e) => e.offsetParent && e.tabIndex >= 0 && !e.closest("#figure"))
		.map((e) => ({Name: e.id || e.dataset.step || e.value, Top: (e.closest(".row, .card") || e).getBoundingClientRect().top}))`)
	if len(stops) < 20 {
		t.Fatalf("only %d stops", len(stops))
	}
	for i := 1; i < len(stops); i++ {
		if stops[i].Top < stops[i-1].Top-1 {
			t.Errorf("the keys go up from %s to %s", stops[i-1].Name, stops[i].Name)
		}
	}
}
