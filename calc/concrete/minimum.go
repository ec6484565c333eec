package concrete

import (
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// Minimum is a least amount of steel: its ratio to the gross section and the
// greatest spacing of the bars.
type Minimum struct {
	Ratio      float64
	Clause     string
	MaxSpacing units.Length
}

// Area returns the least steel for the thickness h, ρ h.
func (m Minimum) Area(h units.Length) units.AreaPerLength {
	return units.AreaPerLength(m.Ratio * max(0, h.Inches()))
}

// wallSpacing is the greatest spacing of bars in a wall cast in place,
// min(3 h; 18 in), ACI 318-19, 11.7.2.1, 11.7.3.1; the same in 7.7.2.3.
func wallSpacing(h units.Length) units.Length {
	return max(0, min(3*h, 18*units.Inch))
}

// small reports bars no larger than No. 5 with fy of at least 60,000 psi, the
// row of Table 11.6.1 with the lower ratios.
func small(b rebar.Bar, fy units.Stress) bool {
	return b.Number <= 5 && fy >= 60*units.KSI
}

// WallVerticalMinimum returns the least vertical steel of a wall: 0.0012 for
// bars up to No. 5 with fy ≥ 60,000 psi, else 0.0015, at most min(3 h; 18 in)
// apart.
//
// Source: ACI 318-19, Table 11.6.1, 11.7.2.1.
func WallVerticalMinimum(b rebar.Bar, fy units.Stress, h units.Length) Minimum {
	ratio := 0.0015
	if small(b, fy) {
		ratio = 0.0012
	}
	return Minimum{ratio, "11.6.1, 11.7.2.1", wallSpacing(h)}
}

// WallHorizontalMinimum returns the least horizontal steel of a wall: 0.0020
// for bars up to No. 5 with fy ≥ 60,000 psi, else 0.0025, at most min(3 h;
// 18 in) apart.
//
// Source: ACI 318-19, Table 11.6.1, 11.7.3.1.
func WallHorizontalMinimum(b rebar.Bar, fy units.Stress, h units.Length) Minimum {
	ratio := 0.0025
	if small(b, fy) {
		ratio = 0.0020
	}
	return Minimum{ratio, "11.6.1, 11.7.3.1", wallSpacing(h)}
}

// SlabMinimum returns the least flexural steel of a one-way slab, and so of a
// free stem, heel or toe: 0.0018 Ag, at most min(3 h; 18 in) apart.
//
// Source: ACI 318-19, 7.6.1.1, 7.7.2.3.
func SlabMinimum(h units.Length) Minimum {
	return Minimum{0.0018, "7.6.1.1, 7.7.2.3", wallSpacing(h)}
}

// ShrinkageMinimum returns the least steel against shrinkage and temperature,
// across the flexural steel of a slab: 0.0018 Ag, at most min(5 h; 18 in)
// apart.
//
// Source: ACI 318-19, 24.4.3.2, 24.4.3.3.
func ShrinkageMinimum(h units.Length) Minimum {
	return Minimum{0.0018, "24.4.3.2, 24.4.3.3", max(0, min(5*h, 18*units.Inch))}
}

// CrackSpacing returns the greatest spacing of the bars nearest a tension face
// that keeps cracks small,
//
//	s = min(15 (40,000/fs) − 2.5 cc; 12 (40,000/fs))
//
// with the steel stress at service level fs in psi, for which 2/3 fy may be
// taken, and the clear cover cc in inches. A stress below 1 psi is taken as
// 1 psi.
//
// Source: ACI 318-19, Table 24.3.2.
func CrackSpacing(fs units.Stress, cc units.Length) units.Length {
	if !(fs >= 1) {
		fs = 1
	}
	ratio := 40000 / fs.PSI()
	return units.Length(max(0, min(15*ratio-2.5*cc.Inches(), 12*ratio)))
}

// WallThickness returns the least thickness of a reinforced bearing wall whose
// shorter unsupported side, height or length, is side: max(4 in; side/25), and
// at least 7.5 in where it is an exterior basement or foundation wall. It binds
// only the simplified method of 11.5.3: a thinner wall may be shown by
// analysis.
//
// Source: ACI 318-19, Table 11.3.1.1 and its footnote.
func WallThickness(side units.Length, foundation bool) units.Length {
	if foundation {
		return aci.FoundationWall
	}
	return max(4*units.Inch, side/25)
}
