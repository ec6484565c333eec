package draw

import (
	"math"

	"standingbeam/calc"
)

// trace draws the curve as cubic pieces: once as a line, once as the area
// between it and the wall's face. A piece that changes sides is cut there.
func (p *picture) trace() (outline, area *path) {
	outline, area = &path{}, &path{}
	side, last := 0.0, 0.0
	piece := func(lo, hi float64) {
		c := &p.curve
		v0, s0, v1, s1 := c.slopes(lo, hi)
		now := 1.0
		if v0+v1 < 0 {
			now = -1
		}
		face := p.face(now)
		k, s := p.window.Curve, (hi-lo)/3
		x0, x3 := face+k*v0, face+k*v1
		x1, x2 := face+k*(v0+s0*s), face+k*(v1-s1*s)
		if side == 0 || now != side {
			if side != 0 {
				area.line(p.face(side), p.y(lo)).close()
			}
			outline.move(face, p.y(lo)).line(x0, p.y(lo))
			area.move(face, p.y(lo)).line(x0, p.y(lo))
			side, last = now, x0
		}
		if math.Abs(x0-last) > 0.05 {
			outline.line(x0, p.y(lo))
			area.line(x0, p.y(lo))
		}
		last = x3
		outline.cubic(x1, p.y(lo+s), x2, p.y(hi-s), x3, p.y(hi))
		area.cubic(x1, p.y(lo+s), x2, p.y(hi-s), x3, p.y(hi))
	}
	p.pieces(piece)
	if side != 0 {
		area.line(p.face(side), p.y(p.h)).close()
		outline.line(p.face(side), p.y(p.h))
	}
	return outline, area
}

// pieces calls f for every stretch of the curve that stays on one side.
func (p *picture) pieces(f func(lo, hi float64)) {
	c := &p.curve
	most := math.Max(c.a.value, c.b.value)
	for i := 1; i < len(c.cuts); i++ {
		lo, hi := c.cuts[i-1], c.cuts[i]
		v0, v1 := c.at(lo, false), c.at(hi, true)
		if v0*v1 < 0 && math.Min(math.Abs(v0), math.Abs(v1)) > 1e-6*most {
			r := c.root(lo, hi)
			f(lo, r)
			lo = r
		}
		f(lo, hi)
	}
}

// face is the wall's face from which values of that sign are drawn.
func (p *picture) face(sign float64) float64 {
	if sign < 0 {
		return p.faceA()
	}
	return p.faceB()
}

// beside returns where a value stands that is drawn outward from face f.
func (p *picture) beside(f calc.Face, value float64) float64 {
	if f == calc.FaceA {
		return p.faceA() - value*p.window.Curve
	}
	return p.faceB() + value*p.window.Curve
}

// bothFaces lists the faces in the order of drawing.
var bothFaces = [...]calc.Face{calc.FaceA, calc.FaceB}

// bands draws what plain concrete and what the bars carry, beside each face
// that is in tension.
func (p *picture) bands() {
	c := &p.curve
	for _, f := range bothFaces {
		if !c.banded(f) {
			continue
		}
		face := p.beside(f, 0)
		top, foot := p.y(p.h), p.y(0)
		if c.plain > 0 {
			x := p.beside(f, c.plain)
			l, r := math.Min(x, face), math.Max(x, face)
			p.s.rect("band plain", "", l, top, r-l, foot-top)
			p.s.rect("band", p.o.ID+"-plain", l, top, r-l, foot-top)
			p.s.segment("edge plain", x, top, x, foot)
			p.p.inked.line(x, top, x, foot, 2)
		}
		if b := c.bars(f); b > 0 {
			x := p.beside(f, b)
			l, r := math.Min(x, face), math.Max(x, face)
			p.s.rect("band steel", "", l, top, r-l, foot-top)
			p.s.draw("edge steel", new(path).move(face, top).line(x, top).line(x, foot).line(face, foot))
			p.p.inked.line(x, top, x, foot, 2)
			p.p.inked.line(face, top, x, top, 3)
			p.p.inked.line(face, foot, x, foot, 3)
		}
	}
}

// drawCurve draws the curve itself, and darkens what reaches beyond the
// strength that counts.
func (p *picture) drawCurve() {
	c := &p.curve
	if c.d == nil || p.window.Curve == 0 {
		return
	}
	outline, area := p.trace()
	p.s.draw("area", area)
	for _, f := range bothFaces {
		p.overrun(f, area)
	}
	p.s.draw("curve", outline)
	p.avoidCurve()
	p.sayCurve()
}

// overrun marks the part of the area that lies beyond what the wall carries.
func (p *picture) overrun(f calc.Face, area *path) {
	c := &p.curve
	most := c.bars(f)
	if most == 0 {
		most = c.plain
	}
	if !c.banded(f) || c.of(f).value <= most*(1+1e-9) || p.curve.show == Deflected {
		return
	}
	x, far := p.beside(f, most), p.beside(f, c.of(f).value)
	id := p.o.ID + "-over-" + [...]string{calc.FaceA: "a", calc.FaceB: "b"}[f]
	p.s.raw(`<clipPath id="` + id + `">`)
	p.s.rect("", "", math.Min(x, far)-1, p.y(p.h), math.Abs(far-x)+2, p.y(0)-p.y(p.h))
	p.s.raw(`</clipPath><g clip-path="url(#` + id + `)">`)
	p.s.drawIn("over", p.o.ID+"-over", area)
	p.s.raw("</g>")
}

// avoidCurve keeps labels off the line of the curve.
func (p *picture) avoidCurve() {
	c := &p.curve
	for i := 1; i < len(c.cuts); i++ {
		v0, v1 := c.at(c.cuts[i-1], false), c.at(c.cuts[i], true)
		x0, x1 := p.face(v0)+v0*p.window.Curve, p.face(v1)+v1*p.window.Curve
		p.p.inked.line(x0, p.y(c.cuts[i-1]), x1, p.y(c.cuts[i]), 6)
	}
}
