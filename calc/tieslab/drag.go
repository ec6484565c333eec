package tieslab

import (
	"math"

	"standingbeam/calc/soil"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// Slab is a slab on the retained ground, tied to the wall at its near edge.
// Height is the height H of the ground below it that can slide, Weight its
// dead weight on the ground per area, Friction μ that of slab on ground. Live
// load is left out.
type Slab struct {
	Height   units.Length
	Length   units.Length // from the wall
	Weight   units.Stress
	Friction float64
	Ground   soil.State
	Phi      units.Angle
}

// Wedge returns how far from the wall the sliding ground reaches at the
// slab's level,
//
//	active:   H tan(45° − φ/2) = H √Ka
//	at rest:  H
//
// A friction angle of 0 gives H too. The reach at rest is a judgement, no
// source: ground at rest does not slide, and H is farther than any wedge does.
//
// Source: Rankine's failure wedge, in any textbook of soil mechanics.
func (s Slab) Wedge() units.Length {
	if s.Ground != soil.Active {
		return s.Height
	}
	return s.Height * units.Length(math.Sqrt(soil.ActiveCoefficient(s.Phi)))
}

// Drag returns what the part of the slab beyond the wedge holds,
//
//	D = μ w (L − wedge)
//
// and 0 where the slab ends within the wedge.
func (s Slab) Drag(c *working.Chain) units.ForcePerLength {
	beyond := max(0, s.Length-s.Wedge())
	t := units.ForcePerLength(s.grip() * beyond.Inches())
	if c.On() {
		s.recordWedge(c)
		c.Add("D", "μ w max(0; L − a)", units.Of(t, units.LineForce), "", s.terms(working.T("L", s.Length, units.Level))...)
	}
	return t
}

// Needed returns the length of slab that holds the tie force T at the given
// safety factor,
//
//	Ln = wedge + FS T/(μ w)
//
// It is false for a slab that holds that at no length. The tie force is at
// service level.
func (s Slab) Needed(tie units.ForcePerLength, factor float64, c *working.Chain) (units.Length, bool) {
	l := s.Wedge() + units.Length(factor*max(0, float64(tie))/s.grip())
	if !(s.grip() > 0 && l < endless) {
		return 0, false
	}
	if c.On() {
		s.recordWedge(c)
		c.Add("Ln", "a + FS T/(μ w)", units.Of(l, units.Level), "",
			s.terms(working.Number("FS", factor), working.T("T", max(0, tie), units.LineForce))...)
	}
	return l, true
}

// endless is a length that no slab has.
const endless = 1e6 * units.Foot

// grip is what an inch of slab holds, lb/in per inch of wall.
func (s Slab) grip() float64 { return s.Friction * s.Weight.PSI() }

func (s Slab) terms(more ...working.Term) []working.Term {
	return append(more, working.T("a", s.Wedge(), units.Level),
		working.Number("μ", s.Friction), working.T("w", s.Weight, units.Pressure))
}

func (s Slab) recordWedge(c *working.Chain) {
	h := working.T("H", s.Height, units.Level)
	if s.Ground != soil.Active {
		c.Add("a", "H", units.Of(s.Wedge(), units.Level), "", h)
		return
	}
	c.Add("a", "H √Ka", units.Of(s.Wedge(), units.Level), "", h, working.Number("Ka", soil.ActiveCoefficient(s.Phi)))
}
