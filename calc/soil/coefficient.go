package soil

import (
	"math"

	"standingbeam/calc/units"
)

// State is whether the wall can give way to the ground.
type State uint8

// States: AtRest for a wall that is held, Active for one that can lean away.
const (
	AtRest State = iota
	Active
)

// steepest bounds the friction angle, so that no coefficient runs away.
const steepest = 89 * units.Degree

// friction returns sin φ with φ taken into 0 to 89°; what is no number counts
// as 0, which is water.
func friction(phi units.Angle) float64 {
	if !(phi > 0) {
		return 0
	}
	return math.Sin(float64(min(phi, steepest)))
}

// ActiveCoefficient returns Rankine's active coefficient for level ground, no
// cohesion and no friction on the wall,
//
//	Ka = tan²(45° − φ/2) = (1 − sin φ)/(1 + sin φ)
//
// Valid for φ from 0 to 89°; beyond, the nearer end counts.
//
// Source: Rankine (1857), in any textbook of soil mechanics.
func ActiveCoefficient(phi units.Angle) float64 {
	s := friction(phi)
	return (1 - s) / (1 + s)
}

// AtRestCoefficient returns Jaky's coefficient at rest for normally
// consolidated soil and level ground,
//
//	K0 = 1 − sin φ
//
// Ground that was loaded or compacted hard pushes more. Valid for φ from 0 to
// 89°; beyond, the nearer end counts.
//
// Source: Jaky (1944), in any textbook of soil mechanics.
func AtRestCoefficient(phi units.Angle) float64 { return 1 - friction(phi) }

// PassiveCoefficient returns Rankine's passive coefficient for level ground,
//
//	Kp = tan²(45° + φ/2) = 1/Ka
//
// Valid for φ from 0 to 89°; beyond, the nearer end counts.
//
// Source: Rankine (1857), in any textbook of soil mechanics.
func PassiveCoefficient(phi units.Angle) float64 {
	s := friction(phi)
	return (1 + s) / (1 - s)
}

// RankineSlope returns Rankine's active coefficient for ground that rises from
// the wall at the given slope α,
//
//	Ka = cos α (cos α − √(cos² α − cos² φ)) / (cos α + √(cos² α − cos² φ))
//
// The push Ka γ H²/2 on a vertical plane of height H is parallel to the
// ground: its horizontal part is Ka cos α. Valid for 0 ≤ α ≤ φ. Steeper ground
// does not stand at all; 1 is returned, and the caller refuses it. A falling
// slope counts as level.
//
// Source: Rankine (1857), in any textbook of soil mechanics.
func RankineSlope(phi, slope units.Angle) float64 {
	if !(slope > 0) {
		return ActiveCoefficient(phi)
	}
	if !(slope <= min(phi, steepest)) {
		return 1
	}
	c, f := math.Cos(float64(slope)), math.Cos(float64(min(phi, steepest)))
	r := math.Sqrt(max(0, c*c-f*f))
	return c * (c - r) / (c + r)
}
