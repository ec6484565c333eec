//go:build browser

package pagetest

import (
	"path/filepath"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// What is typed is there again, even when the page goes in the same moment.
func TestKeptOverReload(t *testing.T) {
	h := newHost(t, distDir, "/tools/x/")
	p := openTab(t, phone)
	p.open(h.url(""))
	for _, height := range []string{"13 ft 0 in", "12 ft 6 in", "15 ft 0 in"} {
		p.setHeight(height)
		p.reload()
		p.wantHeight(height)
	}
	q := p.another(phone)
	q.open(h.url("?other"))
	q.wantHeight("15 ft 0 in")
}

// kept waits until the device has stored a text that was typed.
func (p *tab) kept(text string) {
	p.t.Helper()
	p.until(`(async () => {
		const folder = location.pathname.replace(/[^/]*$/, "");
		const opened = indexedDB.open("standing-beam " + folder);
		const db = await new Promise((done, failed) => { opened.onsuccess = () => done(opened.result); opened.onerror = failed; });
		const asked = db.transaction("contents").objectStore("contents").get("page.kept");
		const bytes = await new Promise((done, failed) => { asked.onsuccess = () => done(asked.result); asked.onerror = failed; });
		db.close();
		return bytes !== undefined && new TextDecoder().decode(bytes).includes(` + "`" + text + "`" + `);
	})()`)
}

// A browser that is killed has kept what was typed, and so for a page that is
// served from another folder of the same origin, which has its own.
func TestKeptOverKill(t *testing.T) {
	h := newHost(t, distDir, "/a/")
	profile := filepath.Join(t.TempDir(), "profile")
	first, stop, err := startBrowser(profile)
	if err != nil {
		t.Fatal(err)
	}
	p := prepare(t, first, phone)
	p.open(h.url(""))
	p.setHeight("13 ft 0 in")
	p.kept("13 ft 0 in")
	p.offlineReady()
	process := chromedp.FromContext(first).Browser.Process()
	if process == nil {
		t.Fatal("the browser has no process to kill")
	}
	if err := process.Kill(); err != nil {
		t.Fatal(err)
	}
	stop()

	h.stop()
	second, stop, err := startBrowser(profile)
	if err != nil {
		t.Fatal(err)
	}
	defer stop()
	p = prepare(t, second, phone)
	p.open(h.url(""))
	p.wantHeight("13 ft 0 in")
}

// Two tabs with the same walls: the second to change them is told, neither
// mixes with the other, and the page goes on.
func TestKeptInTwoTabs(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.setHeight("13 ft 0 in")
	p.kept("13 ft 0 in")
	q := p.another(phone)
	q.open(h.url(""))
	q.wantHeight("13 ft 0 in")
	p.setHeight("14 ft 0 in")
	p.kept("14 ft 0 in")
	q.setHeight("15 ft 0 in")
	q.until(toldSomething)
	q.wantHeight("15 ft 0 in")
	p.reload()
	p.wantHeight("14 ft 0 in")
	q.reload()
	q.wantHeight("14 ft 0 in")
	q.setHeight("16 ft 0 in")
	q.kept("16 ft 0 in")
	p.reload()
	p.wantHeight("16 ft 0 in")
}

// Who is told that another tab has kept something else can have that shown, or
// keep what is here; both go on from there.
func TestKeptByTheOtherTab(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.setHeight("13 ft 0 in")
	p.kept("13 ft 0 in")
	q := p.another(phone)
	q.open(h.url(""))
	for _, test := range []struct{ button, says, theirs, here, then string }{
		{"#told-0", "Show theirs", "14 ft 0 in", "14 ft 0 in", "16 ft 0 in"},
		{"#told-1", "Keep mine", "12 ft 0 in", "15 ft 0 in", "17 ft 0 in"},
	} {
		p.setHeight(test.theirs)
		p.kept(test.theirs)
		q.setHeight("15 ft 0 in")
		q.until(toldSomething)
		if got := q.text(test.button); got != test.says {
			t.Fatalf("the button says %q, want %q", got, test.says)
		}
		q.tap(test.button)
		q.wantHeight(test.here)
		q.until("!(" + toldSomething + ")")
		q.kept(test.here)
		q.setHeight(test.then)
		q.kept(test.then)
		if eval[bool](q, toldSomething) {
			t.Errorf("after %q is said %q", test.says, q.text("#told"))
		}
		p.reload()
		p.wantHeight(test.then)
	}
}

// Where storage is refused or full, the page works and says so.
func TestKeptNowhere(t *testing.T) {
	h := newHost(t, distDir, "/")
	t.Run("refused", func(t *testing.T) {
		p := openTab(t, phone)
		p.beforeEachPage(`for (const name of ["indexedDB", "localStorage", "sessionStorage"]) {
			Object.defineProperty(window, name, {configurable: true, get() { throw new DOMException("refused", "SecurityError"); }});
		}`)
		p.open(h.url(""))
		p.works()
		p.until(toldSomething)
		p.shot("storage-refused")
		p.axeInAll("storage refused")
	})
	t.Run("full", func(t *testing.T) {
		p := openTab(t, phone)
		p.open(h.url(""))
		p.setHeight("13 ft 0 in")
		p.kept("13 ft 0 in")
		eval[bool](p, `(() => {
			const put = IDBObjectStore.prototype.put;
			IDBObjectStore.prototype.put = function(...args) {
				if (window.full) { throw new DOMException("no room", "QuotaExceededError"); }
				return put.apply(this, args);
			};
			return window.full = true;
		})()`)
		p.setHeight("14 ft 0 in")
		p.until(toldSomething)
		p.works()
		p.shot("storage-full")
		p.axeInAll("storage full")
		eval[bool](p, "(window.full = false) === false")
		p.setHeight("12 ft 0 in")
		p.kept("12 ft 0 in")
	})
}

// beforeEachPage runs a script before those of every page to come.
func (p *tab) beforeEachPage(script string) {
	p.t.Helper()
	_, err := chromedp.Call(p.ctx, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: script})
	if err != nil {
		p.t.Fatal(err)
	}
}
