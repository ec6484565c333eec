package calc

import (
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// The working of a check shows both what is asked and what there is. This file
// and its companions write the part of what is asked: how the ground presses,
// how the strip hands that to its supports, and the moment or the shear of the
// section. The numbers are those that the answer has; the steps are the sums of
// a text book, which the answer did by its exact diagrams.
//
// Nothing is written while other walls are tried on the way to an answer.

// expr is a formula while it is put together, with its terms.
type expr struct {
	text []byte
	with []working.Term
}

func (e *expr) say(text string) *expr {
	e.text = append(e.text, text...)
	return e
}

// term adds a term, and not twice.
func (e *expr) term(t working.Term) *expr {
	for i := range e.with {
		if e.with[i].Symbol == t.Symbol {
			return e
		}
	}
	e.with = append(e.with, t)
	return e
}

// symbol writes a symbol and adds its term.
func (e *expr) symbol(t working.Term) *expr { return e.say(t.Symbol).term(t) }

func (e *expr) to(c *working.Chain, symbol string, value units.Quantity, clause string) {
	c.Add(symbol, string(e.text), value, clause, e.with...)
}

// level is a height above the footing's top with its symbol. The footing's top
// itself has none.
type level struct {
	symbol string
	y      units.Length
	short  bool // read in inches
}

func (l level) term() working.Term {
	if l.short {
		return term(l.symbol, l.y, units.Size)
	}
	return term(l.symbol, l.y, units.Level)
}

// levelAt names a height: that of a ground, of the water or of the brace, else
// as it is called by the caller.
func (w *wall) levelAt(y units.Length, otherwise string) level {
	switch {
	case near(y, 0):
		return level{}
	case near(y, w.GradeA):
		return level{symbol: "hA", y: w.GradeA}
	case w.Water.Standing && near(y, w.Water.Level):
		return level{symbol: "hw", y: w.Water.Level}
	case near(y, w.GradeB):
		return level{symbol: "hB", y: w.GradeB}
	}
	return level{symbol: otherwise, y: y}
}

// rise writes how far a level lies above another one, in brackets where it is
// a difference.
func (e *expr) rise(top, bottom level) *expr {
	switch {
	case bottom.symbol == "":
		return e.symbol(top.term())
	case top.symbol == "":
		return e.say("(−").symbol(bottom.term()).say(")")
	}
	return e.say("(").symbol(top.term()).say(" − ").symbol(bottom.term()).say(")")
}

// merge appends the steps whose symbol the chain does not have yet.
func merge(c *working.Chain, steps []working.Step) {
	if len(steps) == 0 {
		return
	}
	if len(c.Steps) == 0 {
		c.Steps = append(make([]working.Step, 0, len(steps)+10), steps...)
		return
	}
	for _, s := range steps {
		if !has(c, s.Symbol) {
			c.Steps = append(c.Steps, s)
		}
	}
}

func has(c *working.Chain, symbol string) bool {
	for i := range c.Steps {
		if c.Steps[i].Symbol == symbol {
			return true
		}
	}
	return false
}

// alike compares two sums done in a different order.
func alike[Q ~float64](a, b Q) bool {
	d, size := float64(a-b), max(float64(a), float64(-a), float64(b), float64(-b), 1e-3)
	return d < 3e-10*size && d > -3e-10*size
}

// stageGround is the ground of a stage on side A: the state of the soil and
// what lies on it.
func (w *wall) stageGround(st Stage) (soil.State, Surcharge) {
	switch {
	case st == BeforeSlab:
		return soil.Active, w.wetSlab()
	case w.freeStem():
		return soil.Active, w.Surcharge
	case w.Condition == TiedToSlab:
		return soil.AtRest, w.Surcharge
	}
	return w.heldState(), w.Surcharge
}

// stageOf finds a stage of the answer.
func (w *wall) stageOf(st Stage) *StageResult {
	for i := range w.r.Stages {
		if w.r.Stages[i].Name == st {
			return &w.r.Stages[i]
		}
	}
	return nil
}
