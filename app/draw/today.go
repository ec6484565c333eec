package draw

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// today marks how far the wall may be filled as it stands today, where that is
// less than the ground that is drawn.
func (p *picture) today() {
	t := p.r.Today
	a, _ := p.grades()
	if p.st == nil || p.st.Name != calc.Finished || t.Permission != calc.FillOnlyTo || t.Level.Inches() >= a-0.5 {
		return
	}
	y := p.level(t.Level)
	left := column + target + grip
	if p.in.Water.Standing {
		left += target
	}
	p.s.segment("until", left, y, p.faceA(), y)
	p.p.inked.line(left, y, p.faceA(), y, 3)
	l := label{class: "ink", lines: []line{plainLine(p.sp.Sentence("picture.today", p.sp.Capacity(units.Of(t.Level, units.Level))))}, rank: rankBars, wander: true, tie: 14, most: 36}
	l.x, l.y = left+6, y
	l.measure()
	p.until = spot{x: p.faceA() - 6 - l.w, y: y}
	for _, dy := range []float64{-4, 4} {
		v := int8(1)
		if dy < 0 {
			v = -1
		}
		l.spots = append(l.spots, spot{x: p.faceA() - 6, y: y + dy, h: -1, v: v}, spot{x: left - 6, y: y + dy, h: 1, v: v})
	}
	l.spots = append(l.spots, spot{x: left - 6, y: y, h: -1})
	p.say(l)
}
