// Package entry reads lengths and other quantities as people type them, and
// writes them so that they can be read again.
//
// Two readers share one grammar. The strict one is for files: a unit is
// required and the decimal sign is a point. The lenient one is for the page:
// the unit of the field is taken where none is written, and a comma is a
// decimal sign too, but a comma before exactly three digits parts thousands,
// unless the person writes decimals with a comma.
//
//	12'   12' 6 1/2"   12'-6 1/2"   12 ft 6 1/2 in   12-6 1/2   12.5 ft
//	6 1/2 in   6½"   3.8 m   3800 mm   120 pcf   18.9 kN/m3   30 deg   35 %
package entry

import (
	"strings"

	"standingbeam/calc/units"
)

// Options says how to read.
type Options struct {
	Strict bool   // a unit is required, the decimal sign is a point
	Metric bool   // the unit where none is written is the metric one
	Comma  bool   // a comma is always the decimal sign, never between thousands
	Unit   string // the unit where none is written; "" = the usual one of the kind
}

// Error says why a text is not the quantity asked for. ID is a word id without
// its "problem." prefix.
type Error struct {
	ID   string
	Text string // what was written
	Kind units.Kind
}

// Error returns the id and the text; [standingbeam/app/words] holds the
// sentence.
func (e *Error) Error() string { return "entry: " + e.ID + ": " + e.Text }

// maxText is the longest text that is read, in bytes.
const maxText = 100

// Length reads a length. A text without a unit counts in o.Unit, feet or
// metres by default.
func Length(text string, o Options) (units.Length, error) {
	q, err := Quantity(text, units.Level, o)
	return units.Length(q.Base), err
}

// Quantity reads a quantity of a kind. Its value is finite, and zero with an
// error.
func Quantity(text string, kind units.Kind, o Options) (units.Quantity, error) {
	fail := func(id string) (units.Quantity, error) {
		return units.Quantity{Kind: kind}, &Error{ID: id, Text: text, Kind: kind}
	}
	t := tidy(text)
	switch {
	case t == "":
		return fail("empty")
	case len(text) > maxText:
		return fail("too-long")
	}
	if !o.Strict {
		t = spanish.Replace(t)
	}
	negative := false
	if rest, ok := strings.CutPrefix(t, "-"); ok {
		negative, t = true, strings.TrimSpace(rest)
	}
	v, id := read(t, kind, o)
	if id != "" {
		return fail(id)
	}
	if !(v <= largest) {
		return fail("too-large")
	}
	if negative && v > 0 {
		v = -v
	}
	return units.Quantity{Base: v, Kind: kind}, nil
}

// largest is the greatest number of base units that is read.
const largest = 1e9

// read reads a text without its sign, in base units; id says why it cannot.
func read(t string, kind units.Kind, o Options) (v float64, id string) {
	if isLength(kind) {
		if v, id, ok := feetAndInches(t, o); ok {
			return v, id
		}
	}
	number, symbol := split(t)
	v, id = mixed(number, o)
	if id != "" {
		return 0, id
	}
	u, ok := unitOf(kind, symbol)
	switch {
	case symbol == "" && kind == units.None:
		return v, ""
	case symbol == "" && o.Strict:
		return 0, "no-unit"
	case symbol == "":
		if u, ok = unitOf(kind, defaultUnit(kind, o)); !ok {
			return 0, "unknown-unit"
		}
	case !ok:
		return 0, "unknown-unit"
	}
	return u.base(v), ""
}

func isLength(k units.Kind) bool {
	return k == units.Level || k == units.Size || k == units.Deflection
}

func defaultUnit(k units.Kind, o Options) string {
	switch {
	case o.Unit != "":
		return o.Unit
	case o.Metric:
		return k.Metric().Symbol
	}
	return k.US().Symbol
}

// split parts a number from the unit behind it. A point behind the unit, as in
// "in.", is dropped.
func split(t string) (number, symbol string) {
	end := len(t) - len(strings.TrimLeft(t, "0123456789.,/ -"))
	return strings.TrimSpace(t[:end]), strings.TrimSuffix(strings.TrimSpace(t[end:]), ".")
}
