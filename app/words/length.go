package words

import (
	"math"
	"strconv"

	"standingbeam/calc/units"
)

// sixteenths of an inch are the finest a tape is read to.
const sixteenths = 16

// Length writes a length along the wall: feet and inches to the nearest
// sixteenth, "9 ft 4 1/2 in"; metric in metres, "3.05 m".
func (s Speaker) Length(l units.Length) string { return s.length(l, nearest) }

// Size writes a short length: inches to the nearest sixteenth, "8 1/2 in";
// metric in millimetres, "254 mm".
func (s Speaker) Size(l units.Length) string { return s.size(l, nearest) }

// AtLeast writes a short length that must not come out shorter: up to the next
// inch or 10 mm.
func (s Speaker) AtLeast(l units.Length) string {
	if s.System == Metric {
		return s.Size(10 * units.Millimetre * units.Length(rounded(l.Millimetres()/10, 0, up)))
	}
	return s.Size(units.Length(rounded(l.Inches(), 0, up)))
}

// Spacing writes the distance of bars: as it is in inches, down to 10 mm in
// metric.
func (s Speaker) Spacing(l units.Length) string {
	if s.System == Metric {
		return s.Size(10 * units.Millimetre * units.Length(rounded(l.Millimetres()/10, 0, down)))
	}
	return s.size(l, down)
}

func (s Speaker) length(l units.Length, r rounding) string {
	if s.System == Metric {
		return join(s.number(l.Millimetres()/1000, 2, r), "m")
	}
	n, ok := parts(l, r)
	if !ok {
		return unknown
	}
	sign := ""
	if n < 0 {
		sign, n = "−", -n
	}
	feet := n / (12 * sixteenths)
	inches := inchText(n%(12*sixteenths)) + " in"
	if feet == 0 {
		return sign + inches
	}
	return sign + strconv.Itoa(feet) + " ft " + inches
}

func (s Speaker) size(l units.Length, r rounding) string {
	if s.System == Metric {
		return join(s.number(l.Millimetres(), 0, r), "mm")
	}
	n, ok := parts(l, r)
	if !ok {
		return unknown
	}
	sign := ""
	if n < 0 {
		sign, n = "−", -n
	}
	return sign + inchText(n) + " in"
}

// parts is a length in whole sixteenths of an inch.
func parts(l units.Length, r rounding) (int, bool) {
	v := rounded(l.Inches()*sixteenths, 0, r)
	if math.IsNaN(v) || math.Abs(v) > 1e9 {
		return 0, false
	}
	return int(v), true
}

// inchText writes n sixteenths as inches: "4 1/2".
func inchText(n int) string {
	whole, part := n/sixteenths, n%sixteenths
	if part == 0 {
		return strconv.Itoa(whole)
	}
	below := sixteenths
	for part%2 == 0 {
		part, below = part/2, below/2
	}
	fraction := strconv.Itoa(part) + "/" + strconv.Itoa(below)
	if whole == 0 {
		return fraction
	}
	return strconv.Itoa(whole) + " " + fraction
}
