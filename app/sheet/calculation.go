package sheet

import (
	"strings"

	"standingbeam/calc"
)

// Calculation returns the calculation sheet as HTML: everything by which an
// engineer or an inspector can follow each number by hand.
func Calculation(r calc.Result, o Options) string {
	s := newScene(&r, o.Speaker)
	c := &calculation{scene: s, o: o}
	c.open("section", "sheet sheet-calc sheet-"+paperClass(o))
	// The head of a table is repeated on every page that the table reaches.
	c.open("table", "sheet-run")
	c.open("thead", "")
	c.open("tr", "")
	c.open("td", "")
	c.runningHead()
	c.close("td", "tr", "thead")
	c.open("tbody", "")
	c.open("tr", "")
	c.open("td", "")
	for _, part := range []func(){c.answerPart, c.drawingPart, c.inputPart, c.loadPart, c.stagePart,
		c.summaryPart, c.workingPart, c.bookPart, c.engineerPart, c.barPart, c.chartPart, c.cautionPart, c.signPart} {
		part()
	}
	c.close("td", "tr", "tbody", "table", "section")
	return c.String()
}

// calculation is one calculation sheet while it is being written.
type calculation struct {
	markup
	*scene
	o      Options
	parts  int
	pushes [2]bool // drawn what pushes, factored and at service level
}

func (c *calculation) runningHead() {
	c.open("div", "sheet-head")
	c.el("h1", "", c.title(c.o))
	c.el("p", "", joined(" · ", c.sp.Word("sheet.calculation"), tidy(c.o.Date)))
	c.close("div")
}

// part begins a part of the sheet with its heading.
func (c *calculation) part(id string) {
	c.parts++
	c.open("section", "sheet-part")
	c.el("h2", "", c.sp.Sentence("sheet.numbered", c.sp.Number(float64(c.parts), 0), c.sp.Word("sheet.part."+id)))
}

func (c *calculation) end() { c.close("section") }

func (c *calculation) answerPart() {
	c.part("answer")
	f, t := c.headline()
	c.open("div", "sheet-answer")
	for i, l := range []said{f, t} {
		when := "page.finished"
		if i == 1 {
			when = "page.today"
		}
		c.open("div", l.class)
		c.el("p", "sheet-when", c.sp.Sentence("sheet.when", c.sp.Word(when), l.mark))
		c.el("p", "sheet-title", l.title)
		c.el("p", "", l.detail)
		c.close("div")
	}
	c.close("div")
	c.list("sheet-cautions", c.cautions())
	decides, other := c.editions()
	lines := []string{c.sp.Sentence("sheet.books", decides, other), c.materials()}
	if g := c.governs(); g != "" {
		lines = append(lines, g)
	}
	c.list("sheet-plain", lines)
	if by := tidy(c.o.Person); by != "" {
		c.el("p", "", c.sp.Sentence("sheet.by", by))
	}
	c.end()
}

func (c *calculation) drawingPart() {
	width, height := c.o.size()
	c.part("drawing")
	c.open("div", "sheet-drawing")
	c.WriteString(c.layOut(width, height*0.56).svg(c.title(c.o)))
	c.close("div")
	c.end()
}

func (c *calculation) barPart() {
	c.part("bars")
	head := make([]string, 0, 8)
	for _, id := range []string{"mark", "bars", "where", "cover", "one", "bend", "lap", "source"} {
		head = append(head, c.sp.Word("sheet.bars."+id))
	}
	var rows [][]string
	for _, r := range c.schedule() {
		if r.cover == "" {
			r.cover = "–"
		}
		rows = append(rows, []string{r.mark, r.bars, r.where, r.cover, r.one, r.bend, r.lap, r.source})
	}
	c.table("sheet-bars", head, rows)
	if len(rows) == 0 {
		c.el("p", "", c.sp.Word("page.bars.none"))
	}
	c.end()
}

// chartPart is how far each side may be filled, for soil on both sides.
func (c *calculation) chartPart() {
	if len(c.r.Chart) == 0 {
		return
	}
	c.part("chart")
	var rows [][]string
	for _, p := range c.r.Chart {
		why := ""
		if p.Governs != "" {
			why = c.sp.CheckName(calc.Check{ID: p.Governs})
		}
		rows = append(rows, []string{c.sp.Length(p.Low), c.sp.Length(p.High), why})
	}
	c.table("sheet-table", []string{c.sp.Word("page.chart.low"), c.sp.Word("page.chart.high"), c.sp.Word("page.chart.governs")}, rows)
	c.el("p", "", c.sp.Word("page.chart.note"))
	c.end()
}

func (c *calculation) cautionPart() {
	c.part("cautions")
	c.list("sheet-dashes", append(c.cautions(), c.safety()...))
	c.el("h3", "", c.sp.Word("sheet.before"))
	c.list("sheet-dashes", c.before())
	c.end()
}

// signPart leaves room for the one who is responsible.
func (c *calculation) signPart() {
	c.part("responsible")
	c.el("p", "", c.sp.Word("sheet.sign.about"))
	c.open("table", "sheet-sign")
	c.open("tbody", "")
	for _, pair := range [][2]string{{"name", "license"}, {"date", "signature"}} {
		c.open("tr", "")
		for _, id := range pair {
			c.el("td", "", c.sp.Word("sheet.sign."+id))
		}
		c.close("tr")
	}
	c.close("tbody", "table")
	c.end()
}

// source names the edition and the clause of a rule.
func (s *scene) source(rulebook, clause string) string {
	return s.sp.Source(joined(", ", rulebook, strings.TrimPrefix(strings.TrimPrefix(clause, rulebook), " ")))
}
