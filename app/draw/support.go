package draw

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// supports draws what holds the wall: floor, tie, slab or footing, with an
// arrow whose length is the reaction's share of the greatest.
func (p *picture) supports() {
	var top, foot *calc.Reaction
	most := 0.0
	if p.st != nil {
		for i := range p.st.Reactions {
			r := &p.st.Reactions[i]
			if math.Abs(float64(r.Factored)) < 1e-3 {
				continue // nothing pushes
			}
			most = math.Max(most, math.Abs(float64(r.Factored)))
			if r.At.Inches() <= p.h/2 && foot == nil {
				foot = r
			} else {
				top = r
			}
		}
	}
	size := func(r *calc.Reaction) float64 {
		if r == nil || most == 0 {
			return 0
		}
		return 14 + 32*math.Abs(float64(r.Factored))/most
	}
	switch {
	case p.floored():
		y := p.y(p.floor())
		switch {
		case !p.held:
			p.sayEmpty()
		case top != nil:
			p.force("hold", p.faceB()+2, y, size(top), float64(top.Factored))
			p.sayFloor(top, y)
		}
	case p.in.Condition == calc.TiedToSlab && p.held:
		if top != nil {
			p.pull(top, size(top))
		}
	default:
		p.sayEmpty()
	}
	if foot != nil && p.held {
		p.holdFoot(foot, size(foot))
	}
}

// holdFoot draws the reaction at the foot: of a slab in the slab, of the
// footing alone at its side.
func (p *picture) holdFoot(r *calc.Reaction, size float64) {
	x, y := p.faceB()+2, p.y(p.slabMiddle())
	word := "picture.slab-holds"
	if !p.slabThere() {
		x, y = p.x(p.t+p.toe)+2, p.y(-p.foot/2)
		word = "picture.footing-holds"
	}
	class := "hold"
	if p.in.Condition == calc.TiedToSlab {
		class = "hold heavy"
	}
	p.force(class, x, y, size, float64(r.Factored))
	p.sayFoot(word, r, x+size, y)
}

// force draws an arrow of that length that ends at x; a positive force points
// to the left.
func (p *picture) force(class string, x, y, size, sign float64) {
	if size <= 0 {
		return
	}
	head := 9.0
	if class == "hold heavy" {
		head = 13
	}
	tip, tail, dir := x, x+size, -1.0
	if sign < 0 {
		tip, tail, dir = x+size, x, 1
	}
	p.s.segment(class+" shaft", tail, y, tip-dir*head*0.8, y)
	p.s.draw(class+" tip", new(path).head(tip, y, dir, 0, head))
	p.p.keep(Box{X: x - 1, Y: y - 6, W: size + 2, H: 12})
}

// pull draws the tie's force: arrows in the slab that pull the wall back into
// the ground.
func (p *picture) pull(r *calc.Reaction, size float64) {
	top, base := p.tieSpan()
	y := p.y((top + base) / 2)
	x := p.faceA() - 4
	for range 2 {
		p.s.segment("hold shaft", x, y, x-size+7, y)
		p.s.draw("hold tip", new(path).head(x-size, y, -1, 0, 9))
		x -= size + 8
		size *= 0.8
	}
	p.sayTie(r, y, p.y(top))
}

// ghost is the faint lean of a wall that nothing holds at its top.
func (p *picture) ghost() {
	if p.held || p.st == nil || p.o.Show == Deflected {
		return
	}
	const lean = 15.0
	dir := 1.0
	if p.st.Service.Deflection(units.Length(p.h)) < 0 {
		dir = -1
	}
	q := &path{}
	for i, x := range []float64{p.faceA(), p.faceB()} {
		y0, y1 := p.y(0), p.y(p.h)
		third := (y1 - y0) / 3
		if i == 0 {
			q.move(x, y0).cubic(x, y0+third, x+dir*lean/3, y1-third, x+dir*lean, y1)
			q.line(p.faceB()+dir*lean, y1)
			continue
		}
		q.cubic(x+dir*lean/3, y1-third, x, y0+third, x, y0)
	}
	p.s.draw("lean", q)
	p.p.inked.area(Box{X: p.faceB(), Y: p.y(p.h), W: lean, H: (p.y(0) - p.y(p.h)) / 2}, 3)
}

// bearing draws the pressure under the footing as a block: a trapezoid over
// the whole width, or a triangle over the length that bears.
func (p *picture) bearing() {
	if p.st == nil || p.st.Stability == nil || !p.real {
		return
	}
	b := p.st.Stability
	most := math.Max(float64(b.BearingToe), float64(b.BearingHeel))
	if b.Overturned || most <= 0 {
		return
	}
	y, k := p.y(-p.foot)+1, (bearing-4)/most
	toe, heel := p.x(p.t+p.toe), p.x(-p.heel)
	q0, q1 := float64(b.BearingToe)*k, float64(b.BearingHeel)*k
	if c := b.Contact.Inches() * p.window.Scale; c < toe-heel-0.5 {
		if q0 >= q1 {
			heel, q1 = toe-c, 0
		} else {
			toe, q0 = heel+c, 0
		}
	}
	p.s.draw("bearing", new(path).move(heel, y).line(heel, y+q1).line(toe, y+q0).line(toe, y).close())
	n := int((toe-heel)/18) + 1
	shafts := &path{}
	for i := 0; i <= n; i++ {
		t := float64(i) / float64(n)
		x, q := heel+(toe-heel)*t, q1+(q0-q1)*t
		if q < 5 {
			continue
		}
		shafts.move(x, y+q).line(x, y+2).move(x-2.5, y+5).line(x, y+1.5).line(x+2.5, y+5)
	}
	p.s.draw("bearing rays", shafts)
	p.p.inked.area(Box{X: heel, Y: y, W: toe - heel, H: bearing}, 4)
	p.sayBearing(toe, heel, y+math.Max(q0, q1), q0 >= q1)
}
