package lesson

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// hold: the foot takes two thirds of a full fill, the top one third.
var hold = lesson{
	id: "hold", right: 3,
	stops: func(k *kit) []stop {
		return k.lengths(units.Level, k.pick(2*ft, mm(600)), holdHeight(k), k.pick(4*in, mm(100)))
	},
	start:   func(k *kit) float64 { return holdHeight(k).Inches() },
	prints:  func(k *kit) [3]float64 { h := holdHeight(k).Inches(); return [3]float64{h / 2, 0.75 * h, h} },
	measure: measureHold,
	show:    showHold,
}

func holdHeight(k *kit) units.Length { return k.pick(8*ft, mm(2400)) }

// thirty is the length of wall for which the floor edge's force is told.
func thirty(k *kit) units.Length { return k.pick(30*ft, mm(9000)) }

// props of a stage: what holds the foot and what holds the top, service.
func props(st *calc.StageResult) (foot, top float64) {
	if n := len(st.Reactions); n > 1 {
		return float64(st.Reactions[0].Service), float64(st.Reactions[n-1].Service)
	}
	return 0, 0
}

func (k *kit) edge(top float64) string {
	return k.sp.Quantity(units.Quantity{Base: top * thirty(k).Inches(), Kind: units.Load})
}

func measureHold(k *kit) facts {
	r := answer(k.held(holdHeight(k), holdHeight(k)))
	foot, top := props(stageOf(&r, calc.Finished))
	return facts{answer: []string{k.force(foot), k.force(top), k.sp.Length(thirty(k)), k.edge(top)}}
}

func showHold(k *kit) {
	in0 := k.held(holdHeight(k), units.Length(k.at))
	full := answer(k.held(holdHeight(k), holdHeight(k)))
	r := answer(in0)
	st, worst := stageOf(&r, calc.Finished), stageOf(&full, calc.Finished)
	foot, top := props(st)
	mostFoot, _ := props(worst)
	w := k.upright(&in0, room{tallest: in0.Height, above: floorDepth, left: 0.42})
	_, u := worst.Service.MaxDeflection()
	w.bend = elastic(&st.Service, share(0.05*k.w, u.Inches()))
	w.ground(k.at, 0)
	w.slabAtFoot(true)
	w.floor(true)
	w.footing()
	w.draw()
	w.push(st, 'a', k.at, share(0.3*k.w, pressure(worst, 'a', 0)))
	x := w.x + w.t*w.k
	if k.asking {
		k.letter("ink", "?", x+34, w.px(w.floorAt()))
		k.letter("ink", "?", x+34, w.px(2)-14)
		return
	}
	reach := w.roomB(30) * 0.86
	w.holdArrow(w.floorAt(), reach*share(top, mostFoot))
	w.holdArrow(2, reach*share(foot, mostFoot))
	k.call("ink", k.force(top), anchor{x + 0.06*k.w, w.px(w.h) + 16, 1})
	k.say("soft", k.sp.Word("lesson.hold.floor"), anchor{x + 0.06*k.w, w.px(w.h) + 35, 1}, anchor{k.w - 6, w.px(w.h) + 16, -1})
	k.call("ink", k.force(foot), anchor{x + 0.06*k.w, w.px(4) - 34, 1})
	k.say("soft", k.sp.Word("lesson.hold.slab"), anchor{x + 0.06*k.w, w.px(4) - 15, 1}, anchor{k.w - 6, w.px(4) - 15, -1})
	k.call("push", k.force(foot+top), anchor{8, w.px(k.at) + 16, 1}, anchor{8, w.px(k.at) - 14, 1})
	k.tellHold(foot, top)
}

// holdArrow is a force that holds the wall at a level, so long in px.
func (w *stand) holdArrow(level, length float64) {
	x, y := w.x+w.t*w.k+3, w.px(level)
	w.s.arrow("hold heavy", x+max(length, 6), y, x, y, 15)
	w.s.off(x, y-8, length, 16)
}

func (k *kit) tellHold(foot, top float64) {
	all := foot + top
	k.meter("hold.meter.top", k.percent(share(top, all)), top, all, 0, false)
	k.meter("hold.meter.foot", k.percent(share(foot, all)), foot, all, 0, false)
	k.tell("hold.say", k.force(foot), k.force(top), k.sp.Length(thirty(k)), k.edge(top))
}
