package statics

import "math"

// quadratic appends the roots of a + b t + c t² between 0 and l, ascending. It
// takes the form without cancellation.
func quadratic(out []float64, a, b, c, l float64) []float64 {
	disc := b*b - 4*a*c
	if !(disc >= 0) {
		return out
	}
	q := -(b + math.Copysign(math.Sqrt(disc), b)) / 2
	r, s := a/q, q/c // either may be no number, and then lies nowhere
	if s < r {
		r, s = s, r
	}
	for _, t := range [2]float64{r, s} {
		if t > 0 && t < l {
			out = append(out, t)
		}
	}
	return out
}

// roots appends the places between 0 and l where the polynomial with
// coefficients c, of ascending power, changes its sign. Between two roots of
// its derivative it runs one way, and there a sign change is halved down.
func roots(out []float64, c []float64, l float64) []float64 {
	n := len(c) - 1
	if n <= 2 {
		return quadratic(out, c[0], c[1], c[2], l)
	}
	var room [5]float64
	slope := room[:n]
	for i := range slope {
		slope[i] = float64(i+1) * c[i+1]
	}
	var turnRoom [6]float64
	turns := append(roots(turnRoom[:0], slope, l), l)
	lower := 0.0
	for _, upper := range turns {
		if t, ok := halve(c, lower, upper); ok {
			out = append(out, t)
		}
		lower = upper
	}
	return out
}

// halve returns the sign change of the polynomial between a and b.
func halve(c []float64, a, b float64) (float64, bool) {
	fa, fb := horner(c, a), horner(c, b)
	if !(fa < 0 && fb > 0 || fa > 0 && fb < 0) {
		return 0, false
	}
	for range 80 {
		m := a + (b-a)/2
		if !(a < m && m < b) {
			break
		}
		if fm := horner(c, m); fm < 0 == (fa < 0) {
			a = m
		} else {
			b = m
		}
	}
	return a + (b-a)/2, true
}

func horner(c []float64, t float64) float64 {
	var s float64
	for i := len(c) - 1; i >= 0; i-- {
		s = s*t + c[i]
	}
	return s
}
