package stability

import (
	"strconv"
	"strings"
	"unicode"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// sum collects the terms of a sum and its formula.
type sum struct {
	formula strings.Builder
	with    []working.Term
}

// add adds one product with its sign; the first + is left out.
func (s *sum) add(sign, product string, with ...working.Term) {
	if s.formula.Len() > 0 {
		s.formula.WriteString(" " + sign + " ")
	} else if sign != "+" {
		s.formula.WriteString(sign)
	}
	s.formula.WriteString(product)
	s.with = append(s.with, with...)
}

// weights adds force times arm of every weight, pushes force times height of
// every push.
func (s *sum) weights(force, arm string, ws []Weight) {
	for i, v := range ws {
		n := below(i, func(j int) string { return ws[j].Name })
		s.add("+", force+n+" "+arm+n, working.T(force+n, v.Force, units.LineForce), working.T(arm+n, v.Arm, units.Level))
	}
}

func (s *sum) pushes(force, height string, ps []Push) {
	for i, v := range ps {
		n := below(i, func(j int) string { return ps[j].Name })
		s.add("+", force+n+" "+height+n, working.T(force+n, v.Force, units.LineForce), working.T(height+n, v.Height, units.Level))
	}
}

// loads adds every weight, forces every push, by themselves.
func (s *sum) loads(sign, letter string, ws []Weight) {
	for i, v := range ws {
		n := letter + below(i, func(j int) string { return ws[j].Name })
		s.add(sign, n, working.T(n, v.Force, units.LineForce))
	}
}

func (s *sum) forces(letter string, ps []Push) {
	for i, v := range ps {
		n := letter + below(i, func(j int) string { return ps[j].Name })
		s.add("+", n, working.T(n, v.Force, units.LineForce))
	}
}

// to writes the sum as a step; an empty one is 0.
func (s *sum) to(c *working.Chain, symbol string, value units.Quantity) {
	f := s.formula.String()
	if f == "" {
		f = "0"
	}
	c.Add(symbol, f, value, "", s.with...)
}

// below returns what stands below the letter of entry i of a list: its name
// with commas for blanks ("W,heel,soil"), numbered from the second of the same
// name on, or its number where it has no name.
func below(i int, name func(int) string) string {
	if name(i) == "" {
		return strconv.Itoa(i + 1)
	}
	n := "," + strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return r
		}
		return ','
	}, name(i))
	same := 1
	for j := range i {
		if name(j) == name(i) {
			same++
		}
	}
	if same > 1 {
		n += strconv.Itoa(same)
	}
	return n
}
