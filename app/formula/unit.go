package formula

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// A formula mixes units where one of its terms is printed in feet and another
// in inches. What counts is how often a foot, and how often a kip, is a factor
// of a part: 12 and 1,000 make inches and pounds of them.
type share struct {
	foot, kip float64
	bare      bool // a number of the formula: it has the unit of what it is added to
}

// basis is the length in which the terms of one formula are printed.
type basis uint8

const (
	inches basis = iota
	feet
)

// basisOf chooses feet where the terms are pressures and lengths of the
// ground, inches where one belongs to a section of concrete or to a bar.
func basisOf(with []working.Term) basis {
	out := inches
	for _, t := range with {
		switch t.Value.Kind {
		case units.Strength, units.SteelArea, units.Modulus, units.Inertia, units.BarArea, units.Stiffness, units.Deflection:
			return inches
		case units.Level, units.Pressure, units.Weight:
			out = feet
		}
	}
	return out
}

// unitIn is the unit in which a term is printed.
func unitIn(k units.Kind, b basis) units.Unit {
	if k == units.Level && b == inches {
		return units.Size.US()
	}
	return k.US()
}

// strip reports a formula for a strip of 12 in, of width b. What is per length
// of wall is then the whole of that strip.
func strip(with []working.Term) bool {
	for _, t := range with {
		if t.Symbol == "b" && t.Value.Kind == units.Size && math.Abs(t.Value.Base-12) < 1e-9 {
			return true
		}
	}
	return false
}

// shareOf says how often the foot and the kip are factors of a kind's unit.
func shareOf(k units.Kind, b basis, strip bool) share {
	var s share
	perFoot := false
	switch k {
	case units.Level:
		if b == feet {
			s.foot = 1
		}
	case units.Pressure:
		s.foot = -2
	case units.Weight:
		s.foot = -3
	case units.LineMoment:
		s.foot, perFoot = 1, true
	case units.LineForce, units.SteelArea, units.Modulus, units.Inertia:
		perFoot = true
	case units.Stiffness:
		s.kip, perFoot = 1, true
	}
	if perFoot && !strip {
		s.foot--
	}
	return s
}

// converter puts the factors of 12 and 1,000 into the numbers of a formula.
type converter struct {
	shares map[string]share
	inFeet map[string]bool // printed in inches, meant in feet
}

// convert returns the part with what is missing, and its share.
func (c *converter) convert(n node) (node, share) {
	switch n := n.(type) {
	case number:
		return n, share{bare: true}
	case printed:
		if c.inFeet[n.name] {
			return fraction{n, number{12}}, share{foot: 1}
		}
		return n, c.shares[n.name]
	case sum:
		parts := make([]node, len(n))
		for i, t := range n {
			parts[i] = t.part
		}
		parts, s := c.alike(parts)
		out := make(sum, len(n))
		for i, t := range n {
			out[i] = signed{t.minus, parts[i]}
		}
		return out, s
	case product:
		total, out := share{bare: true}, make(product, len(n))
		for i, f := range n {
			var s share
			out[i], s = c.convert(f)
			total = total.and(s, 1)
		}
		return out, total
	case fraction:
		over, a := c.convert(n.over)
		under, b := c.convert(n.under)
		return fraction{over, under}, a.and(b, -1)
	case power:
		base, s := c.convert(n.base)
		return power{base, n.exponent}, s.times(n.exponent.eval(nil))
	case root:
		of, s := c.convert(n.of)
		return root{of}, s.times(0.5)
	case call:
		args, s := c.alike(n.args)
		if n.name == "sin" {
			s = share{}
		}
		return call{n.name, args}, s
	}
	return n, share{}
}

func (s share) and(t share, sign float64) share {
	return share{s.foot + sign*t.foot, s.kip + sign*t.kip, s.bare && t.bare}
}

func (s share) times(x float64) share { return share{s.foot * x, s.kip * x, s.bare} }

// alike converts parts that are added or compared to one unit: that of the
// first which has one. Beside a number of the formula other than 0 it is
// inches and pounds.
func (c *converter) alike(parts []node) ([]node, share) {
	out := make([]node, len(parts))
	shares := make([]share, len(parts))
	common, found, plain := share{bare: true}, false, false
	for i, p := range parts {
		out[i], shares[i] = c.convert(p)
		switch {
		case shares[i].bare:
			plain = plain || p.eval(nil) != 0
		case !found:
			common, found = shares[i], true
		}
	}
	if plain && found {
		common = share{}
	}
	for i := range out {
		if !shares[i].bare {
			out[i] = factored(out[i], shares[i], common)
		}
	}
	return out, common
}

// factored brings a part from its share to another one.
func factored(n node, from, to share) node {
	for _, f := range [...]struct{ base, times float64 }{{12, from.foot - to.foot}, {1000, from.kip - to.kip}} {
		switch {
		case f.times > 0.01:
			n = joined(n, number{math.Round(math.Pow(f.base, f.times))})
		case f.times < -0.01:
			n = fraction{n, number{math.Round(math.Pow(f.base, -f.times))}}
		}
	}
	return n
}
