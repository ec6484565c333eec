//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// strike taps a key of the keypad where it stands.
func (p *tab) strike(keys ...string) {
	p.t.Helper()
	for _, key := range keys {
		p.until(fmt.Sprintf(`!!document.querySelector('.pad [data-key=%q]')`, key))
		p.tap(fmt.Sprintf(`.pad [data-key=%q]`, key))
		p.frame()
	}
}

func (p *tab) value(path string) string {
	p.t.Helper()
	return eval[string](p, fmt.Sprintf(`document.getElementById("f-%s").value`, path))
}

// A finger in a length opens the keypad and not the device's keys. It types
// feet, inches, sixteenths and metres, the picture follows, a mistake is said
// at the field, a keyboard types too, and the keys go when they are done with.
func TestKeypadTypes(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.tap(heightField)
	p.until(`!!document.querySelector(".pad:not([hidden])") && document.activeElement.inputMode === "none"`)
	p.strike("8")
	p.until(`document.getElementById("figure").textContent.includes("8 ft 0 in")`)
	p.strike("_ft_", "6", "!fractions", "_5/16")
	p.until(`document.getElementById("picture").textContent.includes("8 ft 6 5/16 in") || document.querySelector("#handle-height").getAttribute("aria-valuetext").includes("5/16")`)
	p.strike("back", "back", "back", "back", "back", "_1/2", "!done")
	p.until(`!document.querySelector(".pad:not([hidden])")`)
	if got := p.value("height"); got != "8 ft 6 1/2 in" {
		t.Errorf("the field shows %q", got)
	}
	p.tap(heightField)
	p.strike("9", "9", "_ft_")
	p.until(`document.getElementById("f-height-problem").textContent.includes("20 ft")`)
	p.strike("back", "back", "back", "back", "back", "back", "3", "!fractions", "_m", "!next")
	p.until(`document.activeElement.id === "f-grade.a"`)
	p.until(`document.getElementById("f-height").value.startsWith("9 ft 10")`)
	p.keys("7 ft")
	p.keys(kb.Enter)
	p.until(`document.getElementById("f-grade.a").value === "7 ft 0 in" && !document.querySelector(".pad:not([hidden])")`)
	p.tap(heightField)
	p.until(`!!document.querySelector(".pad:not([hidden])")`)
	p.keys(kb.Escape)
	p.until(`!document.querySelector(".pad:not([hidden])")`)
}

// The device's own keys can be had instead, which is kept, and the page's come
// back. A name is typed with the device's keys anyhow; a mouse gets no keypad.
func TestKeypadOrDevice(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.tap(heightField)
	p.strike("!fractions", "!device")
	p.until(`document.activeElement.id === "f-height" && document.activeElement.inputMode === "decimal"`)
	p.reload()
	p.tap(heightField)
	p.until(`document.activeElement.inputMode === "decimal"`)
	p.strike("!own")
	p.until(`document.activeElement.inputMode === "none" && !!document.querySelector(".pad-digits")`)
	p.strike("!done")
	eval[bool](p, `(document.getElementById("walls").click(), true)`)
	p.until(`!!document.getElementById("f-name")`)
	if mode := eval[string](p, `document.getElementById("f-name").inputMode`); mode != "" {
		t.Errorf("a name is typed with %s", mode)
	}
	p.tap("#f-name")
	p.quiet()
	if eval[bool](p, `!!document.querySelector(".pad:not([hidden]), .padded")`) {
		t.Error("a name opens the keypad")
	}
	m := openTab(t, desk)
	m.open(h.url(""))
	m.click(heightField)
	m.frame()
	if eval[bool](m, `!!document.querySelector(".pad:not([hidden])")`) {
		t.Error("a mouse opens the keypad")
	}
}

// The keypad never lies over its field or what is wrong with it, nor over the
// picture, and its keys are large and named: on a phone upright and turned, a
// small one, for every field.
func TestKeypadNeverHidesItsField(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"390": phone, "320": {320, 568, 2, true}, "turned": turned} {
		p := openTab(t, s)
		p.open(h.url(""))
		p.choose("free top")
		p.unfold("push", "hold", "today", "carry")
		paths := eval[[]string](p, `[...document.querySelectorAll("#tool .entry[inputmode=none]")].map((e) => e.dataset.path)`)
		if len(paths) < 8 {
			t.Fatalf("%s: only %v", name, paths)
		}
		for _, path := range paths {
			for _, text := range []string{"", "999"} {
				eval[bool](p, fmt.Sprintf(`(document.getElementById("f-%s").focus(), true)`, path))
				p.until(fmt.Sprintf(`!!document.querySelector('[data-row="%s"] .pad:not([hidden])')`, path))
				if text != "" {
					p.keys(text)
				}
				p.quiet()
				if wrong := eval[[]string](p, fmt.Sprintf(`(() => {
					const box = (e) => e.getBoundingClientRect(), row = document.querySelector('[data-row="%s"]'), out = [];
					const pad = box(row.querySelector(".pad")), entry = box(row.querySelector(".entry")), sight = box(document.getElementById("figure"));
					const clash = (a, b) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1;
					if (clash(pad, entry) || clash(sight, entry) || entry.top < 0 || entry.bottom > innerHeight) out.push("hidden: " + JSON.stringify([pad.top, entry.top, entry.bottom, sight.bottom]));
					const problem = row.querySelector(".row-problem:not([hidden])");
					if (problem && (clash(pad, box(problem)) || clash(sight, entry))) out.push("the problem is hidden");
					if (clash(pad, sight)) out.push("over the picture " + sight.bottom + " " + pad.top);
					if (sight.bottom < 100) out.push("the picture is gone");
					for (const k of row.querySelectorAll(".key")) { const b = box(k);
						if (b.width < 55.9 || b.height < 55.9 || b.left < 0 || b.right > innerWidth || b.bottom > innerHeight) out.push(k.textContent + " " + b.width + "×" + b.height);
						if (!(k.getAttribute("aria-label") || k.textContent).trim()) out.push("a key has no name"); }
					return out;
				})()`, path)); len(wrong) > 0 {
					t.Errorf("%s, %s %q: %s", name, path, text, strings.Join(wrong, "; "))
				}
			}
			eval[bool](p, `(document.activeElement.blur(), true)`)
			eval[bool](p, fmt.Sprintf(`(() => { const f = document.getElementById("f-%s"); f.focus(); return true; })()`, path))
			p.keys("1")
			eval[bool](p, `(document.activeElement.blur(), true)`)
			p.quiet()
		}
		eval[bool](p, `(document.querySelector("#f-height").focus(), true)`)
		p.until(`!!document.querySelector('[data-row="height"] .pad:not([hidden])')`)
		p.quiet()
		p.gripped("keypad " + name)
		p.shot("keypad-" + name)
		eval[bool](p, `(document.querySelector('[data-key="!fractions"]').click(), true)`)
		p.until(`!!document.querySelector(".pad-fractions")`)
		p.quiet()
		p.shot("keypad-sixteenths-" + name)
		p.axe()
	}
}
