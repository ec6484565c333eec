package calc

import (
	"math"
	"testing"

	"standingbeam/calc/units"
)

// Whatever runs along the wall is lapped: 1.3 ld of ACI 318-19 25.5.2.1 and
// 25.4.2.3, by hand for f'c 3,000 and fy 60,000 psi:
// No. 4 high, ψt 1.3: ld = 60000 × 1.3 / (25 × 54.77) × 0.5 = 28.48 in, lap 37.0 → 38 in;
// No. 5 in the footing: ld = 60000 / (25 × 54.77) × 0.625 = 27.39 in, lap 35.6 → 36 in.
func TestLapsAlong(t *testing.T) {
	r, err := Design(sample(BracedTop))
	if err != nil {
		t.Fatal(err)
	}
	want := map[BarRole]units.Length{HorizontalBar: 38 * units.Inch, TopBar: 38 * units.Inch, FootingBar: 36 * units.Inch}
	for _, b := range r.Bars {
		if lap, ok := want[b.Role]; ok && math.Abs((b.Lap-lap).Inches()) > 0.01 {
			t.Errorf("%v No. %d: lap %v, want %v", b.Role, b.Size, b.Lap, lap)
		}
		delete(want, b.Role)
	}
	if len(want) > 0 {
		t.Errorf("not listed: %v", want)
	}
}
