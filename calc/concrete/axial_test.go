package concrete

import (
	"math"
	"testing"

	"standingbeam/calc/units"
)

// fibres sums the stresses of a section over thin strips at the neutral axis
// c: axial force and moment about mid-depth, per inch. It knows only 22.2 (the
// block of 0.85 f'c over β1 c, plane strains, bars elastic up to fy), and not
// how the package finds c.
func fibres(s Section, c, beta float64) (axial, moment, strain float64) {
	const strips = 20000
	h, d := float64(s.H), float64(s.D)
	dy := h / strips
	for i := range strips {
		y := (float64(i) + 0.5) * dy
		if y < beta*c {
			axial += 0.85 * float64(s.Fc) * dy
			moment += 0.85 * float64(s.Fc) * dy * (h/2 - y)
		}
	}
	strain = 0.003 * (d - c) / c
	fs := math.Max(-float64(s.Fy), math.Min(float64(s.Fy), 29e6*strain))
	if fs < 0 {
		fs = math.Min(0, fs+0.85*float64(s.Fc))
	}
	axial -= float64(s.As) * fs
	moment += float64(s.As) * fs * (d - h/2)
	return axial, moment, strain
}

// Along the whole curve of interaction the strength found from the axial force
// is that of the fibres at the neutral axis it belongs to.
func TestInteractionByFibres(t *testing.T) {
	for _, s := range []Section{
		{Fc: 3000, Fy: 60000, H: 8, D: 7, As: 0.2 / 18},
		{Fc: 3000, Fy: 60000, H: 10, D: 5, As: 0.31 / 12},
		{Fc: 4000, Fy: 80000, H: 12, D: 9.5, As: 0.1},
		{Fc: 8000, Fy: 40000, H: 7.5, D: 6, As: 0.3},
	} {
		beta := map[units.Stress]float64{3000: 0.85, 4000: 0.85, 8000: 0.65}[s.Fc]
		y := float64(s.Fy) / 29e6
		limit := 0.65 * 0.80 * (0.85*float64(s.Fc)*float64(s.H-units.Length(s.As)) + float64(s.Fy)*float64(s.As))
		for part := 0.02; part < 1.3; part *= 1.1 {
			c := part * float64(s.H)
			p, m, et := fibres(s, c, beta)
			phi := 0.65 + 0.25*math.Max(0, math.Min(1, (et-y)/0.003))
			got := s.FlexureWithAxial(units.ForcePerLength(phi*p), nil)
			if phi*p > limit {
				if got.Design > 0 {
					t.Errorf("%+v carries %v beside an axial force above its limit", s, got)
				}
				continue
			}
			if phi*p < -0.9*float64(s.As*units.AreaPerLength(s.Fy)) {
				continue
			}
			// 20,000 strips place the edge of the block to h/40,000.
			tol := 2e-4*math.Abs(m) + 1e-3*float64(s.H)
			if math.Abs(float64(got.Nominal)-math.Max(0, m)) > tol || math.Abs(got.Phi-phi) > 2e-3 {
				t.Errorf("%+v at c = %.3f, Pu = %.2f: Mn %v, φ %v, want %v, %v", s, c, phi*p, got.Nominal, got.Phi, m, phi)
			}
		}
	}
}

// As the axial force goes to zero the strength goes to that of pure bending,
// also where the bars do not yield.
func TestAxialGoesToFlexure(t *testing.T) {
	sections(func(s Section) {
		f := s.Flexure(nil)
		for _, pu := range []units.ForcePerLength{0, 1e-7, -1e-7} {
			got := s.FlexureWithAxial(pu, nil)
			if math.Abs(float64(got.Design-f.Design)) > 1e-6*float64(f.Design) || got.TensionControlled != f.TensionControlled && math.Abs(got.Strain-s.yieldStrain()-0.003) > 1e-9 {
				t.Errorf("%+v: %v beside %v, without %v", s, got, pu, f)
			}
		}
	})
}

// Up to balance a wall's strength grows with its axial load, steadily; a pull
// takes from it until the bars are used up at φ As fy.
func TestAxialHelpsAWall(t *testing.T) {
	s := Section{Fc: 3000, Fy: 60000, H: 8, D: 7, As: 0.2 / 18}
	pull := 0.9 * float64(s.As) * 60000
	last := -1.0
	for pu := -pull + 1e-6; pu < 3000; pu += 25 {
		got := s.FlexureWithAxial(units.ForcePerLength(pu), nil)
		if float64(got.Design) < last {
			t.Errorf("Pu = %v lb/in: φMn falls from %v to %v", pu, last, got.Design)
		}
		last = float64(got.Design)
	}
	for _, pu := range []float64{-pull - 1e-6, 1e5, math.NaN(), math.Inf(1)} {
		if got := s.FlexureWithAxial(units.ForcePerLength(pu), nil); got.Design > 0 {
			t.Errorf("Pu = %v lb/in: %v", pu, got)
		}
	}
}

// Slenderness by hand for an 8 in wall of 3,000 psi, 8 ft high, Pu 2,000
// lb/ft, all sustained: Ec 3,122,019 psi, Ig 512 in⁴/ft, EI = 0.4 Ec Ig/2 =
// 319,694,702, Pc = π² EI/96² = 342,367.65 lb/ft, δ = 1/(1 − 2,000/256,775.74)
// = 1.0078500; M2,min = 2,000 (0.6 + 0.24)/12 = 140 lb-ft/ft.
func TestMagnifiedMoment(t *testing.T) {
	pu := 2000 * units.PLF
	for mu, want := range map[units.MomentPerLength]float64{1500: 1511.7751, -1500: 1511.7751, 50: 141.0990} {
		got, ok := MagnifiedMoment(mu, pu, 3000, 8, 96, 1, nil)
		if !ok || math.Abs(float64(got)-want) > 5e-5 {
			t.Errorf("Mu %v becomes %v, %v, want %v", mu, got, ok, want)
		}
	}
	if got, ok := MagnifiedMoment(1500, 0, 3000, 8, 96, 1, nil); !ok || math.Abs(float64(got)-1500) > 1e-9 {
		t.Errorf("without axial load 1500 becomes %v, %v", got, ok)
	}
	// δ = 1.4 at Pu = 0.75 Pc·(0.4/1.4) = 73,364.5 lb/ft (6.2.5.3).
	for load, want := range map[float64]bool{73364: true, 73365: false, 256775: false, 300000: false} {
		if got, ok := MagnifiedMoment(1500, units.ForcePerLength(load)*units.PLF, 3000, 8, 96, 1, nil); ok != want || !(got > 0) {
			t.Errorf("Pu %v lb/ft: %v, %v, want %v", load, got, ok, want)
		}
	}
}
