package plain

import (
	"math"
	"testing"

	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// The wall of the HUD example, with the factor of its time and with today's.
func TestPlainWall(t *testing.T) {
	const mu, pu, dead, height = 1811 * units.LbFtPerFt, 1116 * units.PLF, 837 * units.PLF, 8 * units.Foot
	for _, r := range reference.Rows(t, "sections/plain_wall.csv") {
		s := Section{Fc: 3000 * units.PSI, H: 8 * units.Inch, Phi: r.Number("phi")}
		var got float64
		switch r.Text("quantity") {
		case "S":
			got = s.Modulus() * 12
		case "phiVn":
			got = s.DesignShear(nil).PLF()
		case "tension_stress":
			got = s.TensionStress(mu, pu).PSI()
		case "tension_with_0_9D":
			got = s.TensionStress(mu, dead).PSI()
		case "tension_limit":
			got = s.TensionLimit().PSI()
		case "ratio":
			got = s.TensionStress(mu, pu).PSI() / s.TensionLimit().PSI()
		case "Pn":
			got = s.AxialStrength(height, nil).PLF() / s.Phi
		case "interaction":
			got = s.Interaction(mu, pu, height, nil)
		default:
			t.Fatalf("unknown quantity %q", r.Text("quantity"))
		}
		r.Near("value", got)
	}
}

// Sums by hand on a strip of 12 in.
func TestMoment(t *testing.T) {
	for _, test := range []struct {
		name      string
		s         Section
		want, tol float64 // lb-in per strip of 12 in
		source    string
	}{
		{"tension face governs", Section{Fc: 3000, H: 10, Phi: 1}, 54772, 0.5, "5·√3000·12·10²/6"},
		{"8 in wall", Section{Fc: 3000, H: 8, Phi: 0.60}, 21032.5, 0.1, "0.60·5·√3000·128"},
		{"the factor left out is 0.60", Section{Fc: 3000, H: 8}, 21032.5, 0.1, "0.60·5·√3000·128"},
		{"lightweight", Section{Fc: 3000, H: 8, Lambda: 0.75}, 15774.4, 0.05, "0.75·21,032.5"},
		{"compression face governs", Section{Fc: 25, H: 10, Phi: 1}, 4250, 0.5, "0.85·25·200"},
	} {
		if got := float64(test.s.DesignMoment(nil)) * 12; math.Abs(got-test.want) > test.tol {
			t.Errorf("%s: φMn = %v lb-in, want %v (%s)", test.name, got, test.want, test.source)
		}
	}
}

// 14.5.4.1: without axial force the tension face carries φMn; each pound adds
// Sm/Ag = h/6, as it moves the resultant to the edge of the middle third.
func TestMomentWithAxial(t *testing.T) {
	for _, h := range []units.Length{5.5, 7.5, 8, 9.5, 12} {
		s := Section{Fc: 2500, H: h}
		plain := s.DesignMoment(nil)
		if got := s.DesignMomentWithAxial(0, nil); math.Abs(float64(got-plain)) > 1e-9 {
			t.Errorf("h %v: %v without axial force, want %v", h, got, plain)
		}
		for _, pu := range []float64{-10, 50, 200} {
			want := float64(plain) + pu*float64(h)/6
			if got := s.DesignMomentWithAxial(units.ForcePerLength(pu), nil); math.Abs(float64(got)-want) > 1e-9 {
				t.Errorf("h %v, Pu %v: %v, want %v", h, pu, got, want)
			}
			m := s.DesignMomentWithAxial(units.ForcePerLength(pu), nil)
			if got := s.TensionStress(m, units.ForcePerLength(pu)); math.Abs(float64(got-s.TensionLimit())) > 1e-9 {
				t.Errorf("h %v, Pu %v: at its strength the face has %v psi, want %v", h, pu, got, s.TensionLimit())
			}
		}
		if got := s.DesignMomentWithAxial(-1e6, nil); got != 0 {
			t.Errorf("pulled apart it still carries %v", got)
		}
	}
}

// A wall as tall as 32 times its thickness carries nothing (14.5.3.1), and half
// as tall three quarters.
func TestAxialStrength(t *testing.T) {
	s := Section{Fc: 3000, H: 6}
	full := 0.60 * 0.60 * 3000 * 6.0
	for lc, want := range map[units.Length]float64{0: full, 96: 0.75 * full, 192: 0, 400: 0, -1: 0} {
		if got := s.AxialStrength(lc, nil); math.Abs(float64(got)-want) > 1e-6 {
			t.Errorf("lc %v: %v lb/in, want %v", lc, got, want)
		}
	}
	if got := s.Interaction(10, 10, 240, nil); got < NoStrength {
		t.Errorf("a wall of 20 ft and 6 in under load has the ratio %v", got)
	}
	// 0.10 h (14.4.2.1): 100 lb/in at 0.6 in.
	if got := s.LeastMoment(100); math.Abs(float64(got)-60) > 1e-9 {
		t.Errorf("least moment is %v, want 60", got)
	}
}

// 14.3.1.1, 14.3.2.1, 14.5.1.7.
func TestLimits(t *testing.T) {
	for _, c := range []struct {
		side       units.Length
		foundation bool
		want       float64
	}{{96, false, 5.5}, {144, false, 6}, {96, true, 7.5}, {240, true, 10}} {
		if got := WallThickness(c.side, c.foundation); math.Abs(got.Inches()-c.want) > 1e-9 {
			t.Errorf("side %v, foundation %v: %v, want %v", c.side, c.foundation, got, c.want)
		}
	}
	if math.Abs(FootingThickness().Inches()-8) > 1e-9 || math.Abs(AgainstSoil(10).Inches()-8) > 1e-9 || AgainstSoil(1) != 0 {
		t.Error("footings: 8 in at least, 2 in lost against soil")
	}
}

// answers is everything this package computes for a section.
func answers(s Section, mu units.MomentPerLength, pu units.ForcePerLength, lc units.Length, w *working.Chain) []float64 {
	return []float64{
		float64(s.NominalMoment(w)), float64(s.DesignMoment(w)), float64(s.DesignMomentWithAxial(pu, w)),
		float64(s.DesignShear(w)), float64(s.AxialStrength(lc, w)), s.Interaction(mu, pu, lc, w),
		float64(s.TensionLimit()), float64(s.LeastMoment(pu)), s.Modulus(),
	}
}

// The steps of every working give its result, and recording changes nothing.
func TestWorkings(t *testing.T) {
	for _, s := range []Section{{Fc: 3000, H: 8}, {Fc: 2500, H: 5.5, Lambda: 0.75}, {Fc: 25, H: 10, Phi: 0.65}} {
		for _, pu := range []units.ForcePerLength{0, 93, -20, 1e5} {
			without := answers(s, 1811, pu, 96, nil)
			for i, f := range []func(*working.Chain){
				func(w *working.Chain) { s.NominalMoment(w) }, func(w *working.Chain) { s.DesignMoment(w) },
				func(w *working.Chain) { s.DesignMomentWithAxial(pu, w) }, func(w *working.Chain) { s.DesignShear(w) },
				func(w *working.Chain) { s.AxialStrength(96, w) }, func(w *working.Chain) { s.Interaction(1811, pu, 96, w) },
			} {
				w := &working.Chain{}
				f(w)
				if err := w.Verify(); err != nil {
					t.Errorf("%+v, Pu %v: %v", s, pu, err)
				}
				if last := w.Steps[len(w.Steps)-1]; math.Abs(last.Value.Base-without[i]) > 1e-9*math.Abs(without[i]) || last.Clause == "" {
					t.Errorf("%+v, Pu %v: the working ends with %v (%q), want %v", s, pu, last.Value.Base, last.Clause, without[i])
				}
			}
		}
	}
}

// More thickness or strength never carries less.
func TestMoreCarriesMore(t *testing.T) {
	for _, s := range []Section{{Fc: 2500, H: 5.5}, {Fc: 4000, H: 8}, {Fc: 8000, H: 23}} {
		for _, more := range []Section{{Fc: s.Fc, H: s.H + 0.5}, {Fc: s.Fc + 100, H: s.H}} {
			a, b := answers(s, 1000, 50, 120, nil), answers(more, 1000, 50, 120, nil)
			for i := range a {
				worse := b[i] < a[i]
				if i == 5 { // a use falls
					worse = b[i] > a[i]
				}
				if worse && i != 7 {
					t.Errorf("%+v carries less than %+v: answer %d, %v and %v", more, s, i, b[i], a[i])
				}
			}
		}
	}
}

func TestNoAllocation(t *testing.T) {
	s := Section{Fc: 3000, H: 8}
	if n := testing.AllocsPerRun(100, func() { answers8(s) }); n > 0 {
		t.Errorf("%v allocations a call", n)
	}
}

// answers8 is what the search for bars asks again and again.
func answers8(s Section) float64 {
	return float64(s.DesignMoment(nil)+s.DesignMomentWithAxial(50, nil)) + float64(s.DesignShear(nil)) + s.Interaction(1000, 50, 96, nil)
}

func FuzzSection(f *testing.F) {
	f.Add(3000.0, 8.0, 1.0, 0.6, 1811.0, 93.0, 96.0)
	f.Add(-1.0, math.Inf(1), math.NaN(), 0.0, 0.0, 0.0, 0.0)
	f.Fuzz(func(t *testing.T, fc, h, lambda, phi, mu, pu, lc float64) {
		s := Section{units.Stress(fc), units.Length(h), lambda, phi}
		w := &working.Chain{}
		all := answers(s, units.MomentPerLength(mu), units.ForcePerLength(pu), units.Length(lc), w)
		all = append(all, float64(s.TensionStress(units.MomentPerLength(mu), units.ForcePerLength(pu))))
		for _, step := range w.Steps {
			all = append(all, step.Value.Base)
		}
		for i, v := range all {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				t.Errorf("answer %d of %+v is %v", i, s, v)
			}
		}
	})
}
