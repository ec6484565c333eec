package formula

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Parse reads a formula. What cannot be read is an error that says where.
func Parse(text string) (Formula, error) {
	p := parser{rest: text}
	n := p.sum()
	if p.blank(); p.err == nil && p.rest != "" {
		p.fail()
	}
	if p.err != nil {
		return Formula{}, fmt.Errorf("formula %q: %w", text, p.err)
	}
	return Formula{root: n}, nil
}

// deepest is how many brackets may stand within each other.
const deepest = 40

type parser struct {
	rest  string
	depth int
	err   error
}

func (p *parser) fail() node {
	if p.err == nil {
		p.err = fmt.Errorf("cannot read %q", p.rest)
	}
	return number{}
}

func (p *parser) blank() { p.rest = strings.TrimLeft(p.rest, " ") }

func (p *parser) take(token string) bool {
	p.blank()
	rest, found := strings.CutPrefix(p.rest, token)
	if found {
		p.rest = rest
	}
	return found
}

func (p *parser) sum() node {
	if p.depth++; p.depth > deepest {
		return p.fail()
	}
	defer func() { p.depth-- }()
	s := sum{{p.minus(), p.product()}}
	for p.err == nil {
		switch {
		case p.take("+"):
			s = append(s, signed{false, p.product()})
		case p.minus():
			s = append(s, signed{true, p.product()})
		default:
			if len(s) == 1 && !s[0].minus {
				return s[0].part
			}
			return s
		}
	}
	return s
}

func (p *parser) minus() bool { return p.take("−") || p.take("-") }

// product reads factors from the left. What is divided are the factors since
// the last division, which is the same number and reads as books print it:
// 2/3 Mcr/Ma is (2/3) (Mcr/Ma).
func (p *parser) product() node {
	var done, run product
	run = append(run, p.power())
	for p.err == nil {
		switch {
		case p.take("/"):
			under := p.power()
			if len(run) == 0 { // a/b/c
				last := done[len(done)-1].(fraction)
				done[len(done)-1] = fraction{last.over, joined(last.under, under)}
				continue
			}
			done, run = append(done, fraction{single(run), under}), nil
		case p.take("*"), p.startsFactor():
			run = append(run, p.power())
		default:
			return single(append(done, run...))
		}
	}
	return number{}
}

// single is a product, or its only factor.
func single(p product) node {
	if len(p) == 1 {
		return p[0]
	}
	return p
}

// joined is the product of two parts, written side by side.
func joined(a, b node) node {
	if p, ok := a.(product); ok {
		return append(append(product{}, p...), b)
	}
	return product{a, b}
}

func (p *parser) startsFactor() bool {
	p.blank()
	r, _ := utf8.DecodeRuneInString(p.rest)
	return p.rest != "" && (unicode.IsLetter(r) || unicode.IsDigit(r) || r == '√' || r == '(')
}

func (p *parser) power() node {
	base := p.factor()
	if p.take("^") {
		return power{base, p.factor()}
	}
	return base
}

func (p *parser) factor() node {
	p.blank()
	switch {
	case p.err != nil:
		return number{}
	case p.take("√"):
		return root{p.factor()}
	case p.take("("):
		n := p.sum()
		p.closing(")")
		return n
	case p.take("|"):
		n := p.sum()
		p.closing("|")
		return call{"abs", []node{n}}
	}
	for _, name := range [...]string{"min", "max", "sin"} {
		if p.take(name + "(") {
			return p.call(name)
		}
	}
	if name := p.name(); name != "" {
		return symbol{name}
	}
	return p.number()
}

// call reads what a function is taken of. max(e; −e) is the amount of e.
func (p *parser) call(name string) node {
	args := []node{p.sum()}
	for p.take(";") {
		args = append(args, p.sum())
	}
	p.closing(")")
	if of, ok := args[0].(symbol); ok && name == "max" && len(args) == 2 {
		if s, ok := args[1].(sum); ok && len(s) == 1 && s[0] == (signed{true, of}) {
			return call{"abs", args[:1]}
		}
	}
	return call{name, args}
}

func (p *parser) closing(bracket string) {
	if !p.take(bracket) {
		p.fail()
	}
}

// name reads a symbol: a letter, and then letters, digits, ' and commas.
func (p *parser) name() string {
	end := 0
	for i, r := range p.rest {
		first := unicode.IsLetter(r)
		if !first && (i == 0 || !unicode.IsDigit(r) && r != '\'' && r != ',') {
			break
		}
		end = i + utf8.RuneLen(r)
	}
	name := p.rest[:end]
	p.rest = p.rest[end:]
	return name
}

func (p *parser) number() node {
	end := strings.IndexFunc(p.rest, func(r rune) bool { return (r < '0' || r > '9') && r != '.' && r != ',' })
	if end < 0 {
		end = len(p.rest)
	}
	v, err := strconv.ParseFloat(strings.ReplaceAll(p.rest[:end], ",", ""), 64)
	if err != nil {
		return p.fail()
	}
	p.rest = p.rest[end:]
	return number{v}
}
