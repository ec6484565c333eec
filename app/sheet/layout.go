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
	}{{8, "1 1/2"}, {12, "1"}, {16, "3/4"}, {24, "1/2"}, {32, "3/8"}, {36, ""}, {48, "1/4"}, {60, ""}, {64, "3/16"}, {96, "1/8"}, {128, "3/32"}, {192, "1/16"}}
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
func (s *scene) caption(v *view, name string, left float64) {
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
func (s *scene) scaleBar(v *view, at point) {
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

// sideWidth is kept for elevation and level cut beside the section, in inches
// of paper.
const sideWidth = 3.0

// layOut puts section, elevation and level cut on a piece of paper, in inches,
// each at the largest of the usual scales at which it fits.
func (s *scene) layOut(width, height float64) *drawing {
	d := &drawing{width: width, height: height}
	cut := s.fitted(sideWidth, 1.75, func(scale float64) *view { return s.cut(scale) })
	cb := cut.bounds()
	cutHigh := (cb.y1 - cb.y0) / cut.scale
	section := s.fitted(width-sideWidth-0.1, height, func(scale float64) *view { return s.section(scale) })
	sb := section.bounds()
	side := width - (sb.x1-sb.x0)/section.scale - 0.1
	elevation := s.fitted(side, height-cutHigh-0.12, func(scale float64) *view { return s.elevation(scale, min(side, 3.6)*72) })
	eb := elevation.bounds()
	section.origin = point{-sb.x0 / section.scale, sb.y1 / section.scale}
	right := width - side
	elevation.origin = point{right - eb.x0/elevation.scale, eb.y1 / elevation.scale}
	cut.origin = point{right - cb.x0/cut.scale, height - cutHigh + cb.y1/cut.scale}
	d.views = []*view{section, elevation, cut}
	return d
}

// fitted builds a view at the largest scale at which it fits a room in inches
// of paper with every label in its place; at the smallest where it never does.
func (s *scene) fitted(width, height float64, build func(scale float64) *view) (v *view) {
	for _, scale := range s.scales() {
		v = build(scale)
		b := v.bounds()
		if !v.crowded && (b.x1-b.x0)/scale <= width && (b.y1-b.y0)/scale <= height {
			return v
		}
	}
	return v
}
