package report

import (
	"bytes"
	"math"
	"strconv"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

type check struct {
	ID       string       `json:"id"`
	Stage    calc.Stage   `json:"stage"`
	Bars     calc.BarRole `json:"bars,omitempty"`
	At       *measure     `json:"at,omitempty"`
	Level    string       `json:"level,omitempty"`
	Demand   *number      `json:"demand"`
	Capacity *number      `json:"capacity"`
	Unit     string       `json:"unit"`
	Ratio    *number      `json:"ratio"`
	State    string       `json:"state"`
	Decides  bool         `json:"decides"`
	Because  string       `json:"because,omitempty"`
	Needs    string       `json:"needs,omitempty"`
	Rulebook string       `json:"rulebook,omitempty"`
	Clause   string       `json:"clause,omitempty"`
	Steps    []step       `json:"steps"`
}

type step struct {
	Symbol  string `json:"symbol"`
	Formula string `json:"formula"`
	With    terms  `json:"with"`
	Value   number `json:"value"`
	Unit    string `json:"unit"`
	Clause  string `json:"clause,omitempty"`
}

func (p *printer) check(c calc.Check) check {
	out := check{ID: c.ID, Stage: c.Stage, Bars: c.Bar, Unit: p.unit(c.Demand.Kind).Symbol, State: words.StateCode(c.State),
		Decides: c.Decides, Rulebook: c.Rulebook, Clause: c.Clause, Steps: make([]step, 0, len(c.Steps))}
	if c.HasAt {
		at := p.level(c.At)
		out.At = &at
	}
	if c.Service {
		out.Level = "service"
	}
	if c.State != calc.NotApplicable {
		demand := p.in(c.Demand)
		out.Demand = &demand
	}
	if !c.NoValue {
		capacity := p.in(units.Quantity{Base: c.Capacity.Base, Kind: c.Demand.Kind})
		out.Capacity = &capacity
	}
	if ratio, ok := c.Ratio(); ok {
		r := number(ratio)
		out.Ratio = &r
	}
	if c.Because != nil {
		out.Because = p.s.Note(*c.Because)
	}
	if c.Needs != nil {
		out.Needs = p.s.Note(*c.Needs)
	}
	for _, s := range c.Steps {
		out.Steps = append(out.Steps, step{s.Symbol, s.Formula, s.With, number(s.Value.US()), s.Value.Kind.US().Symbol, s.Clause})
	}
	return out
}

// terms are the symbols of a formula, in their order.
type terms []working.Term

// MarshalJSON writes an object of symbol and value with unit, each symbol
// once.
func (t terms) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	b.WriteByte('{')
	seen := map[string]bool{}
	for _, term := range t {
		if seen[term.Symbol] {
			continue
		}
		if len(seen) > 0 {
			b.WriteByte(',')
		}
		seen[term.Symbol] = true
		for i, text := range []string{term.Symbol, written(term.Value)} {
			if i > 0 {
				b.WriteByte(':')
			}
			quoted, err := compact(text)
			if err != nil {
				return nil, err
			}
			b.Write(quoted)
		}
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// written writes a quantity in its inch-pound unit, to twelve digits.
func written(q units.Quantity) string {
	v := q.US()
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return "–"
	}
	text := strconv.FormatFloat(v, 'g', 12, 64)
	if math.Abs(v) >= 1e-4 && math.Abs(v) < 1e15 {
		rounded, _ := strconv.ParseFloat(text, 64)
		text = strconv.FormatFloat(rounded, 'f', -1, 64)
	}
	if u := q.Kind.US().Symbol; u != "" {
		return text + " " + u
	}
	return text
}
