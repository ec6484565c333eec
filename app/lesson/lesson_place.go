package lesson

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// place: where a bar stands in the wall counts more than its size.
var place = lesson{
	id: "place", right: 2,
	stops: func(k *kit) []stop {
		return k.lengths(units.Size, k.pick(2*in, mm(50)), k.pick(7*in, mm(175)), k.pick(in/2, mm(5)))
	},
	start: func(k *kit) float64 { return (k.thick() / 2).Inches() },
	prints: func(k *kit) [3]float64 {
		return [3]float64{k.pick(2*in, mm(50)).Inches(), (k.thick() / 2).Inches(), k.pick(7*in, mm(175)).Inches()}
	},
	measure: measurePlace,
	show:    showPlace,
}

// Sizes of the bars that are compared.
const (
	placeSize   = 4
	placeBigger = 5
)

func (k *kit) placeWall() calc.Input { return k.held(k.pick(10*ft, mm(3000)), k.pick(10*ft, mm(3000))) }

func placeSpacing(k *kit) units.Length { return k.pick(16*in, mm(400)) }

// carried is what bars of a size carry at a distance from the squeezed side,
// and what is asked of them.
func (k *kit) carried(size int, d units.Length) (carries, asked float64) {
	w := k.placeWall()
	w.Vertical = calc.Bars{Fixed: true, Size: size, Spacing: placeSpacing(k), Face: calc.FaceB, Depth: d}
	r := answer(w)
	return float64(r.Band.Bars), float64(most(stageOf(&r, calc.Finished)).Factored)
}

func measurePlace(k *kit) facts {
	middle := k.thick() / 2
	base, _ := k.carried(placeSize, middle)
	bigger, _ := k.carried(placeBigger, middle)
	moved, _ := k.carried(placeSize, k.pick(7*in, mm(175)))
	return facts{
		ask:    []string{k.sp.BarSize(placeSize)},
		answer: []string{k.times(share(moved, base)), k.times(share(bigger, base)), k.sp.BarSize(placeBigger)},
	}
}

func showPlace(k *kit) {
	in0 := k.placeWall()
	carries, asked := k.carried(placeSize, units.Length(k.at))
	w := &stand{s: k.scene, t: in0.Thickness.Inches()}
	w.k = math.Min(0.36*k.w, 0.46*k.h) / w.t
	w.h = (k.h + 40) / w.k
	w.x, w.y = (k.w-w.t*w.k)/2, k.h+20
	short := math.Max(0, asked/carries-1)
	mid := w.h / 2
	bulge := 0.02*k.w + limit(9*short, 0, 20)
	w.bend = straight()
	w.bend.u = func(y float64) float64 { q := (y - mid) / mid; return bulge * (1 - q*q) }
	k.earth(w.bank(w.h, calc.FaceA))
	w.draw()
	k.blocks = nil
	mouth := 2.5 + limit(9*short, 0, 26)
	for _, f := range []float64{-0.26, 0.26} {
		w.crack(mid+f*w.h, calc.FaceB, math.Min(mouth*0.4, 5), 0.45)
	}
	w.crack(mid, calc.FaceB, mouth, 0.86)
	w.rod(units.Length(k.at), short > 0)
	k.placeArm(w, k.at)
	a, b := w.pair(mid, -1)
	k.arrow("squeeze", a.x+9, a.y-52, a.x+9, a.y-10, 11)
	k.arrow("squeeze", a.x+9, a.y+52, a.x+9, a.y+10, 11)
	for i := range 3 {
		y := k.h * (0.26 + 0.26*float64(i))
		k.arrow("push", 10, y, a.x-14, y, 10)
	}
	k.wrapped("ink", k.sp.Word("lesson.place.soil"), 0.26*k.w, anchor{8, k.h*0.26 - 34, 1})
	k.wrapped("ink", k.sp.Word("lesson.place.open"), 0.26*k.w, anchor{b.x + 18, k.h*0.26 - 34, 1})
	if !k.asking {
		k.tellPlace(carries, asked)
	}
}

// rod draws a bar in the large, its pull as arrows where it crosses the crack.
func (w *stand) rod(d units.Length, weak bool) {
	const half = 0.25 // of a No. 4 bar, inches
	left, right := &track{}, []spot{}
	for i := 0; i <= 16; i++ {
		a, b := w.pair(w.h*float64(i)/16, -1)
		at := func(in float64) spot {
			r := in / w.t
			return spot{a.x + (b.x-a.x)*r, a.y + (b.y-a.y)*r}
		}
		p := at(d.Inches() - half)
		if i == 0 {
			left.move(p.x, p.y)
		} else {
			left.to(p.x, p.y)
		}
		right = append(right, at(d.Inches()+half))
	}
	for i := len(right) - 1; i >= 0; i-- {
		left.to(right[i].x, right[i].y)
	}
	class := "rod"
	if weak {
		class = "rod weak"
	}
	w.s.path(class, left.close())
}

// placeArm is the dimension from the squeezed side to the bar.
func (k *kit) placeArm(w *stand, d float64) {
	level := w.h * 0.5
	a, b := w.pair(level-w.h*0.30, -1)
	x := a.x + (b.x-a.x)*d/w.t
	k.line("dimension", a.x, a.y, x, a.y)
	k.line("dimension", a.x, a.y-7, a.x, a.y+7)
	k.line("dimension", x, a.y-7, x, a.y+7)
	k.call("ink", k.sp.Size(units.Length(d)), anchor{(a.x + x) / 2, a.y + 14, 0}, anchor{a.x - 8, a.y + 14, -1})
}

func (k *kit) tellPlace(carries, asked float64) {
	bigger, _ := k.carried(placeBigger, k.thick()/2)
	top := 1.6 * asked
	k.meter("place.meter.here", k.moment(carries), carries, top, asked, carries < asked)
	k.told.meters[len(k.told.meters)-1].Label = k.sp.Sentence("lesson.place.meter.here", k.sp.BarSize(placeSize))
	k.meter("place.meter.bigger", k.moment(bigger), bigger, top, asked, bigger < asked)
	k.told.meters[len(k.told.meters)-1].Label = k.sp.Sentence("lesson.place.meter.bigger", k.sp.BarSize(placeBigger))
	id := "place.say.holds"
	if carries < asked {
		id = "place.say.short"
	}
	k.tell(id, k.sp.Size(units.Length(k.at)), k.borne(share(carries, asked)), k.moment(asked))
}
