package calc_test

import (
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// TestFloorEdgePulls holds that a floor which must pull the wall back from the
// ground is asked for that pull: (12,000 + 6,000) lb/ft 3 in toward the ground
// on a span of 8 ft is 4,500/8 = 562.5 lb/ft, and 3 ft of a fluid of 30 pcf push
// with 30·3³/(6·8) = 16.875 lb/ft against it.
func TestFloorEdgePulls(t *testing.T) {
	w := held()
	w.Height, w.GradeA, w.Thickness = 8*ft, 3*ft, 8*in
	w.Soil = fluid(30 * pcf)
	w.Axial = calc.Axial{Dead: 12000 * plf, Live: 6000 * plf, Eccentricity: -3 * in}
	w.FloorEdge = 300 * plf
	r := design(t, w)
	c := check(t, r, "floor-edge")
	if got := float64(c.Demand.Base) * 12; got < 545.62 || got > 545.63 || c.State != calc.Fails || !has(r.Warnings, "floor-pulls") {
		t.Errorf("%.3f lb/ft, %v, %v", got, c.State, r.Warnings)
	}
	w.Axial.Eccentricity = 0
	if r := design(t, w); check(t, r, "floor-edge").State != calc.Holds || has(r.Warnings, "floor-pulls") {
		t.Errorf("without eccentricity: %v, %v", check(t, r, "floor-edge").State, r.Warnings)
	}
}

// TestHeelCover holds the heel's bars to the cover that ACI 318-19 Table
// 20.5.1.3.1 asks of a formed face in contact with ground: 1.5 in for No. 5 and
// smaller, else 2 in; d = 12 − 2 − 0.875/2 in for No. 7.
func TestHeelCover(t *testing.T) {
	for size, want := range map[int][2]units.Length{5: {1.5 * in, 10.1875 * in}, 7: {2 * in, 9.5625 * in}} {
		w := stem(8*ft, fluid(30*pcf))
		w.Thickness, w.Material.Fc, w.Sizes = 16*in, 4000*units.PSI, []int{size}
		w.Footing = calc.Footing{Given: true, Width: 112 * in, Thickness: 12 * in, Toe: 3 * ft, Bearing: 6000 * psf, Friction: 0.6}
		found := false
		for _, b := range design(t, w).Bars {
			if b.Role == calc.HeelBar {
				found = true
				if !close9(float64(b.Cover), float64(want[0])) || !close9(float64(b.Depth), float64(want[1])) {
					t.Errorf("No. %d: cover %v, d %v, want %v", b.Size, b.Cover, b.Depth, want)
				}
			}
		}
		if !found {
			t.Errorf("No. %d: no bars in the heel", size)
		}
	}
}

// TestToeUnderDeadLoadAlone holds the toe to 1.4 D (ACI 318-19 5.3.1a), which
// governs where little pushes. By hand, 6 ft × 8 in on 3 ft × 12 in, toe and
// heel 14 in, 6 in of fill at 120 pcf: N = 1.4 (600 + 450 + 70) = 1568 lb/ft,
// ΣM = 1.4 (900 + 675 + 169.2) = 2441.8, e = −0.0573 ft; q = 462.8 psf at the
// edge, 509.4 at the stem; M = (2·462.8 + 509.4)·1.1667²/6 − 1.4·150·1.1667²/2 =
// 325.5 − 142.9 = 182.6 lb-ft/ft.
func TestToeUnderDeadLoadAlone(t *testing.T) {
	w := stem(6*ft, fluid(30*pcf))
	w.GradeA, w.Soil.Weight = 6*in, 120*pcf
	w.Footing = calc.Footing{Given: true, Width: 3 * ft, Thickness: 12 * in, Toe: 14 * in, Bearing: 2000 * psf, Friction: 0.5}
	if m := check(t, design(t, w), "toe-flexure").Demand.US(); m < 182.55 || m > 182.65 {
		t.Errorf("toe %.2f lb-ft/ft, by hand 182.6", m)
	}
}

// TestLapOfTheSecondLayer holds each layer of verticals to the lap of its own
// bars: No. 8 at 1.5 in of cover, f'c 3000, class B: ψ factors 1, ld = 60000/(20
// √3000)·1 = 54.77 in, 1.3 ld = 71.2, listed as 72 (25.4.2.3, 25.5.2.1).
func TestLapOfTheSecondLayer(t *testing.T) {
	w := stem(12*ft, calc.Soil{Basis: calc.SoilFriction, Friction: 20 * units.Degree, Weight: 110 * pcf})
	w.Condition, w.Thickness, w.Rulebook = calc.TiedToSlab, 10*in, calc.Engineered
	w.Material.CoverA, w.Material.CoverB = 2*in, 1.5*in
	w.Footing = calc.Footing{Given: true, Width: 48 * in, Thickness: 18 * in, Friction: 0.4}
	w.Tie, w.Sizes = calc.Tie{SlabThickness: 3.5 * in, Anchor: calc.OppositeWall}, []int{7, 8}
	found := false
	for _, b := range design(t, w).Bars {
		if b.Role == calc.VerticalBar && b.Face == calc.FaceB && b.Size == 8 {
			found = true
			if b.Lap < 72*in || b.Lap > 72*in {
				t.Errorf("lap %v in", b.Lap)
			}
		}
	}
	if !found {
		t.Error("no second layer of No. 8")
	}
}

// TestFrictionOfUnknownGround holds that friction which nobody gave is the lesser
// of 0.25 N and 130 psf of contact (IBC 2021 Table 1806.2, classes 4 and 5).
// By hand, 6 ft × 8 in on 4 ft × 12 in, toe 1 ft, 30 pcf: N = 600 + 600 + 1680 =
// 2880 lb/ft, 0.25 N = 720; e = 0.25 ft, pressed over 4 ft: 520; P = 735: 0.7075.
// Given as 0.25 it is 720/735 = 0.9796. Today's answer knows it too.
func TestFrictionOfUnknownGround(t *testing.T) {
	w := stem(6*ft, fluid(30*pcf))
	w.Soil.Weight = 120 * pcf
	w.Footing = calc.Footing{Given: true, Width: 4 * ft, Thickness: 12 * in, Toe: 1 * ft, Bearing: 2000 * psf}
	for _, c := range []struct{ given, want float64 }{{0, 520.0 / 735}, {0.25, 720.0 / 735}} {
		w.Footing.Friction = c.given
		if got := check(t, design(t, w), "sliding").Capacity.Base; !close9(got, c.want) {
			t.Errorf("friction %v: factor %.4f, by hand %.4f", c.given, got, c.want)
		}
	}
	w.Footing.Friction = 0
	w.Today = calc.Today{Given: true, Concrete: 2500 * units.PSI}
	low := design(t, w).Today
	w.Footing.Friction = 0.25
	if high := design(t, w).Today; low.Level > high.Level || low.Permission > high.Permission {
		t.Errorf("today %v to %v, with friction %v to %v", low.Permission, low.Level, high.Permission, high.Level)
	}
}

// TestTableAndEccentricLoad holds that a wall whose load stands outside its
// middle third is designed and not read from the table: 8/6 in.
func TestTableAndEccentricLoad(t *testing.T) {
	w := held()
	w.Rulebook, w.Thickness = calc.RulebookUnset, 8*in
	for e, inside := range map[units.Length]bool{0: true, 1.25 * in: true, -1.5 * in: false, 3 * in: false} {
		w.Axial = calc.Axial{Dead: 1800 * plf, Eccentricity: e}
		if r := design(t, w); has(r.Table.Reasons, "table-eccentric") == inside || (r.Governs == calc.Residential) != inside {
			t.Errorf("%v: %v governs, %v", e, r.Governs, r.Table.Reasons)
		}
	}
}

// TestLapOfTwoSizes holds the lap of bars of two sizes to ACI 318-19 25.5.2.2,
// the greater of ld of the larger and the class B lap of the smaller: No. 6 on
// No. 4 in 3,000 psi, ld = 60000/(25 √3000)·0.75 = 32.86 in, 1.3·21.91 = 28.48 in.
func TestLapOfTwoSizes(t *testing.T) {
	w := stem(6*ft, fluid(30*pcf))
	w.Thickness = 10 * in
	w.Vertical = calc.Bars{Fixed: true, Size: 4, Spacing: 8 * in, Face: calc.FaceA}
	w.Dowels = calc.Dowels{Fixed: true, Size: 6, Spacing: 8 * in, Position: calc.FaceA, Up: 33 * in}
	w.Footing = calc.Footing{Given: true, Width: 5 * ft, Thickness: 18 * in, Toe: 1 * ft, Bearing: 3000 * psf, Friction: 0.5}
	if c := check(t, design(t, w), "dowel-lap"); c.State != calc.Holds || c.Demand.Base < 32.855 || c.Demand.Base > 32.865 {
		t.Errorf("lap %.3f in, %v", c.Demand.Base, c.State)
	}
}

// TestLowSideFirstSlides holds that a slab on the open side holds nothing while
// the low side alone is filled: the wall leans away from it. By hand, 5 ft × 10 in
// on 5 ft × 12 in, toe and heel 25 in, 4 ft of 45 pcf on the low side: N = 625 +
// 750 + 1000 = 2375 lb/ft, 0.20 N = 475; P = 45·5²/2 = 562.5: 0.84 < 1.5. At 2 ft
// 3 in N = 1937.5, 0.20 N = 387.5, P = 237.7: 1.63; at 2 ft 7 in 404.2 and 288.9:
// 1.40.
func TestLowSideFirstSlides(t *testing.T) {
	w := stem(5*ft, fluid(45*pcf))
	w.Condition, w.Thickness, w.Soil.Weight = calc.SoilBothSides, 10*in, 120*pcf
	w.GradeA, w.GradeB = 5*ft, 4*ft
	w.Foot, w.Today = calc.Foot{Held: calc.SlabTight}, calc.Today{Given: true, Concrete: 3000 * units.PSI, Slab: true}
	w.Footing = calc.Footing{Given: true, Width: 5 * ft, Thickness: 12 * in, NoToe: true, Bearing: 3000 * psf, Friction: 0.2}
	r := design(t, w)
	if low := r.LowFirst.Low; low < 27*in || low >= 31*in || r.Today.Permission == calc.MayFill {
		t.Errorf("low side first to %v by %s, today %v", low, r.LowFirst.Governs, r.Today.Permission)
	}
}

// TestBracketUnderDeadLoadAlone holds the moment at the brace of a load off the
// middle to 1.4 D where that is more: 1.4·6000·3/12 = 2100 lb-ft/ft, on the face
// that it pulls.
func TestBracketUnderDeadLoadAlone(t *testing.T) {
	for _, e := range []units.Length{3 * in, -3 * in} {
		w := held()
		w.GradeA, w.Axial = 6*in, calc.Axial{Dead: 6000 * plf, Eccentricity: e}
		most := 0.0
		for _, c := range design(t, w).Checks {
			if c.ID == "flexure" || c.ID == "plain-flexure" {
				most = max(most, c.Demand.US())
			}
		}
		if most < 2100-1e-6 {
			t.Errorf("e %v: greatest moment %.1f lb-ft/ft, by hand 2100", e, most)
		}
	}
}

// TestGivenCoverChoosesTheBar holds that a cover which No. 6 may not have leads to
// No. 5 where that carries the wall.
func TestGivenCoverChoosesTheBar(t *testing.T) {
	w := stem(9*ft, fluid(45*pcf))
	w.Material.CoverA = 1.5 * in
	for h := 5 * ft; h <= 10*ft; h += 3 * in {
		for thick := 8 * in; thick <= 16*in; thick += 1 * in {
			w.Height, w.GradeA, w.Thickness = h, h, thick
			w.Sizes = []int{5, 6}
			r := design(t, w)
			small := w
			small.Sizes = []int{5}
			for _, c := range r.Checks {
				if c.ID == "cover" && c.State != calc.Holds && design(t, small).Verdict != calc.Fails {
					t.Errorf("%v ft × %v in: cover %v of %v", h.Feet(), thick, c.Demand.Base, c.Capacity.Base)
				}
			}
		}
	}
}
