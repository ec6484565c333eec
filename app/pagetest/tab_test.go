//go:build browser

package pagetest

import (
	"context"
	"fmt"
	"net/url"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/audits"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// patience bounds every wait. It is no measure of speed: a slow machine only
// takes longer.
const patience = 60 * time.Second

// screen is what a page is shown on.
type screen struct {
	width, height int64
	scale         float64
	touch         bool
}

var (
	phone  = screen{390, 844, 3, true}
	desk   = screen{1280, 800, 1, false}
	turned = screen{844, 390, 2, true}
)

// tab is one page in a profile of its own. When the test ends it fails if the
// page has written an error, broken its content security policy, or asked
// another origin for anything.
type tab struct {
	t   *testing.T
	ctx context.Context
	fox *firefox // in place of Chromium

	mu       sync.Mutex
	problems []string // not expected
	expected []string
	met      []string // expected, and seen
	origin   string
}

// openTab opens an empty tab of the shared browser in a new profile.
func openTab(t *testing.T, s screen) *tab {
	t.Helper()
	ctx, _ := chromedp.NewContext(browser, chromedp.WithNewBrowserContext())
	return prepare(t, ctx, s)
}

// another opens a second tab in the same profile.
func (p *tab) another(s screen) *tab {
	p.t.Helper()
	id := chromedp.FromContext(p.ctx).BrowserContextID
	ctx, _ := chromedp.NewContext(browser, chromedp.WithExistingBrowserContext(id))
	return prepare(p.t, ctx, s)
}

func prepare(t *testing.T, ctx context.Context, s screen) *tab {
	t.Helper()
	p := &tab{t: t, ctx: ctx}
	t.Cleanup(func() {
		p.mu.Lock()
		for _, problem := range p.problems {
			t.Error(problem)
		}
		p.mu.Unlock()
		if ctx.Err() == nil {
			_ = chromedp.Cancel(ctx) // the tab goes with the browser at the latest
		}
	})
	if err := chromedp.Listen(ctx, p.watch); err != nil {
		t.Fatal(err)
	}
	if _, err := chromedp.Call(ctx, audits.Enable, cdp.Empty{}); err != nil {
		t.Fatal(err)
	}
	p.show(s)
	return p
}

// show puts the page on a screen.
func (p *tab) show(s screen) {
	p.t.Helper()
	options := []chromedp.EmulateViewportOption{chromedp.EmulateScale(s.scale)}
	if s.touch {
		options = append(options, chromedp.EmulateMobile, chromedp.EmulateTouch)
	}
	p.do(chromedp.EmulateViewport(s.width, s.height, options...))
}

// watch notes what must not happen on any page.
func (p *tab) watch(event any) {
	switch e := event.(type) {
	case *runtime.EventConsoleAPICalled:
		if e.Type == runtime.ConsoleAPICalledTypeError {
			var words []string
			for _, arg := range e.Args {
				words = append(words, fmt.Sprint(arg.Description, string(arg.Value)))
			}
			p.note("console error: " + strings.Join(words, " "))
		}
	case *runtime.EventExceptionThrown:
		p.note("exception: " + e.ExceptionDetails.Text + " " + exceptionWords(e.ExceptionDetails))
	case *log.EventEntryAdded:
		if e.Entry.Level == log.EntryLevelError {
			p.note("browser error: " + e.Entry.Text + " " + e.Entry.URL)
		}
	case *audits.EventIssueAdded:
		if csp := e.Issue.Details.ContentSecurityPolicyIssueDetails; csp != nil {
			p.note("content security policy: " + csp.ViolatedDirective + " refuses " + csp.BlockedURL)
		}
	case *network.EventRequestWillBeSent:
		p.request(e.Request.URL)
	}
}

func (p *tab) request(address string) {
	u, err := url.Parse(address)
	if err != nil || u.Scheme == "data" || u.Scheme == "blob" || u.Scheme == "about" {
		return
	}
	p.mu.Lock()
	origin := p.origin
	p.mu.Unlock()
	if origin != "" && u.Scheme+"://"+u.Host != origin {
		p.note("request to another origin: " + address)
	}
}

func (p *tab) note(problem string) {
	p.mu.Lock()
	defer p.mu.Unlock()
	for _, part := range p.expected {
		if strings.Contains(problem, part) {
			p.met = append(p.met, problem)
			return
		}
	}
	p.problems = append(p.problems, problem)
}

// expect lets problems pass that hold part. Only for a test that causes them.
func (p *tab) expect(part string) {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.expected = append(p.expected, part)
}

// open goes to an address and waits until the program shows its page.
func (p *tab) open(address string) {
	p.t.Helper()
	p.visit(address)
	p.ready()
}

// visit goes to an address and waits for the document alone.
func (p *tab) visit(address string) {
	p.t.Helper()
	u, err := url.Parse(address)
	if err != nil {
		p.t.Fatal(err)
	}
	p.mu.Lock()
	p.origin = u.Scheme + "://" + u.Host
	p.mu.Unlock()
	if p.fox != nil {
		p.fox.navigate(address)
		return
	}
	p.do(chromedp.Navigate(address))
}

// reload loads the page again and waits until it is ready.
func (p *tab) reload() {
	p.t.Helper()
	if p.fox != nil {
		p.fox.navigate("")
	} else {
		p.do(chromedp.Reload())
	}
	p.ready()
}

// ready waits until the program has mounted its page.
func (p *tab) ready() {
	p.t.Helper()
	p.until(`document.documentElement.dataset.ready === "1"`)
}

// offlineReady waits until the worker has stored the whole site.
func (p *tab) offlineReady() {
	p.t.Helper()
	p.until(`(async () => {
		const r = await navigator.serviceWorker.getRegistration();
		return !!(r && r.active && r.active.state === "activated");
	})()`)
}

// until waits for a JavaScript condition, which may be a promise.
func (p *tab) until(condition string) {
	p.t.Helper()
	end := time.Now().Add(patience)
	for time.Now().Before(end) {
		// While a page changes there may be none to ask.
		if ok, err := evaluate[bool](p, condition); err == nil && ok {
			return
		}
		time.Sleep(10 * time.Millisecond)
	}
	p.t.Fatalf("waited in vain for %s", condition)
}

// do runs browser actions, which must succeed.
func (p *tab) do(steps ...chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	if err := chromedp.Do(p.ctx, steps...); err != nil {
		p.t.Fatal(err)
	}
}

// eval returns the value of a JavaScript expression, which may be a promise.
func eval[T any](p *tab, expression string) T {
	p.t.Helper()
	value, err := evaluate[T](p, expression)
	if err != nil {
		p.t.Fatalf("%s: %v", expression, err)
	}
	return value
}

func evaluate[T any](p *tab, expression string) (value T, err error) {
	if p.fox != nil {
		return value, p.fox.evaluate(expression, &value)
	}
	return chromedp.Run(p.ctx, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
}

// text is the text of the first element that matches a CSS selector.
func (p *tab) text(selector string) string {
	p.t.Helper()
	return eval[string](p, fmt.Sprintf("document.querySelector(%q).textContent", selector))
}

func exceptionWords(details *runtime.ExceptionDetails) string {
	if details.Exception == nil {
		return ""
	}
	return details.Exception.Description
}
