package lesson

import (
	"math"
	"strconv"
	"strings"
)

// ink collects the markup of a picture. Coordinates are CSS pixels, written
// with at most one decimal; shapes carry classes, never colours.
type ink struct {
	b    strings.Builder
	dots []spot // along the lines: what labels keep off
	turn turned // of the group that is drawn
}

// soft begins the names of what may run under a label: fillings, and wires that
// lead to one.
const soft = "earth leader area grain water body"

// digits writes v with at most one decimal. What is no usable coordinate is
// written as 0, so that no picture can carry NaN.
func digits(v float64) string {
	if !(v > -1e5 && v < 1e5) {
		return "0"
	}
	return strconv.FormatFloat(math.Round(v*10)/10+0, 'f', -1, 64)
}

func (k *ink) raw(text string) { k.b.WriteString(text) }

// attr writes one attribute.
func (k *ink) attr(name, value string) {
	k.raw(` ` + name + `="` + value + `"`)
}

// classes are the names of a class as they stand in the markup: with the
// prefix of all that is drawn, so that no rule of the page touches it.
func classes(names string) string {
	all := strings.Fields(names)
	for i := range all {
		all[i] = "p-" + all[i]
	}
	return strings.Join(all, " ")
}

// tag writes an empty element of a class, with pairs of a name and a value.
func (k *ink) tag(name, class string, pairs ...string) {
	k.raw("<" + name)
	if class != "" {
		k.attr("class", classes(class))
	}
	for i := 0; i+1 < len(pairs); i += 2 {
		k.attr(pairs[i], pairs[i+1])
	}
	k.raw("/>")
}

func (k *ink) rect(class string, x, y, w, h float64) { k.fillRect(class, "", x, y, w, h) }

// fillRect draws a box filled with a pattern.
func (k *ink) fillRect(class, pattern string, x, y, w, h float64) {
	if w <= 0 || h <= 0 {
		return
	}
	pairs := []string{"x", digits(x), "y", digits(y), "width", digits(w), "height", digits(h)}
	if pattern != "" {
		pairs = append(pairs, "fill", "url(#"+pattern+")")
	}
	k.tag("rect", class, pairs...)
	if class == "unbuilt" || class == "wood" {
		k.note(class, box(x, y, w, h))
	}
}

// note keeps labels off a track.
func (k *ink) note(class string, t *track) {
	if strings.Contains(soft, class) {
		return
	}
	for _, p := range t.all {
		k.dots = append(k.dots, k.turn.spot(p))
	}
}

func (k *ink) circle(class string, x, y, r float64) {
	k.tag("circle", class, "cx", digits(x), "cy", digits(y), "r", digits(r))
}

func (k *ink) line(class string, x1, y1, x2, y2 float64) {
	k.path(class, new(track).move(x1, y1).to(x2, y2))
}

// path draws a track. An empty one draws nothing.
func (k *ink) path(class string, t *track) { k.fillPath(class, "", t) }

func (k *ink) fillPath(class, pattern string, t *track) {
	if t.b.Len() == 0 {
		return
	}
	if pattern == "" {
		k.note(class, t)
	}
	pairs := []string{"d", t.b.String()}
	if pattern != "" {
		pairs = append(pairs, "fill", "url(#"+pattern+")")
	}
	k.tag("path", class, pairs...)
}

// escape makes text fit to stand in markup.
func escape(text string) string {
	return strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;").Replace(text)
}

// track is the outline of a shape.
type track struct {
	b          strings.Builder
	begun, end spot
	all        []spot // along it, a few px from each other
}

func (t *track) point(op byte, x, y float64) *track {
	t.b.WriteByte(op)
	t.b.WriteString(digits(x))
	t.b.WriteByte(' ')
	t.b.WriteString(digits(y))
	return t
}

func (t *track) move(x, y float64) *track {
	t.begun = spot{x, y}
	t.end = t.begun
	return t.point('M', x, y)
}

func (t *track) to(x, y float64) *track {
	t.along(spot{x, y})
	return t.point('L', x, y)
}

func (t *track) along(p spot) {
	dx, dy := p.x-t.end.x, p.y-t.end.y
	for n := math.Ceil((math.Abs(dx) + math.Abs(dy)) / 5); n > 0; n-- {
		t.all = append(t.all, t.end)
		t.end.x += dx / n
		t.end.y += dy / n
		dx, dy = p.x-t.end.x, p.y-t.end.y
	}
	t.end = p
}

func (t *track) close() *track {
	t.along(t.begun)
	t.b.WriteByte('Z')
	return t
}

// points goes through all points, beginning with a move where start is true.
func (t *track) points(all []spot, start bool) *track {
	for i, p := range all {
		if i == 0 && start {
			t.move(p.x, p.y)
		} else {
			t.to(p.x, p.y)
		}
	}
	return t
}

// head adds an arrow's head of length n with its point at (x, y), looking
// along the unit vector (dx, dy).
func (t *track) head(x, y, dx, dy, n float64) *track {
	bx, by, w := x-dx*n, y-dy*n, n*0.42
	return t.move(x, y).to(bx-dy*w, by+dx*w).to(bx+dy*w, by-dx*w).close()
}

// spot is a point of the picture.
type spot struct{ x, y float64 }

// arrow draws an arrow from one spot to another. Short ones shrink.
func (k *ink) arrow(class string, x1, y1, x2, y2, head float64) {
	n := math.Hypot(x2-x1, y2-y1)
	if n < 2 {
		return
	}
	head = math.Min(head, n*0.8)
	dx, dy := (x2-x1)/n, (y2-y1)/n
	k.line(class+" shaft", x1, y1, x2-dx*head*0.8, y2-dy*head*0.8)
	k.path(class+" tip", new(track).head(x2, y2, dx, dy, head))
}
