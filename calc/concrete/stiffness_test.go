package concrete

import (
	"math"
	"testing"

	"standingbeam/calc/units"
)

// 19.2.2.1, 19.2.3.1 at √f'c = 60: Ec 3,420,000 psi, fr 450 psi.
func TestModuli(t *testing.T) {
	if got := ModulusOfElasticity(3600); math.Abs(got.PSI()-3.42e6) > 1e-6 {
		t.Errorf("Ec = %v", got)
	}
	if got := Rupture(3600, 1); math.Abs(got.PSI()-450) > 1e-9 {
		t.Errorf("fr = %v", got)
	}
	if got := Rupture(3600, 0.75); math.Abs(got.PSI()-337.5) > 1e-9 {
		t.Errorf("fr = %v", got)
	}
	s := Section{Fc: 3600, H: 8} // Mcr = 450·64/6 = 4,800 lb-ft/ft; Ig = 512/12 in⁴/in
	if math.Abs(float64(s.CrackingMoment())-4800) > 1e-9 || math.Abs(s.GrossInertia()-512.0/12) > 1e-9 {
		t.Errorf("Mcr %v, Ig %v", s.CrackingMoment(), s.GrossInertia())
	}
}

// cracks is a section with n As = 1 in²/in at d = 4 in: kd = √(1 + 8) − 1 = 2
// in, Icr = 2³/3 + 1·(4 − 2)² = 20/3 in⁴/in.
func cracks() Section {
	return Section{Fc: 3600, Fy: 60000, H: 5, D: 4, As: 3.42e6 / 29e6}
}

func TestCrackedInertia(t *testing.T) {
	if got := cracks().CrackedInertia(); math.Abs(got-20.0/3) > 1e-9 {
		t.Errorf("Icr = %v, want 6.6667", got)
	}
}

// Table 24.2.3.5 in closed form: Ig up to 2/3 Mcr and without a jump there; at
// Ma = Mcr 1/Ie = 4/9·1/Ig + 5/9·1/Icr; and Icr in the end.
func TestEffectiveInertia(t *testing.T) {
	s := cracks()
	ig, icr, mcr := 125.0/12, 20.0/3, 450*25.0/6
	for _, c := range []struct{ ma, want, tol float64 }{
		{0, ig, 1e-9}, {mcr * 0.5, ig, 1e-9}, {mcr * 2 / 3, ig, 1e-9}, {mcr * 2 / 3 * (1 + 1e-9), ig, 1e-6},
		{mcr, 1 / (4/(9*ig) + 5/(9*icr)), 1e-9}, {-mcr, 1 / (4/(9*ig) + 5/(9*icr)), 1e-9}, {mcr * 1e6, icr, 1e-9},
	} {
		if got := s.EffectiveInertia(units.MomentPerLength(c.ma)); math.Abs(got-c.want) > c.tol {
			t.Errorf("Ma = %v: Ie = %v, want %v", c.ma, got, c.want)
		}
	}
	if got := (Section{Fc: 3600, H: 5}).EffectiveInertia(1e6); got > 0 {
		t.Errorf("cracked without bars Ie = %v", got)
	}
}

// Table 24.2.4.1.3, and the later row between two.
func TestLongTermFactor(t *testing.T) {
	for months, want := range map[float64]float64{0: 0, 3: 1.0, 4: 1.2, 6: 1.2, 12: 1.4, 13: 2.0, 60: 2.0, 600: 2.0} {
		if got := LongTermFactor(months); math.Abs(got-want) > 1e-12 {
			t.Errorf("λΔ at %v months is %v, want %v", months, got, want)
		}
	}
}
