package entry

import (
	"math"

	"standingbeam/calc/units"
)

// unit is how a written number becomes base units: times mul, over div. Metric
// lengths divide, so that 254 mm is 10 inches and nothing beside it.
type unit struct {
	mul, div float64
}

// inch is the base unit of lengths.
var inch = unit{1, 0}

func (u unit) base(v float64) float64 {
	if u.div != 0 {
		return neat(v * u.mul / u.div)
	}
	return v * u.mul
}

// neat takes the rounding of the sum off a number that is a short decimal, so
// that 152.4 mm is the number that 6 in is.
func neat(v float64) float64 {
	if r := math.Round(v*1e6) / 1e6; math.Abs(r-v) <= 1e-12*math.Abs(v) {
		return r
	}
	return v
}

// unitOf finds the unit of a symbol among those of a kind.
func unitOf(kind units.Kind, s string) (unit, bool) {
	switch kind {
	case units.Level, units.Size, units.Deflection:
		return lengthUnit(s)
	case units.Strength, units.Pressure:
		return stressUnit(s)
	case units.None:
		if s == "%" {
			return unit{1, 100}, true
		}
		return unit{1, 0}, s == ""
	}
	return otherUnit(kind, s)
}

func lengthUnit(s string) (unit, bool) {
	switch s {
	case "ft", "'", "foot", "feet":
		return unit{12, 0}, true
	case "in", `"`, "inch", "inches":
		return inch, true
	case "m":
		return unit{1000, 25.4}, true
	case "mm":
		return unit{1, 25.4}, true
	}
	return unit{}, false
}

func stressUnit(s string) (unit, bool) {
	switch s {
	case "psi":
		return unit{1, 0}, true
	case "ksi":
		return unit{1000, 0}, true
	case "psf":
		return unit{1, 144}, true
	case "MPa":
		return unit{float64(units.MPa), 0}, true
	case "kPa":
		return unit{float64(units.KPa), 0}, true
	}
	return unit{}, false
}

func otherUnit(kind units.Kind, s string) (unit, bool) {
	if u := kind.US(); s == u.Symbol {
		return exact(kind, u), true
	}
	if u := kind.Metric(); s == u.Symbol {
		return unit{u.Base, 0}, true
	}
	return unit{}, false
}

// exact is an inch-pound unit as a division by a whole number where it is one:
// a pound per foot is a pound per inch over 12.
func exact(kind units.Kind, u units.Unit) unit {
	switch kind {
	case units.Weight:
		return unit{1, 1728}
	case units.LineForce:
		return unit{1, 12}
	}
	return unit{u.Base, 0}
}
