package calc

import "standingbeam/calc/stability"

// room is where the free bodies of one answer lie: a search asks for many, one
// after the other, and gives each one's place to the next.
type room struct {
	probe   *room // for the bodies of a search
	pushes  []stability.Push
	weights []stability.Weight
	cases   []factoredBody
}

func newRoom() *room { return &room{probe: new(room)} }

// clear gives up what lies there.
func (r *room) clear() { r.pushes, r.weights, r.cases = r.pushes[:0], r.weights[:0], r.cases[:0] }

// take returns an empty slice with places for n of its own, out of a piece of
// chunk places or as many as it takes.
func take[T any](from *[]T, n, chunk int) []T {
	s := *from
	if cap(s)-len(s) < n {
		s = make([]T, 0, max(n, chunk))
	}
	*from = s[:len(s)+n]
	return s[len(s) : len(s) : len(s)+n]
}

// copied is a free body with lists of its own.
func (w *wall) copied(b stability.Body) stability.Body {
	b.Drive = append(take(&w.room.pushes, len(b.Drive), 30), b.Drive...)
	b.Resist = append(take(&w.room.pushes, len(b.Resist), 30), b.Resist...)
	b.Weights = append(take(&w.room.weights, len(b.Weights), 36), b.Weights...)
	b.Uplift = append(take(&w.room.weights, len(b.Uplift), 36), b.Uplift...)
	return b
}
