//go:build browser

package pagetest

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// Nothing that is entered leaves the device: the first load asks its host for
// the site's own files, with nothing in the request but their version, and
// once the page is kept it asks only for a newer worker, whatever is done.
// Requests to other origins fail every test.
func TestNothingIsSent(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.beforeEachPage("window.print = () => {};")
	p.open(h.url("#wall"))
	p.offlineReady()
	version := versionIn(t, distDir)
	files := sums(t, distDir)
	for _, asked := range h.requests() {
		path, query, _ := strings.Cut(strings.TrimPrefix(asked, "/"), "?")
		if _, ok := files[path]; !ok && path != "worker.js" || query != "" && query != "v="+version {
			t.Errorf("the first load asks for %s", asked)
		}
	}
	p.reload()
	for _, condition := range fourConditions {
		p.choose(condition)
		p.typeInto(heightField, "8 ft 2 in")
		p.keys(kb.Enter)
		p.dragTouch(handle("height"), 0, 30, 3)
		p.tap(".check > button")
		p.quiet()
	}
	p.press("#units")
	p.press("#fold-about")
	p.press("#walls")
	p.press("#wall-new")
	p.press("#export")
	p.press("#walls")
	p.setHeight("25 ft")
	p.saved()
	p.reload()
	for _, lesson := range []string{"#why", "#why/height", "#why/check", "#"} {
		eval[bool](p, `(location.hash = "`+lesson+`", true)`)
		p.quiet()
	}
	for _, asked := range h.requests() {
		if asked != "/worker.js" {
			t.Errorf("in use the page asks for %s", asked)
		}
	}
}
