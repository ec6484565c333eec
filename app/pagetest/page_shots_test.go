//go:build browser

package pagetest

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// whole keeps a picture of the whole page, not of the screen alone.
func (p *tab) whole(name string) {
	p.t.Helper()
	picture, err := chromedp.Run(p.ctx, chromedp.FullScreenshot(90))
	if err != nil {
		p.t.Fatal(err)
	}
	if dir := os.Getenv("SHOTS"); dir != "" {
		if err := os.WriteFile(dir+"/"+name+".jpg", picture, 0o644); err != nil {
			p.t.Fatal(err)
		}
	}
}

// The page in each of the four ways to be held, to be looked at.
func TestShots(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"phone": phone, "desk": desk} {
		for _, scheme := range []string{"light", "dark"} {
			p := openTab(t, s)
			p.media("prefers-color-scheme", scheme)
			p.open(h.url(""))
			for _, condition := range []string{"braced top", "free top", "tied to slab", "soil both sides"} {
				eval[bool](p, fmt.Sprintf(`(() => { document.querySelector('input[name=condition][value=%q]').click(); return true; })()`, condition))
				p.frame()
				eval[bool](p, `(scrollTo(0, 0), true)`)
				p.shot(fmt.Sprintf("%s-%s-%s", name, scheme, strings.ReplaceAll(condition, " ", "-")))
			}
		}
	}
}
