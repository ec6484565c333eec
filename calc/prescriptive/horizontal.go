package prescriptive

import "standingbeam/calc/units"

// Horizontals returns how many No. 4 horizontals a wall of this unsupported
// height needs and where, as fractions of the height up from the foot, top
// first: one within 12 in of the top, written 1, and one near mid-height up to
// 8 ft, or one near each third point above.
//
// Source: IRC 2021 Table R404.1.2(1).
func Horizontals(height units.Length) (int, []float64) {
	if height <= irc.HorizontalTwoUpTo+hair {
		return 2, []float64{1, 0.5}
	}
	return 3, []float64{1, 2.0 / 3, 1.0 / 3}
}

// HorizontalBar is the number of the bar of [Horizontals].
func HorizontalBar() int { return irc.Horizontal }
