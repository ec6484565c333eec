package view

import (
	"math"
	"strconv"
	"strings"
	"unicode"

	"standingbeam/app/draw"
	"standingbeam/app/formula"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// Working is how a check was reached, ready to be shown.
type Working struct {
	Parts []Part
	Given []Symbol // what the sum starts from, each symbol once
	Note  string   // what stands in the place of a sum, or why its units are those of the book
	Limit string   // what is asked beside what there is
}

// Part is one stretch of a working: what pushes, what is asked, what there is.
type Part struct {
	Title    string
	Sketches []string // small pictures, each an svg element
	Steps    []Step
}

// Step is one step of a working. Formula and Numbers are pieces of MathML, each
// of which may start a line; Text is the whole in one line.
type Step struct {
	ID             string // of its element on the page
	Number         string
	Formula        []string
	Numbers        []string // none where the formula is a single symbol
	Result, Metric string
	Text           string
	Means, Source  string
	Uses           []Use
}

// Use is a result of another step that a step takes.
type Use struct {
	Symbol string // MathML
	Name   string // to be read aloud: "Mn, found in step 4"
	Step   string // its number
	ID     string // of its element
}

// Symbol is one symbol with its value.
type Symbol struct {
	MathML, Text, Value, Metric, Means string
}

// workingOf writes the working of a check. key is that of the check on the page.
func workingOf(s words.Speaker, c calc.Check, key string) Working {
	w := writing{s: s, check: c, key: key}
	chain, asked := inOrder(c)
	w.lines = formula.Write(chain, s.Number)
	loads := 0
	for loads < len(chain) && isLoad(chain[loads].Symbol) {
		loads++
	}
	var out Working
	for _, part := range []struct {
		title    string
		from, to int
	}{{"working.loads", 0, loads}, {"working.asked", loads, asked}, {"working.there", max(loads, asked), len(chain)}} {
		if part.from < part.to {
			out.Parts = append(out.Parts, Part{Title: s.Word(part.title), Steps: w.steps(part.from, part.to)})
		}
	}
	w.sketches(out.Parts)
	out.Given = w.given()
	out.Limit = w.limit()
	switch {
	case len(chain) > 0 && s.System == words.Metric:
		out.Note = s.Word("working.pounds")
	case len(chain) == 0 && (c.ID == "unbraced-fill" || c.ID == "level-difference"):
		out.Note = s.Word("working.searched")
	case len(chain) == 0 && !c.NoValue:
		out.Note = s.Word("working.read")
	}
	return out
}

// sketches puts the small pictures to the parts that they explain: what is
// asked before the last part, what there is into it.
func (w *writing) sketches(parts []Part) {
	for _, k := range draw.Working(w.check, w.lines, w.s) {
		at := len(parts) - 1
		if !k.Ends && at > 0 {
			at--
		}
		parts[at].Sketches = append(parts[at].Sketches, k.SVG)
	}
}

// inOrder puts the loads of a working first, and says where what is asked ends.
func inOrder(c calc.Check) (chain []working.Step, asked int) {
	for _, st := range c.Steps {
		if isLoad(st.Symbol) {
			chain = append(chain, st)
		}
	}
	for _, st := range c.Steps {
		if !isLoad(st.Symbol) {
			chain = append(chain, st)
		}
	}
	if c.Service && c.Demand.Kind == units.None {
		return chain, 0 // a factor of safety: what is asked is a number of the book
	}
	for i, st := range chain {
		if st.Value.Kind == c.Demand.Kind && math.Abs(st.Value.Base-c.Demand.Base) <= 1e-9*math.Abs(c.Demand.Base) {
			asked = i + 1
		}
	}
	return chain, asked
}

// isLoad reports a step that says what the ground and the weights are.
func isLoad(symbol string) bool {
	switch symbol {
	case "K", "K0", "Ka", "γeq", "γb", "Lt", "Lh", "Pp":
		return true
	case "P,foot", "W,all", "x,all":
		return false
	}
	if letter, _, comma := strings.Cut(symbol, ","); comma {
		return strings.Contains("W x U u P y R z", letter)
	}
	rest := strings.TrimLeft(strings.TrimPrefix(symbol, "p"), "u0123456789")
	return strings.HasPrefix(symbol, "p") && rest == ""
}

// writing is one working while it is written.
type writing struct {
	s     words.Speaker
	check calc.Check
	key   string
	lines []formula.Line
}

func (w *writing) id(step int) string {
	return "step-" + strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return r
		}
		return '-'
	}, w.key) + "-" + strconv.Itoa(step+1)
}

func (w *writing) steps(from, to int) []Step {
	out := make([]Step, 0, to-from)
	for i := from; i < to; i++ {
		l := &w.lines[i]
		value := joinUnit(l.Result.Text, l.Result.Unit.Sign())
		one := Step{ID: w.id(i), Number: strconv.Itoa(i + 1), Means: w.s.Symbol(w.check.ID, l.Step.Symbol), Source: w.source(l.Step.Clause),
			Formula: below(w.s, l.Formula.MathML(formula.Symbol(l.Step.Symbol)+formula.Sign("="))),
			Result:  formula.Math(formula.Sign("=") + formula.Amount(l.Result.Text, l.Result.Unit.Sign())), Metric: w.metric(l.Result)}
		text := []string{formula.SymbolText(l.Step.Symbol), l.Formula.Text()}
		if !l.Numbers.Empty() {
			one.Numbers = below(w.s, l.Numbers.MathML(formula.Sign("=")))
			text = append(text, l.Numbers.Text())
		}
		one.Text = w.s.Below(strings.Join(append(text, value), " = "))
		for _, t := range l.Terms {
			if t.From >= 0 {
				n := strconv.Itoa(t.From + 1)
				one.Uses = append(one.Uses, Use{Symbol: w.s.Below(formula.Math(formula.Symbol(t.Symbol))), Step: n, ID: w.id(t.From),
					Name: w.s.Sentence("working.to-step", w.s.Below(formula.SymbolText(t.Symbol)), n)})
			}
		}
		out = append(out, one)
	}
	return out
}

// below puts the words below the letters of pieces of a formula into the
// reader's language.
func below(s words.Speaker, pieces []string) []string {
	for i := range pieces {
		pieces[i] = s.Below(pieces[i])
	}
	return pieces
}

// given lists the symbols that the sum starts from. One that stands in inches
// in one step and in feet in another has both.
func (w *writing) given() (out []Symbol) {
	at := map[string]int{}
	for i := range w.lines {
		for _, t := range w.lines[i].Terms {
			if t.From >= 0 {
				continue
			}
			value := joinUnit(t.Text, t.Unit.Sign())
			n, known := at[t.Symbol]
			switch {
			case !known:
				at[t.Symbol] = len(out)
				out = append(out, Symbol{MathML: w.s.Below(formula.Math(formula.Symbol(t.Symbol))), Text: w.s.Below(formula.SymbolText(t.Symbol)),
					Value: value, Metric: w.metric(t), Means: w.s.Symbol(w.check.ID, t.Symbol)})
			case !strings.Contains(" = "+out[n].Value+" = ", " = "+value+" = "):
				out[n].Value += " = " + value
			}
		}
	}
	return out
}

// metric is a value in the reader's units, where these are others.
func (w *writing) metric(g formula.Given) string {
	if w.s.System != words.Metric || g.Of.Kind.US() == g.Of.Kind.Metric() {
		return ""
	}
	return w.s.Quantity(g.Of)
}

// source is where a step comes from: clause and edition, or the sum itself.
func (w *writing) source(clause string) string {
	switch {
	case clause == "", clause == "statics":
		return w.s.Word("working.statics")
	case clause == "geometry":
		return w.s.Word("working.geometry")
	case clause[0] >= '0' && clause[0] <= '9':
		return source(w.s, w.check.Rulebook, clause)
	}
	return w.s.Source(clause)
}

// limit says what is asked beside what there is, and how that ends.
func (w *writing) limit() string {
	c, s := w.check, w.s
	state := strings.ToLower(s.State(c.State))
	switch {
	case c.State == calc.NotApplicable, c.NoValue && c.Demand.Base == 0:
		return ""
	case c.NoValue:
		return s.Sentence("working.limit-open", s.Demand(c.Demand))
	case c.Service && c.Demand.Kind == units.None:
		return s.Sentence("working.limit-factor", s.Demand(c.Demand), s.Capacity(c.Capacity), state)
	}
	demand, capacity := s.Amounts(c)
	r, ok := c.Ratio()
	if !ok {
		return s.Sentence("working.limit", demand, capacity, state)
	}
	return s.Sentence("working.limit-ratio", demand, capacity, figure(s, r), state)
}

func joinUnit(number, unit string) string {
	if unit == "" {
		return number
	}
	return number + " " + unit
}
