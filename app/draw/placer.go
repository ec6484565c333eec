package draw

import "math"

// placed is a label with its place.
type placed struct {
	*label
	spot   spot
	box    Box
	leader bool
	lx, ly float64 // where the leader meets the label
}

// placer puts labels where they collide with nothing.
type placer struct {
	w, h  float64
	taken []Box
	solid [2]Box // wall and footing: a leader seldom runs through them
	inked inked
	done  []placed
	lost  []string // labels that found no place
}

// keep reserves a box for something that no label may cover.
func (p *placer) keep(b Box) { p.taken = append(p.taken, b) }

func (p *placer) free(b Box) bool {
	if b.X < margin || b.Y < margin || b.X+b.W > p.w-margin || b.Y+b.H > p.h-margin {
		return false
	}
	for i := range p.taken {
		if b.overlaps(p.taken[i], margin) {
			return false
		}
	}
	return true
}

// place finds a place for every label, in the order of their ranks.
func (p *placer) place(labels []label) {
	p.inked.sum()
	for rank := 0; rank < lowestRank; rank++ {
		for i := range labels {
			if labels[i].rank == rank && len(labels[i].lines) > 0 {
				p.one(&labels[i])
			}
		}
	}
}

// lowestRank is one more than the rank of the least of labels.
const lowestRank = 10

func (p *placer) one(l *label) {
	l.measure()
	best, found, least := spot{}, false, math.Inf(1)
	for i, s := range l.spots {
		b := l.box(s)
		if !p.free(b) {
			continue
		}
		c := p.inked.cost(b) + 0.25*float64(i)
		if c < least {
			c += p.crossing(l, b)
		}
		if c < least {
			best, found, least = s, true, c
		}
	}
	if (!found || least > 8) && l.wander {
		for _, bound := range [...]float64{7, 18, math.Inf(1)} {
			b := min(bound, least-3)
			if s, c := p.search(l, b); c < b {
				best, found, least = s, true, c
			}
			if found || bound > least {
				break
			}
		}
	}
	if !found {
		p.lost = append(p.lost, l.lines[0].text)
		return
	}
	if l.most > 0 && least > l.most {
		return
	}
	p.settle(l, best)
}

// search looks over the whole picture for the free place that is nearest to
// the label's point and covers least, and its cost: the bound where no place
// costs less.
func (p *placer) search(l *label, bound float64) (best spot, least float64) {
	least = bound
	// What is farther than this costs more by its leader alone.
	reach := min((least-1.5)*14, p.w+p.h)
	top, bottom := l.y, l.y
	if l.hi > l.lo {
		top, bottom = l.lo, l.hi
	}
	y0, y1 := max(margin, top-reach-l.h), min(p.h-margin-l.h, bottom+reach)
	x0, x1 := max(margin, l.x-reach-l.w), min(p.w-margin-l.w, l.x+reach)
	for y := y0; y <= y1; y += 8 {
		up := apart(l.target(Box{Y: y, H: l.h}), y, l.h)
		for x := x0; x <= x1; x += 12 {
			if along := apart(l.x, x, l.w); along*along+up*up >= reach*reach {
				continue
			}
			b := Box{X: x, Y: y, W: l.w, H: l.h}
			lx, ly := nearest(b, l.x, l.target(b))
			dx, dy := lx-l.x, ly-l.target(b)
			c := 1.5 + math.Sqrt(dx*dx+dy*dy)/14
			if c >= least {
				continue
			}
			if c += p.inked.cost(b); c >= least || !p.free(b) {
				continue
			}
			if c += p.crossing(l, b); c < least {
				best, least = spot{x: x, y: y, h: 1, v: 1}, c
				reach = (least - 1.5) * 14
			}
		}
	}
	return best, least
}

// apart is how far a point lies outside a length from a start.
func apart(at, from, length float64) float64 {
	switch {
	case at < from:
		return from - at
	case at > from+length:
		return at - from - length
	}
	return 0
}

// crossing is the cost of a leader that would run over other labels, the wall or
// the footing.
func (p *placer) crossing(l *label, b Box) (sum float64) {
	if l.tie == 0 {
		return 0
	}
	y := l.target(b)
	lx, ly := nearest(b, l.x, y)
	dx, dy := l.x-lx, y-ly
	far := math.Sqrt(dx*dx + dy*dy)
	if far <= l.tie {
		return 0
	}
	runs := func(d *Box) bool {
		for t := 6.0; t < far-4; t += 6 {
			if x, y := lx+dx*t/far, ly+dy*t/far; x > d.X-2 && x < d.X+d.W+2 && y > d.Y && y < d.Y+d.H {
				return true
			}
		}
		return false
	}
	for i := range p.solid {
		// Over one that it speaks of, a leader may run.
		if d := &p.solid[i]; (l.x <= d.X || l.x >= d.X+d.W) && runs(d) {
			sum += 12
		}
	}
	for i := range p.done {
		if runs(&p.done[i].box) {
			sum += 25
		}
	}
	return sum
}

// settle takes the place and the way of the leader.
func (p *placer) settle(l *label, s spot) {
	b := l.box(s)
	d := placed{label: l, spot: s, box: b}
	p.keep(b)
	l.y = l.target(b)
	d.lx, d.ly = nearest(b, l.x, l.y)
	if far := math.Hypot(d.lx-l.x, d.ly-l.y); l.tie > 0 && far > l.tie {
		d.leader = true
		p.inked.line(d.lx, d.ly, l.x, l.y, 6)
	}
	p.done = append(p.done, d)
}

// nearest is the point of a box's edge that is closest to (x, y), held to the
// middle of a line of type at the sides.
func nearest(b Box, x, y float64) (float64, float64) {
	nx := min(max(x, b.X), b.X+b.W)
	ny := min(max(y, b.Y), b.Y+b.H)
	if x < b.X || x > b.X+b.W {
		ny = min(max(y, b.Y+8), b.Y+b.H-8)
	}
	return nx, ny
}
