package sheet

import "math"

// capital is the height of capitals as a share of the type size (DejaVu Sans,
// 0.729): the format gives the height of a text by its capitals.
const capital = 0.729

func (w *dxfWriter) entities() {
	for _, p := range w.v.paths {
		w.path(p)
	}
	for _, p := range w.v.specks {
		w.begin("POINT", hatching)
		w.at(10, p)
	}
	for _, c := range w.v.circles {
		w.circle(c)
	}
	for _, c := range w.v.marks {
		w.circle(c)
	}
	for _, t := range w.v.texts {
		w.text(t)
	}
}

func (w *dxfWriter) path(p path) {
	switch n := len(p.points); {
	case n < 2:
	case p.fill == ink && p.closed && n <= 4:
		w.solid(p)
	case n == 2 && p.width == 0 && p.points[0].bulge == 0:
		w.begin("LINE", p.layer)
		w.at(10, p.points[0].point)
		w.at(11, p.points[1].point)
	case n == 2 && p.width == 0:
		w.arc(p)
	default:
		w.polyline(p)
	}
}

// solid fills a triangle, or a square whose corners go round.
func (w *dxfWriter) solid(p path) {
	w.begin("SOLID", p.layer)
	for i, k := range []int{0, 1, 3, 2} {
		w.at(10+i, p.points[min(k, len(p.points)-1)].point)
	}
}

// arc writes one arc by its middle, radius and angles, which run to the left.
func (w *dxfWriter) arc(p path) {
	a, b := p.points[0], p.points[1]
	if a.bulge < 0 {
		a, b = vertex{b.point, -a.bulge}, a
	}
	r := arcRadius(a, b)
	k := a.bulge
	// The middle lies (1 − bulge²)/(4 bulge) of the chord left of its middle.
	off := (1 - k*k) / (4 * k)
	c := point{(a.x+b.x)/2 - (b.y-a.y)*off, (a.y+b.y)/2 + (b.x-a.x)*off}
	w.begin("ARC", p.layer)
	w.at(10, c)
	w.number(40, r*w.unit)
	w.number(50, degrees(math.Atan2(a.y-c.y, a.x-c.x)))
	w.number(51, degrees(math.Atan2(b.y-c.y, b.x-c.x)))
}

func degrees(rad float64) float64 {
	d := rad * 180 / math.Pi
	if d < 0 {
		d += 360
	}
	return d
}

// polyline writes a run of lines and arcs; a bar has its diameter as width.
func (w *dxfWriter) polyline(p path) {
	w.begin("POLYLINE", p.layer)
	w.int(66, 1)
	w.number(10, 0)
	w.number(20, 0)
	w.number(30, 0)
	closed := 0
	if p.closed {
		closed = 1
	}
	w.int(70, closed)
	if p.width > 0 {
		w.number(40, p.width*w.unit)
		w.number(41, p.width*w.unit)
	}
	for _, c := range p.points {
		w.begin("VERTEX", p.layer)
		w.at(10, c.point)
		if c.bulge != 0 {
			w.number(42, c.bulge)
		}
	}
	w.begin("SEQEND", p.layer)
}

// circle writes a bar that is cut at its true size, and a mark's circle at
// its size on paper.
func (w *dxfWriter) circle(c circle) {
	r := c.r
	if r == 0 {
		r = w.v.pt(c.least)
	}
	w.begin("CIRCLE", c.layer)
	w.at(10, c.center)
	w.number(40, r*w.unit)
}

func (w *dxfWriter) text(t text) {
	w.begin("TEXT", lettering)
	w.at(10, t.at)
	w.number(40, w.v.pt(t.size)*capital*w.unit)
	w.pair(1, dxfText(t.words))
	across, up := int(1-t.h), int(2-t.v)
	if t.turned {
		w.number(50, 90)
		across, up = int(1-t.v), int(2+t.h)
	}
	// 72: 0 left, 1 middle, 2 right; 73: 1 foot, 2 middle, 3 head.
	w.int(72, across)
	w.at(11, t.at)
	w.int(73, up)
}
