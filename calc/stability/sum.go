package stability

import (
	"strconv"
	"strings"
	"unicode"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// item is one force of a body with its symbol and that of its arm.
type item struct {
	symbol, arm string
	force       units.ForcePerLength
	length      units.Length
}

// items are the forces of a body as the workings name them.
type items struct{ weights, uplift, drive, resist []item }

// itemize names the forces: W x, U u, P y and R z.
func itemize(b *Body) items {
	name := func(i item, letter, arm, below string, before []item) item {
		both := letter + below + arm + below
		i.symbol, i.arm = both[:len(letter)+len(below)], both[len(letter)+len(below):]
		for same := 2; taken(i.symbol, before); same++ {
			n := strconv.Itoa(same)
			i.symbol, i.arm = letter+below+n, arm+below+n
		}
		return i
	}
	weights := func(letter, arm string, ws []Weight) []item {
		out := make([]item, 0, len(ws))
		for i, v := range ws {
			out = append(out, name(item{force: v.Force, length: v.Arm}, letter, arm, below(v.Name, i), out))
		}
		return out
	}
	pushes := func(letter, arm string, ps []Push) []item {
		out := make([]item, 0, len(ps))
		for i, v := range ps {
			out = append(out, name(item{force: v.Force, length: v.Height}, letter, arm, below(v.Name, i), out))
		}
		return out
	}
	return items{weights("W", "x", b.Weights), weights("U", "u", b.Uplift), pushes("P", "y", b.Drive), pushes("R", "z", b.Resist)}
}

func taken(symbol string, before []item) bool {
	for _, i := range before {
		if i.symbol == symbol {
			return true
		}
	}
	return false
}

// below returns what stands below the letter of entry i of a list: its name
// with commas for blanks ("W,heel,soil"), or its number where it has no name.
// The second of one name is numbered 2.
func below(name string, i int) string {
	if name == "" {
		return strconv.Itoa(i + 1)
	}
	return "," + strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return r
		}
		return ','
	}, name)
}

// sum collects the terms of a sum and its formula.
type sum struct {
	formula []byte
	with    []working.Term
}

// newSum makes room for n terms.
func newSum(n int) *sum {
	return &sum{make([]byte, 0, 16*n), make([]working.Term, 0, n)}
}

// product adds symbols side by side, with a sign; the first + is left out.
func (s *sum) product(sign string, terms ...working.Term) {
	if len(s.formula) > 0 {
		s.formula = append(append(append(s.formula, ' '), sign...), ' ')
	} else if sign != "+" {
		s.formula = append(s.formula, sign...)
	}
	for i, t := range terms {
		if i > 0 {
			s.formula = append(s.formula, ' ')
		}
		s.formula = append(s.formula, t.Symbol...)
	}
	s.with = append(s.with, terms...)
}

// moments adds force times arm of every item, forces the forces alone.
func (s *sum) moments(list []item) {
	for _, i := range list {
		s.product("+", working.T(i.symbol, i.force, units.LineForce), working.T(i.arm, i.length, units.Level))
	}
}

func (s *sum) forces(sign string, list []item) {
	for _, i := range list {
		s.product(sign, working.T(i.symbol, i.force, units.LineForce))
	}
}

// to writes the sum as a step; an empty one is 0.
func (s *sum) to(c *working.Chain, symbol string, value units.Quantity) {
	f := string(s.formula)
	if f == "" {
		f = "0"
	}
	c.Add(symbol, f, value, "", s.with...)
}

// Symbols are the symbols of the forces of a body and of their arms, as the
// workings write them, in the order of its lists.
type Symbols struct{ Weights, Uplift, Drive, Resist [][2]string }

// SymbolsOf returns the symbols of a body.
func SymbolsOf(b Body) Symbols {
	pairs := func(list []item) [][2]string {
		out := make([][2]string, len(list))
		for i, v := range list {
			out[i] = [2]string{v.symbol, v.arm}
		}
		return out
	}
	all := itemize(&b)
	return Symbols{pairs(all.weights), pairs(all.uplift), pairs(all.drive), pairs(all.resist)}
}
