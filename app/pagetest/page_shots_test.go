//go:build browser

package pagetest

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// whole keeps a picture of the whole page as name.jpg in the folder SHOTS.
func (p *tab) whole(name string) {
	p.t.Helper()
	picture, err := chromedp.Run(p.ctx, chromedp.FullScreenshot(90))
	if err != nil {
		p.t.Fatal(err)
	}
	if dir := os.Getenv("SHOTS"); dir != "" {
		if err := os.WriteFile(filepath.Join(dir, name+".jpg"), picture, 0o644); err != nil {
			p.t.Fatal(err)
		}
	}
}

// unfold opens parts of the page by their ids.
func (p *tab) unfold(ids ...string) {
	p.t.Helper()
	for _, id := range ids {
		eval[bool](p, fmt.Sprintf(`(() => { const b = document.getElementById("fold-%s");
			if (b.getAttribute("aria-expanded") !== "true") b.click(); return true; })()`, id))
	}
	p.quiet()
}

// The page in each of the four ways to be held, in every look, and a lesson, to
// be looked at.
func TestShots(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"phone": phone, "turned": turned, "desk": desk} {
		for _, l := range looks[:3] {
			p := openIn(t, s, h.url(""), l)
			for _, condition := range fourConditions {
				eval[bool](p, fmt.Sprintf(`(() => { document.querySelector('input[name=condition][value=%q]').click(); return true; })()`, condition))
				p.quiet()
				eval[bool](p, `(scrollTo(0, 0), true)`)
				p.shot(fmt.Sprintf("%s-%s-%s", name, l.name, strings.ReplaceAll(condition, " ", "-")))
			}
			eval[bool](p, `(document.querySelector(".check > button").click(), true)`)
			p.unfold("more", "push", "hold", "today", "carry", "compared", "idle")
			p.whole(name + "-" + l.name + "-open")
			p.goTo("why/height/10ft")
			p.shot(name + "-" + l.name + "-lesson")
		}
	}
}
