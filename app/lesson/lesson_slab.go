package lesson

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// slab: a slab on the fill pulls the wall back, and only by what lies beyond
// the ground that moves with the wall.
var slab = lesson{
	id: "slab", low: true, right: 3,
	stops: func(k *kit) []stop {
		return k.lengths(units.Level, k.pick(4*ft, mm(1000)), slabMost(k), k.pick(1*ft, mm(500)))
	},
	start: func(k *kit) float64 { return slabHeight(k).Inches() },
	prints: func(k *kit) [3]float64 {
		return [3]float64{slabHeight(k).Inches(), 3 * slabHeight(k).Inches(), slabNeeds(k).Inches()}
	},
	measure: measureSlab,
	show:    showSlab,
}

func slabHeight(k *kit) units.Length { return k.pick(8*ft, mm(2400)) }
func slabThick(k *kit) units.Length  { return k.pick(6*in, mm(150)) }
func slabMost(k *kit) units.Length   { return k.pick(40*ft, mm(12000)) }

func (k *kit) slabWall(length units.Length) calc.Input {
	w := k.held(slabHeight(k), slabHeight(k))
	w.Condition = calc.TiedToSlab
	w.Tie = calc.Tie{SlabThickness: slabThick(k), SlabLength: length, Friction: 0.35, Before: calc.Rakers}
	return w
}

// drag is what the slab of an answer holds, how many times what the tie pulls,
// how many times is asked, and whether that is enough.
func drag(r *calc.Result) (factor, asked float64, enough bool) {
	c := checkOf(r, "slab-drag", calc.Finished)
	return c.Capacity.US(), c.Demand.US(), c.State == calc.Holds
}

// slabNeeds is the length that the engine asks for of a slab that is too
// short, up to the next stop.
func slabNeeds(k *kit) units.Length {
	r := answer(k.slabWall(slabHeight(k)))
	c := checkOf(&r, "slab-drag", calc.Finished)
	if c.Because == nil || len(c.Because.Args) == 0 {
		return slabMost(k)
	}
	step := k.pick(1*ft, mm(500)).Inches()
	return units.Length(step * math.Ceil(c.Because.Args[0].Base/step-1e-6))
}

func measureSlab(k *kit) facts {
	r := answer(k.slabWall(slabMost(k)))
	_, tie := props(stageOf(&r, calc.Finished))
	need := k.sp.Length(slabNeeds(k))
	return facts{
		ask:     []string{k.sp.Size(slabThick(k)), k.sp.Length(slabHeight(k))},
		choices: [3][]string{{k.sp.Length(slabHeight(k))}, {k.sp.Length(2 * slabHeight(k))}, {need}},
		answer:  []string{need, k.force(tie), k.sp.Length(r.Layout.Wedge)},
	}
}

func showSlab(k *kit) {
	length := units.Length(k.at)
	in0 := k.slabWall(length)
	r := answer(in0)
	st := stageOf(&r, calc.Finished)
	factor, asked, enough := drag(&r)
	_, tie := props(st)
	w := &stand{s: k.scene, h: in0.Height.Inches(), t: in0.Thickness.Inches(), foot: in0.Footing.Thickness.Inches(), bend: straight()}
	w.toe = (in0.Footing.Width - in0.Thickness).Inches() / 2
	w.heel = w.toe
	w.k = 0.88 * k.w / slabMost(k).Inches()
	w.x, w.y = 0.91*k.w, (k.h+w.h*w.k-26)/2
	if factor < 1 && !k.asking {
		lean := (1 - factor) * 0.16
		w.bend.u = func(y float64) float64 { return lean * y * w.k }
	}
	moved := w.bend.u(w.h)
	w.ground(w.h, 0)
	w.footing()
	w.draw()
	top, thick := w.px(w.h), in0.Tie.SlabThickness.Inches()*w.k
	right := w.x + moved + w.t*w.k*0.5
	left := w.x + moved - length.Inches()*w.k
	k.wedge(w, r.Layout.Wedge)
	k.block(left, top-1, right-left, math.Max(thick, 4))
	k.off(0, top-3, k.w, 14)
	if k.asking {
		k.rect("unbuilt", 0, top-1, left, math.Max(thick, 4))
		k.letter("ink", "?", left/2, top-16)
		return
	}
	k.dragTicks(left, w.x-r.Layout.Wedge.Inches()*w.k+moved, top+math.Max(thick, 4))
	k.slabForces(w, factor, tie)
	k.tellSlab(factor, asked, enough)
}

// wedge is the edge of the ground that slides with the wall.
func (k *kit) wedge(w *stand, reach units.Length) {
	x := w.x - reach.Inches()*w.k
	k.line("plane", w.x, w.px(0), x, w.px(w.h))
}

// dragTicks are strokes under the part of the slab that holds.
func (k *kit) dragTicks(left, right, y float64) {
	t := &track{}
	for x := left + 1; x < right-5; x += 8 {
		t.move(x, y+9).to(x+5, y+3)
	}
	k.path("drag", t)
}

// slabForces are the pull of the wall and what the slab holds against it, both
// to one scale.
func (k *kit) slabForces(w *stand, factor, tie float64) {
	px := share(0.44*k.w, tie*1.6)
	x, y := w.x-6, w.px(w.h)-22
	k.arrow("push heavy", x-tie*px, y, x, y, 13)
	k.call("push", k.sp.Sentence("lesson.slab.pulls", k.force(tie)), anchor{x - tie*px - 8, y, -1}, anchor{x, y - 20, -1})
	y = w.y + w.foot*w.k + 26
	k.arrow("hold heavy", x, y, x-factor*tie*px, y, 13)
	k.call("ink", k.sp.Sentence("lesson.slab.holds", k.force(factor*tie)), anchor{x, y + 20, -1})
}

func (k *kit) tellSlab(factor, asked float64, enough bool) {
	k.meter("slab.meter", k.sp.Sentence("lesson.of", k.safety(factor), k.times(asked)), factor, 2.4, asked, !enough)
	id := "slab.say.short"
	if enough {
		id = "slab.say.holds"
	} else if factor <= 0 {
		id = "slab.say.nothing"
	}
	k.tell(id, k.sp.Length(units.Length(k.at)), k.borne(factor), k.times(asked))
}
