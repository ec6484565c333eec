package rebar

import "standingbeam/calc/units"

// Exposure is what the concrete over a bar faces.
type Exposure uint8

// Exposures.
const (
	Sheltered   Exposure = iota // neither weather nor ground: inside of a basement
	Exposed                     // weather or ground, formed
	AgainstSoil                 // cast against ground and always in contact with it
)

// Cover returns the least concrete cover of a bar in a wall, slab or footing
// cast in place: 0.75 in sheltered; exposed 1.5 in up to No. 5 and 2 in above;
// 3 in cast against soil. An unknown exposure counts as the worst.
//
// Source: ACI 318-19, Table 20.5.1.3.1.
func Cover(b Bar, e Exposure) units.Length {
	switch {
	case e == Sheltered:
		return aci.Cover.Sheltered
	case e == Exposed && b.Number <= aci.Cover.SmallBar:
		return aci.Cover.ExposedSmall
	case e == Exposed:
		return aci.Cover.Exposed
	}
	return aci.Cover.AgainstSoil
}

// ClearSpacing returns the least clear distance between parallel bars in one
// layer, the greatest of 1 in, db and 4/3 of the largest stone.
//
// Source: ACI 318-19, 25.2.1.
func ClearSpacing(b Bar, stone units.Length) units.Length {
	return max(aci.Cover.Clear, b.Diameter, units.Length(aci.Cover.ClearStones)*stone)
}

// Fits reports whether bars at a spacing, centre to centre, leave the clear
// distance of [ClearSpacing].
func Fits(b Bar, spacing, stone units.Length) bool {
	return spacing-b.Diameter >= ClearSpacing(b, stone)
}

// IsTopBar reports whether a horizontal bar has more than 12 in of fresh
// concrete below it, for [Setting.TopBar].
//
// Source: ACI 318-19, Table 25.4.2.5.
func IsTopBar(below units.Length) bool { return below > aci.Bars.TopDepth }

// Share returns the part of its yield strength that a bar embedded over
// available takes up when it needs full: min(1; available/full), and 0 where
// full is not known.
//
// Source: ACI 318-19, 25.4.10.1, read the other way round; for a hook it is
// judgement.
func Share(available, full units.Length) float64 {
	if !(full > 0 && available > 0) {
		return 0
	}
	return min(1, float64(available/full))
}

// NeedsTies reports bars of Grade 80 and more nearer than 6 in, for which the
// development length holds only with ties across them of Ktr ≥ 0.5 db.
//
// Source: ACI 318-19, 25.4.2.2, from memory.
func NeedsTies(fy units.Stress, spacing units.Length) bool {
	return fy >= 80*units.KSI && spacing < 6*units.Inch
}
