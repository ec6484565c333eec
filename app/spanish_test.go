package main

import (
	"bytes"
	"html"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"standingbeam/app/entry"
	"standingbeam/app/formula"
	"standingbeam/app/lesson"
	"standingbeam/app/report"
	"standingbeam/app/sheet"
	"standingbeam/app/view"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// What is said in Spanish is made of the words of its file alone. Whatever
// else stands on a page or a paper was written into the program in English.

var inSpanish = words.Speaker{Lang: "es"}

// letters are words of more than one letter.
var letters = regexp.MustCompile(`\p{L}[\p{L}]+`)

// vocabulary is every word of the Spanish file and every symbol, in small
// letters.
func vocabulary(t *testing.T) map[string]bool {
	t.Helper()
	text, err := os.ReadFile("words/es.txt")
	if err != nil {
		t.Fatal(err)
	}
	known := map[string]bool{}
	for line := range strings.Lines(string(text)) {
		if id, words, ok := strings.Cut(line, " = "); ok {
			if symbol, ok := strings.CutPrefix(id, "symbol."); ok && !strings.HasPrefix(symbol, "part.") {
				letter, below := formula.Letters(symbol)
				words += " " + symbol + " " + letter + " " + below + " " + strings.ReplaceAll(symbol, "l", "ℓ")
			}
			for _, w := range letters.FindAllString(words, -1) {
				known[strings.ToLower(w)] = true
			}
		}
	}
	for _, w := range allowed {
		known[w] = true
	}
	return known
}

// allowed are the words of no language: units and symbols, the books and their
// parts, names of languages, and what the walls of these tests are called.
var allowed = strings.Fields(`
	lb ft in mm cm kn kpa mpa psi ksi psf pcf plf sq deg rad ft² in² in³ in⁴ kip kips lbf
	aci asce ibc irc astm table section chapter eq fig
	standing beam svg dxf pdf json español ht fl fh va
`)

// onlySpanish fails for words that the file does not have.
func onlySpanish(t *testing.T, name string, known map[string]bool, texts ...string) {
	t.Helper()
	strange := map[string]string{}
	for _, text := range texts {
		for _, w := range letters.FindAllString(text, -1) {
			w = strings.ToLower(w)
			_, letter := utf8.DecodeRuneInString(w)
			if !known[w] && !known[w[letter:]] && strange[w] == "" { // a letter with a word below it: Wmuro
				strange[w] = strings.TrimSpace(text)
			}
		}
	}
	for w, text := range strange {
		t.Errorf("%s: %q in %.160q", name, w, text)
	}
}

var (
	tags      = regexp.MustCompile(`<[^>]*>`)
	spoken    = regexp.MustCompile(`(?:aria-label|placeholder|title|alt)="([^"]*)"`)
	notSpoken = regexp.MustCompile(`(?s)<(style|defs|annotation|option [^>]*lang="en")[^>]*>.*?</(style|defs|annotation|option)>|<math.*?</math>`)
)

// spokenIn are the texts of a document, those read aloud among them.
func spokenIn(markup string) []string {
	markup = notSpoken.ReplaceAllString(markup, " ")
	out := strings.Split(tags.ReplaceAllString(markup, "\n"), "\n")
	for _, m := range spoken.FindAllStringSubmatch(markup, -1) {
		out = append(out, m[1])
	}
	for i := range out {
		out[i] = html.UnescapeString(out[i])
	}
	return out
}

// conditions and what makes the program speak of more: water, an unknown soil,
// bars of one's own, no number at all, fields that cannot be read.
func spanishWalls() map[string]wallfile.Wall {
	out := map[string]wallfile.Wall{}
	for _, condition := range []string{"braced top", "free top", "tied to slab", "soil both sides"} {
		for variant, fields := range map[string][]string{
			"": nil, "wet": {"water", "4 ft", "surcharge.live", "100 psf"}, "unknown": {"soil.by", "unknown", "swells", "no"},
			"swelling": {"soil.by", "unknown", "swells", "yes"}, "bars": {"bars.vertical.size", "4", "bars.vertical.spacing", "18 in", "bars.vertical.face", "a"},
			"engineered": {"rulebook", "engineered", "floor edge", "2000 lb/ft", "today.floor", "yes", "today.slab", "yes"},
			"tall":       {"height", "20 ft", "grade.a", "20 ft", "axial.dead", "2000 lb/ft", "axial.live", "500 lb/ft", "seismic category", "D2"},
			"low":        {"height", "3 ft", "grade.a", "2 ft"}, "thin": {"thickness", "6 in", "footing.width", ""},
		} {
			w := view.Example()
			w.Set("name", "Muro")
			view.Choose(&w, "condition", condition)
			for i := 0; i < len(fields); i += 2 {
				w.Set(fields[i], fields[i+1])
			}
			out[condition+" "+variant] = w
		}
	}
	return out
}

func TestPageIsSpanish(t *testing.T) {
	known := vocabulary(t)
	for name, w := range spanishWalls() {
		p := firstPage()
		p.speaker.Lang = "es"
		p.walls[0].wall = w
		for _, id := range []string{"walls", "more", "push", "hold", "today", "carry", "rest", "compared", "idle", "about"} {
			p.open[id] = true
		}
		onlySpanish(t, name, known, spokenIn(app.HTMLString(p))...)
		if !strings.HasSuffix(name, " ") && !strings.HasSuffix(name, "wet") {
			continue // the workings of these say it all
		}
		for _, c := range slices.Concat(p.seen.Checks, p.seen.Compared) {
			p.check = c.Key
			onlySpanish(t, name+", "+c.Key, known, spokenIn(app.HTMLString(p))...)
		}
	}
}

func TestPapersAreSpanish(t *testing.T) {
	known := vocabulary(t)
	for name, w := range spanishWalls() {
		in, _ := w.Input(entry.Options{})
		r, err := calc.Explain(in)
		if err != nil {
			continue // refused: the page says why
		}
		for _, system := range []words.System{words.US, words.Metric} {
			o := sheet.Options{Speaker: words.Speaker{Lang: "es", System: system}, Paper: sheet.Letter}
			onlySpanish(t, name+", crew", known, spokenIn(sheet.Crew(r, o))...)
			onlySpanish(t, name+", calculation", known, spokenIn(sheet.Calculation(r, o))...)
			onlySpanish(t, name+", svg", known, spokenIn(sheet.SVG(r, o))...)
			var text bytes.Buffer
			if err := report.Text(&text, func(yield func(calc.Result) bool) { yield(r) }, o.Speaker); err != nil {
				t.Fatal(err)
			}
			onlySpanish(t, name+", text", known, strings.Split(text.String(), "\n")...)
		}
	}
}

func TestLessonsAreSpanish(t *testing.T) {
	known := vocabulary(t)
	l := &lessonPage{Front: &front{page: firstPage()}, Fragment: lesson.Root, Speaker: inSpanish, size: lessonPicture}
	l.form = lesson.Read(inSpanish, l.Fragment)
	onlySpanish(t, "the list", known, spokenIn(app.HTMLString(l))...)
	for _, card := range l.seen.Cards {
		for _, guess := range []int{0, 1, 2, 3} {
			l.Fragment = strings.TrimPrefix(card.Fragment, "#")
			l.form = lesson.Read(inSpanish, l.Fragment)
			l.form.Shown, l.form.Guess, l.form.Open, l.form.Cases = guess > 0, guess, true, [3]int{guess, guess, guess}
			onlySpanish(t, card.Title, known, spokenIn(app.HTMLString(l))...)
		}
	}
}

// What the starting script says before the program has come it says in every
// language.
func TestStartSpeaksEveryLanguage(t *testing.T) {
	script, err := os.ReadFile("../web/start.js")
	if err != nil {
		t.Fatal(err)
	}
	_, table, _ := strings.Cut(string(script), "const words = {")
	table, _, _ = strings.Cut(table, "\n};")
	said := map[string]string{}
	for _, part := range regexp.MustCompile(`(?s)\n  (\w+): \{(.*?)\n  \}`).FindAllStringSubmatch(table, -1) {
		for _, line := range regexp.MustCompile(`(\w+): "[^"]+"`).FindAllStringSubmatch(part[2], -1) {
			said[part[1]] += line[1] + " "
		}
	}
	for _, code := range words.Languages() {
		if said[code] == "" || said[code] != said["en"] {
			t.Errorf("%s: it says %q, in English %q", code, said[code], said["en"])
		}
	}
}
