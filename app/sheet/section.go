package sheet

import (
	"math"

	"standingbeam/calc"
)

// Room around the section, in points.
const (
	groundLeft  = 56.0  // of ground left of the wall
	columnGap   = 20.0  // from the wall to the notes
	columnWidth = 128.0 // of the notes, with their marks
	footGap     = 16.0  // from the footing to its notes
	footWidth   = 108.0
)

// section is the cut across the wall at a scale.
func (s *scene) section(scale float64) *figure {
	v := &figure{name: "section", scale: scale}
	left := -math.Max(math.Max(s.heel+v.pt(14), v.pt(groundLeft)), v.pt(v.leftOf(s.dowelRuns(v)))-s.dowelLine(v))
	if t := s.find("T"); t != nil {
		left = math.Min(left, -t.Length.Inches()-v.pt(12))
	}
	right := math.Max(s.t+v.pt(columnGap+columnWidth), s.t+s.toe+v.pt(footGap+footWidth))
	s.sectionGround(v, left, right)
	s.sectionConcrete(v, left, right)
	s.sectionFloor(v, right)
	s.sectionSteel(v)
	s.sectionNotes(v, left)
	s.sectionSizes(v, left)
	s.caption(v, s.sp.Word("sheet.view.section"), left)
	return v
}

// sectionGround draws the ground of both sides and standing water.
func (s *scene) sectionGround(v *figure, left, right float64) {
	a, b := s.in.GradeA.Inches(), s.in.GradeB.Inches()
	if a > 0 {
		v.earth(left, 0, a)
	}
	if s.slab == nil || b > s.slab.y1 {
		from := s.t
		if b-v.pt(bandDepth) < 0 {
			from = s.t + s.toe + v.pt(3)
			v.line(ground, medium, point{s.t, b}, point{from, b})
		}
		v.earth(from, math.Max(right-v.pt(20), from+v.pt(24)), b)
	}
	if y := s.waterLevel(); y > 0 {
		x := left + v.pt(16)
		v.line(water, thin, point{left, y}, point{0, y})
		v.area(water, medium, paper, point{x, y}, point{x - v.pt(4), y + v.pt(6.5)}, point{x + v.pt(4), y + v.pt(6.5)})
		v.line(water, thin, point{x - v.pt(7), y - v.pt(2.5)}, point{x + v.pt(7), y - v.pt(2.5)})
		v.line(water, thin, point{x - v.pt(4), y - v.pt(5)}, point{x + v.pt(4), y - v.pt(5)})
	}
}

// sectionConcrete draws what is cut: wall, footing, slabs.
func (s *scene) sectionConcrete(v *figure, left, right float64) {
	wall := box{0, 0, s.t, s.h}
	foot := box{-s.heel, -s.tf, s.t + s.toe, 0}
	v.rect(concrete, heavy, wall)
	v.stipple(wall)
	if s.said {
		v.rect(concrete, heavy, foot)
		v.stipple(foot)
	} else {
		v.rect(hidden, medium, foot)
	}
	if s.slab != nil {
		end := right - v.pt(10)
		v.slab(*s.slab, s.t, end, s.in.Foot.Held == laterSlab)
	}
	if s.tie != nil {
		v.slab(*s.tie, 0, left, false)
	}
}

// slab draws a slab that begins at the wall and leaves off at an end.
func (v *figure) slab(b box, from, end float64, later bool) {
	l, pen := concrete, heavy
	if later {
		l, pen = hidden, medium
	}
	v.line(l, pen, point{end, b.y0}, point{from, b.y0}, point{from, b.y1}, point{end, b.y1})
	v.breakLine(point{end, b.y0}, point{end, b.y1})
	if !later {
		v.stipple(box{math.Min(from, end), b.y0, math.Max(from, end), b.y1})
	}
}

// sectionFloor draws the floor that holds the top.
func (s *scene) sectionFloor(v *figure, right float64) {
	if !s.floored {
		return
	}
	y, from := s.floorTop(), 0.0
	joist := y - boardDepth
	if s.hung {
		from = s.t
	} else {
		v.rect(timber, medium, box{0, s.h, math.Min(sillWidth, s.t), s.h + sillDepth})
	}
	end := right - v.pt(10)
	v.line(timber, medium, point{end, y}, point{from, y}, point{from, joist - joistDepth}, point{end, joist - joistDepth})
	v.line(timber, thin, point{from, joist}, point{end, joist})
	v.line(timber, thin, point{from + 1.5, joist}, point{from + 1.5, joist - joistDepth})
	v.breakLine(point{end, joist - joistDepth}, point{end, y})
}

// sectionSteel draws the bars where they lie.
func (s *scene) sectionSteel(v *figure) {
	for _, b := range s.bars {
		line := b.line
		if b.Role == "D" {
			line = s.besideVertical(&b)
		}
		if len(line) > 0 {
			v.bar(b.db, line)
		}
		if b.flat {
			end := line[len(line)-1].point
			v.circles = append(v.circles, circle{layer: steel, pen: medium, center: end, r: b.db, least: 2.4, fill: paper})
		}
		for _, p := range b.dots {
			v.dot(p, b.db)
		}
	}
}

// besideVertical draws a dowel that lies in the line of a vertical one bar
// beside it, so that both are seen. They are tied side by side along the wall.
func (s *scene) besideVertical(d *placed) []vertex {
	for _, role := range verticals {
		o := s.find(role)
		if o == nil || math.Abs(o.x-d.x) > (o.db+d.db)/2-1e-9 {
			continue
		}
		step := (o.db + d.db) / 2
		if d.x > s.t/2 {
			step = -step
		}
		out := append([]vertex(nil), d.line...)
		for i := range out {
			out[i].x += step
		}
		return out
	}
	return d.line
}

// sectionSizes draws the dimensions: the heights left of the wall, the footing
// under everything that is said of it.
func (s *scene) sectionSizes(v *figure, left float64) {
	v.upright(s.dowelLine(v), 0, s.dowelRuns(v))
	var fill []run
	if s.said {
		fill = append(fill, run{-s.tf, 0, s.sp.Size(inches(s.tf))})
	}
	if a := s.in.GradeA.Inches(); a > 0 {
		fill = append(fill, run{0, a, s.sp.Length(s.in.GradeA)})
	}
	chains := [][]run{fill}
	if y := s.waterLevel(); y > 0 {
		chains = append(chains, []run{{0, y, s.sp.Sentence("sheet.water", s.sp.Length(inches(y)))}})
	}
	chains = append(chains, []run{{0, s.h, s.sp.Length(inches(s.h))}})
	x := left - v.pt(8)
	for _, c := range chains {
		v.upright(x, 0, c)
		x -= v.pt(v.leftOf(c) + 4)
	}
	s.footSizes(v)
}

// waterLevel is the level of standing water against the wall, 0 for none.
func (s *scene) waterLevel() float64 {
	if !s.in.Water.Standing {
		return 0
	}
	return math.Min(s.in.Water.Level.Inches(), s.in.GradeA.Inches())
}

// footSizes measures the footing, under the leaders to its bars.
func (s *scene) footSizes(v *figure) {
	end := s.t + s.toe
	y := -s.tf - v.pt(14)
	for _, l := range v.leaders {
		a, b := l[0], l[1]
		x := end + v.pt(8)
		if b.y < 0 && a.x > x && b.x < end {
			y = math.Min(y, a.y+(b.y-a.y)*(a.x-x)/(a.x-b.x)-v.pt(13))
		}
	}
	if !s.said {
		v.across(y, -s.tf, []run{{0, s.t, s.sp.Size(inches(s.t))}})
		return
	}
	var runs []run
	for _, r := range [][2]float64{{-s.heel, 0}, {0, s.t}, {s.t, end}} {
		if r[1]-r[0] > 0.05 {
			runs = append(runs, run{r[0], r[1], s.sp.Size(inches(r[1] - r[0]))})
		}
	}
	v.across(y, -s.tf, runs)
	if len(runs) < 2 {
		return
	}
	y -= v.pt(14)
	if v.tightRun(runs) {
		y -= v.pt(9)
	}
	v.across(y, -s.tf, []run{{-s.heel, end, s.sp.Size(inches(s.width()))}})
}

// insideHeel is the least heel, in points, over which the dowels' dimension
// line stands; else it stands left of the footing.
const insideHeel = 42.0

// dowelLine is where the dowels' dimension line stands.
func (s *scene) dowelLine(v *figure) float64 {
	if s.heel < v.pt(insideHeel) {
		return -v.pt(14) - s.heel
	}
	return -v.pt(14)
}

// dowelRuns are the dowels' length up into the wall and, where the line lies
// outside the footing, down into it.
func (s *scene) dowelRuns(v *figure) (runs []run) {
	d := s.find(calc.DowelBar)
	if d == nil {
		return nil
	}
	up, word := d.line[0].y, "sheet.up"
	if b := s.find(calc.VerticalBar); b != nil && b.Lap > 0 {
		word = "sheet.lap"
	}
	if s.said && s.heel < v.pt(insideHeel) {
		runs = append(runs, run{-d.Down.Inches(), 0, s.sp.Size(d.Down)})
	}
	return append(runs, run{0, up, s.sp.Sentence(word, s.sp.AtLeast(inches(up)))})
}
