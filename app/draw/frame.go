package draw

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Window is the part of the world that a picture shows and the scales at which
// it is drawn.
type Window struct {
	Scale   float64 // pixels per inch, the same both ways
	FaceA   float64 // where face A stands
	FootTop float64 // where the footing's top lies
	LeftOf  float64 // width beside face A that curves may take
	RightOf float64 // and beside face B
	Back    float64 // how far before face A the push is drawn
	Reach   float64 // width of the push
	Curve   float64 // pixels per unit of what the curve shows
	Push    float64 // pixels per psi
	Line    float64 // of the footing's dimension
	Show    Show
}

// frame is the geometry of the picture: the world in inches, and how it lies
// on the sheet.
type frame struct {
	window    Window
	t, h      float64 // wall
	toe, heel float64 // footing
	foot      float64 // its thickness
	real      bool    // the footing was given
	above     float64 // what stands above the wall's top
}

// x is where a distance from face A, positive toward B, lies on the sheet.
func (f *frame) x(in float64) float64 { return f.window.FaceA + in*f.window.Scale }

// y is where a level above the footing's top lies.
func (f *frame) y(level float64) float64 { return f.window.FootTop - level*f.window.Scale }

// level is y for a length of the answer.
func (f *frame) level(l units.Length) float64 { return f.y(l.Inches()) }

func (f *frame) faceA() float64 { return f.window.FaceA }
func (f *frame) faceB() float64 { return f.x(f.t) }

// Room that is kept, in pixels.
const (
	target  = 56.0 // a handle's target
	column  = 28.0 // the first dimension line stands so far from the edge
	grip    = 12.0 // radius of a handle's dot
	bearing = 26.0 // depth of the bearing block
)

// windowSteps are the heights of wall, in feet, that a picture is framed for.
// Stepping a wall up by inches leaves its scale alone until it outgrows one.
var windowSteps = [...]float64{4, 5, 6, 8, 10, 12, 14, 16, 18, 20}

func windowFor(h float64) float64 {
	for _, s := range windowSteps {
		if h <= s*12+1e-9 {
			return s * 12
		}
	}
	return h
}

// fit chooses the window: the one that is held when the wall still fits it,
// else a new one.
func (p *picture) fit() {
	p.measure()
	if w := p.o.Hold; w.Scale > 0 && p.fits(w) {
		p.window = w
		p.scales(w)
		return
	}
	p.frameNew()
	p.scales(Window{})
}

// measure reads the world's sizes. A footing that was not given is drawn as a
// ghost: twice as wide as the wall and as thick.
func (p *picture) measure() {
	in, l := p.in, p.r.Layout
	p.t, p.h = in.Thickness.Inches(), in.Height.Inches()
	if p.real = in.Footing.Given; p.real {
		p.foot = in.Footing.Thickness.Inches()
		p.toe = in.Footing.Toe.Inches()
		p.heel = math.Max(0, (in.Footing.Width - in.Footing.Toe - in.Thickness).Inches())
	} else {
		p.foot, p.toe, p.heel = p.t, p.t/2, p.t/2
	}
	switch {
	case in.Condition == calc.TiedToSlab:
		p.above = math.Max(0, (l.TieLevel + l.TieThick/2 - in.Height).Inches())
	case p.floored():
		p.above = math.Max(0, p.floorTop()-p.h)
	}
}

// fits reports whether the wall can be drawn in a held window.
func (p *picture) fits(w Window) bool {
	if w.Show != p.o.Show || w.Line > p.o.Height || w.FaceA > p.o.Width {
		return false
	}
	top := w.FootTop - (p.h+p.above)*w.Scale
	edge := p.edge()
	return top >= 12 && w.FootTop-p.h*w.Scale >= column &&
		w.FaceA-p.heel*w.Scale >= edge-1 && w.FaceA+(p.t+p.toe)*w.Scale <= p.o.Width-edge+1 &&
		w.FootTop+p.foot*w.Scale+8 < w.Line
}

// edge is the room that the footing's ends keep from the picture's edges: a
// handle stands outside each.
func (p *picture) edge() float64 {
	if p.real && !p.low() {
		return target
	}
	return 8
}

// roomy rounds a projection of the footing up to half feet, so that the
// picture does not shift with every inch.
func (p *picture) roomy(in float64) float64 {
	if !p.real {
		return in
	}
	return math.Ceil(in/6-1e-9) * 6
}

// twoGrounds reports whether the ground on side B is of interest by itself.
func (p *picture) twoGrounds() bool {
	return p.in.Condition == calc.SoilBothSides || p.in.GradeB > 0
}
