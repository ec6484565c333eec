// Package formula writes the formulas of a working for reading: typeset as
// MathML, as a line of text, and with the numbers in the place of the symbols.
//
// A formula comes as the calculation records it (see the notation of package
// working). The numbers are those that are printed: rounded, each with as many
// digits as it takes that somebody who computes the printed line again lands
// on the printed result. Where feet and inches meet in one formula, the factor
// of 12 stands in the line.
package formula

import "math"

// Formula is one formula, or the same with its numbers.
type Formula struct {
	root    node
	numbers bool // numbers stand in the place of the symbols
	print   Print
}

// Empty reports a formula that is not there.
func (f Formula) Empty() bool { return f.root == nil }

// node is a part of a formula.
type node interface{ eval(values) float64 }

// values are the numbers that stand for the symbols.
type values map[string]float64

// The kinds of a part. A sum of one part with a sign is that part with the
// sign. A fraction divides what stands over it by what stands under it.
type (
	number  struct{ value float64 }
	symbol  struct{ name string }
	printed struct{ name, text string } // the number in the place of a symbol
	sum     []signed
	signed  struct {
		minus bool
		part  node
	}
	product  []node
	fraction struct{ over, under node }
	power    struct{ base, exponent node }
	root     struct{ of node }
	call     struct {
		name string
		args []node
	}
)

func (n number) eval(values) float64    { return n.value }
func (s symbol) eval(v values) float64  { return v[s.name] }
func (p printed) eval(v values) float64 { return v[p.name] }

func (s sum) eval(v values) float64 {
	var total float64
	for _, t := range s {
		if t.minus {
			total -= t.part.eval(v)
		} else {
			total += t.part.eval(v)
		}
	}
	return total
}

func (p product) eval(v values) float64 {
	total := 1.0
	for _, f := range p {
		total *= f.eval(v)
	}
	return total
}

func (f fraction) eval(v values) float64 { return f.over.eval(v) / f.under.eval(v) }
func (p power) eval(v values) float64    { return math.Pow(p.base.eval(v), p.exponent.eval(v)) }
func (r root) eval(v values) float64     { return math.Sqrt(r.of.eval(v)) }

func (c call) eval(v values) float64 {
	first := c.args[0].eval(v)
	switch c.name {
	case "sin":
		return math.Sin(first)
	case "abs":
		return math.Abs(first)
	}
	for _, a := range c.args[1:] {
		if c.name == "min" {
			first = math.Min(first, a.eval(v))
		} else {
			first = math.Max(first, a.eval(v))
		}
	}
	return first
}

// change builds a formula anew with f in the place of every part without
// parts of its own.
func change(n node, f func(node) node) node {
	switch n := n.(type) {
	case sum:
		out := make(sum, len(n))
		for i, t := range n {
			out[i] = signed{t.minus, change(t.part, f)}
		}
		return out
	case product:
		out := make(product, len(n))
		for i, p := range n {
			out[i] = change(p, f)
		}
		return out
	case fraction:
		return fraction{change(n.over, f), change(n.under, f)}
	case power:
		return power{change(n.base, f), change(n.exponent, f)}
	case root:
		return root{change(n.of, f)}
	case call:
		args := make([]node, len(n.args))
		for i, a := range n.args {
			args[i] = change(a, f)
		}
		return call{n.name, args}
	}
	return f(n)
}

// Symbols lists the symbols of a formula, each once, in their order.
func (f Formula) Symbols() []string {
	var out []string
	seen := map[string]bool{}
	change(f.root, func(n node) node {
		if s, ok := n.(symbol); ok && !seen[s.name] {
			seen[s.name] = true
			out = append(out, s.name)
		}
		return n
	})
	return out
}
