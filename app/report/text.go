package report

import (
	"bufio"
	"io"
	"iter"
	"sort"
	"strings"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Text writes the answers to be read: the headline, what pushes and holds in
// each stage, the checks with what fails first, the bars, the table, and what
// was assumed.
func Text(w io.Writer, results iter.Seq[calc.Result], s words.Speaker) error {
	b := bufio.NewWriter(w)
	for r := range results {
		t := teller{w: b, s: s.For(r.Input.Condition)}
		t.wall(r)
		b.WriteString("\n")
	}
	(&teller{w: b, s: s}).line(0, s.Word("report.caution"))
	return b.Flush()
}

// teller writes one wall as lines.
type teller struct {
	w *bufio.Writer
	s words.Speaker
}

// line writes a line, indented, and folded at the width of a page.
func (t *teller) line(indent int, text string) {
	const width = 96
	pad, text := strings.Repeat(" ", indent), strings.TrimSpace(text)
	for first := true; text != ""; first = false {
		if !first && indent < 6 {
			pad = strings.Repeat(" ", 6)
		}
		cut := len(text)
		if runes := []rune(text); len(runes) > width-len(pad) {
			cut = len(string(runes[:width-len(pad)]))
			if blank := strings.LastIndexByte(text[:cut], ' '); blank > 0 {
				cut = blank
			}
		}
		t.w.WriteString(pad + text[:cut] + "\n")
		text = strings.TrimLeft(text[cut:], " ")
	}
}

func (t *teller) heading(id string) { t.line(2, t.s.Word(id)) }

func (t *teller) wall(r calc.Result) {
	s := t.s
	name := r.Input.Name
	if name == "" {
		name = s.Word("report.unnamed")
	}
	t.line(0, s.Sentence("report.wall", strings.Map(printable, name), s.Word("report.condition."+conditionCode(r.Input.Condition))))
	finished, today := s.Headline(r)
	t.line(2, s.Sentence("report.finished", finished.Mark, finished.Title, finished.Detail))
	t.line(2, s.Sentence("report.today", today.Title, today.Detail))
	t.notes(2, "report.caution-line", r.Cautions)
	t.line(2, s.Sentence("report.governs", s.Word("report.rulebook."+rulebook(r.Governs)), r.Editions[r.Governs]))
	for _, st := range r.Stages {
		t.stage(st)
	}
	t.checks(r.Checks)
	t.bars(r)
	t.table(r.Table)
	t.chart(r.Chart, r.LowFirst)
	t.spread(r.Spread)
	t.section("report.engineer", r.Engineer)
	t.section("report.warnings", r.Warnings)
	t.section("report.assumptions", r.Assumptions)
}

func (t *teller) section(heading string, notes []calc.Note) {
	if len(notes) > 0 {
		t.heading(heading)
		t.notes(4, "report.item", notes)
	}
}

func (t *teller) notes(indent int, id string, notes []calc.Note) {
	for _, n := range notes {
		t.line(indent, t.s.Sentence(id, t.s.Note(n)))
	}
}

// printable keeps a name on its line.
func printable(r rune) rune {
	if r < ' ' || r == 0x7f {
		return ' '
	}
	return r
}

// reading is the order in which checks are read: deciding ones that fail,
// those that are open, those that hold, those shown to compare, and those that
// do not apply.
func reading(c calc.Check) int {
	switch {
	case c.State == calc.NotApplicable:
		return 4
	case !c.Decides:
		return 3
	case c.State == calc.Fails:
		return 0
	case c.State == calc.Open:
		return 1
	}
	return 2
}

func (t *teller) checks(all []calc.Check) {
	if len(all) == 0 {
		return
	}
	sorted := append([]calc.Check(nil), all...)
	sort.SliceStable(sorted, func(i, j int) bool { return reading(sorted[i]) < reading(sorted[j]) })
	t.heading("report.checks")
	for _, c := range sorted {
		t.check(c)
	}
}

func (t *teller) check(c calc.Check) {
	s := t.s
	mark := s.State(c.State)
	if reading(c) == 3 {
		mark = s.Sentence("report.compared", mark)
	}
	text := s.Sentence("report.check", mark, s.CheckName(c))
	switch {
	case c.State == calc.NotApplicable, c.NoValue && c.Demand.Base <= 0:
	case c.NoValue:
		text += s.Sentence("report.asked", s.Demand(c.Demand))
	case c.Demand.Kind == units.None:
		text += s.Sentence("report.factor", s.Demand(c.Demand), s.Capacity(c.Capacity))
	default:
		demand, capacity := s.Amounts(c)
		text += s.Sentence("report.amount", demand, capacity)
	}
	if why := t.why(c); why != "" {
		text += s.Sentence("report.why", why)
	}
	t.line(4, text+t.source(c.Rulebook, c.Clause))
}

// source names edition and clause, the edition once.
func (t *teller) source(rulebook, clause string) string {
	if !strings.HasPrefix(clause, rulebook) {
		clause = rulebook + " " + clause
	}
	if clause = strings.TrimSpace(clause); clause == "" {
		return ""
	}
	return t.s.Sentence("report.clause", t.s.Source(clause))
}

// why says why a check fails, is open or does not apply, where the numbers
// beside it do not.
func (t *teller) why(c calc.Check) string {
	switch {
	case c.State == calc.Fails && c.Demand.Kind == units.None && c.Because != nil:
		return t.s.Note(*c.Because)
	case c.State == calc.Fails && c.Demand.Kind == units.None:
		return ""
	case c.State == calc.Fails:
		return words.Capital(t.s.Shortfall(c))
	case c.Needs != nil:
		return t.s.Note(*c.Needs)
	case c.Because != nil:
		return t.s.Note(*c.Because)
	}
	return ""
}
