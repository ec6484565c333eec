package lesson

import (
	"math"

	"standingbeam/calc/units"
)

// chart is the frame of the sweep: the height up, the bending to the right.
// Its axis is the wall itself.
type chart struct {
	x, y   float64 // bending 0, height 0
	k      float64 // px per inch of height
	px     float64 // px per pound-foot
	most   float64 // bending at the right edge
	top    units.Length
	bottom units.Length
}

func (k *kit) chart(s swept) chart {
	c := chart{top: sweepMost(k), bottom: sweepLeast(k)}
	c.x, c.y = 0.30*k.w, k.h-30
	c.k = (c.y - 26) / c.top.Inches()
	c.most = math.Max(1.25*s.bars, 1.1*s.plain)
	c.px = (k.w - 16 - c.x) / c.most
	return c
}

func (c chart) at(h units.Length, m float64) spot {
	return spot{c.x + math.Min(m, c.most*1.2)*c.px, c.y - h.Inches()*c.k}
}

func showSweep(k *kit) {
	s := k.sweep()
	c := k.chart(s)
	h := units.Length(k.at)
	k.sweepWallDrawn(c, h)
	top, foot := c.at(c.top, 0).y-8, c.y
	plain, bars := c.at(0, s.plain).x, c.at(0, s.bars).x
	k.rect("band plain", c.x, top, plain-c.x, foot-top)
	k.line("edge plain", plain, top, plain, foot)
	k.say("ink", k.sp.Word("picture.plain"), anchor{plain, foot + 12, 0}, anchor{plain - 4, foot + 12, -1})
	if !k.asking {
		k.line("edge steel", bars, top, bars, foot)
		k.say("steel", k.sp.Word("picture.with-bars"), anchor{bars, foot + 12, 0}, anchor{bars + 30, foot + 12, -1})
		k.sweepCurve(c, s)
		k.sweepMarks(c, s, h)
		k.tellSweep(s, h)
		return
	}
	k.letter("ink", "?", (c.x+k.w)/2, c.y*0.5)
	k.sweepHeights(c)
}

// sweepWallDrawn is the wall of the height that is looked at, as the axis.
func (k *kit) sweepWallDrawn(c chart, h units.Length) {
	w := &stand{s: k.scene, h: h.Inches(), t: k.sweepWall(8*ft, false).Thickness.Inches(), k: c.k, y: c.y, bend: straight()}
	w.x = c.x - w.t*w.k
	w.foot = 10
	w.toe, w.heel = 8, 8
	k.earth(box(-2, c.y, k.w+4, k.h-c.y+4))
	k.earth(box(-2, w.px(w.h), w.x+2, w.h*w.k))
	k.line("surface", -2, w.px(w.h), w.x, w.px(w.h))
	k.line("surface", c.x, c.y, k.w+2, c.y)
	w.footing()
	w.draw()
	k.blocks = nil
	k.off(c.x-w.t*w.k-12, c.y, w.t*w.k+24, 14)
}

// sweepCurve is the bending over all heights.
func (k *kit) sweepCurve(c chart, s swept) {
	t := &track{}
	started := false
	for i := 0; i <= 24; i++ {
		h := c.bottom + (c.top-c.bottom)*units.Length(i)/24
		p := c.at(h, s.bends(h))
		if p.x > k.w+30 {
			t.to(p.x, p.y)
			break
		}
		if !started {
			t.move(p.x, p.y)
			started = true
		} else {
			t.to(p.x, p.y)
		}
		k.off(p.x-3, p.y-3, 6, 6)
	}
	k.path("curve", t)
}

// sweepMarks are the two crossings and the height that is looked at.
func (k *kit) sweepMarks(c chart, s swept, h units.Length) {
	if s.plainTop > c.bottom && s.plainTop < c.top {
		p := c.at(s.plainTop, s.plain)
		k.line("limit", c.x, p.y, p.x, p.y)
		k.circle("peak", p.x, p.y, 5)
		k.off(p.x-6, p.y-6, 12, 12)
		k.call("ink", k.lowLength(s.plainTop), anchor{p.x + 12, p.y + 10, 1}, anchor{p.x + 12, p.y + 24, 1}, anchor{p.x - 10, p.y - 14, -1})
	}
	if s.barsTop > c.bottom && s.barsTop < c.top {
		p := c.at(s.barsTop, s.bars)
		k.circle("peak steel", p.x, p.y, 5)
		k.off(p.x-6, p.y-6, 12, 12)
		k.call("steel", k.lowLength(s.barsTop), anchor{p.x - 10, p.y - 14, -1}, anchor{p.x + 10, p.y + 14, 1}, anchor{p.x - 10, p.y - 30, -1})
	}
	m := s.bends(h)
	p := c.at(h, math.Min(m, c.most))
	k.line("look", c.x, p.y, p.x, p.y)
	k.off(c.x, p.y-4, p.x-c.x, 8)
	k.circle("look-dot", p.x, p.y, 7)
	k.off(p.x-8, p.y-8, 16, 16)
	k.call("ink", k.sp.Length(h), anchor{8, p.y - 12, 1}, anchor{8, p.y + 12, 1})
	k.sweepHeights(c)
}

// sweepHeights are the heights beside the axis.
func (k *kit) sweepHeights(c chart) {
	step := k.pick(2*ft, mm(600))
	for h := c.bottom; h <= c.top; h += step {
		y := c.at(h, 0).y
		k.line("tick", c.x-4, y, c.x+4, y)
		k.say("soft", k.sp.Length(h), anchor{6, y, 1})
		k.labels[len(k.labels)-1].fixed = true
	}
}

func (k *kit) tellSweep(s swept, h units.Length) {
	m := s.bends(h)
	most := math.Max(1.3*s.bars, m)
	k.meter("heights.meter.bend", k.moment(m), m, most, s.plain, m > s.plain)
	k.meter("heights.meter.plain", k.moment(s.plain), s.plain, most, 0, false)
	k.meter("heights.meter.bars", k.moment(s.bars), s.bars, most, 0, false)
	id := "heights.say.plain"
	switch {
	case h > s.plainTop && m > s.bars:
		id = "heights.say.more"
	case h > s.plainTop:
		id = "heights.say.bars"
	}
	k.tell(id, k.sp.Length(h), k.moment(m), k.lowLength(s.plainTop), k.lowLength(s.barsTop))
}
