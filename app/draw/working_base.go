package draw

import "math"

// The toe is on the right, as in the picture of the wall.

// base draws the pressure of the footing on the ground: where the load comes
// down, the middle third, and how far the base is pressed.
func (k *sketch) base() bool {
	if !k.has("x", "e", "B", "N") || k.projects() {
		return false
	}
	const left, right, top = 46.0, 314.0, 92.0
	b := k.v("B")
	x := func(fromToe float64) float64 { return right - (right-left)*fromToe/b }
	deep := 62.0
	if !k.has("q") {
		deep = -16 // nothing is said of the pressure
	}
	k.begin("base", top+136+deep, false)
	k.stem(x, top)
	k.s.rect("concrete edged", "", left, top, right-left, 26)
	k.s.rect("push net", "", x(2*b/3), top+21, x(b/3)-x(2*b/3), 5)
	k.line("witness", x(b/2), 50, x(b/2), top)
	load := k.v("x")
	at := math.Max(10, math.Min(350, x(load)))
	k.arrow("push", at, 30, at, top)
	k.tell("push", at, 30, "u lu ru", "N")
	k.across(math.Min(at, x(b/2)), math.Max(at, x(b/2)), 54)
	if load < b/2 {
		k.tell("ink", x(b/2), 54, "l", "e")
	} else {
		k.tell("ink", x(b/2), 54, "r", "e")
	}
	k.say("soft", x(b/2), top+10, "c", k.sp.Word("sketch.third"))
	under := top + 30.0
	k.pressed(x, under, deep, b)
	k.across(at, right, under+deep+44)
	k.tell("ink", (at+right)/2, under+deep+44, "u l", "x")
	k.across(left, right, under+deep+76)
	k.tell("ink", (left+right)/2, under+deep+76, "d", "B")
	k.say("soft", right, top+13, "r", k.sp.Word("sketch.toe"))
	return true
}

// stem draws the foot of the wall on its footing.
func (k *sketch) stem(x func(float64) float64, top float64) {
	if k.has("tw", "Lt") {
		l, r := x(k.v("Lt")+k.v("tw")), x(k.v("Lt"))
		k.s.rect("concrete edged", "", l, top-26, r-l, 26)
	}
}

// pressed draws the block of the ground's pressure below y.
func (k *sketch) pressed(x func(float64) float64, y, deep, b float64) {
	toe, heel := k.v("q,toe"), k.v("q,heel")
	from, to := 0.0, b // the pressed part, from the toe
	switch {
	case k.has("q,toe"):
	case k.has("Lc", "q") && k.v("e") >= 0:
		toe, heel, to = k.v("q"), 0, k.v("Lc")
	case k.has("Lc", "q"):
		toe, heel, from = 0, k.v("q"), b-k.v("Lc")
	default:
		return
	}
	most := math.Max(toe, heel)
	if !(most > 0) {
		return
	}
	k.block("bearing", x(from), y, x(from), y+deep*toe/most, x(to), y+deep*heel/most, x(to), y)
	rays := &path{}
	for i := 1; i < 12; i++ {
		f := from + (to-from)*float64(i)/12
		q := deep * (toe + (heel-toe)*float64(i)/12) / most
		if q > 12 {
			rays.move(x(f), y+q).line(x(f), y+2)
		}
	}
	k.s.draw("bearing rays", rays)
	if k.has("q,toe", "q,heel") {
		mid := (toe + heel) / 2 // the block is deeper beside its shallow end
		k.pin("ink", x(0), y+deep*toe/most, x(0), y+deep*math.Max(toe, mid)/most, "ld d l", k.is("q,toe"))
		k.pin("ink", x(b), y+deep*heel/most, x(b), y+deep*math.Max(heel, mid)/most, "rd d r", k.is("q,heel"))
		return
	}
	if toe > 0 {
		k.tell("ink", x(0), y+deep, "ld d", "q")
	} else {
		k.tell("ink", x(b), y+deep, "rd d", "q")
	}
	k.across(x(to), x(from), y+deep+18)
	k.tell("ink", (x(from)+x(to))/2, y+deep+18, "d u", "Lc")
}

// projects reports a check of the toe or the heel.
func (k *sketch) projects() bool {
	switch k.check.ID {
	case "toe-flexure", "toe-shear", "heel-flexure", "heel-shear":
		return true
	}
	return false
}

// projection draws what bends the toe up or the heel down, and the section: at
// the wall's face, for a shear at d from it, or at the depth of plain concrete.
func (k *sketch) projection() bool {
	if !k.projects() || !k.has("L") || k.v("L") <= 0 || !k.has("Mu") && !k.has("Vu") {
		return false
	}
	const face, reach, top, high = 90.0, 150.0, 86.0, 40.0
	heel := k.check.ID == "heel-flexure" || k.check.ID == "heel-shear"
	l := k.v("L")
	x := func(out float64) float64 {
		if heel {
			return SketchWidth - face - reach*out/l
		}
		return face + reach*out/l
	}
	line := 230.0
	if heel {
		line = 186
	}
	k.begin("projection", line+26, false)
	far, back := x(l), x(-0.4*l)
	k.s.rect("concrete", "", math.Min(far, back), top, math.Abs(far-back), high)
	k.s.draw("thin", new(path).move(back, top).line(far, top).line(far, top+high).line(back, top+high))
	k.s.rect("concrete edged", "", math.Min(x(0), back), 24, math.Abs(x(0)-back), top-24)
	if heel {
		k.load(x, l, top)
	} else {
		k.lift(x, l, top+high+4)
	}
	at, symbol := 0.0, "Mu"
	if !k.has("Mu") || k.has("Vu") && (k.check.ID == "toe-shear" || k.check.ID == "heel-shear") {
		symbol = "Vu"
	}
	text := k.is(symbol)
	for _, s := range [...]string{"d", "h"} {
		if symbol == "Vu" && k.uses("Vu", s) {
			at = k.v(s)
			k.across(math.Min(x(0), x(at)), math.Max(x(0), x(at)), top+high/2)
			text += "\n" + k.is(s)
		}
	}
	k.line("until", x(at), top-10, x(at), top+high+10)
	if heel {
		k.say("ink", x(at), top+high+4, "d ld rd", text)
	} else {
		k.say("ink", x(at), top-4, "ru u", text)
	}
	k.across(math.Min(x(0), far), math.Max(x(0), far), line)
	k.tell("ink", (x(0)+far)/2, line, "d u", "L")
	return true
}

// load draws the soil and the concrete that press on the heel.
func (k *sketch) load(x func(float64) float64, l, y float64) {
	p := &path{}
	for i := 0; i < 6; i++ {
		at := x(l * (float64(i) + 0.5) / 6)
		p.move(at, y-34).line(at, y-6)
		k.s.draw("push tip", new(path).head(at, y-2, 0, 1, 7))
	}
	k.s.draw("push shaft", p)
	k.line("push net", x(0), y-36, x(l), y-36)
	k.tell("push", x(l/2), y-36, "u", "wu")
}

// lift draws the ground's pressure under the toe, from its edge inward.
func (k *sketch) lift(x func(float64) float64, l, y float64) {
	const deep = 40.0
	edge, symbol := k.v("qu"), "qu"
	in := edge // under the wall's face
	switch {
	case k.has("q,toe", "q,heel"):
		edge, symbol = k.v("q,toe"), "q,toe"
		in = edge - (edge-k.v("q,heel"))*l/k.v("B")
	case k.has("Lc", "q"):
		edge, symbol = k.v("q"), "q"
		in = edge * (1 - l/k.v("Lc"))
	}
	most := math.Max(edge, in)
	if !(most > 0) {
		return
	}
	end := 0.0
	if in < 0 {
		end, in = l-k.v("Lc"), 0
	}
	k.block("bearing", x(end), y, x(l), y, x(l), y+deep*edge/most, x(end), y+deep*in/most)
	p := &path{}
	for i := 0; i < 7; i++ {
		f := (float64(i) + 0.5) / 7
		q := deep * (in + (edge-in)*f) / most
		if q > 10 {
			p.move(x(end+(l-end)*f), y+q).line(x(end+(l-end)*f), y+2)
		}
	}
	k.s.draw("bearing rays", p)
	k.tell("ink", x(l), y+deep*edge/most, "r rd d ld", symbol)
	for _, s := range [...]string{"qf", "qv"} {
		if k.has(s) {
			at := 0.0
			for _, d := range [...]string{"d", "h"} {
				if s == "qv" && k.uses("Vu", d) {
					at = k.v(d)
				}
			}
			k.tell("ink", x(at), y+deep*k.v(s)/most, "d ld rd l", s)
		}
	}
}
