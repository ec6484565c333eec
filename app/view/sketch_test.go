package view

import (
	"encoding/xml"
	"io"
	"math"
	"strings"
	"testing"

	"standingbeam/app/draw"
	"standingbeam/app/formula"
	"standingbeam/app/words"
	"standingbeam/calc"
)

// sketched are the checks of which a working with a sum has a picture.
var sketched = map[string]bool{
	"plain-flexure": true, "flexure": true, "shear": true, "plain-shear": true, "bearing": true, "overturning": true,
	"sliding": true, "resultant-in-middle-third": true, "dowel-lap": true, "dowel-hook": true, "tie-development-wall": true,
	"tie-development-slab": true, "slab-drag": true, "lap-gap": true, "bar-spacing": true, "tie-tension": true,
	"minimum-vertical": true, "floor-edge": true, "plain-compression": true, "deflection": true,
}

// Every picture of every working is sound markup, says its name, and has all its
// labels: inside, apart from each other, each number as the working has it.
func TestSketches(t *testing.T) {
	drawn := map[string]int{}
	everyWall(t, fewer(150), func(name string, r calc.Result) {
		for _, reader := range []words.Speaker{{}, {System: words.Metric}, {System: words.Metric, Lang: "es"}} {
			s := reader.For(r.Input.Condition)
			for _, c := range r.Checks {
				chain, _ := inOrder(c)
				lines := formula.Write(chain, s.Number)
				for _, k := range draw.Working(c, lines, s) {
					drawn[c.ID]++
					where := name + ", " + c.ID
					soundSketch(t, where, k)
					if reader.System == words.US {
						saysTheWorking(t, where, k, lines)
					}
				}
			}
		}
	})
	for id := range sketched {
		if drawn[id] < fewer(8) {
			t.Errorf("%s has %d pictures", id, drawn[id])
		}
	}
}

func soundSketch(t *testing.T, where string, k draw.Sketch) {
	t.Helper()
	for d := xml.NewDecoder(strings.NewReader(k.SVG)); ; {
		if _, err := d.Token(); err == io.EOF {
			break
		} else if err != nil {
			t.Fatalf("%s: %v in %s", where, err, k.SVG)
		}
	}
	if len(k.Lost) > 0 {
		t.Errorf("%s: no place for %q", where, k.Lost)
	}
	for _, bad := range []string{"NaN", "Inf", "style=", "sketch.", "–"} {
		if strings.Contains(k.SVG, bad) {
			t.Errorf("%s: %q stands in %s", where, bad, k.SVG)
		}
	}
	for i, b := range k.Boxes {
		if b.X < 0 || b.Y < 0 || b.X+b.W > draw.SketchWidth {
			t.Errorf("%s: %q lies outside", where, b.Text)
		}
		for _, c := range k.Boxes[:i] {
			if b.X < c.X+c.W && c.X < b.X+b.W && b.Y < c.Y+c.H-0.01 && c.Y < b.Y+b.H-0.01 {
				t.Errorf("%s: %q lies over %q", where, b.Text, c.Text)
			}
		}
	}
}

// saysTheWorking holds that "a = 0.47 in" in a picture is a symbol of the
// working with its printed number.
func saysTheWorking(t *testing.T, where string, k draw.Sketch, lines []formula.Line) {
	t.Helper()
	known := map[string]string{}
	note := func(g formula.Given) {
		letter, below := formula.Letters(g.Symbol)
		known[letter+below] = joinUnit(g.Text, g.Unit.Sign())
	}
	for _, l := range lines {
		for _, g := range l.Terms {
			note(g)
		}
	}
	for _, l := range lines {
		note(l.Result)
	}
	for _, said := range strings.Split(k.Desc, "; ") {
		symbol, value, ok := strings.Cut(said, " = ")
		if want, is := known[symbol]; ok && is && value != want {
			t.Errorf("%s: the picture says %s = %s, the working %s", where, symbol, value, want)
		}
	}
}

// The forces in the picture of a section are in balance and turn it by the
// strength that the working ends with: C = T, and C times the arm is Mn.
func TestSketchOfASectionBalances(t *testing.T) {
	seen := 0
	everyWall(t, fewer(60), func(name string, r calc.Result) {
		for _, c := range r.Checks {
			chain, _ := inOrder(c)
			var mn, axial float64
			for _, st := range chain {
				if st.Symbol == "Mn" {
					mn = st.Value.US()
				}
				if st.Symbol == "Pu" {
					axial = st.Value.US()
				}
			}
			s := words.Speaker{}
			for _, k := range draw.Working(c, formula.Write(chain, s.Number), s) {
				said := map[string]float64{}
				parts := strings.Split(strings.ReplaceAll(k.Desc, "d − a/2; = ", "arm = "), "; ")
				for _, p := range parts {
					if symbol, value, ok := strings.Cut(p, " = "); ok {
						if v, err := computeAgain(strings.Fields(value)[0]); err == nil {
							said[symbol] = v.at
						}
					}
				}
				arm, ok := said["arm"]
				if !ok || axial != 0 {
					continue
				}
				seen++
				if math.Abs(said["C"]-said["T"]) > 1e-9 || math.Abs(said["C"]*arm/12-mn) > 2e-3*mn {
					t.Errorf("%s, %s: C = %v, T = %v, arm %v in, Mn = %v", name, c.ID, said["C"], said["T"], arm, mn)
				}
			}
		}
	})
	if seen < fewer(60) {
		t.Errorf("%d sections", seen)
	}
}
