package working

import (
	"fmt"
	"math"
	"unicode/utf8"

	"standingbeam/calc/units"
)

// The notation of formulas: numbers; symbols, which start with a letter and go
// on with letters, digits, ' and commas; + − * / ^ √ and brackets; min( ; ),
// max( ; ) and sin( ) of an angle. Side by side is a product, as strong as a
// division and read from the left: b h^2/6 is (b h²)/6, fy/(25 λ) db is
// (fy/(25 λ)) db. √ takes the symbol, number or bracket that follows.

// Evaluate computes the formula of the step from its terms, all in inches and
// pounds, and returns what should be its value. Quantities per length of wall
// are taken per inch, or, where the formula has the width b of a strip of
// 12 in, for that strip.
func (s Step) Evaluate() (units.Quantity, error) {
	p := parser{text: s.Formula, terms: s.With, strip: 1}
	for _, t := range s.With {
		if t.Symbol == "b" && t.Value.Kind == units.Size && math.Abs(t.Value.Base-12) < 1e-9 {
			p.strip = 12
		}
	}
	v := p.sum()
	if p.skip(); p.err == nil && p.text != "" {
		p.err = fmt.Errorf("%q: %q is left over", s.Formula, p.text)
	}
	if p.err != nil {
		return units.Quantity{}, p.err
	}
	if perLength(s.Value.Kind) {
		v /= p.strip
	}
	return units.Quantity{Base: v, Kind: s.Value.Kind}, nil
}

// Verify evaluates every step of the chain and returns an error for the first
// whose value is not what its formula and terms give, whose term is not in its
// formula, or whose term differs from the earlier step of the same symbol.
func (c *Chain) Verify() error {
	earlier := map[string]units.Quantity{}
	for _, s := range c.Steps {
		v, err := s.Evaluate()
		if err != nil {
			return fmt.Errorf("%s: %w", s.Symbol, err)
		}
		if !near(v.Base, s.Value.Base) {
			return fmt.Errorf("%s = %s gives %v, not %v", s.Symbol, s.Formula, v.Base, s.Value.Base)
		}
		for _, t := range s.With {
			if !contains(s.Formula, t.Symbol) {
				return fmt.Errorf("%s = %s does not contain %s", s.Symbol, s.Formula, t.Symbol)
			}
			if e, ok := earlier[t.Symbol]; ok && !near(e.Base, t.Value.Base) {
				return fmt.Errorf("%s: %s is %v here and %v before", s.Symbol, t.Symbol, t.Value.Base, e.Base)
			}
		}
		earlier[s.Symbol] = s.Value
	}
	return nil
}

// near compares two sums done in a different order.
func near(a, b float64) bool {
	return math.Abs(a-b) <= 1e-9*max(math.Abs(a), math.Abs(b), 1e-6)
}

// perLength reports the kinds that are per length of wall.
func perLength(k units.Kind) bool {
	switch k {
	case units.LineForce, units.LineMoment, units.SteelArea, units.Modulus, units.Inertia, units.Stiffness:
		return true
	}
	return false
}

// contains reports whether the symbol stands by itself in the formula.
func contains(formula, symbol string) bool {
	p := parser{text: formula}
	for p.skip(); p.text != ""; p.skip() {
		if name := p.name(); name == symbol {
			return true
		} else if name == "" {
			_, n := utf8.DecodeRuneInString(p.text)
			p.text = p.text[n:]
		}
	}
	return false
}
