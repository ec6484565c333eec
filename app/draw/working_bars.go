package draw

import (
	"math"

	"standingbeam/calc/units"
)

// anchored draws a bar with the length that it needs and the one it has: a lap
// of two bars, a straight end, or a hook.
func (k *sketch) anchored() bool {
	need := ""
	for _, s := range [...]string{"ldh", "lst", "ld"} {
		if k.has(s) && need == "" {
			need = s
		}
	}
	switch k.check.ID {
	case "dowel-lap", "dowel-hook", "lap-gap", "tie-development-wall", "tie-development-slab":
	default:
		need = ""
	}
	if need == "" || k.v(need) <= 0 {
		return false
	}
	asked := k.v(need)
	there := k.check.Capacity.Base
	if k.check.ID == "lap-gap" {
		there = asked
	}
	scale := 186 / math.Max(asked, there)
	high := 158.0
	if k.check.ID == "lap-gap" {
		high = 122
	}
	k.begin(need, high, false)
	const end, y = 106.0, 62.0
	k.s.rect("concrete", "", end, 22, SketchWidth-22-end, 84)
	k.s.draw("thin", new(path).move(end, 22).line(end, 106))
	far := end + there*scale
	switch need {
	case "ldh":
		k.s.draw("bar", new(path).move(12, y).line(far-6, y).line(far, y+6).line(far, 104))
	case "lst":
		gap := 12.0
		k.s.draw("bar", new(path).move(12, y).line(far, y))
		k.s.draw("bar", new(path).move(end, y+gap).line(SketchWidth-12, y+gap))
		if k.has("gmax") {
			k.tell("ink", (end+far)/2, y+gap, "d", "gmax")
		}
	default:
		k.s.draw("bar", new(path).move(12, y).line(far, y))
	}
	if k.has("db") {
		k.tell("steel", 12, y, "ru rd", "db")
	}
	k.across(end, end+asked*scale, 38)
	k.tell("ink", end+asked*scale/2, 38, "u d", need)
	if k.check.ID != "lap-gap" && there > 0 {
		k.across(end, far, 128)
		k.line("witness", far, y, far, 128)
		k.say("ink", (end+far)/2, 128, "d u", k.sp.Sentence("sketch.there", k.amount(there, units.Size)))
	}
	return true
}

// spaced draws bars in a section along the wall, with their spacing.
func (k *sketch) spaced() bool {
	s := k.v("s")
	switch k.check.ID {
	case "bar-spacing", "minimum-vertical", "minimum-horizontal", "dowel-steel", "heel-minimum", "toe-minimum":
	default:
		return false
	}
	if s == 0 && k.check.ID == "bar-spacing" {
		s = k.check.Demand.Base
	}
	h, symbol := k.v("h"), "h"
	if k.has("tf") && h == 0 {
		h, symbol = k.v("tf"), "tf"
	}
	if !(s > 0 && h > 0) {
		return false
	}
	const left, right, top = 110.0, 346.0, 24.0
	scale := math.Min(216/(2.4*math.Max(s, k.v("smax"))), 90/h)
	deep, pitch := h*scale, s*scale
	k.begin("spacing", top+deep+78, true)
	k.s.rect("concrete", "", left, top, right-left, deep)
	k.s.draw("thin", new(path).move(left, top).line(right, top).move(left, top+deep).line(right, top+deep))
	bar := top + deep/2
	if k.v("cc") > 0 {
		bar = top + deep - math.Max(5, k.v("cc")*scale)
		k.tell("ink", left+14, bar, "ru", "cc")
	}
	first := left + 14
	for x := first; x < right-4; x += pitch {
		k.s.circle("dots", x, bar, 4)
	}
	k.upright(left-14, top, top+deep)
	k.tell("ink", left-14, top+deep/2, "l", symbol)
	y := top + deep + 16
	k.across(first, first+pitch, y)
	k.say("ink", first+pitch/2, y, "d r", symbolOf("s")+" = "+k.amount(s, units.Size))
	if m := k.v("smax"); m > 0 {
		k.across(first, first+m*scale, y+33)
		k.tell("ink", first+m*scale/2, y+33, "d r", "smax")
	}
	return true
}

// dragged draws the slab that pulls a wall back: its part beyond the soil that
// would slide, with the friction under it.
func (k *sketch) dragged() bool {
	if k.check.ID != "slab-drag" || !k.has("L", "a", "D", "T") || k.v("L") <= 0 {
		return false
	}
	const wall, top = 318.0, 60.0
	scale := 300 / math.Max(k.v("L"), k.v("a"))
	far, wedge := wall-k.v("L")*scale, wall-k.v("a")*scale
	k.begin("drag", 166, true)
	k.s.rect("earth", "", 8, top+14, wall-8, 62)
	k.s.draw("wedge", new(path).move(wall, top+76).line(wedge, top+14))
	k.s.rect("concrete edged", "", far, top, wall-far, 14)
	k.s.rect("concrete edged", "", wall, top-4, 16, 80)
	for x := wedge - 8; x > far+6; x -= 16 {
		k.s.draw("drag", new(path).move(x-6, top+22).line(x, top+16))
	}
	k.arrow("push", wall-64, top+7, wall-4, top+7)
	k.tell("push", wall-40, top, "lu u", "T")
	k.tell("ink", math.Max(far+10, (far+wedge)/2), top+22, "d rd", "D")
	k.across(wedge, wall, top+92)
	k.tell("ink", (wedge+wall)/2, top+92, "u d l", "a")
	k.across(far, wall, 22)
	k.tell("ink", (far+wall)/2, 22, "d u", "L")
	return true
}
