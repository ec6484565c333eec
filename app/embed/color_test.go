package embed

import (
	"math"
	"math/rand/v2"
	"os"
	"strings"
	"testing"
)

// Contrast ratios as they are published.
func TestContrast(t *testing.T) {
	for _, test := range []struct {
		a, b, source string
		want, tol    float64
	}{
		{"#000000", "#ffffff", "WCAG 2.2, contrast ratio: from 1 to 21", 21, 1e-9},
		{"#777777", "#ffffff", "known: the grey that just misses 4.5 on white, 4.48", 4.48, 0.005},
		{"#767676", "#ffffff", "known: the lightest grey that reaches 4.5 on white, 4.54", 4.54, 0.005},
		{"#ff0000", "#ffffff", "hand: 1.05 / (0.2126 + 0.05)", 1.05 / 0.2626, 1e-9},
		{"#0000ff", "#000000", "hand: (0.0722 + 0.05) / 0.05", 0.1222 / 0.05, 1e-9},
	} {
		if got := Contrast(hex(test.a), hex(test.b)); math.Abs(got-test.want) > test.tol {
			t.Errorf("Contrast(%s, %s) = %v, want %v (%s)", test.a, test.b, got, test.want, test.source)
		}
	}
}

func randomColor(r *rand.Rand) Given {
	if r.IntN(4) == 0 {
		return Given{}
	}
	return Given{Color{r.Float64(), r.Float64(), r.Float64()}.round(), true}
}

// Whatever is wanted, text and lines can be read, and what is refused could
// not have been.
func TestPaletteCanBeRead(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	refused := 0
	for range 20000 {
		c := Colors{randomColor(r), randomColor(r), randomColor(r), randomColor(r)}
		theme := []string{"", "light", "dark", glare}[r.IntN(4)]
		p := c.Palette(theme)
		if c == (Colors{}) {
			if len(p.Vars) > 0 {
				t.Fatalf("nothing wanted gives %v", p.Vars)
			}
			continue
		}
		wanted := textContrast
		if theme == glare {
			wanted = glareContrast
		}
		got := map[string]Color{}
		for _, v := range p.Vars {
			got[v.Name] = hex(v.Value)
		}
		for _, text := range []string{"ink", "muted", "soft", "push", "steel", "water", "fail", "hold", "open"} {
			if k := Contrast(got["--"+text], got["--paper"]); k < wanted {
				t.Fatalf("%+v: %s has a contrast of %.2f", c, text, k)
			}
		}
		for _, under := range []string{"raised", "field", "caution", "earth"} {
			if k := Contrast(got["--ink"], got["--"+under]); k < wanted {
				t.Fatalf("%+v: ink on %s has a contrast of %.2f", c, under, k)
			}
		}
		if k := Contrast(got["--muted"], got["--field"]); k < wanted {
			t.Fatalf("%+v: muted text on a field has a contrast of %.2f", c, k)
		}
		for _, line := range []string{"line", "ground", "grain"} {
			if k := Contrast(got["--"+line], got["--paper"]); k < lineContrast {
				t.Fatalf("%+v: %s has a contrast of %.2f", c, line, k)
			}
		}
		refused += len(p.Refused)
		checkRefused(t, c, p, got, wanted)
	}
	if refused < 1000 {
		t.Errorf("only %d refusals in 20000", refused)
	}
}

// checkRefused holds a palette against what was wanted: each color is there
// or refused.
func checkRefused(t *testing.T, c Colors, p Palette, got map[string]Color, wanted float64) {
	t.Helper()
	no := map[string]bool{}
	for _, r := range p.Refused {
		no[r.Key] = true
	}
	for key, g := range map[string]Given{"paper": c.Paper, "ink": c.Ink, "push": c.Push, "steel": c.Steel} {
		if taken := got["--"+key] == g.Color.round(); g.Is && taken == no["color-"+key] {
			t.Fatalf("%+v: %s is taken %v and refused %v", c, key, taken, no["color-"+key])
		}
	}
	if g := c.Push; g.Is && no["color-push"] && Contrast(g.Color, got["--paper"]) >= wanted {
		t.Fatalf("%+v: push was refused without need", c)
	}
}

func readGlare(t *testing.T) string {
	t.Helper()
	style, err := os.ReadFile("../../web/glare.css")
	if err != nil {
		t.Fatal(err)
	}
	return string(style)
}

// The page's own colors here are those of its style.
func TestBasesAreThePages(t *testing.T) {
	app, err := os.ReadFile("../../web/app.css")
	if err != nil {
		t.Fatal(err)
	}
	picture, err := os.ReadFile("../../web/picture.css")
	if err != nil {
		t.Fatal(err)
	}
	for theme, b := range bases {
		style := string(app)
		block := style[strings.Index(style, ":root {"):strings.Index(style, "@media")]
		drawn, _, _ := strings.Cut(string(picture), "@media")
		switch theme {
		case glare:
			block, drawn, _ = strings.Cut(readGlare(t), ".picture {")
		case "dark":
			_, block, _ = strings.Cut(style, `:root[data-theme="dark"] {`)
			block, _, _ = strings.Cut(block, "}")
			_, drawn, _ = strings.Cut(string(picture), `:root[data-theme="dark"] .picture {`)
			drawn, _, _ = strings.Cut(drawn, "}")
		}
		for name, value := range map[string]string{
			"paper": b.paper, "ink": b.ink, "push": b.push, "steel": b.steel, "water": b.water, "fail": b.fail, "hold": b.hold, "open": b.open,
		} {
			if !strings.Contains(block, "--"+name+": "+value+";") {
				t.Errorf("%s: the page's --%s is not %s", theme, name, value)
			}
		}
		for name, value := range map[string]string{"earth": b.earth, "hatch": b.hatch, "ground": b.ground, "wood": b.wood, "grain": b.grain} {
			if !strings.Contains(drawn, "--"+name+": "+value+";") {
				t.Errorf("%s: the picture's --%s is not %s", theme, name, value)
			}
		}
	}
}
