package draw

import (
	"math"

	"standingbeam/calc/units"
)

// Places of a section that is drawn with its pressed face up.
const (
	sectionTop  = 44.0
	sectionDeep = 150.0
)

// reinforced draws the section with its bars, the line of its strains and the
// block of its stresses.
func (k *sketch) reinforced() bool {
	if !k.has("a", "c", "d", "εt", "f'c") || k.v("a") <= 0 || k.v("c") <= 0 {
		return false
	}
	const left, right, axis, block = 78.0, 112.0, 160.0, 240.0
	h, d, a, c := math.Max(k.v("h"), k.v("tf")), k.v("d"), k.v("a"), k.v("c")
	whole := math.Max(math.Max(h, d*1.12), c)
	if part := math.Max(2*d, 1.2*c); whole > 1.5*part {
		whole, h = part, 0 // the bars lie near the pressed face: only what is there is drawn
	}
	y := func(v float64) float64 { return sectionTop + sectionDeep*v/whole }
	k.begin("bars", sectionTop+sectionDeep+42, true)
	k.s.rect("concrete", "", left, y(0), right-left, y(whole)-y(0))
	k.s.rect("push net", "", left, y(0), right-left, y(a)-y(0))
	k.s.draw("thin", new(path).move(left, y(whole)).line(left, y(0)).line(right, y(0)).line(right, y(whole)))
	if h > 0 {
		k.line("thin", left, y(whole), right, y(whole))
	}
	k.s.circle("dots", (left+right)/2, y(d), 5)
	symbol := "h"
	if h == k.v("tf") {
		symbol = "tf"
	}
	k.depths(y, map[string]float64{symbol: h, "d": d})
	k.say("soft", (left+right)/2, y(0), "u", k.sp.Word("sketch.pressed"))
	if h > 0 {
		k.say("soft", (left+right)/2, y(whole), "d", k.sp.Word("sketch.pulled"))
	}
	k.strain(axis, y, c, d, whole)
	k.stresses(block, y, a, d)
	return true
}

// depths draws the dimensions on the left of a section, from the pressed face:
// the whole, and that of the bars.
func (k *sketch) depths(y func(float64) float64, deep map[string]float64) {
	for _, s := range [...]struct {
		symbol string
		x      float64
	}{{"h", 30}, {"tf", 30}, {"d", 64}} {
		if v := deep[s.symbol]; v > 0 {
			k.upright(s.x, y(0), y(v))
			k.tell("ink", s.x, y(v/2), "lt", s.symbol)
		}
	}
}

// strain draws the line of the strains: 0.003 at the pressed face, none at the
// neutral axis, εt at the bars.
func (k *sketch) strain(axis float64, y func(float64) float64, c, d, whole float64) {
	et := k.v("εt")
	scale := 34 / math.Max(0.003, math.Abs(et))
	tip, end := axis+0.003*scale, axis-et*scale
	k.block("area", axis, y(0), tip, y(0), axis, y(c))
	k.block("area", axis, y(c), end, y(d), axis, y(d))
	k.line("thin", axis, y(0), axis, y(whole))
	k.line("curve", tip, y(0), end, y(d))
	k.line("thin", axis, y(0), tip, y(0))
	k.line("thin", axis, y(d), end, y(d))
	k.line("until", 78, y(c), axis+28, y(c))
	k.say("ink", tip, y(0), "u ru", k.sp.Number(0.003, 3))
	k.pin("ink", (end+axis)/2, y(d), axis+16, y(whole), "d u", k.is("εt"))
	k.tell("ink", axis, y(c), "rd ru", "c")
}

// stresses draws the block and the forces: C of the block, T of the bars, per
// length of wall, and the arm between them.
func (k *sketch) stresses(x float64, y func(float64) float64, a, d float64) {
	const edge = 362.0
	push := 0.85 * k.v("f'c") * a
	pull, axial := push, 0.0
	if k.uses("a", "Pu") {
		axial = k.v("Pu") / k.v("φ")
		pull -= axial
	}
	k.s.rect("push net", "", x, y(0), 46, y(a)-y(0))
	k.s.segment("thin", x, y(0), x, y(d))
	k.pin("push", x+46, y(a/2), edge, y(0), "lu", k.is("a"))
	k.arrow("push", x+96, y(a/2), x+46, y(a/2))
	k.arrow("hold", x, y(d), x+96, y(d))
	k.s.segment("dimension", x+16, y(a/2), x+16, y(d))
	k.pin("push", x+70, y(a/2), edge, y(a/2)+2, "ld", "C =\n"+k.amount(push, units.LineForce))
	k.say("ink", x+16, y((a/2+d)/2), "r rd ru", "d − a/2\n= "+k.amount(d-a/2, units.Size))
	k.pin("steel", x+70, y(d), edge, y(d), "ld lu", "T = "+k.amount(pull, units.LineForce))
	if axial > 0 {
		k.pin("ink", x+16, y((a/2+3*d)/4), edge, y(a/10+0.8*d), "l", "P\x01u\x02/φ =\n"+k.amount(axial, units.LineForce))
	}
}

// uncracked draws the stresses of a plain section: those of the bending that is
// asked, and how much of them the concrete takes.
func (k *sketch) uncracked() bool {
	if !k.has("Sm", "h", "f'c", "Mu", "φMn") || k.has("use") {
		return false
	}
	const bent, loaded = "M\x01u\x02/S\x01m\x02", "P\x01u\x02/A\x01g\x02"
	const left, right, axis, reach = 78.0, 112.0, 232.0, 72.0
	h := k.v("h")
	asked := k.v("Mu") / k.v("Sm")
	root := 5 * math.Max(k.v("λ"), 0) * math.Sqrt(k.v("f'c"))
	there := k.v("φ") * root
	axial := 0.0
	if k.has("Pu", "Ag") {
		axial = k.v("Pu") / k.v("Ag")
	}
	if !(asked > 0 && there > 0) {
		return false
	}
	scale := reach / math.Max(math.Max(asked+axial, there), 1e-9)
	y := func(v float64) float64 { return sectionTop + sectionDeep*v/h }
	k.begin("plain", sectionTop+sectionDeep+58, true)
	k.s.rect("concrete edged", "", left, y(0), right-left, y(h)-y(0))
	k.upright(62, y(0), y(h))
	k.tell("ink", 62, y(h/2), "lt", "h")
	k.say("soft", (left+right)/2, y(0), "u", k.sp.Word("sketch.pressed"))
	k.say("soft", (left+right)/2, y(h), "d", k.sp.Word("sketch.pulled"))
	k.line("thin", axis, y(0), axis, y(h))
	top, end := axis+(asked+axial)*scale, axis-(asked-axial)*scale
	zero := h * (asked + axial) / (2 * asked)
	k.block("area", axis, y(0), top, y(0), axis, y(zero))
	k.block("push net", axis, y(math.Min(zero, h)), end, y(h), axis, y(h))
	k.line("curve", top, y(0), end, y(h))
	k.line("thin", axis, y(0), top, y(0))
	limit := axis - there*scale
	k.line("until", limit, y(h*0.6), limit, y(h)+8)
	if zero < h {
		k.line("witness", left, y(zero), top+20, y(zero))
		k.say("soft", top, y(zero), "rd d r", k.sp.Word("sketch.axis"))
	}
	if axial > 0 {
		k.pin("ink", top, y(0), 362, y(0), "lu", bent+" + "+loaded+" = "+k.amount(asked+axial, units.Strength))
		k.pin("push", end, y(h), 362, y(h), "ld", bent+" − "+loaded+" = "+k.amount(asked-axial, units.Strength))
	} else {
		k.pin("push", end, y(h), 362, y(h), "ld", bent+" = "+k.amount(asked, units.Strength))
	}
	k.pin("ink", limit, y(h)+8, 362, y(h)+28, "ld", "φ 5 λ √f′\x01c\x02 = "+k.amount(there, units.Strength))
	return true
}
