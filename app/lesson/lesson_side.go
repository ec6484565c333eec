package lesson

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// side: the side that tears changes with what holds the top.
var side = lesson{
	id: "side", named: true, right: 3,
	stops:   func(k *kit) []stop { return k.choices("side", "nothing", "floor", "slab") },
	start:   func(*kit) float64 { return 0 },
	prints:  func(*kit) [3]float64 { return [3]float64{0, 1, 2} },
	measure: func(*kit) facts { return facts{} },
	show:    showSide,
}

// sideWall is the same wall under the three ways to hold its top.
func (k *kit) sideWall(way float64) calc.Input {
	h := k.pick(7*ft, mm(2100))
	w := k.held(h, h)
	w.Footing.Width, w.Footing.NoToe, w.Footing.Toe = k.pick(5*ft, mm(1500)), false, k.pick(16*in, mm(400))
	switch way {
	case 0:
		w.Condition, w.Foot = calc.FreeTop, calc.Foot{}
	case 2:
		w.Condition = calc.TiedToSlab
		w.Tie = calc.Tie{SlabThickness: k.pick(4*in, mm(100)), SlabLength: 40 * ft, Friction: 0.35}
	}
	return w
}

func showSide(k *kit) {
	in0 := k.sideWall(k.at)
	free := answer(k.sideWall(0))
	r := answer(in0)
	st, worst := stageOf(&r, calc.Finished), stageOf(&free, calc.Finished)
	w := k.upright(&in0, room{tallest: in0.Height, above: floorDepth, left: 0.5})
	w.heel, w.toe = w.heel*0.8, w.toe*0.8
	a, b := w.faceX()
	c := bending{d: &st.Factored, a: a, b: b, px: share(0.36*k.w, float64(most(worst).Factored))}
	level, m := peak(c.d)
	_, u := st.Service.MaxDeflection()
	switch {
	case k.asking:
	case k.at == 0:
		w.bend = elastic(&st.Service, share(0.05*k.w, u.Inches())).leaning(0.15 * w.k)
	default:
		w.bend = elastic(&st.Service, share(0.02*k.w, u.Inches())).broken(level, w.h, 0.06*k.w)
	}
	w.ground(w.h, 0)
	w.sideHolds(k.at)
	w.footing()
	if !k.asking {
		w.curve(c, true)
	}
	w.draw()
	w.sidePush()
	if k.asking {
		w.letters(spot{b + 16, w.px(w.h * 0.5)}, spot{b + 16, w.px(0) - 15}, spot{a - 16, w.px(0) - 15})
		return
	}
	p := w.mark(c)
	k.sideLabels(w, p, m)
	k.tellSide(st, worst)
}

// sideHolds draws what holds the top: nothing, a floor, or a slab on the
// ground.
func (w *stand) sideHolds(way float64) {
	if way > 0 {
		w.slabAtFoot(true)
	}
	switch way {
	case 1:
		w.floor(true)
		x := w.x + w.t*w.k
		w.s.arrow("hold", x+44, w.px(w.floorAt()), x+6, w.px(w.floorAt()), 10)
	case 2:
		w.s.block(-2, w.px(w.h), w.x+2, 4*w.k)
		y := w.px(w.h - 2)
		w.s.arrow("hold", w.x-4, y, w.x-46, y, 10)
		w.s.arrow("hold", w.x-54, y, w.x-92, y, 10)
	}
}

// sidePush are three arrows for the push of the ground.
func (w *stand) sidePush() {
	for i := range 3 {
		y := w.px(w.h * (0.12 + 0.22*float64(i)))
		w.s.arrow("push", 8, y, 8+w.s.w*(0.15-0.03*float64(i)), y, 9)
	}
	w.s.off(6, w.px(w.h*0.62), w.s.w*0.15, w.px(w.h*0.06)-w.px(w.h*0.62))
}

func (k *kit) sideLabels(w *stand, p spot, m float64) {
	if m < 0 {
		w.crack(1.5, calc.FaceA, 8, 0.75)
		y := w.px(w.h * 0.74)
		k.line("leader", w.x-0.18*k.w, y+10, w.x+w.shift+1, w.y-4)
		k.call("ink", k.sp.Word("lesson.side.tears"), anchor{w.x - 0.15*k.w, y, -1})
		k.say("soft", k.sp.Word("face.a"), anchor{w.x - 0.15*k.w, y - 20, -1})
		return
	}
	k.name(k.sp.Word("lesson.side.tears"), 0.26*k.w, p, anchor{p.x + 10, p.y, 1}, anchor{k.w - 4, p.y + 60, -1})
	k.say("soft", k.sp.Word("face.b"), anchor{p.x + 10, p.y + 20, 1}, anchor{p.x + 10, p.y + 29, 1}, anchor{k.w - 4, p.y + 80, -1})
}

func (k *kit) tellSide(st, worst *calc.StageResult) {
	most := float64(most(worst).Factored)
	a, b := 0.0, 0.0
	for _, m := range st.Moments {
		if m.TensionFace == calc.FaceA {
			a = float64(m.Factored)
		} else {
			b = float64(m.Factored)
		}
	}
	k.meter("side.meter.a", k.moment(a), a, most, 0, false)
	k.meter("side.meter.b", k.moment(b), b, most, 0, false)
	id := [...]string{"side.say.nothing", "side.say.floor", "side.say.slab"}[int(k.at)]
	level, _ := peak(&st.Factored)
	k.tell(id, k.about(units.Length(level)))
}
