package rebar

import "standingbeam/calc/units"

// HookTail returns the straight extension of a standard 90° hook beyond its
// bend, 12 db.
//
// Source: ACI 318-19, Table 25.3.1.
func HookTail(b Bar) units.Length { return 12 * b.Diameter }

// BendDiameter returns the least inside diameter of the bend of a standard
// hook: 6 db up to No. 8, 8 db for No. 9 to No. 11.
//
// Source: ACI 318-19, Table 25.3.1.
func BendDiameter(b Bar) units.Length {
	if b.Number <= 8 {
		return 6 * b.Diameter
	}
	return 8 * b.Diameter
}

// HookFoldTail returns the straight extension of a standard 180° hook, the
// greater of 4 db and 2.5 in.
//
// Source: ACI 318-19, Table 25.3.1.
func HookFoldTail(b Bar) units.Length { return max(4*b.Diameter, 2.5*units.Inch) }

// HookFoldWidth returns the width of a standard 180° hook over its outside:
// bend and two bars.
func HookFoldWidth(b Bar) units.Length { return BendDiameter(b) + 2*b.Diameter }

// HookLeg returns the length of a standard 90° hook measured from the outside
// of the straight bar to the end of the tail: tail, bend radius and bar.
func HookLeg(b Bar) units.Length {
	return HookTail(b) + BendDiameter(b)/2 + b.Diameter
}
