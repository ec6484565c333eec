//go:build browser

package pagetest

import (
	"os"
	"path/filepath"
	"strings"

	"github.com/chromedp/chromedp"
)

// shot keeps a picture of the screen as name.png in the folder SHOTS; without
// SHOTS it takes the picture and drops it.
func (p *tab) shot(name string) {
	p.t.Helper()
	picture, err := chromedp.Run(p.ctx, chromedp.CaptureScreenshot())
	if err != nil {
		p.t.Fatal(err)
	}
	dir := os.Getenv("SHOTS")
	if dir == "" {
		dir = p.t.TempDir()
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		p.t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, name+".png"), picture, 0o644); err != nil {
		p.t.Fatal(err)
	}
}

// axe looks for faults of accessibility: WCAG A and AA up to 2.2, and the
// best practice rules. It leaves out targets within text: measure those.
func (p *tab) axe() {
	p.t.Helper()
	source, err := os.ReadFile(axeFile)
	if err != nil {
		p.t.Fatal(err)
	}
	p.frame()
	// From here on it is axe that tries an inline style of its own.
	p.expect("content security policy: style-src-elem refuses")
	p.expect("Applying inline style violates")
	p.do(chromedp.Evaluate[chromedp.Void](string(source)))
	found := eval[[]string](p, `axe.run(document, {runOnly: {type: "tag", values:
		["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]}})
		.then((r) => r.violations.map((v) => v.id + ": " + v.help + "\n\t" +
			v.nodes.slice(0, 5).map((n) => n.target.join(" ") + " — " + n.failureSummary).join("\n\t")))`)
	if len(found) > 0 {
		p.t.Errorf("axe:\n%s", strings.Join(found, "\n"))
	}
}
