package words

import (
	"math"
	"strconv"
	"strings"

	"standingbeam/calc/units"
)

// rounding is which way a number may go when digits are dropped.
type rounding uint8

const (
	nearest rounding = iota
	up               // a demand never reads smaller than it is
	down             // a capacity never reads larger than it is
)

// slack is the noise of a calculation that rounding up or down passes over, as
// a share of the last digit shown.
const slack = 1e-6

// unknown is written for a number that is none.
const unknown = "–"

// Number writes v with so many decimals, commas between thousands. With the
// decimal comma, thousands stand apart by a thin space that does not break.
func (s Speaker) Number(v float64, digits int) string { return s.number(v, digits, nearest) }

func (s Speaker) number(v float64, digits int, r rounding) string {
	v = rounded(v, digits, r)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return unknown
	}
	whole, part, _ := strings.Cut(strconv.FormatFloat(math.Abs(v), 'f', digits, 64), ".")
	group, point := ",", "."
	if s.DecimalComma {
		group, point = "\u202f", ","
	}
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + group + whole[i:]
	}
	if part != "" {
		whole += point + part
	}
	if v < 0 && strings.Trim(whole, "0.,") != "" {
		return "−" + whole
	}
	return whole
}

// rounded drops the digits of v after the given decimals.
func rounded(v float64, digits int, r rounding) float64 {
	if math.Abs(v) > 1e15 {
		return math.NaN()
	}
	scale := math.Pow(10, float64(digits))
	switch r {
	case up:
		return math.Ceil(v*scale-slack) / scale
	case down:
		return math.Floor(v*scale+slack) / scale
	}
	return math.Round(v*scale) / scale
}

// Quantity writes q in the reader's unit, to the nearest of the digits shown.
func (s Speaker) Quantity(q units.Quantity) string { return s.quantity(q, nearest) }

// Demand writes q rounded up.
func (s Speaker) Demand(q units.Quantity) string { return s.quantity(q, up) }

// Capacity writes q rounded down.
func (s Speaker) Capacity(q units.Quantity) string { return s.quantity(q, down) }

func (s Speaker) quantity(q units.Quantity, r rounding) string {
	switch {
	case q.Kind == units.Level:
		return s.length(units.Length(q.Base), r)
	case q.Kind == units.Size:
		return s.size(units.Length(q.Base), r)
	}
	u := s.unit(q.Kind)
	digits := s.digits(q, u)
	if v := q.In(u); (q.Kind == units.Weight || q.Kind == units.Degrees) && math.Abs(v-math.Round(v)) < slack {
		digits = 0
	}
	return join(s.number(q.In(u), digits, r), u.Sign())
}

// Unit is the symbol of the unit in which the reader reads a kind.
func (s Speaker) Unit(k units.Kind) string { return s.unit(k).Sign() }

func (s Speaker) unit(k units.Kind) units.Unit {
	if s.System == Metric {
		return k.Metric()
	}
	return k.US()
}

// digits are the decimals of q: those of its unit, more where it would read as
// nothing else, fewer where it would read as more than four figures.
func (s Speaker) digits(q units.Quantity, u units.Unit) int {
	v, n := math.Abs(q.In(u)), u.Digits
	for ; n > 0 && v >= math.Pow(10, float64(4-n)); n-- {
	}
	for d := n; d < u.Digits+3; d++ {
		if v == 0 || v >= math.Pow(10, float64(-d)) {
			return d
		}
	}
	return u.Digits
}

func join(number, symbol string) string {
	if symbol == "" || number == unknown {
		return number
	}
	return number + " " + symbol
}
