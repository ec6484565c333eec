package draw

import (
	"strings"

	"standingbeam/app/letters"
)

// letter puts the placed labels on the sheet and returns the space that each
// line takes.
func (s *sheet) letter(all []placed) []Box {
	out := make([]Box, 0, 2*len(all))
	for i := range all {
		if all[i].leader {
			s.tie(&all[i])
		}
	}
	for i := range all {
		out = s.label(out, &all[i])
	}
	return out
}

// tie draws the leader of a label from its point to its box.
func (s *sheet) tie(l *placed) {
	s.segment("leader "+l.class, l.x, l.y, l.lx, l.ly)
	s.circle("dot "+l.class, l.x, l.y, 2)
}

func (s *sheet) label(out []Box, l *placed) []Box {
	y := l.box.Y
	x := l.box.X
	for _, n := range l.lines {
		size := n.size()
		w, h := n.width(), n.height()
		if l.spot.turned {
			s.turned(l, n, x+size*letters.Ascent, l.box.Y+l.box.H/2)
			out = append(out, Box{Text: unmarked(n.text), X: x, Y: l.box.Y + (l.box.H-w)/2, W: h, H: w})
			x += h
			continue
		}
		bx, ax, anchor := l.box.X, l.box.X, "start"
		switch l.spot.h {
		case 0:
			bx, ax, anchor = l.box.X+(l.box.W-w)/2, l.box.X+l.box.W/2, "middle"
		case -1:
			bx, ax, anchor = l.box.X+l.box.W-w, l.box.X+l.box.W, "end"
		}
		s.open("text", n.class(l.class))
		s.attr("x", ax)
		s.attr("y", y+size*letters.Ascent)
		if anchor != "start" {
			s.raw(` text-anchor="` + anchor + `"`)
		}
		s.raw(">")
		s.marked(n.text)
		s.raw("</text>")
		out = append(out, Box{Text: unmarked(n.text), X: bx, Y: y, W: w, H: h})
		y += h
	}
	return out
}

// turned writes a line that reads upward, centred on (x, y).
func (s *sheet) turned(l *placed, n line, x, y float64) {
	s.open("text", n.class(l.class))
	s.raw(` text-anchor="middle" transform="translate(`)
	s.b = appendNumber(s.b, x)
	s.raw(" ")
	s.b = appendNumber(s.b, y)
	s.raw(`) rotate(-90)">`)
	s.marked(n.text)
	s.raw("</text>")
}

func (n line) class(colour string) string {
	if n.soft && colour == "ink" {
		colour = "soft"
	}
	if n.bold {
		return colour + " say strong"
	}
	return colour + " say"
}

// marked writes a line of type, what stands below a letter smaller and lower.
func (s *sheet) marked(text string) {
	open := false
	for {
		at := strings.IndexAny(text, string(lower)+string(raise))
		if at < 0 {
			break
		}
		s.escape(text[:at])
		if open {
			s.raw("</tspan>")
		}
		if text[at] == lower {
			s.raw(`<tspan dy="3" font-size="12">`)
		} else {
			s.raw(`<tspan dy="-3">`)
		}
		open, text = true, text[at+1:]
	}
	s.escape(text)
	if open {
		s.raw("</tspan>")
	}
}
