package concrete

import "testing"

func BenchmarkFlexure(b *testing.B) {
	s := Section{Fc: 3000, Fy: 60000, H: 8, D: 7, As: 0.2 / 18}
	for b.Loop() {
		s.Flexure(nil)
	}
}

func BenchmarkFlexureWithAxial(b *testing.B) {
	s := Section{Fc: 3000, Fy: 60000, H: 8, D: 7, As: 0.2 / 18}
	for b.Loop() {
		s.FlexureWithAxial(90, nil)
	}
}

func BenchmarkShear(b *testing.B) {
	s := Section{Fc: 3000, Fy: 60000, H: 8, D: 7, As: 0.2 / 18}
	for b.Loop() {
		s.Shear(0, true, nil)
	}
}
