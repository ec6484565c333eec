package draw

import (
	"math"

	"standingbeam/calc/units"
)

// dimensions draws the dimension lines with the handles at their ends.
func (p *picture) dimensions() {
	in := p.in
	foot := units.Length(0)
	step := units.Inch
	if p.sp.System != 0 {
		step = 10 * units.Millimetre
	}
	p.upright("height", column, in.Height, Handle{Min: 2 * units.Foot, Max: 20 * units.Foot, Step: step}, true)
	p.upright("grade.a", column+target, in.GradeA, Handle{Min: max(foot, in.GradeB), Max: in.Height, Step: step}, false)
	if in.Water.Standing {
		p.upright("water", column+2*target, in.Water.Level, Handle{Max: in.GradeA, Step: step}, false)
	}
	if p.twoGrounds() {
		p.upright("grade.b", p.o.Width-column, in.GradeB, Handle{Max: in.GradeA, Step: step}, false)
	}
	if p.real && !p.low() {
		p.footingLine(step)
	}
}

// upright draws the dimension from the footing's top up to a level, with its
// handle, at x.
func (p *picture) upright(id string, x float64, l units.Length, h Handle, strong bool) {
	y0, y1 := p.y(0), p.level(l)
	p.s.draw("dimension", new(path).move(x, y0).line(x, y1).move(x-5, y0+4).line(x+5, y0-4))
	reach := p.faceA()
	if x > p.faceB() {
		reach = p.faceB()
	}
	p.s.segment("witness", x, y1, reach, y1)
	h.ID, h.X, h.Y, h.Vertical, h.PxPerInch, h.Sign = id, x, y1, true, p.window.Scale, -1
	h.Now, h.Name, h.Value = l, p.sp.Word("picture.handle."+id), p.sp.Length(l)
	p.grip(h)
	p.p.inked.line(x, y0, x, y1, 2)
	p.sayUpright(id, x, y0, y1, p.sp.Length(l), strong)
}

// grip draws the dot of a handle and keeps labels off it.
func (p *picture) grip(h Handle) {
	p.handles = append(p.handles, h)
	x, y := h.X, h.Y
	p.s.circle("grip", x, y, grip)
	q := &path{}
	if h.Vertical {
		q.move(x, y-6.5).line(x, y+6.5).move(x-3, y-3.5).line(x, y-6.5).line(x+3, y-3.5).move(x-3, y+3.5).line(x, y+6.5).line(x+3, y+3.5)
	} else {
		q.move(x-6.5, y).line(x+6.5, y).move(x-3.5, y-3).line(x-6.5, y).line(x-3.5, y+3).move(x+3.5, y-3).line(x+6.5, y).line(x+3.5, y+3)
	}
	p.s.draw("grip mark", q)
	p.p.keep(Box{X: x - grip - 1, Y: y - grip - 1, W: 2*grip + 2, H: 2*grip + 2})
}

// footingLine draws the dimension under the footing: its width, and the toe's
// part of it. The handles stand outside the ends, so that they are clear of
// each other under the narrowest footing.
func (p *picture) footingLine(step units.Length) {
	y := p.window.Line
	left, right, face := p.x(-p.heel), p.x(p.t+p.toe), p.faceB()
	out := target / 2
	q := new(path).move(left-out+grip, y).line(right, y).move(left-4, y+5).line(left+4, y-5).move(right-4, y+5).line(right+4, y-5)
	f := p.in.Footing
	scale, least := p.window.Scale, f.Toe+p.in.Thickness
	if f.NoToe {
		scale, least = scale/2, p.in.Thickness
	} else {
		q.move(right, y).line(right+out-grip, y)
		if p.toe > 0 {
			q.move(face-4, y+5).line(face+4, y-5)
		}
	}
	p.s.draw("dimension", q)
	bottom := p.y(-p.foot) + 3
	if p.st != nil && p.st.Stability != nil {
		bottom += bearing
	}
	p.s.draw("witness", new(path).move(left, bottom).line(left, y).move(right, bottom).line(right, y))
	p.p.inked.line(left-out, y, right+out, y, 4)
	p.grip(Handle{ID: "footing.width", X: math.Max(column, left-out), Y: y, PxPerInch: scale, Sign: -1, Step: step,
		Now: f.Width, Min: least, Max: 20 * units.Foot, Name: p.sp.Word("picture.handle.footing.width"), Value: p.sp.Length(f.Width)})
	if !f.NoToe {
		p.grip(Handle{ID: "footing.toe", X: math.Min(p.o.Width-column, right+out), Y: y, PxPerInch: p.window.Scale, Sign: 1, Step: step,
			Now: f.Toe, Max: f.Width - p.in.Thickness, Name: p.sp.Word("picture.handle.footing.toe"), Value: p.sp.Length(f.Toe)})
	}
	p.sayFooting(left, right, face, y)
}
