package report

import (
	"strings"

	"standingbeam/calc"
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

func conditionCode(c calc.Condition) string {
	switch c {
	case calc.FreeTop:
		return "free top"
	case calc.TiedToSlab:
		return "tied to slab"
	case calc.SoilBothSides:
		return "soil both sides"
	}
	return "braced top"
}

func (t *teller) stage(r calc.StageResult) {
	s := t.s
	t.line(2, s.Sentence("report.stage", s.Stage(r.Name)))
	for _, b := range r.Pushes {
		face := calc.FaceA
		if b.Side == 'b' {
			face = calc.FaceB
		}
		t.line(4, s.Sentence("report.push", s.Word("report.cause."+causeCode(b.Cause)), s.Face(face), s.Length(b.From), s.Length(b.To),
			s.Demand(units.Of(b.Top, units.Pressure)), s.Demand(units.Of(b.Bottom, units.Pressure)), s.Number(b.Factor, 1), s.Note(b.Basis)))
	}
	for i := len(r.Reactions) - 1; i >= 0; i-- {
		a := r.Reactions[i]
		text := s.Sentence("report.reaction", s.Length(a.At), s.Demand(units.Of(a.Service, units.LineForce)), s.Demand(units.Of(a.Factored, units.LineForce)))
		if a.Restraint == statics.Fixed {
			text += s.Sentence("report.clamp", s.Demand(units.Of(size(a.FactoredMoment), units.LineMoment)))
		}
		t.line(4, text)
	}
	for _, m := range r.Moments {
		t.line(4, s.Sentence("report.moment", s.Demand(units.Of(m.Factored, units.LineMoment)), s.Length(m.At), s.Face(m.TensionFace),
			s.Demand(units.Of(m.Service, units.LineMoment))))
	}
	for _, v := range r.Shears {
		t.line(4, s.Sentence("report.shear", s.Demand(units.Of(v.Factored, units.LineForce)), s.Length(v.At), s.Demand(units.Of(v.Service, units.LineForce))))
	}
	if g := r.Stability; g != nil && g.Overturned {
		t.line(4, s.Sentence("report.overturned", s.Capacity(units.Quantity{Base: g.OverturningFactor}), s.Capacity(units.Quantity{Base: g.SlidingFactor})))
	} else if g != nil {
		t.line(4, s.Sentence("report.stability", s.Capacity(units.Quantity{Base: g.OverturningFactor}), s.Capacity(units.Quantity{Base: g.SlidingFactor}),
			s.Demand(units.Of(g.BearingMax, units.Pressure)), s.Size(g.Contact)))
	}
}

func size(m units.MomentPerLength) units.MomentPerLength {
	if m < 0 {
		return -m
	}
	return m
}

func (t *teller) bars(r calc.Result) {
	t.heading("report.bars")
	for _, b := range r.Bars {
		t.line(4, t.barLine("report.bar", b))
	}
	for _, b := range r.Compare {
		t.line(4, t.barLine("report.bar-compare", b))
	}
	if r.ComparePlain {
		t.line(4, t.s.Word("report.compare-plain"))
	}
}

func (t *teller) barLine(id string, b calc.Bar) string {
	s := t.s
	text := s.Sentence(id, s.Word("role."+string(b.Role)), s.BarSet(b))
	for _, part := range []struct {
		id string
		l  units.Length
	}{{"report.cover", b.Cover}, {"report.lap", b.Lap}, {"report.up", b.Up}, {"report.down", b.Down}, {"report.into", b.Length}, {"report.hook", b.Hook}} {
		if part.l > 0 {
			write := s.AtLeast
			if part.id == "report.cover" {
				write = s.Size
			}
			text += s.Sentence(part.id, write(part.l))
		}
	}
	var levels []string
	for _, l := range b.Levels {
		levels = append(levels, s.Length(l))
	}
	if len(levels) > 0 {
		text += s.Sentence("report.levels", strings.Join(levels, ", "))
	}
	if b.Fixed {
		text += s.Word("report.fixed")
	}
	return text + t.source(b.Rulebook, b.Clause)
}

func (t *teller) table(a calc.TableAnswer) {
	s := t.s
	switch {
	case a.Name == "":
		return
	case a.Inside && a.Plain:
		t.line(2, s.Sentence("report.table-plain", a.Name))
	case a.Inside:
		t.line(2, s.Sentence("report.table-bars", a.Name, s.BarSize(a.Size), s.Spacing(a.Spacing)))
	default:
		t.line(2, s.Sentence("report.table-outside", a.Name))
		t.notes(4, "report.item", a.Reasons)
	}
}

func (t *teller) chart(pairs []calc.LevelPair, low calc.LevelPair) {
	if len(pairs) == 0 {
		return
	}
	t.heading("report.chart")
	for _, l := range pairs {
		id, why := "report.pair", ""
		if l.Governs != "" {
			id, why = "report.pair-ends", t.s.Word("name."+l.Governs)
		}
		t.line(4, t.s.Sentence(id, t.s.Capacity(units.Of(l.Low, units.Level)), t.s.Capacity(units.Of(l.High, units.Level)), why))
	}
	if low.Low > 0 {
		t.line(4, t.s.Sentence("report.low-first", t.s.Capacity(units.Of(low.Low, units.Level))))
	}
}

func (t *teller) spread(all []calc.Spread) {
	if len(all) == 0 {
		return
	}
	s := t.s
	t.heading("report.spread")
	for _, a := range all {
		what := s.Word("headline.plain")
		switch {
		case !a.Possible:
			what = s.Word("report.not-possible")
		case !a.Plain && a.Size > 0:
			what = s.Sentence("bar.at", s.BarSize(a.Size), s.Spacing(a.Spacing))
		case !a.Plain:
			what = s.Word("report.not-possible")
		}
		t.line(4, s.Sentence("report.spread-line", s.Quantity(units.Of(a.Fluid, units.Weight)), s.Demand(units.Of(a.Moment, units.LineMoment)), what))
	}
}
