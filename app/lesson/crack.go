package lesson

import (
	"math"

	"standingbeam/calc"
)

// crack draws a crack that opens at a level on face f, mouth px wide, over a
// share of the thickness.
func (w *stand) crack(level float64, f calc.Face, mouth, share float64) {
	if mouth < 0.4 || level < 0 || level > w.h {
		return
	}
	a, b := w.pair(level, 1)
	from, to := b, a
	if f == calc.FaceA {
		from, to = a, b
	}
	dx, dy := (to.x-from.x)*share, (to.y-from.y)*share
	m := mouth / 2
	jag := math.Min(1.6, 0.05*math.Hypot(dx, dy))
	w.s.path("crack", new(track).
		move(from.x, from.y-m).
		to(from.x+dx*0.35, from.y+dy*0.35-m*0.7+jag).
		to(from.x+dx*0.65, from.y+dy*0.65-m*0.3-jag).
		to(from.x+dx, from.y+dy).
		to(from.x+dx*0.65, from.y+dy*0.65+m*0.3-jag).
		to(from.x+dx*0.35, from.y+dy*0.35+m*0.7+jag).
		to(from.x, from.y+m).close())
}

// bar draws a bar that stands at inches from face A, between two levels.
func (w *stand) bar(from, to, inches float64) {
	n := max(4, int((to-from)*w.k/10))
	t := &track{}
	for i := 0; i <= n; i++ {
		a, b := w.pair(from+(to-from)*float64(i)/float64(n), -1)
		r := inches / w.t
		p := spot{a.x + (b.x-a.x)*r, a.y + (b.y-a.y)*r}
		if i == 0 {
			t.move(p.x, p.y)
		} else {
			t.to(p.x, p.y)
		}
	}
	w.s.path("bar", t)
}
