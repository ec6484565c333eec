//go:build browser

package pagetest

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/storage"
	"github.com/chromedp/chromedp"
)

// countPersist counts how often the page asks for its storage to stay.
const countPersist = `window.persists = 0;
	if (navigator.storage) StorageManager.prototype.persist = function () { window.persists++; return Promise.resolve(true); };`

// The page asks once that what is kept may stay, at the first change and not
// before. What the browser clears all the same is missed, and a file can be
// opened in its place.
func TestStorageIsCleared(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.beforeEachPage(countPersist)
	p.open(h.url(""))
	p.saved()
	if got := eval[int](p, "window.persists"); got != 0 {
		t.Errorf("asked %d times before anything was changed", got)
	}
	p.setHeight("13 ft 0 in")
	p.kept("13 ft 0 in")
	p.until("window.persists === 1")
	file := p.file()
	p.setHeight("12 ft 0 in")
	p.kept("12 ft 0 in")
	p.reload()
	p.setHeight("13 ft 0 in")
	p.kept("13 ft 0 in")
	if got := eval[int](p, "window.persists"); got != 0 {
		t.Errorf("asked again %d times on the next load", got)
	}

	p.visit("about:blank")
	if _, err := chromedp.Call(p.ctx, storage.ClearDataForOrigin, storage.ClearDataForOriginParams{
		Origin: strings.TrimSuffix(h.url(""), "/"), StorageTypes: "indexeddb"}); err != nil {
		t.Fatal(err)
	}
	p.open(h.url(""))
	p.until(toldSomething)
	if got := p.text("#told"); !strings.Contains(got, "cleared") {
		t.Errorf("of cleared storage is said %q", got)
	}
	p.shot("storage-cleared")
	name := filepath.Join(t.TempDir(), "walls.json")
	if err := os.WriteFile(name, file, 0o600); err != nil {
		t.Fatal(err)
	}
	eval[bool](p, `(HTMLInputElement.prototype.click = function () { window.chooses = this.id; }, true)`)
	p.tap("#told-0")
	p.until(`window.chooses === "import-file"`)
	p.do(chromedp.SetUploadFiles("#import-file", []string{name}))
	p.wantHeight("13 ft 0 in")
	p.kept("13 ft 0 in")
	p.reload()
	p.wantHeight("13 ft 0 in")
	p.saved()
	if eval[bool](p, toldSomething) {
		t.Errorf("after something was kept again: %q", p.text("#told"))
	}

	// Where everything is cleared nothing is left to know it by: it is a first
	// visit, and nothing is claimed.
	p.visit("about:blank")
	if _, err := chromedp.Call(p.ctx, storage.ClearDataForOrigin, storage.ClearDataForOriginParams{
		Origin: strings.TrimSuffix(h.url(""), "/"), StorageTypes: "all"}); err != nil {
		t.Fatal(err)
	}
	p.open(h.url(""))
	p.wantHeight("9 ft 0 in")
	p.saved()
	if eval[bool](p, toldSomething) {
		t.Errorf("where everything is cleared is said %q", p.text("#told"))
	}
}

// Everything that is kept can be erased, after a question. The calculator
// stays, and works without its host.
func TestErase(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.setHeight("13 ft 0 in")
	p.kept("13 ft 0 in")
	p.offlineReady()
	p.press("#fold-about")
	p.axe()
	p.press("#erase")
	p.shot("erase")
	p.wantHeight("13 ft 0 in")
	p.tap("#told-1")
	p.wantHeight("9 ft 0 in") // the example
	p.ready()
	left := eval[[]string](p, `(async () => {
		const left = Object.keys(localStorage);
		for (const { name } of await indexedDB.databases()) {
			const opened = indexedDB.open(name);
			const db = await new Promise((done) => opened.onsuccess = () => done(opened.result));
			const asked = db.transaction("contents").objectStore("contents").getAllKeys();
			left.push(...await new Promise((done) => asked.onsuccess = () => done(asked.result)));
			db.close();
		}
		return left.filter((key) => key.includes("kept") || key.includes("unsaved"));
	})()`)
	if len(left) != 0 {
		t.Errorf("after erasing there is still %q", left)
	}
	if eval[bool](p, toldSomething) {
		t.Errorf("after erasing is said %q", p.text("#told"))
	}
	h.stop()
	p.reload()
	p.works()
}

// A browser finds nothing that would keep it from installing the page.
func TestInstallable(t *testing.T) {
	ctx, stop, err := startBrowser(filepath.Join(t.TempDir(), "profile"))
	if err != nil {
		t.Fatal(err)
	}
	defer stop()
	h := newHost(t, distDir, "/tools/x/")
	p := prepare(t, ctx, phone)
	p.open(h.url(""))
	p.offlineReady()
	p.reload()
	found, err := chromedp.Call(p.ctx, page.GetInstallabilityErrors, cdp.Empty{})
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range found.InstallabilityErrors {
		t.Errorf("not to be installed: %s %v", e.ErrorID, e.ErrorArguments)
	}
	manifest, err := chromedp.Call(p.ctx, page.GetAppManifest, page.GetAppManifestParams{})
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range manifest.Errors {
		t.Errorf("manifest: %s", e.Message)
	}
	for _, want := range []string{`"lang"`, `"description"`, `"id"`, `"scope"`, `"start_url"`, `"purpose": "maskable"`, `"purpose": "any"`, `"display": "standalone"`, `"theme_color"`, `"background_color"`} {
		if !strings.Contains(manifest.Data, want) {
			t.Errorf("the manifest lacks %s", want)
		}
	}
	if eval[bool](p, `document.getElementById("install-apple").checkVisibility()`) {
		t.Error("the hint for another browser is shown")
	}
	eval[bool](p, `(() => {
		const offer = new Event("beforeinstallprompt", {cancelable: true});
		offer.prompt = async () => { window.prompted = true; };
		return dispatchEvent(offer), true;
	})()`)
	p.until(`document.getElementById("install").checkVisibility()`)
	p.tap("#install")
	p.until("window.prompted === true && !document.getElementById('install').checkVisibility()")
}
