package sheet

import (
	"math"

	"standingbeam/calc"
)

// cut is the level cut through the wall just above the footing: soil side
// above, open side below, with the cover of the upright bars. It takes a width
// in points.
func (s *scene) cut(scale, width float64) *figure {
	v := &figure{name: "cut", scale: scale}
	s.coverSizes(v)
	left := math.Min(-v.pt(18), v.bounds().x0)
	length := math.Max(v.pt(width-2*markRadius-16)+left, v.pt(80))
	// y is upward: face A, x = 0, lies at y = t.
	y := func(x float64) float64 { return s.t - x }
	v.line(concrete, heavy, point{0, 0}, point{length, 0})
	v.line(concrete, heavy, point{0, s.t}, point{length, s.t})
	v.breakLine(point{0, 0}, point{0, s.t})
	v.breakLine(point{length, 0}, point{length, s.t})
	v.stipple(box{0, 0, length, s.t})
	v.earth2(length, s.t)
	if h := s.find(calc.HorizontalBar); h != nil {
		v.bar(h.db, []vertex{{point: point{0, y(h.x)}}, {point: point{length, y(h.x)}}})
	}
	var notes []callout
	first := length / 2
	for i := range s.bars {
		b := &s.bars[i]
		x := first
		switch b.Role {
		case calc.VerticalBar, calc.SoilVerticalBar:
		case calc.DowelBar:
			x += v.pt(1)
			if o := s.beside(b); o != nil {
				x = first + (o.db+b.db)/2 + v.pt(0.6)
			}
		case calc.HorizontalBar:
			notes = append(notes, callout{mark: b.mark, target: point{length - v.pt(22), y(b.x)}})
			continue
		default:
			continue
		}
		at := point{x, y(b.x)}
		c := circle{layer: steel, pen: medium, center: at, r: b.db / 2, least: 2, fill: ink}
		if b.Role == calc.DowelBar {
			c.fill = paper
		}
		v.circles = append(v.circles, c)
		notes = append(notes, callout{mark: b.mark, target: point{at.x + v.pt(1.4), at.y}})
	}
	v.say(text{at: point{0, s.t + v.pt(bandDepth+2)}, words: s.sp.Face(calc.FaceA), h: 1, v: 1})
	v.say(text{at: point{0, -v.pt(2)}, words: s.sp.FaceFirst(calc.FaceB), h: 1, v: -1})
	v.column(length+v.pt(14), -v.pt(2), s.t+v.pt(100), notes, nil)
	s.caption(v, s.sp.Word("sheet.view.cut"), left)
	return v
}

// earth2 draws the ground against the soil side of the level cut.
func (v *figure) earth2(length, level float64) {
	for x := v.pt(2); x+v.pt(bandDepth) < length; x += v.pt(8) {
		v.line(hatching, thin, point{x, level}, point{x + v.pt(bandDepth), level + v.pt(bandDepth)})
	}
}

// beside is the vertical that a dowel is tied to, nil when they lie apart.
func (s *scene) beside(d *placed) *placed {
	for _, role := range verticals {
		if o := s.find(role); o != nil && math.Abs(o.x-d.x) < (o.db+d.db)/2-1e-9 {
			return o
		}
	}
	return nil
}

// coverSizes measures the cover of the upright bars from the nearer face.
func (s *scene) coverSizes(v *figure) {
	var runs []run
	var a, b *placed
	for i := range s.bars {
		p := &s.bars[i]
		switch p.Role {
		case calc.VerticalBar, calc.SoilVerticalBar, calc.DowelBar:
			if p.x > s.t/2+1e-9 && (b == nil || p.x+p.db/2 > b.x+b.db/2) {
				b = p
			}
			if p.x < s.t/2-1e-9 && (a == nil || p.x-p.db/2 < a.x-a.db/2) {
				a = p
			}
		}
	}
	if b != nil {
		c := s.t - b.x - b.db/2
		runs = append(runs, run{0, c, s.sp.Size(inches(c))})
	}
	if a != nil {
		c := a.x - a.db/2
		runs = append(runs, run{s.t - c, s.t, s.sp.Size(inches(c))})
	}
	v.upright(-v.pt(14), 0, runs)
}
