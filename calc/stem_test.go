package calc_test

import (
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// TestStemBarsInTheMiddle holds verticals in the middle of an unbraced stem to
// the spacing of ACI 318-19 24.3.2 at their own cover: No. 5 in 10 in have
// (10 − 0.625)/2 = 4.6875 in, and 15·40000/40000 − 2.5·4.6875 = 3.28 in; and,
// where a slab ties the finished wall, to 0.0018 as well (7.6.1.1), 0.216 in²/ft.
func TestStemBarsInTheMiddle(t *testing.T) {
	free := stem(6*ft, fluid(30*pcf))
	tied := free
	tied.Condition, tied.Tie = calc.TiedToSlab, calc.Tie{SlabThickness: 4 * in, SlabLength: 30 * ft}
	for name, w := range map[string]calc.Input{"free": free, "tied": tied} {
		w.Thickness, w.Rulebook = 10*in, calc.Engineered
		w.Vertical = calc.Bars{Fixed: true, Size: 5, Spacing: 8 * in, Face: calc.Centre}
		r := design(t, w)
		if c := check(t, r, "bar-spacing"); c.State != calc.Fails || c.Capacity.Base < 3.275 || c.Capacity.Base > 3.285 {
			t.Errorf("%s: spacing %v of %v", name, c.Demand.Base, c.Capacity.Base)
		}
		if c := check(t, r, "minimum-vertical"); !close9(c.Demand.Base*12, 0.216) {
			t.Errorf("%s: least steel %v", name, c.Demand.Base*12)
		}
	}
}

// TestLittleMomentOnTheOtherFace holds that bars which serve one face do not
// fail the other by a moment that a part of them carries: 14 in of 5,000 psi
// tied to a slab with 1 ft of fill, and more fill never makes the verdict
// better. Nor does a push of nothing ask for more steel than one of 3 ft.
func TestLittleMomentOnTheOtherFace(t *testing.T) {
	w := stem(6*ft, fluid(45*pcf))
	w.Condition, w.Rulebook = calc.TiedToSlab, calc.Engineered
	w.Thickness, w.GradeA, w.Material = 14*in, 1*ft, calc.Material{Fc: 5000 * units.PSI, Fy: 80000 * units.PSI}
	w.Foot = calc.Foot{Held: calc.SlabTight}
	w.Tie = calc.Tie{SlabThickness: 4 * in, SlabLength: 40 * ft}
	w.Footing = calc.Footing{Given: true, Width: 4 * ft, Thickness: 12 * in, NoToe: true, Bearing: 3000 * psf, Friction: 0.5}
	for _, c := range design(t, w).Checks {
		if c.ID == "flexure" && c.State != calc.Holds {
			t.Errorf("flexure %v: %v of %v, %v", c.Stage, c.Demand.US(), c.Capacity.US(), c.Because)
		}
	}
	free := stem(10*ft, fluid(30*pcf))
	free.Thickness, free.Material.Fc = 12*in, 2500*units.PSI
	free.Footing = calc.Footing{Given: true, Width: 5 * ft, Thickness: 8 * in, Toe: 3 * ft, Bearing: 4000 * psf, Friction: 0.5}
	steel := func(fill units.Length) float64 {
		free.GradeA = fill
		for _, b := range design(t, free).Bars {
			if b.Role == calc.VerticalBar {
				return float64(b.Size*b.Size) / float64(b.Spacing)
			}
		}
		return 0
	}
	if little, more := steel(6*in), steel(3*ft); little <= 0 || little > more {
		t.Errorf("verticals with 6 in of fill %v, with 3 ft %v", little, more)
	}
}

// TestBarsOnTheWrongFace holds that bars set on the open side of an unbraced stem
// never carry it: d is 16 − 14.19 = 1.81 in, the section is not
// tension-controlled (7.3.3.1), and 15 − 2.5·13.875 < 0 leaves no spacing (24.3.2).
func TestBarsOnTheWrongFace(t *testing.T) {
	free := stem(8*ft, fluid(30*pcf))
	free.Thickness, free.GradeA = 16*in, 7*ft
	free.Vertical = calc.Bars{Fixed: true, Size: 5, Spacing: 8 * in, Face: calc.FaceB}
	free.Footing = calc.Footing{Given: true, Width: 8 * ft, Thickness: 18 * in, Toe: 2 * ft, Bearing: 4000 * psf, Friction: 0.6}
	tied := free
	tied.Condition, tied.GradeA, tied.Tie = calc.TiedToSlab, 5*ft, calc.Tie{SlabThickness: 4 * in, SlabLength: 40 * ft}
	for name, w := range map[string]calc.Input{"free": free, "tied": tied} {
		for _, size := range []int{5, 6, 7, 8} {
			w.Vertical.Size = size
			r := design(t, w)
			bends, spaced := calc.Holds, check(t, r, "bar-spacing").State
			for _, c := range r.Checks {
				if c.ID == "flexure" && c.State == calc.Fails {
					bends = calc.Fails
				}
			}
			if bends != calc.Fails || spaced != calc.Fails || r.Verdict != calc.Fails || r.Today.Permission == calc.MayFill {
				t.Errorf("%s, No. %d: bending %v, spacing %v, verdict %v, today %v", name, size, bends, spaced, r.Verdict, r.Today.Permission)
			}
		}
	}
}

// TestDowelsOfAStem holds the dowels of an unbraced stem to what its bars are held
// to, for at the joint they alone pass: No. 5 on the open side of 8 in have d =
// 8 − 6.1875 = 1.81 in, a = 0.465·60/30.6 = 0.912, εt = 0.0021 < 0.0051 (7.3.3.1);
// cover to the soil side 5.875 in leaves 15 − 14.69 = 0.31 in of spacing (24.3.2).
func TestDowelsOfAStem(t *testing.T) {
	w := stem(6*ft, fluid(30*pcf))
	w.GradeA, w.Material.CoverB = 4*ft, 1.5*in
	w.Footing = calc.Footing{Given: true, Width: 6 * ft, Thickness: 14 * in, Toe: 1 * ft, Bearing: 3000 * psf, Friction: 0.5}
	w.Dowels = calc.Dowels{Fixed: true, Size: 5, Spacing: 8 * in, Up: 48 * in, Position: calc.FaceB}
	r := design(t, w)
	if check(t, r, "flexure").State != calc.Fails || r.Today.Permission == calc.MayFill {
		t.Errorf("bending %v, today %v", check(t, r, "flexure").State, r.Today.Permission)
	}
	for _, c := range r.Checks {
		if c.ID == "bar-spacing" && c.Bar == calc.DowelBar && (c.State != calc.Fails || c.Capacity.Base < 0.3124 || c.Capacity.Base > 0.3126) {
			t.Errorf("spacing of the dowels %v of %v", c.Demand.Base, c.Capacity.Base)
		}
	}
	w.Dowels.Position = calc.FaceA
	if r := design(t, w); check(t, r, "flexure").State != calc.Holds {
		t.Errorf("dowels on the soil side: bending %v", check(t, r, "flexure").State)
	}
}

// TestGapToTheLayerThatLaps holds the gap of a person's dowels to the layer that
// they lap: on the soil side of a wall that stands alone before its slab.
func TestGapToTheLayerThatLaps(t *testing.T) {
	w := stem(3*ft, fluid(30*pcf))
	w.Condition, w.Thickness, w.GradeA, w.Rulebook = calc.TiedToSlab, 12*in, 1*ft, calc.Engineered
	w.Surcharge.Live, w.Axial.Dead = 50*psf, 1200*plf
	w.Tie = calc.Tie{SlabThickness: 6 * in, SlabLength: 60 * ft}
	w.Footing = calc.Footing{Given: true, Width: 60 * in, Thickness: 14 * in, Toe: 12 * in, Bearing: 4000 * psf, Friction: 0.6}
	for face, want := range map[calc.Face]calc.State{calc.FaceA: calc.Holds, calc.FaceB: calc.Fails} {
		w.Dowels = calc.Dowels{Fixed: true, Size: 4, Spacing: 8 * in, Up: 30 * in, Position: face}
		if c := check(t, design(t, w), "lap-gap"); c.State != want {
			t.Errorf("dowels on %v: gap %v of %v, %v", face, c.Demand.Base, c.Capacity.Base, c.State)
		}
	}
}

// TestNothingBendsNothingFails holds that a wall without fill, and the foot of a
// wall held at both ends by bars of the other face, are not failed for brittle
// bars that carry them by a part.
func TestNothingBendsNothingFails(t *testing.T) {
	none := stem(8*ft, fluid(45*pcf))
	none.Condition, none.Thickness, none.GradeA, none.Material.Fy = calc.TiedToSlab, 24*in, 0, 80000*units.PSI
	none.Tie = calc.Tie{SlabThickness: 6 * in, SlabLength: 60 * ft}
	none.Footing = calc.Footing{Given: true, Width: 72 * in, Thickness: 14 * in, NoToe: true, Bearing: 4000 * psf, Friction: 0.6}
	foot := held()
	foot.Rulebook, foot.Height, foot.Thickness, foot.GradeA = calc.Engineered, 8*ft, 14*in, 3*ft
	foot.Soil, foot.Foot.Fixed = calc.Soil{Basis: calc.SoilFluid, Fluid: 45 * pcf, Weight: 120 * pcf}, true
	foot.Axial = calc.Axial{Dead: 3000 * plf, Live: 1500 * plf}
	foot.Footing = calc.Footing{Given: true, Width: 36 * in, Thickness: 20 * in, NoToe: true, Bearing: 4000 * psf, Friction: 0.5}
	for name, w := range map[string]calc.Input{"no fill": none, "fixed foot": foot} {
		for _, c := range design(t, w).Checks {
			if c.ID == "flexure" && c.State == calc.Fails {
				t.Errorf("%s, %s: %v of %v, %v", name, c.Stage, c.Demand.US(), c.Capacity.US(), c.Because)
			}
		}
	}
}
