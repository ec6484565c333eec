package draw

import (
	"math"
	"strings"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Ranks of labels: the lowest is placed first, the highest left out first.
const (
	rankPeak = iota
	rankSupport
	rankPush
	rankDimension
	rankBand
	rankCaption
	rankBars
	rankFooting
	rankMore
	rankLeast
)

func (p *picture) say(l label) { p.labels = append(p.labels, l) }

func softLine(text string) line   { return line{text: text, soft: true} }
func plainLine(text string) line  { return line{text: text} }
func strongLine(text string) line { return line{text: text, bold: true} }

// number is a quantity without its unit, for a place where the unit stands
// nearby.
func number(text string) string {
	if i := strings.LastIndexByte(text, ' '); i > 0 {
		return text[:i]
	}
	return text
}

// quantity makes a quantity of the curve's kind.
func (p *picture) quantity(v float64) units.Quantity {
	return units.Quantity{Base: v, Kind: p.curve.kind}
}

// sayCurve puts the number at the curve's greatest values, the caption, and
// the strengths on the bands.
func (p *picture) sayCurve() {
	c := &p.curve
	main := calc.FaceB
	if c.a.value > c.b.value {
		main = calc.FaceA
	}
	if c.of(main).value <= 1e-9 {
		return
	}
	for _, f := range bothFaces {
		v := c.of(f)
		if !c.matters(f) || (f != main && v.value*p.window.Curve < 8) {
			continue
		}
		rank := rankPeak
		if f != main {
			rank = rankMore
		}
		p.sayPeak(f, v, rank)
		if c.banded(f) {
			p.sayBands(f, rank)
		}
	}
	p.sayCaption(main)
}

// unit is that of the curve. It stands at the greatest value; in a narrow
// picture, where that has the least room, at the caption.
func (p *picture) unit() line { return softLine(p.sp.Unit(p.curve.kind)) }

// low reports whether the picture has no room under the footing for its
// dimension: that of a phone that lies.
func (p *picture) low() bool { return p.o.Height < 260 }

func (p *picture) narrow() bool { return p.o.Width < 380 }

// outward is the sign of the direction away from the wall on the side of f.
func outward(f calc.Face) float64 {
	if f == calc.FaceA {
		return -1
	}
	return 1
}

func (p *picture) sayPeak(f calc.Face, v peak, rank int) {
	x, y := p.beside(f, v.value), p.y(v.at)
	dir := outward(f)
	p.s.circle("peak", x, y, 4.2)
	p.p.inked.area(Box{X: x - 6, Y: y - 6, W: 12, H: 12}, 60)
	text := p.sp.Demand(p.quantity(v.value))
	l := label{class: "ink", lines: []line{strongLine(number(text))}, x: x, y: y, rank: rank, wander: true, tie: 22}
	if rank == rankPeak && !p.narrow() {
		l.lines = append(l.lines, p.unit())
	}
	h := int8(dir)
	up := y - 9
	if v.at < 1 {
		// A curve that is greatest at the foot: the number goes above.
		l.spots = []spot{{x: x, y: up, v: -1}, {x: x + dir*6, y: up, h: h, v: -1}, {x: x - dir*4, y: up - 8, h: -h, v: -1},
			{x: x + dir*9, y: y, h: h}, {x: x + dir*8, y: up - 20, h: h, v: -1}}
	} else {
		l.spots = []spot{{x: x + dir*9, y: y, h: h}, {x: x + dir*9, y: y - 14, h: h}, {x: x + dir*9, y: y + 14, h: h},
			{x: x - dir*9, y: y, h: -h}, {x: x, y: y - 10, v: -1}, {x: x, y: y + 10, v: 1}}
	}
	p.say(l)
}

// sayBands writes the strengths at the edges of their bands.
func (p *picture) sayBands(f calc.Face, rank int) {
	c := &p.curve
	if rank == rankPeak {
		rank = rankBand
	}
	write := func(id, class string, v float64) {
		if v <= 0 {
			return
		}
		x, dir := p.beside(f, v), outward(f)
		text := p.sp.Word(id) + " " + number(p.sp.Capacity(p.quantity(v)))
		l := label{class: class, lines: []line{plainLine(text)}, rank: rank, wander: true, tie: 24}
		top := p.y(p.h)
		foot := p.y(0)
		l.x, l.lo, l.hi = x, top+4, foot-4
		h := int8(dir)
		for _, y := range ladder(top+2, foot-2) {
			v := int8(0)
			if y < top+10 {
				v = 1
			} else if y > foot-10 {
				v = -1
			}
			l.spots = append(l.spots, spot{x: x - dir*4, y: y, h: -h, v: v}, spot{x: x + dir*4, y: y, h: h, v: v})
		}
		l.spots = append(l.spots, spot{x: x, y: foot + 3, h: -h, v: 1}, spot{x: x, y: top - 3, h: -h, v: -1})
		p.say(l)
	}
	write("picture.with-bars", "steel", c.bars(f))
	write("picture.plain", "ink", c.plain)
}

// sayCaption says what the curve is and of which level its numbers are.
func (p *picture) sayCaption(f calc.Face) {
	c := &p.curve
	id := [...]string{Bending: "picture.bending", Shear: "picture.shear", Deflected: "picture.deflected"}[c.show]
	l := label{class: "soft", rank: rankCaption, wander: true, tie: 30,
		lines: []line{plainLine(p.sp.Word(id + ".level"))}}
	if what, level, ok := strings.Cut(l.lines[0].text, " "); ok && p.o.Width < 480 && c.show != Deflected {
		l.lines = []line{plainLine(what), plainLine(level)}
	}
	if c.show == Deflected {
		l.lines = []line{plainLine(p.sp.Word(id)), l.lines[0]}
	}
	if p.narrow() {
		l.lines = append(l.lines, p.unit())
	}
	top, foot := p.y(p.h), p.y(0)
	x, dir := p.beside(f, 0), outward(f)
	far := p.beside(f, math.Max(c.of(f).value, math.Max(c.plain, c.bars(f))))
	on := (c.of(f).at + p.h*0.6) / 2
	l.x, l.y = p.beside(f, math.Abs(c.at(on, true))), p.y(on)
	h := int8(dir)
	for _, y := range ladder(top+4, foot-4) {
		v := int8(0)
		if y < top+20 {
			v = 1
		} else if y > foot-20 {
			v = -1
		}
		l.spots = append(l.spots, spot{x: far + dir*6, y: y, h: h, v: v}, spot{x: far - dir*6, y: y, h: -h, v: v}, spot{x: x + dir*8, y: y, h: h, v: v})
	}
	l.spots = append(l.spots, spot{x: far, y: top - 4, h: -h, v: -1}, spot{x: x, y: top - 4, h: h, v: -1})
	p.say(l)
}

// ladder lists heights from the ends of a stretch inward, alternately, about
// 8 px apart.
func ladder(top, foot float64) []float64 {
	n := max(2, int((foot-top)/8))
	out := make([]float64, 0, n+1)
	for i := 0; i <= n; i++ {
		t := float64(i/2) / float64(n)
		if i%2 == 1 {
			t = 1 - t
		}
		out = append(out, top+(foot-top)*t)
	}
	return out
}
