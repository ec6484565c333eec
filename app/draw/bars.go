package draw

import (
	"math"

	"standingbeam/calc"
)

// Cover that bars keep where the answer does not say it, in inches.
const (
	endCover = 2.0 // the wall's top
	earth    = 3.0 // concrete cast against ground (ACI 318-19 Table 20.5.1.3.1)
)

// diameter of a bar in inches: its number in eighths.
func diameter(b *calc.Bar) float64 { return float64(b.Size) / 8 }

// place is how far from face A the middle of a bar of the wall lies.
func (p *picture) barPlace(b *calc.Bar) float64 {
	d := b.Depth.Inches()
	switch b.Face {
	case calc.FaceA:
		if d > 0 {
			return p.t - d
		}
		return b.Cover.Inches() + diameter(b)/2
	case calc.FaceB:
		if d > 0 {
			return d
		}
		return p.t - b.Cover.Inches() - diameter(b)/2
	}
	if d > 0 {
		return d
	}
	return p.t / 2
}

// bars draws the steel where it lies: lines along the section, dots across it.
func (p *picture) bars() {
	v := p.first(calc.VerticalBar)
	va := p.first(calc.SoilVerticalBar)
	d := p.first(calc.DowelBar)
	for i := range p.r.Bars {
		b := &p.r.Bars[i]
		switch b.Role {
		case calc.VerticalBar, calc.SoilVerticalBar:
			p.vertical(b)
		case calc.HorizontalBar, calc.TopBar:
			p.horizontal(b, v, va)
		case calc.ToeBar, calc.HeelBar:
			p.acrossFooting(b)
		case calc.FootingBar:
			p.alongFooting(b)
		case calc.TieBar:
			p.tieBar(b)
		}
	}
	p.dowel(d, v, va)
	p.sayBars(v, va, d)
}

func (p *picture) first(role calc.BarRole) *calc.Bar {
	for i := range p.r.Bars {
		if p.r.Bars[i].Role == role {
			return &p.r.Bars[i]
		}
	}
	return nil
}

func (p *picture) vertical(b *calc.Bar) {
	x := p.x(p.barPlace(b))
	p.s.segment("bar", x, p.y(math.Max(p.h-endCover, p.h/2)), x, p.y(0)-1)
}

// horizontal draws the horizontals as dots inside the verticals they are tied
// to.
func (p *picture) horizontal(b, v, va *calc.Bar) {
	x := p.barPlace(b)
	for _, o := range []*calc.Bar{v, va} {
		if o == nil || (o.Face != b.Face && o == va) {
			continue
		}
		step := (diameter(o) + diameter(b)) / 2
		if at := p.barPlace(o); at > p.t/2 {
			x = at - step
		} else {
			x = at + step
		}
		break
	}
	r := math.Max(2.4, diameter(b)*p.window.Scale/2)
	dots := &path{}
	for _, y := range p.levels(b) {
		cx, cy := p.x(x), p.y(y)
		dots.move(cx-r, cy).arc(r, cx+r, cy).arc(r, cx-r, cy).close()
	}
	p.s.draw("dots", dots)
}

// levels are the heights of a set of horizontals: those listed, else counted
// up by the spacing from half a space above the footing.
func (p *picture) levels(b *calc.Bar) []float64 {
	if len(b.Levels) > 0 {
		out := make([]float64, 0, len(b.Levels))
		for _, l := range b.Levels {
			out = append(out, math.Min(math.Max(l.Inches(), 1), p.h-1))
		}
		return out
	}
	s := b.Spacing.Inches()
	if s < 2 {
		return nil
	}
	var out []float64
	for y := math.Min(s/2, p.h/2); y < p.h-endCover && len(out) < 60; y += s {
		out = append(out, y)
	}
	return out
}

// dowel draws the bar from the footing into the wall with its hook. Where it
// lies in the line of a vertical it is drawn beside it.
func (p *picture) dowel(b, v, va *calc.Bar) {
	if b == nil {
		return
	}
	x, bottom := p.dowelX(b, v, va), p.dowelBottom(b)
	tail := b.Hook.Inches() * p.window.Scale
	// A hook turns toward the toe; the end of the footing stops it.
	end := math.Min(x+tail, p.x(p.t+p.toe-endCover))
	q := new(path).move(x, p.level(min(b.Up, p.in.Height-1))).line(x, p.y(-bottom))
	if tail > 2 && end > x+2 {
		q.line(end, p.y(-bottom))
	}
	p.s.draw("bar starter", q)
}

func (p *picture) dowelX(b, v, va *calc.Bar) float64 {
	x := p.x(p.barPlace(b))
	for _, o := range []*calc.Bar{v, va} {
		if o == nil {
			continue
		}
		if at := p.x(p.barPlace(o)); math.Abs(at-x) < 4 {
			if at > (p.faceA()+p.faceB())/2 {
				return at - 4
			}
			return at + 4
		}
	}
	return x
}

func (p *picture) dowelBottom(b *calc.Bar) float64 {
	if b.Down > 0 {
		return math.Min(b.Down.Inches(), p.foot-1)
	}
	return math.Max(1, p.foot-earth)
}
