package formula

import (
	"math"
	"strings"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// Line is one step of a working, ready to be printed.
type Line struct {
	Step    working.Step
	Formula Formula
	Numbers Formula // empty where the formula is a single symbol or number
	Result  Given
	Terms   []Given // each symbol once
}

// Given is a symbol with the number that is printed for it.
type Given struct {
	Symbol string
	Text   string // the number
	Value  float64
	Unit   units.Unit
	Of     units.Quantity
	From   int // the line whose result it is, -1 where it is given
}

// Print writes a number with so many decimals.
type Print func(v float64, decimals int) string

// Significant digits of a printed number: as many as it takes, within these.
const (
	fewest = 4
	most   = 9
)

// Write makes the lines of a chain. A number has four significant digits, and
// more where a sum computed again from what is printed would differ from its
// printed result by more than one of the last digit, or, where next to nothing
// is left of a difference, by a hundred-thousandth of its greatest part. A
// symbol has the same digits wherever it stands in the chain.
func Write(chain []working.Step, print Print) []Line {
	w := writer{print: print, digits: map[string]int{}}
	for _, step := range chain {
		w.lines = append(w.lines, w.read(step))
	}
	w.silence()
	w.link()
	for range most * 4 {
		if !w.sharpen() {
			break
		}
	}
	out := make([]Line, len(w.lines))
	for i := range w.lines {
		out[i] = w.line(&w.lines[i])
	}
	return out
}

type writer struct {
	print  Print
	digits map[string]int
	lines  []draft
}

// draft is a line whose digits are not settled.
type draft struct {
	step    working.Step
	formula Formula
	numbers node
	noise   float64 // by which the sum may miss its result
	result  Given
	terms   []Given
}

// read parses one step and puts its numbers in.
func (w *writer) read(step working.Step) draft {
	d := draft{step: step, result: Given{Symbol: step.Symbol, Of: step.Value, Unit: step.Value.Kind.US(), From: -1}}
	b, strip := basisOf(step.With), strip(step.With)
	c := converter{shares: map[string]share{}, inFeet: map[string]bool{}}
	exact := values{}
	for _, t := range step.With {
		if _, twice := exact[t.Symbol]; twice {
			continue
		}
		g := Given{Symbol: t.Symbol, Of: t.Value, Unit: unitIn(t.Value.Kind, b), From: -1}
		exact[t.Symbol] = printedValue(t.Value, g.Unit)
		c.shares[t.Symbol] = shareOf(t.Value.Kind, b, strip)
		c.inFeet[t.Symbol] = t.Value.Kind == units.Size && b == feet
		d.terms = append(d.terms, g)
	}
	var err error
	if d.formula, err = Parse(step.Formula); err != nil || atom(d.formula.root) {
		return d
	}
	n := change(d.formula.root, func(n node) node {
		if s, ok := n.(symbol); ok {
			if _, known := exact[s.name]; known {
				return printed{name: s.name}
			}
		}
		return n
	})
	n, from := c.convert(n)
	n = factored(n, from, shareOf(step.Value.Kind, feet, strip))
	if want := step.Value.US(); !from.bare && math.Abs(n.eval(exact)-want) > 1e-6*math.Max(math.Abs(want), 1e-3) {
		return d // what would be printed is not what was computed
	}
	d.numbers = n
	if most := greatest(n, exact); math.Abs(step.Value.US()) < most/20 {
		d.noise = 1e-5 * most
	}
	return d
}

// greatest is the greatest part of a sum, in the unit of its result; 0 for
// what is no sum. However little is left of it, a hundred-thousandth of that
// part is as near as anybody needs to come.
func greatest(n node, at values) (most float64) {
	scale := 1.0
	for {
		switch m := n.(type) {
		case sum:
			for _, t := range m {
				most = math.Max(most, math.Abs(t.part.eval(at)))
			}
			return most / scale
		case fraction:
			n, scale = m.over, scale*math.Abs(m.under.eval(at))
		case call:
			if m.name != "max" && m.name != "abs" {
				return 0
			}
			n = m.args[len(m.args)-1]
		default:
			return 0
		}
	}
}

// silence makes nothing of a result that is only the rounding of the computer:
// a difference of two equal numbers.
func (w *writer) silence() {
	for i := range w.lines {
		d := &w.lines[i]
		var size float64
		for _, t := range d.terms {
			size = math.Max(size, math.Abs(t.Of.In(t.Unit)))
		}
		if v := math.Abs(d.result.Of.In(d.result.Unit)); v == 0 || v > 1e-12*size {
			continue
		}
		d.result.Of.Base = 0
		for j := range w.lines {
			for k := range w.lines[j].terms {
				if t := &w.lines[j].terms[k]; t.Symbol == d.result.Symbol {
					t.Of.Base = 0
				}
			}
		}
	}
}

// link finds the lines that terms are the results of: the last one before, else
// the first one after.
func (w *writer) link() {
	for at := range w.lines {
		for j := range w.lines[at].terms {
			t := &w.lines[at].terms[j]
			for i := range w.lines {
				if w.lines[i].step.Symbol == t.Symbol && i != at && (i < at || t.From < 0) {
					t.From = i
				}
			}
		}
	}
}

// printedValue is a quantity in its printed unit. An angle is computed with in
// radians and printed in degrees.
func printedValue(q units.Quantity, u units.Unit) float64 {
	if q.Kind == units.Degrees {
		return q.Base
	}
	return q.In(u)
}

// sharpen looks for lines that do not come out as printed, and gives their
// terms a digit more. It reports whether it did.
func (w *writer) sharpen() (changed bool) {
	for i := range w.lines {
		d := &w.lines[i]
		if d.numbers == nil {
			continue
		}
		exact, at := values{}, values{}
		for _, t := range d.terms {
			exact[t.Symbol], at[t.Symbol] = printedValue(t.Of, t.Unit), w.written(t)
		}
		allowed := math.Max(math.Pow(10, float64(-w.decimals(d.result))), d.noise)
		if w.rounded(d.result) == 0 && d.noise > 0 {
			allowed = d.noise
		}
		if math.Abs(d.numbers.eval(at)-w.rounded(d.result)) <= allowed {
			continue
		}
		right := d.numbers.eval(exact)
		for _, t := range d.terms {
			// What the rounding of this term alone does to the sum.
			keep := exact[t.Symbol]
			exact[t.Symbol] = at[t.Symbol]
			effect := math.Abs(d.numbers.eval(exact) - right)
			exact[t.Symbol] = keep
			if n := w.digitsOf(t.Symbol); n < most && effect*float64(2*len(d.terms)) > allowed {
				w.digits[t.Symbol] = n + 1
				changed = true
			}
		}
	}
	return changed
}

// written is the printed number in the unit that is computed with.
func (w *writer) written(t Given) float64 {
	if t.Of.Kind == units.Degrees {
		return w.rounded(t) * float64(units.Degree)
	}
	return w.rounded(t)
}

func (w *writer) digitsOf(symbol string) int { return max(fewest, w.digits[symbol]) }

// decimals are the digits behind the point that a number is printed with.
func (w *writer) decimals(g Given) int {
	v := math.Abs(g.Of.In(g.Unit))
	n := w.digitsOf(g.Symbol)
	if !(v > 0) || math.IsInf(v, 0) {
		return n
	}
	return min(12, max(0, n-1-int(math.Floor(math.Log10(v)+1e-12))))
}

func (w *writer) rounded(g Given) float64 {
	scale := math.Pow(10, float64(w.decimals(g)))
	return math.Round(g.Of.In(g.Unit)*scale) / scale
}

// text prints a number without the zeros at its end.
func (w *writer) text(g Given) string {
	n := w.decimals(g)
	v := w.rounded(g)
	for n > 0 {
		scale := math.Pow(10, float64(n-1))
		if math.Abs(math.Round(v*scale)/scale-v) > 1e-9*math.Pow(10, float64(-n)) {
			break
		}
		n--
	}
	return w.print(v, n)
}

// line settles a draft.
func (w *writer) line(d *draft) Line {
	settle := func(g Given) Given {
		g.Text, g.Value = w.text(g), w.rounded(g)
		return g
	}
	out := Line{Step: d.step, Formula: d.formula, Result: settle(d.result)}
	out.Formula.print = w.print
	texts := map[string]string{}
	for _, t := range d.terms {
		t = settle(t)
		out.Terms = append(out.Terms, t)
		texts[t.Symbol] = t.Text
		if t.Of.Kind == units.Degrees {
			texts[t.Symbol] += "°"
		}
	}
	if d.numbers != nil {
		out.Numbers = Formula{numbers: true, print: w.print, root: change(d.numbers, func(n node) node {
			if p, ok := n.(printed); ok {
				return printed{p.name, strings.TrimSpace(texts[p.name])}
			}
			return n
		})}
	}
	return out
}
