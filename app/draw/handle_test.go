package draw

import (
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

func handle(t *testing.T, p Picture, id string) Handle {
	t.Helper()
	for _, h := range p.Handles {
		if h.ID == id {
			return h
		}
	}
	t.Fatalf("no handle %s among %d", id, len(p.Handles))
	return Handle{}
}

// A handle that is moved by so many pixels changes its value by Sign·px over
// PxPerInch; drawn again in the held window it stands under the finger.
func TestHandlesFollowTheFinger(t *testing.T) {
	set := map[string]func(*calc.Input, units.Length){
		"height":        func(w *calc.Input, l units.Length) { w.Height = l },
		"grade.a":       func(w *calc.Input, l units.Length) { w.GradeA = l },
		"grade.b":       func(w *calc.Input, l units.Length) { w.GradeB = l },
		"water":         func(w *calc.Input, l units.Length) { w.Water.Level = l },
		"footing.width": func(w *calc.Input, l units.Length) { w.Footing.Width = l },
	}
	for id, change := range set {
		w := wall(calc.SoilBothSides, 8*ft, 8*in, 4*ft, 0.3)
		w.GradeA = 6 * ft
		w.Water = calc.Water{Standing: true, Level: 3 * ft}
		before := Section(design(t, w), Options{Width: 640, Height: 560})
		h := handle(t, before, id)
		const moved = 10.0
		change(&w, h.Now+units.Length(h.Sign*moved/h.PxPerInch))
		after := Section(design(t, w), Options{Width: 640, Height: 560, Hold: before.Window})
		g := handle(t, after, id)
		dx, dy := g.X-h.X, g.Y-h.Y
		if h.Vertical && !(near(dx, 0, 0.01) && near(dy, moved, 0.01)) || !h.Vertical && !(near(dx, moved, 0.01) && near(dy, 0, 0.01)) {
			t.Errorf("%s: the finger moved %v px, the handle (%.2f, %.2f)", id, moved, dx, dy)
		}
		if !near(h.PxPerInch, g.PxPerInch, 1e-9) {
			t.Errorf("%s: the scale changed under the finger", id)
		}
	}
}

// Moving the toe moves both ends of the footing and the handle with it.
func TestToeHandle(t *testing.T) {
	w := free()
	before := Section(design(t, w), Options{Width: 640, Height: 560})
	h := handle(t, before, "footing.toe")
	w.Footing.Toe += 6 * in
	after := Section(design(t, w), Options{Width: 640, Height: 560, Hold: before.Window})
	if g := handle(t, after, "footing.toe"); !near((g.X-h.X)*h.Sign, 6*h.PxPerInch, 0.01) {
		t.Errorf("toe 6 in longer: the handle moved %v px at %v px/in", g.X-h.X, h.PxPerInch)
	}
}

func TestHeldWindowIsGivenUpWhenOutgrown(t *testing.T) {
	w := braced()
	first := Section(design(t, w), Options{Width: 390, Height: 360})
	w.Height, w.GradeA = 16*ft, 15*ft
	p := Section(design(t, w), Options{Width: 390, Height: 360, Hold: first.Window})
	checkPicture(t, "16 ft in the window of 8 ft", p, 390, 360)
	if p.Window.Scale >= first.Window.Scale {
		t.Error("a wall twice as high is drawn in the same window")
	}
}

// While the wall grows inside one window, the scale of the curve stays and the
// curve itself is seen to grow.
func TestCurveGrowsInItsWindow(t *testing.T) {
	w := braced()
	w.Height, w.GradeA = 9*ft, 8*ft
	a, fa := picked(t, w, Options{})
	w.Height, w.GradeA = 9*ft+2*in, 8*ft+2*in
	b, fb := picked(t, w, Options{Hold: a.Window})
	if !near(fa.window.Scale, fb.window.Scale, 1e-9) || !near(fa.window.Curve, fb.window.Curve, 1e-9) {
		t.Error("two inches more changed the scales")
	}
	x0, x1 := attrs(t, a.SVG, "p-peak", "cx")[0], attrs(t, b.SVG, "p-peak", "cx")[0]
	if x1 <= x0 {
		t.Errorf("the curve did not grow: %v, %v", x0, x1)
	}
}
