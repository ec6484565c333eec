package statics

import "standingbeam/calc/units"

// cuts returns the segments between all levels at which something changes,
// from 0 up to the top, with no diagrams yet.
func cuts(s *Strip) []Segment {
	var room [32]float64
	ys := append(room[:0], 0)
	for _, l := range s.Loads {
		ys = level(ys, l.From, s.Top)
		ys = level(ys, l.To, s.Top)
	}
	for _, p := range s.Points {
		ys = level(ys, p.At, s.Top)
	}
	for _, c := range s.Couples {
		ys = level(ys, c.At, s.Top)
	}
	for _, p := range s.Supports {
		ys = level(ys, p.At, s.Top)
	}
	segs := make([]Segment, len(ys))
	for i, y := range ys {
		segs[i] = Segment{From: units.Length(y), To: s.Top}
		if i > 0 {
			segs[i-1].To = units.Length(y)
		}
	}
	return segs
}

// level puts y into the ascending list ys, which starts with 0, where it lies
// within the strip and is not there yet.
func level(ys []float64, at, top units.Length) []float64 {
	y := at.Inches()
	if !(y > 0 && at < top) {
		return ys
	}
	i := len(ys)
	for y < ys[i-1] {
		i--
	}
	if !(ys[i-1] < y) {
		return ys
	}
	ys = append(ys, 0)
	copy(ys[i+1:], ys[i:])
	ys[i] = y
	return ys
}

// locate returns the segment that holds height y, the upper one at a cut, and
// the height above its lower end. y is taken into the strip.
func locate(segs []Segment, y float64) (*Segment, float64) {
	i := len(segs) - 1
	for i > 0 && y < segs[i].From.Inches() {
		i--
	}
	t := y - segs[i].From.Inches()
	return &segs[i], max(0, min(t, segs[i].length()))
}
