package draw

import "math"

// Box is the space that one line of type takes in the picture.
type Box struct {
	Text       string
	X, Y, W, H float64
}

func (b Box) overlaps(c Box, gap float64) bool {
	return b.X < c.X+c.W+gap && c.X < b.X+b.W+gap && b.Y < c.Y+c.H+gap && c.Y < b.Y+b.H+gap
}

// line is one line of a label.
type line struct {
	text string
	bold bool
	soft bool // said in a lower voice
}

// spot is a place where a label may stand: a point, and on which side of it
// the label lies. h and v are -1 for left of or above the point, 0 for centred
// on it, 1 for right of or below it. A turned label reads upward.
type spot struct {
	x, y   float64
	h, v   int8
	turned bool
}

// label is what the picture wants to say at one place. Lines are stacked.
// The spots are tried in their order; when none is free, a label that may
// wander goes to the nearest free place.
type label struct {
	class  string // colour
	lines  []line
	spots  []spot
	x, y   float64 // the point it speaks of
	lo, hi float64 // or, when set, the stretch from y = lo to hi at that x
	rank   int     // lesser labels have higher ranks and are dropped first
	wander bool
	w, h   float64 // its size, see measure
	tie    float64 // farther than this from its point it gets a leader; 0 = never
	most   float64 // that its place may cost, else it is left out; 0 = any cost
}

// Type sizes. Nothing in the picture is smaller.
const (
	typeSize = 14.0
	boldSize = 15.0
	margin   = 3.0 // between a label and the picture's edge or another label
)

func (l line) size() float64 {
	if l.bold {
		return boldSize
	}
	return typeSize
}

// height is the pitch of a line: whole pixels, as browsers round it.
func (l line) height() float64 {
	if l.bold {
		return 18
	}
	return 17
}

func (l line) width() float64 { return textWidth(l.text, l.size(), l.bold) }

// measure finds the size of the whole label.
func (l *label) measure() {
	l.w, l.h = 0, 0
	for _, n := range l.lines {
		l.w = math.Max(l.w, n.width())
		l.h += n.height()
	}
}

// box returns the space the label takes at s.
func (l *label) box(s spot) Box {
	w, h := l.w, l.h
	if s.turned {
		w, h = h, w
	}
	b := Box{X: s.x - w/2, Y: s.y - h/2, W: w, H: h}
	switch s.h {
	case -1:
		b.X = s.x - w
	case 1:
		b.X = s.x
	}
	switch s.v {
	case -1:
		b.Y = s.y - h
	case 1:
		b.Y = s.y
	}
	return b
}

// target is the height of the point that a label in box b speaks of.
func (l *label) target(b Box) float64 {
	if l.hi <= l.lo {
		return l.y
	}
	return min(max(b.Y+b.H/2, l.lo), l.hi)
}
