package lesson

import (
	"math"

	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

// bending is a curve of bending beside a wall: on the side that is stretched,
// px pixels for each pound-foot of a foot of wall.
type bending struct {
	d     *statics.Diagram
	a, b  float64 // where the lines of face A and face B stand from which it is drawn
	px    float64
	class string // of the line
}

// at is where the curve stands at a level.
func (c *bending) at(level float64) float64 {
	m := float64(c.d.Moment(units.Length(level)))
	if m < 0 {
		return c.a + m*c.px
	}
	return c.b + m*c.px
}

// curve draws a bending curve with the area under it.
func (w *stand) curve(c bending, filled bool) {
	const n = 40
	line, area := &track{}, &track{}
	side := 0.0
	for i := 0; i <= n; i++ {
		level := w.h * float64(i) / n
		m := float64(c.d.Moment(units.Length(level)))
		now := 1.0
		if m < 0 {
			now = -1
		}
		x, y, face := c.at(level), w.px(level), c.b
		if now < 0 {
			face = c.a
		}
		if now != side {
			if side != 0 {
				area.close()
			}
			line.move(face, y)
			area.move(face, y)
			side = now
		}
		line.to(x, y)
		area.to(x, y)
	}
	end := c.b
	if side < 0 {
		end = c.a
	}
	line.to(end, w.px(w.h))
	area.to(end, w.px(w.h)).close()
	if filled {
		w.s.path("area", area)
	}
	w.s.path("curve "+c.class, line)
}

// peak is the greatest bending of a diagram, its level and its sign.
func peak(d *statics.Diagram) (level, m float64) {
	at, most := d.MaxMoment()
	low, least := d.MinMoment()
	if -float64(least) > float64(most) {
		return low.Inches(), float64(least)
	}
	return at.Inches(), float64(most)
}

// mark puts a dot on the curve where it is greatest and returns it.
func (w *stand) mark(c bending) spot {
	level, _ := peak(c.d)
	p := spot{c.at(level), w.px(level)}
	w.s.circle("peak", p.x, p.y, 5)
	w.s.off(p.x-6, p.y-6, 12, 12)
	return p
}

// nameMark names the greatest bending beside its dot, or in a corner that the
// curve leaves free.
func (w *stand) nameMark(text string, p spot) {
	right := w.s.w - 4
	w.s.call("ink", text, anchor{p.x + 12, p.y, 1}, anchor{right, w.px(w.h) + 14, -1}, anchor{right, w.px(4) - 14, -1})
	w.s.wire(p)
}

// ghost draws the curve that c is compared with, and names it where the two can
// be told apart.
func (w *stand) ghost(c, past bending, text string) {
	past.class = "ghost"
	w.curve(past, false)
	level, _ := peak(past.d)
	x, low := past.at(level), 0.45*level
	if math.Abs(x-c.at(level)) < 8 {
		return
	}
	w.s.say("soft", text, anchor{x + 8, w.px(level), 1}, anchor{x + 8, w.px(level * 1.4), 1}, anchor{x - 8, w.px(level), -1}, anchor{w.s.w - 4, w.px(low), -1}, anchor{w.s.w - 4, w.px(1.6 * level), -1})
	w.s.wire(spot{past.at(low), w.px(low)})
}

// band draws what the wall bears as a band beside face B.
func (w *stand) band(class, edge string, x, px, bears float64) {
	if bears <= 0 {
		return
	}
	top := w.px(w.h)
	w.s.rect("band "+class, x, top, bears*px, w.y-top)
	w.s.line("edge "+edge, x+bears*px, top, x+bears*px, w.y)
}

// share is a over b, nothing where b is nothing.
func share(a, b float64) float64 {
	if b == 0 || math.IsNaN(a/b) {
		return 0
	}
	return a / b
}
