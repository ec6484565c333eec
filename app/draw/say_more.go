package draw

import (
	"math"
	"strings"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// sayBars names the verticals, the bars of the soil side and the lap.
func (p *picture) sayBars(v, va, d *calc.Bar) {
	for _, b := range []*calc.Bar{v, va} {
		if b == nil {
			continue
		}
		x := p.x(p.barPlace(b))
		l := label{class: "steel", lines: p.barLines(b), rank: rankBars, wander: true, tie: 14}
		l.x, l.lo, l.hi = x, p.y(p.h*0.95), p.y(p.h*0.05)
		right := p.faceB() + 8
		for _, y := range ladder(p.y(p.h*0.85), p.y(p.h*0.15)) {
			l.spots = append(l.spots, spot{x: p.o.Width - 4, y: y, h: -1}, spot{x: right, y: y, h: 1})
		}
		if b == va {
			l.rank, l.most = rankMore, 14
		}
		p.say(l)
	}
	if d == nil || d.Up <= 0 {
		return
	}
	x := p.dowelX(d, v, va)
	up := min(d.Up, p.in.Height-1)
	text := p.sp.Sentence("picture.dowel", p.sp.Size(d.Up))
	if v != nil && v.Lap > 0 {
		text = p.sp.Sentence("picture.lap", p.sp.AtLeast(v.Lap))
	}
	l := label{class: "steel", lines: []line{plainLine(text)}, rank: rankMore, wander: true, tie: 14, most: 8}
	l.x, l.y = x, p.level(up)+4
	for _, dy := range []float64{0, -12, 12, 24, 40} {
		l.spots = append(l.spots, spot{x: p.faceA() - 12, y: l.y + dy, h: -1}, spot{x: p.faceB() + 12, y: l.y + dy, h: 1})
	}
	p.say(l)
}

// barLines names a layer of verticals, in lines narrow enough for the room
// beside a wall on a phone.
func (p *picture) barLines(b *calc.Bar) []line {
	face := plainLine(p.sp.Face(b.Face))
	text, size := p.sp.Bars(*b), p.sp.BarSize(b.Size)
	if b.Count == 0 && b.Spacing > 0 {
		text = p.sp.Sentence("picture.bars", size, p.sp.Spacing(b.Spacing))
	}
	if textWidth(text, typeSize, false) > 125 && strings.HasPrefix(text, size) {
		return []line{plainLine(size), plainLine(strings.TrimSpace(text[len(size):])), face}
	}
	return []line{plainLine(text), face}
}

// sayPush writes the pressure at its greatest, at service level.
func (p *picture) sayPush(both bool) {
	for side := range p.push {
		q := &p.push[side]
		if q.most <= 0 {
			continue
		}
		base, dir := p.base(side)
		v, y := q.most, p.y(q.at)
		id, rank := "picture.pressure", rankPush
		lines := []line{plainLine(p.sp.Demand(units.Of(units.Stress(v), units.Pressure))), plainLine(p.sp.Word(id))}
		if both {
			rank = rankMore
			lines = []line{plainLine(p.sp.Demand(units.Of(units.Stress(v), units.Pressure)))}
		}
		l := label{class: "push", lines: lines, rank: rank, wander: true, tie: 60, most: 26}
		x := base + dir*v*p.window.Push
		l.x, l.y = x, y
		h := int8(dir)
		l.spots = []spot{{x: x, y: y + 4, v: 1}, {x: x - dir*10, y: y + 4, h: h, v: 1}, {x: base, y: y + 4, h: h, v: 1}, {x: base, y: y + 22, h: h, v: 1},
			{x: x + dir*5, y: y - 8, h: h}, {x: x + dir*5, y: y - 30, h: h}, {x: x - dir*10, y: y + 34, h: h, v: 1}, {x: x + dir*16, y: y + 10, h: h, v: 1}}
		p.say(l)
	}
	if both {
		p.sayNet()
	}
}

// sayNet writes the difference of the two pressures at the foot.
func (p *picture) sayNet() {
	v := p.push[0].foot - p.push[1].foot
	if v <= 0 {
		return
	}
	base, dir := p.base(0)
	y := p.y(p.push[1].top)
	l := label{class: "push", rank: rankPush, wander: true, tie: 14,
		lines: []line{strongLine(p.sp.Sentence("picture.net", p.sp.Demand(units.Of(units.Stress(v), units.Pressure)))), plainLine(p.sp.Word("picture.service"))}}
	x := base + dir*v*p.window.Push
	l.x, l.y = x, y
	l.spots = []spot{{x: x - 5, y: p.y(0) + 4, v: 1}, {x: x - 4, y: y - 12, h: -1}, {x: x + 10, y: p.y(0) + 4, h: -1, v: 1}, {x: x - 4, y: y, h: -1}}
	p.say(l)
}

func (p *picture) saySurcharge(left, right, y float64) {
	q := p.in.Surcharge
	text := p.sp.Sentence("picture.surcharge", p.sp.Demand(units.Of(q.Dead+q.Live, units.Pressure)))
	l := label{class: "push", lines: []line{plainLine(text)}, x: (left + right) / 2, y: y, rank: rankMore, wander: true}
	l.spots = []spot{{x: right - 4, y: y - 2, h: -1, v: -1}, {x: left, y: y - 2, h: 1, v: -1}, {x: (left + right) / 2, y: y - 2, v: -1}, {x: right - 4, y: y + 22, h: -1, v: 1}}
	p.say(l)
}

// sayUpright writes a height along its line, or beside its handle where the
// line is too short.
func (p *picture) sayUpright(id string, x, y0, y1 float64, text string, strong bool) {
	word := p.sp.Sentence("picture.dimension."+id, text)
	l := label{class: "ink", rank: rankDimension, wander: true, x: x, y: y1}
	l.lines = []line{{text: word, bold: strong}}
	top := y1 + grip + 3
	l.measure()
	w := l.w
	if span := y0 - top; span > w {
		mid := (top + y0) / 2
		if t := p.until; t.y > 0 && x > t.x && x < p.faceA() && math.Abs(t.y-mid) < w/2+typeSize {
			// It leaves the room at the line of today's fill to that line's label.
			if mid = top + w/2 + 2; t.y < mid {
				mid = y0 - w/2 - 2
			}
		}
		l.spots = []spot{{x: x - 5, y: mid, h: -1, turned: true}, {x: x + 5, y: mid, h: 1, turned: true},
			{x: x - 5, y: top + w/2 + 2, h: -1, turned: true}, {x: x - 5, y: y0 - w/2 - 2, h: -1, turned: true}}
	}
	l.spots = append(l.spots, spot{x: x + grip + 3, y: y1, h: 1}, spot{x: x - grip - 3, y: y1, h: -1}, spot{x: x - grip, y: y1 - grip - 2, h: 1, v: -1},
		spot{x: x - 20, y: y1 - grip - 2, h: 1, v: -1}, spot{x: x + grip, y: y1 - grip - 2, h: -1, v: -1}, spot{x: x + grip, y: y0 + 4, h: -1, v: 1},
		spot{x: x - grip, y: y0 + 4, h: 1, v: 1}, spot{x: x, y: y0 + 8, v: 1}, spot{x: x, y: y1 + grip + 2, v: 1})
	p.say(l)
}

// sayFooting writes the footing's width and toe at their dimension.
func (p *picture) sayFooting(left, right, face, y float64) {
	f := p.in.Footing
	mid := (left + right) / 2
	l := label{class: "ink", rank: rankDimension, wander: true, most: 9, x: mid, y: y, lines: []line{plainLine(p.sp.Sentence("picture.dimension.footing.width", p.sp.Length(f.Width)))}}
	l.spots = []spot{{x: mid, y: y + 7, v: 1}, {x: mid, y: y - 3, v: -1}, {x: left - 10, y: y + 6, h: 1, v: 1}, {x: left - target/2 - 14, y: y, h: -1}, {x: right, y: y + 6, h: -1, v: 1}, {x: right + target/2 + 14, y: y, h: 1}}
	p.say(l)
	if f.NoToe {
		return
	}
	q := label{class: "ink", rank: rankFooting, wander: true, most: 9, x: (face + right) / 2, y: y, lines: []line{plainLine(p.sp.Sentence("picture.dimension.footing.toe", p.sp.Length(f.Toe)))}}
	q.spots = []spot{{x: right + target/2 + 14, y: y, h: 1}, {x: right + 14, y: y - 15, h: 1, v: -1}, {x: right + 14, y: y + 5, h: 1, v: 1}, {x: math.Max(face, mid), y: y - 3, h: 1, v: -1}}
	p.say(q)
}
