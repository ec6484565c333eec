package statics

import (
	"math"

	"standingbeam/calc/units"
)

// noise is the part of the greatest value below which a value counts as zero,
// and by which one must exceed another to take its place as the greatest: of
// equal ones the lowest on the wall is named.
const noise = 1e-12

// peak collects the greatest value, by its key, from the foot up.
type peak struct{ at, value, key float64 }

func (p *peak) offer(at, value, key float64) {
	if key > p.key+noise*math.Abs(p.key) {
		*p = peak{at, value, key}
	}
}

// MaxMoment returns the greatest moment with tension on face B and its height;
// 0 at the foot if there is none.
func (d Diagram) MaxMoment() (at units.Length, m units.MomentPerLength) { return d.bending(1) }

// MinMoment returns the greatest moment with tension on face A, a negative
// number, and its height; 0 at the foot if there is none.
func (d Diagram) MinMoment() (at units.Length, m units.MomentPerLength) { return d.bending(-1) }

func (d *Diagram) bending(sign float64) (units.Length, units.MomentPerLength) {
	var p peak
	scale := d.size()
	for i := range d.segments {
		g := &d.segments[i]
		var room [4]float64
		for _, t := range g.still(room[:0]) {
			m := g.moment(t)
			scale = max(scale, math.Abs(m))
			p.offer(g.From.Inches()+t, m, sign*m)
		}
	}
	if p.key <= noise*scale {
		return 0, 0
	}
	return units.Length(p.at), units.MomentPerLength(p.value)
}

// size is the moment that the reactions could make: rounding leaves a small
// part of it, also where the strip does not bend at all.
func (d *Diagram) size() float64 {
	var force, moment float64
	for _, r := range d.reactions {
		force += math.Abs(float64(r.Force))
		moment += math.Abs(float64(r.Moment))
	}
	if n := len(d.segments); n > 0 {
		moment += force * d.segments[n-1].To.Inches()
	}
	return moment
}

// MaxShear returns the greatest shear without regard to sign, with its sign,
// and its height.
func (d Diagram) MaxShear() (at units.Length, v units.ForcePerLength) {
	var p peak
	for i := range d.segments {
		g := &d.segments[i]
		l := g.length()
		for _, t := range [3]float64{0, inner(g.Moment[2], 3*g.Moment[3], l), l} {
			q := g.shear(t)
			p.offer(g.From.Inches()+t, q, math.Abs(q))
		}
	}
	return units.Length(p.at), units.ForcePerLength(p.value)
}

// MaxDeflection returns the greatest deflection without regard to sign, with
// its sign, and its height.
func (d Diagram) MaxDeflection() (at, u units.Length) {
	var p peak
	for i := range d.segments {
		g := &d.segments[i]
		var room [6]float64
		for _, t := range g.upright(room[:0], d.ei) {
			u := g.deflection(t, d.ei)
			p.offer(g.From.Inches()+t, u, math.Abs(u))
		}
	}
	return units.Length(p.at), units.Length(p.value)
}

// upright returns the ends of the segment and the places within it where the
// slope is zero, in ascending order: V tells where M turns, M where the slope
// turns.
func (g *Segment) upright(out []float64, ei float64) []float64 {
	l := g.length()
	c := &g.Moment
	var roomV, roomM [4]float64
	turns := quadratic(roomV[:0], c[1], 2*c[2], 3*c[3], l)
	bends := crossings(roomM[:0], c[:], turns, l)
	slope := [5]float64{g.Slope * ei, -c[0], -c[1] / 2, -c[2] / 3, -c[3] / 4}
	out = append(out, 0)
	out = crossings(out, slope[:], bends, l)
	return append(out, l)
}

// still returns the ends of the segment and the places within it where V is
// zero, in ascending order.
func (g *Segment) still(out []float64) []float64 {
	l := g.length()
	out = append(out, 0)
	c := &g.Moment
	out = quadratic(out, c[1], 2*c[2], 3*c[3], l)
	return append(out, l)
}

// inner returns the root of a + b t when it lies within 0 to l, else 0.
func inner(a, b, l float64) float64 {
	if t := -a / b; t > 0 && t < l {
		return t
	}
	return 0
}
