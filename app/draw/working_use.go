package draw

import (
	"math"

	"standingbeam/calc/units"
)

// together draws load and bending on a plain section: what each may be alone,
// the line between them, and where the wall stands.
func (k *sketch) together() bool {
	if !k.has("use", "Mu", "Mn", "φ", "Pu", "φPn") || k.v("Mn") <= 0 || k.v("φPn") <= 0 {
		return false
	}
	const left, foot, wide, high = 120.0, 186.0, 150.0, 130.0
	most := k.v("φ") * k.v("Mn")
	m, p := k.v("Mu")/most, k.v("Pu")/k.v("φPn")
	scale := 1 / math.Max(1, math.Max(m, p))
	k.begin("together", foot+50, false)
	x, y := left+wide*scale*m, foot-high*scale*p
	right, top := left+wide*scale, foot-high*scale
	k.block("bearing", left, foot, right, foot, left, top)
	k.line("until", left, top, right, foot)
	k.s.draw("thin", new(path).move(left, foot-high-10).line(left, foot).line(left+wide+10, foot))
	k.line("witness", left, y, x, y)
	k.line("witness", x, y, x, foot)
	k.s.circle("peak", x, y, 5)
	k.tell("ink", left, top, "l", "φPn")
	k.tell("push", left, y, "l lu ld", "Pu")
	k.tell("push", x, foot, "d ld", "Mu")
	k.pin("ink", right, foot, SketchWidth+3, foot, "ld lu", "φ M\x01n\x02 = "+k.amount(most, units.LineMoment))
	k.tell("push", x, y, "ru r", "use")
	return true
}

// bent draws how far the wall bends beside how far it may, both to one scale:
// a wall that is held bows, a free one leans.
func (k *sketch) bent() bool {
	if !k.has("Δ", "Δmax") || k.v("Δmax") <= 0 || k.v("Δ") <= 0 {
		return false
	}
	const wall, top, foot, reach = 150.0, 30.0, 170.0, 120.0
	scale := reach / math.Max(k.v("Δ"), k.v("Δmax"))
	d, most := k.v("Δ")*scale, k.v("Δmax")*scale
	k.begin("bent", foot+30, false)
	k.s.rect("concrete edged", "", wall-20, foot, 40, 10)
	k.line("witness", wall, top, wall, foot)
	k.upright(wall-46, top, foot)
	at := top
	if k.has("ℓ") {
		at = (top + foot) / 2
		k.tell("ink", wall-46, at, "l", "ℓ")
		k.arrow("hold", wall+50, top, wall+2, top)
		k.s.draw("curve", new(path).move(wall, foot).cubic(wall+d*4/3, foot-47, wall+d*4/3, top+47, wall, top))
	} else {
		k.tell("ink", wall-46, (top+foot)/2, "l", "ht")
		k.s.draw("curve", new(path).move(wall, foot).cubic(wall, foot-47, wall+d/2, top+47, wall+d, top))
	}
	k.line("until", wall+most, at-12, wall+most, at+46)
	k.across(wall, wall+most, at+42)
	k.tell("ink", wall+most, at+42, "ld rd d", "Δmax")
	k.across(wall, wall+d, at)
	k.tell("push", wall+d, at, "r ru u", "Δ")
	return true
}
