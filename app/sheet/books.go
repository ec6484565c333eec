package sheet

import (
	"strings"

	"standingbeam/app/view"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// bookPart sets the two rulebooks side by side, with the table's own answer.
func (c *calculation) bookPart() {
	c.part("books")
	both := view.Books(c.sp, *c.r)
	c.table("sheet-table", []string{both.Decides.Role, both.Other.Role}, [][]string{
		{joined(": ", both.Decides.Edition, both.Decides.Says), joined(": ", both.Other.Edition, both.Other.Says)}})
	c.el("p", "", both.Why)
	c.table("sheet-table", []string{c.r.Table.Name, ""}, c.tableRows())
	c.spread()
	c.end()
}

// tableRows is the answer of the residential table.
func (c *calculation) tableRows() (rows [][]string) {
	t := &c.r.Table
	add := func(id, value string) {
		if value != "" {
			rows = append(rows, []string{c.sp.Word("sheet.table." + id), value})
		}
	}
	inside := "sheet.table.is-outside"
	if t.Inside {
		inside = "sheet.table.is-inside"
	}
	add("place", c.sp.Word(inside))
	if !t.Inside {
		return rows
	}
	add("row", c.sp.Length(t.Row))
	add("fill", c.sp.Length(t.FillRow))
	add("column", c.sp.Quantity(units.Of(t.Column, units.Weight)))
	switch {
	case t.Plain:
		add("cell", c.sp.Word("headline.plain"))
	case t.Size > 0:
		add("cell", c.sp.Bars(calc.Bar{Size: t.Size, Spacing: t.Spacing}))
	}
	others := make([]string, 0, len(t.Others))
	for _, o := range t.Others {
		others = append(others, c.sp.Sentence("sheet.table.other", c.sp.Bars(calc.Bar{Size: o.Size, Spacing: o.Spacing}), c.sp.Quantity(units.Of(o.Fy, units.Strength))))
	}
	add("others", strings.Join(others, "; "))
	add("note", joined(", ", t.Footnote, t.ByNote))
	return rows
}

// spread is the answer for each soil that it may be, where it is not known.
func (c *calculation) spread() {
	var rows [][]string
	for i, one := range view.Soils(c.sp, *c.r) {
		rows = append(rows, []string{one.Soil, c.sp.Demand(units.Of(c.r.Spread[i].Moment, units.LineMoment)), one.Engineered, one.Table})
	}
	c.table("sheet-table", c.heads("sheet.spread.", "fluid", "moment", "engineered", "table"), rows)
}

// engineerPart writes the reasons to leave the tables, and all else that an
// engineer must answer, as questions.
func (c *calculation) engineerPart() {
	questions := c.questions()
	if len(questions) == 0 {
		return
	}
	c.part("engineer")
	c.open("ol", "sheet-questions")
	for _, q := range questions {
		c.open("li", "")
		c.el("p", "", q)
		c.open("p", "sheet-reply")
		c.close("p", "li")
	}
	c.close("ol")
	c.end()
}

// questions puts each reason as a question, each once.
func (s *scene) questions() (out []string) {
	seen := map[string]bool{}
	add := func(q string) {
		if !seen[q] {
			seen[q] = true
			out = append(out, q)
		}
	}
	for _, list := range [][]calc.Note{s.r.Table.Reasons, s.r.Engineer} {
		for _, n := range list {
			q := calc.Note{ID: "question." + n.ID, Args: n.Args, Text: n.Text}
			if s.sp.Has("note." + q.ID) {
				add(s.sp.Note(q))
			} else {
				add(s.sp.Sentence("sheet.question", s.sp.Note(n)))
			}
		}
	}
	for _, k := range s.r.Checks {
		if k.State == calc.Open && k.Needs != nil {
			add(s.sp.Sentence("sheet.question.open", s.sp.CheckName(k), s.sp.Note(*k.Needs)))
		}
	}
	return out
}
