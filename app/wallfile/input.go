package wallfile

import (
	"errors"
	"strconv"
	"strings"

	"standingbeam/app/entry"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Input reads the wall. On the page, fields that are not asked of a wall of
// this kind are passed over, whatever is typed in them; the strict reader reads
// all. Without problems the input is within every limit of [calc.Design].
func (w Wall) Input(o entry.Options) (calc.Input, []Problem) {
	in, problems := w.read(o)
	bad := map[string]bool{}
	for _, p := range problems {
		bad[p.Field] = true
	}
	for _, path := range w.needed() {
		if w.Field(path) == "" {
			problems = append(problems, Problem{Field: path, ID: "missing"})
			bad[path] = true
		}
	}
	for _, e := range in.Validate() {
		if !bad[e.Field] {
			problems = append(problems, Problem{Field: e.Field, ID: e.ID, Text: w.Field(e.Field), err: e})
		}
	}
	for i := range problems {
		p := &problems[i]
		p.Name = w.Name
		if e := p.err; e != nil && e.ID == "out-of-range" {
			p.Min, p.Max, p.Ranged = e.Min, e.Max, true
		} else if p.ID != "missing" || o.Strict {
			p.Min, p.Max, p.Ranged = w.Range(p.Field)
		}
	}
	return in, problems
}

// read puts every field that can be read into an input.
func (w Wall) read(o entry.Options) (in calc.Input, problems []Problem) {
	for _, f := range fields {
		text := *f.at(&w)
		if f.number == nil && f.pick == nil || text == "" || !o.Strict && !w.Asks(f.path) {
			if f.path == "name" {
				in.Name = text
			}
			continue
		}
		if p, ok := f.read(&in, text, o); !ok {
			problems = append(problems, p)
		}
	}
	if w.soilTwoWays() {
		problems = append(problems, Problem{Field: "soil.by", ID: "soil-two-ways"})
	}
	w.conclude(&in)
	return in, problems
}

// conclude sets what follows from a field's being filled in at all.
func (w Wall) conclude(in *calc.Input) {
	in.Soil.Basis = w.soilBasis()
	in.Water.Standing = w.Water != ""
	in.Footing.Given = w.hasFooting()
	in.Footing.NoToe = w.FootingToe == ""
	in.Footing.Passive = w.FootingPassive != ""
	in.Vertical.Fixed = w.Vertical != Bars{}
	in.Horizontal.Fixed = w.Horizontal != Bars{}
	in.Dowels.Fixed = w.DowelsBy == "none" || w.hasDowels()
	in.Dowels.None = w.DowelsBy == "none"
	in.Today.Given = w.TodayConcrete != "" || w.TodayFloor != "" || w.TodaySlab != ""
	in.TopHeld = in.TopHeld && in.Condition == calc.SoilBothSides
}

// read reads one field's text into the input.
func (f field) read(in *calc.Input, text string, o entry.Options) (Problem, bool) {
	fail := func(id string) (Problem, bool) { return Problem{Field: f.path, ID: id, Text: text}, false }
	switch f.kind {
	case Quantity:
		o.Unit = f.unit(o.Metric)
		q, err := entry.Quantity(text, f.measure, o)
		var e *entry.Error
		if errors.As(err, &e) {
			return fail(e.ID)
		}
		f.number(in, q.Base)
	case Choice, YesNo:
		i := f.word(text, o)
		if i < 0 {
			return fail("choice")
		}
		f.pick(in, i)
	case Bar:
		n, ok := barNumber(text, o)
		if !ok {
			return fail("bar-size")
		}
		f.pick(in, n)
	case BarList:
		for _, one := range strings.Split(text, ",") {
			n, ok := barNumber(one, o)
			if !ok {
				return fail("bar-size")
			}
			f.pick(in, n)
		}
	}
	return Problem{}, true
}

// word finds the place of a fixed word; on the page in any case of letters.
func (f field) word(text string, o entry.Options) int {
	for i, word := range f.words {
		if word == text || !o.Strict && strings.EqualFold(word, strings.TrimSpace(text)) {
			return i
		}
	}
	return -1
}

// barNumber reads "No. 4" or "#4", on the page also "4".
func barNumber(text string, o entry.Options) (int, bool) {
	t := strings.TrimSpace(text)
	rest, named := strings.CutPrefix(t, "#")
	if !named {
		if rest, named = strings.CutPrefix(t, "No."); !named && !o.Strict {
			rest, named = t, true
		}
	}
	n, err := strconv.Atoi(strings.TrimSpace(rest))
	return n, named && err == nil && n > 0 && n < 100
}

// Settled returns the wall with every quantity and bar size that can be read
// with o written so that the strict reader reads the same. What cannot be read
// stays as it is.
func (w Wall) Settled(o entry.Options) Wall {
	strict := entry.Options{Strict: true}
	for _, f := range fields {
		at := f.at(&w)
		var was, is calc.Input
		if *at == "" {
			continue
		}
		if _, ok := f.read(&is, *at, strict); ok {
			continue
		}
		if _, ok := f.read(&was, *at, o); !ok {
			continue
		}
		*at = f.settled(*at, o)
	}
	return w
}

// settled rewrites a text that the lenient reader reads.
func (f field) settled(text string, o entry.Options) string {
	switch f.kind {
	case Quantity:
		o.Unit = f.unit(o.Metric)
		q, _ := entry.Quantity(text, f.measure, o)
		return entry.Spell(units.Quantity{Base: q.Base, Kind: f.measure}, o.Metric)
	case Bar, BarList:
		var out []string
		for _, one := range strings.Split(text, ",") {
			n, _ := barNumber(one, o)
			out = append(out, "No. "+strconv.Itoa(n))
		}
		return strings.Join(out, ", ")
	case Choice, YesNo:
		return f.words[f.word(text, o)]
	}
	return text
}
