package sheet

import (
	"math"
	"strconv"

	"standingbeam/app/letters"
	"standingbeam/app/words"
	"standingbeam/calc/units"
)

// standalone is the drawing with a strip under it that says what else has to
// be known, for a file that leaves without its sheet.
func (s *scene) standalone(o Options) *drawing {
	width, height := o.size()
	d := s.layOut(width, height*0.6)
	strip := s.strip(o, d.views[0].scale, width)
	high := 0.0
	for _, v := range d.views {
		high = math.Max(high, v.origin.y-v.bounds().y0/v.scale)
	}
	b := strip.bounds()
	strip.origin = point{0, high + 0.15}
	d.views = append(d.views, strip)
	d.height = strip.origin.y - b.y0/strip.scale + 0.05
	d.pad(0.1)
	return d
}

// pad keeps a margin round the drawing, in inches.
func (d *drawing) pad(by float64) {
	d.width, d.height = d.width+2*by, d.height+2*by
	for _, v := range d.views {
		v.origin.x, v.origin.y = v.origin.x+by, v.origin.y+by
	}
}

// strip writes the words of the drawing: whose it is, the answer, the bars,
// the cautions.
func (s *scene) strip(o Options, scale, width float64) *figure {
	v := &figure{name: "title", scale: scale}
	level := 0.0
	write := func(bold bool, parts ...string) {
		for _, p := range parts {
			for _, l := range letters.Wrap(p, typeSize, bold, width*72-4) {
				v.say(text{at: point{v.pt(2), level - v.pt(2)}, words: l, h: 1, v: -1, bold: bold})
				level -= v.pt(leading + 1)
			}
		}
	}
	rule := func() {
		v.line(lettering, medium, point{0, level - v.pt(2)}, point{v.pt(width * 72), level - v.pt(2)})
		level -= v.pt(5)
	}
	rule()
	write(true, s.title(o))
	write(false, s.fileLine(o), s.materials(), s.books())
	rule()
	finished, today := s.sp.Headline(*s.r)
	write(true, s.sp.Sentence("sheet.line", s.sp.Word("page.finished"), finished.Mark, finished.Title))
	write(false, finished.Detail)
	write(true, s.sp.Sentence("sheet.line", s.sp.Word("page.today"), today.Mark, today.Title))
	write(false, today.Detail)
	write(false, s.cautions()...)
	rule()
	for _, row := range s.schedule() {
		write(false, row.plain(s))
	}
	rule()
	write(false, s.sp.Word("page.safety.law"), s.sp.Word("page.safety.engineer"))
	return v
}

// fileLine says when, by whom and in which unit the drawing was made.
func (s *scene) fileLine(o Options) string {
	id := "sheet.unit-inches"
	if s.sp.System == words.Metric {
		id = "sheet.unit-mm"
	}
	return joined(" · ", tidy(o.Date), tidy(o.Person), s.sp.Word("sheet.drawn-by"), s.sp.Word(id))
}

// materials names concrete and steel.
func (s *scene) materials() string {
	m := s.in.Material
	return s.sp.Sentence("sheet.materials", s.sp.Quantity(units.Of(m.Fc, units.Strength)), s.steel())
}

// grades are the grades of bars in ksi and their names in MPa (ASTM A615/A615M,
// Table 2).
var grades = map[int]int{40: 280, 60: 420, 80: 550}

// steel is the grade of the bars as it is rolled on them.
func (s *scene) steel() string {
	ksi := int(math.Round(s.in.Material.Fy.KSI()))
	if n := grades[ksi]; n > 0 && s.sp.System == words.Metric {
		return strconv.Itoa(n)
	}
	return strconv.Itoa(ksi)
}

// books names the rulebook that decides and the other, with their editions.
func (s *scene) books() string {
	decides, other := s.editions()
	return s.sp.Sentence("sheet.books", decides, other)
}

func joined(with string, parts ...string) (out string) {
	for _, p := range parts {
		if p == "" {
			continue
		}
		if out != "" {
			out += with
		}
		out += p
	}
	return out
}
