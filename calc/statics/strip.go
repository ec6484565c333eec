package statics

import "standingbeam/calc/units"

// Load is a pressure on the strip from height From up to height To, linear
// between AtFrom and AtTo, positive toward B. From < To.
type Load struct {
	From, To     units.Length
	AtFrom, AtTo units.Stress
}

// Point is a line force across the wall, positive toward B.
type Point struct {
	At    units.Length
	Force units.ForcePerLength
}

// Couple is a moment put on the strip at one level. It is positive when it
// brings tension to face B just below it: going down across it, M grows by
// Couple.M. An axial load P that stands e toward A of the strip's middle is a
// couple +P e.
type Couple struct {
	At units.Length
	M  units.MomentPerLength
}

// Restraint is the kind of a support.
type Restraint uint8

// Restraints. Pinned holds the place, Fixed the place and the direction, and
// Spring gives way by its reaction over its stiffness.
const (
	Pinned Restraint = iota
	Fixed
	Spring
)

// String returns the word of the restraint.
func (r Restraint) String() string {
	switch r {
	case Fixed:
		return "fixed"
	case Spring:
		return "spring"
	}
	return "pinned"
}

// Support holds the strip at one level. Stiffness is in pounds per inch of
// wall per inch of travel and is read of a Spring only; a spring of stiffness
// 0 does not hold.
type Support struct {
	At        units.Length
	Kind      Restraint
	Stiffness units.Stress
}

// Strip is one inch of wall from height 0 to Top with all that acts on it. EI
// is its bending stiffness in lb·in² per inch of wall, the same over the whole
// height. Everything lies between 0 and Top; the order does not matter.
type Strip struct {
	Top      units.Length
	EI       float64
	Loads    []Load
	Points   []Point
	Couples  []Couple
	Supports []Support
}
