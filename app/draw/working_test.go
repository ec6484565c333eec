package draw

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"standingbeam/app/formula"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

func drawn(t *testing.T, c calc.Check, steps ...working.Step) string {
	t.Helper()
	c.Steps = steps
	var s words.Speaker
	all := ""
	for _, k := range Working(c, formula.Write(steps, s.Number), s) {
		all += k.SVG
	}
	return all
}

func sumStep(symbol, f string, v float64, k units.Kind, with ...working.Term) working.Step {
	return working.Step{Symbol: symbol, Formula: f, Value: units.Quantity{Base: v, Kind: k}, With: with}
}

// shape returns the numbers of the d or of the sides of the first shape of a class.
func shape(t *testing.T, svg, class string) (out []float64) {
	t.Helper()
	tag := regexp.MustCompile(`<(?:path|rect) class="` + class + `" [^>]*>`).FindString(svg)
	for _, n := range regexp.MustCompile(`-?[0-9]+(\.[0-9]+)?`).FindAllString(strings.ReplaceAll(tag, class, ""), -1) {
		v, err := strconv.ParseFloat(n, 64)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, v)
	}
	return out
}

// A trapezoid of 300 psf at the toe and 100 at the heel is drawn three times as
// deep at the toe, and the load of 0.5 ft before the middle of 6 ft at 2.5/6 of
// the base from the toe.
func TestSketchOfTheBase(t *testing.T) {
	b := working.T("B", 6*units.Foot, units.Level)
	svg := drawn(t, calc.Check{ID: "bearing"},
		sumStep("N", "1200", 1200.0/12, units.LineForce),
		sumStep("x", "B − 3.5", 30, units.Level, b),
		sumStep("e", "B/2 − x", 6, units.Level, b, working.T("x", 30*units.Inch, units.Level)),
		sumStep("q,toe", "300", 300.0/144, units.Pressure), sumStep("q,heel", "100", 100.0/144, units.Pressure),
		sumStep("q", "max(q,toe; q,heel)", 300.0/144, units.Pressure))
	p := shape(t, svg, "p-bearing")
	if len(p) != 8 || math.Abs((p[3]-p[1])-3*(p[5]-p[7])) > 0.31 {
		t.Errorf("pressures of 300 and 100 are drawn as %v", p)
	}
	load := shape(t, svg, "p-push p-tip")
	if at := (p[0] - load[0]) / (p[0] - p[6]); math.Abs(at-2.5/6) > 1e-3 {
		t.Errorf("the load is drawn at %v of the base", at)
	}
}

// The block of a section whose a is a fifth of its depth is a fifth as high.
func TestSketchOfTheBlock(t *testing.T) {
	for _, a := range []float64{0.5, 1, 2} {
		h, d := working.T("h", 10*units.Inch, units.Size), working.T("d", 8*units.Inch, units.Size)
		svg := drawn(t, calc.Check{ID: "flexure"},
			sumStep("d", "h − 2", 8, units.Size, h),
			sumStep("a", "b/12", a, units.Size, working.T("b", 12*units.Inch, units.Size), working.T("f'c", 3000*units.PSI, units.Strength)),
			sumStep("c", "a/0.85", a/0.85, units.Size, working.T("a", units.Length(a), units.Size)),
			sumStep("εt", "0.003 (d − c)/c", 0.003*(8-a/0.85)/(a/0.85), units.None, d, working.T("c", units.Length(a/0.85), units.Size)))
		r := shape(t, svg, "p-push p-net")
		if len(r) != 4 || math.Abs(r[3]-a/10*sectionDeep) > 0.06 {
			t.Errorf("a = %v of h = 10 is drawn as %v of %v", a, r, sectionDeep)
		}
		if want := fmt.Sprintf(">%s lb/ft<", words.Speaker{}.Number(0.85*3000*a*12, 0)); !strings.Contains(svg, want) {
			t.Errorf("a = %v: %q is not said", a, want)
		}
	}
}

// A working without a sum has no picture.
func TestNoSketchOfNothing(t *testing.T) {
	for _, id := range []string{"cover", "bearing", "flexure", "dowel-lap", "slab-drag"} {
		if svg := drawn(t, calc.Check{ID: id}); svg != "" {
			t.Errorf("%s: %s", id, svg)
		}
	}
}

// A third of the bending and a quarter of the load stand a third across and a
// quarter up in the picture of both.
func TestSketchOfLoadAndBending(t *testing.T) {
	phi := working.Term{Symbol: "φ", Value: units.Quantity{Base: 0.6}}
	svg := drawn(t, calc.Check{ID: "plain-compression"},
		sumStep("Mu", "1", 100, units.LineMoment), sumStep("Pu", "1", 50, units.LineForce),
		sumStep("φPn", "4", 200, units.LineForce), sumStep("Mn", "5", 500, units.LineMoment),
		sumStep("use", "Mu/(φ Mn) + Pu/φPn", 100.0/300+0.25, units.None,
			working.T("Mu", units.MomentPerLength(100), units.LineMoment), phi, working.T("Mn", units.MomentPerLength(500), units.LineMoment)))
	p := shape(t, svg, "p-bearing") // corner, its end of the bending, its end of the load
	at := regexp.MustCompile(`class="p-peak" cx="([\d.]+)" cy="([\d.]+)"`).FindStringSubmatch(svg)
	if len(p) != 6 || at == nil {
		t.Fatalf("no picture: %s", svg)
	}
	x, _ := strconv.ParseFloat(at[1], 64)
	y, _ := strconv.ParseFloat(at[2], 64)
	if m, n := (x-p[0])/(p[2]-p[0]), (p[1]-y)/(p[1]-p[5]); math.Abs(m-1.0/3) > 1e-3 || math.Abs(n-0.25) > 1e-3 {
		t.Errorf("the wall stands at %.3f of the bending and %.3f of the load", m, n)
	}
}

// What a wall bends and what it may are drawn to one scale.
func TestSketchOfTheBend(t *testing.T) {
	svg := drawn(t, calc.Check{ID: "deflection"}, sumStep("Δ", "0.3", 0.3, units.Deflection),
		sumStep("Δmax", "ht/120", 0.9, units.Deflection, working.T("ht", 108*units.Inch, units.Level)))
	lean, may := shape(t, svg, "p-curve"), shape(t, svg, "p-until")
	if len(lean) != 8 || len(may) != 4 {
		t.Fatalf("no picture: %s", svg)
	}
	if got := (lean[6] - lean[0]) / (may[0] - lean[0]); math.Abs(got-1.0/3) > 2e-3 {
		t.Errorf("a third of what it may is drawn as %.3f", got)
	}
}
