package draw

import (
	"math"
	"strings"

	"standingbeam/calc/units"
)

// part is a stretch of the wall over which the pressure is linear, in inches
// and psi: a at its top, b at its bottom.
type part struct {
	top, bottom, a, b float64
	push, at          string // symbols of its resultant and of the height of that
	pressure          string // symbol of b
}

// parts reads the stretches from the steps that sum their pushes.
func (k *sketch) parts() (out []part) {
	for i := range k.lines {
		st := &k.lines[i].Step
		if st.Symbol != "F" && (len(st.Symbol) != 2 || st.Symbol[0] != 'F' || st.Symbol[1] > '9') || !k.has("y"+st.Symbol) {
			continue
		}
		p := part{push: st.Symbol, at: "y" + st.Symbol}
		levels := 0
		for _, t := range st.With {
			switch {
			case t.Value.Kind == units.Pressure:
				p.b, p.pressure = t.Value.Base, t.Symbol
			case levels == 0:
				p.top, levels = t.Value.Base, 1
			default:
				p.bottom = t.Value.Base
			}
		}
		if p.top > p.bottom {
			p.a = math.Max(0, 2*st.Value.Base/(p.top-p.bottom)-p.b)
			out = append(out, p)
		}
	}
	return out
}

// push draws the pressures on the wall with their resultants, what holds the
// wall, and the section that the check asks about.
func (k *sketch) push() bool {
	parts := k.parts()
	if len(parts) == 0 || k.has("x") || k.has("qu") {
		return false
	}
	const wall, thick, reach, top = 198.0, 12.0, 72.0, 26.0
	foot := 178 + 22*float64(len(parts))
	brace, low := k.v("ℓ"), 0.0
	if k.has("yb") {
		brace, low = k.v("yb"), k.v("yf")
	}
	hA, most := parts[0].top, 0.0
	for _, p := range parts {
		most = math.Max(most, math.Max(p.a, p.b))
	}
	high := math.Max(hA, brace)
	y := func(v float64) float64 { return foot - (foot-top)*v/high }
	k.begin("push", foot+40, false)
	k.s.rect("earth", "", 3, y(hA), wall-3, foot-y(hA))
	k.line("surface", 3, y(hA), wall, y(hA))
	if hw := k.v("hw"); hw > 0 {
		k.line("water level", 3, y(hw), wall, y(hw))
		k.tell("water", 3, y(hw), "ru rd", "hw")
	}
	if hB := k.v("hB"); hB > 0 {
		k.s.rect("earth", "", wall+thick, y(hB), SketchWidth-3-wall-thick, foot-y(hB))
		k.line("surface", wall+thick, y(hB), SketchWidth-3, y(hB))
		k.tell("ink", SketchWidth-3, y(hB), "ld lu", "hB")
	}
	k.s.rect("concrete edged", "", wall-16, foot, thick+32, 12)
	k.p.keep(Box{X: wall - 16, Y: foot, W: thick + 32, H: 12})
	k.s.rect("concrete edged", "", wall, y(high)-6, thick, foot-y(high)+6)
	k.p.keep(Box{X: wall, Y: y(high) - 6, W: thick, H: foot - y(high) + 6})
	k.tell("ink", 3, y(hA), "ru rd", "hA")
	for i, p := range parts {
		x := func(v float64) float64 { return wall - reach*v/most }
		k.block("push body", wall, y(p.top), x(p.a), y(p.top), x(p.b), y(p.bottom), wall, y(p.bottom))
		k.line("push net", x(p.a), y(p.top), x(p.b), y(p.bottom))
		if at := y(k.v(p.at)); k.has(p.push) {
			k.arrow("push", 40, at, wall, at)
			k.pin("push", 40, at, -3, at, "ru rd", k.is(p.push)+"\n"+k.is(p.at))
		}
		if i == 0 && p.a > 0 {
			for _, s := range [...]string{"p0", "pu0"} {
				if k.has(s) {
					k.tell("push", x(p.a), y(p.top), "u lu ru", s)
				}
			}
		}
		if p.pressure != "" && p.b > 0 {
			k.tell("push", x(p.b), y(p.bottom), "d ld l", p.pressure)
		}
	}
	k.holds(wall+thick, y, brace, low)
	k.cut(wall, wall+thick, y)
	return true
}

// holds draws the reactions of a wall that is held.
func (k *sketch) holds(x float64, y func(float64) float64, brace, low float64) {
	for _, h := range [...]struct {
		symbol string
		at     float64
	}{{"Rt", brace}, {"Rtu", brace}, {"Rf", low}, {"Rfu", low}} {
		if k.has(h.symbol) {
			from, to := x+56, x
			if k.v(h.symbol) < 0 {
				from, to = to, from
			}
			k.arrow("hold", from, y(h.at), to, y(h.at))
			k.tell("ink", x+16, y(h.at), "rd ru", h.symbol)
		}
	}
	if k.has("ℓ") {
		k.upright(SketchWidth-9, y(brace), y(low))
		k.tell("ink", SketchWidth-9, y((brace+low)/2), "l lu ld", "ℓ")
	}
}

// cut draws the section that is asked about.
func (k *sketch) cut(left, right float64, y func(float64) float64) {
	for _, s := range [...]string{"Mu", "Vu"} {
		if !k.has(s) || !k.check.HasAt && s == "Mu" {
			continue
		}
		at := y(k.check.At.Inches())
		k.line("until", left-8, at, right+14, at)
		text := strings.Replace(k.is(s), " = ", " =\n", 1)
		for _, level := range [...]string{"ym", "yd"} {
			if k.has(level) {
				text += "\n" + k.is(level)
			}
		}
		if f := k.check.At.Inches(); s == "Vu" && f > 0 && !k.has("yd") && math.Abs(f-k.v("d")) < 0.01 {
			text += "\n" + k.is("d")
		}
		k.say("ink", right+14, at, "r ru rd", text)
	}
}
