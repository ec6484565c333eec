package formula

import (
	"html"
	"strings"
)

// MathML typesets the formula. It comes in pieces, each of which may start a
// new line, since a browser breaks no formula by itself: the summands of a long
// sum, what min and max choose from, a long product. before
// stands before the first piece and is markup of MathML, as Symbol and Sign
// return it.
func (f Formula) MathML(before string) []string {
	if f.root == nil {
		return nil
	}
	t := setter{dots: f.numbers, print: f.print}
	t.b.WriteString(before)
	t.pieces(f.root)
	t.cut()
	return t.out
}

// cut ends a piece.
func (t *setter) cut() {
	t.out = append(t.out, wrapped(t.b.String()))
	t.b.Reset()
}

// pieces writes a part that stands by itself, and cuts it where it may break.
func (t *setter) pieces(n node) {
	switch n := n.(type) {
	case sum:
		for i := range n {
			if i > 0 {
				t.cut()
			}
			t.summand(n, i)
		}
	case product:
		for i, f := range n {
			if _, bracket := f.(sum); i > 0 && t.dots && bracket || len(n) > 5 && i == (len(n)+1)/2 {
				t.cut()
			}
			t.factor(f, i)
		}
	case call:
		if len(n.args) < 2 {
			t.call(n)
			return
		}
		t.b.WriteString("<mi>" + n.name + `</mi><mo stretchy="false">(</mo>`)
		for i, a := range n.args {
			if i > 0 {
				t.b.WriteString(separator)
				t.cut()
			}
			t.pieces(a)
		}
		t.b.WriteString(`<mo stretchy="false">)</mo>`)
	case fraction:
		switch over := n.over.(type) {
		case call:
			if len(over.args) < 2 {
				t.part(n, inSum)
				return
			}
		case product:
			if _, bare := n.under.(number); !bare || !t.dots || len(over) < 3 {
				t.part(n, inSum)
				return
			}
		default:
			t.part(n, inSum)
			return
		}
		t.pieces(n.over)
		t.sign("/")
		t.part(n.under, tight)
	default:
		t.part(n, inSum)
	}
}

// Symbol is the markup of one symbol, to stand before a formula.
func Symbol(name string) string {
	t := setter{}
	mathSymbol(&t.b, name)
	return t.b.String()
}

// Sign is the markup of an operator or of a sign that stands by itself.
func Sign(sign string) string { return "<mo>" + html.EscapeString(sign) + "</mo>" }

// Amount is the markup of a number with its unit.
func Amount(number, unit string) string {
	text := "<mn>" + html.EscapeString(number) + "</mn>"
	if unit != "" {
		text += "<mtext>\u00a0" + html.EscapeString(unit) + "</mtext>"
	}
	return text
}

// Math makes markup of MathML stand by itself.
func Math(inside string) string { return wrapped(inside) }

func wrapped(inside string) string {
	return `<math xmlns="http://www.w3.org/1998/Math/MathML" display="inline"><mstyle displaystyle="true">` + inside + `</mstyle></math>`
}

// thin is the gap between factors; times says to a reader aloud that they are
// multiplied.
const (
	separator = `<mo separator="true">;</mo>`
	thin      = `<mo lspace="0" rspace="0.17em">&#x2062;</mo>`
)

// setter typesets.
type setter struct {
	b     strings.Builder
	out   []string // finished pieces
	print Print
	dots  bool
}

func (t *setter) part(n node, within place) {
	switch n := n.(type) {
	case number:
		t.b.WriteString("<mn>" + plain(n.value, t.print) + "</mn>")
	case symbol:
		mathSymbol(&t.b, n.name)
	case printed:
		t.bracket(n.text[0] > '9' && within > inSum, func() { t.b.WriteString("<mn>" + html.EscapeString(n.text) + "</mn>") })
	case sum:
		t.bracket(within > inSum, func() {
			for i := range n {
				t.summand(n, i)
			}
		})
	case product:
		t.bracket(within > inProduct, func() { t.product(n) })
	case fraction:
		t.bracket(within == tight, func() { t.fraction(n) })
	case power:
		t.power(n)
	case root:
		t.element("msqrt", func() { t.part(n.of, inSum) })
	case call:
		t.call(n)
	}
}

func (t *setter) element(name string, inside func()) {
	t.b.WriteString("<" + name + ">")
	inside()
	t.b.WriteString("</" + name + ">")
}

func (t *setter) sign(s string) { t.b.WriteString(Sign(s)) }

func (t *setter) bracket(needed bool, inside func()) {
	if !needed {
		t.element("mrow", inside)
		return
	}
	t.element("mrow", func() {
		t.sign("(")
		inside()
		t.sign(")")
	})
}

// summand writes one part of a sum with its sign.
func (t *setter) summand(s sum, i int) {
	switch {
	case s[i].minus:
		t.sign("−")
	case i > 0:
		t.sign("+")
	}
	within := inSum
	if _, nested := s[i].part.(sum); nested || i > 0 {
		within = inProduct
	}
	t.part(s[i].part, within)
}

func (t *setter) product(p product) {
	for i, f := range p {
		t.factor(f, i)
	}
}

// factor writes one factor with what joins it to the one before.
func (t *setter) factor(f node, i int) {
	switch {
	case i > 0 && t.dots:
		t.sign("·")
	case i > 0:
		t.b.WriteString(thin)
	}
	t.part(f, inProduct)
}

// fraction sets 2/3 small, as a number of its own, and all else over a line.
func (t *setter) fraction(f fraction) {
	t.element("mfrac", func() {
		t.element("mrow", func() { t.part(f.over, inSum) })
		t.element("mrow", func() { t.part(f.under, inSum) })
	})
}

func (t *setter) power(p power) {
	t.element("msup", func() {
		t.part(p.base, tight)
		t.element("mrow", func() {
			if f, ok := p.exponent.(fraction); ok { // a stroke is easier to read so small
				t.part(f.over, inProduct)
				t.sign("/")
				t.part(f.under, tight)
				return
			}
			t.part(p.exponent, inSum)
		})
	})
}

func (t *setter) call(c call) {
	if c.name == "abs" {
		t.element("mrow", func() {
			t.b.WriteString(`<mo stretchy="true">|</mo>`)
			t.part(c.args[0], inSum)
			t.b.WriteString(`<mo stretchy="true">|</mo>`)
		})
		return
	}
	t.element("mrow", func() {
		t.b.WriteString("<mi>" + c.name + "</mi>")
		t.sign("(")
		for i, a := range c.args {
			if i > 0 {
				t.b.WriteString(separator)
			}
			t.part(a, inSum)
		}
		t.sign(")")
	})
}
