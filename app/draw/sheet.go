package draw

import (
	"math"
	"strconv"
)

// sheet collects the markup of a picture. Every coordinate is in CSS pixels,
// written with at most one decimal.
type sheet struct{ b []byte }

// appendNumber writes v with at most one decimal. Anything that is not a
// usable coordinate is written as 0, so that no picture can carry NaN.
func appendNumber(b []byte, v float64) []byte {
	if !(v > -1e5 && v < 1e5) {
		return append(b, '0')
	}
	n := int64(math.Round(v * 10))
	if n < 0 {
		b = append(b, '-')
		n = -n
	}
	b = strconv.AppendInt(b, n/10, 10)
	if d := n % 10; d != 0 {
		b = append(b, '.', byte('0'+d))
	}
	return b
}

func (s *sheet) raw(text string) { s.b = append(s.b, text...) }

func (s *sheet) attr(name string, v float64) {
	s.b = append(s.b, ' ')
	s.b = append(s.b, name...)
	s.b = append(s.b, '=', '"')
	s.b = appendNumber(s.b, v)
	s.b = append(s.b, '"')
}

// open begins an element. Its classes are written with the picture's prefix,
// so that no rule of the page that is meant for something else touches it.
func (s *sheet) open(tag, class string) {
	s.b = append(s.b, '<')
	s.b = append(s.b, tag...)
	if class != "" {
		s.b = append(s.b, ` class="p-`...)
		for i := 0; i < len(class); i++ {
			if s.b = append(s.b, class[i]); class[i] == ' ' {
				s.b = append(s.b, "p-"...)
			}
		}
		s.b = append(s.b, '"')
	}
}

// fill gives the shape that is open the pattern of that name.
func (s *sheet) fill(pattern string) {
	s.b = append(s.b, ` fill="url(#`...)
	s.b = append(s.b, pattern...)
	s.b = append(s.b, `)"`...)
}

// rect draws a box; pattern "" leaves the fill to the class.
func (s *sheet) rect(class, pattern string, x, y, w, h float64) {
	if w <= 0 || h <= 0 {
		return
	}
	s.open("rect", class)
	s.attr("x", x)
	s.attr("y", y)
	s.attr("width", w)
	s.attr("height", h)
	if pattern != "" {
		s.fill(pattern)
	}
	s.raw("/>")
}

func (s *sheet) circle(class string, x, y, r float64) {
	s.open("circle", class)
	s.attr("cx", x)
	s.attr("cy", y)
	s.attr("r", r)
	s.raw("/>")
}

// draw puts a path on the sheet. An empty path draws nothing.
func (s *sheet) draw(class string, p *path) { s.drawIn(class, "", p) }

func (s *sheet) drawIn(class, pattern string, p *path) {
	if len(p.b) == 0 {
		return
	}
	s.open("path", class)
	s.raw(` d="`)
	s.b = append(s.b, p.b...)
	s.raw(`"`)
	if pattern != "" {
		s.fill(pattern)
	}
	s.raw("/>")
}

// segment draws one straight line.
func (s *sheet) segment(class string, x1, y1, x2, y2 float64) {
	s.draw(class, new(path).move(x1, y1).line(x2, y2))
}

// escape appends text as character data or an attribute's value.
func (s *sheet) escape(text string) {
	for i := 0; i < len(text); i++ {
		switch c := text[i]; c {
		case '<':
			s.raw("&lt;")
		case '>':
			s.raw("&gt;")
		case '&':
			s.raw("&amp;")
		case '"':
			s.raw("&quot;")
		default:
			s.b = append(s.b, c)
		}
	}
}

// path is the outline of a shape: the d of a path element.
type path struct{ b []byte }

func (p *path) point(op byte, x, y float64) *path {
	p.b = append(p.b, op)
	p.b = appendNumber(p.b, x)
	p.b = append(p.b, ' ')
	p.b = appendNumber(p.b, y)
	return p
}

func (p *path) move(x, y float64) *path { return p.point('M', x, y) }
func (p *path) line(x, y float64) *path { return p.point('L', x, y) }

// cubic draws on to (x, y) with the control points 1 and 2.
func (p *path) cubic(x1, y1, x2, y2, x, y float64) *path {
	p.point('C', x1, y1)
	p.b = append(p.b, ' ')
	p.b = appendNumber(p.b, x2)
	p.b = append(p.b, ' ')
	p.b = appendNumber(p.b, y2)
	p.b = append(p.b, ' ')
	p.b = appendNumber(p.b, x)
	p.b = append(p.b, ' ')
	p.b = appendNumber(p.b, y)
	return p
}

func (p *path) close() *path {
	p.b = append(p.b, 'Z')
	return p
}

// head adds an arrow's head with its point at (x, y), looking along (dx, dy),
// a unit vector, of length n.
func (p *path) head(x, y, dx, dy, n float64) *path {
	bx, by := x-dx*n, y-dy*n
	w := n * 0.42
	return p.move(x, y).line(bx-dy*w, by+dx*w).line(bx+dy*w, by-dx*w).close()
}

// arc draws on to (x, y) along a circle of radius r.
func (p *path) arc(r, x, y float64) *path {
	p.b = append(p.b, 'A')
	p.b = appendNumber(p.b, r)
	p.b = append(p.b, ' ')
	p.b = appendNumber(p.b, r)
	p.b = append(p.b, " 0 0 1 "...)
	p.b = appendNumber(p.b, x)
	p.b = append(p.b, ' ')
	p.b = appendNumber(p.b, y)
	return p
}
