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

// spacing returns the greatest spacing, min(times h; limit).
func spacing(h units.Length, times float64, limit units.Length) units.Length {
	return max(0, min(units.Length(times)*h, limit))
}

// wallSpacing returns the greatest spacing of bars in a wall cast in place.
func wallSpacing(h units.Length) units.Length {
	return spacing(h, aci.Wall.SpacingOf, aci.Wall.Spacing)
}

// small reports bars no larger than No. 5 with fy of at least 60,000 psi, the
// row of Table 11.6.1 with the lower ratios.
func small(b rebar.Bar, fy units.Stress) bool {
	return b.Number <= aci.Wall.SmallBar && fy >= aci.Wall.SmallFy
}

// WallVerticalMinimum returns the least vertical steel of a wall: 0.0012 for
// bars up to No. 5 with fy ≥ 60,000 psi, else 0.0015, at most min(3 h; 18 in)
// apart.
//
// Source: ACI 318-19, Table 11.6.1, 11.7.2.1.
func WallVerticalMinimum(b rebar.Bar, fy units.Stress, h units.Length) Minimum {
	ratio := aci.Wall.Vertical
	if small(b, fy) {
		ratio = aci.Wall.VerticalSmall
	}
	return Minimum{ratio, "11.6.1, 11.7.2.1", wallSpacing(h)}
}

// WallHorizontalMinimum returns the least horizontal steel of a wall: 0.0020
// for bars up to No. 5 with fy ≥ 60,000 psi, else 0.0025, at most min(3 h;
// 18 in) apart.
//
// Source: ACI 318-19, Table 11.6.1, 11.7.3.1.
func WallHorizontalMinimum(b rebar.Bar, fy units.Stress, h units.Length) Minimum {
	ratio := aci.Wall.Horizontal
	if small(b, fy) {
		ratio = aci.Wall.HorizontalSmall
	}
	return Minimum{ratio, "11.6.1, 11.7.3.1", wallSpacing(h)}
}

// SlabMinimum returns the least flexural steel of a one-way slab, and so of a
// free stem, heel or toe: 0.0018 Ag, at most min(3 h; 18 in) apart.
//
// Source: ACI 318-19, 7.6.1.1, 7.7.2.3.
func SlabMinimum(h units.Length) Minimum {
	return Minimum{aci.Slab.Flexural, "7.6.1.1, 7.7.2.3", spacing(h, aci.Slab.FlexuralOf, aci.Slab.Spacing)}
}

// ShrinkageMinimum returns the least steel against shrinkage and temperature,
// across the flexural steel of a slab: 0.0018 Ag, at most min(5 h; 18 in)
// apart.
//
// Source: ACI 318-19, 24.4.3.2, 24.4.3.3.
func ShrinkageMinimum(h units.Length) Minimum {
	return Minimum{aci.Slab.Shrinkage, "24.4.3.2, 24.4.3.3", spacing(h, aci.Slab.ShrinkageOf, aci.Slab.Spacing)}
}
