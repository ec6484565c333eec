//go:build browser

package pagetest

import "testing"

// Each line of the headline leads to the lesson that says why, and back to the
// wall as it was left.
func TestWhy(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"phone": phone, "desk": desk} {
		p := openTab(t, s)
		p.open(h.url(""))
		p.typeInto(heightField, "10 ft")
		p.quiet()
		for _, test := range []struct{ condition, finished string }{
			{"braced top", "hold"}, {"free top", "heel"}, {"tied to slab", "slab"}, {"soil both sides", "both"},
		} {
			p.choose(test.condition)
			for line, lesson := range map[string]string{"finished": test.finished, "today": "wait"} {
				eval[bool](p, `(scrollTo(0, 0), true)`)
				p.click("#" + line + " .answer-why")
				p.until(`location.hash === "#why/` + lesson + `" && document.getElementById("tool").hidden && !!document.getElementById("why-question")`)
				eval[bool](p, `(history.back(), true)`)
				p.until(`location.hash === "" && !document.getElementById("tool").hidden`)
			}
			if got := p.value("height"); got != "10 ft 0 in" {
				t.Errorf("%s, %s: the height is %q after the lesson", name, test.condition, got)
			}
		}
	}
}

// On a wide screen the earth fills the column of the picture to its end, while
// everything is closed and while everything is open.
func TestNoEmptyBand(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, desk)
	p.open(h.url(""))
	for _, what := range []string{"closed", "open"} {
		for _, condition := range fourConditions {
			p.choose(condition)
			eval[bool](p, `(scrollTo(0, document.querySelector(".figure").getBoundingClientRect().bottom + scrollY - innerHeight), true)`)
			p.frame()
			if at := eval[string](p, `(() => { const r = document.querySelector(".figure").getBoundingClientRect();
				return [8, r.width / 2, r.width - 8].map((x) => document.elementFromPoint(r.left + x, r.bottom - 4).closest("svg.picture") ? "" : x).join(""); })()`); at != "" {
				t.Errorf("%s, %s: nothing is drawn at %s px above the column's end", condition, what, at)
			}
		}
		p.openAll()
	}
}
