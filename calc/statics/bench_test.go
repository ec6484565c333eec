package statics

import "testing"

// wall is a strip of 8 ft with soil, a second layer and a surcharge.
func wall(supports ...Support) Strip {
	return Strip{Top: 96, EI: 1.5e8, Supports: supports,
		Loads: []Load{{0, 84, 315.0 / 144, 0}, {0, 36, 1.3, 0}, {0, 84, 0.1, 0.1}}}
}

func BenchmarkSolve(b *testing.B) {
	for _, c := range []struct {
		name string
		s    Strip
	}{
		{"simple", wall(Support{At: 0}, Support{At: 96})},
		{"cantilever", wall(Support{At: 0, Kind: Fixed})},
		{"propped", wall(Support{At: 0, Kind: Fixed}, Support{At: 96})},
		{"continuous", wall(Support{At: 0, Kind: Fixed}, Support{At: 40, Kind: Spring, Stiffness: 100}, Support{At: 70}, Support{At: 96})},
	} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Solve(c.s); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkExtremes(b *testing.B) {
	d, err := Solve(wall(Support{At: 0, Kind: Fixed}, Support{At: 96}))
	if err != nil {
		b.Fatal(err)
	}
	b.Run("moment", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			d.MaxMoment()
			d.MinMoment()
		}
	})
	b.Run("shear", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			d.MaxShear()
		}
	})
	b.Run("deflection", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			d.MaxDeflection()
		}
	})
}

func BenchmarkMoment(b *testing.B) {
	d, err := Solve(wall(Support{At: 0}, Support{At: 96}))
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		d.Moment(50)
	}
}
