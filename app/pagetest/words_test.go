//go:build browser

package pagetest

import (
	"fmt"
	"strings"
	"testing"
)

// wordFaults are the words of the page that cannot be read as they are written:
// an answer or a placeholder cut short in its field, a text that its box cuts
// off, a word broken in two without a hyphen, or one beyond the screen's edge.
const wordFaults = `(() => {
	const pen = document.createElement("canvas").getContext("2d"), found = [];
	const wide = (text, style) => { pen.font = style.font; pen.letterSpacing = style.letterSpacing; return pen.measureText(text).width; };
	for (const e of document.querySelectorAll("input.entry, select.entry")) {
		if (!e.checkVisibility() || e.matches(".typing *")) continue;
		const style = getComputedStyle(e), room = e.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) + .5;
		if (e.tagName === "INPUT") {
			if (wide(e.value || e.placeholder, e.value ? style : getComputedStyle(e, "::placeholder")) > room) found.push("cut short: " + (e.value || e.placeholder));
			continue;
		}
		const copy = document.createElement("div");
		Object.assign(copy.style, {position: "absolute", width: room + "px", font: style.font, letterSpacing: style.letterSpacing, whiteSpace: style.whiteSpace, overflowWrap: "normal"});
		e.parentElement.append(copy);
		for (const o of e.options) {
			copy.textContent = o.text;
			if (copy.scrollWidth > copy.clientWidth + 1 || o.selected && copy.clientHeight > e.clientHeight) found.push("cut short: " + o.text);
		}
		copy.remove();
	}
	const narrow = innerWidth < 350 ? ".scroll" : "none"; // a table of five columns is moved by a finger there
	const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT), range = document.createRange();
	for (let n; (n = texts.nextNode());) {
		const e = n.parentElement;
		if (n.data.trim() === "" || e.closest("math, svg, select, script, style, noscript, .unseen") || !e.checkVisibility({visibilityProperty: true})) continue;
		for (const word of n.data.matchAll(/[\p{L}\p{N}\u00ad]+/gu)) {
			range.setStart(n, word.index);
			range.setEnd(n, word.index + word[0].length);
			const lines = new Set([...range.getClientRects()].map((r) => Math.round(r.top)));
			if (lines.size > 1 && !word[0].includes("\u00ad")) found.push("broken: " + word[0]);
			const r = range.getBoundingClientRect();
			if ((r.left < -1 || r.right > innerWidth + 1) && !e.closest(narrow)) found.push("beyond the edge: " + word[0]);
			for (let box = e; !e.closest(narrow) && box && box !== document.body; box = box.parentElement) {
				if (getComputedStyle(box).overflowX === "visible") continue;
				const b = box.getBoundingClientRect();
				if (r.right > b.right + 1 || r.left < b.left - 1) found.push("cut off: " + word[0] + " in " + (box.id || box.className));
				break;
			}
		}
	}
	return [...new Set(found)];
})()`

// Every word can be read as it is written, in both languages, at the four
// sizes: on the page with all that opens and whatever is chosen, and in every
// lesson.
func TestWordsAreWhole(t *testing.T) {
	h := newHost(t, distDir, "/")
	for name, s := range map[string]screen{"390": phone, "320": {320, 568, 2, true}, "turned": turned, "1280": desk} {
		for _, language := range []string{"en", "es"} {
			t.Run(name+" "+language, func(t *testing.T) {
				p := openTab(t, s)
				p.open(h.url(""))
				p.speak(language)
				read := func(what string) {
					t.Helper()
					if wrong := eval[[]string](p, wordFaults); len(wrong) > 0 {
						t.Errorf("%s: %s", what, strings.Join(wrong, "; "))
					}
				}
				p.openAll()
				p.unfold("about")
				for _, condition := range fourConditions {
					p.choose(condition)
					read(condition)
				}
				for _, value := range []string{"equivalent fluid", "friction angle"} {
					p.pick("#f-soil", value)
					p.quiet()
					read(fmt.Sprintf("the soil %q", value))
				}
				for _, at := range lessonAddresses {
					p.goTo(at)
					eval[bool](p, `(document.getElementById("why-show")?.click(), true)`)
					p.frame()
					read(at)
				}
			})
		}
	}
}
