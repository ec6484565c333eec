package lesson

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// height: push grows with the square of the height and bending with its cube.
var height = lesson{
	id: "height", right: 3,
	stops: func(k *kit) []stop {
		return k.lengths(units.Level, k.pick(4*ft, mm(1200)), heightMost(k), k.pick(4*in, mm(100)))
	},
	start: func(k *kit) float64 { return heightAsked(k).Inches() },
	prints: func(k *kit) [3]float64 {
		return [3]float64{heightBase(k).Inches(), k.pick(9*ft, mm(2700)).Inches(), heightAsked(k).Inches()}
	},
	measure: measureHeight,
	show:    showHeight,
}

func heightBase(k *kit) units.Length  { return k.pick(8*ft, mm(2400)) }
func heightAsked(k *kit) units.Length { return k.pick(10*ft, mm(3000)) }
func heightMost(k *kit) units.Length  { return k.pick(12*ft, mm(3600)) }

// grown is how many times the push and the bending of a wall are those of the
// wall that is compared with, both filled to the top.
func (k *kit) grown(h units.Length) (push, bend float64) {
	low, high := answer(k.held(heightBase(k), heightBase(k))), answer(k.held(h, h))
	a, b := stageOf(&low, calc.Finished), stageOf(&high, calc.Finished)
	return share(thrust(b), thrust(a)), share(float64(most(b).Service), float64(most(a).Service))
}

func measureHeight(k *kit) facts {
	from, to := k.sp.Length(heightBase(k)), k.sp.Length(heightAsked(k))
	push, bend := k.grown(heightAsked(k))
	return facts{ask: []string{from, to}, answer: []string{k.times(bend), k.times(push)}}
}

func showHeight(k *kit) {
	base, h := heightBase(k), units.Length(k.at)
	if k.asking {
		h = base
	}
	in0, in1 := k.held(base, base), k.held(h, h)
	r0, r1, rMost := answer(in0), answer(in1), answer(k.held(heightMost(k), heightMost(k)))
	s0, s1, top := stageOf(&r0, calc.Finished), stageOf(&r1, calc.Finished), stageOf(&rMost, calc.Finished)

	w := k.upright(&in1, room{tallest: heightMost(k), above: floorDepth, left: 0.34})
	_, u := top.Service.MaxDeflection()
	w.bend = elastic(&s1.Service, share(0.11*k.w, u.Inches()))
	push := share(0.27*k.w, pressure(top, 'a', 0))
	w.ground(w.h, 0)
	w.slabAtFoot(true)
	if k.asking {
		w.taller(heightAsked(k).Inches())
	} else {
		w.floor(true)
	}
	w.footing()
	a, b := w.faceX()
	c := bending{d: &s1.Service, a: a, b: b, px: share(w.roomB(16), float64(most(top).Service))}
	w.curve(c, true)
	w.draw()
	w.push(s1, 'a', w.h, push)
	w.nameMark(k.moment(float64(most(s1).Service)), w.mark(c))
	if h != base {
		g := *w
		g.h = base.Inches()
		g.ghost(c, bending{d: &s0.Service, a: a, b: b, px: c.px}, k.sp.Length(base))
	}
	k.call("push", k.force(thrust(s1)), anchor{8, w.px(0) - 22, 1}, anchor{8, w.px(w.h) + 14, 1}, anchor{8, w.px(w.h) - 14, 1})
	k.tellHeight(h)
}

// taller is the outline of a wall, with its ground and its floor, that is not
// built yet.
func (w *stand) taller(h float64) {
	w.s.rect("unbuilt", w.x, w.px(h), w.t*w.k, w.px(w.h)-w.px(h))
	w.s.rect("unbuilt", w.x, w.px(h+floorDepth), w.s.w-w.x+3, floorDepth*w.k)
	w.s.line("lean", -2, w.px(h), w.x, w.px(h))
	w.s.letter("ink", "?", w.x+w.t*w.k/2, (w.px(h)+w.px(w.h))/2)
}

func (k *kit) tellHeight(h units.Length) {
	push, bend := k.grown(h)
	high := share(h.Inches(), heightBase(k).Inches())
	const most = 3.4
	k.meter("height.meter.height", k.timesOf(high), high, most, 1, false)
	k.meter("height.meter.push", k.timesOf(push), push, most, 1, false)
	k.meter("height.meter.bend", k.timesOf(bend), bend, most, 1, false)
	k.tell("height.say", k.sp.Length(h), k.times(bend), k.times(push), k.sp.Length(heightBase(k)))
}
