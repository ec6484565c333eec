package lesson

import (
	"standingbeam/calc"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// water: standing water about doubles the bending.
var water = lesson{
	id: "water", right: 3,
	stops:   waterStops,
	start:   func(k *kit) float64 { return waterHeight(k).Inches() },
	prints:  func(k *kit) [3]float64 { h := waterHeight(k).Inches(); return [3]float64{0, h / 2, h} },
	measure: measureWater,
	show:    showWater,
}

func waterHeight(k *kit) units.Length { return k.pick(8*ft, mm(2400)) }

func waterStops(k *kit) []stop {
	out := k.lengths(units.Level, 0, waterHeight(k), k.pick(4*in, mm(100)))
	out[0].text = k.sp.Word("lesson.water.at.none")
	return out
}

func (k *kit) waterWall(level units.Length) calc.Input {
	w := k.held(waterHeight(k), waterHeight(k))
	w.Water = calc.Water{Standing: level > 0, Level: level}
	return w
}

func measureWater(k *kit) facts {
	dry, wet := answer(k.waterWall(0)), answer(k.waterWall(waterHeight(k)))
	a, b := stageOf(&dry, calc.Finished), stageOf(&wet, calc.Finished)
	return facts{answer: []string{k.times(share(float64(most(b).Service), float64(most(a).Service))), k.times(share(thrust(b), thrust(a)))}}
}

func showWater(k *kit) {
	level := k.at
	if k.asking {
		level = 0
	}
	in0 := k.waterWall(units.Length(level))
	dry, full := answer(k.waterWall(0)), answer(k.waterWall(waterHeight(k)))
	r := answer(in0)
	s0, s1, top := stageOf(&dry, calc.Finished), stageOf(&r, calc.Finished), stageOf(&full, calc.Finished)
	w := k.upright(&in0, room{tallest: in0.Height, above: floorDepth, left: 0.42})
	_, u := top.Service.MaxDeflection()
	w.bend = elastic(&s1.Service, share(0.05*k.w, u.Inches()))
	a, b := w.faceX()
	c := bending{d: &s1.Service, a: a, b: b, px: share(w.roomB(34), float64(most(top).Service))}
	w.ground(w.h, 0)
	w.water(level)
	w.slabAtFoot(true)
	w.floor(true)
	w.footing()
	w.drain(level > 0)
	w.curve(c, true)
	if level > 0 {
		dryCurve := c
		dryCurve.d = &s0.Service
		w.ghost(c, dryCurve, k.sp.Word("lesson.water.dry"))
	}
	w.draw()
	px := share(0.3*k.w, pressure(top, 'a', 0))
	w.pushBody(s1, 'a', w.h, px)
	w.wetPush(s1, level, px)
	w.pushArrows(s1, 'a', w.h, px)
	if k.asking {
		k.line("water level dashed", -2, w.px(w.h-3), w.x, w.px(w.h-3))
		k.call("water", "?", anchor{26, w.px(w.h - 14), 0})
		return
	}
	w.nameMark(k.moment(float64(most(s1).Service)), w.mark(c))
	k.tellWater(s0, s1, level)
}

// drain is the pipe beside the footing, and whether it is clogged.
func (w *stand) drain(clogged bool) {
	x, y, r := w.x-w.heel*w.k-9, w.y+5, 6.0
	w.s.circle("thin drain", x, y, r)
	if clogged {
		w.s.path("thin", new(track).move(x-4, y-4).to(x+4, y+4).move(x+4, y-4).to(x-4, y+4))
	}
}

// wetPush fills the water's part of the push.
func (w *stand) wetPush(st *calc.StageResult, level, px float64) {
	if level <= 0 {
		return
	}
	foot := 0.0
	for _, p := range st.Pushes {
		if p.Cause == soil.Water {
			foot = max(foot, float64(p.Bottom))
		}
	}
	face := w.faceA(level)
	t := new(track).points(face, true)
	last := face[len(face)-1]
	t.to(last.x, last.y).to(face[0].x-px*foot, face[0].y)
	w.s.path("water body", t.close())
}

func (k *kit) tellWater(dry, wet *calc.StageResult, level float64) {
	push, bend := share(thrust(wet), thrust(dry)), share(float64(most(wet).Service), float64(most(dry).Service))
	k.meter("water.meter.push", k.timesOf(push), push, 2.2, 1, false)
	k.meter("water.meter.bend", k.timesOf(bend), bend, 2.2, 1, false)
	if level <= 0 {
		k.tell("water.say.dry")
		return
	}
	k.tell("water.say", k.sp.Length(units.Length(level)), k.times(bend))
}
