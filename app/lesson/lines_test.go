package lesson

import (
	"encoding/xml"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// stroke is a straight piece of a line that is drawn.
type stroke struct {
	class          string
	x1, y1, x2, y2 float64
}

// quietLines may run under a label: the filling of the ground and of water, and
// the wires that lead to a label.
var quietLines = []string{"p-earth", "p-fill", "p-hatch", "p-stone", "p-leader", "p-tick", "p-bearing", "p-area", "p-grain"}

// strokes reads the lines of a picture, as they lie after every turn of a
// group.
func strokes(t *testing.T, svg string) (out []stroke) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(svg))
	place := []func(x, y float64) (float64, float64){func(x, y float64) (float64, float64) { return x, y }}
	for {
		tok, err := d.Token()
		if err != nil {
			return out
		}
		switch e := tok.(type) {
		case xml.EndElement:
			place = place[:len(place)-1]
		case xml.StartElement:
			a := map[string]string{}
			for _, v := range e.Attr {
				a[v.Name.Local] = v.Value
			}
			now := place[len(place)-1]
			var angle, cx, cy float64
			if n, _ := fmt.Sscanf(a["transform"], "rotate(%g %g %g)", &angle, &cx, &cy); n == 3 {
				sin, cos := math.Sincos(angle * math.Pi / 180)
				now = func(x, y float64) (float64, float64) {
					return cx + (x-cx)*cos - (y-cy)*sin, cy + (x-cx)*sin + (y-cy)*cos
				}
			}
			place = append(place, now)
			if e.Name.Local != "path" || slices.ContainsFunc(quietLines, func(c string) bool { return slices.Contains(strings.Fields(a["class"]), c) }) {
				continue
			}
			out = append(out, track0(a["class"], a["d"], now)...)
		}
	}
}

// track0 takes an outline of moves, lines and ends apart.
func track0(class, d string, place func(x, y float64) (float64, float64)) (out []stroke) {
	var x0, y0, x, y float64
	for _, part := range strings.FieldsFunc(strings.NewReplacer("M", "|M", "L", "|L", "Z", "|Z").Replace(d), func(r rune) bool { return r == '|' }) {
		nx, ny := x0, y0
		if part[0] != 'Z' {
			at := strings.Fields(part[1:])
			if len(at) != 2 {
				return nil // a pattern's arc
			}
			nx, _ = strconv.ParseFloat(at[0], 64)
			ny, _ = strconv.ParseFloat(at[1], 64)
		}
		if part[0] == 'M' {
			x0, y0 = nx, ny
		} else {
			s := stroke{class: class}
			s.x1, s.y1 = place(x, y)
			s.x2, s.y2 = place(nx, ny)
			out = append(out, s)
		}
		x, y = nx, ny
	}
	return out
}

// meets is whether a line runs through the letters of a label.
func (s stroke) meets(b Box) bool {
	const in = 2.5 // of a box's height, over and under the letters
	if max(s.x1, s.x2) < b.X || min(s.x1, s.x2) > b.X+b.W || max(s.y1, s.y2) < b.Y || min(s.y1, s.y2) > b.Y+b.H {
		return false
	}
	n := int(math.Hypot(s.x2-s.x1, s.y2-s.y1)) + 1
	for i := 0; i <= n; i++ {
		f := float64(i) / float64(n)
		x, y := s.x1+f*(s.x2-s.x1), s.y1+f*(s.y2-s.y1)
		if x > b.X && x < b.X+b.W && y > b.Y+in && y < b.Y+b.H-in {
			return true
		}
	}
	return false
}

// checkLines fails where a line runs through a label.
func checkLines(t *testing.T, name, svg string, boxes []Box) {
	t.Helper()
	for _, s := range strokes(t, svg) {
		for _, b := range boxes {
			if s.meets(b) {
				t.Errorf("%s: %q lies on %s", name, b.Text, s.class)
				return
			}
		}
	}
}

func TestLabelsKeepOffLines(t *testing.T) {
	screens(func(name string, _ Form, v View) { checkLines(t, name, v.Picture.SVG, v.Picture.Boxes) })
}
