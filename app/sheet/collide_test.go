package sheet

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// labels are the spaces of everything that is read in a drawing, in points on
// paper, y down.
func labels(d *drawing) (boxes []box, names []string) {
	add := func(v *figure, b box, name string) {
		boxes = append(boxes, onPaper(v, b))
		names = append(names, v.name+": "+name)
	}
	for _, v := range d.views {
		marked := map[point]bool{}
		for _, m := range v.marks {
			marked[m.center] = true
			add(v, v.around(m), "a mark")
		}
		for _, t := range v.texts {
			if !marked[t.at] {
				add(v, v.room(t), t.words)
			}
		}
	}
	return boxes, names
}

func onPaper(v *figure, b box) box {
	x := func(real float64) float64 { return v.origin.x*72 + v.points(real) }
	y := func(real float64) float64 { return v.origin.y*72 - v.points(real) }
	return box{x(b.x0), y(b.y1), x(b.x1), y(b.y0)}
}

// shrunk is a box without the air round its letters.
func shrunk(b box, by float64) box { return box{b.x0 + by, b.y0 + by, b.x1 - by, b.y1 - by} }

// checkDrawing fails where labels cover each other or leave the paper, a
// leader runs through a label, or a label found no place.
func checkDrawing(t *testing.T, d *drawing) {
	t.Helper()
	boxes, names := labels(d)
	for i, a := range boxes {
		if a.x0 < -0.5 || a.y0 < -0.5 || a.x1 > d.width*72+0.5 || a.y1 > d.height*72+0.5 {
			t.Errorf("%s leaves the drawing: %.0f", names[i], a)
		}
		for j := range i {
			if shrunk(a, 0.8).overlaps(shrunk(boxes[j], 0.8)) {
				t.Errorf("%s and %s cover each other", names[i], names[j])
			}
		}
	}
	for _, v := range d.views {
		if v.crowded {
			t.Errorf("%s: a label found no place", v.name)
		}
		for _, l := range v.leaders {
			a, b := onPaper(v, box{l[0].x, l[0].y, l[0].x, l[0].y}), onPaper(v, box{l[1].x, l[1].y, l[1].x, l[1].y})
			for i, w := range boxes {
				if crosses(point{a.x0, a.y0}, point{b.x0, b.y0}, shrunk(w, 1.6), strings.HasSuffix(names[i], "a mark")) {
					t.Errorf("a leader runs through %s", names[i])
				}
			}
		}
	}
}

// crosses reports whether a stroke enters a box, or the circle in it.
func crosses(a, b point, w box, round bool) bool {
	n := int(math.Hypot(b.x-a.x, b.y-a.y)) + 1
	for i := range n + 1 {
		s := float64(i) / float64(n)
		x, y := a.x+s*(b.x-a.x), a.y+s*(b.y-a.y)
		if round && math.Hypot(x-(w.x0+w.x1)/2, y-(w.y0+w.y1)/2) > (w.x1-w.x0)/2 {
			continue
		}
		if x > w.x0 && x < w.x1 && y > w.y0 && y < w.y1 {
			return true
		}
	}
	return false
}

func TestLabelsOfPapers(t *testing.T) {
	eachPaper(t, func(t *testing.T, r calc.Result, o Options) {
		checkDrawing(t, newCrew(&r, o).drawing())
		width, height := o.size()
		s := newScene(&r, o.Speaker)
		checkDrawing(t, s.layOut(width, height*0.56))
		checkDrawing(t, s.standalone(o))
		for i := range r.Stages {
			checkDrawing(t, s.diagrams(&r.Stages[i], width))
		}
	})
}

// grid is a grid of walls from the least to the greatest.
func grid() (out []calc.Input) {
	for c := calc.BracedTop; c <= calc.SoilBothSides; c++ {
		for _, h := range []units.Length{2 * ft, 4 * ft, 9*ft + 3.5*in, 14 * ft, 20 * ft} {
			for _, t := range []units.Length{7.5 * in, 12 * in, 24 * in} {
				for _, foot := range []units.Length{0, 3 * ft, 15 * ft} {
					for _, share := range []float64{0.4, 1} {
						w := wall(c)
						w.Name = fmt.Sprintf("%v %.1f ft high, %v in, footing %v ft, fill %v", c, h.Feet(), t.Inches(), foot.Feet(), share)
						w.Height, w.Thickness, w.GradeA = h, t, units.Length(share)*h
						w.GradeB = min(w.GradeB, w.GradeA/2)
						w.Footing.Given, w.Footing.Width, w.Footing.NoToe = foot > 0, max(foot, t+2*in), true
						if c == calc.FreeTop {
							w.Footing.NoToe, w.Footing.Toe = false, foot/4
						}
						out = append(out, w)
					}
				}
			}
		}
	}
	return out
}

// No label covers another, from a wall of 2 ft to one of 20 ft.
func TestLabelsOverGrid(t *testing.T) {
	n := 0
	for i, w := range grid() {
		r, err := calc.Design(w)
		if err != nil {
			continue // the footing is narrower than the wall
		}
		n++
		all := readers()
		o := all[[]string{"ft-in letter en", "metric a4 es", "metric letter en", "ft-in a4 es", "metric a4 en", "ft-in letter es", "ft-in a4 en", "metric letter es"}[i%8]]
		t.Run(w.Name, func(t *testing.T) { checkDrawing(t, newCrew(&r, o).drawing()) })
	}
	if n < 250 {
		t.Errorf("only %d walls were drawn", n)
	}
}

// What a crew drawing says fits on one page, in every language.
func TestCrewFitsAPage(t *testing.T) {
	eachPaper(t, func(t *testing.T, r calc.Result, o Options) {
		c := newCrew(&r, o)
		width, height := o.size()
		if all := c.rest(width) + c.drawing().height*72; all > height*72 {
			t.Errorf("it is %.0f points high, the page %.0f", all, height*72)
		}
	})
}
