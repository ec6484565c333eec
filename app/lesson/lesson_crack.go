package lesson

import (
	"standingbeam/calc"
	"standingbeam/calc/plain"
	"standingbeam/calc/units"
)

// crack: concrete is strong squeezed and weak stretched; where plain concrete
// gives out, and where the first crack comes.
var crack = lesson{
	id: "crack", right: 3,
	stops: func(k *kit) []stop {
		return k.lengths(units.Level, k.pick(3*ft, mm(900)), crackHeight(k), k.pick(2*in, mm(50)))
	},
	start: func(k *kit) float64 { return k.pick(6*ft, mm(1800)).Inches() },
	prints: func(k *kit) [3]float64 {
		return [3]float64{k.pick(4*ft, mm(1200)).Inches(), k.pick(6*ft, mm(1800)).Inches(), crackHeight(k).Inches()}
	},
	measure: measureCrack,
	show:    showCrack,
}

func crackHeight(k *kit) units.Length { return k.pick(8*ft, mm(2400)) }

// stretched is the stress at which chapter 14 counts plain concrete as torn:
// 5 λ √f'c.
//
// Source: ACI 318-19, Eq. (14.5.2.1a).
func stretched(t units.Length) units.Stress {
	s := plain.Section{Fc: fc, H: t}
	return units.Stress(share(float64(s.NominalMoment(nil)), s.Modulus()))
}

func measureCrack(k *kit) facts {
	pull := stretched(k.thick())
	return facts{ask: []string{k.strength(fc)}, answer: []string{k.strength(pull), k.sp.Number(share(float64(fc), float64(pull)), 0)}}
}

func showCrack(k *kit) {
	in0 := k.held(crackHeight(k), units.Length(k.at))
	full := answer(k.held(crackHeight(k), crackHeight(k)))
	r := answer(in0)
	st, top := stageOf(&r, calc.Finished), stageOf(&full, calc.Finished)
	w := k.upright(&in0, room{tallest: in0.Height, above: floorDepth, left: 0.33})
	a, b := w.faceX()
	bears := float64(r.Band.Plain)
	c := bending{d: &st.Factored, a: a, b: b, px: share(w.roomB(24), float64(most(top).Factored))}
	level, m := peak(c.d)
	_, u := top.Service.MaxDeflection()
	w.bend = elastic(&st.Service, share(0.045*k.w, u.Inches()))
	over := share(m, bears)
	torn := over > 1 && !k.asking
	if torn {
		w.bend = w.bend.broken(level, w.h, limit(14+50*(over-1), 0, 0.09*k.w))
	}
	w.ground(k.at, 0)
	w.slabAtFoot(true)
	w.floor(true)
	w.footing()
	if !k.asking {
		w.band("plain", "plain", b, c.px, bears)
		w.curve(c, true)
	}
	w.draw()
	w.push(st, 'a', k.at, share(0.2*k.w, pressure(top, 'a', 0)))
	k.strain(w, level, torn)
	if k.asking {
		return
	}
	w.mark(c)
	k.say("ink", k.sp.Word("lesson.crack.band"), anchor{b + bears*c.px - 6, w.px(w.h) + 12, -1})
	if torn {
		_, gape := w.pair(level, -1)
		k.name(k.sp.Word("lesson.crack.first"), 0.21*k.w, spot{gape.x - 2, gape.y}, anchor{gape.x + 6, gape.y - 1, 1}, anchor{gape.x + 20, gape.y + 40, 1}, anchor{gape.x + 20, gape.y - 40, 1}, anchor{k.w - 6, w.px(4) - 14, -1})
	}
	k.tellCrack(r, m, level)
}

// strain marks the squeezed and the stretched side where the wall bends most.
func (k *kit) strain(w *stand, level float64, torn bool) {
	a, b := w.pair(level, -1)
	k.arrow("squeeze", a.x-7, a.y-34, a.x-7, a.y-6, 8)
	k.arrow("squeeze", a.x-7, a.y+34, a.x-7, a.y+6, 8)
	k.off(a.x-14, a.y-34, 14, 68)
	if !torn {
		k.arrow("stretch", b.x+8, b.y-4, b.x+8, b.y-32, 8)
		k.arrow("stretch", b.x+8, b.y+4, b.x+8, b.y+32, 8)
		k.off(b.x+2, b.y-34, 14, 68)
	}
	k.say("ink", k.sp.Word("lesson.crack.squeezed"), anchor{a.x - 18, a.y - 44, -1}, anchor{a.x - 30, a.y - 76, -1}, anchor{a.x - 0.2*k.w, a.y - 30, -1}, anchor{a.x - 0.2*k.w, a.y + 50, -1})
	if k.asking {
		k.say("ink", k.sp.Word("lesson.crack.stretched"), anchor{b.x + 22, b.y, 1})
	}
}

func (k *kit) tellCrack(r calc.Result, m, level float64) {
	bears := float64(r.Band.Plain)
	over := m > bears
	k.meter("crack.meter", k.sp.Sentence("lesson.of", k.moment(m), k.moment(bears)), m, 1.5*bears, bears, over)
	fill := k.sp.Length(units.Length(k.at))
	if over {
		k.tell("crack.say.over", fill, k.about(units.Length(level)))
		return
	}
	k.tell("crack.say.holds", fill, k.percent(share(m, bears)))
}
