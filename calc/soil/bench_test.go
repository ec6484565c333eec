package soil

import (
	"testing"

	"standingbeam/calc/units"
)

func BenchmarkPressure(b *testing.B) {
	g := Ground{Grade: 84, K: 0.5, Moist: 120 * units.PCF, Saturated: 130 * units.PCF,
		Live: 40 * units.PSF, Wet: true, Water: 36, Side: 'a'}
	b.ReportAllocs()
	for b.Loop() {
		Pressure(g)
	}
}
