package wallfile

import (
	"os"
	"strings"
	"testing"

	"standingbeam/app/entry"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

var strict = entry.Options{Strict: true}

func readFile(t *testing.T, name string) []Wall {
	t.Helper()
	data, err := os.ReadFile("../../testdata/walls/" + name)
	if err != nil {
		t.Fatal(err)
	}
	walls, problems := Decode(strings.NewReader(string(data)))
	for _, p := range problems {
		t.Error(p.Line(words.Speaker{}))
	}
	return walls
}

// The four walls of the format's description, read by hand.
func TestFour(t *testing.T) {
	walls := readFile(t, "four.json")
	if len(walls) != 4 {
		t.Fatalf("%d walls, want 4", len(walls))
	}
	want := []calc.Input{
		{Name: "braced", Condition: calc.BracedTop, Height: 96, Thickness: 8, GradeA: 84,
			Foot:     calc.Foot{Held: calc.SlabTight, SlabThickness: 4},
			Soil:     calc.Soil{Basis: calc.SoilFluid, Fluid: 45 * units.PCF},
			Material: calc.Material{Fc: 3000, Fy: 60000, CoverA: 1.5, CoverB: 0.75}, Footing: calc.Footing{NoToe: true}, Rulebook: calc.Engineered},
		{Name: "free", Condition: calc.FreeTop, Height: 72, Thickness: 8, GradeA: 72,
			Soil:     calc.Soil{Basis: calc.SoilFluid, Fluid: 30 * units.PCF, Weight: 120 * units.PCF},
			Footing:  calc.Footing{Given: true, Width: 48, Thickness: 12, Toe: 12, Bearing: 2000 * units.PSF, Friction: 0.40},
			Material: calc.Material{Fc: 3000, Fy: 60000}},
		{Name: "tied", Condition: calc.TiedToSlab, Height: 96, Thickness: 8, GradeA: 96,
			Soil:     calc.Soil{Basis: calc.SoilFluid, Fluid: 45 * units.PCF, Weight: 120 * units.PCF},
			Tie:      calc.Tie{SlabThickness: 4, SlabLength: 288, Friction: 0.35, Anchor: calc.SlabDrag},
			Footing:  calc.Footing{Given: true, Width: 36, Thickness: 10, Toe: 12, Bearing: 2000 * units.PSF, Friction: 0.40},
			Material: calc.Material{Fc: 3000, Fy: 60000}},
		{Name: "both", Condition: calc.SoilBothSides, TopHeld: true, Height: 96, Thickness: 8, GradeA: 84, GradeB: 36,
			Soil:     calc.Soil{Basis: calc.SoilFluid, Fluid: 45 * units.PCF},
			Footing:  calc.Footing{Given: true, NoToe: true, Width: 24, Thickness: 10, Bearing: 2000 * units.PSF, Friction: 0.40},
			Material: calc.Material{Fc: 3000, Fy: 60000}},
	}
	for i, w := range walls {
		got, problems := w.Input(strict)
		if len(problems) > 0 {
			t.Errorf("%s: %v", w.Name, problems)
		}
		if g, wnt := show(got), show(want[i]); g != wnt {
			t.Errorf("%s:\n got %s\nwant %s", w.Name, g, wnt)
		}
	}
}

func TestExamplesRoundTrip(t *testing.T) {
	for _, name := range []string{"four.json", "braced.json", "free.json", "tied.json", "both.json"} {
		walls := readFile(t, name)
		again, problems := Decode(strings.NewReader(string(Encode(walls))))
		if len(problems) > 0 || len(again) != len(walls) {
			t.Fatalf("%s: %v", name, problems)
		}
		for i := range walls {
			if walls[i] != again[i] {
				t.Errorf("%s: %+v became %+v", name, walls[i], again[i])
			}
		}
	}
	if data, _ := os.ReadFile("../../testdata/walls/both.json"); string(Encode(readFile(t, "both.json"))) != string(data) {
		t.Errorf("both.json is not written as it is read:\n%s", Encode(readFile(t, "both.json")))
	}
}

// Every fault is named with its wall, its field and the sentence's word.
func TestRefused(t *testing.T) {
	const good = `"condition":"braced top","height":"8 ft","thickness":"8 in","grade":{"a":"7 ft"},"concrete":"3000 psi","steel":"60 ksi"`
	wall := func(more string) string { return `{"format":1,"walls":[{"name":"w",` + more + `}]}` }
	for _, test := range []struct{ text, want string }{
		{``, ": file-json 1"},
		{`{"format":1,"walls":[{}]} x`, ": file-trailing"},
		{`{"format":1,"walls":[` + "\n{\"name\":}]}", ": file-json 2"},
		{`[]`, ": file-object"},
		{`{"walls":[{` + good + `}]}`, "format: file-no-format"},
		{`{"format":2,"walls":[]}`, "format: file-format"},
		{`{"format":"1","walls":[]}`, "format: file-format"},
		{`{"format":1}`, "walls: file-no-walls"},
		{`{"format":1,"walls":[]}`, "walls: file-no-walls"},
		{`{"format":1,"walls":{}}`, "walls: file-walls"},
		{`{"format":1,"walls":[{` + good + `}],"note":"x"}`, "note: file-unknown-key"},
		{`{"format":1,"format":1,"walls":[{` + good + `}]}`, "format: file-doubled-key"},
		{wall(good + `,"colour":"red"`), "w colour: file-unknown-key"},
		{wall(good + `,"grade.a":"7 ft"`), "w grade.a: file-unknown-key"},
		{wall(good + `,"grade":{"b":"1 ft"}`), "w grade: file-doubled-key"},
		{wall(good + `,"cover":{"a":"1 in","a":"2 in"}`), "w cover.a: file-doubled-key"},
		{wall(good + `,"cover":{"c":"1 in"}`), "w cover.c: file-unknown-key"},
		{wall(good + `,"brace":8`), "w brace: file-bare-number 8"},
		{wall(good + `,"brace":null`), "w brace: file-not-text"},
		{wall(good + `,"brace":{"a":"1 ft"}`), "w brace: file-not-text"},
		{wall(good + `,"cover":"1 in"`), "w cover: file-object"},
		{wall(good + `,"soil":"clay"`), "w soil.by: choice clay"},
		{wall(good + `,"dowels":"few"`), "w dowels.by: choice few"},
		{wall(good + `,"sizes":"No. 4"`), "w sizes: file-not-list No. 4"},
		{wall(good + `,"sizes":[4]`), "w sizes: file-not-list"},
		{wall(good + `,"sizes":["4"]`), "w sizes: bar-size 4"},
		{wall(good + `,"today":{"floor":1}`), "w today.floor: file-not-yes-no 1"},
		{wall(good + `,"brace":"8"`), "w brace: no-unit 8"},
		{wall(good + `,"brace":"7,5 ft"`), "w brace: comma 7,5 ft"},
		{wall(good + `,"brace":"eight ft"`), "w brace: not-a-number eight ft"},
		{wall(good + `,"brace":"8 lb"`), "w brace: unknown-unit 8 lb"},
		{wall(good + `,"brace":"80 ft"`), "w brace: out-of-range 80 ft"},
		{wall(good + `,"top":"held"`), "w top: choice held"},
		{wall(good + `,"joint":"Roughened"`), "w joint: choice Roughened"},
		{wall(good + `,"soil":{"class":"XX"}`), "w soil.class: choice XX"},
		{wall(good + `,"soil":{"class":"SM","equivalent fluid":"45 pcf"}`), "w soil.by: soil-two-ways"},
		{wall(good + `,"soil":{"friction angle":"30 deg"}`), "w soil.unit weight: missing"},
		{wall(good + `,"footing":{"width":"2 ft"}`), "w footing.thickness: missing"},
		{wall(good + `,"bars":{"vertical":{"size":"No. 4"}}`), "w bars.vertical.spacing: missing"},
		{wall(good + `,"dowels":{"size":"No. 12","spacing":"24 in"}`), "w dowels.size: bar-size No. 12"},
		{wall(`"height":"8 ft","thickness":"8 in","grade":{"a":"7 ft"},"concrete":"3000 psi","steel":"60 ksi"`), "w condition: missing"},
		{wall(good + `,"name":"x"`), "w name: file-doubled-key"},
		{`{"format":1,"walls":[` + strings.Repeat("[", 40) + strings.Repeat("]", 40) + `]}`, ": file-too-deep 1"},
		{`{"format":1,"walls":[{"name":"` + strings.Repeat("x", 201) + `",` + good + `}]}`, strings.Repeat("x", 201) + " name: too-long"},
	} {
		_, problems := Decode(strings.NewReader(test.text))
		var got []string
		for _, p := range problems {
			got = append(got, strings.TrimSpace(strings.TrimSpace(p.Name+" "+p.Field)+": "+strings.TrimSpace(p.ID+" "+p.Text)))
			line := p.Line(words.Speaker{})
			if line == "" || strings.Contains(line, "problem.") || strings.ContainsAny(line, "{}\n") {
				t.Errorf("%s: says %q", test.want, line)
			}
		}
		if len(got) != 1 || got[0] != strings.TrimSpace(test.want) {
			t.Errorf("%.120s\n got %q\nwant %q", test.text, got, test.want)
		}
	}
}

// A fault's line carries wall, field and permitted range with its unit.
func TestLine(t *testing.T) {
	text := `{"format":1,"walls":[{"condition":"braced top","height":"25 ft","thickness":"8","grade":{"a":"7 ft"},"concrete":"3000 psi","steel":"60 ksi"}]}`
	_, problems := Decode(strings.NewReader(text))
	want := []string{
		"wall 1: thickness: “8” has no unit. Write one, such as in or mm. Permitted: 5 1/2 in to 24 in.",
		"wall 1: height: 25 ft 0 in is not between 2 ft 0 in and 20 ft 0 in.",
	}
	if len(problems) != len(want) {
		t.Fatalf("%v", problems)
	}
	for i, p := range problems {
		if got := p.Line(words.Speaker{}); got != want[i] {
			t.Errorf("got  %s\nwant %s", got, want[i])
		}
	}
	if got, want := problems[1].Line(words.Speaker{System: words.Metric}), "wall 1: height: 7.62 m is not between 0.61 m and 6.09 m."; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

// File limits.
func TestLimits(t *testing.T) {
	many := `{"format":1,"walls":[` + strings.Repeat("{},", MaxWalls) + `{}]}`
	if _, p := Read(strings.NewReader(many)); len(p) != 1 || p[0].ID != "file-too-many" {
		t.Errorf("%d walls: %v", MaxWalls+1, p)
	}
	if _, p := Read(strings.NewReader(strings.Repeat(" ", MaxBytes+1))); len(p) != 1 || p[0].ID != "file-too-big" {
		t.Errorf("%d bytes: %v", MaxBytes+1, p)
	}
	if _, p := Decode(strings.NewReader(`{"format":1,"walls":[` + strings.Repeat("{},", 999) + `{}]}`)); len(p) < maxFaults || len(p) > maxFaults+10 {
		t.Errorf("%d faults are listed", len(p))
	}
}
