package working

import (
	"errors"
	"fmt"
	"math"
	"unicode"
	"unicode/utf8"
)

// parser reads one formula from the left.
type parser struct {
	text  string
	terms []Term
	strip float64
	err   error
}

// skip passes over blanks.
func (p *parser) skip() {
	for p.text != "" && p.text[0] == ' ' {
		p.text = p.text[1:]
	}
}

// take reads the token if it comes next.
func (p *parser) take(token string) bool {
	p.skip()
	if len(p.text) < len(token) || p.text[:len(token)] != token {
		return false
	}
	p.text = p.text[len(token):]
	return true
}

// name reads a symbol, "" if none comes next.
func (p *parser) name() string {
	end := 0
	for i, r := range p.text {
		first := unicode.IsLetter(r)
		if !first && (i == 0 || !unicode.IsDigit(r) && r != '\'' && r != ',') {
			break
		}
		end = i + utf8.RuneLen(r)
	}
	name := p.text[:end]
	p.text = p.text[end:]
	return name
}

// sum reads terms with + and − between them.
func (p *parser) sum() float64 {
	v := p.product()
	for {
		switch {
		case p.take("+"):
			v += p.product()
		case p.take("−"), p.take("-"):
			v -= p.product()
		default:
			return v
		}
	}
}

// product reads factors side by side or with * and / between them.
func (p *parser) product() float64 {
	v := p.power()
	for {
		p.skip()
		switch {
		case p.take("/"):
			v /= p.power()
		case p.take("*"), p.startsFactor():
			v *= p.power()
		default:
			return v
		}
	}
}

// startsFactor reports whether a factor comes next.
func (p *parser) startsFactor() bool {
	if p.err != nil {
		return false
	}
	r, _ := utf8.DecodeRuneInString(p.text)
	return unicode.IsLetter(r) || unicode.IsDigit(r) || r == '√' || r == '('
}

// power reads a factor and its exponent.
func (p *parser) power() float64 {
	v := p.factor()
	if p.take("^") {
		v = math.Pow(v, p.factor())
	}
	return v
}

// errSyntax is any other fault of a formula.
var errSyntax = errors.New("not a formula")

// factor reads a number, a symbol, a bracket, a root, a sine, min or max.
func (p *parser) factor() float64 {
	p.skip()
	switch {
	case p.err != nil:
		return 0
	case p.take("−"), p.take("-"):
		return -p.power()
	case p.take("√"):
		return math.Sqrt(p.factor())
	case p.take("min("):
		return p.least(math.Min)
	case p.take("max("):
		return p.least(math.Max)
	case p.take("sin("):
		v := math.Sin(p.sum())
		p.close()
		return v
	case p.take("("):
		v := p.sum()
		p.close()
		return v
	}
	if name := p.name(); name != "" {
		return p.value(name)
	}
	return p.number()
}

// number reads a number.
func (p *parser) number() float64 {
	var v float64
	end := 0
	for end < len(p.text) && (p.text[end] >= '0' && p.text[end] <= '9' || p.text[end] == '.') {
		end++
	}
	if _, err := fmt.Sscanf(p.text[:end], "%g", &v); err != nil {
		p.err = fmt.Errorf("%w at %q", errSyntax, p.text)
		return 0
	}
	p.text = p.text[end:]
	return v
}

// least reads sums up to the closing bracket, with ; between them, and joins
// them.
func (p *parser) least(join func(a, b float64) float64) float64 {
	v := p.sum()
	for p.take(";") {
		v = join(v, p.sum())
	}
	p.close()
	return v
}

// close reads a closing bracket.
func (p *parser) close() {
	if !p.take(")") && p.err == nil {
		p.err = fmt.Errorf("%w: a bracket is open at %q", errSyntax, p.text)
	}
}

// value returns the value of a symbol among the terms.
func (p *parser) value(name string) float64 {
	for _, t := range p.terms {
		if t.Symbol == name {
			if perLength(t.Value.Kind) {
				return t.Value.Base * p.strip
			}
			return t.Value.Base
		}
	}
	if p.err == nil {
		p.err = fmt.Errorf("%w: %s is not among the terms", errSyntax, name)
	}
	return 0
}
