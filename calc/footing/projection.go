package footing

import "standingbeam/calc/units"

// Base is the footing under a wall with the pressures on it, at factored
// level. The bearing runs linear from AtToe to AtHeel over the whole width, or
// from the pressed edge down to zero over Contact where that is less than
// Width. OnToe and OnHeel press down on the projections: the footing's own
// weight and what lies on it.
type Base struct {
	Width, Toe, Stem units.Length
	AtToe, AtHeel    units.Stress
	Contact          units.Length
	OnToe, OnHeel    units.Stress
}

// Projection is the part of a footing beyond one face of the stem.
type Projection struct {
	length    float64 // from the face to the edge, in
	edge, per float64 // upward pressure at the edge, psi, and its growth toward the stem, psi/in
	down      float64 // downward pressure, psi
}

// Toe returns the projection beyond face B.
func Toe(b Base) Projection {
	return projection(b.Toe, b.Width, b.Contact, b.AtToe, b.AtHeel, b.OnToe)
}

// Heel returns the projection beyond face A.
func Heel(b Base) Projection {
	return projection(b.Width-b.Toe-b.Stem, b.Width, b.Contact, b.AtHeel, b.AtToe, b.OnHeel)
}

// projection describes the bearing as a line from the near edge; where it
// falls below zero there is none.
func projection(length, width, contact units.Length, near, far, down units.Stress) Projection {
	p := Projection{length: max(0, length.Inches()), down: down.PSI()}
	w, c, n, f := width.Inches(), contact.Inches(), near.PSI(), far.PSI()
	switch {
	case !(c > 0 && w > 0):
	case c >= w:
		p.edge, p.per = n, (f-n)/w
	case n >= f:
		p.edge, p.per = n, -n/c
	default:
		p.edge, p.per = f*(1-w/c), f/c
	}
	return p
}

// Length returns the projection's length from the face of the stem.
func (p Projection) Length() units.Length { return units.Length(p.length) }

// Demand is what a projection must carry, at factored level: moment and shear
// at the face of the stem, and the shear at distances d and h from it.
type Demand struct {
	Moment                    units.MomentPerLength
	Shear, ShearAtD, ShearAtH units.ForcePerLength
}

// Demand returns the demands with the distances d and h. Signs are those of
// [Projection.At].
func (p Projection) Demand(d, h units.Length) Demand {
	var r Demand
	r.Moment, r.Shear = p.At(0)
	_, r.ShearAtD = p.At(d)
	_, r.ShearAtH = p.At(h)
	return r
}

// At returns moment and shear of the section at distance x from the face of
// the stem: the bearing less the weight on the part beyond it,
//
//	V = ∫ (q − w) ds,  M = ∫ (q − w) (a − s) ds,  0 ≤ s ≤ a = L − x
//
// with s from the edge. Both are positive where the ground bends the
// projection up (tension at the bottom), negative where the weight bends it
// down (tension at the top). Beyond the edge both are zero.
//
// Source: statics; the face of the wall is the critical section of the moment
// by ACI 318-19 13.2.7.1.
func (p Projection) At(x units.Length) (units.MomentPerLength, units.ForcePerLength) {
	a := p.length - max(0, x.Inches())
	if !(a > 0) {
		return 0, 0
	}
	v, m := -p.down*a, -p.down*a*a/2
	lo, hi := p.pressed(a)
	if hi > lo {
		q0, q1 := p.edge+p.per*lo, p.edge+p.per*hi
		l := hi - lo
		f := (q0 + q1) / 2 * l
		v += f
		m += f*(a-hi) + (2*q0+q1)*l*l/6
	}
	return units.MomentPerLength(m), units.ForcePerLength(v)
}

// pressed returns the stretch of 0 to a, from the edge, under which there is
// bearing.
func (p Projection) pressed(a float64) (lo, hi float64) {
	lo, hi = 0, a
	if p.edge < 0 {
		lo = a
		if p.per > 0 {
			lo = min(a, -p.edge/p.per)
		}
	}
	if p.per < 0 && p.edge >= 0 {
		hi = min(a, -p.edge/p.per)
	}
	return lo, hi
}
