package sheet

import (
	"math"
	"sort"
	"strings"
	"unicode"

	"standingbeam/app/draw"
	"standingbeam/app/formula"
	"standingbeam/app/view"
	"standingbeam/app/words"
	"standingbeam/calc"
)

// ordered are the checks as they are read: those that decide first, what fails
// before what is open before what holds, and then by their ratio. Those that
// do not apply are last.
func ordered(all []calc.Check) []calc.Check {
	rank := func(c calc.Check) int {
		n := map[calc.State]int{calc.Fails: 0, calc.Open: 1, calc.Holds: 2}[c.State]
		switch {
		case c.State == calc.NotApplicable:
			return 9
		case !c.Decides:
			return n + 3
		}
		return n
	}
	out := append([]calc.Check(nil), all...)
	sort.SliceStable(out, func(i, j int) bool {
		a, b := out[i], out[j]
		if rank(a) != rank(b) {
			return rank(a) < rank(b)
		}
		x, _ := a.Ratio()
		y, _ := b.Ratio()
		return x > y+1e-9
	})
	return out
}

// summaryPart lists every check in a line.
func (c *calculation) summaryPart() {
	c.part("checks")
	var rows [][]string
	for _, k := range ordered(c.r.Checks) {
		decides := "sheet.check.decides"
		if !k.Decides {
			decides = "sheet.check.compares"
		}
		if k.State == calc.NotApplicable {
			decides = "sheet.check.idle"
		}
		rows = append(rows, []string{c.sp.CheckName(k), c.amount(k), c.ratio(k), c.sp.State(k.State), c.sp.Word(decides), c.source(k.Rulebook, k.Clause)})
	}
	c.table("sheet-table sheet-summary", c.heads("sheet.check.", "name", "amount", "ratio", "state", "role", "source"), rows)
	c.end()
}

// amount is what is asked of what there is, a factor the other way round.
func (s *scene) amount(k calc.Check) string {
	if text := view.Amount(s.sp, k); text != "" {
		return text
	}
	return "–"
}

// ratio is rounded up, so that what reads 1.00 holds.
func (s *scene) ratio(k calc.Check) string {
	r, ok := k.Ratio()
	switch {
	case !ok:
		return "–"
	case r > 99:
		return s.sp.Word("check.far-over")
	}
	return s.sp.Number(math.Ceil(r*100-1e-7)/100, 2)
}

// workingPart opens every check that applies.
func (c *calculation) workingPart() {
	c.part("workings")
	c.el("p", "", c.sp.Word("sheet.workings.about"))
	for _, k := range ordered(c.r.Checks) {
		c.open("div", "sheet-check")
		c.el("h3", "", c.sp.Sentence("sheet.check.heading", c.sp.CheckName(k), c.sp.State(k.State), c.ratio(k)))
		if k.State == calc.NotApplicable {
			if k.Because != nil {
				c.el("p", "", c.sp.Note(*k.Because))
			}
			c.close("div")
			continue
		}
		c.el("p", "sheet-ask", c.sp.CheckQuestion(k))
		lines := formula.Write(k.Steps, c.sp.Number)
		c.sketches(k, lines)
		c.steps(lines)
		c.el("p", "sheet-end", c.conclusion(k))
		c.close("div")
	}
	c.end()
}

// sketches puts in the small pictures of a check that decides. Of what pushes
// the wall there is one at each level of load, and bars in a row say little on
// paper.
func (c *calculation) sketches(k calc.Check, lines []formula.Line) {
	if !k.Decides {
		return
	}
	begun := false
	for _, d := range draw.Working(k, lines, c.sp) {
		seen := &c.pushes[0]
		if k.Service {
			seen = &c.pushes[1]
		}
		if d.Kind == "spacing" || d.Kind == "push" && *seen {
			continue
		}
		*seen = *seen || d.Kind == "push"
		if !begun {
			c.open("div", "sheet-sketches")
			begun = true
		}
		c.WriteString(d.SVG)
	}
	if begun {
		c.close("div")
	}
}

// steps writes a working: the formula as the book has it, the same with its
// numbers, the result, the clause. It is set in lines of text, whose letters
// are all large enough to come through a photocopier.
func (c *calculation) steps(lines []formula.Line) {
	if len(lines) == 0 {
		return
	}
	c.open("table", "sheet-steps")
	c.open("tbody", "")
	for _, l := range lines {
		c.open("tr", "")
		c.open("td", "")
		c.formula(l.Step.Symbol)
		c.close("td")
		c.open("td", "")
		for _, f := range []formula.Formula{l.Formula, l.Numbers} {
			if !f.Empty() {
				c.open("p", "")
				c.formula("= " + f.Text())
				c.close("p")
			}
		}
		if with := given(l.Terms); len(with) > 0 {
			c.el("p", "sheet-with", c.sp.Below(c.sp.Sentence("sheet.with", strings.Join(with, "; "))))
		}
		c.close("td")
		c.open("td", "")
		c.el("p", "", "= "+c.result(l.Result))
		c.close("td")
		c.el("td", "", "\u2002"+c.sp.Source(l.Step.Clause))
		c.close("tr")
	}
	c.close("tbody", "table")
}

// given are the symbols whose numbers no earlier line has found.
func given(terms []formula.Given) (out []string) {
	for _, t := range terms {
		if t.From < 0 {
			out = append(out, formula.SymbolText(t.Symbol)+" = "+amount(t))
		}
	}
	return out
}

func amount(g formula.Given) string {
	if g.Unit.Symbol == "" {
		return g.Text
	}
	return g.Text + " " + g.Unit.Sign()
}

// result is the number in the unit of its formula, and in the reader's where
// that is another.
func (c *calculation) result(g formula.Given) string {
	text := amount(g)
	if c.sp.System == words.Metric && g.Unit.Symbol != "" && g.Of.Kind.Metric() != g.Of.Kind.US() {
		text += " = " + c.sp.Quantity(g.Of)
	}
	return text
}

// formula writes powers raised.
func (c *calculation) formula(f string) {
	f = c.sp.Below(f)
	for {
		before, after, power := strings.Cut(f, "^")
		c.symbols(before)
		if !power {
			return
		}
		n := strings.IndexFunc(after, func(r rune) bool { return (r < '0' || r > '9') && r != '.' })
		if strings.HasPrefix(after, "(") {
			n = strings.IndexByte(after, ')') + 1
		}
		if n < 0 {
			n = len(after)
		}
		c.el("sup", "", after[:n])
		f = after[n:]
	}
}

// symbols writes a piece of a formula, what stands below a letter lowered.
func (c *calculation) symbols(f string) {
	for f != "" {
		start := strings.IndexFunc(f, unicode.IsLetter)
		if start < 0 {
			break
		}
		c.text(f[:start])
		f = f[start:]
		end := strings.IndexFunc(f, func(r rune) bool {
			return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '\'' && r != ','
		})
		if end < 0 {
			end = len(f)
		}
		name := f[:end]
		f = f[end:]
		letter, below := formula.Letters(name)
		if strings.HasPrefix(f, "(") { // min, max, sin
			letter, below = name, ""
		}
		if capital, ok := strings.CutPrefix(letter, "φ"); ok && capital != "" {
			letter = "φ\u2009" + capital
		}
		c.text(letter)
		c.el("sub", "", below)
	}
	c.text(f)
}

// conclusion says how the check ends and by which rule.
func (c *calculation) conclusion(k calc.Check) string {
	text := c.amount(k)
	switch {
	case k.State == calc.Fails:
		text = joined("; ", text, c.sp.Shortfall(k))
	case k.Needs != nil:
		text = joined("; ", text, c.sp.Note(*k.Needs))
	case k.Because != nil:
		text = joined("; ", text, c.sp.Note(*k.Because))
	}
	level := "sheet.check.factored"
	if k.Service {
		level = "sheet.check.service"
	}
	return joined(" · ", text, c.sp.State(k.State), c.sp.Word(level), c.source(k.Rulebook, k.Clause))
}
