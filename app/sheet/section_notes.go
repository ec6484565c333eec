package sheet

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

var verticals = []calc.BarRole{calc.VerticalBar, calc.SoilVerticalBar}

const laterSlab = calc.SlabLater

// tallWall is the height on paper, in points, from which on a wall has room for
// the note of its slab beside it.
const tallWall = 150

// sectionNotes writes the notes of the section: those of the wall in a column
// beside it, those of its foot beside the footing.
func (s *scene) sectionNotes(v *figure, left float64) {
	wallX, footX := s.t+v.pt(columnGap), s.t+s.toe+v.pt(footGap)
	var wall, foot []callout
	for i := range s.bars {
		b := &s.bars[i]
		switch b.Role {
		case calc.FootingBar, calc.ToeBar, calc.HeelBar:
			foot = append(foot, s.footNote(b))
		case calc.DowelBar:
			wall = append(wall, s.wallNote(b))
			if s.said {
				foot = append(foot, s.hookNote(v, b))
			}
		default:
			wall = append(wall, s.wallNote(b))
		}
	}
	b := s.in.GradeB.Inches()
	low, high := math.Max(0, b)+v.pt(4), s.top()+v.pt(220)
	var blocked []span
	if b > 0 {
		blocked = append(blocked, span{b - v.pt(bandDepth+1), b + v.pt(2)})
		low = v.pt(4)
		at := point{s.t + v.pt(9), b}
		wall = append(wall, callout{lines: wrapped(columnWidth, s.sp.Sentence("sheet.ground-at", s.sp.Length(s.in.GradeB))), target: at})
	}
	footHigh := -v.pt(bandDepth + 2)
	if s.slab != nil {
		note := callout{lines: wrapped(footWidth, s.slabWords())}
		blocked = append(blocked, span{s.slab.y0 - v.pt(2), s.slab.y1 + v.pt(2)})
		low, footHigh = v.pt(4), math.Min(0, s.slab.y0)-v.pt(2)
		if s.slab.y0 > v.pt(30) || v.points(s.h) > tallWall {
			note.target = point{wallX - v.pt(7), s.slab.y1 - v.pt(1)}
			wall = append(wall, note)
		} else {
			note.target = point{footX - v.pt(7), s.slab.y0 + v.pt(3)}
			foot = append(foot, note)
		}
	}
	if s.floored {
		floor := s.floorTop()
		blocked = append(blocked, span{floor - boardDepth - joistDepth - v.pt(2), floor + v.pt(2)})
		wall = append(wall, callout{lines: wrapped(columnWidth, s.sp.Sentence("sheet.floor-takes", s.reaction())), target: point{wallX - v.pt(9), floor}})
	}
	v.column(wallX, low, high, wall, blocked)
	v.column(footX, -s.tf-v.pt(240), footHigh, foot, nil)
	s.groundNotes(v, left)
}

// wallNote says size, spacing and side of the wall's bars.
func (s *scene) wallNote(b *placed) callout {
	c := callout{mark: b.mark, target: point{b.x, 0}}
	var about string
	switch b.Role {
	case calc.VerticalBar, calc.SoilVerticalBar:
		c.target.y = s.h * 0.68
		about = s.sideAndCover(b)
	case calc.DowelBar:
		c.target = b.line[0].point
		c.target.y *= 0.8
		if line := s.besideVertical(b); len(line) > 0 {
			c.target.x = line[0].x
		}
		about = s.sp.Sentence("sheet.side-up", s.sp.Face(b.Face), s.sp.AtLeast(inches(b.line[0].y)))
	case calc.TieBar:
		c.target = point{b.HookAvail.Inches() / 2, s.brace}
		about = s.sp.Sentence("sheet.into-slab", s.sp.AtLeast(b.Length))
	case calc.TopBar:
		c.target = b.dots[len(b.dots)-1]
		about = s.sp.Word("sheet.at-top")
	default:
		c.target = s.nearest(b, s.h*0.45)
		about = s.sp.Face(b.Face)
		if b.Lap > 0 {
			about = s.sp.Sentence("sheet.side-lap", about, s.sp.AtLeast(b.Lap))
		}
	}
	c.lines = wrapped(columnWidth-2*markRadius-3, s.sp.Bars(b.Bar), about)
	return c
}

func (s *scene) sideAndCover(b *placed) string {
	if b.Face == calc.Centre {
		return s.sp.Face(b.Face)
	}
	return s.sp.Sentence("sheet.side-cover", s.sp.Face(b.Face), s.sp.Size(b.Cover))
}

// nearest is the bar of a set that lies nearest a level.
func (s *scene) nearest(b *placed, level float64) point {
	best := point{b.x, level}
	far := math.Inf(1)
	for _, p := range b.dots {
		if d := math.Abs(p.y - level); d < far {
			best, far = p, d
		}
	}
	return best
}

// footNote says size, spacing and cover of the footing's bars.
func (s *scene) footNote(b *placed) callout {
	c := callout{mark: b.mark}
	if b.Role == calc.FootingBar {
		c.target = b.dots[len(b.dots)-1]
	} else {
		a, z := b.line[0].point, b.line[1].point
		c.target = point{math.Max(a.x, z.x)*0.8 + math.Min(a.x, z.x)*0.2, a.y}
	}
	where := "sheet.bottom-cover"
	if b.Role == calc.HeelBar {
		where = "sheet.top-cover"
	}
	parts := []string{s.sp.Bars(b.Bar), s.sp.Sentence(where, s.sp.Size(b.Cover))}
	if b.flat {
		parts = append(parts, s.sp.Word("sheet.hook-flat"))
	}
	c.lines = wrapped(footWidth-2*markRadius-3, parts...)
	return c
}

// hookNote says how the dowels are hooked in the footing.
func (s *scene) hookNote(v *figure, d *placed) callout {
	line := s.besideVertical(d)
	end := line[len(line)-1].point
	before := line[len(line)-2].point
	c := callout{mark: d.mark, target: point{(end.x*2 + before.x) / 3, (end.y*2 + before.y) / 3}}
	parts := []string{s.sp.Sentence("sheet.hook-leg", s.sp.AtLeast(inches(d.legs[1])))}
	if len(s.dowelRuns(v)) < 2 { // no dimension says it
		parts = append(parts, s.sp.Sentence("sheet.into-footing", s.sp.Size(d.Down)))
	}
	if d.flat {
		parts = append(parts, s.sp.Word("sheet.hook-along"))
	}
	c.lines = wrapped(footWidth-2*markRadius-3, parts...)
	return c
}

func (s *scene) slabWords() string {
	id := "sheet.slab-tight"
	if s.in.Foot.Held == laterSlab {
		id = "sheet.slab-later"
	}
	return s.sp.Sentence(id, s.sp.Size(inches(s.slab.y1-s.slab.y0)))
}

// groundNotes names the ground, or the slab on it, where the dowels leave room.
func (s *scene) groundNotes(v *figure, left float64) {
	up := 0.0
	if d := s.find(calc.DowelBar); d != nil {
		up = d.line[0].y + v.pt(12)
	}
	if a := s.in.GradeA.Inches(); s.tie != nil && s.tie.y0 > up {
		v.say(text{at: point{left, s.tie.y1 + v.pt(2)}, words: s.sp.Sentence("sheet.tie-slab", s.sp.Size(s.in.Tie.SlabThickness)), h: 1, v: 1})
	} else if s.tie == nil && a > up {
		v.say(text{at: point{left, a + v.pt(1)}, words: s.sp.Word("sheet.ground"), h: 1, v: 1})
	}
}

// reaction is what the top must take, service level, "–" where it is not known.
func (s *scene) reaction() string {
	for _, st := range s.r.Stages {
		if st.Name == calc.Finished && len(st.Reactions) > 1 {
			return s.sp.Demand(units.Of(st.Reactions[len(st.Reactions)-1].Service, units.LineForce))
		}
	}
	return "–"
}
