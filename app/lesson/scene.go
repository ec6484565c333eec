package lesson

import (
	"math"

	"standingbeam/app/letters"
)

// scene is one picture while it is being drawn, w by h CSS pixels. Labels are
// kept back until all else is drawn, so that nothing covers them.
type scene struct {
	ink
	w, h   float64
	id     string // patterns' ids begin with it
	bare   bool   // no type: a small picture in a list
	labels []label
	boxes  []Box
	blocks []Box // that labels keep off
	lost   []string
}

// Box is the space of a line of type.
type Box struct {
	Text       string
	X, Y, W, H float64
}

func (b Box) overlaps(c Box) bool {
	const gap = 1
	return b.X < c.X+c.W+gap && c.X < b.X+b.W+gap && b.Y < c.Y+c.H+gap && c.Y < b.Y+b.H+gap
}

// Type of the pictures, in CSS pixels.
const (
	plainType = 14.0
	heavyType = 15.0
	leading   = 1.2
)

// label is a piece of type with the places where it may stand, the best first.
type label struct {
	class string
	lines []string
	heavy bool
	at    []anchor
	to    spot // what it names, where a wire leads to it from afar
	fixed bool // it stands in its place or nowhere
}

// anchor is where a label may stand: its middle line at y, and x its left end
// for side +1, its middle for 0, its right end for -1.
type anchor struct {
	x, y float64
	side int
}

func newScene(id string, w, h float64) *scene {
	s := &scene{id: id, w: math.Max(w, 80), h: math.Max(h, 60)}
	s.raw(`<svg class="picture why-picture" xmlns="http://www.w3.org/2000/svg" aria-hidden="true" focusable="false" viewBox="0 0 ` +
		digits(s.w) + " " + digits(s.h) + `"><defs>`)
	s.pattern("-earth", 9, `<path class="p-hatch" d="M-1 10L10 -1M-2 2L2 -2M7 11L11 7"/>`)
	s.pattern("-stone", 22, `<path class="p-stone" d="M3 4h.1M13 2h.1M18 9h.1M8 12h.1M2 18h.1M14 17h.1M20 20h.1"/>`)
	s.raw(`</defs>`)
	return s
}

func (s *scene) pattern(name string, size float64, inside string) {
	s.raw(`<pattern id="` + s.id + name + `" patternUnits="userSpaceOnUse" width="` + digits(size) + `" height="` + digits(size) + `">` + inside + `</pattern>`)
}

// earth fills a shape with ground.
func (s *scene) earth(t *track) {
	s.path("earth", t)
	s.fillPath("fill", s.id+"-earth", t)
}

// concrete fills a shape with concrete.
func (s *scene) concrete(t *track) {
	s.path("concrete", t)
	s.fillPath("edged", s.id+"-stone", t)
}

// block is a box of concrete.
func (s *scene) block(x, y, w, h float64) {
	s.concrete(box(x, y, w, h))
	s.off(x, y, w, h)
}

func box(x, y, w, h float64) *track {
	return new(track).move(x, y).to(x+w, y).to(x+w, y+h).to(x, y+h).close()
}

// off keeps labels off a box.
func (s *scene) off(x, y, w, h float64) { s.blocks = append(s.blocks, Box{X: x, Y: y, W: w, H: h}) }

// say writes a plain label at the first of the places that is free.
func (s *scene) say(class, text string, at ...anchor) {
	s.labels = append(s.labels, label{class: class, lines: []string{text}, at: at})
}

// call writes a heavy label.
func (s *scene) call(class, text string, at ...anchor) {
	s.labels = append(s.labels, label{class: class, lines: []string{text}, heavy: true, at: at})
}

// name writes heavy words for a spot, in lines of at most that width, with a
// wire to it where they stand apart.
func (s *scene) name(text string, width float64, p spot, at ...anchor) {
	lines := letters.Wrap(text, heavyType, true, width)
	s.labels = append(s.labels, label{class: "ink", lines: lines, heavy: true, at: at, to: p})
}

// wire leads from the last label to a spot, where it stands apart from it.
func (s *scene) wire(p spot) { s.labels[len(s.labels)-1].to = p }

// wrapped writes a plain label in lines of at most that width.
func (s *scene) wrapped(class, text string, width float64, at ...anchor) {
	s.labels = append(s.labels, label{class: class, lines: letters.Wrap(text, plainType, false, width), at: at})
}

// svg ends the picture.
func (s *scene) svg() string {
	for i := range s.labels {
		if !s.bare {
			s.place(&s.labels[i])
		}
	}
	s.raw("</svg>")
	return s.b.String()
}

// nudges are how far a label may step aside from a place, up or down.
var nudges = [...]float64{0, -8, 8, -16, 16, -24, 24}

// place puts a label into the first place that is free, a little aside if it
// must be, and on a line rather than nowhere; the frame moves it in where it
// would stick out.
func (s *scene) place(l *label) {
	for _, strict := range [...]bool{true, false} {
		for _, n := range nudges {
			if l.fixed && n != 0 {
				break
			}
			for _, a := range l.at {
				a.y += n
				if boxes := s.space(l, a); s.free(boxes, strict) {
					s.write(l, a, boxes)
					return
				}
			}
		}
	}
	s.lost = append(s.lost, l.lines...)
}

// space is where the lines of a label come to lie.
func (s *scene) space(l *label, a anchor) []Box {
	size := plainType
	if l.heavy {
		size = heavyType
	}
	high := size * leading
	y := a.y - high*float64(len(l.lines))/2
	y = math.Min(math.Max(y, 1), s.h-1-high*float64(len(l.lines)))
	out := make([]Box, 0, len(l.lines))
	for _, text := range l.lines {
		w := letters.Width(text, size, l.heavy)
		x := a.x
		switch a.side {
		case 0:
			x -= w / 2
		case -1:
			x -= w
		}
		x = math.Min(math.Max(x, 2), s.w-2-w)
		out = append(out, Box{Text: text, X: x, Y: y, W: w, H: high})
		y += high
	}
	return out
}

func (s *scene) free(boxes []Box, strict bool) bool {
	for _, b := range boxes {
		if b.X < 0 || b.X+b.W > s.w || b.Y < 0 || b.Y+b.H > s.h {
			return false
		}
		for _, c := range s.boxes {
			if b.overlaps(c) {
				return false
			}
		}
		for _, c := range s.blocks {
			if b.overlaps(c) {
				return false
			}
		}
		for _, p := range s.dots {
			if strict && p.x > b.X-1 && p.x < b.X+b.W+1 && p.y > b.Y+1 && p.y < b.Y+b.H-1 {
				return false
			}
		}
	}
	return true
}

func (s *scene) write(l *label, a anchor, boxes []Box) {
	if b := boxes[0]; l.to.x > 0 {
		from := spot{limit(l.to.x, b.X, b.X+b.W), limit(l.to.y, b.Y+3, b.Y+b.H-3)}
		if math.Hypot(from.x-l.to.x, from.y-l.to.y) > 15 {
			s.line("leader", from.x, from.y, l.to.x, l.to.y)
			s.circle("dot", l.to.x, l.to.y, 2)
		}
	}
	class, size := "say "+l.class, plainType
	if l.heavy {
		class, size = class+" strong", heavyType
	}
	for _, b := range boxes {
		x, end := b.X, ""
		switch a.side {
		case 0:
			x, end = b.X+b.W/2, ` text-anchor="middle"`
		case -1:
			x, end = b.X+b.W, ` text-anchor="end"`
		}
		s.raw(`<text class="` + classes(class) + `" x="` + digits(x) + `" y="` + digits(b.Y+size*0.94) + `"` + end + `>` + escape(b.Text) + `</text>`)
	}
	s.boxes = append(s.boxes, boxes...)
}

// letter writes a heavy letter in the middle of a spot, whatever lies there.
func (s *scene) letter(class, text string, x, y float64) {
	if s.bare {
		return
	}
	s.raw(`<text class="` + classes("say strong "+class) + `" x="` + digits(x) + `" y="` + digits(y+5) + `" text-anchor="middle">` + escape(text) + `</text>`)
}
