package sheet

import (
	"html"
	"math"
	"strconv"
	"strings"

	"standingbeam/app/letters"
)

// fonts of the drawings. None needs to be fetched.
const fonts = "Helvetica, Arial, Liberation Sans, DejaVu Sans, sans-serif"

// svg writes the drawing as an element of its own. All looks are attributes,
// since the page permits no styles inside it. title names it to those who do
// not see it.
func (d *drawing) svg(title string) string {
	w := &svgWriter{}
	w.raw(`<svg xmlns="http://www.w3.org/2000/svg" role="img" width="`).num(d.width).raw(`in" height="`).num(d.height)
	w.raw(`in" viewBox="0 0 `).num(d.width * 72).raw(" ").num(d.height * 72).raw(`" font-family="` + fonts + `"><title>`)
	w.raw(html.EscapeString(title)).raw(`</title>`)
	for _, v := range d.views {
		w.v = v
		w.view()
	}
	return w.raw("</svg>").String()
}

type svgWriter struct {
	strings.Builder
	v *figure
}

func (w *svgWriter) raw(s string) *svgWriter { w.WriteString(s); return w }

// num writes a number to a hundredth of a point.
func (w *svgWriter) num(v float64) *svgWriter {
	return w.raw(strconv.FormatFloat(math.Round(v*100)/100+0, 'f', -1, 64))
}

func (w *svgWriter) x(real float64) float64 { return w.v.origin.x*72 + w.v.points(real) }
func (w *svgWriter) y(real float64) float64 { return w.v.origin.y*72 - w.v.points(real) }

func (w *svgWriter) view() {
	w.raw(`<g data-view="` + w.v.name + `" fill="none" stroke="#000" stroke-linejoin="miter">`)
	for l := range layers {
		w.layer(l)
	}
	w.raw(`</g><g data-view="` + w.v.name + `" data-layer="TEXT" fill="#000">`)
	for _, t := range w.v.texts {
		w.halo(t)
	}
	for _, c := range w.v.marks {
		w.circle(c)
	}
	for _, t := range w.v.texts {
		w.text(t)
	}
	w.raw("</g>")
}

func (w *svgWriter) layer(l layer) {
	begun := false
	begin := func() {
		if !begun {
			w.raw(`<g data-layer="` + layerNames[l] + `"`)
			if l == hidden {
				w.raw(` stroke-dasharray="4 2.4"`)
			}
			w.raw(">")
		}
		begun = true
	}
	if l == hatching && len(w.v.specks) > 0 {
		begin()
		w.raw(`<path stroke-width="0.95" stroke-linecap="round" d="`)
		for _, p := range w.v.specks {
			w.raw("M").num(w.x(p.x)).raw(" ").num(w.y(p.y)).raw("h0")
		}
		w.raw(`"/>`)
	}
	for _, p := range w.v.paths {
		if p.layer == l {
			begin()
			w.path(p)
		}
	}
	for _, c := range w.v.circles {
		if c.layer == l {
			begin()
			w.circle(c)
		}
	}
	if begun {
		w.raw("</g>")
	}
}

func (w *svgWriter) paint(f fill) {
	switch f {
	case ink:
		w.raw(` fill="#000"`)
	case paper:
		w.raw(` fill="#fff"`)
	}
}

func (w *svgWriter) path(p path) {
	w.raw(`<path stroke-width="`).num(math.Max(p.pen, w.v.points(p.width))).raw(`"`)
	w.paint(p.fill)
	w.raw(` d="`)
	for i, c := range p.points {
		if i == 0 {
			w.raw("M").num(w.x(c.x)).raw(" ").num(w.y(c.y))
			continue
		}
		b := p.points[i-1]
		if b.bulge == 0 {
			w.raw("L").num(w.x(c.x)).raw(" ").num(w.y(c.y))
			continue
		}
		r, sweep := w.v.points(arcRadius(b, c)), " 0 0 1 "
		if b.bulge > 0 {
			sweep = " 0 0 0 "
		}
		w.raw("A").num(r).raw(" ").num(r).raw(sweep).num(w.x(c.x)).raw(" ").num(w.y(c.y))
	}
	if p.closed {
		w.raw("Z")
	}
	w.raw(`"/>`)
}

// arcRadius is the radius of the arc from a to b: chord (1 + bulge²)/(4 bulge).
func arcRadius(a, b vertex) float64 {
	k := math.Abs(a.bulge)
	return math.Hypot(b.x-a.x, b.y-a.y) * (1 + k*k) / (4 * k)
}

func (w *svgWriter) circle(c circle) {
	w.raw(`<circle cx="`).num(w.x(c.center.x)).raw(`" cy="`).num(w.y(c.center.y)).raw(`" r="`).num(math.Max(c.least, w.v.points(c.r))).raw(`"`)
	if c.fill != ink {
		w.raw(` stroke="#000" stroke-width="`).num(c.pen).raw(`"`)
	} else {
		w.raw(` stroke="none"`)
	}
	w.paint(c.fill)
	w.raw("/>")
}

// halo keeps the lines under a text off it.
func (w *svgWriter) halo(t text) {
	b := w.v.room(t)
	trim := w.v.pt(1.4)
	if t.turned {
		b.x0, b.x1 = b.x0+trim, b.x1-trim
	} else {
		b.y0, b.y1 = b.y0+trim, b.y1-trim
	}
	w.raw(`<rect fill="#fff" x="`).num(w.x(b.x0)).raw(`" y="`).num(w.y(b.y1)).raw(`" width="`).num(w.v.points(b.x1 - b.x0))
	w.raw(`" height="`).num(w.v.points(b.y1 - b.y0)).raw(`"/>`)
}

func (w *svgWriter) text(t text) {
	x, y := w.x(t.at.x), w.y(t.at.y)
	height := t.size * (letters.Ascent + letters.Descent)
	drop := height/2*(1-float64(t.v)) - t.size*letters.Descent // of the baseline under the point
	anchor := [...]string{"end", "middle", "start"}[t.h+1]
	w.raw(`<text font-size="`).num(t.size).raw(`" text-anchor="`)
	if t.turned {
		// Read upward: the type's own left is the view's below.
		anchor = [...]string{"end", "middle", "start"}[t.v+1]
		drop = height/2*(1+float64(t.h)) - t.size*letters.Descent
		w.raw(anchor).raw(`" transform="translate(`).num(x + drop).raw(" ").num(y).raw(`) rotate(-90)"`)
	} else {
		w.raw(anchor).raw(`" x="`).num(x).raw(`" y="`).num(y + drop).raw(`"`)
	}
	if t.bold {
		w.raw(` font-weight="700"`)
	}
	w.raw(">" + html.EscapeString(t.words) + "</text>")
}
