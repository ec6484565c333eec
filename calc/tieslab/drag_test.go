package tieslab

import (
	"fmt"
	"math"
	"testing"

	"standingbeam/calc/soil"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// A slab of 4 in (50 psf) on ground of 8 ft, friction 0.35.
func garage() Slab {
	return Slab{Height: 8 * units.Foot, Length: 24 * units.Foot, Weight: 50 * units.PSF, Friction: 0.35, Ground: soil.AtRest}
}

// By hand. At rest the wedge reaches 8 ft; active, at 30 degrees, 8 tan 30° =
// 4.6188 ft. Drag 0.35 × 50 psf × what lies beyond; needed for a tie of 480
// lb/ft at 1.5: wedge + 720/17.5 = wedge + 41.143 ft.
func TestDrag(t *testing.T) {
	for _, test := range []struct {
		name                string
		change              func(*Slab)
		wedge, drag, needed float64
	}{
		{"at rest", func(*Slab) {}, 8, 280, 49.142857},
		{"active", func(s *Slab) { s.Ground, s.Phi = soil.Active, 30*units.Degree }, 4.618802, 339.170960, 45.761659},
		{"active without friction", func(s *Slab) { s.Ground = soil.Active }, 8, 280, 49.142857},
		{"ends within the wedge", func(s *Slab) { s.Length = 7 * units.Foot }, 8, 0, 49.142857},
	} {
		s := garage()
		test.change(&s)
		w := new(working.Chain)
		near := func(what string, got, want float64) {
			if math.Abs(got-want) > 5e-6 {
				t.Errorf("%s: %s %v, want %v", test.name, what, got, want)
			}
		}
		near("wedge", s.Wedge().Feet(), test.wedge)
		near("drag", s.Drag(w).PLF(), test.drag)
		if err := w.Verify(); err != nil {
			t.Errorf("%s: %v", test.name, err)
		}
		w = new(working.Chain)
		l, ok := s.Needed(480*units.PLF, 1.5, w)
		if !ok {
			t.Errorf("%s: no length is enough", test.name)
		}
		near("needed", l.Feet(), test.needed)
		if err := w.Verify(); err != nil {
			t.Errorf("%s: %v", test.name, err)
		}
		// A slab of the needed length holds just that.
		s.Length = l
		near("drag of the needed", s.Drag(nil).PLF(), 720)
	}
}

func TestNeededNothing(t *testing.T) {
	s := garage()
	if l, ok := s.Needed(0, 1.5, nil); !ok || math.Abs(l.Feet()-8) > 1e-9 {
		t.Errorf("no tie force needs %v, %v", l, ok)
	}
	s.Friction = 0
	if l, ok := s.Needed(480*units.PLF, 1.5, nil); ok {
		t.Errorf("a slab without friction holds at %v", l)
	}
}

func FuzzNeeded(f *testing.F) {
	f.Add(96.0, 288.0, 0.35, 0.35, 0.5, 40.0)
	f.Fuzz(func(t *testing.T, height, length, weight, friction, phi, tie float64) {
		for _, v := range []float64{height, length, weight, friction, tie} {
			if !(v >= 0 && v <= 1e9) {
				return
			}
		}
		s := Slab{units.Length(height), units.Length(length), units.Stress(weight), friction, soil.Active, units.Angle(phi)}
		l, ok := s.Needed(units.ForcePerLength(tie), 1.5, nil)
		d := s.Drag(nil)
		if math.IsNaN(float64(d)) || d < 0 || math.IsNaN(float64(l)) || ok && math.IsInf(float64(l), 0) || s.Wedge() > s.Height {
			t.Errorf("%+v: drag %v, needed %v %v", s, d, l, ok)
		}
	})
}

func BenchmarkNeeded(b *testing.B) {
	s := garage()
	b.ReportAllocs()
	for b.Loop() {
		s.Needed(40, 1.5, nil)
		s.Drag(nil)
	}
}

func ExampleSlab_Needed() {
	s := Slab{Height: 8 * units.Foot, Weight: 50 * units.PSF, Friction: 0.35, Ground: soil.AtRest}
	l, _ := s.Needed(480*units.PLF, 1.5, nil)
	fmt.Printf("%.1f ft of slab\n", l.Feet())
	// Output: 49.1 ft of slab
}
