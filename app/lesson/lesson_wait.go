package lesson

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// wait: a wall that a floor is to hold stands alone until the floor is on.
var wait = lesson{
	id: "wait", right: 3,
	stops: waitStops,
	start: func(k *kit) float64 { return k.pick(3*ft, mm(900)).Inches() },
	prints: func(k *kit) [3]float64 {
		return [3]float64{k.pick(3*ft, mm(900)).Inches(), k.pick(5*ft, mm(1500)).Inches(), waitHeight(k).Inches()}
	},
	measure: measureWait,
	show:    showWait,
}

func waitHeight(k *kit) units.Length { return k.pick(9*ft, mm(2700)) }

func waitStops(k *kit) []stop {
	return k.lengths(units.Level, k.pick(1*ft, mm(300)), waitHeight(k), k.pick(4*in, mm(100)))
}

// waitAnswer is the wall as it will be, with nothing that holds it today.
func (k *kit) waitAnswer() calc.Result {
	w := k.held(waitHeight(k), waitHeight(k))
	w.Today = calc.Today{Given: true}
	return answer(w)
}

func measureWait(k *kit) facts {
	r := k.waitAnswer()
	return facts{ask: []string{k.sp.Length(waitHeight(k))}, answer: []string{k.lowLength(r.Today.Level), k.ends(r.Today.Governs)}}
}

func showWait(k *kit) {
	r := k.waitAnswer()
	in0 := k.free(waitHeight(k), units.Length(k.at))
	st := answer(in0)
	s := stageOf(&st, calc.Finished)
	limitAt := r.Today.Level.Inches()
	w := k.upright(&in0, room{tallest: in0.Height, above: floorDepth, left: 0.45})
	over := math.Max(0, (k.at-limitAt)/(w.h-limitAt))
	if k.asking {
		over = 0
	}
	if over > 0 {
		w.bend = w.bend.leaning(0.22 * over * w.k)
		w.shift = 5 + 9*over
	}
	ground := k.at
	if k.asking {
		ground = 0
	}
	w.ground(ground, 0)
	w.slabAtFoot(false)
	k.rect("unbuilt", w.x+2, w.px(w.h+floorDepth), k.w-w.x, floorDepth*w.k)
	w.footing()
	w.draw()
	if k.asking {
		w.waitLevels()
		return
	}
	w.push(s, 'a', k.at, share(0.19*k.w, float64(fluid)*w.h))
	k.line("limit", 0, w.px(limitAt), w.x+w.shift, w.px(limitAt))
	k.call("ink", k.lowLength(r.Today.Level), anchor{8, w.px(limitAt) - 12, 1}, anchor{8, w.px(limitAt) + 12, 1}, anchor{w.x + w.shift + w.t*w.k + 12, w.px(limitAt), 1})
	k.say("soft", k.sp.Word("lesson.wait.slab"), anchor{k.w - 6, w.px(4) - 12, -1}, anchor{k.w - 6, w.px(20), -1})
	k.say("soft", k.sp.Word("lesson.wait.floor"), anchor{k.w - 8, w.px(w.h + floorDepth/2), -1}, anchor{k.w - 6, w.px(w.h) + 14, -1}, anchor{k.w - 6, w.px(w.h) + 32, -1})
	k.tellWait(r, over > 0)
}

// waitLevels marks a third, two thirds and the whole of the wall.
func (w *stand) waitLevels() {
	for i := range 3 {
		y := w.px(w.h * float64(3-i) / 3)
		w.s.line("limit", 8, y, w.x, y)
	}
	w.letters(spot{34, w.px(w.h) + 2}, spot{34, w.px(w.h * 2 / 3)}, spot{34, w.px(w.h / 3)})
}

func (k *kit) tellWait(r calc.Result, over bool) {
	level := r.Today.Level.Inches()
	k.meter("wait.meter", k.sp.Length(units.Length(k.at)), k.at, waitHeight(k).Inches(), level, over)
	if over {
		k.tell("wait.say.falls", k.sp.Length(units.Length(k.at)), k.lowLength(r.Today.Level), k.sp.Word("name."+r.Today.Governs))
		return
	}
	k.tell("wait.say.stands", k.sp.Length(units.Length(k.at)), k.lowLength(r.Today.Level))
}
