package sheet

import (
	"math"

	"standingbeam/app/letters"
)

// run is one length of a dimension line.
type run struct {
	from, to float64
	words    string
}

// Dimension lines, in points: how far an extension line keeps from what it
// measures and runs past the dimension line, half a tick, and the row into
// which a text goes that finds no room on its own length.
const (
	extGap  = 2.5
	extPast = 3.5
	tick    = 2.6
	textGap = 1.2
	lowRow  = 10.0
)

// across draws a chain of dimensions along a level line, with extension lines
// from the level of what is measured. Texts stand over the line, those that
// find no room in a row under it.
func (v *figure) across(level, from float64, runs []run) {
	v.chain(runs, false, level, from)
}

// upright is the same along an upright line at x. Texts read upward on its
// left; those that find no room stand level, left of it.
func (v *figure) upright(x, from float64, runs []run) {
	v.chain(runs, true, x, from)
}

func (v *figure) chain(runs []run, up bool, at, from float64) {
	place := func(along, over float64) point {
		if up {
			return point{over, along}
		}
		return point{along, over}
	}
	side := 1.0 // on which side of what is measured the chain lies
	if at < from {
		side = -1
	}
	ends := map[float64]bool{}
	for _, r := range runs {
		for _, e := range []float64{r.from, r.to} {
			if ends[e] {
				continue
			}
			ends[e] = true
			v.line(dimensions, thin, place(e, from+side*v.pt(extGap)), place(e, at+side*v.pt(extPast)))
			d := v.pt(tick)
			v.line(dimensions, 1.2, point{place(e, at).x - d, place(e, at).y - d}, point{place(e, at).x + d, place(e, at).y + d})
		}
		v.line(dimensions, thin, place(r.from, at), place(r.to, at))
	}
	v.sayRuns(runs, up, at, place)
}

func (v *figure) sayRuns(runs []run, up bool, at float64, place func(along, over float64) point) {
	var tight []run
	for _, r := range runs {
		middle := (r.from + r.to) / 2
		if v.tight(r) {
			tight = append(tight, r)
			continue
		}
		t := text{at: place(middle, at+v.pt(textGap)), words: r.words, v: 1}
		if up {
			t.at, t.v, t.h, t.turned = place(middle, at-v.pt(textGap)), 0, -1, true
		}
		v.say(t)
	}
	v.sayTight(tight, up, at, place)
}

// sayTight writes the texts that are wider than what they measure.
func (v *figure) sayTight(runs []run, up bool, at float64, place func(along, over float64) point) {
	slots, end := make([]slot, len(runs)), math.Inf(-1)
	for i, r := range runs {
		end = math.Max(end, r.to)
		slots[i] = slot{v.points((r.from + r.to) / 2), letters.Width(r.words, typeSize, false) + 4}
		if up {
			slots[i].size = leading
		}
	}
	if len(runs) == 0 {
		return
	}
	low, high := slots[0].want-150, slots[len(slots)-1].want+150
	if !up {
		// To the right stand the notes.
		high = math.Max(v.points(end)+4, slots[len(slots)-1].want+slots[len(slots)-1].size/2)
	}
	where, ok := spread(slots, low, high, nil)
	if !ok {
		v.crowded = true
		return
	}
	for i, r := range runs {
		middle, along := (r.from+r.to)/2, v.pt(where[i])
		if up {
			v.say(text{at: place(along, at-v.pt(9)), words: r.words, h: -1})
			v.line(dimensions, thin, place(middle, at-v.pt(1)), place(along, at-v.pt(8)))
			continue
		}
		v.say(text{at: place(along, at-v.pt(lowRow)), words: r.words, v: 0})
		v.line(dimensions, thin, place(middle, at-v.pt(1)), place(along, at-v.pt(lowRow-3.6)))
	}
}

// tight reports whether a run's text finds no room on its own length.
func (v *figure) tight(r run) bool {
	return v.points(math.Abs(r.to-r.from)) < letters.Width(r.words, typeSize, false)+5
}

// tightRun reports whether there is such a run in a chain.
func (v *figure) tightRun(runs []run) bool {
	for _, r := range runs {
		if v.tight(r) {
			return true
		}
	}
	return false
}

// leftOf is the room in points that an upright chain needs left of its line.
func (v *figure) leftOf(runs []run) float64 {
	need := 15.0
	for _, r := range runs {
		if v.tight(r) {
			need = math.Max(need, 12+letters.Width(r.words, typeSize, false))
		}
	}
	return need
}
