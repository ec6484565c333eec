package sheet

import (
	"math"
	"sort"

	"standingbeam/app/letters"
)

// callout is a note in a column with a leader to what it speaks of. A mark
// stands in a circle before it.
type callout struct {
	mark   string
	lines  []string
	target point
}

const (
	markRadius = 7.6 // of a circle round a bar's mark, in points
	calloutGap = 3.0
)

func (c callout) height() float64 {
	h := leading * float64(len(c.lines))
	if c.mark != "" {
		h = math.Max(h, 2*markRadius)
	}
	return h + calloutGap
}

// column places callouts right of x, between the levels low and high, in the
// order of their targets from below. It keeps off the blocked levels. Where a
// leader would run through another note it tries other orders.
func (v *figure) column(x, low, high float64, list []callout, blocked []span) {
	if len(list) == 0 {
		return
	}
	list = append([]callout(nil), list...)
	sort.SliceStable(list, func(i, j int) bool { return list[i].target.y < list[j].target.y-1e-9 })
	spans := make([]span, len(blocked))
	for i, b := range blocked {
		spans[i] = span{v.points(b.from), v.points(b.to)}
	}
	order, best, least := v.untangled(list, x, low, high, spans, 0)
	if best == nil {
		v.crowded = true
		return
	}
	// Notes further apart than they need be may leave a leader its way.
	for more := 4.0; least > 0 && more <= 16; more += 4 {
		if tried, where, n := v.untangled(list, x, low, high, spans, more); where != nil && n < least {
			order, best, least = tried, where, n
		}
	}
	for i, c := range order {
		v.callout(point{x, v.pt(best[i])}, c)
	}
}

// untangled finds the order in which the fewest leaders tangle, the notes being
// more points apart than they need be. Without a place for all, where is nil.
func (v *figure) untangled(order []callout, x, low, high float64, blocked []span, more float64) (_ []callout, where []float64, least int) {
	best, ok := v.inColumn(order, low, high, blocked, more)
	if !ok {
		return order, nil, 0
	}
	least = v.tangles(x, order, best)
	for better := true; better && least > 0; {
		better = false
		for i := range len(order) - 1 {
			tried := append([]callout(nil), order...)
			tried[i], tried[i+1] = tried[i+1], tried[i]
			where, ok := v.inColumn(tried, low, high, blocked, more)
			if !ok {
				continue
			}
			if n := v.tangles(x, tried, where); n < least {
				order, best, least, better = tried, where, n, true
			}
		}
	}
	return order, best, least
}

func (v *figure) inColumn(list []callout, low, high float64, blocked []span, more float64) ([]float64, bool) {
	slots := make([]slot, len(list))
	for i, c := range list {
		slots[i] = slot{v.points(c.target.y), c.height() + more}
	}
	return spread(slots, v.points(low), v.points(high), blocked)
}

// tangles counts the leaders that run through a note or across each other.
func (v *figure) tangles(x float64, list []callout, where []float64) (n int) {
	start := func(i int) point {
		if list[i].mark == "" {
			return point{x, v.pt(where[i])}
		}
		return point{x + v.pt(markRadius), v.pt(where[i])}
	}
	for i, a := range list {
		for j, b := range list {
			if i == j {
				continue
			}
			if i < j && meet(start(i), a.target, start(j), b.target) {
				n++
			}
			y, half := v.pt(where[j]), v.pt(b.height()/2-calloutGap/2)
			left, right := point{x, y - half}, point{x, y + half}
			if b.mark != "" {
				left, right = point{x, y}, point{x + v.pt(markRadius), y}
				up, down := point{x + v.pt(markRadius), y - v.pt(markRadius)}, point{x + v.pt(markRadius), y + v.pt(markRadius)}
				if meet(start(i), a.target, up, down) {
					n++
				}
			}
			if meet(start(i), a.target, left, right) {
				n++
			}
			if b.mark == "" && v.passes(start(i), a.target, left, right) {
				n++
			}
		}
	}
	return n
}

// passes reports whether a stroke crosses the upper or lower edge of a note
// whose left edge goes from low to high: a steep leader does not meet that one.
func (v *figure) passes(a, b, low, high point) bool {
	far := v.pt(2 * markRadius)
	return meet(a, b, low, point{low.x + far, low.y}) || meet(a, b, high, point{high.x + far, high.y})
}

// meet reports whether two strokes cross.
func meet(a, b, c, d point) bool {
	side := func(p, q, r point) float64 { return (q.x-p.x)*(r.y-p.y) - (q.y-p.y)*(r.x-p.x) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}

// callout writes one note whose left middle is at a place.
func (v *figure) callout(at point, c callout) {
	left := at.x
	if c.mark != "" {
		v.mark(point{at.x + v.pt(markRadius), at.y}, c.mark)
		left += v.pt(2*markRadius + 3)
	}
	top := at.y + v.pt(leading*float64(len(c.lines)-1)/2)
	for i, l := range c.lines {
		v.say(text{at: point{left, top - v.pt(leading*float64(i))}, words: l, h: 1})
	}
	start := point{at.x - v.pt(1.5), at.y}
	if c.mark != "" {
		// The leader meets the circle in the direction of its target.
		m := point{at.x + v.pt(markRadius), at.y}
		far := math.Hypot(c.target.x-m.x, c.target.y-m.y)
		if far > v.pt(markRadius) {
			start = point{m.x + (c.target.x-m.x)/far*v.pt(markRadius), m.y + (c.target.y-m.y)/far*v.pt(markRadius)}
		}
	}
	v.leader(start, c.target)
}

// leader draws a line that ends in a small arrow.
func (v *figure) leader(from, to point) {
	v.line(dimensions, thin, from, to)
	v.leaders = append(v.leaders, [2]point{from, to})
	dx, dy := from.x-to.x, from.y-to.y
	far := math.Hypot(dx, dy)
	if far < v.pt(5) {
		return
	}
	dx, dy = dx/far*v.pt(4.2), dy/far*v.pt(4.2)
	const slim = 0.26
	v.area(dimensions, thin, ink, to, point{to.x + dx - dy*slim, to.y + dy + dx*slim}, point{to.x + dx + dy*slim, to.y + dy - dx*slim})
}

// mark writes a bar's mark in a circle.
func (v *figure) mark(at point, words string) {
	v.marks = append(v.marks, circle{layer: lettering, pen: medium, center: at, least: markRadius, fill: paper})
	v.texts = append(v.texts, text{at: at, words: words, size: typeSize, bold: true})
}

// wrapped is a note's text broken to a width in points.
func wrapped(width float64, parts ...string) (out []string) {
	for _, p := range parts {
		out = append(out, letters.Wrap(p, typeSize, false, width)...)
	}
	return out
}
