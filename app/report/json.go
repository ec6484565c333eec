// Package report prints answers: as the fixed JSON of the wall file's format,
// and as text to be read.
package report

import (
	"bufio"
	"bytes"
	"encoding/json"
	"io"
	"iter"
	"math"
	"slices"
	"strconv"

	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// JSON writes the answers, one after the other as they come. Numbers are not
// rounded, but for the noise behind their twelfth digit; each has its unit
// beside it, by the speaker's system. The steps of a working stay in inches
// and pounds, in which their formulas are printed. A number that is none is
// written as null.
func JSON(w io.Writer, results iter.Seq[calc.Result], s words.Speaker) error {
	b := bufio.NewWriter(w)
	b.WriteString(`{"format":` + strconv.Itoa(wallfile.Format) + `,"walls":[`)
	begun := false
	for r := range results {
		if begun {
			b.WriteByte(',')
		}
		begun = true
		p := printer{w: b, s: s.For(r.Input.Condition)}
		p.wall(r)
		if p.err != nil {
			return p.err
		}
	}
	b.WriteString("\n]}\n")
	return b.Flush()
}

// printer writes one wall: each of its keys on a line of its own, each member
// of a list on another.
type printer struct {
	w     *bufio.Writer
	s     words.Speaker
	begun bool
	err   error
}

func (p *printer) wall(r calc.Result) {
	p.w.WriteString("\n{")
	finished, today := p.s.Headline(r)
	p.key("name", r.Input.Name)
	if r.Stopped {
		p.key("stopped", true)
	}
	p.key("governs", rulebook(r.Governs))
	p.key("editions", map[string]string{"engineered": r.Editions[calc.Engineered], "residential": r.Editions[calc.Residential]})
	p.key("verdict", words.StateCode(r.Verdict))
	p.key("headline", finished.Title)
	p.key("today", p.today(r, today))
	list(p, "stages", r.Stages, p.stage)
	list(p, "checks", r.Checks, p.check)
	p.key("plain", r.Plain)
	list(p, "bars", r.Bars, p.bar)
	list(p, "compare", r.Compare, p.bar)
	p.key("band", p.band(r.Band))
	p.key("table", p.table(r.Table))
	if len(r.Chart) > 0 {
		list(p, "chart", r.Chart, p.pair)
		p.key("low side alone", p.level(r.LowFirst.Low))
	}
	if len(r.Spread) > 0 {
		list(p, "spread", r.Spread, p.spread)
	}
	list(p, "assumptions", r.Assumptions, p.note)
	list(p, "warnings", r.Warnings, p.note)
	list(p, "cautions", r.Cautions, p.note)
	list(p, "ask an engineer", slices.Concat(r.Engineer, r.Table.Reasons), p.note)
	p.w.WriteByte('}')
}

// key writes one key and its value on a line.
func (p *printer) key(name string, v any) {
	p.open(name)
	p.value(v)
}

// list writes a list with each member on a line.
func list[T, V any](p *printer, name string, items []T, write func(T) V) {
	p.open(name)
	p.w.WriteByte('[')
	for i, item := range items {
		if i > 0 {
			p.w.WriteByte(',')
		}
		p.w.WriteString("\n  ")
		p.value(write(item))
	}
	p.w.WriteByte(']')
}

func (p *printer) open(name string) {
	if p.begun {
		p.w.WriteString(",\n ")
	}
	p.begun = true
	p.value(name)
	p.w.WriteByte(':')
}

func (p *printer) value(v any) {
	text, err := compact(v)
	if err != nil && p.err == nil {
		p.err = err
	}
	p.w.Write(text)
}

// compact encodes without the escapes that only a web page needs.
func compact(v any) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	err := e.Encode(v)
	return bytes.TrimSuffix(b.Bytes(), []byte("\n")), err
}

// number is a float that is never written as NaN or Inf.
type number float64

// MarshalJSON writes twelve digits, and null for what is no number.
func (n number) MarshalJSON() ([]byte, error) {
	v := float64(n)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return []byte("null"), nil
	}
	if math.Abs(v) < 1e-12 {
		v = 0
	}
	return strconv.AppendFloat(nil, v, 'g', 12, 64), nil
}

// measure is a number with its unit.
type measure struct {
	Value number `json:"value"`
	Unit  string `json:"unit"`
}

func (p *printer) unit(k units.Kind) units.Unit {
	if p.s.System == words.Metric {
		return k.Metric()
	}
	return k.US()
}

func (p *printer) in(q units.Quantity) number { return number(q.In(p.unit(q.Kind))) }

func (p *printer) measure(q units.Quantity) measure {
	return measure{p.in(q), p.unit(q.Kind).Symbol}
}

func (p *printer) level(l units.Length) measure { return p.measure(units.Of(l, units.Level)) }

func (p *printer) size(l units.Length) measure { return p.measure(units.Of(l, units.Size)) }

// some is the size, or nothing for zero.
func (p *printer) some(l units.Length) *measure {
	if l <= 0 {
		return nil
	}
	m := p.size(l)
	return &m
}

func rulebook(r calc.Rulebook) string {
	if r == calc.Residential {
		return "residential"
	}
	return "engineered"
}
