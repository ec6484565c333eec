// Package working records the steps by which a number was reached, at the
// place in the code where it is computed, so that the sum shown to a person
// and the sum that was done cannot drift apart.
//
// A nil *Chain records nothing and costs nothing: the search for bars runs
// with nil, and the chosen bars are computed once more with a chain.
package working

import "standingbeam/calc/units"

// Term is one symbol of a formula with its value.
type Term struct {
	Symbol string
	Value  units.Quantity
}

// Step is one formula with its numbers: Symbol = Formula, where the terms
// stand for the symbols in the formula. Formula is written as the code book
// writes it, in inch-pound units. Clause is the source of this step where it
// differs from that of the check.
type Step struct {
	Symbol  string
	Formula string
	With    []Term
	Value   units.Quantity
	Clause  string
}

// Chain is a list of steps, in the order of the sum. A symbol among the terms
// of a step that is the symbol of an earlier step refers to that step.
type Chain struct {
	Steps []Step
}

// On reports whether steps are being recorded.
func (c *Chain) On() bool { return c != nil }

// Add records one step. It does nothing on a nil chain; callers in a hot path
// test On first, so that the terms are not built in vain.
func (c *Chain) Add(symbol, formula string, value units.Quantity, clause string, with ...Term) {
	if c == nil {
		return
	}
	c.Steps = append(c.Steps, Step{Symbol: symbol, Formula: formula, With: with, Value: value, Clause: clause})
}

// T makes a term.
func T[Q ~float64](symbol string, v Q, k units.Kind) Term {
	return Term{symbol, units.Of(v, k)}
}

// Number makes a term that is a pure number.
func Number(symbol string, v float64) Term {
	return Term{symbol, units.Quantity{Base: v}}
}
