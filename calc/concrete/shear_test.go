package concrete

import (
	"math"
	"testing"

	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

func TestShear(t *testing.T) {
	for _, r := range reference.Rows(t, "sections/shear.csv") {
		s := Section{Fc: 3000, Fy: 60000, H: units.Length(r.Number("h")), D: units.Length(r.Number("d")),
			As: units.AreaPerLength(r.Number("steel")) * units.In2PerFt}
		r.Near("Vc", s.Shear(0, true, nil).PLF()/0.75)
		// Without the size effect the strength is larger by 1/λs.
		ratio := float64(s.Shear(0, true, nil) / s.Shear(0, false, nil))
		r.Near("size effect", ratio)
	}
}

// The limits of 22.5.5.1.1, 22.5.5.1.2 and 22.5.3.1, by hand.
func TestShearLimits(t *testing.T) {
	s := Section{Fc: 3000, Fy: 60000, H: 10, D: 8, As: 0.31 / 12}
	base := float64(s.Shear(0, true, nil)) / 0.75
	for _, test := range []struct {
		name     string
		s        Section
		nu, want float64 // lb/in
	}{
		{"Nu/(6 Ag) adds: 600/60·8", s, 600, base + 80},
		{"a pull takes", s, -600, base - 80},
		{"0.05 f'c = 150 psi at most", s, 1e5, math.Min(base+150*8, 5*math.Sqrt(3000)*8)},
		{"nothing is left", s, -1e5, 0},
		{"5 λ √f'c at most", Section{Fc: 3000, Fy: 60000, H: 10, D: 8, As: 0.31}, 1e5, math.Min((8*math.Cbrt(0.31/8)*math.Sqrt(3000)+150)*8, 5*math.Sqrt(3000)*8)},
		{"√f'c is 100 psi at most", Section{Fc: 14400, Fy: 60000, H: 10, D: 8, As: 0.064}, 0, 8 * 0.2 * 100 * 8},
		{"lightweight", Section{Fc: 3600, Fy: 60000, H: 10, D: 8, As: 0.064, Lambda: 0.75}, 0, 8 * 0.75 * 0.2 * 60 * 8},
	} {
		if got := float64(test.s.Shear(units.ForcePerLength(test.nu), true, nil)) / 0.75; math.Abs(got-test.want) > 1e-9*math.Max(1, test.want) {
			t.Errorf("%s: Vc = %v lb/in, want %v", test.name, got, test.want)
		}
	}
}

// 22.9.4 by hand, per foot: No. 4 at 18 across a joint of an 8 in wall.
func TestShearFriction(t *testing.T) {
	for _, test := range []struct {
		name      string
		avf, fy   float64
		mu        float64
		roughened bool
		want      float64
		source    string
	}{
		{"as cast", 0.4 / 3, 60000, 0.6, false, 3600, "0.75·0.6·0.13333·60,000"},
		{"roughened", 0.4 / 3, 60000, 1.0, true, 6000, "0.75·1.0·0.13333·60,000"},
		{"fy stops at 60,000", 0.4 / 3, 80000, 0.6, false, 3600, "22.9.1.3"},
		{"the face limits: 0.2 f'c", 3, 60000, 1.0, true, 43200, "0.75·600·96"},
		{"no bars", 0, 60000, 0.6, false, 0, "no strength without bars"},
	} {
		got := ShearFriction(units.AreaPerLength(test.avf)*units.In2PerFt, units.Stress(test.fy), test.mu, 8, 3000, test.roughened, nil).PLF()
		if math.Abs(got-test.want) > 1e-6 {
			t.Errorf("%s: φVn = %v lb/ft, want %v (%s)", test.name, got, test.want, test.source)
		}
	}
	// Table 22.9.4.4 at 8,000 psi: 480 + 0.08 f'c = 1,120 psi roughened, 800 psi not.
	for roughened, want := range map[bool]float64{true: 0.75 * 1120 * 96, false: 0.75 * 800 * 96} {
		if got := ShearFriction(10, 60000, 1, 8, 8000, roughened, nil).PLF(); math.Abs(got-want) > 1e-6 {
			t.Errorf("roughened %v: φVn = %v lb/ft, want %v", roughened, got, want)
		}
	}
}
