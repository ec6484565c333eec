package entry

import (
	"math"
	"strconv"

	"standingbeam/calc/units"
)

// Spell writes a quantity with its unit so that the strict reader finds the
// same number again: feet, inches and sixteenths where a length is whole in
// them, else a decimal number of as many digits as it takes. A quantity that
// is no number is written as nothing.
func Spell(q units.Quantity, metric bool) string {
	if math.IsNaN(q.Base) || math.Abs(q.Base) > largest {
		return ""
	}
	if isLength(q.Kind) && !metric {
		if text := spellFeet(q); text != "" {
			return text
		}
	}
	symbol := q.Kind.US().Symbol
	in := q.US()
	if metric {
		symbol, in = q.Kind.Metric().Symbol, q.In(q.Kind.Metric())
	}
	best := ""
	for digits := 0; digits <= 12; digits++ {
		best = strconv.FormatFloat(in, 'f', digits, 64)
		if symbol != "" {
			best += " " + symbol
		}
		if back, err := Quantity(best, q.Kind, Options{Strict: true}); err == nil && same(back.Base, q.Base) {
			return best
		}
	}
	return best
}

// same allows for the last digits that a change of unit costs.
func same(a, b float64) bool {
	return math.Abs(a-b) <= 1e-13*max(math.Abs(a), math.Abs(b))
}

// spellFeet writes "9 ft 4 1/2 in", "-8 in"; nothing where the length is not a
// whole number of sixteenths.
func spellFeet(q units.Quantity) string {
	n := math.Round(q.Base * 16)
	if !same(n/16, q.Base) || q.Kind == units.Deflection {
		return ""
	}
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	all := int64(n)
	feet, inches, part := all/192, all%192/16, all%16
	if q.Kind == units.Size {
		feet, inches = 0, all/16
	}
	text := strconv.FormatInt(inches, 10)
	if part > 0 {
		below := int64(16)
		for part%2 == 0 {
			part, below = part/2, below/2
		}
		fraction := strconv.FormatInt(part, 10) + "/" + strconv.FormatInt(below, 10)
		if text += " " + fraction; inches == 0 {
			text = fraction
		}
	}
	if feet == 0 {
		return sign + text + " in"
	}
	return sign + strconv.FormatInt(feet, 10) + " ft " + text + " in"
}
