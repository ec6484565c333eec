package view

import (
	"strings"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// bars lists the bars that are to be placed.
func bars(s words.Speaker, r calc.Result) []Bar {
	out := make([]Bar, 0, len(r.Bars))
	for _, b := range r.Bars {
		out = append(out, bar(s, b))
	}
	return out
}

func bar(s words.Speaker, b calc.Bar) Bar {
	one := Bar{Mark: string(b.Role), What: s.Bars(b), Source: source(s, b.Rulebook, b.Clause)}
	one.Where = s.Word("page.role." + string(b.Role))
	if b.Face != calc.FaceUnset {
		one.Where = s.Sentence("page.bar.where", one.Where, s.FaceFirst(b.Face))
	}
	var details []string
	add := func(id string, l units.Length) {
		if l > 0 {
			details = append(details, s.Sentence("page.bar."+id, s.AtLeast(l)))
		}
	}
	if len(b.Levels) > 0 {
		levels := make([]string, 0, len(b.Levels))
		for _, l := range b.Levels {
			levels = append(levels, s.Length(l))
		}
		details = append(details, s.Sentence("page.bar.levels", strings.Join(levels, ", ")))
	}
	if b.Cover > 0 {
		details = append(details, s.Sentence("page.bar.cover", s.Size(b.Cover)))
	}
	add("lap", b.Lap)
	add("up", b.Up)
	add("down", b.Down)
	add("length", b.Length)
	add("hook", b.Hook)
	if b.Fixed {
		details = append(details, s.Word("page.bar.fixed"))
	}
	if one.Source != "" {
		details = append(details, one.Source)
	}
	one.Details = strings.Join(details, s.Word("page.bar.and"))
	return one
}

// rulebooks sets the book that decides beside the other.
func rulebooks(s words.Speaker, r calc.Result) Rulebooks {
	other := calc.Engineered
	if r.Governs == calc.Engineered {
		other = calc.Residential
	}
	out := Rulebooks{
		Decides: Book{Role: s.Word("page.book.decides"), Says: s.BarsAnswer(r), Edition: r.Editions[r.Governs], Name: bookName(r.Governs)},
		Other:   Book{Role: s.Word("page.book.compares"), Says: compared(s, r, other), Edition: r.Editions[other], Name: bookName(other)},
		Why:     why(s, r),
		Reasons: s.Notes(r.Table.Reasons),
	}
	return out
}

// why says why the two differ: by the pressure that each assumes. For a wall
// that the house does not hold there is no table to differ from.
func why(s words.Speaker, r calc.Result) string {
	if r.Input.Condition != calc.BracedTop {
		return ""
	}
	if fluid, basis, ok := soilPush(r); ok && r.Table.Inside && r.Table.Column > 0 {
		return s.Sentence("page.book.why", s.Quantity(units.Of(r.Table.Column, units.Weight)), s.Quantity(units.Of(fluid, units.Weight)), s.Note(basis))
	}
	return s.Word("page.book.why-outside")
}

// soilPush is the fluid that pushes like the drained soil of side A when the
// wall is finished, and by what it was found.
func soilPush(r calc.Result) (units.UnitWeight, calc.Note, bool) {
	for _, st := range r.Stages {
		for _, p := range st.Pushes {
			if p.Cause == soil.Earth && p.Side == 'a' && p.From > p.To {
				return units.UnitWeight(float64(p.Bottom-p.Top) / float64(p.From-p.To)), p.Basis, true
			}
		}
	}
	return 0, calc.Note{}, false
}

// spread is what each class that an unknown soil may be asks for.
func spread(s words.Speaker, r calc.Result) []Spread {
	out := make([]Spread, 0, len(r.Spread))
	for _, one := range r.Spread {
		row := Spread{Soil: s.Quantity(units.Of(one.Fluid, units.Weight)), Engineered: s.Word("page.spread.fails"), Table: s.Word("page.spread.outside")}
		switch {
		case !one.Possible:
		case one.Plain:
			row.Engineered = s.Word("page.spread.plain")
		case one.Size > 0:
			row.Engineered = s.Bars(calc.Bar{Size: one.Size, Spacing: one.Spacing})
		}
		switch {
		case !one.Table.Inside:
		case one.Table.Plain:
			row.Table = s.Word("page.spread.plain")
		case one.Table.Size > 0:
			row.Table = s.Bars(calc.Bar{Size: one.Table.Size, Spacing: one.Table.Spacing})
		}
		out = append(out, row)
	}
	return out
}

func bookName(b calc.Rulebook) string {
	if b == calc.Residential {
		return "residential"
	}
	return "engineered"
}

// compared is what the rulebook that does not decide says.
func compared(s words.Speaker, r calc.Result, other calc.Rulebook) string {
	switch {
	case other == calc.Residential && !r.Table.Inside:
		return s.Word("page.book.silent")
	case r.ComparePlain:
		return s.Word("headline.plain")
	case len(r.Compare) == 0:
		return s.Word("page.book.nothing")
	}
	sets := make([]string, 0, len(r.Compare))
	for _, b := range r.Compare {
		sets = append(sets, s.BarSet(b))
	}
	return strings.Join(sets, s.Word("headline.and"))
}

// chart is how far each side may be filled, for soil on both sides.
func chart(s words.Speaker, r calc.Result) *Chart {
	if len(r.Chart) == 0 {
		return nil
	}
	c := &Chart{Low: s.Word("page.chart.low"), High: s.Word("page.chart.high"), Governs: s.Word("page.chart.governs"), Note: s.Word("page.chart.note")}
	h := float64(r.Input.Height)
	for _, p := range r.Chart {
		row := ChartRow{Low: s.Length(p.Low), High: s.Length(p.High), LowShare: float64(p.Low) / h, HighShare: float64(p.High) / h}
		if p.Governs != "" {
			row.Why = s.CheckName(calc.Check{ID: p.Governs})
		}
		c.Rows = append(c.Rows, row)
	}
	return c
}
