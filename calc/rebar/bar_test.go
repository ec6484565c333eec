package rebar

import (
	"math"
	"testing"

	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

func TestSizes(t *testing.T) {
	rows := reference.Rows(t, "aci/bars.csv")
	if len(rows) != len(Sizes()) {
		t.Fatalf("%d sizes, want %d", len(Sizes()), len(rows))
	}
	for i, r := range rows {
		b, ok := ByNumber(r.Int("bar"))
		if !ok || b != Sizes()[i] || b.Name() != "No. "+r.Text("bar") {
			t.Errorf("No. %d is %v, %q", r.Int("bar"), b, b.Name())
		}
		r.Near("diameter", b.Diameter.Inches())
		r.Near("area", float64(b.Area))
		r.Near("weight", b.Weight)
	}
	for _, n := range []int{-1, 0, 2, 12, 14} {
		if b, ok := ByNumber(n); ok || b.Name() != "" {
			t.Errorf("there is a No. %d: %v", n, b)
		}
	}
}

// A listing that the caller changes does not change the bars.
func TestSizesIsACopy(t *testing.T) {
	Sizes()[1].Area = 99
	if b, _ := ByNumber(4); b.Area > 1 {
		t.Error("the sizes can be changed from outside")
	}
}

// Steel weighs 490 lb/ft³: the listed weight is that of the listed area to
// within the rounding of the areas to 0.01 in², up to 2 % of the smaller bars.
func TestWeightFollowsArea(t *testing.T) {
	for _, b := range Sizes() {
		if w := float64(b.Area) / 144 * 490; math.Abs(w-b.Weight) > 0.02*b.Weight {
			t.Errorf("%s: %v lb/ft by its area, listed %v", b.Name(), w, b.Weight)
		}
	}
}

func TestPerLength(t *testing.T) {
	b, _ := ByNumber(4)
	// No. 4 at 18 in: 0.20·12/18 = 0.1333 in²/ft.
	if got := b.PerLength(18 * units.Inch).In2PerFt(); math.Abs(got-0.4/3) > 1e-12 {
		t.Errorf("No. 4 at 18 in is %v in²/ft, want 0.1333", got)
	}
	if got := b.SpacingFor(b.PerLength(18 * units.Inch)); math.Abs(float64(got-18)) > 1e-12 {
		t.Errorf("spacing goes to %v and back, want 18", got)
	}
	nan := units.Length(math.NaN())
	if b.PerLength(0) != 0 || b.PerLength(-3) != 0 || b.PerLength(nan) != 0 || b.SpacingFor(0) != 0 || b.SpacingFor(-1) != 0 {
		t.Error("bars at no spacing give steel")
	}
}
