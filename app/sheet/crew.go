package sheet

import (
	"math"
	"strings"

	"standingbeam/app/letters"
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
	c.list("sheet-governs", c.governs)
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
	if g := s.governs(); g != "" {
		c.governs = []string{g}
	}
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
	governs                      []string
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
var barColumns = [...]float64{6, 17, 27, 8, 11, 16, 15}

func (c *crew) bars() {
	head := make([]string, 0, len(barColumns))
	for _, id := range []string{"mark", "bars", "where", "cover", "one", "bend", "lap"} {
		head = append(head, c.sp.Word("sheet.bars."+id))
	}
	c.table("sheet-bars", head, c.cells())
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

// Type on the crew drawing, in points, as in web/print.css.
const (
	crewType = 7.6
	crewLine = 9.2
	bigType  = 11.0
	bigLine  = 13.0
	headType = 12.0
	headLine = 15.0
)

// rest is the height, in points, of everything but the drawing, from above:
// letters are taken as wide as the widest fonts have them.
func (c *crew) rest(inch float64) float64 {
	width := inch * 72
	high := 5.4 + headLine*float64(len(letters.Wrap(c.title(c.o), headType, true, width-92))) + c.answerHeight(width) + 8 + 8 + 4
	for _, text := range append(append([]string(nil), c.cautions...), c.governs...) {
		high += lines(text, width-8)*crewLine + 1.2
	}
	high += crewLine + 3.4
	for _, cells := range c.cells() {
		most := 1.0
		for i, text := range cells {
			most = math.Max(most, lines(text, width*barColumns[i]/100-6.4))
		}
		high += most*crewLine + 3.0
	}
	held := listHeight(c.held, width*heldShare-18) + listHeight(c.today, width*heldShare-18)
	ticks := 14.0
	wide := width*(1-heldShare)/2 - 24
	for i := 0; i < len(c.ticks); i += 2 {
		row := lines(c.ticks[i], wide)
		if i+1 < len(c.ticks) {
			row = math.Max(row, lines(c.ticks[i+1], wide))
		}
		ticks += row*crewLine + 1.2
	}
	high += 7 + math.Max(held, ticks)
	high += lines(strings.Join(c.safety(), " "), width)*crewLine + 5
	tall := 1.0
	for i, w := range blockColumns {
		tall = math.Max(tall, float64(len(letters.Wrap(c.blockWords()[2*i+1], crewType, true, width*w/100-9))))
	}
	return high + 9 + 5 + math.Max(22, 11.2+crewLine*tall) + 3
}

// heldShare is the share of the width that the way it is held takes.
const heldShare = 0.3

func (c *crew) answerHeight(width float64) (high float64) {
	wide := width/2 - 20
	for _, l := range []said{c.finished, c.now} {
		h := crewLine + bigLine*float64(len(letters.Wrap(l.title, bigType, true, wide))) + 10
		if l.detail != "" {
			h += crewLine * lines(l.detail, wide)
		}
		high = math.Max(high, h)
	}
	return high
}

func lines(text string, wide float64) float64 {
	return math.Max(1, float64(len(letters.Wrap(text, crewType, false, wide))))
}

func listHeight(list []string, wide float64) float64 {
	h := 14.0
	for _, text := range list {
		h += lines(text, wide)*crewLine + 1.2
	}
	return h
}
