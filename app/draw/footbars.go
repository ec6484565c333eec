package draw

import (
	"math"

	"standingbeam/calc"
)

// acrossFooting draws a bar across the footing: over the heel on top, under the toe
// at the bottom.
func (p *picture) acrossFooting(b *calc.Bar) {
	y := p.y(-(p.foot - earth - diameter(b)/2))
	if b.Role == calc.HeelBar {
		y = p.y(-(1.5 + diameter(b)/2))
		if b.Cover > 0 {
			y = p.y(-(b.Cover.Inches() + diameter(b)/2))
		}
	}
	p.s.segment("bar", p.x(-p.heel+endCover), y, p.x(p.t+p.toe-endCover), y)
}

// alongFooting draws the bars along the footing as dots, spread over its width.
func (p *picture) alongFooting(b *calc.Bar) {
	n := b.Count
	wide := p.heel + p.t + p.toe - 2*earth
	if n == 0 && b.Spacing > 0 {
		n = int(wide/b.Spacing.Inches()) + 1
	}
	n = min(n, 24)
	y := p.y(-(p.foot - earth - diameter(b)/2))
	r := math.Max(2.4, diameter(b)*p.window.Scale/2)
	dots := &path{}
	for i := range n {
		t := 0.5
		if n > 1 {
			t = float64(i) / float64(n-1)
		}
		x := p.x(-p.heel + earth + wide*t)
		dots.move(x-r, y).arc(r, x+r, y).arc(r, x-r, y).close()
	}
	p.s.draw("dots", dots)
}

// tieBar draws the bar from the wall into the slab, hooked in the wall, once
// the slab is there.
func (p *picture) tieBar(b *calc.Bar) {
	if !p.held {
		return
	}
	top, base := p.tieSpan()
	level := (top + base) / 2
	x := p.x(p.t - endCover)
	q := &path{}
	if b.Hook > 0 {
		q.move(x, p.y(level)+math.Min(b.Hook.Inches()*p.window.Scale, p.y(0)-p.y(level)-4)).line(x, p.y(level))
	} else {
		q.move(x, p.y(level))
	}
	p.s.draw("bar", q.line(math.Max(2, p.x(-b.Length.Inches())), p.y(level)))
}
