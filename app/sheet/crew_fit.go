package sheet

import (
	"math"
	"strings"

	"standingbeam/app/letters"
)

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
	high := 5.4 + headLine*float64(len(letters.Wrap(c.title(c.o), headType, true, width-92))) + c.answerHeight(width) + 6 + 5 + 4
	for _, text := range c.cautions {
		high += math.Max(1, float64(len(letters.Wrap(text, crewType, true, width-8))))*crewLine + 1.2
	}
	high += c.tableHeight(width)
	wide := width*heldShare - 18
	held := listHeight(c.held, wide) + listHeight(c.today, wide) + 4 + crewLine*lines(c.governs, wide+8)
	ticks := 14.0
	wide = width*(1-heldShare)/2 - 24
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
	return high + 9 + 5 + math.Max(22, 11.2+crewLine*tall) - 3
}

// tableHeight is the height of the bar table with its heads.
func (c *crew) tableHeight(width float64) (high float64) {
	most := 1.0
	for i, text := range c.heads() {
		most = math.Max(most, float64(len(letters.Wrap(text, crewType, true, width*barColumns[i]/100-6.4))))
	}
	high = most*crewLine + 3.4
	for _, cells := range c.cells() {
		most := 1.0
		for i, text := range cells {
			most = math.Max(most, lines(text, width*barColumns[i]/100-6.4))
		}
		high += most*crewLine + 3.0
	}
	return high
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
