package view

import (
	"math"
	"sort"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"standingbeam/app/words"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// steps writes a working for reading: symbol, formula, the formula with its
// numbers, the result with its unit, and where each number comes from.
func steps(s words.Speaker, chain []working.Step) []Step {
	out := make([]Step, 0, len(chain))
	for _, step := range chain {
		with := alike(step.With)
		one := Step{Symbol: step.Symbol, Formula: step.Formula, Result: result(s, step.Value), Clause: step.Clause}
		if n := numbers(step.Formula, with); n != step.Formula && strings.ContainsAny(n, "·/+−(√") {
			one.Numbers = perFoot(n, step, with)
		}
		for _, t := range with {
			if t.unit.Symbol != "" {
				one.With = append(one.With, s.Sentence("working.term", t.symbol, significant(t.value), raised(t.unit.Symbol)))
			}
		}
		out = append(out, one)
	}
	return out
}

// term is a symbol with the number that is written for it.
type term struct {
	symbol string
	value  float64
	unit   units.Unit
}

// alike writes the terms of one formula in units that go together: levels in
// inches where a short length stands beside them.
func alike(with []working.Term) []term {
	short := false
	for _, t := range with {
		short = short || t.Value.Kind == units.Size
	}
	out := make([]term, 0, len(with))
	for _, t := range with {
		u := t.Value.Kind.US()
		if t.Value.Kind == units.Level && short {
			u = units.Size.US()
		}
		out = append(out, term{t.Symbol, t.Value.In(u), u})
	}
	return out
}

// perFoot completes a sum whose numbers are in inches and whose result is per
// foot, or the other way around, so that what is written is what comes out.
func perFoot(numbers string, step working.Step, with []term) string {
	plain := working.Step{Symbol: step.Symbol, Formula: step.Formula}
	for _, t := range with {
		plain.With = append(plain.With, working.Number(t.symbol, t.value))
	}
	v, err := plain.Evaluate()
	if err != nil || step.Value.US() == 0 {
		return numbers
	}
	switch r := v.Base / step.Value.US(); {
	case math.Abs(r/12-1) < 1e-6:
		return "(" + numbers + ") / 12"
	case math.Abs(r*12-1) < 1e-6:
		return "(" + numbers + ") · 12"
	}
	return numbers
}

// result is the value of a step in the unit of its formula, and in the
// reader's where that is another.
func result(s words.Speaker, q units.Quantity) string {
	u := q.Kind.US()
	text := significant(q.US())
	if u.Symbol == "" {
		return text
	}
	text += " " + u.Symbol
	if s.System == words.Metric && q.Kind.Metric() != u {
		text += " = " + s.Quantity(q)
	}
	return raised(text)
}

// numbers puts the values of the terms in the place of their symbols. Two
// operands that stand side by side are multiplied, so a dot goes between them
// once they are numbers.
func numbers(formula string, with []term) string {
	terms := append([]term(nil), with...)
	sort.SliceStable(terms, func(i, j int) bool { return len(terms[i].symbol) > len(terms[j].symbol) })
	var b strings.Builder
	operand := false // the last thing written was an operand
	for rest := formula; rest != ""; {
		piece, value, isOperand := nextPiece(rest, terms)
		rest = rest[len(piece):]
		if strings.TrimSpace(piece) == "" {
			continue
		}
		opens := strings.HasPrefix(piece, "(") || strings.HasPrefix(piece, "√") || isOperand
		if operand && opens {
			b.WriteString(" · ")
		}
		b.WriteString(spaced(value))
		operand = isOperand || strings.HasPrefix(piece, ")")
	}
	return strings.TrimSpace(b.String())
}

// spaced puts blanks around the operators that join two operands.
func spaced(operator string) string {
	switch operator {
	case "+", "−", "-", "/", "≤", "≥":
		return " " + operator + " "
	case ";", ",":
		return operator + " "
	}
	return operator
}

// nextPiece cuts the next symbol, number or sign off a formula and says what
// is written for it.
func nextPiece(rest string, terms []term) (piece, value string, operand bool) {
	for _, t := range terms {
		if t.symbol != "" && strings.HasPrefix(rest, t.symbol) && ends(rest[len(t.symbol):], t.symbol) {
			return t.symbol, significant(t.value), true
		}
	}
	r, size := utf8.DecodeRuneInString(rest)
	switch {
	case unicode.IsDigit(r) || r == '.':
		n := strings.IndexFunc(rest, func(r rune) bool { return !unicode.IsDigit(r) && r != '.' })
		if n < 0 {
			n = len(rest)
		}
		return rest[:n], rest[:n], true
	case unicode.IsLetter(r):
		n := strings.IndexFunc(rest, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '\'' })
		if n < 0 {
			n = len(rest)
		}
		name := rest[:n]
		function := strings.HasPrefix(rest[n:], "(") && (name == "min" || name == "max" || name == "tan" || name == "sin" || name == "cos")
		return name, name, !function
	}
	return rest[:size], rest[:size], false
}

// ends reports whether a symbol is whole where rest follows it: "b" is not the
// start of "bw".
func ends(rest, symbol string) bool {
	r, _ := utf8.DecodeRuneInString(rest)
	last, _ := utf8.DecodeLastRuneInString(symbol)
	if !unicode.IsLetter(last) && !unicode.IsDigit(last) {
		return true
	}
	return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '\''
}

// significant writes a number with four significant digits, more before the
// point where it has them, and commas between thousands.
func significant(v float64) string {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return "–"
	}
	digits := 4
	if a := math.Abs(v); a >= 1 {
		digits = max(0, 3-int(math.Floor(math.Log10(a))))
	} else if a > 0 {
		digits = min(8, 3-int(math.Floor(math.Log10(a))))
	}
	text := strconv.FormatFloat(v, 'f', digits, 64)
	whole, part, point := strings.Cut(text, ".")
	sign := ""
	if strings.HasPrefix(whole, "-") {
		sign, whole = "−", whole[1:]
	}
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	if part = strings.TrimRight(part, "0"); !point || part == "" {
		return sign + whole
	}
	return sign + whole + "." + part
}
