package soil

import (
	"math"
	"testing"

	"standingbeam/calc/units"
)

func TestCoefficients(t *testing.T) {
	for _, row := range rows(t, "coefficients.csv") {
		phi := units.Angle(number(t, row[1])) * units.Degree
		slope := units.Angle(number(t, row[2])) * units.Degree
		want, tol := number(t, row[3]), number(t, row[4])
		var got []float64
		switch row[0] {
		case "active":
			got = []float64{ActiveCoefficient(phi), RankineSlope(phi, 0)}
		case "passive":
			got = []float64{PassiveCoefficient(phi)}
		case "at rest":
			got = []float64{AtRestCoefficient(phi)}
		case "rankine":
			got = []float64{RankineSlope(phi, slope)}
		default:
			t.Fatalf("unknown coefficient %q", row[0])
		}
		for _, g := range got {
			if math.Abs(g-want) > tol {
				t.Errorf("%s φ %s slope %s = %v, want %v (source %s)", row[0], row[1], row[2], g, want, row[6])
			}
		}
	}
}

// Active is least and passive is greatest; both are 1 for water; a rising
// slope pushes more; and whatever the angle, the answer is a number.
func TestCoefficientOrder(t *testing.T) {
	last := RankineSlope(0, 0)
	for d := 1; d <= 60; d++ {
		phi := units.Angle(d) * units.Degree
		a, k0, p := ActiveCoefficient(phi), AtRestCoefficient(phi), PassiveCoefficient(phi)
		if !(a < k0 && k0 < 1 && 1 < p && a < last) || math.Abs(a*p-1) > 1e-12 {
			t.Errorf("φ %d: active %v, at rest %v, passive %v", d, a, k0, p)
		}
		tan := math.Tan(math.Pi/4 - float64(phi)/2)
		if math.Abs(a-tan*tan) > 1e-12 {
			t.Errorf("φ %d: %v, want tan² = %v", d, a, tan*tan)
		}
		last = a
		for s := 1; s <= d; s++ {
			slope := units.Angle(s) * units.Degree
			if got := RankineSlope(phi, slope); !(got > RankineSlope(phi, slope-units.Degree)) || got > 1 {
				t.Errorf("φ %d slope %d: %v is not more than for less", d, s, got)
			}
		}
	}
	// At slope = φ the root is zero and Ka = cos φ.
	if got, want := RankineSlope(30*units.Degree, 30*units.Degree), math.Cos(math.Pi/6); math.Abs(got-want) > 1e-6 {
		t.Errorf("slope = φ: %v, want %v", got, want)
	}
}

func FuzzCoefficients(f *testing.F) {
	f.Add(0.5, 0.1)
	f.Add(math.NaN(), math.Inf(1))
	f.Add(-1.0, 2.0)
	f.Fuzz(func(t *testing.T, phi, slope float64) {
		p, s := units.Angle(phi), units.Angle(slope)
		for _, k := range []float64{ActiveCoefficient(p), AtRestCoefficient(p), RankineSlope(p, s)} {
			if !(k > 0 && k <= 1) {
				t.Errorf("φ %v slope %v: %v", phi, slope, k)
			}
		}
		if k := PassiveCoefficient(p); !(k >= 1 && k < 1e5) {
			t.Errorf("φ %v: passive %v", phi, k)
		}
	})
}
