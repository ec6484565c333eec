package lesson

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// heel: the ground on the heel holds down the wall that the ground pushes.
var heel = lesson{
	id: "heel", right: 2,
	stops:   heelStops,
	start:   func(k *kit) float64 { return 0 },
	prints:  func(k *kit) [3]float64 { m := heelMost(k).Inches(); return [3]float64{0, m / 2, m} },
	measure: func(k *kit) facts { return facts{ask: []string{k.sp.Length(heelFooting(k))}} },
	show:    showHeel,
}

func heelFooting(k *kit) units.Length { return k.pick(4*ft, mm(1200)) }
func heelMost(k *kit) units.Length    { return heelFooting(k) - k.thick() }

func heelStops(k *kit) []stop {
	out := k.lengths(units.Size, 0, heelMost(k), k.pick(4*in, mm(100)))
	out[0].text = k.sp.Word("lesson.heel.at.none")
	return out
}

// heelWall is a free wall on a footing of one width, whose heel reaches so far
// under the fill and whose toe is the rest. Its ground pushes as an equivalent
// fluid of 35 pcf, active.
func (k *kit) heelWall(heel units.Length) calc.Input {
	h := k.pick(6*ft, mm(1800))
	w := k.free(h, h)
	w.Soil.Fluid = 35 * units.PCF
	w.Footing.Width, w.Footing.NoToe = heelFooting(k), false
	w.Footing.Toe = max(0, heelMost(k)-heel)
	return w
}

func showHeel(k *kit) {
	in0 := k.heelWall(units.Length(k.at))
	if k.asking {
		in0 = k.heelWall(heelMost(k) / 2)
	}
	r := answer(in0)
	st := stageOf(&r, calc.Finished)
	s := st.Stability
	if s == nil {
		s = &calc.Stability{}
	}
	w := k.upright(&in0, room{tallest: in0.Height, above: 4})
	w.y -= 26
	w.k = math.Min(0.92*w.k, (k.w-130)/(2*heelMost(k)+k.thick()).Inches())
	w.x = (k.w + 86 - w.t*w.k) / 2
	if s.SlidingFactor < 1 && !k.asking {
		w.shift = (1 - s.SlidingFactor) * 30
	}
	_, u := st.Service.MaxDeflection()
	w.bend = elastic(&st.Service, share(0.02*k.w, u.Inches()))
	w.ground(w.h, 0)
	if k.asking {
		k.rect("unbuilt", w.x-w.heel*w.k, w.y, (w.heel+w.t+w.toe)*w.k, w.foot*w.k)
		w.draw()
		w.letters(spot{w.x + (w.t+w.toe)*w.k + 18, w.y + 18}, spot{w.x - w.heel*w.k - 18, w.y + 18})
		w.sidePush()
		return
	}
	w.onHeel()
	if w.shift > 2 {
		k.rect("unbuilt", w.x, w.px(w.h), w.t*w.k, w.h*w.k)
		k.rect("unbuilt", w.x-w.heel*w.k, w.y, (w.heel+w.t+w.toe)*w.k, w.foot*w.k)
	}
	w.footing()
	w.draw()
	k.heelForces(w, s)
	k.tellHeel(s, checkOf(&r, "sliding", calc.Finished).Demand.US())
}

// onHeel shades the ground that stands on the heel, with its weight.
func (w *stand) onHeel() {
	if w.heel < 1 {
		return
	}
	left := w.x + w.shift - w.heel*w.k
	face := w.faceA(w.h)
	t := new(track).move(left, w.y).points(face, false)
	w.s.path("burden", t.to(left, w.px(w.h)).close())
	mid := left + w.heel*w.k/2
	for i := range 2 {
		y := w.px(w.h*0.8) + float64(i)*w.h*w.k*0.42
		w.s.arrow("weight", mid, y, mid, y+w.h*w.k*0.3, 12)
	}
	w.s.off(mid-6, w.px(w.h*0.8), 12, w.h*w.k*0.75)
}

// heelForces are the push of the ground and the friction under the footing.
func (k *kit) heelForces(w *stand, s *calc.Stability) {
	px := share(0.34*k.w, 1500.0/12)
	back := w.x + w.shift - w.heel*w.k - 4
	y := w.px(w.h * 0.26)
	push, holds := float64(s.Driving), float64(s.Resisting)
	k.arrow("push heavy", back-math.Min(push*px, back-8), y, back, y, 13)
	k.off(back-push*px, y-8, push*px, 16)
	under := w.y + w.foot*w.k + 12
	right := w.x + w.shift + (w.t+w.toe)*w.k
	k.arrow("hold heavy", right, under, right-holds*px, under, 13)
	k.off(right-holds*px, under-8, holds*px, 16)
	k.call("push", k.force(push), anchor{4, y - 20, 1})
	k.call("ink", k.force(holds), anchor{right + 8, under, 1}, anchor{right - holds*px - 8, under, -1})
}

func (k *kit) tellHeel(s *calc.Stability, asked float64) {
	slide, tip := s.SlidingFactor, s.OverturningFactor
	k.meter("heel.meter.slide", k.safety(slide), slide, 4, asked, slide < asked)
	k.meter("heel.meter.tip", k.safety(tip), tip, 4, asked, tip < asked)
	reach := k.sp.Size(units.Length(k.at))
	if k.at <= 0 {
		reach = k.sp.Word("lesson.heel.at.none")
	}
	switch {
	case slide < 1:
		k.tell("heel.say.slides", reach, k.safety(slide))
	case slide < asked || tip < asked:
		k.tell("heel.say.short", reach, k.safety(slide), k.times(asked))
	default:
		k.tell("heel.say.stands", reach, k.safety(slide), k.times(asked))
	}
}
