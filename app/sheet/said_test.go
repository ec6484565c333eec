package sheet

import (
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"strings"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// elements and attributes that the papers may hold. Styles, scripts, links and
// handlers are not among them.
var (
	elements = " section header div h1 h2 h3 p ul ol li table thead tbody tr th td span b sup sub svg title desc g path circle rect text tspan "
	attrs    = " class xmlns role width height viewBox font-family font-size font-weight text-anchor transform x y dy cx cy r d fill stroke stroke-width stroke-linejoin stroke-linecap stroke-dasharray data-view data-layer "
)

// readMarkup returns the text of a paper, its words set apart by one blank, and
// fails where it is not well-formed or holds what it must not.
func readMarkup(t *testing.T, markup string) string {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(markup))
	var text strings.Builder
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return strings.Join(strings.Fields(text.String()), " ")
		}
		if err != nil {
			t.Fatalf("not well-formed: %v", err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			if !strings.Contains(elements, " "+token.Name.Local+" ") {
				t.Errorf("an element %q", token.Name.Local)
			}
			for _, a := range token.Attr {
				if !strings.Contains(attrs, " "+a.Name.Local+" ") {
					t.Errorf("an attribute %q", a.Name.Local)
				}
			}
			text.WriteByte(' ')
		case xml.CharData:
			text.Write(token)
		case xml.EndElement:
			text.WriteByte(' ')
		case xml.Comment, xml.Directive:
			t.Errorf("%T", token)
		}
	}
}

// mustSay are the texts that no sheet may lack.
func mustSay(r *calc.Result, o Options) (out []string) {
	s := o.Speaker.For(r.Input.Condition)
	finished, today := s.Headline(*r)
	out = append(out, finished.Title, finished.Detail, today.Title, today.Detail, r.Input.Name, o.Job, o.Date, o.Person)
	for _, b := range r.Bars {
		out = append(out, string(b.Role)+" "+s.Bars(b))
	}
	out = append(append(out, s.Notes(r.Cautions)...), s.Notes(r.Warnings)...)
	for _, edition := range r.Editions {
		out = append(out, edition)
	}
	out = append(out, s.Quantity(units.Of(r.Input.Material.Fc, units.Strength)), map[string]string{"en": "grade ", "es": "grado "}[s.Lang]+map[words.System]string{words.US: "60", words.Metric: "420"}[s.System])
	for _, id := range []string{"law", "engineer", "dig", "forms", "brace", "bars"} {
		out = append(out, s.Word("page.safety."+id))
	}
	// The governing check, found in another way: nothing that decides and can
	// be compared is worse.
	worst, most := calc.Check{}, -1.0
	for _, c := range r.Checks {
		ratio, ok := c.Ratio()
		if c.Decides && c.State == calc.Fails && c.Capacity.Base == 0 && !c.NoValue {
			ratio, ok = 1e9, true // it carries nothing at all
		}
		if c.Decides && c.State != calc.Open && ok && ratio > most {
			worst, most = c, ratio
		}
	}
	if most > 0 {
		out = append(out, s.CheckName(worst))
	}
	return out
}

func TestSheetsSay(t *testing.T) {
	eachPaper(t, func(t *testing.T, r calc.Result, o Options) {
		crew, calculation := readMarkup(t, Crew(r, o)), readMarkup(t, Calculation(r, o))
		if m := regexp.MustCompile(`\b(in|mm|/m)[234]\b`).FindString(crew + calculation); m != "" {
			t.Errorf("a power is not raised: %q", m)
		}
		for _, want := range mustSay(&r, o) {
			want = strings.Join(strings.Fields(want), " ")
			if !strings.Contains(crew, want) {
				t.Errorf("the crew drawing does not say %q", want)
			}
			if !strings.Contains(calculation, want) {
				t.Errorf("the calculation sheet does not say %q", want)
			}
		}
		s := o.Speaker.For(r.Input.Condition)
		var more []string
		for _, c := range r.Checks {
			more = append(more, s.CheckName(c), s.State(c.State))
			if c.State != calc.NotApplicable {
				more = append(more, s.CheckQuestion(c), strings.TrimPrefix(c.Clause, c.Rulebook+" "))
			}
			for _, st := range c.Steps {
				more = append(more, s.Source(st.Clause))
			}
		}
		more = append(append(more, s.Notes(r.Assumptions)...), r.Table.Name)
		for _, st := range r.Stages {
			for _, m := range st.Moments {
				more = append(more, s.Demand(units.Of(m.Factored, units.LineMoment)), s.Length(m.At))
			}
			for _, x := range st.Reactions {
				more = append(more, s.Demand(units.Of(x.Service, units.LineForce)), s.Demand(units.Of(x.Factored, units.LineForce)))
			}
			for _, p := range st.Pushes {
				more = append(more, s.Note(p.Basis), s.Number(p.Factor, 2))
			}
		}
		for _, want := range more {
			if !strings.Contains(calculation, strings.Join(strings.Fields(want), " ")) {
				t.Errorf("the calculation sheet does not say %q", want)
			}
		}
		for _, paper := range []string{crew, calculation} {
			for _, bad := range []string{"NaN", "Inf", "sheet.", "page.", "note.", "{0}", "{1}", "%!"} {
				if _, after, found := strings.Cut(paper, bad); found {
					t.Errorf("a sheet says %q before %.40q", bad, after)
				}
			}
		}
	})
}

// Each reason to leave the tables is put as a question with its own words.
func TestQuestions(t *testing.T) {
	w := wall(calc.FreeTop)
	w.Height, w.GradeA, w.Thickness = 12*ft, 12*ft, 7.5*in
	w.Water, w.Surcharge.Live = calc.Water{Standing: true, Level: 3 * ft}, 50*units.PSF
	r := answered(t, w)
	if len(r.Table.Reasons) < 3 {
		t.Fatalf("only %d reasons", len(r.Table.Reasons))
	}
	questions := newScene(&r, words.Speaker{}).questions()
	for _, n := range r.Table.Reasons {
		found := false
		for _, q := range questions {
			found = found || q == (words.Speaker{}).Note(calc.Note{ID: "question." + n.ID, Args: n.Args})
		}
		if !found {
			t.Errorf("%s is not asked in its own words", n.ID)
		}
	}
	for _, q := range questions {
		if !strings.HasSuffix(q, "?") && !strings.Contains(q, ": ") {
			t.Errorf("no question: %q", q)
		}
	}
}

// What is typed stays text: whatever it is, the papers are well-formed and
// hold nothing that they must not.
func FuzzMarkup(f *testing.F) {
	for _, s := range []string{"", "<script>alert(1)</script>", `" onload="x`, "a & b ' <", "\x00\x1b\xff\ufffe\ud7ff", "\u202eabc\u2066", "]]>", "&#0;", strings.Repeat("W", 400), strings.Repeat("i ", 400)} {
		f.Add(s, s, s, 0)
	}
	var results []calc.Result
	for c := calc.BracedTop; c <= calc.SoilBothSides; c++ {
		results = append(results, answered(f, wall(c)))
	}
	f.Fuzz(func(t *testing.T, job, name, person string, which int) {
		r := results[uint(which)%4]
		r.Input.Name = name
		o := Options{Job: job, Person: person, Date: name, Paper: job}
		for _, paper := range []string{Crew(r, o), Calculation(r, o), strings.SplitN(SVG(r, o), "\n", 2)[1]} {
			readMarkup(t, paper)
		}
		file := FileName(job, name, person)
		if file == "" || strings.ContainsAny(file, `/\:*?"<>|`+"\x00\n\r\t") || strings.HasPrefix(file, ".") || len([]rune(file)) > 200 {
			t.Errorf("a file name %q", file)
		}
	})
}

func TestFileName(t *testing.T) {
	for _, test := range []struct{ job, wall, kind, want string }{
		{"Mill Lane 4", "East wall", "crew drawing", "Mill Lane 4 - East wall - crew drawing"},
		{"", "", "calculation sheet", "calculation sheet"},
		{"a/b", `..\c`, "drawing", "a b - c - drawing"},
		{" ", "", "", "Standing Beam"},
	} {
		if got := FileName(test.job, test.wall, test.kind); got != test.want {
			t.Errorf("FileName(%q, %q, %q) = %q, want %q", test.job, test.wall, test.kind, got, test.want)
		}
	}
}

// The SVG says the same as the DXF.
func TestSVGAndDXFAgree(t *testing.T) {
	eachPaper(t, func(t *testing.T, r calc.Result, o Options) {
		svg := " " + readMarkup(t, strings.SplitN(SVG(r, o), "\n", 2)[1]) + " "
		_, all := readDXF(t, DXF(r, o))
		n := 0
		for _, e := range all {
			for _, p := range e.pairs {
				if e.kind != "TEXT" || p.code != 1 || strings.Contains(p.value, `\U+`) || strings.Contains(p.value, "-") {
					continue
				}
				if n++; !strings.Contains(svg, strings.TrimSpace(p.value)) {
					t.Errorf("the SVG does not say %q", p.value)
				}
			}
		}
		if n < 20 {
			t.Errorf("only %d texts in the DXF", n)
		}
	})
}
