//go:build browser

package pagetest

import (
	"fmt"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/storage"
	"github.com/chromedp/chromedp"
)

// builder is a page of another site, on an address of its own: 127.0.0.1 is
// another site than localhost, so that the browser treats the calculator in it
// as a stranger's.
type builder struct {
	origin string
	page   string            // the document
	files  map[string][]byte // and what lies beside it
	policy string            // its content security policy
}

// newBuilder serves a page until the test ends.
func newBuilder(t *testing.T, page string) *builder {
	t.Helper()
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	b := &builder{origin: "http://" + listener.Addr().String(), page: page, files: map[string][]byte{"/favicon.ico": {}}}
	server := &http.Server{Handler: b}
	go func() { _ = server.Serve(listener) }() // ends by Close
	t.Cleanup(func() { _ = server.Close() })   // nothing is to be done about a failure
	return b
}

func (b *builder) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("Cache-Control", "no-store")
	if b.policy != "" {
		w.Header().Set("Content-Security-Policy", b.policy)
	}
	data, found := b.files[r.URL.Path]
	switch {
	case r.URL.Path == "/":
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		data = []byte(b.page)
	case !found:
		http.NotFound(w, r)
		return
	case strings.HasSuffix(r.URL.Path, ".js"):
		w.Header().Set("Content-Type", "text/javascript")
	case strings.HasSuffix(r.URL.Path, ".css"):
		w.Header().Set("Content-Type", "text/css")
	}
	_, _ = w.Write(data) // a reader who has gone is no concern of ours
}

// around is a page with elements of the calculator in it.
func around(h *host, elements string) string {
	return `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>A builder</title>
<script src="` + h.url("embed/element.js") + `" async></script></head><body><main><h1>Cellars</h1>` + elements + `</main></body></html>`
}

// element is one element with its link and its picture.
func element(h *host, id, attributes string) string {
	return fmt.Sprintf(`<standing-beam id="%s" %s><a href="%s"><img src="%s" width="720" height="480" alt="A wall"></a></standing-beam>`,
		id, attributes, h.url(""), h.url("embed/wall-braced-top.svg"))
}

// demo is the page that the site itself shows, put on the builder's address
// with the calculator's script.
func demo(t *testing.T, h *host, b *builder) {
	t.Helper()
	for _, name := range []string{"index.html", "demo.css", "demo.js"} {
		data, err := os.ReadFile(filepath.Join(distDir, "embed", name))
		if err != nil {
			t.Fatal(err)
		}
		b.files["/"+name] = data
	}
	b.page = strings.NewReplacer(`src="element.js"`, `src="`+h.url("embed/element.js")+`"`, `href="../`, `href="`+h.url(""), `src="wall-`, `src="`+h.url("embed/wall-")).Replace(string(b.files["/index.html"]))
}

// visitBuilder goes to the builder's page, from which the calculator's files
// may be asked for.
func (p *tab) visitBuilder(h *host, b *builder) {
	p.t.Helper()
	p.expect("request to another origin: http://" + h.addr + "/")
	p.visit(b.origin + "/")
}

// begun waits until the calculator in an element is there.
func (p *tab) begun(id string) {
	p.t.Helper()
	p.until(fmt.Sprintf(`!!document.getElementById(%q).answer`, id))
}

// inside attaches to the calculator within an element.
func (p *tab) inside(id string) *tab {
	p.t.Helper()
	// The frame is told from others by what it was asked.
	src := eval[string](p, fmt.Sprintf(`document.getElementById(%q).shadowRoot.querySelector("iframe").src`, id))
	return p.frameAt(src)
}

// frameAt attaches to the frame of another site at an address.
func (p *tab) frameAt(src string) *tab {
	p.t.Helper()
	targets, err := chromedp.Targets(p.ctx)
	if err != nil {
		p.t.Fatal(err)
	}
	for _, target := range targets {
		if target.URL == src {
			ctx, _ := chromedp.NewContext(p.ctx, chromedp.WithTargetID(target.TargetID), chromedp.WithDetachOnCancel())
			q := &tab{t: p.t, ctx: ctx}
			p.t.Cleanup(func() {
				q.mu.Lock()
				defer q.mu.Unlock()
				for _, problem := range q.problems {
					p.t.Error("in the frame: " + problem)
				}
			})
			if err := chromedp.Listen(ctx, q.watch); err != nil {
				p.t.Fatal(err)
			}
			q.ready()
			return q
		}
	}
	p.t.Fatalf("no frame at %s among %d targets", src, len(targets))
	return nil
}

// verdict is what the element says of the wall.
func (p *tab) verdict(id string) string {
	p.t.Helper()
	return eval[string](p, fmt.Sprintf(`document.getElementById(%q).answer.verdict`, id))
}

// fits waits until the frame in an element is as high as what is in it, so
// that nothing scrolls, and returns that height.
func (p *tab) fits(id string, q *tab) float64 {
	p.t.Helper()
	q.until(`document.documentElement.dataset.embed && innerHeight === Math.ceil(document.body.getBoundingClientRect().height) &&
		document.documentElement.scrollHeight <= innerHeight`)
	return eval[float64](p, fmt.Sprintf(`document.getElementById(%q).shadowRoot.querySelector("iframe").clientHeight`, id))
}

// bounded fails unless the frame in an element is as high as the element may
// be, which the page around has bounded.
func (p *tab) bounded(id string) {
	p.t.Helper()
	p.until(fmt.Sprintf(`(() => { const e = document.getElementById(%q), f = e.shadowRoot.querySelector("iframe");
		return Math.abs(e.offsetHeight - parseFloat(getComputedStyle(e).maxHeight)) <= 4 && Math.abs(e.clientHeight - f.clientHeight) < 1; })()`, id))
}

// noCookies fails if anybody has set one.
func (p *tab) noCookies() {
	p.t.Helper()
	all, err := chromedp.Call(p.ctx, storage.GetCookies, storage.GetCookiesParams{})
	if err != nil {
		p.t.Fatal(err)
	}
	for _, c := range all.Cookies {
		p.t.Errorf("a cookie was set: %s for %s", c.Name, c.Domain)
	}
}
