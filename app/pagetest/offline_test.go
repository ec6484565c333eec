//go:build browser

package pagetest

import (
	"fmt"
	"maps"
	"slices"
	"testing"

	"github.com/chromedp/chromedp"
)

// After one visit the page works with its server gone, at whatever path it
// lives and with whatever query follows it.
func TestOffline(t *testing.T) {
	for _, path := range []string{"/", "/tools/x/"} {
		t.Run(path, func(t *testing.T) {
			h := newHost(t, distDir, path)
			p := openTab(t, phone)
			p.open(h.url(""))
			p.offlineReady()
			p.sameSite(distDir)
			h.stop()
			p.reload()
			for _, rest := range []string{"", "?q=1", "index.html", "index.html?a=b&c", "?q=2#wall"} {
				p.visit("about:blank")
				p.open(h.url(rest))
				p.works()
			}
			p.axeInAll("without a network")
			p.another(phone).open(h.url("?again"))
		})
	}
}

// sameSite waits until the page's origin keeps one version, and fails unless
// that is exactly the files of a built site.
func (p *tab) sameSite(dir string) {
	p.t.Helper()
	p.until(`caches.keys().then((names) => names.filter((n) => n.startsWith("standing-beam ") && !n.endsWith(" note")).length === 1)`)
	want := sums(p.t, dir)
	for name, got := range p.versions() {
		if !maps.Equal(got, want) {
			p.t.Errorf("cache %q holds\n%v\nwant\n%v", name, got, want)
		}
	}
}

// A worker cares for its own folder alone: other pages and files of the
// origin are asked of the network, and their caches are left alone.
func TestWorkerKeepsToItsFolder(t *testing.T) {
	h := newHost(t, distDir, "/tools/x/")
	p := openTab(t, desk)
	p.expect("404")
	p.open(h.url(""))
	p.offlineReady()
	p.reload()
	eval[bool](p, `caches.open("standing-beam / old").then(() => caches.open("another program")).then(() => true)`)
	h.requests()
	for _, rest := range []string{"other.html", "web/none.txt"} {
		status := eval[int](p, fmt.Sprintf("fetch(%q).then((r) => r.status)", rest))
		if status != 404 {
			t.Errorf("%s: status %d, want the host's 404", rest, status)
		}
	}
	if asked := h.requests(); len(asked) != 2 {
		t.Errorf("the host was asked for %v, want both", asked)
	}
	second := variant(t, "second")
	h.serve(second)
	p.update()
	p.reload()
	kept := "standing-beam /tools/x/ " + versionIn(t, second)
	p.until(`caches.keys().then((names) => names.filter((n) => n.startsWith("standing-beam /tools/x/ ")).length === 2)`)
	names := slices.Sorted(maps.Keys(p.cached()))
	want := []string{"another program", "standing-beam / old", kept, "standing-beam /tools/x/ note"}
	if slices.Sort(want); !slices.Equal(names, want) {
		t.Errorf("caches %q, want %q", names, want)
	}
}

// A host that sends the program as an unknown type is still understood.
func TestOddHost(t *testing.T) {
	h := newHost(t, distDir, "/")
	h.odd = true
	p := openTab(t, phone)
	p.open(h.url(""))
	p.offlineReady()
	h.stop()
	p.do(chromedp.Reload())
	p.ready()
	p.works()
}
