package view

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
)

// This file reads a printed sum as somebody with a pocket calculator does. It
// knows nothing of the program's own formulas: only digits, signs and the
// rules of arithmetic. Every number stands for all that it may have been
// rounded from: half of its last digit either way, the last of four where
// fewer are printed because zeros at the end are left out.

// span is a number with what it may be.
type span struct{ low, at, high float64 }

func computeAgain(text string) (span, error) {
	c := calculator{rest: text}
	v := c.sum()
	if c.rest != "" && c.err == nil {
		c.err = fmt.Errorf("%q is left over", c.rest)
	}
	return v, c.err
}

type calculator struct {
	rest string
	err  error
}

func (c *calculator) take(sign string) bool {
	c.rest = strings.TrimLeft(c.rest, " ")
	rest, found := strings.CutPrefix(c.rest, sign)
	if found {
		c.rest = rest
	}
	return found
}

func (c *calculator) sum() span {
	v := c.product()
	for c.err == nil {
		switch {
		case c.take("+"):
			w := c.product()
			v = span{v.low + w.low, v.at + w.at, v.high + w.high}
		case c.take("−"):
			w := c.product()
			v = span{v.low - w.high, v.at - w.at, v.high - w.low}
		default:
			return v
		}
	}
	return v
}

func (c *calculator) product() span {
	v := c.power()
	for c.err == nil {
		switch {
		case c.take("·"):
			v = v.by(c.power(), func(a, b float64) float64 { return a * b })
		case c.take("/"):
			w := c.power()
			if w.low <= 0 && w.high >= 0 {
				c.err = fmt.Errorf("division by what may be nothing")
			}
			v = v.by(w, func(a, b float64) float64 { return a / b })
		default:
			return v
		}
	}
	return v
}

// by joins two spans by a rule that is monotonic in each.
func (v span) by(w span, f func(a, b float64) float64) span {
	all := [4]float64{f(v.low, w.low), f(v.low, w.high), f(v.high, w.low), f(v.high, w.high)}
	return span{min(all[0], all[1], all[2], all[3]), f(v.at, w.at), max(all[0], all[1], all[2], all[3])}
}

func (c *calculator) power() span {
	v := c.value()
	if c.take("^") {
		n := c.value().at
		return v.by(span{n, n, n}, math.Pow)
	}
	return v
}

func (c *calculator) value() span {
	switch {
	case c.take("√"):
		v := c.value()
		return span{math.Sqrt(math.Max(0, v.low)), math.Sqrt(v.at), math.Sqrt(v.high)}
	case c.take("−"):
		v := c.power()
		return span{-v.high, -v.at, -v.low}
	case c.take("min("):
		return c.list(math.Min)
	case c.take("max("):
		return c.list(math.Max)
	case c.take("sin("):
		v := c.list(math.Min)
		return span{math.Sin(v.low * math.Pi / 180), math.Sin(v.at * math.Pi / 180), math.Sin(v.high * math.Pi / 180)}
	case c.take("("):
		return c.list(math.Min)
	case c.take("|"):
		v := c.sum()
		if !c.take("|") {
			c.err = fmt.Errorf("no end of an amount at %q", c.rest)
		}
		low := math.Min(math.Abs(v.low), math.Abs(v.high))
		if v.low < 0 && v.high > 0 {
			low = 0
		}
		return span{low, math.Abs(v.at), math.Max(math.Abs(v.low), math.Abs(v.high))}
	}
	return c.number()
}

// list reads up to the closing bracket and joins what stands between the
// semicolons.
func (c *calculator) list(join func(a, b float64) float64) span {
	v := c.sum()
	for c.take(";") {
		w := c.sum()
		v = span{join(v.low, w.low), join(v.at, w.at), join(v.high, w.high)}
	}
	if !c.take(")") {
		c.err = fmt.Errorf("no closing bracket at %q", c.rest)
	}
	return v
}

func (c *calculator) number() span {
	c.rest = strings.TrimLeft(c.rest, " ")
	end := strings.IndexFunc(c.rest, func(r rune) bool { return !strings.ContainsRune("0123456789.,", r) })
	if end < 0 {
		end = len(c.rest)
	}
	text := strings.ReplaceAll(c.rest[:end], ",", "")
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		c.err = fmt.Errorf("no number at %q", c.rest)
		return span{}
	}
	c.rest = strings.TrimPrefix(c.rest[end:], "°")
	_, part, _ := strings.Cut(text, ".")
	decimals := len(part)
	if v != 0 {
		decimals = max(decimals, 3-int(math.Floor(math.Log10(v)+1e-12)))
	}
	half := math.Pow(10, -float64(max(0, decimals))) / 2
	if v == 0 {
		half = 0
	}
	return span{v - half, v, v + half}
}

// Sums done by hand.
func TestComputeAgain(t *testing.T) {
	for text, want := range map[string]float64{
		"0.2 · 60,000 / (0.85 · 3,000 · 12)": 12000.0 / 30600, "2 + 3 · 4^2": 50, "max(1; 2; −3) − |−4|": -2,
		"√(2 / 8)": 0.5, "(1 − sin(30°)) / (1 + sin(30°))": 1.0 / 3, "6 / 2 · 3": 9, "27^(1/3)": 3,
	} {
		v, err := computeAgain(text)
		if err != nil || math.Abs(v.at-want) > 1e-12 || v.low > v.at || v.high < v.at {
			t.Errorf("%s = %v, %v, want %v", text, v, err, want)
		}
	}
	for text, half := range map[string]float64{"0.1333": 5e-5, "12": 0.005, "1,811": 0.5, "3.14159": 5e-6, "57,000": 0.5} {
		if v, err := computeAgain(text); err != nil || math.Abs(v.high-v.at-half) > 1e-12 {
			t.Errorf("%s may be %v, %v, want half a digit of %v", text, v, err, half)
		}
	}
	for _, text := range []string{"", "2 +", "(2", "2)", "a", "2 3"} {
		if v, err := computeAgain(text); err == nil {
			t.Errorf("%q comes to %v", text, v)
		}
	}
}
