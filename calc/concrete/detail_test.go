package concrete

import (
	"math"
	"testing"

	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// Table 11.6.1, 7.6.1.1, 24.4.3.2: ratios and spacings of an 8 in wall and of a
// thin one.
func TestMinimum(t *testing.T) {
	for _, c := range []struct {
		number  int
		fy      units.Stress
		v, h    float64
		spacing float64
		wall    units.Length
	}{
		{4, 60000, 0.0012, 0.0020, 18, 8},
		{5, 60000, 0.0012, 0.0020, 16.5, 5.5},
		{5, 80000, 0.0012, 0.0020, 18, 6},
		{6, 60000, 0.0015, 0.0025, 18, 12},
		{4, 40000, 0.0015, 0.0025, 18, 8},
	} {
		b, _ := rebar.ByNumber(c.number)
		v, h, s := WallVerticalMinimum(b, c.fy, c.wall), WallHorizontalMinimum(b, c.fy, c.wall), SlabMinimum(c.wall)
		if math.Abs(v.Ratio-c.v) > 1e-9 || math.Abs(h.Ratio-c.h) > 1e-9 || math.Abs(s.Ratio-0.0018) > 1e-9 {
			t.Errorf("No. %d, fy %v: %v, %v, %v", c.number, c.fy, v, h, s)
		}
		for _, m := range []Minimum{v, h, s} {
			if math.Abs(m.MaxSpacing.Inches()-c.spacing) > 1e-9 || m.Clause == "" {
				t.Errorf("%v in wall: spacing %v (%s), want %v", c.wall, m.MaxSpacing, m.Clause, c.spacing)
			}
		}
	}
	b, _ := rebar.ByNumber(4)
	// 0.0012·12·8 = 0.1152 in²/ft.
	if got := WallVerticalMinimum(b, 60000, 8).Area(8).In2PerFt(); math.Abs(got-0.1152) > 1e-9 {
		t.Errorf("least steel %v in²/ft, want 0.1152", got)
	}
	if got := ShrinkageMinimum(3); math.Abs(got.MaxSpacing.Inches()-15) > 1e-9 || math.Abs(got.Ratio-0.0018) > 1e-9 {
		t.Errorf("against shrinkage %v, want 0.0018 at 15 in", got)
	}
}

// 24.3.2: the commentary has 10 in for fs = 40,000 psi under 2 in of cover;
// with thin cover the second limit rules, 12 in.
func TestCrackSpacing(t *testing.T) {
	for _, c := range []struct{ fs, cc, want float64 }{{40000, 2, 10}, {40000, 0.75, 12}, {20000, 2, 24}, {40000, 10, 0}} {
		if got := CrackSpacing(units.Stress(c.fs), units.Length(c.cc)); math.Abs(got.Inches()-c.want) > 1e-9 {
			t.Errorf("fs %v, cover %v: %v, want %v", c.fs, c.cc, got, c.want)
		}
	}
	if got := CrackSpacing(0, 2); !(got > 1000 && got < 1e6) {
		t.Errorf("without stress the spacing is %v", got)
	}
}

// 11.3.1.1, 11.7.2.3.
func TestWallThickness(t *testing.T) {
	for _, c := range []struct {
		side       units.Length
		foundation bool
		want       float64
	}{{96, false, 4}, {150, false, 6}, {96, true, 7.5}, {240, true, 9.6}} {
		if got := WallThickness(c.side, c.foundation); math.Abs(got.Inches()-c.want) > 1e-9 {
			t.Errorf("side %v, foundation %v: %v, want %v", c.side, c.foundation, got, c.want)
		}
	}
	if TwoLayers(10, false) || !TwoLayers(10.5, false) || TwoLayers(12, true) {
		t.Error("two layers above 10 in, but for basement and retaining walls")
	}
}
