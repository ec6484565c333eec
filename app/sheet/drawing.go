package sheet

import (
	"math"

	"standingbeam/app/letters"
)

// layer is what a line stands for. A layer's name is that of the DXF file.
type layer uint8

const (
	concrete layer = iota
	steel
	ground
	water
	timber
	hatching
	dimensions
	lettering
	hidden
	layers
)

var layerNames = [layers]string{"CONCRETE", "STEEL", "SOIL", "WATER", "FLOOR", "HATCHING", "DIMENSIONS", "TEXT", "HIDDEN"}

// Pens, in points on paper. The thinnest still comes through a photocopier.
const (
	thin   = 0.5
	medium = 0.9
	heavy  = 1.7
	barPen = 1.3 // a bar is drawn no thinner
)

// Type sizes in points on paper. None is smaller.
const (
	typeSize    = 7.4
	captionSize = 9.0
	leading     = 9.0
)

// point is a place in a view in inches: x toward side B, y up.
type point struct{ x, y float64 }

// vertex is a corner of a path. Bulge is that of the DXF: the tangent of a
// quarter of the angle of the arc to the next corner, positive to the left.
type vertex struct {
	point
	bulge float64
}

// quarter is the bulge of an arc of 90 degrees.
var quarter = math.Tan(math.Pi / 8)

type fill uint8

const (
	open  fill = iota
	ink        // filled with ink
	paper      // white, hiding what lies under it
)

// path is a run of lines and arcs. A width makes it a bar of that diameter.
type path struct {
	layer  layer
	pen    float64
	points []vertex
	closed bool
	fill   fill
	width  float64
}

// circle is drawn with no less than its least radius on paper, in points.
type circle struct {
	layer  layer
	pen    float64
	center point
	r      float64
	least  float64
	fill   fill
}

// text is one line of type. h and v say on which side of the point it lies: -1
// left of or below it, 0 centred on it, 1 right of or above it. Turned type
// reads upward.
type text struct {
	at     point
	words  string
	size   float64
	h, v   int8
	turned bool
	bold   bool
}

// figure is one drawing of the wall, in real inches, that is put on paper at a
// scale: so many inches of wall to an inch of paper.
type figure struct {
	name    string
	scale   float64
	origin  point // on paper, inches right of and below the drawing's corner
	paths   []path
	specks  []point // stipple of cut concrete
	circles []circle
	texts   []text
	marks   []circle // white circles with a bar's mark
	leaders [][2]point
	crowded bool // a label found no place
}

// drawing is a set of views on one piece of paper, in inches.
type drawing struct {
	width, height float64
	views         []*figure
}

// pt is the real length of points on paper.
func (v *figure) pt(points float64) float64 { return points / 72 * v.scale }

// points is the length on paper, in points, of a real length.
func (v *figure) points(real float64) float64 { return real / v.scale * 72 }

func (v *figure) line(l layer, pen float64, at ...point) {
	p := path{layer: l, pen: pen, points: make([]vertex, len(at))}
	for i, a := range at {
		p.points[i].point = a
	}
	v.paths = append(v.paths, p)
}

func (v *figure) area(l layer, pen float64, f fill, at ...point) {
	v.line(l, pen, at...)
	p := &v.paths[len(v.paths)-1]
	p.closed, p.fill = true, f
}

func (v *figure) rect(l layer, pen float64, b box) {
	v.area(l, pen, open, point{b.x0, b.y0}, point{b.x1, b.y0}, point{b.x1, b.y1}, point{b.x0, b.y1})
}

func (v *figure) bar(width float64, at []vertex) {
	v.paths = append(v.paths, path{layer: steel, pen: barPen, points: at, width: width})
}

func (v *figure) dot(at point, diameter float64) {
	v.circles = append(v.circles, circle{layer: steel, center: at, r: diameter / 2, least: 1.5, fill: ink})
}

func (v *figure) say(t text) {
	if t.size == 0 {
		t.size = typeSize
	}
	if t.words != "" {
		v.texts = append(v.texts, t)
	}
}

// box is a rectangle in a view.
type box struct{ x0, y0, x1, y1 float64 }

func (b box) join(c box) box {
	return box{math.Min(b.x0, c.x0), math.Min(b.y0, c.y0), math.Max(b.x1, c.x1), math.Max(b.y1, c.y1)}
}

func (b box) overlaps(c box) bool {
	return b.x0 < c.x1 && c.x0 < b.x1 && b.y0 < c.y1 && c.y0 < b.y1
}

// room is the space that a line of type takes in the view.
func (v *figure) room(t text) box {
	w, h := v.pt(letters.Width(t.words, t.size, t.bold)), v.pt(t.size*(letters.Ascent+letters.Descent))
	if t.turned {
		w, h = h, w
	}
	x, y := t.at.x-w/2+float64(t.h)*w/2, t.at.y-h/2+float64(t.v)*h/2
	return box{x, y, x + w, y + h}
}

// around is the space of a circle.
func (v *figure) around(c circle) box {
	r := math.Max(c.r, v.pt(c.least))
	return box{c.center.x - r, c.center.y - r, c.center.x + r, c.center.y + r}
}

// bounds is the space of everything in the view.
func (v *figure) bounds() box {
	b := box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, p := range v.paths {
		half := math.Max(p.width/2, v.pt(p.pen)/2)
		for _, c := range p.points {
			b = b.join(box{c.x - half, c.y - half, c.x + half, c.y + half})
		}
	}
	for _, c := range v.circles {
		b = b.join(v.around(c))
	}
	for _, c := range v.marks {
		b = b.join(v.around(c))
	}
	for _, t := range v.texts {
		b = b.join(v.room(t))
	}
	return b
}
