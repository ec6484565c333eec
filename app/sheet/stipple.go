package sheet

import "math"

// stipple covers cut concrete with specks, denser than even but never in rows,
// and the same every time.
func (v *figure) stipple(b box) {
	step := v.pt(7.5)
	seed := uint32(2463534242)
	random := func() float64 {
		seed ^= seed << 13
		seed ^= seed >> 17
		seed ^= seed << 5
		return float64(seed) / float64(math.MaxUint32)
	}
	columns, rows := int((b.x1-b.x0)/step)+1, int((b.y1-b.y0)/step)+1
	if columns*rows > 4000 {
		return
	}
	edge := v.pt(1.6)
	for i := range columns {
		for j := range rows {
			p := point{b.x0 + (float64(i)+random())*step, b.y0 + (float64(j)+random())*step}
			if p.x > b.x0+edge && p.x < b.x1-edge && p.y > b.y0+edge && p.y < b.y1-edge {
				v.specks = append(v.specks, p)
			}
		}
	}
}

// earth draws the line of the ground and, under it, groups of strokes that
// lean to both sides in turn.
func (v *figure) earth(x0, x1, level float64) {
	if x1-x0 < v.pt(2) {
		return
	}
	v.line(ground, medium, point{x0, level}, point{x1, level})
	deep, group := v.pt(bandDepth), v.pt(18)
	for i := 0; float64(i)*group < x1-x0-v.pt(6) && i < 400; i++ {
		for k := 0; k < 3; k++ {
			x := x0 + float64(i)*group + float64(k)*v.pt(5)
			a, b := point{x + deep, level}, point{x, level - deep}
			if i%2 == 1 {
				a.x, b.x = x, x+deep
			}
			if a.x <= x1 && b.x <= x1 {
				v.line(hatching, thin, a, b)
			}
		}
	}
}

// bandDepth is how deep the strokes under the ground reach, in points.
const bandDepth = 9.0

// breakLine is the long line with a kink where a drawing leaves off.
func (v *figure) breakLine(from, to point) {
	dx, dy := to.x-from.x, to.y-from.y
	far := math.Hypot(dx, dy)
	if far < v.pt(4) {
		return
	}
	dx, dy = dx/far, dy/far
	k := math.Min(v.pt(6), far*0.3)
	at := func(along, aside float64) point {
		return point{from.x + dx*along - dy*aside, from.y + dy*along + dx*aside}
	}
	past := v.pt(4)
	m := far / 2
	v.line(dimensions, thin, at(-past, 0), at(m-k/2, 0), at(m-k/6, k/1.6), at(m+k/6, -k/1.6), at(m+k/2, 0), at(far+past, 0))
}
