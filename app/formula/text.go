package formula

import (
	"math"
	"strconv"
	"strings"
)

// Text writes the formula in one line of text, which reads back as the same
// formula. Factors stand side by side, numbers with a dot between them.
func (f Formula) Text() string {
	if f.root == nil {
		return ""
	}
	t := liner{dots: f.numbers, print: f.print}
	t.part(f.root, inSum)
	return t.b.String()
}

// liner writes a line of text.
type liner struct {
	b     strings.Builder
	dots  bool // between factors
	print Print
}

// What a part stands in, and so whether it needs brackets.
type place uint8

const (
	inSum place = iota
	inProduct
	tight // under the stroke of a fraction, under a power or a root
)

func (t *liner) part(n node, within place) {
	switch n := n.(type) {
	case number:
		t.b.WriteString(plain(n.value, t.print))
	case symbol:
		t.b.WriteString(n.name)
	case printed:
		t.bracket(n.text[0] > '9' && within > inSum, func() { t.b.WriteString(n.text) })
	case sum:
		t.bracket(within > inSum, func() { t.sum(n) })
	case product:
		t.bracket(within > inProduct, func() { t.product(n) })
	case fraction:
		t.bracket(within > inProduct, func() { t.fraction(n) })
	case power:
		t.part(n.base, tight)
		t.b.WriteByte('^')
		t.part(n.exponent, tight)
	case root:
		t.b.WriteString("√")
		t.part(n.of, tight)
	case call:
		t.call(n)
	}
}

func (t *liner) bracket(needed bool, inside func()) {
	if needed {
		t.b.WriteByte('(')
		defer t.b.WriteByte(')')
	}
	inside()
}

func (t *liner) sum(s sum) {
	for i, item := range s {
		switch {
		case item.minus && i == 0:
			t.b.WriteString("−")
		case item.minus:
			t.b.WriteString(" − ")
		case i > 0:
			t.b.WriteString(" + ")
		}
		within := inSum
		if _, nested := item.part.(sum); nested || i > 0 {
			within = inProduct
		}
		t.part(item.part, within)
	}
}

func (t *liner) product(p product) {
	for i, f := range p {
		switch {
		case i > 0 && t.dots:
			t.b.WriteString(" · ")
		case i > 0:
			t.b.WriteByte(' ')
		}
		t.part(f, inProduct)
	}
}

// fraction writes 2/3 without blanks, and all else with them.
func (t *liner) fraction(f fraction) {
	stroke := " / "
	if atom(f.over) && atom(f.under) {
		stroke = "/"
	}
	t.part(f.over, inProduct)
	t.b.WriteString(stroke)
	t.part(f.under, tight)
}

func (t *liner) call(c call) {
	open, shut := c.name+"(", ")"
	if c.name == "abs" {
		open, shut = "|", "|"
	}
	t.b.WriteString(open)
	for i, a := range c.args {
		if i > 0 {
			t.b.WriteString("; ")
		}
		t.part(a, inSum)
	}
	t.b.WriteString(shut)
}

// atom reports a single number or symbol.
func atom(n node) bool {
	switch n.(type) {
	case number, symbol, printed:
		return true
	}
	return false
}

// plain writes a number of the formula itself, as the book has it, with the
// reader's signs.
func plain(v float64, print Print) string {
	text := strconv.FormatFloat(v, 'f', -1, 64)
	if print != nil {
		_, part, _ := strings.Cut(text, ".")
		return print(v, len(part))
	}
	if v == math.Trunc(v) && v < 1e15 {
		return grouped(text, ",")
	}
	return text
}

// grouped puts a comma between the thousands of a whole number.
func grouped(whole, comma string) string {
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + comma + whole[i:]
	}
	return whole
}
