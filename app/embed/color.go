package embed

import (
	"math"
	"strconv"
)

// Color is an opaque color, each part from 0 to 1 as it is written in sRGB.
type Color struct{ R, G, B float64 }

// Given is a color that may be left out.
type Given struct {
	Color
	Is bool
}

// read takes #rgb and #rrggbb and nothing else.
func (g *Given) read(text string) bool {
	c, ok := parseHex(text)
	if ok {
		*g = Given{c, true}
	}
	return ok
}

// String is the color in hexadecimal, "" when it is left out.
func (g Given) String() string {
	if !g.Is {
		return ""
	}
	return g.Color.String()
}

func parseHex(text string) (Color, bool) {
	if len(text) != 4 && len(text) != 7 || text[0] != '#' {
		return Color{}, false
	}
	for i := 1; i < len(text); i++ {
		if c := text[i] | 0x20; (c < '0' || c > '9' || text[i] < '0') && (c < 'a' || c > 'f') {
			return Color{}, false
		}
	}
	wide := (len(text) - 1) / 3
	part := func(i int) float64 {
		digits := text[1+i*wide : 1+(i+1)*wide]
		if wide == 1 {
			digits += digits
		}
		n, _ := strconv.ParseUint(digits, 16, 8) // the digits were looked at
		return float64(n) / 255
	}
	return Color{part(0), part(1), part(2)}, true
}

// hex is a color of ours.
func hex(text string) Color {
	c, _ := parseHex(text)
	return c
}

// String is the color as #rrggbb.
func (c Color) String() string {
	const digits = "0123456789abcdef"
	out := []byte("#")
	for _, part := range []float64{c.R, c.G, c.B} {
		n := int(math.Round(255 * min(max(part, 0), 1)))
		out = append(out, digits[n>>4], digits[n&15])
	}
	return string(out)
}

// round is the color that String writes: what is checked is what is shown.
func (c Color) round() Color { return hex(c.String()) }

// Luminance is the relative luminance of a color in sRGB, from 0 for black to
// 1 for white.
//
// Source: WCAG 2.2, definition of relative luminance, with the threshold
// 0.04045 of the sRGB standard (the older 0.03928 gives the same for colors of
// eight bits).
func (c Color) Luminance() float64 {
	linear := func(v float64) float64 {
		if v <= 0.04045 {
			return v / 12.92
		}
		return math.Pow((v+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// Contrast is the contrast ratio of two colors, from 1 to 21.
//
// Source: WCAG 2.2, definition of contrast ratio.
func Contrast(a, b Color) float64 {
	x, y := a.Luminance(), b.Luminance()
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// mixed is a color with a share of another in it.
func mixed(a, b Color, share float64) Color {
	part := func(x, y float64) float64 { return x + share*(y-x) }
	return Color{part(a.R, b.R), part(a.G, b.G), part(a.B, b.B)}.round()
}

// toward moves a color to another until its contrast with the ground is at
// least so much, or it is the other.
func toward(c, to, ground Color, least float64) Color {
	for share := 0.0; share < 1; share += 0.05 {
		if m := mixed(c, to, share); Contrast(m, ground) >= least {
			return m
		}
	}
	return to
}
