//go:build browser

package pagetest

import (
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	"standingbeam/app/sheet"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// dxfReader is a general reader of DXF files, made by `make dxf`.
const dxfReader = "../../.cache/dxf-parser-1.1.2.js"

// sheetWall is a wall of a condition as houses have it.
func sheetWall(c calc.Condition) calc.Input {
	const ft, in = units.Foot, units.Inch
	w := calc.Input{Name: "East wall", Condition: c, Height: 9 * ft, GradeA: 8 * ft, Thickness: 10 * in,
		Soil:     calc.Soil{Basis: calc.SoilClass, Class: "SM"},
		Material: calc.Material{Fc: 3000 * units.PSI, Fy: 60 * units.KSI},
		Footing:  calc.Footing{Given: true, Width: 24 * in, Thickness: 12 * in, NoToe: true},
	}
	switch c {
	case calc.BracedTop:
		w.Foot.Held = calc.SlabTight
	case calc.FreeTop:
		w.Height, w.GradeA = 6*ft, 6*ft
		w.Footing.Width, w.Footing.NoToe, w.Footing.Toe = 5*ft, false, 18*in
	case calc.TiedToSlab:
		w.Footing.Width, w.Tie = 36*in, calc.Tie{SlabThickness: 4 * in, SlabLength: 30 * ft}
	case calc.SoilBothSides:
		w.GradeB = 4 * ft
	}
	return w
}

// putSheet puts a paper into the page where the page puts it to print.
func (p *tab) putSheet(markup string) {
	p.t.Helper()
	text, err := json.Marshal(markup)
	if err != nil {
		p.t.Fatal(err)
	}
	eval[bool](p, fmt.Sprintf(`(() => { document.getElementById("sheet").innerHTML = %s; return true; })()`, text))
}

// printed prints the page as the browser does, and returns the file.
func (p *tab) printed(name string) string {
	p.t.Helper()
	yes := true
	out, err := chromedp.Call(p.ctx, page.PrintToPDF, page.PrintToPDFParams{PreferCSSPageSize: &yes})
	if err != nil {
		p.t.Fatal(err)
	}
	dir := os.Getenv("SHOTS")
	if dir == "" {
		dir = p.t.TempDir()
	}
	file := filepath.Join(dir, strings.ReplaceAll(name, " ", "-")+".pdf")
	if err := os.WriteFile(file, out.Data, 0o644); err != nil {
		p.t.Fatal(err)
	}
	return file
}

// leaves are the texts of the paper in the page, each of which has to come out
// in one piece.
func (p *tab) leaves() []string {
	p.t.Helper()
	return eval[[]string](p, `[...document.querySelectorAll("#sheet *")]
		.filter((e) => e.childElementCount === 0 && !["title", "desc"].includes(e.tagName) && e.textContent.trim() !== "")
		.map((e) => e.textContent)`)
}

func tool(t *testing.T, name string, args ...string) string {
	t.Helper()
	out, err := exec.Command(name, args...).CombinedOutput()
	if err != nil {
		t.Fatalf("%s: %v\n%s", name, err, out)
	}
	return string(out)
}

// squeezed is a text without its blanks, which printing sets anew.
func squeezed(s string) string { return strings.Join(strings.Fields(s), "") }

// Each paper of each condition is printed from the page and read back: every
// bar, check, clause and caution is there, nothing is cut or covers another,
// and nothing leaves the paper.
func TestSheets(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, desk)
	p.open(h.url(""))
	for c := calc.BracedTop; c <= calc.SoilBothSides; c++ {
		r, err := calc.Design(sheetWall(c))
		if err != nil {
			t.Fatal(err)
		}
		for _, reader := range []string{sheet.Letter, sheet.A4, sheet.Letter + " es", sheet.A4 + " es"} {
			paper, language, _ := strings.Cut(reader, " ")
			o := sheet.Options{Speaker: words.Speaker{Lang: language}, Paper: paper, Job: "Mill Lane 4", Date: "25 Nov", Person: "A. Mason"}
			if paper == sheet.A4 {
				o.Speaker.System = words.Metric
			}
			for _, kind := range []string{"crew", "calculation"} {
				name := fmt.Sprintf("sheet %s %v %s", kind, c, reader)
				t.Run(name, func(t *testing.T) {
					if kind == "crew" {
						p.putSheet(sheet.Crew(r, o))
					} else {
						p.putSheet(sheet.Calculation(r, o))
					}
					both, calculation := said(r, o.Speaker.For(c))
					if kind == "calculation" {
						both = append(both, calculation...)
					}
					checkPrinted(t, p.printed(name), kind, paper, append(both, p.leaves()...))
				})
			}
		}
	}
}

// said are the bars, the checks that decide with their clauses, and the
// cautions of an answer.
func said(r calc.Result, s words.Speaker) (both, calculation []string) {
	for _, b := range r.Bars {
		both = append(both, string(b.Role)+s.Bars(b))
	}
	both = append(append(both, s.Notes(r.Cautions)...), s.Notes(r.Warnings)...)
	_, today := s.Headline(r)
	both = append(both, today.Title)
	for _, c := range r.Checks {
		calculation = append(calculation, s.CheckName(c), strings.TrimPrefix(c.Clause, c.Rulebook+" "))
	}
	return both, calculation
}

func checkPrinted(t *testing.T, file, kind, paper string, wanted []string) {
	t.Helper()
	text := squeezed(tool(t, "pdftotext", "-raw", file, "-"))
	for _, want := range wanted {
		if !strings.Contains(text, squeezed(want)) {
			t.Errorf("%q is not on paper in one piece", want)
		}
	}
	pages := checkPages(t, file, paper)
	if kind == "crew" && pages != 1 {
		t.Errorf("the crew drawing takes %d pages", pages)
	}
	if kind == "calculation" && pages < 3 {
		t.Errorf("the calculation sheet takes only %d pages", pages)
	}
	for n := 1; n <= pages; n++ {
		one := squeezed(tool(t, "pdftotext", "-f", fmt.Sprint(n), "-l", fmt.Sprint(n), file, "-"))
		for _, want := range []string{"Mill Lane 4 · East wall", fmt.Sprintf("%d / %d", n, pages)} {
			if !strings.Contains(one, squeezed(want)) {
				t.Errorf("page %d does not say %q", n, want)
			}
		}
	}
	checkWords(t, file)
	checkInk(t, file)
}

// Through the buttons of the page: the paper is there while the page prints,
// under a title that names it, and gone afterwards.
func TestSheetButtons(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	eval[bool](p, `(() => { window.asked = []; window.print = () => { window.asked.push(document.title); }; return true; })()`)
	p.typeInto("#sheet-job", "Mill Lane <4>")
	title := p.text("title")
	for _, kind := range []string{"crew", "calculation"} {
		p.tap("#sheet-" + kind)
		p.until(`document.querySelectorAll("#sheet .sheet").length === 1`)
		if got := eval[string](p, `window.asked.pop()`); !strings.Contains(got, "Mill Lane 4") {
			t.Errorf("the paper is called %q", got)
		}
		text := squeezed(tool(t, "pdftotext", "-raw", p.printed("buttons "+kind), "-"))
		if !strings.Contains(text, squeezed("Mill Lane <4>")) || strings.Contains(text, squeezed("Papers to hand over")) {
			t.Errorf("printed: %.200s", text)
		}
		for _, bar := range eval[[]string](p, `[...document.querySelectorAll("#bars .bar-what")].map((e) => e.textContent)`) {
			if !strings.Contains(text, squeezed(bar)) {
				t.Errorf("%s: the bars %q of the page are not on paper", kind, bar)
			}
		}
		eval[bool](p, `window.dispatchEvent(new Event("afterprint"))`)
		p.until(`document.getElementById("sheet").childElementCount === 0`)
		if p.text("title") != title {
			t.Errorf("the page is called %q, it was %q", p.text("title"), title)
		}
	}
	p.axe()
}

// A general reader opens the DXF of each condition and finds the layers, the
// lines and the words.
func TestDXFReader(t *testing.T) {
	if _, err := os.Stat(dxfReader); err != nil {
		t.Fatalf("%s is missing: make dxf", dxfReader)
	}
	dir := t.TempDir()
	for i := range 8 {
		r, err := calc.Design(sheetWall(calc.Condition(i % 4)))
		if err != nil {
			t.Fatal(err)
		}
		s := words.Speaker{Lang: words.Languages()[i/4]}
		file := filepath.Join(dir, "wall.dxf")
		if err := os.WriteFile(file, []byte(sheet.DXF(r, sheet.Options{Speaker: s, Job: "Mühle"})), 0o644); err != nil {
			t.Fatal(err)
		}
		out := tool(t, "node", "-e", `
			const reader = require(process.argv[1]);
			const drawing = new (reader.default || reader)().parseSync(require("fs").readFileSync(process.argv[2], "utf8"));
			const wall = drawing.entities.find((e) => e.type === "POLYLINE" && e.layer === "CONCRETE");
			console.log(JSON.stringify({
				layers: Object.keys(drawing.tables.layer.layers).sort().join(" "),
				texts: drawing.entities.filter((e) => e.type === "TEXT").map((e) => e.text).join("\n"),
				kinds: [...new Set(drawing.entities.map((e) => e.type))].sort().join(" "),
				wall: [Math.max(...wall.vertices.map((v) => v.x)), Math.max(...wall.vertices.map((v) => v.y))],
				bends: drawing.entities.filter((e) => e.layer === "STEEL" && e.vertices && e.vertices.some((v) => v.bulge)).length,
			}));`, mustAbs(t, dxfReader), file)
		var got struct {
			Layers, Texts, Kinds string
			Wall                 [2]float64
			Bends                int
		}
		if err := json.Unmarshal([]byte(out), &got); err != nil {
			t.Fatalf("%v: %s", err, out)
		}
		if want := "CONCRETE DIMENSIONS FLOOR HATCHING HIDDEN SOIL STEEL TEXT WATER"; got.Layers != want {
			t.Errorf("layers %q, want %q", got.Layers, want)
		}
		if want := "CIRCLE LINE POINT POLYLINE SOLID TEXT"; got.Kinds != want {
			t.Errorf("it holds %q, want %q", got.Kinds, want)
		}
		if want := [2]float64{r.Input.Thickness.Inches(), r.Input.Height.Inches()}; got.Wall != want {
			t.Errorf("the wall is %v, want %v", got.Wall, want)
		}
		if got.Bends == 0 {
			t.Error("no bar is bent")
		}
		title := s.For(r.Input.Condition).Sentence("sheet.view.elevation", "")
		if said := strings.ReplaceAll(got.Texts, `\U+00F3`, "ó"); !strings.Contains(said, title) {
			t.Errorf("it does not say %q", title)
		}
		for _, b := range r.Bars {
			if want := s.Bars(b); !strings.Contains(got.Texts, want) {
				t.Errorf("it does not say %q", want)
			}
		}
	}
}

func mustAbs(t *testing.T, path string) string {
	t.Helper()
	abs, err := filepath.Abs(path)
	if err != nil {
		t.Fatal(err)
	}
	return abs
}
