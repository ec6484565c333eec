package statics

import (
	"slices"

	"standingbeam/calc/units"
)

// Diagram holds the reactions and the exact diagrams of a strip. The zero
// Diagram is that of nothing: all its values are zero.
type Diagram struct {
	ei        float64
	segments  []Segment
	reactions []Reaction
}

// Reaction is what a support gives. Force is positive toward A. Moment is the
// jump of M going up across a fixed support: for a fixed foot the moment in
// the wall at the joint, negative with tension on face A.
type Reaction struct {
	At     units.Length
	Force  units.ForcePerLength
	Moment units.MomentPerLength
	Kind   Restraint
}

// reactions lists them in the order of the supports; a support that is as soft
// as nothing gives nothing.
func reactions(s *Strip, hs []hold) []Reaction {
	out := make([]Reaction, len(s.Supports))
	for i, p := range s.Supports {
		out[i] = Reaction{At: p.At, Kind: p.Kind}
	}
	for _, h := range hs {
		out[h.index].Force = units.ForcePerLength(h.force)
		out[h.index].Moment = units.MomentPerLength(h.moment)
	}
	return out
}

// Reactions returns the reactions in the order of the strip's supports.
func (d Diagram) Reactions() []Reaction { return slices.Clone(d.reactions) }

// Segments returns the stretches between the levels at which something
// changes, from the foot up, with their polynomials.
func (d Diagram) Segments() []Segment { return slices.Clone(d.segments) }

// Breaks returns the ends of the segments, from 0 up to the top.
func (d Diagram) Breaks() []units.Length {
	if len(d.segments) == 0 {
		return nil
	}
	out := make([]units.Length, 0, len(d.segments)+1)
	for _, g := range d.segments {
		out = append(out, g.From)
	}
	return append(out, d.segments[len(d.segments)-1].To)
}

// around returns the segments below and above height y with y's place in
// each, nil beyond an end of the strip. Away from a cut both are the same.
func (d *Diagram) around(y units.Length) (below, above *Segment, tb, ta float64) {
	for i := range d.segments {
		g := &d.segments[i]
		t := float64(y - g.From)
		if g.From < y && y <= g.To {
			below, tb = g, t
		}
		if g.From <= y && y < g.To {
			above, ta = g, t
		}
	}
	return below, above, tb, ta
}

// Shear returns V just below and just above height y. They differ at a support
// and at a line force; beyond an end of the strip V is zero.
func (d Diagram) Shear(y units.Length) (below, above units.ForcePerLength) {
	b, a, tb, ta := d.around(y)
	if b != nil {
		below = units.ForcePerLength(b.shear(tb))
	}
	if a != nil {
		above = units.ForcePerLength(a.shear(ta))
	}
	return below, above
}

// MomentLimits returns M just below and just above height y. They differ at a
// couple and at a fixed support; beyond an end of the strip M is zero.
func (d Diagram) MomentLimits(y units.Length) (below, above units.MomentPerLength) {
	b, a, tb, ta := d.around(y)
	if b != nil {
		below = units.MomentPerLength(b.moment(tb))
	}
	if a != nil {
		above = units.MomentPerLength(a.moment(ta))
	}
	return below, above
}

// Moment returns M at height y, positive with tension on face B. Where M jumps
// it is the greater of the two limits without regard to sign.
func (d Diagram) Moment(y units.Length) units.MomentPerLength {
	b, a := d.MomentLimits(y)
	if max(b, -b) > max(a, -a) {
		return b
	}
	return a
}

// Slope returns du/dy at height y: positive when the strip leans toward B.
// Beyond an end it is that of the end.
func (d Diagram) Slope(y units.Length) float64 {
	if len(d.segments) == 0 {
		return 0
	}
	g, t := locate(d.segments, y.Inches())
	return g.slope(t, d.ei)
}

// Deflection returns u at height y, positive toward B. Beyond an end it is
// that of the end.
func (d Diagram) Deflection(y units.Length) units.Length {
	if len(d.segments) == 0 {
		return 0
	}
	g, t := locate(d.segments, y.Inches())
	return units.Length(g.deflection(t, d.ei))
}

// sound reports whether all coefficients and end values are numbers.
func (d *Diagram) sound() bool {
	for i := range d.segments {
		g := &d.segments[i]
		l := g.length()
		for _, v := range g.Moment {
			if !finite(v) {
				return false
			}
		}
		if !finite(g.moment(l)) || !finite(g.shear(l)) || !finite(g.Slope) ||
			!finite(g.slope(l, d.ei)) || !finite(g.deflection(0, d.ei)) || !finite(g.deflection(l, d.ei)) {
			return false
		}
	}
	return true
}
