package draw

import (
	"math"
	"slices"

	"standingbeam/calc/soil"
)

// profile is the pressure on one side: its breaks from the lowest level up,
// with the whole pressure and the water's part of it just above and just below
// each. Service values in psi.
type profile struct {
	levels []float64
	blocks []block
	most   float64 // the greatest pressure
	at     float64 // where
	foot   float64 // the pressure at the footing's top
	top    float64 // where it begins
}

type block struct {
	from, to    float64 // from is the higher level
	top, bottom float64
	water       bool
}

// readPush reads the pressures of the stage.
func (p *picture) readPush() {
	if p.st == nil {
		return
	}
	for i := range p.st.Pushes {
		u := &p.st.Pushes[i]
		side := 0
		if u.Side == 'b' {
			side = 1
			if u.Factor == 0 {
				continue
			}
		}
		b := block{u.From.Inches(), math.Max(0, u.To.Inches()), float64(u.Top), float64(u.Bottom), u.Cause == soil.Water}
		if b.from > b.to && (b.top > 0 || b.bottom > 0) {
			p.push[side].add(b)
		}
	}
	for i := range p.push {
		p.push[i].close()
	}
}

func (q *profile) add(b block) {
	q.blocks = append(q.blocks, b)
	q.levels = append(q.levels, b.from, b.to)
	q.top = math.Max(q.top, b.from)
}

func (q *profile) close() {
	slices.Sort(q.levels)
	q.levels = slices.CompactFunc(q.levels, func(a, b float64) bool { return math.Abs(a-b) < 1e-6 })
	for i, y := range q.levels {
		lo, hi := q.value(y, -1, false), q.value(y, +1, false)
		if i == 0 {
			q.foot = hi
		}
		if v := math.Max(lo, hi); v > q.most {
			q.most, q.at = v, y
		}
	}
}

// value is the pressure at a level, just below it for a negative side and just
// above it for a positive one.
func (q *profile) value(y, side float64, waterOnly bool) (sum float64) {
	y += side * 1e-7
	for _, b := range q.blocks {
		if y <= b.from && y >= b.to && (b.water || !waterOnly) {
			sum += b.bottom + (b.top-b.bottom)*(y-b.to)/(b.from-b.to)
		}
	}
	return sum
}

// shape adds the outline of a profile, drawn from base outward along dir, to a
// path: the pressure's line from the top down, closed along the base.
func (p *picture) shape(value func(y, side float64) float64, levels []float64, base, dir float64) *path {
	q := &path{}
	n := len(levels)
	if n < 2 {
		return q
	}
	k := dir * p.window.Push
	q.move(base, p.y(levels[n-1]))
	for i := n - 1; i >= 0; i-- {
		y := levels[i]
		if i < n-1 {
			q.line(base+k*value(y, +1), p.y(y))
		}
		if i > 0 {
			q.line(base+k*value(y, -1), p.y(y))
		}
	}
	return q.line(base, p.y(levels[0])).close()
}

// base is the line from which the push of a side is drawn: the wall's face,
// or, where the curve stands on the soil side, the plane behind it.
func (p *picture) base(side int) (x, dir float64) {
	if side == 1 {
		return p.faceB() + 1, 1
	}
	return p.faceA() - p.window.Back - 1, -1
}

// pushes draws the pressure of the ground and of water on both sides. Where
// both sides push, each is an outline and their difference is the figure that
// counts.
func (p *picture) pushes() {
	both := p.push[0].most > 0 && p.push[1].most > 0
	for side := range p.push {
		q := &p.push[side]
		if q.most == 0 {
			continue
		}
		base, dir := p.base(side)
		total := func(y, s float64) float64 { return q.value(y, s, false) }
		water := func(y, s float64) float64 { return q.value(y, s, true) }
		if side == 0 && p.window.Back > 0 {
			p.s.segment("plane", base, p.y(q.top), base, p.y(q.levels[0]))
		}
		class := "push body"
		if both {
			class = "push faint"
		}
		p.s.draw(class, p.shape(total, q.levels, base, dir))
		if p.in.Water.Standing && side == 0 {
			p.s.draw("water body", p.shape(water, q.levels, base, dir))
		}
		if !both || side == 1 {
			p.arrows(total, q.levels, base, dir)
		}
		p.avoidPush(q, base, dir)
	}
	if both {
		p.net()
	}
	p.sayPush(both)
}

// net draws the difference of the two pressures on side A.
func (p *picture) net() {
	a, b := &p.push[0], &p.push[1]
	levels := append(slices.Clone(a.levels), b.levels...)
	slices.Sort(levels)
	levels = slices.CompactFunc(levels, func(x, y float64) bool { return math.Abs(x-y) < 1e-6 })
	net := func(y, s float64) float64 { return math.Max(0, a.value(y, s, false)-b.value(y, s, false)) }
	base, dir := p.base(0)
	p.s.draw("push net", p.shape(net, levels, base, dir))
	p.arrows(net, levels, base, dir)
}

// arrows draws the push as arrows that end at the base, about 26 px apart.
func (p *picture) arrows(value func(y, side float64) float64, levels []float64, base, dir float64) {
	lo, hi := levels[0], levels[len(levels)-1]
	span := (hi - lo) * p.window.Scale
	n := int(span/26) + 1
	shafts, heads := &path{}, &path{}
	for i := range n {
		y := lo + (hi-lo)*(float64(i)+0.3)/float64(n)
		l := value(y, +1) * p.window.Push
		if l < 7 {
			continue
		}
		head := math.Min(7, 0.6*l)
		shafts.move(base+dir*l, p.y(y)).line(base+dir*head*0.8, p.y(y))
		heads.head(base, p.y(y), -dir, 0, head)
	}
	p.s.draw("push shaft", shafts)
	p.s.draw("push tip", heads)
}

// avoidPush keeps labels off the push.
func (p *picture) avoidPush(q *profile, base, dir float64) {
	for i := 1; i < len(q.levels); i++ {
		y0, y1 := p.y(q.levels[i-1]), p.y(q.levels[i])
		v := math.Max(q.value(q.levels[i-1], +1, false), q.value(q.levels[i], -1, false)) * p.window.Push
		p.p.inked.area(Box{X: math.Min(base, base+dir*v), Y: y1, W: v, H: y0 - y1}, 2)
	}
}
