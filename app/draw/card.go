package draw

import "standingbeam/calc"

// Card draws one of the four ways to be held as a small picture, 72 by 60: the
// wall, the ground, and what holds the top. Each says by one bold stroke what
// is its own.
func Card(c calc.Condition) string {
	s := &sheet{b: make([]byte, 0, 2<<10)}
	s.raw(`<svg class="picture pictogram" xmlns="http://www.w3.org/2000/svg" aria-hidden="true" focusable="false" viewBox="0 0 72 60">`)
	switch c {
	case calc.FreeTop:
		cardFree(s)
	case calc.TiedToSlab:
		cardTied(s)
	case calc.SoilBothSides:
		cardBoth(s)
	default:
		cardBraced(s)
	}
	s.raw("</svg>")
	return string(s.b)
}

// cardEarth draws ground with its surface at y between two edges, hatched by
// strokes of its own: a card uses no pattern of another picture.
func cardEarth(s *sheet, left, right, y, bottom float64) {
	s.rect("earth", "", left, y, right-left, bottom-y)
	q := &path{}
	for x := left - (bottom - y); x < right; x += 7 {
		x0, y0, x1, y1 := x, bottom, x+(bottom-y), y
		if x0 < left {
			x0, y0 = left, bottom-(left-x)
		}
		if x1 > right {
			x1, y1 = right, y+(x+(bottom-y)-right)
		}
		if x1 > x0 {
			q.move(x0, y0).line(x1, y1)
		}
	}
	s.draw("hatch", q)
	s.segment("surface", left, y, right, y)
}

func cardWall(s *sheet, left, top, footLeft, footRight float64) {
	s.rect("concrete edged", "", footLeft, 46, footRight-footLeft, 7)
	s.rect("concrete edged", "", left, top, 8, 46-top)
}

// A floor lies on the top, over the open side, and pushes back.
func cardBraced(s *sheet) {
	cardEarth(s, 2, 70, 46, 56)
	cardEarth(s, 2, 28, 16, 56)
	cardWall(s, 28, 12, 23, 41)
	s.rect("wood", "", 28, 4, 42, 8)
	s.segment("hold shaft", 66, 8, 44, 8)
	s.draw("hold tip", new(path).head(37, 8, -1, 0, 9))
	s.draw("curve", new(path).move(36, 12).cubic(52, 26, 56, 36, 36, 46))
}

// Nothing at the top: the wall leans, a wide footing holds it.
func cardFree(s *sheet) {
	cardEarth(s, 2, 70, 46, 56)
	cardEarth(s, 2, 34, 16, 56)
	s.draw("lean", new(path).move(34, 46).cubic(34, 34, 40, 20, 46, 8).line(54, 10).cubic(47, 22, 42, 34, 42, 46))
	cardWall(s, 34, 10, 10, 52)
	s.draw("curve", new(path).move(34, 12).cubic(34, 30, 30, 38, 18, 46))
}

// The slab lies on the retained ground and pulls; ticks of drag under it, the
// large force at the foot.
func cardTied(s *sheet) {
	cardEarth(s, 2, 70, 46, 56)
	cardEarth(s, 2, 34, 12, 56)
	s.rect("concrete edged", "", 2, 5, 40, 8)
	s.rect("concrete edged", "", 29, 46, 18, 7)
	s.rect("concrete edged", "", 34, 5, 8, 41)
	s.segment("bar", 38, 9, 8, 9)
	s.draw("drag", new(path).move(4, 19).line(9, 14).move(11, 19).line(16, 14).move(18, 19).line(23, 14))
	s.segment("hold shaft", 30, 26, 16, 26)
	s.draw("hold tip", new(path).head(9, 26, -1, 0, 9))
	s.segment("hold heavy shaft", 68, 41, 54, 41)
	s.draw("hold heavy tip", new(path).head(43, 41, -1, 0, 13))
}

// Two grounds, one higher, push against each other.
func cardBoth(s *sheet) {
	cardEarth(s, 2, 70, 46, 56)
	cardEarth(s, 2, 32, 12, 56)
	cardEarth(s, 40, 70, 32, 56)
	cardWall(s, 32, 8, 26, 46)
	s.draw("push shaft", new(path).move(6, 38).line(24, 38).move(14, 25).line(24, 25).move(58, 42).line(48, 42))
	s.draw("push tip", new(path).head(31, 38, 1, 0, 8).head(31, 25, 1, 0, 8).head(41, 42, -1, 0, 8))
}
