//go:build browser

package pagetest

import (
	"io"
	"net/http"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

func TestLoads(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"phone": phone, "desk": desk} {
		t.Run(name, func(t *testing.T) {
			p := openTab(t, s)
			p.open(h.url(""))
			if !eval[bool](p, `document.getElementById("app-wasm-loader") === null`) {
				t.Error("the loading strip is still there")
			}
			if width := eval[int](p, "innerWidth"); width != int(s.width) {
				t.Errorf("the page is %d wide, want %d", width, s.width)
			}
			p.axe()
			p.shot("load-" + name)
		})
	}
}

// The document itself holds the page, before any program has run.
func TestPrerendered(t *testing.T) {
	h := newHost(t, distDir, "/")
	response, err := http.Get(h.url(""))
	if err != nil {
		t.Fatal(err)
	}
	defer response.Body.Close()
	body, err := io.ReadAll(response.Body)
	if err != nil {
		t.Fatal(err)
	}
	_, page, _ := strings.Cut(string(body), "<body>")
	_, page, _ = strings.Cut(page, `</aside>`)
	page, _, _ = strings.Cut(page, `<aside id="app-stopped"`)
	if !strings.Contains(page, "<h1") {
		t.Errorf("no heading in the prerendered page:\n%s", page)
	}

	p := openTab(t, phone)
	if _, err := chromedp.Call(p.ctx, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true}); err != nil {
		t.Fatal(err)
	}
	p.visit(h.url(""))
	p.shot("before-the-program")
}

// While the program comes, the page is there and the strip shows how much of
// it has come, though it comes compressed.
func TestProgress(t *testing.T) {
	h := newHost(t, distDir, "/")
	h.half = make(chan struct{})
	p := openTab(t, phone)
	p.visit(h.url(""))
	bar := `document.getElementById("app-wasm-loader-bar")`
	p.until(bar + ".value > 0.2")
	for range 3 {
		if value := eval[float64](p, bar+".value"); value > 0.8 {
			t.Errorf("the strip shows %.2f while half has come", value)
		}
		p.frame()
	}
	if !eval[bool](p, `document.querySelector("#figure").getBoundingClientRect().height > 100`) {
		t.Error("the page is not to be seen while the program comes")
	}
	if height := eval[float64](p, bar+".getBoundingClientRect().height"); height < 2 || height > 12 {
		t.Errorf("the strip is %.0f high", height)
	}
	p.shot("while-loading")
	close(h.half)
	p.ready()
}

// The policy holds: neither an inline script nor an inline style has effect.
func TestPolicy(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, desk)
	p.expect("content security policy: ")
	p.expect("Content Security Policy")
	p.open(h.url(""))
	styled := eval[string](p, `(() => {
		const d = document.createElement("div");
		d.setAttribute("style", "width: 123px");
		document.querySelector("main").append(d);
		const s = document.createElement("script");
		s.textContent = "window.inlineRan = true";
		document.head.append(s);
		return getComputedStyle(d).width;
	})()`)
	if styled == "123px" {
		t.Error("an inline style had effect")
	}
	if eval[bool](p, "window.inlineRan === true") {
		t.Error("an inline script ran")
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	if len(p.met) == 0 {
		t.Error("the refusals were not noticed, so no test would notice others")
	}
}
