package draw

import "standingbeam/calc"

// Sizes of a house floor, in inches: a 2×10 joist on a 2×6 sill under 3/4 in
// boards (nominal sizes of the trade, drawn to scale).
const (
	sillDepth  = 1.5
	joistDepth = 9.25
	boardDepth = 0.75
)

// floored reports whether a floor is to hold the top.
func (p *picture) floored() bool {
	return p.in.Condition == calc.BracedTop || p.in.Condition == calc.SoilBothSides && p.in.TopHeld
}

// hung reports whether the floor hangs on the wall's side instead of lying on
// its top.
func (p *picture) hung() bool { return p.in.Brace > 0 && p.in.Brace < p.in.Height-1 }

// floorTop is the level of the finished boards.
func (p *picture) floorTop() float64 {
	if p.hung() {
		return p.in.Brace.Inches() + joistDepth/2 + boardDepth
	}
	return p.h + sillDepth + joistDepth + boardDepth
}

// floor draws the floor that holds the top, dashed in a stage without it, and
// returns the level of the joists' middle.
func (p *picture) floor() float64 {
	top := p.floorTop()
	joist := top - boardDepth
	left := p.faceA() + 2
	if p.hung() {
		left = p.faceB()
	}
	y, w := p.y(top), p.o.Width+4
	if !p.held {
		p.s.rect("unbuilt", "", left, y, w-left, p.y(joist-joistDepth)-y)
		return joist - joistDepth/2
	}
	p.s.rect("wood", "", left, y, w-left, p.y(joist-joistDepth)-y)
	lines := new(path).move(left, p.y(joist)).line(w, p.y(joist))
	lines.move(p.x(1.5)+left-p.faceA(), p.y(joist)).line(p.x(1.5)+left-p.faceA(), p.y(joist-joistDepth))
	p.s.draw("grain", lines)
	if !p.hung() {
		p.s.rect("wood", "", left, p.y(p.h+sillDepth), (p.faceB()-p.faceA())*0.8, p.y(p.h)-p.y(p.h+sillDepth))
	}
	p.p.inked.area(Box{X: left, Y: y, W: 30, H: p.y(joist-joistDepth) - y}, 6)
	p.p.inked.line(left, y, w, y, 4)
	p.p.inked.line(left, p.y(joist-joistDepth), w, p.y(joist-joistDepth), 4)
	return joist - joistDepth/2
}
