package words

import (
	"math"
	"strconv"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Problem says why an input is refused: "25 ft 0 in is not between 2 ft 0 in
// and 20 ft 0 in." It does not name the field: it stands there, or is put
// before it.
func (s Speaker) Problem(e *calc.RangeError) string {
	if e == nil {
		return ""
	}
	if e.ID != "out-of-range" {
		return s.Word("problem." + e.ID)
	}
	low, high := s.Range(e.Min, e.Max)
	value := s.Quantity(e.Value)
	if value == low || value == high || value == unknown {
		value = s.fine(e.Value)
	}
	return s.Sentence("problem.out-of-range", value, low, high)
}

// Range writes the ends of a permitted range, each toward the inside.
func (s Speaker) Range(low, high units.Quantity) (string, string) {
	return s.Demand(low), s.Capacity(high)
}

// fine writes a quantity with six digits, for one that would read as the bound
// that it misses.
func (s Speaker) fine(q units.Quantity) string {
	u := s.unit(q.Kind)
	v := q.In(u)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return unknown
	}
	return join(strconv.FormatFloat(v, 'g', 7, 64), u.Sign())
}

// Field names a field of the wall file by its path.
func (s Speaker) Field(path string) string { return s.Word("field." + path) }

// Choice names an answer of a field that is chosen from.
func (s Speaker) Choice(path, value string) string { return s.Word("choice." + path + "." + value) }
