package sheet

import (
	"math"
	"strconv"

	"standingbeam/app/letters"
	"standingbeam/app/words"
)

// scales are the usual ones of the trade: inches of paper to a foot, and plain
// ratios for metric readers. Largest first.
var (
	footScales = []struct {
		scale float64
		inch  string
	}{{8, "1 1/2"}, {12, "1"}, {16, "3/4"}, {24, "1/2"}, {32, "3/8"}, {36, ""}, {48, "1/4"}, {60, ""}, {64, "3/16"}, {72, ""}, {96, "1/8"}, {120, ""}, {128, "3/32"}, {192, "1/16"}}
	metricScales = []float64{5, 10, 20, 25, 30, 40, 50, 75, 100, 150, 200}
)

func (s *scene) scales() (out []float64) {
	if s.sp.System == words.Metric {
		return metricScales
	}
	for _, f := range footScales {
		out = append(out, f.scale)
	}
	return out
}

// scaleWords writes a scale: "1/2 in = 1 ft" or "1:25".
func (s *scene) scaleWords(scale float64) string {
	if s.sp.System == words.US {
		for _, f := range footScales {
			switch {
			case math.Abs(f.scale-scale) > 0.01:
			case f.inch == "":
				return s.sp.Sentence("sheet.scale-inch", strconv.Itoa(int(scale/12)))
			default:
				return s.sp.Sentence("sheet.scale", f.inch)
			}
		}
	}
	return "1:" + strconv.FormatFloat(scale, 'f', -1, 64)
}

// caption names a view under everything that it holds, with its scale and a
// bar by which a copy of any size can be measured. A long name has a line of
// its own.
func (s *scene) caption(v *figure, name string, left float64) {
	y := v.bounds().y0 - v.pt(6)
	v.say(text{at: point{left, y}, words: name, size: captionSize, h: 1, v: -1, bold: true})
	x := left + v.pt(letters.Width(name, captionSize, true)+9)
	if v.points(x-left) > 80 {
		x, y = left, y-v.pt(12)
	} else {
		y -= v.pt(captionSize*letters.Ascent - typeSize*letters.Ascent)
	}
	v.say(text{at: point{x, y}, words: s.scaleWords(v.scale), h: 1, v: -1})
	s.scaleBar(v, point{x + v.pt(letters.Width(s.scaleWords(v.scale), typeSize, false)+10), y})
}

// scaleBar draws a bar of a round length, in halves.
func (s *scene) scaleBar(v *figure, at point) {
	unit, name := 12.0, s.sp.Sentence("sheet.feet", "1")
	if s.sp.System == words.Metric {
		unit, name = 1000/25.4, s.sp.Sentence("sheet.metres", "1")
	}
	n := 1
	switch {
	case v.points(unit) > 90 && s.sp.System == words.Metric:
		unit, name = 500/25.4, s.sp.Sentence("sheet.metres", s.sp.Number(0.5, 1))
	case v.points(unit) > 90:
		unit, name = 6, s.sp.Size(6)
	case v.points(unit) < 20:
		n = 4
		name = s.sp.Sentence("sheet.feet", "4")
		if s.sp.System == words.Metric {
			name = s.sp.Sentence("sheet.metres", "4")
		}
	}
	x, top := at.x, at.y-v.pt(2.5)
	for i := range 2 * n {
		f := open
		if i%2 == 0 {
			f = ink
		}
		a := x + float64(i)*unit/2
		v.area(dimensions, thin, f, point{a, top}, point{a + unit/2, top}, point{a + unit/2, top - v.pt(3.6)}, point{a, top - v.pt(3.6)})
	}
	v.say(text{at: point{x + float64(n)*unit + v.pt(4), at.y}, words: name, h: 1, v: -1})
}

// Room between the views, in inches of paper.
const (
	sideWidth = 2.75 // kept for elevation and level cut beside the section
	gapWide   = 0.22
	gapLeast  = 0.08
	smallFrom = 40 // from this scale on, the other way to lay out is tried
)

// layOut puts section, elevation and level cut on a piece of paper, in inches,
// each at the largest of the usual scales at which it fits: elevation and cut
// beside the section or, where that leaves it small, under it.
// Labels are never given up for room: the drawing is then higher than asked.
func (s *scene) layOut(width, height float64) *drawing {
	a, fits := s.sideBySide(width, height)
	if fits && a.views[0].scale < smallFrom {
		return a
	}
	b, fitsToo := s.stacked(width, height)
	if fits && (!fitsToo || b.views[0].scale >= a.views[0].scale) {
		return a
	}
	// Under a smaller section the elevation may find its room; a wall that is
	// odd enough takes more height than there is.
	for more := -0.6; !fitsToo && more < 7; more += 0.3 {
		b, fitsToo = s.stacked(width, height+more)
	}
	return b
}

func (s *scene) sideBySide(width, height float64) (*drawing, bool) {
	section, ok := s.fitted(width-sideWidth-0.1, height, s.section)
	cut, ok1 := s.fitted(sideWidth, 1.75, s.cutOf)
	side := width - section.wide() - 0.1
	elevation, ok2 := s.fitted(side, height-cut.high()-gapLeast, func(scale float64) *figure { return s.elevation(scale, min(side, 3.6)*72) })
	under := elevation.high() + max(gapLeast, min(gapWide, height-elevation.high()-cut.high()))
	section.put(0, 0)
	elevation.put(width-side, 0)
	cut.put(width-side, under)
	return &drawing{width: width, height: max(section.high(), under+cut.high()), views: []*figure{section, elevation, cut}}, ok && ok1 && ok2
}

func (s *scene) cutOf(scale float64) *figure { return s.cut(scale, sideWidth*72) }

func (s *scene) stacked(width, height float64) (*drawing, bool) {
	cut, ok := s.fitted(sideWidth, 1.5, s.cutOf)
	section, ok1 := s.fitted(width, height-cut.high()-gapLeast, s.section)
	under := section.high() + gapLeast
	side := width - cut.wide() - gapWide
	elevation, ok2 := s.fitted(side, height-under, func(scale float64) *figure { return s.elevation(scale, min(side, 3.6)*72) })
	section.put(0, 0)
	elevation.put(0, under)
	cut.put(width-cut.wide(), under)
	return &drawing{width: width, height: under + max(elevation.high(), cut.high()), views: []*figure{section, elevation, cut}}, ok && ok1 && ok2
}

// wide and high are the size of the view on paper, in inches.
func (v *figure) wide() float64 { b := v.bounds(); return (b.x1 - b.x0) / v.scale }
func (v *figure) high() float64 { b := v.bounds(); return (b.y1 - b.y0) / v.scale }

// put places the view's upper left corner on the paper.
func (v *figure) put(x, y float64) {
	b := v.bounds()
	v.origin = point{x - b.x0/v.scale, y + b.y1/v.scale}
}

// fitted builds a view at the largest scale at which it fits a room in inches
// of paper with every label in its place; at the smallest, and false, where it
// never does.
func (s *scene) fitted(width, height float64, build func(scale float64) *figure) (v *figure, ok bool) {
	for _, scale := range s.scales() {
		v = build(scale)
		if !v.crowded && v.wide() <= width && v.high() <= height {
			return v, true
		}
	}
	return v, false
}
