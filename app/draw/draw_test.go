package draw

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"math"
	"regexp"
	"strings"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

const (
	ft = units.Foot
	in = units.Inch
)

// wall makes a wall of the grid: its condition, height, thickness, the width
// of its footing and the share of the free width that is toe.
func wall(c calc.Condition, h, t, width units.Length, toe float64) calc.Input {
	w := calc.Input{Condition: c, Height: h, Thickness: t, GradeA: h, Rulebook: calc.Engineered,
		Soil:     calc.Soil{Basis: calc.SoilFluid, Fluid: 45 * units.PCF, Weight: 120 * units.PCF},
		Material: calc.Material{Fc: 3000 * units.PSI, Fy: 60 * units.KSI}}
	w.Footing = calc.Footing{Given: true, Width: width, Thickness: 12 * in, Toe: units.Length(toe) * (width - t), Bearing: 2000 * units.PSF, Friction: 0.4}
	switch c {
	case calc.BracedTop:
		w.GradeA = max(h-1*ft, 1*ft)
		w.Foot = calc.Foot{Held: calc.SlabTight, SlabThickness: 4 * in}
	case calc.TiedToSlab:
		w.Tie = calc.Tie{SlabThickness: 4 * in, SlabLength: 24 * ft, Friction: 0.35}
	case calc.SoilBothSides:
		w.GradeB = units.Length(math.Floor(float64(h) / 2.5))
		w.TopHeld = toe > 0.3
	}
	return w
}

// grid calls f for walls from 2 ft to 20 ft on footings from 3 ft to 15 ft.
func grid(f func(name string, w calc.Input)) {
	for c := range calc.Condition(4) {
		for _, h := range []units.Length{2, 3, 4, 5.5, 8, 10, 13, 20} {
			for _, width := range []units.Length{3, 5, 9, 15} {
				for _, toe := range []float64{0, 0.3, 0.5, 1} {
					for _, t := range []units.Length{8 * in, 14 * in} {
						w := wall(c, h*ft, t, width*ft, toe)
						f(fmt.Sprintf("condition %d, %v ft, %v in, footing %v ft, toe %v", c, h, t, width, toe), w)
					}
				}
			}
		}
	}
}

// sizes of the picture: phones, and a wide page.
var sizes = [][2]float64{{390, 300}, {390, 370}, {390, 440}, {360, 300}, {640, 560}}

// small are those of the narrowest phones and of phones that lie.
var small = [][2]float64{{320, 298}, {440, 220}, {345, 220}}

func design(t *testing.T, w calc.Input) calc.Result {
	t.Helper()
	r, err := calc.Design(w)
	if err != nil {
		t.Fatalf("Design: %v", err)
	}
	return r
}

// checkPicture fails unless every label lies inside the picture, no two lie on
// each other or on a handle, and no two handles' targets overlap.
func checkPicture(t *testing.T, name string, p Picture, width, height float64) {
	t.Helper()
	for i, b := range p.Boxes {
		if !(b.X >= 0 && b.Y >= 0 && b.X+b.W <= width && b.Y+b.H <= height) {
			t.Errorf("%s: %q leaves the picture: %+v", name, b.Text, b)
		}
		for _, c := range p.Boxes[:i] {
			if b.overlaps(c, 0) {
				t.Errorf("%s: %q lies on %q", name, b.Text, c.Text)
			}
		}
		for _, h := range p.Handles {
			if b.overlaps(Box{X: h.X - grip, Y: h.Y - grip, W: 2 * grip, H: 2 * grip}, 0) {
				t.Errorf("%s: %q lies on handle %s", name, b.Text, h.ID)
			}
		}
	}
	for i, h := range p.Handles {
		const half = target / 2
		if h.X < half-0.1 || h.Y < half-0.1 || h.X > width-half+0.1 || h.Y > height-half+0.1 {
			t.Errorf("%s: the target of %s leaves the picture: %.1f %.1f", name, h.ID, h.X, h.Y)
		}
		for _, g := range p.Handles[:i] {
			if math.Abs(h.X-g.X) < target-0.1 && math.Abs(h.Y-g.Y) < target-0.1 {
				t.Errorf("%s: targets of %s and %s overlap: (%.1f %.1f) (%.1f %.1f)", name, h.ID, g.ID, h.X, h.Y, g.X, g.Y)
			}
		}
		if !(h.PxPerInch > 0) || h.Name == "" || h.Value == "" || strings.HasPrefix(h.Name, "picture.") {
			t.Errorf("%s: handle %+v is not usable", name, h)
		}
	}
}

func TestLabelsKeepClear(t *testing.T)        { labelsKeepClear(t, sizes, 50) }
func TestLabelsKeepClearInSmall(t *testing.T) { labelsKeepClear(t, small, 4) }

// labelsKeepClear draws the grid at sizes. Of so many pictures one may lose a
// label.
func labelsKeepClear(t *testing.T, sizes [][2]float64, of int) {
	lost, all, n := map[string]int{}, 0, 0
	grid(func(name string, w calc.Input) {
		r := design(t, w)
		for _, s := range sizes {
			for _, lang := range []string{"en", "es"} {
				p := Section(r, Options{Width: s[0], Height: s[1], Speaker: words.Speaker{Lang: lang}})
				checkPicture(t, fmt.Sprintf("%s at %v×%v in %s", name, s[0], s[1], lang), p, s[0], s[1])
				all++
				for _, l := range p.Lost {
					n++
					lost[strings.TrimRight(l, " 0123456789,./fintpsbl-")]++
				}
			}
		}
	})
	t.Logf("of %d pictures, labels without a place: %v", all, lost)
	if n > all/of {
		t.Errorf("%d labels in %d pictures found no place", n, all)
	}
}

func TestMarkupIsSound(t *testing.T) {
	bad := regexp.MustCompile(`NaN|Inf|style=|picture\.[a-z]|fill="#|stroke="`)
	number := regexp.MustCompile(`\d\.\d\d`)
	n := 0
	grid(func(name string, w calc.Input) {
		if n++; n%7 != 0 {
			return
		}
		r := design(t, w)
		for show := range Show(3) {
			for i := range r.Stages {
				p := Section(r, Options{Width: 390, Height: 340, Show: show, Stage: r.Stages[i].Name})
				if m := bad.FindString(p.SVG); m != "" {
					t.Errorf("%s: %q in the markup", name, m)
				}
				if m := number.FindString(stripText(p.SVG)); m != "" {
					t.Errorf("%s: more than one decimal: %q", name, m)
				}
				sound(t, name, p.SVG)
				checkPicture(t, name, p, 390, 340)
			}
		}
	})
}

// stripText leaves the markup without the words in it.
func stripText(svg string) string {
	return regexp.MustCompile(`>[^<]*<`).ReplaceAllString(regexp.MustCompile(`<defs>.*</defs>`).ReplaceAllString(svg, ""), "><")
}

// sound parses the markup as XML and looks for ids given twice.
func sound(t *testing.T, name, svg string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(svg))
	seen := map[string]bool{}
	for {
		tok, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if e, ok := tok.(xml.StartElement); ok {
			for _, a := range e.Attr {
				if a.Name.Local == "id" {
					if seen[a.Value] {
						t.Errorf("%s: id %s twice", name, a.Value)
					}
					seen[a.Value] = true
				}
			}
		}
	}
}

func BenchmarkSection(b *testing.B) {
	for c := range calc.Condition(4) {
		r, err := calc.Design(wall(c, 8*ft, 8*in, 5*ft, 0.3))
		if err != nil {
			b.Fatal(err)
		}
		b.Run(conditionID(c), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				Section(r, Options{Width: 390, Height: 360})
			}
		})
	}
}
