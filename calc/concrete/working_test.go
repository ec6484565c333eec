package concrete

import (
	"math"
	"testing"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// recorded is a function with its working and the number it ends with.
type recorded struct {
	name string
	f    func(Section, units.ForcePerLength, *working.Chain) float64
}

var workings = []recorded{
	{"Flexure", func(s Section, _ units.ForcePerLength, w *working.Chain) float64 { return float64(s.Flexure(w).Design) }},
	{"FlexureWithAxial", func(s Section, pu units.ForcePerLength, w *working.Chain) float64 {
		return float64(s.FlexureWithAxial(pu, w).Design)
	}},
	{"Shear", func(s Section, pu units.ForcePerLength, w *working.Chain) float64 {
		return float64(s.Shear(pu, true, w))
	}},
	{"Shear of a footing", func(s Section, pu units.ForcePerLength, w *working.Chain) float64 {
		return float64(s.Shear(pu, false, w))
	}},
	{"ShearFriction", func(s Section, _ units.ForcePerLength, w *working.Chain) float64 {
		return float64(ShearFriction(s.As, s.Fy, 0.6, s.H, s.Fc, false, w))
	}},
	{"ShearFriction roughened", func(s Section, _ units.ForcePerLength, w *working.Chain) float64 {
		return float64(ShearFriction(s.As, s.Fy, 1, s.H, s.Fc, true, w))
	}},
	{"MagnifiedMoment", func(s Section, pu units.ForcePerLength, w *working.Chain) float64 {
		m, ok := MagnifiedMoment(1800, pu, s.Fc, s.H, 96, 0.6, w)
		if !ok || pu <= 0 {
			return math.NaN() // there is no last step to compare
		}
		return float64(m)
	}},
	{"EffectiveInertia", func(s Section, pu units.ForcePerLength, w *working.Chain) float64 {
		m := units.MomentPerLength(20 * pu)
		s.RecordInertia(m, w)
		return s.EffectiveInertia(m)
	}},
}

// The steps of every working give its result, and recording changes nothing.
func TestWorkings(t *testing.T) {
	sections(func(s Section) {
		for _, pu := range []units.ForcePerLength{0, 90, 3000, -20} {
			for _, r := range workings {
				w := &working.Chain{}
				got := r.f(s, pu, w)
				if err := w.Verify(); err != nil {
					t.Errorf("%s of %+v, %v: %v", r.name, s, pu, err)
				}
				if without := r.f(s, pu, nil); math.Abs(got-without) > 1e-12*math.Abs(got) {
					t.Errorf("%s of %+v is %v with its working and %v without", r.name, s, got, without)
				}
				if got > 0 && (len(w.Steps) == 0 || math.Abs(w.Steps[len(w.Steps)-1].Value.Base-got) > 1e-9*got) {
					t.Errorf("%s of %+v, %v: the working does not end with %v", r.name, s, pu, got)
				}
			}
		}
	})
}

// The steps that a person reads under an 8 in wall with No. 4 at 18 in.
func TestFlexureSteps(t *testing.T) {
	var w working.Chain
	Section{Fc: 3000, Fy: 60000, H: 8, D: 7, As: 0.2 / 18}.Flexure(&w)
	want := []string{"a = As fy/(0.85 f'c b)", "c = a/β1", "εt = 0.003 (d − c)/c",
		"φ = max(0.65; min(0.90; 0.65 + 0.25 (εt − εty)/0.003))", "Mn = As fy (d − a/2)", "φMn = φ Mn"}
	if len(w.Steps) != len(want) {
		t.Fatalf("%d steps, want %d", len(w.Steps), len(want))
	}
	for i, s := range w.Steps {
		if got := s.Symbol + " = " + s.Formula; got != want[i] {
			t.Errorf("step %d is %s, want %s", i, got, want[i])
		}
	}
}

// A search for bars asks this thousands of times.
func TestNoAllocation(t *testing.T) {
	s := Section{Fc: 3000, Fy: 60000, H: 8, D: 7, As: 0.2 / 18}
	sum := 0.0
	if n := testing.AllocsPerRun(100, func() {
		steel, _ := s.SteelFor(1800)
		m, _ := MagnifiedMoment(1800, 90, s.Fc, s.H, 96, 1, nil)
		sum += float64(s.Flexure(nil).Design+s.FlexureWithAxial(90, nil).Design+m) + float64(steel)
		sum += float64(s.Shear(90, true, nil)) + s.EffectiveInertia(1800)
		sum += float64(ShearFriction(s.As, s.Fy, 0.6, s.H, s.Fc, false, nil))
	}); n > 0 {
		t.Errorf("%v allocations a call", n)
	}
}

func FuzzSection(f *testing.F) {
	f.Add(3000.0, 60000.0, 8.0, 7.0, 0.0111, 1.0, 93.0)
	f.Add(8000.0, 80000.0, 5.5, 5.4, 0.6, 0.75, -2000.0)
	f.Add(-1.0, math.Inf(1), math.NaN(), 0.0, 0.0, 0.0, math.NaN())
	f.Fuzz(func(t *testing.T, fc, fy, h, d, as, lambda, pu float64) {
		s := Section{units.Stress(fc), units.Stress(fy), units.Length(h), units.Length(d), units.AreaPerLength(as), lambda}
		w := &working.Chain{}
		steel, _ := s.SteelFor(units.MomentPerLength(pu))
		m, _ := MagnifiedMoment(units.MomentPerLength(pu), units.ForcePerLength(as), s.Fc, s.H, s.D, lambda, w)
		all := []float64{float64(steel), float64(m), s.CrackedInertia(), float64(s.CrackingMoment()),
			float64(CrackSpacing(s.Fc, s.D)), float64(s.FlexureWithAxial(units.ForcePerLength(pu), nil).Strain), s.Flexure(nil).Strain}
		for _, r := range workings {
			if v := r.f(s, units.ForcePerLength(pu), w); r.name != "MagnifiedMoment" {
				all = append(all, v)
			}
		}
		for _, step := range w.Steps {
			all = append(all, step.Value.Base)
			for _, term := range step.With {
				all = append(all, term.Value.Base)
			}
		}
		for i, v := range all {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				t.Errorf("answer %d of %+v is %v", i, s, v)
			}
		}
	})
}
