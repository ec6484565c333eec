//go:build browser

package pagetest

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// look is a way for the page to look, and how it comes to it.
type look struct {
	name   string
	media  []string // of the device
	chosen string   // on the page
}

var looks = []look{
	{"light", []string{"prefers-color-scheme", "light"}, ""},
	{"dark", []string{"prefers-color-scheme", "dark"}, ""},
	{"glare", []string{"prefers-color-scheme", "dark"}, "glare"},
	{"more contrast", []string{"prefers-contrast", "more"}, ""},
	{"light in Spanish", []string{"prefers-color-scheme", "light"}, ""},
}

// openIn opens the page in a look.
func openIn(t *testing.T, s screen, address string, l look) *tab {
	t.Helper()
	p := openTab(t, s)
	p.media(l.media...)
	p.open(address)
	p.speakAsNamed(l.name)
	if l.chosen != "" {
		p.theme(l.chosen)
	}
	return p
}

// theme chooses light, dark, glare or device at the foot of the page.
func (p *tab) theme(name string) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf(`(document.querySelector('input[name=theme][value=%s]').click(), true)`, name))
	p.quiet()
}

// Axe finds nothing, in any look, on a phone and a desk, in any condition, with
// everything open, and in the lessons.
func TestAccessible(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"phone": phone, "desk": desk} {
		for _, l := range looks {
			t.Run(name+" "+l.name, func(t *testing.T) {
				p := openIn(t, s, h.url(""), l)
				for _, condition := range fourConditions {
					p.choose(condition)
					p.axe()
				}
				p.openAll()
				p.typeInto(heightField, "25 ft")
				p.quiet()
				p.axe()
				p.goTo("why/height")
				p.axe()
			})
		}
	}
}

// probe measures, on what is drawn, the contrast of every text, and of the
// lines and edges that are asked for: (all) => {text: [...], lines: [...]},
// each with those that are too weak.
const probe = `((all) => {
	const parse = (c) => { const v = (c.match(/[\d.]+/g) || [0, 0, 0, 0]).map(Number); if (/^color\(srgb/.test(c)) for (let i = 0; i < 3; i++) v[i] *= 255; return [v[0], v[1], v[2], v.length > 3 ? v[3] : 1]; };
	const over = (a, b, k) => a.slice(0, 3).map((x, i) => x * a[3] * k + b[i] * (1 - a[3] * k));
	const light = (c) => { const v = c.slice(0, 3).map((x) => { x /= 255; return x <= .03928 ? x / 12.92 : ((x + .055) / 1.055) ** 2.4; }); return .2126 * v[0] + .7152 * v[1] + .0722 * v[2]; };
	const ratio = (a, b) => { const x = light(a), y = light(b); return (Math.max(x, y) + .05) / (Math.min(x, y) + .05); };
	const ground = (e) => { for (; e; e = e.parentElement) { const c = parse(getComputedStyle(e).backgroundColor); if (c[3] === 1) return c; } return [255, 255, 255, 1]; };
	const text = new Set(), lines = new Set();
	const control = "button, input, select, .card-face, .pick span, .top-unit, .why-choice, .plain, .key, .step";
	const meaning = ".p-edged, .p-curve, .p-edge, .p-bar, .p-shaft, .p-dimension, .p-surface, .p-until, .p-level, .p-wave, .p-grip, .p-wood, .p-plane, .p-peak";
	const say = (set, e, r, what) => set.add((e.getAttribute("class") || e.id || e.tagName) + " " + what + " " + r.toFixed(2));
	for (const e of document.querySelectorAll("#front *")) {
		if (e.closest(".unseen, #sheet, defs, clipPath, pattern, [disabled]") || !e.checkVisibility({opacityProperty: true})) continue;
		const s = getComputedStyle(e), has = [...e.childNodes].some((n) => n.nodeType === 3 && n.textContent.trim());
		if (e instanceof SVGElement) {
			const paper = ground(e.parentElement);
			if (e.matches("text, tspan")) {
				const r = ratio(over(parse(s.fill), paper, Number(s.fillOpacity)), s.stroke === "none" ? paper : parse(s.stroke));
				if (has && r < 7) say(text, e, r, e.textContent);
			} else if (s.stroke !== "none" && e.matches("path, line, rect, circle, ellipse, polyline, polygon") && (all || e.matches(meaning))) {
				const c = parse(s.stroke), r = ratio(over(c, paper, Number(s.strokeOpacity)), paper), halo = ratio(c, paper) < 1.1;
				if (r < 3 && !halo) say(lines, e, r, "stroke");
			}
			continue;
		}
		const at = ground(e);
		if (has && ratio(over(parse(s.color), at, 1), at) < 7) say(text, e, ratio(parse(s.color), at), e.textContent.slice(0, 30));
		if (e.placeholder) { const c = parse(getComputedStyle(e, "::placeholder").color); if (ratio(c, at) < 7) say(text, e, ratio(c, at), "placeholder"); }
		if (!all && !e.matches(control)) continue;
		for (const side of ["Top", "Right", "Bottom", "Left"]) {
			const c = parse(s["border" + side + "Color"]);
			if (parseFloat(s["border" + side + "Width"]) === 0 || c[3] === 0) continue;
			const r = Math.max(ratio(over(c, at, 1), at), ratio(over(c, ground(e.parentElement), 1), ground(e.parentElement)));
			if (r < 3) say(lines, e, r, "border " + side);
		}
	}
	return {Text: [...text], Lines: [...lines]};
})`

// strength fails for every text and line that is too weak: in glare every line
// counts, else the edges of controls and the lines of the picture that mean
// something.
func (p *tab) strength(what string, l look) {
	p.t.Helper()
	all := l.chosen == "glare" || slices.Contains(l.media, "more")
	weak := eval[struct{ Text, Lines []string }](p, fmt.Sprintf("%s(%t)", probe, all))
	if len(weak.Text)+len(weak.Lines) > 0 {
		p.t.Errorf("%s, %s: text %s; lines %s", l.name, what, strings.Join(weak.Text, " | "), strings.Join(weak.Lines, " | "))
	}
}

// The contrast of text is at least 7 to 1 and of lines 3 to 1, measured on what
// is drawn: every condition, every part of the page, a faulty field, kept
// walls, a working, and the lessons.
func TestContrast(t *testing.T) {
	h := newHost(t, distDir, "/")
	for _, l := range looks {
		p := openIn(t, phone, h.url(""), l)
		for _, condition := range fourConditions {
			p.choose(condition)
			p.strength(condition, l)
		}
		p.openAll()
		p.typeInto(heightField, "25 ft")
		p.quiet()
		p.strength("everything open", l)
		for _, at := range lessonAddresses {
			p.goTo(at)
			p.strength(at, l)
		}
	}
}

// A look is kept with the settings, holds in the lessons, and glare is what a
// device gets that asks for more contrast, until something else is chosen.
func TestThemeIsKept(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	paper := func() string { return eval[string](p, `getComputedStyle(document.body).backgroundColor`) }
	own := paper()
	for _, test := range []struct{ name, want string }{{"glare", "rgb(255, 255, 255)"}, {"dark", "rgb(20, 19, 15)"}, {"light", own}, {"device", own}} {
		name, want := test.name, test.want
		p.theme(name)
		p.goTo("why/height")
		if got := paper(); got != want {
			t.Errorf("%s: the lesson stands on %s, not %s", name, got, want)
		}
		eval[bool](p, `(location.hash = "", true)`)
		p.reload()
		p.until(fmt.Sprintf(`getComputedStyle(document.body).backgroundColor === %q`, want))
	}
	p.media("prefers-contrast", "more")
	p.until(`getComputedStyle(document.body).backgroundColor === "rgb(255, 255, 255)"`)
	p.theme("dark")
	p.until(`getComputedStyle(document.body).backgroundColor === "rgb(20, 19, 15)"`)
}

// Where the device has colors of its own, a state still has its word and its
// shape, and what is chosen its edge.
func TestForcedColors(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.media("forced-colors", "active")
	p.open(h.url(""))
	p.theme("glare")
	p.shot("forced-phone")
	if flat := eval[[]string](p, `[...document.querySelectorAll(".card input:checked + .card-face, .pick input:checked + span, .top-unit.on")]
		.filter((e) => e.checkVisibility() && getComputedStyle(e).outlineStyle === "none").map((e) => e.textContent)`); len(flat) > 0 {
		t.Errorf("nothing but a color says that these are chosen: %s", strings.Join(flat, "; "))
	}
	if mute := eval[[]string](p, `[...document.querySelectorAll("[data-state]")].filter((e) => e.checkVisibility() && (!e.querySelector(".shape") || !e.querySelector(".mark, small")))
		.map((e) => e.className)`); len(mute) > 0 {
		t.Errorf("a state without a shape or a word: %s", strings.Join(mute, "; "))
	}
}
