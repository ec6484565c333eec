package sheet

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// A DXF file is plain text in pairs of lines: a number that says what follows,
// and that. What is written here is the format's release 12 (AC1009), which
// every reader of DXF knows: lines, arcs, polylines, circles, solids, points
// and text, on named layers, in true size.
//
// Source: the published DXF reference, release 12.

// dxfWriter writes the pairs. unit is how many units of the file an inch has.
type dxfWriter struct {
	strings.Builder
	unit   float64
	v      *figure
	dx, dy float64 // where the view's origin lies, in inches
}

// layerColors are numbers of the format's own list: 7 black or white, 5 blue,
// 8 and 9 grey, 4 cyan, 30 orange, 32 brown.
var layerColors = [layers]int{7, 5, 32, 4, 30, 9, 8, 7, 8}

func (w *dxfWriter) pair(code int, value string) {
	w.WriteString(strconv.Itoa(code))
	w.WriteByte('\n')
	w.WriteString(value)
	w.WriteByte('\n')
}

func (w *dxfWriter) number(code int, v float64) {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		v = 0
	}
	w.pair(code, strconv.FormatFloat(math.Round(v*1e6)/1e6+0, 'f', -1, 64))
}

func (w *dxfWriter) int(code, v int) { w.pair(code, strconv.Itoa(v)) }

// at writes a point of the view, its x under the given code.
func (w *dxfWriter) at(code int, p point) {
	w.number(code, (p.x+w.dx)*w.unit)
	w.number(code+10, (p.y+w.dy)*w.unit)
	w.number(code+20, 0)
}

func (w *dxfWriter) begin(entity string, l layer) {
	w.pair(0, entity)
	w.pair(8, layerNames[l])
}

// dxf writes the drawing, each view in true size. unit is 1 for inches and
// 25.4 for millimetres.
func (d *drawing) dxf(unit float64, about string) string {
	w := &dxfWriter{unit: unit}
	places := d.inTrueSize()
	w.header(d, places, about)
	w.pair(0, "SECTION")
	w.pair(2, "ENTITIES")
	for i, v := range d.views {
		w.v, w.dx, w.dy = v, places[i].x, places[i].y
		w.entities()
	}
	w.pair(0, "ENDSEC")
	w.pair(0, "EOF")
	return w.String()
}

// inTrueSize places the views in true size beside and under each other. The
// section's origin, the outer corner of footing joint and face A, is the
// file's.
func (d *drawing) inTrueSize() []point {
	const gap = 24
	out := make([]point, len(d.views))
	first := d.views[0].bounds()
	x, y, under := first.x1+gap, 0.0, first.y0-gap
	for i, v := range d.views {
		b := v.bounds()
		switch v.name {
		case "elevation":
			out[i] = point{x - b.x0, 0}
			y = b.y0 - gap
		case "cut":
			out[i] = point{x - b.x0, y - b.y1}
		case "title":
			out[i] = point{first.x0 - b.x0, under - b.y1}
		}
	}
	return out
}

func (w *dxfWriter) header(d *drawing, places []point, about string) {
	w.pair(999, dxfText(about))
	all := box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for i, v := range d.views {
		b := v.bounds()
		all = all.join(box{b.x0 + places[i].x, b.y0 + places[i].y, b.x1 + places[i].x, b.y1 + places[i].y})
	}
	w.pair(0, "SECTION")
	w.pair(2, "HEADER")
	w.pair(9, "$ACADVER")
	w.pair(1, "AC1009")
	w.pair(9, "$EXTMIN")
	w.at(10, point{all.x0, all.y0})
	w.pair(9, "$EXTMAX")
	w.at(10, point{all.x1, all.y1})
	w.pair(0, "ENDSEC")
	w.pair(0, "SECTION")
	w.pair(2, "TABLES")
	w.lineTypes(d.views[0])
	w.pair(0, "TABLE")
	w.pair(2, "LAYER")
	w.int(70, int(layers))
	for l := range layers {
		w.pair(0, "LAYER")
		w.pair(2, layerNames[l])
		w.int(70, 0)
		w.int(62, layerColors[l])
		if l == hidden {
			w.pair(6, "HIDDEN")
		} else {
			w.pair(6, "CONTINUOUS")
		}
	}
	w.pair(0, "ENDTAB")
	w.styles()
	w.pair(0, "ENDSEC")
	w.pair(0, "SECTION")
	w.pair(2, "BLOCKS")
	w.pair(0, "ENDSEC")
}

func (w *dxfWriter) lineTypes(v *figure) {
	w.pair(0, "TABLE")
	w.pair(2, "LTYPE")
	w.int(70, 2)
	for _, t := range []struct {
		name, about string
		dash        []float64
	}{{"CONTINUOUS", "Solid line", nil}, {"HIDDEN", "_ _ _ _", []float64{v.pt(4), -v.pt(2.4)}}} {
		w.pair(0, "LTYPE")
		w.pair(2, t.name)
		w.int(70, 0)
		w.pair(3, t.about)
		w.int(72, 65)
		w.int(73, len(t.dash))
		sum := 0.0
		for _, x := range t.dash {
			sum += math.Abs(x)
		}
		w.number(40, sum*w.unit)
		for _, x := range t.dash {
			w.number(49, x*w.unit)
		}
	}
	w.pair(0, "ENDTAB")
}

func (w *dxfWriter) styles() {
	w.pair(0, "TABLE")
	w.pair(2, "STYLE")
	w.int(70, 1)
	w.pair(0, "STYLE")
	w.pair(2, "STANDARD")
	w.int(70, 0)
	w.number(40, 0)
	w.number(41, 1)
	w.number(50, 0)
	w.int(71, 0)
	w.number(42, 1)
	w.pair(3, "txt")
	w.pair(4, "")
	w.pair(0, "ENDTAB")
}

// dxfText makes a text safe for one line of the file: plain letters as they
// are, others by their number, signs of control as blanks.
func dxfText(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r == '−' || r == '–':
			b.WriteByte('-')
		case r < ' ' || r == 0x7f:
			b.WriteByte(' ')
		case r == '%':
			b.WriteString("%%%")
		case r < 0x7f:
			b.WriteRune(r)
		case r <= 0xffff:
			fmt.Fprintf(&b, `\U+%04X`, r)
		default:
			b.WriteByte('?')
		}
	}
	if text := strings.TrimRight(b.String(), " "); text != "" {
		return text
	}
	return " "
}
