package sheet

import (
	"math"
	"strings"

	"standingbeam/calc"
)

// Crew returns the crew drawing as HTML: one page with the drawing, the bar
// table, how the wall is held, what must be in place before the fill, and the
// cautions.
func Crew(r calc.Result, o Options) string {
	c := newCrew(&r, o)
	c.open("section", "sheet sheet-crew sheet-"+paperClass(o))
	c.head()
	c.answer()
	c.list("sheet-cautions", c.cautions)
	c.open("div", "sheet-drawing")
	c.WriteString(c.drawing().svg(c.title(o)))
	c.close("div")
	c.bars()
	c.notes()
	c.block()
	c.close("section")
	return c.String()
}

// newCrew gathers everything that a crew drawing says.
func newCrew(r *calc.Result, o Options) *crew {
	s := newScene(r, o.Speaker)
	c := &crew{scene: s, o: o, rows: s.schedule(), ticks: s.before(), held: s.held(), today: s.heldToday(), cautions: s.cautions()}
	c.finished, c.now = s.headline()
	c.governs = s.governs()
	return c
}

// drawing fills what the rest of the page leaves.
func (c *crew) drawing() *drawing {
	width, height := c.o.size()
	return c.layOut(width, math.Max(height-c.rest(width)/72, leastDrawing))
}

// leastDrawing is the least height of the drawing, in inches.
const leastDrawing = 3.0

func paperClass(o Options) string {
	if o.Paper == A4 {
		return A4
	}
	return Letter
}

// crew is one crew drawing while it is being written.
type crew struct {
	markup
	*scene
	o                            Options
	rows                         []row
	ticks, held, today, cautions []string
	governs                      string
	finished, now                said
}

// said is a line of the headline.
type said struct{ mark, title, detail, class string }

// headline is the two lines of the answer, with a class for its frame.
func (s *scene) headline() (finished, today said) {
	f, t := s.sp.Headline(*s.r)
	class := func(st calc.State) string {
		switch st {
		case calc.Fails:
			return "sheet-fails"
		case calc.Open:
			return "sheet-open"
		}
		return "sheet-holds"
	}
	return said{f.Mark, f.Title, f.Detail, class(f.State)}, said{t.Mark, t.Title, t.Detail, class(t.State)}
}

func (c *crew) head() {
	c.open("header", "sheet-head")
	c.el("h1", "", c.title(c.o))
	c.el("p", "", c.sp.Word("sheet.crew"))
	c.close("header")
}

// answer writes the two lines of the headline side by side.
func (c *crew) answer() {
	c.open("div", "sheet-answer")
	for i, l := range []said{c.finished, c.now} {
		c.open("div", l.class)
		when := "page.finished"
		if i == 1 {
			when = "page.today"
		}
		c.el("p", "sheet-when", c.sp.Sentence("sheet.when", c.sp.Word(when), l.mark))
		c.el("p", "sheet-title", l.title)
		c.el("p", "", l.detail)
		c.close("div")
	}
	c.close("div")
}

// barColumns are the widths of the columns of the bar table, in hundredths of
// the page's width, as in web/print.css.
var barColumns = [...]float64{6, 17, 24, 8, 11, 19, 15}

func (c *crew) heads() []string {
	out := make([]string, 0, len(barColumns))
	for _, id := range []string{"mark", "bars", "where", "cover", "one", "bend", "lap"} {
		out = append(out, c.sp.Word("sheet.bars."+id))
	}
	return out
}

func (c *crew) bars() {
	c.table("sheet-bars", c.heads(), c.cells())
	if len(c.rows) == 0 {
		c.el("p", "sheet-none", c.sp.Word("page.bars.none"))
	}
}

func (c *crew) cells() (out [][]string) {
	for _, r := range c.rows {
		cover := r.cover
		if cover == "" {
			cover = "–"
		}
		out = append(out, []string{r.mark, r.bars, r.where, cover, r.one, r.bend, r.lap})
	}
	return out
}

// notes writes how it is held and what to tick, and the cautions that stand on
// every sheet.
func (c *crew) notes() {
	c.open("div", "sheet-notes")
	c.open("div", "")
	c.el("h2", "", c.sp.Word("sheet.held-finished"))
	c.list("", c.held)
	c.el("h2", "", c.sp.Word("sheet.held-today"))
	c.list("", c.today)
	c.el("p", "", c.governs)
	c.close("div")
	c.open("div", "")
	c.el("h2", "", c.sp.Word("sheet.before"))
	c.list("sheet-ticks", c.ticks)
	c.close("div", "div")
	c.el("p", "sheet-safety", strings.Join(c.safety(), " "))
}

// safety are the cautions that stand on every sheet.
func (s *scene) safety() (out []string) {
	for _, id := range []string{"law", "engineer", "dig", "forms", "brace", "bars"} {
		out = append(out, s.sp.Word("page.safety."+id))
	}
	return out
}

// block is the title block.
func (c *crew) block() {
	c.open("table", "sheet-block")
	c.open("tbody", "")
	c.pairs(c.blockWords()...)
	c.close("tbody", "table")
}

// blockWords are the names and the words of the title block.
func (c *crew) blockWords() []string {
	decides, other := c.editions()
	return []string{"sheet.block.date", tidy(c.o.Date), "sheet.block.by", tidy(c.o.Person), "sheet.block.materials", c.materials(),
		"sheet.block.book", decides, "sheet.block.beside", other, "sheet.block.drawn", c.sp.Word("page.name")}
}

// blockColumns are the widths of the title block's columns, in hundredths.
var blockColumns = [...]float64{13, 16, 29, 14, 14, 14}

// pairs writes a line of the title block: small names over what is said.
func (c *crew) pairs(list ...string) {
	c.open("tr", "")
	for i := 0; i+1 < len(list); i += 2 {
		c.open("td", "")
		c.el("span", "", c.sp.Word(list[i]))
		c.el("b", "", list[i+1])
		c.close("td")
	}
	c.close("tr")
}
