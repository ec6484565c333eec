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

// crossings appends the places between 0 and l where the polynomial with
// coefficients c, of ascending power, changes its sign. turns are the roots of
// its derivative, ascending: between two of them it runs one way, and there a
// change of sign is halved down.
func crossings(out, c, turns []float64, l float64) []float64 {
	lower := 0.0
	for i := range len(turns) + 1 {
		upper := l
		if i < len(turns) {
			upper = turns[i]
		}
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
