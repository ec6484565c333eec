package concrete

import (
	"math"
	"testing"

	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

func TestFlexure(t *testing.T) {
	for _, r := range reference.Rows(t, "sections/flexure.csv") {
		s := Section{Fc: 3000, Fy: 60000, H: 24, D: units.Length(r.Number("d")), As: units.AreaPerLength(r.Number("steel")) * units.In2PerFt}
		got := s.Flexure(nil)
		r.Near("strength", got.Design.LbFtPerFt()/1000)
		if !got.TensionControlled {
			t.Errorf("d %v is not tension-controlled", s.D)
		}
	}
}

// Sections on a strip of 12 in whose strength is printed or done by hand.
func TestFlexureByHand(t *testing.T) {
	for _, test := range []struct {
		name            string
		fc, fy, d, area float64
		nominal, tol    float64 // lb-ft/ft
		source          string
	}{
		{"textbook beam", 4000, 60000, 17.5, 3.16, 240000, 500,
			"Wight, Reinforced Concrete, example of a singly reinforced beam of 12 in, 4 No. 8: a 4.65 in, Mn 240 kip-ft; from memory"},
		{"wall, No. 4 at 18", 3000, 60000, 7, 0.4 / 3, 4579.52, 0.005, "a = 8,000/30,600 = 0.26144; 8,000 (7 − 0.13072)/12"},
	} {
		s := Section{Fc: units.Stress(test.fc), Fy: units.Stress(test.fy), H: units.Length(test.d + 2), D: units.Length(test.d),
			As: units.AreaPerLength(test.area) * units.In2PerFt}
		if got := s.Flexure(nil).Nominal.LbFtPerFt(); math.Abs(got-test.nominal) > test.tol {
			t.Errorf("%s: Mn = %v, want %v (%s)", test.name, got, test.nominal, test.source)
		}
	}
}

// Table 21.2.2 and Table 22.2.2.4.3 at their corners.
func TestFactors(t *testing.T) {
	s := Section{Fc: 3000, Fy: 60000}
	y := 60000.0 / 29e6
	for et, want := range map[float64]float64{0: 0.65, y: 0.65, y + 0.0015: 0.775, y + 0.003: 0.90, 0.05: 0.90, -0.003: 0.65} {
		if got := s.phi(et); math.Abs(got-want) > 1e-9 {
			t.Errorf("φ at εt = %v is %v, want %v", et, got, want)
		}
	}
	for fc, want := range map[units.Stress]float64{2500: 0.85, 4000: 0.85, 5000: 0.80, 6000: 0.75, 8000: 0.65, 10000: 0.65} {
		if got := beta1(fc); math.Abs(got-want) > 1e-12 {
			t.Errorf("β1 at %v psi is %v, want %v", fc, got, want)
		}
	}
}

// sections walks over thin and thick sections, light and heavy steel.
func sections(each func(Section)) {
	for _, fc := range []units.Stress{2500, 4000, 8000} {
		for _, fy := range []units.Stress{40000, 60000, 80000} {
			for _, h := range []units.Length{5.5, 8, 12, 24} {
				for _, d := range []units.Length{0.5, 0.7, 0.9} {
					for _, rho := range []float64{0.001, 0.003, 0.01, 0.02, 0.05} {
						each(Section{Fc: fc, Fy: fy, H: h, D: d * h, As: units.AreaPerLength(rho * float64(h))})
					}
				}
			}
		}
	}
}

// Fewest and most steel that SteelFor gives back is the steel that was there,
// as far as the section is tension-controlled.
func TestSteelForIsTheInverse(t *testing.T) {
	count := 0
	sections(func(s Section) {
		f := s.Flexure(nil)
		got, ok := s.SteelFor(f.Design)
		if !f.TensionControlled {
			// The strength has fallen with φ, so that less steel may do, but
			// never as much.
			if ok && got >= s.As {
				t.Errorf("%+v: %v", s, got)
			}
			return
		}
		count++
		if !ok || math.Abs(float64(got/s.As)-1) > 1e-9 {
			t.Errorf("%+v: steel %v, want %v", s, got, s.As)
		}
	})
	if count < 100 {
		t.Errorf("only %d sections are tension-controlled", count)
	}
}

// A moment that no tension-controlled section of this depth carries: the limit
// is εt = εty + 0.003, c = 0.003 d/(0.006 + εty), by hand for d = 7 in, 3,000
// psi and Grade 60: c = 0.021/0.00806897 = 2.60256 in, a = 2.21218 in, φMn =
// 0.9·2,550·2.21218·(7 − 1.10609) = 29,923 lb-ft/ft.
func TestSteelForEnds(t *testing.T) {
	s := Section{Fc: 3000, Fy: 60000, H: 8, D: 7}
	if _, ok := s.SteelFor(29920); !ok {
		t.Error("29,920 lb-ft/ft is within reach")
	}
	if as, ok := s.SteelFor(29926); ok {
		t.Errorf("29,926 lb-ft/ft is out of reach, got %v", as)
	}
	if as, ok := s.SteelFor(0); !ok || as > 0 {
		t.Errorf("no moment needs %v, %v", as, ok)
	}
	if _, ok := (Section{Fc: 3000, Fy: 60000}).SteelFor(100); ok {
		t.Error("a section without depth carries a moment")
	}
}

// Cover and bars fixed, a thicker wall is never weaker; neither is stronger
// concrete, nor more steel in nominal strength.
func TestThickerIsNotWeaker(t *testing.T) {
	sections(func(s Section) {
		f := s.Flexure(nil)
		thicker, stronger, more := s, s, s
		thicker.H, thicker.D = s.H+0.25, s.D+0.25
		stronger.Fc *= 1.05
		more.As *= 1.05
		if g := thicker.Flexure(nil); g.Design < f.Design || g.Nominal < f.Nominal {
			t.Errorf("%+v is weaker a quarter inch thicker: %v and %v", s, f, g)
		}
		if g := stronger.Flexure(nil); g.Nominal < f.Nominal {
			t.Errorf("%+v is weaker of stronger concrete: %v and %v", s, f, g)
		}
		if g := more.Flexure(nil); g.Nominal < f.Nominal {
			t.Errorf("%+v is weaker with more steel: %v and %v", s, f, g)
		}
		for _, nu := range []units.ForcePerLength{0, 100} {
			if thicker.Shear(nu, true, nil) < s.Shear(nu, true, nil) {
				t.Errorf("%+v beside %v has less shear strength a quarter inch thicker", s, nu)
			}
		}
	})
}
