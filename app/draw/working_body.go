package draw

import (
	"math"
	"slices"
	"strings"

	"standingbeam/calc/units"
)

// body draws wall and footing as one body: its weights with their arms about
// the toe, or what pushes and what resists.
func (k *sketch) body() bool {
	tips := k.check.ID == "overturning"
	if !tips && k.check.ID != "sliding" || !k.has("B", "tw", "Lt", "W,footing") {
		return false
	}
	const right, left, top, pitch = 280.0, 176.0, 26.0, 40.0
	pushes := k.pushes()
	b, tf := k.v("B"), k.v("tf")
	up := math.Max(k.v("ht"), k.v("hA")) + tf
	foot := top + math.Max(138, pitch*float64(len(pushes)))
	scale := math.Min((right-left)/b, (foot-top)/up)
	x := func(fromToe float64) float64 { return right - scale*fromToe }
	y := func(v float64) float64 { return foot - scale*v } // above the footing's bottom
	under := 50.0
	if tips {
		under = k.arms(nil, 0) + 32
	}
	k.begin(k.check.ID, foot+under, false)
	face, heel := x(k.v("Lt")), x(k.v("Lt")+k.v("tw"))
	if hA := k.v("hA"); k.has("Lh") {
		k.s.rect("earth", "", x(b), y(hA+tf), heel-x(b), scale*hA)
		k.s.segment("surface", x(b)-16, y(hA+tf), heel, y(hA+tf))
	}
	if hB := k.v("hB"); hB > 0 {
		k.s.rect("earth", "", face, y(hB+tf), right-face, scale*hB)
		k.s.segment("surface", face, y(hB+tf), SketchWidth-3, y(hB+tf))
	}
	k.s.rect("concrete edged", "", x(b), y(tf), scale*b, scale*tf)
	k.s.rect("concrete edged", "", heel, y(k.v("ht")+tf), face-heel, scale*k.v("ht"))
	k.p.keep(Box{X: heel, Y: y(k.v("ht") + tf), W: face - heel, H: scale * k.v("ht")})
	at := top - 10
	for _, p := range pushes {
		text := k.is(p.symbol)
		if k.has("y" + p.symbol[1:]) {
			text += "\n" + k.is("y"+p.symbol[1:])
		}
		k.arrow("push", x(b)-22, y(p.at), x(b), y(p.at))
		at = math.Max(at+pitch, math.Min(y(p.at), foot-20))
		k.pin("push", x(b)-22, y(p.at), -3, at, "r", text)
	}
	k.resists(right, y)
	if tips {
		k.s.circle("peak", right, foot, 5)
		k.say("soft", right, foot, "rd", k.sp.Word("sketch.tips"))
		k.arms(x, foot+16)
		return true
	}
	k.arrow("hold", right-4, foot+18, x(b)+20, foot+18)
	k.say("ink", x(b)+20, foot+18, "l", "μ N = "+k.amount(k.v("μ")*k.v("N"), units.LineForce))
	k.pin("ink", right, foot+18, SketchWidth+3, foot+18, "ld", k.is("N"))
	return true
}

// pushed is one push on a body, with the height at which it acts.
type pushed struct {
	symbol string
	at     float64
}

// pushes are the pushes of the ground and the water on the body, from the top
// down. Where a working has no use for their heights, they act at a third.
func (k *sketch) pushes() (out []pushed) {
	for i := range k.lines {
		s := k.lines[i].Step.Symbol
		if len(s) < 3 || s[:2] != "P," || k.v(s) == 0 {
			continue
		}
		at := k.v("y" + s[1:])
		if at == 0 {
			at = (k.v("hA") + k.v("tf")) / 3
		}
		out = append(out, pushed{s, at})
	}
	slices.SortStableFunc(out, func(a, b pushed) int { return int(math.Copysign(1, b.at-a.at)) })
	return out
}

// resists draws what the ground on the other side gives.
func (k *sketch) resists(x float64, y func(float64) float64) {
	for i := range k.lines {
		s := k.lines[i].Step.Symbol
		at := k.v("tf") / 2
		switch {
		case k.v(s) == 0:
			continue
		case s == "Pp":
		case len(s) > 2 && s[:2] == "R,":
			if at = k.v("z" + s[1:]); at == 0 {
				at = (k.v("hB") + k.v("tf")) / 3
			}
		default:
			continue
		}
		k.arrow("hold", x+46, y(at), x, y(at))
		k.pin("ink", x+40, y(at), SketchWidth+3, y(at), "lu ld", strings.Replace(k.is(s), " = ", " =\n", 1))
	}
}

// arms draws a row for each weight and lift, with its arm from the toe, and
// returns how much room they take. Without x it only measures.
func (k *sketch) arms(x func(float64) float64, y float64) (deep float64) {
	for i := range k.lines {
		s := k.lines[i].Step.Symbol
		if len(s) < 3 || s[1] != ',' || s[0] != 'W' && s[0] != 'U' {
			continue
		}
		arm := map[byte]string{'W': "x", 'U': "u"}[s[0]] + s[1:]
		if !k.has(arm) {
			continue
		}
		deep += 22
		text := k.is(s)
		long := len(s) > 14
		if long {
			text = strings.Replace(text, " = ", "\n= ", 1)
			deep += 17
		}
		if x == nil {
			continue
		}
		row := y + deep
		if long {
			row -= 8
		}
		at := x(k.v(arm))
		k.s.segment("witness", at, row-18, at, row)
		k.across(at, x(0), row)
		k.say("ink", at, row, "l", text)
		k.say("ink", x(0), row, "r", k.is(arm)[len(symbolOf(arm))+3:])
	}
	return deep
}
