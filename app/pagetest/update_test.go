//go:build browser

package pagetest

import (
	"maps"
	"testing"
)

// update has the page look for a new version and waits until it is told that
// there is one.
func (p *tab) update() {
	p.t.Helper()
	eval[bool](p, `(() => {
		window.updateTold = false;
		const told = window.goappOnUpdate;
		window.goappOnUpdate = (...a) => { window.updateTold = true; return told(...a); };
		goappTryUpdate();
		return true;
	})()`)
	p.until("window.updateTold")
}

// An update shows the old version whole until the page is loaded again, then
// the new one whole, even when the host lets browsers keep old files.
func TestUpdate(t *testing.T) {
	first, second := variant(t, "first"), variant(t, "second")
	h := newHost(t, first, "/tools/x/")
	h.storable("max-age=600")
	p := openTab(t, phone)
	p.open(h.url("?from=link"))
	p.offlineReady()
	p.reload()
	p.setHeight("13 ft 0 in")
	h.serve(second)
	p.update()

	p.wantHeight("13 ft 0 in")
	if got, want := p.version(), versionIn(t, first); got != want {
		t.Errorf("before the reload the page is of version %s, want the old %s", got, want)
	}
	// What the old page still asks for is of its own version.
	for _, file := range []string{"start.js", "web/app.css", "web/app.wasm"} {
		got := eval[bool](p, `fetch("`+file+`?v=`+versionIn(t, first)+`").then((r) => r.text()).then((text) => text.includes("`+markOf("first")+`"))`)
		if !got {
			t.Errorf("%s for the old page is not of its version", file)
		}
	}
	old := p.versions()
	for name, files := range old {
		if name != "standing-beam /tools/x/ "+versionIn(t, first) && name != "standing-beam /tools/x/ "+versionIn(t, second) {
			t.Errorf("a strange cache %q", name)
		}
		if !maps.Equal(files, sums(t, first)) && !maps.Equal(files, sums(t, second)) {
			t.Errorf("cache %q mixes versions", name)
		}
	}
	if len(old) != 2 {
		t.Errorf("caches %v, want the old and the new", old)
	}

	p.reload()
	if got, want := p.version(), versionIn(t, second); got != want {
		t.Errorf("after the reload the page is of version %s, want the new %s", got, want)
	}
	p.wantHeight("13 ft 0 in")
	p.sameSite(second)
	h.stop()
	p.reload()
	p.sameSite(second)
	p.works()
}

func (p *tab) version() string {
	p.t.Helper()
	return eval[string](p, "document.documentElement.dataset.version")
}

// While a host is being changed, a browser may meet some files of each
// version. The worker then keeps the old one whole.
func TestHalfChangedHost(t *testing.T) {
	first, second := variant(t, "first"), variant(t, "second")
	h := newHost(t, first, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.offlineReady()
	p.reload()

	h.serve(second)
	h.serveOld(first, "/web/app.wasm")
	failed := eval[bool](p, `(async () => {
		const r = await navigator.serviceWorker.getRegistration();
		await r.update();
		const next = r.installing;
		if (!next) { return r.active.state === "activated"; }
		return await new Promise((done) => next.addEventListener("statechange", () => {
			if (next.state === "redundant") { done(true); }
			if (next.state === "installed") { done(false); }
		}));
	})()`)
	if !failed {
		t.Error("a worker was installed from files of two versions")
	}
	p.sameSite(first)
	h.stop()
	p.reload()
	if got, want := p.version(), versionIn(t, first); got != want {
		t.Errorf("version %s, want the old %s", got, want)
	}

	h.start()
	h.serveOld("", "")
	p.update()
	p.reload()
	if got, want := p.version(), versionIn(t, second); got != want {
		t.Errorf("after the reload the page is of version %s, want the new %s", got, want)
	}
	p.sameSite(second)
}

// A first visit is no update, and neither is the next load: nobody is told.
func TestFirstVisitIsNoUpdate(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	for range 2 {
		p.offlineReady()
		// Long enough for the page to have been told, were it told.
		eval[bool](p, `caches.keys().then(() => new Promise((done) => setTimeout(done, 300, true)))`)
		if eval[bool](p, toldSomething) {
			t.Errorf("told: %s", p.text("#told"))
		}
		p.reload()
	}
}

// When one tab takes the new version, another that shows the old one goes on
// with what it has and is told.
func TestUpdateInTwoTabs(t *testing.T) {
	first, second := variant(t, "first"), variant(t, "second")
	h := newHost(t, first, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.offlineReady()
	p.reload()
	q := p.another(phone)
	q.open(h.url(""))
	q.setHeight("17 ft 0 in")
	h.serve(second)
	p.update()
	p.reload()
	if got, want := p.version(), versionIn(t, second); got != want {
		t.Errorf("after the reload the page is of version %s, want the new %s", got, want)
	}
	if got, want := q.version(), versionIn(t, first); got != want {
		t.Errorf("the other tab was changed to version %s", got)
	}
	q.wantHeight("17 ft 0 in")
	q.reload()
	if got, want := q.version(), versionIn(t, second); got != want {
		t.Errorf("after a reload the other tab has version %s, want %s", got, want)
	}
}
