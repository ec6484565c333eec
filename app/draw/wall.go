package draw

import (
	"math"

	"standingbeam/calc"
)

// concrete draws the wall and its footing. A footing that was not given is a
// dashed ghost.
func (p *picture) concrete() {
	left, right := p.x(-p.heel), p.x(p.t+p.toe)
	top, bottom := p.y(0), p.y(-p.foot)
	if p.real {
		p.block(left, top, right-left, bottom-top)
	} else {
		p.s.rect("unbuilt", "", left, top, right-left, bottom-top)
	}
	p.block(p.faceA(), p.y(p.h), p.faceB()-p.faceA(), p.y(0)-p.y(p.h))
	p.p.inked.area(Box{X: left, Y: top, W: right - left, H: bottom - top}, 6)
	p.p.solid = [2]Box{{X: p.faceA(), Y: p.y(p.h), W: p.faceB() - p.faceA(), H: p.y(0) - p.y(p.h)}, {X: left, Y: top, W: right - left, H: bottom - top}}
	p.p.inked.area(Box{X: p.faceA() - 2, Y: p.y(p.h), W: p.faceB() - p.faceA() + 4, H: p.y(0) - p.y(p.h)}, 14)
}

// block draws a piece of concrete: its ground, the stipple and its edge.
func (p *picture) block(x, y, w, h float64) {
	p.s.rect("concrete", "", x, y, w, h)
	p.s.rect("edged", p.o.ID+"-stone", x, y, w, h)
}

// slabAtFoot reports whether a slab stands, or will stand, against the foot.
func (p *picture) slabAtFoot() bool { return p.in.Foot.Held != calc.GroundOnly }

// slabThere reports whether the slab at the foot is there in this stage.
func (p *picture) slabThere() bool {
	if !p.slabAtFoot() || p.st == nil {
		return p.slabAtFoot()
	}
	return p.st.Name == calc.Finished || p.in.Foot.Held == calc.SlabTight && p.held
}

// slabMiddle is the level of the middle of the slab at the foot.
func (p *picture) slabMiddle() float64 {
	return (p.in.Foot.SlabBase + p.in.Foot.SlabThickness/2).Inches()
}

// slabs draws the slab at the foot and the slab that ties the top.
func (p *picture) slabs() {
	if p.slabAtFoot() {
		base := p.in.Foot.SlabBase.Inches()
		top := base + p.in.Foot.SlabThickness.Inches()
		p.slab(p.slabThere(), p.faceB()+1, p.o.Width+4, top, base)
	}
	if p.in.Condition == calc.TiedToSlab {
		p.tieSlab()
	}
}

// slab draws a slab between two levels, dashed where it is not there yet.
func (p *picture) slab(there bool, left, right, top, base float64) {
	y := p.y(top)
	h := math.Max(p.y(base)-y, 3)
	if there {
		p.block(left, y, right-left, h)
	} else {
		p.s.rect("unbuilt", "", left, y, right-left, h)
	}
	p.p.inked.area(Box{X: left, Y: y, W: right - left, H: h}, 3)
}

// tieSpan returns the levels of the top and the underside of the tie slab.
func (p *picture) tieSpan() (top, base float64) {
	l := p.r.Layout
	thick := p.in.Tie.SlabThickness.Inches()
	mid := l.TieLevel.Inches()
	if mid == 0 {
		mid = math.Min(p.in.GradeA.Inches(), p.h)
	}
	return mid + thick/2, mid - thick/2
}

// tieSlab draws the slab on the retained ground, the sliding wedge under it,
// and the drag on its underside beyond the wedge. Where the wedge reaches
// beyond the picture, the slab is broken to show what lies behind.
func (p *picture) tieSlab() {
	top, base := p.tieSpan()
	there := p.held
	p.slab(there, -4, p.faceA()+1, top, base)
	wedge := p.x(-p.r.Layout.Wedge.Inches())
	yb := p.y(base)
	if breakAt := column + target + grip + 12; wedge < breakAt {
		wedge = breakAt - 8
		if there {
			p.breakMark(breakAt, p.y(top), yb)
		}
	}
	if p.r.Layout.Wedge > 0 {
		end := p.x(-p.r.Layout.Wedge.Inches())
		slope := (p.y(0) - yb) / math.Max(1, p.faceA()-end)
		x := math.Max(end, 0)
		p.s.segment("wedge", p.faceA(), p.y(0), x, p.y(0)-slope*(p.faceA()-x))
	}
	if !there || p.in.Tie.Anchor != calc.SlabDrag {
		return
	}
	ticks := &path{}
	for x := 2.0; x < wedge-4; x += 9 {
		ticks.move(x, yb+8).line(x+6, yb+2)
	}
	p.s.draw("drag", ticks)
}

// breakMark draws the mark of a piece left out across a slab.
func (p *picture) breakMark(x, top, base float64) {
	m := (top + base) / 2
	p.s.rect("gap", "", x-3, top-2, 6, base-top+4)
	q := &path{}
	for _, d := range []float64{-3, 3} {
		q.move(x+d, top-4).line(x+d, m-3).line(x+d-3, m-1).line(x+d+3, m+1).line(x+d, m+3).line(x+d, base+4)
	}
	p.s.draw("thin", q)
}
