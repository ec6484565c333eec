package sheet

import (
	"math"

	"standingbeam/app/letters"
	"standingbeam/calc"
)

// elevation shows a stretch of the wall and its footing, seen from the open
// side, with the bars as if the concrete were glass. It takes a width in points.
func (s *scene) elevation(scale, width float64) *figure {
	v := &figure{name: "elevation", scale: scale}
	s.levelSizes(v)
	left := math.Min(-v.pt(18), v.bounds().x0)
	length := math.Max(v.pt(width-2*markRadius-16)+left, v.pt(40))
	bottom := 0.0
	if s.said {
		bottom = -s.tf
		v.line(concrete, heavy, point{0, bottom}, point{length, bottom})
		v.line(concrete, medium, point{0, 0}, point{length, 0})
	} else {
		v.line(concrete, heavy, point{0, 0}, point{length, 0})
	}
	v.line(concrete, heavy, point{0, s.h}, point{length, s.h})
	v.breakLine(point{0, bottom}, point{0, s.h})
	v.breakLine(point{length, bottom}, point{length, s.h})
	s.elevationWall(v, length)
	s.elevationFoot(v, length)
	s.spacingSizes(v, length)
	s.caption(v, s.sp.Sentence("sheet.view.elevation", s.sp.Face(calc.FaceB)), left)
	return v
}

// upright are the places of a set of upright bars along a stretch, from half a
// space in. Sets that would cover each other stand a little apart.
func (s *scene) upright(v *figure, b *placed, length float64) (out []float64) {
	spacing := b.Spacing.Inches()
	if spacing < 2 {
		return nil
	}
	aside := 0.0
	switch b.Role {
	case calc.SoilVerticalBar:
		aside = v.pt(4)
	case calc.DowelBar:
		aside = v.pt(2.6)
	}
	for x := math.Min(spacing/2, length/3) + aside; x < length && len(out) < 200; x += spacing {
		out = append(out, x)
	}
	return out
}

// elevationWall draws the wall's bars, and marks them over and beside it.
func (s *scene) elevationWall(v *figure, length float64) {
	var notes []callout
	for i := range s.bars {
		b := &s.bars[i]
		at := s.upright(v, b, length)
		low, high := 0.0, b.length
		switch b.Role {
		case calc.VerticalBar, calc.SoilVerticalBar:
			v.topMark(b.mark, at, s.h, b.length)
		case calc.DowelBar:
			low, high = b.db/2-b.Down.Inches(), b.line[0].y
			notes = lastNote(notes, b, at, high*0.75)
		case calc.HorizontalBar, calc.TopBar:
			for _, y := range b.levels {
				v.fineBar(b, []vertex{{point: point{0, y}}, {point: point{length, y}}})
			}
			notes = append(notes, callout{mark: b.mark, target: point{length, b.levels[len(b.levels)/2]}})
			continue
		case calc.TieBar:
			for _, x := range at {
				v.dot(point{x, s.brace}, b.db)
			}
			notes = lastNote(notes, b, at, s.brace)
			continue
		default:
			continue
		}
		for _, x := range at {
			v.fineBar(b, []vertex{{point: point{x, low}}, {point: point{x, high}}})
		}
	}
	v.column(length+v.pt(14), 0, s.h+v.pt(220), notes, nil)
}

// fineBar draws one of a set of bars, thin enough that the set stays a set of
// lines.
func (v *figure) fineBar(b *placed, at []vertex) {
	v.bar(b.db, at)
	if b.Spacing > 0 {
		p := &v.paths[len(v.paths)-1]
		p.pen = math.Max(thin, math.Min(barPen, v.points(b.Spacing.Inches())*0.22))
	}
}

// lastNote marks the last of a set of bars.
func lastNote(notes []callout, b *placed, at []float64, level float64) []callout {
	if len(at) == 0 {
		return notes
	}
	return append(notes, callout{mark: b.mark, target: point{at[len(at)-1], level}})
}

// topMark writes the mark of upright bars over the wall's top.
func (v *figure) topMark(mark string, at []float64, top, end float64) {
	if len(at) == 0 {
		return
	}
	x := at[len(at)/2]
	if mark == string(calc.SoilVerticalBar) {
		x = at[0]
	}
	m := point{x + v.pt(6), top + v.pt(markRadius+7)}
	v.leader(point{m.x - v.pt(2), m.y - v.pt(markRadius)}, point{x, end - v.pt(3)})
	v.mark(m, mark)
}

// spacingSizes measures one space of each set of upright bars under the
// drawing: the first at its left end, another at its right end.
func (s *scene) spacingSizes(v *figure, length float64) {
	level := -v.pt(16)
	from := 0.0
	if s.said {
		from, level = -s.tf, level-s.tf
	}
	done, taken := map[string]bool{}, -v.pt(30)
	for _, role := range []calc.BarRole{calc.VerticalBar, calc.SoilVerticalBar, calc.DowelBar} {
		b := s.find(role)
		if b == nil || len(done) > 1 || done[s.sp.Spacing(b.Spacing)] {
			continue
		}
		at := s.upright(v, b, length)
		words := s.sp.Sentence("sheet.mark-at", b.mark, s.sp.Spacing(b.Spacing))
		half := v.pt(letters.Width(words, typeSize, false)/2 + 3)
		i := 1
		for len(done) > 0 && i+1 < len(at) && (at[i]+at[i+1])/2+half < length {
			i++
		}
		if i >= len(at) || (at[i-1]+at[i])/2-half < taken {
			continue
		}
		v.across(level, from, []run{{at[i-1], at[i], words}})
		done[s.sp.Spacing(b.Spacing)], taken = true, (at[i-1]+at[i])/2+half
	}
}

func (s *scene) elevationFoot(v *figure, length float64) {
	if !s.said {
		return
	}
	var notes []callout
	for i := range s.bars {
		b := &s.bars[i]
		switch b.Role {
		case calc.FootingBar:
			y := b.dots[0].y
			v.bar(b.db, []vertex{{point: point{0, y}}, {point: point{length, y}}})
			notes = append(notes, callout{mark: b.mark, target: point{length, y}})
		case calc.ToeBar, calc.HeelBar:
			at := s.upright(v, b, length)
			for _, x := range at {
				v.dot(point{x, b.line[0].y}, b.db)
			}
			notes = lastNote(notes, b, at, b.line[0].y)
		}
	}
	v.column(length+v.pt(14), -s.tf-v.pt(220), -v.pt(1), notes, nil)
}

// levelSizes measures where the horizontals lie.
func (s *scene) levelSizes(v *figure) {
	b := s.find(calc.HorizontalBar)
	if b == nil || len(b.levels) == 0 {
		return
	}
	var runs []run
	if b.Count > 0 {
		from := 0.0
		for i := len(b.levels) - 1; i >= 0; i-- {
			runs = append(runs, run{from, b.levels[i], s.sp.Size(inches(b.levels[i] - from))})
			from = b.levels[i]
		}
		runs = append(runs, run{from, s.h, s.sp.Size(inches(s.h - from))})
	} else {
		runs = append(runs, run{0, b.levels[0], s.sp.Size(inches(b.levels[0]))})
		if len(b.levels) > 1 {
			runs = append(runs, run{b.levels[0], b.levels[1], s.sp.Sentence("sheet.mark-at", b.mark, s.sp.Spacing(b.Spacing))})
		}
	}
	v.upright(-v.pt(15), 0, runs)
}
