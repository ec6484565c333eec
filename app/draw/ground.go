package draw

import (
	"math"

	"standingbeam/calc"
)

// defs are the patterns: earth, water, concrete, the plain band and what
// reaches beyond a band. Their colours come from their classes.
func (p *picture) defs() {
	id := p.o.ID
	p.s.raw(`<defs><pattern id="` + id + `-earth" width="28" height="28" patternUnits="userSpaceOnUse">` +
		`<path class="p-hatch" d="M1 9L9 1M3 13L13 3M7 15L15 7M15 27L23 19M17 29L27 19M21 29L29 21M17 3L23 9M21 1L27 7M3 17L9 23M1 21L7 27"/></pattern>` +
		`<pattern id="` + id + `-stone" width="17" height="17" patternUnits="userSpaceOnUse">` +
		`<path class="p-stone" d="M3 4h.1M11 2h.1M14 9h.1M6 12h.1M2 15h.1M10 7h.1"/><path class="p-pebble" d="M10 13l2-2.4 1.2 2.6zM4 8.6l1.5-1.4.5 1.8z"/></pattern>` +
		`<pattern id="` + id + `-plain" width="7" height="7" patternUnits="userSpaceOnUse"><path class="p-rule" d="M-1 4L4 -1M2 8L8 2"/></pattern>` +
		`<pattern id="` + id + `-over" width="5" height="5" patternUnits="userSpaceOnUse"><path class="p-cross" d="M-1 1L1 -1M0 5L5 0M4 6L6 4M-1 4L1 6M0 0L5 5M4 -1L6 1"/></pattern>` +
		`</defs>`)
}

// gradeA and gradeB are the levels of the ground in the stage that is drawn:
// what pushes tells how high it stands.
func (p *picture) grades() (a, b float64) {
	a, b = p.in.GradeA.Inches(), p.in.GradeB.Inches()
	if p.st != nil && p.st.Name != calc.Finished && len(p.push[0].blocks) > 0 {
		a, b = p.push[0].top, p.push[1].top
	}
	return math.Min(a, p.h), math.Min(b, p.h)
}

// beyond is how far the earth reaches past the picture's edges: a page that has
// more room than the picture takes lets it be seen.
const beyond = 900

// ground draws the earth on both sides and under the footing, standing water
// and a load on the ground.
func (p *picture) ground() {
	a, b := p.grades()
	w, h := p.o.Width, p.o.Height
	b = math.Max(b, p.in.Foot.SlabBase.Inches())
	e := &path{}
	e.move(-beyond, p.y(a)).line(p.faceA(), p.y(a)).line(p.faceA(), p.y(0)).line(p.x(-p.heel), p.y(0)).
		line(p.x(-p.heel), p.y(-p.foot)).line(p.x(p.t+p.toe), p.y(-p.foot)).line(p.x(p.t+p.toe), p.y(0)).
		line(p.faceB(), p.y(0)).line(p.faceB(), p.y(b)).line(w+beyond, p.y(b)).line(w+beyond, h+beyond).line(-beyond, h+beyond).close()
	p.s.draw("earth", e)
	p.s.drawIn("hatched", p.o.ID+"-earth", e)
	p.water(a)
	s := &path{}
	s.move(-beyond, p.y(a)).line(p.faceA(), p.y(a))
	if !p.slabAtFoot() {
		s.move(p.faceB(), p.y(b)).line(w+beyond, p.y(b))
	}
	p.s.draw("surface", s)
	p.p.inked.line(0, p.y(a), p.faceA(), p.y(a), 3)
	p.p.inked.line(p.faceB(), p.y(b), w, p.y(b), 3)
	p.heelSoil(a)
	p.surcharge(a)
}

// heelSoil marks the block of soil that stands on the heel of a free wall and
// holds it down.
func (p *picture) heelSoil(a float64) {
	if p.st == nil || p.st.Stability == nil || p.heel*p.window.Scale < 12 {
		return
	}
	x := p.x(-p.heel)
	p.s.rect("rider", "", x, p.y(a), p.faceA()-x, p.y(0)-p.y(a))
	p.s.segment("plane", x, p.y(a), x, p.y(-p.foot))
}

// water draws standing water in the ground of side A: a tint, the standard
// triangle on its surface and three waves under it.
func (p *picture) water(grade float64) {
	if !p.in.Water.Standing {
		return
	}
	level := math.Min(p.in.Water.Level.Inches(), grade)
	y := p.y(level)
	bottom := &path{}
	bottom.move(0, y).line(p.faceA(), y).line(p.faceA(), p.y(0)).line(p.x(-p.heel), p.y(0)).
		line(p.x(-p.heel), p.y(-p.foot)).line(0, p.y(-p.foot)).close()
	p.s.draw("wet", bottom)
	p.s.segment("water level", 0, y, p.faceA(), y)
	x := p.waterMark()
	p.s.draw("water tip", new(path).move(x, y-1).line(x-7, y-12).line(x+7, y-12).close())
	p.s.draw("water wave", new(path).move(x-8, y+4).line(x+8, y+4).move(x-5, y+8).line(x+5, y+8).move(x-2, y+12).line(x+2, y+12))
	p.p.inked.area(Box{X: x - 8, Y: y - 12, W: 16, H: 24}, 30)
}

// waterMark is where the triangle of the water's level stands.
func (p *picture) waterMark() float64 {
	return math.Max(10, math.Min(column+target/2, p.faceA()-p.window.Back-20))
}

// surcharge draws a load on the ground of side A as a row of arrows.
func (p *picture) surcharge(a float64) {
	load := p.in.Surcharge
	if load.Dead+load.Live <= 0 || p.in.Condition == calc.TiedToSlab {
		return
	}
	const depth = 16.0
	y := p.y(a) - 2
	left, right := 4.0, p.faceA()-4
	n := int((right - left) / 26)
	if n < 1 {
		return
	}
	shafts, heads := &path{}, &path{}
	shafts.move(left, y-depth).line(right, y-depth)
	for i := 0; i <= n; i++ {
		x := left + (right-left)*float64(i)/float64(n)
		shafts.move(x, y-depth).line(x, y-4)
		heads.head(x, y, 0, 1, 6)
	}
	p.s.draw("push shaft", shafts)
	p.s.draw("push tip", heads)
	p.p.inked.area(Box{X: left, Y: y - depth, W: right - left, H: depth}, 3)
	p.saySurcharge(left, right, y-depth)
}
