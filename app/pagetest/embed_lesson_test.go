//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"
)

// A lesson stands in the place of a wall, as high as it is, in its units. To
// go on from it leaves the page around and its history as they are.
func TestEmbedLesson(t *testing.T) {
	h := newHost(t, distDir, "/tools/x/")
	b := newBuilder(t, around(h, element(h, "a", `lesson="height" units="metric"`)))
	p := openTab(t, phone)
	p.visitBuilder(h, b)
	p.until(`document.getElementById("a").shadowRoot?.querySelector("iframe").className === ""`)
	q := p.inside("a")
	p.fits("a", q)
	q.until(`document.getElementById("tool").hidden && document.getElementById("why-figure").checkVisibility()`)
	if eval[bool](p, `document.getElementById("a").answer !== null`) {
		t.Error("a lesson tells the answer of a wall")
	}
	before := eval[int](q, `history.length`)
	p.shot("embed-lesson")
	q.axe()
	if text := q.text("#why"); !strings.Contains(text, " m ") || strings.Contains(text, " ft") {
		t.Errorf("the lesson is not metric:\n%s", text)
	}
	title := q.text("#why-title")
	eval[bool](q, `([...document.querySelectorAll('#why a[href*="#why/"]')].at(-1).click(), true)`)
	q.until(`document.getElementById("why-title").textContent !== ` + "`" + title + "`")
	q.quiet()
	p.fits("a", q)
	if after := eval[int](q, `history.length`); after != before {
		t.Errorf("the lesson made %d steps in the history of the page around", after-before)
	}
	if at := eval[string](q, `location.hash`); !strings.HasPrefix(at, "#embed&") {
		t.Errorf("the frame has lost what it was asked for: it is at %s", at)
	}
}

// A lesson in a narrow and in a wide place, with as much of it as is wanted:
// its picture is drawn for the space that it has, no label lies on another, and
// the frame is as high as the lesson, whatever is tapped in it.
func TestEmbedLessonLooks(t *testing.T) {
	h := newHost(t, distDir, "/")
	for i, show := range []string{"picture", "answer", "all", "picture", "answer", "all"} {
		width, lesson := int64(320+280*(i/3)), []string{"height", "crack/8ft", "check"}[(i+i/3)%3]
		what := fmt.Sprint(width, " ", show, " ", lesson)
		b := newBuilder(t, around(h, element(h, "a", fmt.Sprintf(`lesson=%q show=%q theme="glare"`, lesson, show))))
		p := openTab(t, screen{width + 16, 844, 1, true})
		p.visitBuilder(h, b)
		p.until(`document.getElementById("a").shadowRoot?.querySelector("iframe").className === ""`)
		q := p.inside("a")
		for _, state := range []string{"as it comes", "answered"} {
			if state == "answered" {
				eval[bool](q, `([...document.querySelectorAll(".why-choice[data-guess='2']:enabled")].forEach((b) => b.click()), true)`)
			}
			q.quiet()
			p.fits("a", q)
			if wrong := eval[[]string](q, crowded); len(wrong) > 0 {
				t.Errorf("%s, %s: %s", what, state, strings.Join(wrong, "; "))
			}
		}
	}
}
