//go:build browser

package pagetest

import (
	"fmt"
	"strconv"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/heapprofiler"
	"github.com/chromedp/cdproto/memory"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

func jsNumber(f float64) string { return strconv.FormatFloat(f, 'f', -1, 64) }

// A day's edits: so many presses of steppers, and so many texts typed.
const (
	dayRounds = 60 // of presses and texts
	dayEdits  = 50 // in a round
)

// used is what the page holds after its garbage has gone.
type used struct {
	nodes, listeners int64
	script, program  float64 // MB
}

func (u used) String() string {
	return fmt.Sprintf("%d nodes, %d listeners, %.1f MB of script, %.1f MB of the program", u.nodes, u.listeners, u.script, u.program)
}

func (p *tab) used() used {
	p.t.Helper()
	for _, length := range [][2]string{{"height", "9 ft"}, {"thickness", "10 in"}, {"grade.a", "8 ft 4 in"}} { // the same wall each time
		p.typeInto(`[data-path="`+length[0]+`"]`, length[1])
		p.keys(kb.Enter)
	}
	p.quiet()
	p.saved()
	for range 5 { // what the program lets go of comes free a while after
		if _, err := chromedp.Call(p.ctx, heapprofiler.CollectGarbage, cdp.Empty{}); err != nil {
			p.t.Fatal(err)
		}
		p.frame()
	}
	counts, err := chromedp.Call(p.ctx, memory.GetDOMCounters, cdp.Empty{})
	if err != nil {
		p.t.Fatal(err)
	}
	return used{
		nodes: counts.Nodes, listeners: counts.JsEventListeners,
		script:  eval[float64](p, "performance.memory.usedJSHeapSize / 1048576"),
		program: eval[float64](p, "window.programMemory.buffer.byteLength / 1048576"),
	}
}

// A day's worth of edits leaves memory flat, from the first tenth of it on.
func TestMemoryOfADay(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.beforeEachPage(`for (const name of ["instantiate", "instantiateStreaming"]) {
		const make = WebAssembly[name];
		WebAssembly[name] = async (...given) => {
			const made = await make.apply(WebAssembly, given);
			window.programMemory = made.instance.exports.mem;
			return made;
		};
	}`)
	p.open(h.url(""))
	p.press("#fold-more") // the parts of the picture
	p.tap(".check > button")
	var first used
	for round := 1; round <= dayRounds; round++ {
		p.edits(round)
		if round == dayRounds/10 {
			first = p.used()
		}
	}
	last := p.used()
	t.Logf("after a tenth of the day: %v", first)
	t.Logf("at its end: %v", last)
	for _, bound := range []struct {
		what        string
		first, last float64
		more        float64 // that is no growth: what is not collected yet; a leak of one a press would be 2,700
	}{
		{"nodes", float64(first.nodes), float64(last.nodes), 1300},
		{"listeners", float64(first.listeners), float64(last.listeners), 40},
		{"MB of script", first.script, last.script, 3},
		{"MB of the program", first.program, last.program, 8},
	} {
		if bound.last > bound.first+bound.more {
			t.Errorf("%s grew from %.1f to %.1f, more than by %.0f", bound.what, bound.first, bound.last, bound.more)
		}
	}
}

// edits makes a round of edits, and comes back to the wall it began with.
func (p *tab) edits(round int) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(async () => {
		const drawn = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
		const conditions = [...document.querySelectorAll("input[name=condition]")];
		conditions[%d %% conditions.length].click();
		await drawn();
		for (let i = 0; i < %d; i++) {
			if (i %% 10 === 9) {
				const field = document.querySelector('[data-path="height"]');
				field.focus();
				field.value = (7 + i / 10 | 0) + " ft";
				field.dispatchEvent(new InputEvent("input", {bubbles: true}));
				await drawn();
				field.blur();
			} else {
				document.querySelector('[data-step="' + ["height+", "thickness+", "height-", "thickness-", "grade.a-", "grade.a+"][i %% 6] + '"]')?.click();
			}
			if (i %% 2) { await drawn(); }
		}
		conditions[0].click();
		await drawn();
		return true;
	})()`, round, dayEdits))
}
