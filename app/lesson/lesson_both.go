package lesson

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// both: low ground before a wall takes off little of what high ground does
// behind it.
var both = lesson{
	id: "both", right: 3,
	stops:   bothStops,
	start:   func(k *kit) float64 { return (bothHeight(k) / 2).Inches() },
	prints:  func(k *kit) [3]float64 { h := bothHeight(k).Inches(); return [3]float64{0, h / 2, h} },
	measure: measureBoth,
	show:    showBoth,
}

func bothHeight(k *kit) units.Length { return k.pick(8*ft, mm(2400)) }

func bothStops(k *kit) []stop {
	out := k.lengths(units.Level, 0, bothHeight(k), k.pick(4*in, mm(100)))
	out[0].text = k.sp.Word("lesson.both.at.none")
	return out
}

func (k *kit) bothWall(low units.Length) calc.Input {
	w := k.free(bothHeight(k), bothHeight(k))
	w.Condition, w.GradeB = calc.SoilBothSides, low
	w.Footing.Width = k.pick(4*ft, mm(1200))
	return w
}

// atFoot is the bending at the foot at service loads, as a size.
func atFoot(st *calc.StageResult) float64 {
	_, m := st.Service.MomentLimits(0)
	return math.Abs(float64(m))
}

func measureBoth(k *kit) facts {
	one, two := answer(k.bothWall(0)), answer(k.bothWall(bothHeight(k)/2))
	off := 1 - share(atFoot(stageOf(&two, calc.Finished)), atFoot(stageOf(&one, calc.Finished)))
	return facts{ask: []string{k.sp.Length(bothHeight(k))}, answer: []string{k.sp.Number(100*off, 1) + "%"}}
}

func showBoth(k *kit) {
	in0 := k.bothWall(units.Length(k.at))
	one := answer(k.bothWall(0))
	r := answer(in0)
	st, worst := stageOf(&r, calc.Finished), stageOf(&one, calc.Finished)
	w := k.upright(&in0, room{tallest: in0.Height, above: 6, left: 0.44})
	w.toe, w.heel = w.toe*0.7, w.heel*0.7
	_, u := worst.Service.MaxDeflection()
	if !k.asking {
		w.bend = elastic(&st.Service, share(0.11*k.w, u.Inches()))
		w.bend.whole = calc.FaceB
	}
	w.ground(w.h, k.at)
	w.footing()
	w.draw()
	px := share(0.36*k.w, pressure(worst, 'a', 0))
	w.push(st, 'a', w.h, px)
	w.push(st, 'b', k.at, px)
	left := share(atFoot(st), atFoot(worst))
	if !k.asking {
		if left > 0.05 {
			w.crack(2, calc.FaceA, 8*left, 0.7)
		}
		k.call("ink", k.percent(left), anchor{k.w - 6, w.px(w.h*0.88) - 2, -1})
		k.say("soft", k.sp.Word("lesson.both.left"), anchor{k.w - 6, w.px(w.h*0.88) + 17, -1})
		k.tellBoth(left)
		return
	}
	k.letter("ink", "?", w.x+w.t*w.k/2, w.px(0)-14)
}

func (k *kit) tellBoth(left float64) {
	k.meter("both.meter.low", k.percent(share(k.at, bothHeight(k).Inches())), k.at, bothHeight(k).Inches(), 0, false)
	k.meter("both.meter.left", k.percent(left), left, 1, 0, false)
	if k.at <= 0 {
		k.tell("both.say.one")
		return
	}
	k.tell("both.say", k.sp.Length(units.Length(k.at)), k.percent(left))
}
