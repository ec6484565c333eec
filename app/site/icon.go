//go:build !js

package site

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"slices"
	"strings"
)

// The icon: a wall on its footing, the ground it holds, and its bending curve
// on the open side. It fills its square and keeps the drawing inside the
// middle four fifths, so that it may be masked to any shape.

// iconSide is the side of the square the shapes are drawn in.
const iconSide = 64

// mark is one filled polygon, or one polyline where width is not zero.
type mark struct {
	points    []point
	width     float64
	colour    color.RGBA
	low, high point // of the box around it
}

type point struct{ x, y float64 }

var (
	paper    = color.RGBA{0xff, 0xfd, 0xf4, 0xff}
	ink      = color.RGBA{0x16, 0x15, 0x0f, 0xff}
	earth    = color.RGBA{0xe6, 0xd9, 0xbb, 0xff}
	concrete = color.RGBA{0xff, 0xff, 0xff, 0xff}
	band     = color.RGBA{0xc9, 0xcd, 0xd0, 0xff}
	steel    = color.RGBA{0x1f, 0x5a, 0x8c, 0xff}
	push     = color.RGBA{0xb3, 0x40, 0x0f, 0xff}
)

func iconMarks() []mark {
	curve := bendingCurve()
	marks := []mark{
		newMark(box(0, 0, iconSide, iconSide), 0, paper),
		newMark(box(9, 20, 27, 54), 0, earth),
		newMark(append(slices.Clone(curve), point{36, 48}, point{36, 14}), 0, band),
	}
	for _, y := range []float64{28, 36, 44} {
		marks = append(marks, newMark([]point{{25 - (y-20)*0.55, y}, {25, y}}, 2, push))
	}
	return append(marks,
		newMark(box(26, 12, 38, 50), 0, ink),
		newMark(box(28, 14, 36, 50), 0, concrete),
		newMark(box(20, 48, 44, 56), 0, ink),
		newMark(box(22, 50, 42, 54), 0, concrete),
		newMark([]point{{33.5, 17}, {33.5, 51}}, 1.8, steel),
		newMark(curve, 2.4, ink),
	)
}

func newMark(points []point, width float64, colour color.RGBA) mark {
	m := mark{points: points, width: width, colour: colour, low: points[0], high: points[0]}
	for _, p := range points {
		m.low = point{min(m.low.x, p.x-width/2), min(m.low.y, p.y-width/2)}
		m.high = point{max(m.high.x, p.x+width/2), max(m.high.y, p.y+width/2)}
	}
	return m
}

// bendingCurve is the moment of a simply supported strip under a triangular
// load that grows downward, x(1 − x²) with x from the top, scaled to fit.
func bendingCurve() []point {
	const top, bottom, base, reach, steps = 14, 48, 38, 17, 32
	highest := 2 / (3 * math.Sqrt(3)) // of x(1 − x²), at x = 1/√3
	var points []point
	for i := 0; i <= steps; i++ {
		x := float64(i) / steps
		points = append(points, point{base + reach*x*(1-x*x)/highest, top + (bottom-top)*x})
	}
	return points
}

func box(x0, y0, x1, y1 float64) []point {
	return []point{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}
}

// iconSVG returns the icon as a drawing.
func iconSVG() string {
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d">`+"\n", iconSide, iconSide)
	for _, m := range iconMarks() {
		var at []string
		for _, p := range m.points {
			at = append(at, fmt.Sprintf("%.2f,%.2f", p.x, p.y))
		}
		hex := fmt.Sprintf("#%02x%02x%02x", m.colour.R, m.colour.G, m.colour.B)
		if m.width > 0 {
			fmt.Fprintf(&b, `<polyline points="%s" fill="none" stroke="%s" stroke-width="%.1f" stroke-linecap="round" stroke-linejoin="round"/>`+"\n", strings.Join(at, " "), hex, m.width)
		} else {
			fmt.Fprintf(&b, `<polygon points="%s" fill="%s"/>`+"\n", strings.Join(at, " "), hex)
		}
	}
	b.WriteString("</svg>\n")
	return b.String()
}

// iconPNG returns the icon as a picture of size by size pixels.
func iconPNG(size int) ([]byte, error) {
	const samples = 3 // along each side of a pixel
	marks := iconMarks()
	picture := image.NewRGBA(image.Rect(0, 0, size, size))
	scale := iconSide / float64(size*samples)
	for py := range size {
		for px := range size {
			sample := func(i int) color.RGBA {
				return colourAt(marks, point{(float64(px*samples+i%samples) + 0.5) * scale, (float64(py*samples+i/samples) + 0.5) * scale})
			}
			const n = samples * samples
			// No mark is so small that it could lie between the corners.
			if c := sample(0); c == sample(samples-1) && c == sample(n-samples) && c == sample(n-1) {
				picture.SetRGBA(px, py, c)
				continue
			}
			var r, g, b int
			for i := range n {
				c := sample(i)
				r, g, b = r+int(c.R), g+int(c.G), b+int(c.B)
			}
			picture.SetRGBA(px, py, color.RGBA{uint8(r / n), uint8(g / n), uint8(b / n), 0xff})
		}
	}
	var out bytes.Buffer
	err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&out, picture)
	return out.Bytes(), err
}

// colourAt is the colour of the uppermost mark over a point.
func colourAt(marks []mark, at point) color.RGBA {
	for i := len(marks) - 1; i > 0; i-- {
		if marks[i].covers(at) {
			return marks[i].colour
		}
	}
	return marks[0].colour
}

func (m mark) covers(at point) bool {
	if m.far(at) {
		return false
	}
	inside := false
	for i, p := range m.points {
		if m.width > 0 {
			if i > 0 && distance(at, m.points[i-1], p) <= m.width/2 {
				return true
			}
			continue
		}
		q := m.points[(i+1)%len(m.points)]
		if (p.y > at.y) != (q.y > at.y) && at.x < p.x+(at.y-p.y)/(q.y-p.y)*(q.x-p.x) {
			inside = !inside
		}
	}
	return inside
}

// far tells whether a point lies outside of the box around the mark.
func (m mark) far(at point) bool {
	return at.x < m.low.x || at.y < m.low.y || at.x > m.high.x || at.y > m.high.y
}

// distance from a point to the segment from p to q.
func distance(at, p, q point) float64 {
	dx, dy := q.x-p.x, q.y-p.y
	t := ((at.x-p.x)*dx + (at.y-p.y)*dy) / (dx*dx + dy*dy)
	t = min(max(t, 0), 1)
	return math.Hypot(at.x-p.x-t*dx, at.y-p.y-t*dy)
}
