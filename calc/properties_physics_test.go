package calc_test

import (
	"math"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

func within(got, want, rel float64) bool { return math.Abs(got-want) <= rel*math.Abs(want) }

// TestHeightLaws holds a full dry fill without surcharge against similarity:
// bending grows with the cube of the height, push with its square. From 8 to 9
// and to 10 ft that is 1.42 and 1.95 times the bending, 1.27 and 1.56 times the
// push.
func TestHeightLaws(t *testing.T) {
	for _, make := range []struct {
		name string
		of   func(h units.Length) calc.Input
		bend string
	}{
		{"held by the floor", func(h units.Length) calc.Input { return basement(h, h, 45*pcf) }, "moment B factored"},
		{"foot fixed", func(h units.Length) calc.Input {
			w := basement(h, h, 45*pcf)
			w.Foot.Fixed = true
			return w
		}, "foot moment factored"},
		{"free", func(h units.Length) calc.Input { return stem(h, fluid(45*pcf)) }, "foot moment factored"},
		{"tied", func(h units.Length) calc.Input {
			w := tiedWall()
			w.Height, w.GradeA = h, h
			return w
		}, "moment B factored"},
	} {
		base := design(t, make.of(8*ft))
		for h := 24 * in; h <= 240*in; h += 7 * in {
			r := design(t, make.of(h))
			k := float64(h / (8 * ft))
			if got := read(t, r, make.bend) / read(t, base, make.bend); !within(got, k*k*k, 1e-9) {
				t.Errorf("%s, %v in: bending × %v, want × %v", make.name, h, got, k*k*k)
			}
			if got := read(t, r, "push") / read(t, base, "push"); !within(got, k*k, 1e-9) {
				t.Errorf("%s, %v in: push × %v, want × %v", make.name, h, got, k*k)
			}
		}
		for _, row := range []struct {
			h          units.Length
			bend, push float64
		}{{9 * ft, 1.42, 1.27}, {10 * ft, 1.95, 1.56}} {
			r := design(t, make.of(row.h))
			if got := read(t, r, make.bend) / read(t, base, make.bend); math.Abs(got-row.bend) > 0.005 {
				t.Errorf("%s, %v ft: bending × %v, want × %v", make.name, row.h.Feet(), got, row.bend)
			}
			if got := read(t, r, "push") / read(t, base, "push"); math.Abs(got-row.push) > 0.005 {
				t.Errorf("%s, %v ft: push × %v, want × %v", make.name, row.h.Feet(), got, row.push)
			}
		}
	}
}

// TestEqualSidesBalance holds walls with equal ground on both sides: at
// service level nothing is left of the push, whatever the soil.
func TestEqualSidesBalance(t *testing.T) {
	r := seeded(7)
	for range 300 {
		w := bothWall()
		w.TopHeld = r.odds(2)
		w.Soil = r.soil()
		w.Height = r.inches(36, 240)
		w.GradeA = r.inches(12, w.Height.Inches())
		w.GradeB = w.GradeA
		s := finished(t, design(t, w))
		one := w
		one.GradeB = 0
		scale := read(t, design(t, one), "push")
		for _, x := range s.Reactions {
			if math.Abs(float64(x.Service)) > 1e-9*scale {
				t.Errorf("reaction %v of a balanced wall, push of one side %v\n%+v", x.Service, scale, w)
			}
		}
		for _, m := range s.Moments {
			if math.Abs(float64(m.Service)) > 1e-9*scale*240 {
				t.Errorf("moment %v of a balanced wall\n%+v", m.Service, w)
			}
		}
	}
}

// TestMoreSoilNeverAsksLess raises ground, soil, surcharge and water of walls
// held by the floor: no demand of the strip falls.
func TestMoreSoilNeverAsksLess(t *testing.T) {
	r := seeded(8)
	names := []string{"top service", "top factored", "foot service", "foot factored", "moment B factored", "shear factored", "push"}
	for range 600 {
		w := basement(r.inches(60, 180), 0, units.UnitWeight(r.in(20, 80, 5))*pcf)
		w.GradeA = r.inches(24, w.Height.Inches()-12)
		if r.odds(3) {
			w.Surcharge = calc.Surcharge{Dead: units.Stress(r.in(0, 200, 25)) * psf, Live: units.Stress(r.in(0, 200, 25)) * psf}
		}
		if r.odds(3) {
			w.Water = calc.Water{Standing: true, Level: r.inches(1, w.GradeA.Inches()-1)}
		}
		more := w
		what := ""
		switch r.IntN(4) {
		case 0:
			more.GradeA, what = w.GradeA+r.inches(1, 12), "ground"
		case 1:
			more.Soil.Fluid, what = w.Soil.Fluid*1.1, "soil"
		case 2:
			more.Surcharge.Live, what = w.Surcharge.Live+25*psf, "surcharge"
		case 3:
			more.Water, what = calc.Water{Standing: true, Level: w.Water.Level + 1}, "water"
		}
		a, b := design(t, w), design(t, more)
		for _, q := range names {
			if x, y := read(t, a, q), read(t, b, q); y < x*(1-1e-9) {
				t.Errorf("more %s: %s falls from %v to %v\n%+v", what, q, x, y, w)
			}
		}
	}
}

// TestThickerIsNeverWeaker thickens walls whose bars are fixed and which carry
// no axial load: neither bending nor shear strength falls, with the bars under
// their cover or at the middle, and plain concrete gains too.
func TestThickerIsNeverWeaker(t *testing.T) {
	r := seeded(9)
	for range 400 {
		w := basement(9*ft, 8*ft, 60*pcf)
		w.Thickness = units.Length(r.in(6, 23, 0.5))
		w.Vertical = calc.Bars{Fixed: true, Size: 4 + r.IntN(4), Spacing: r.inches(6, 18), Face: pick(r, calc.FaceB, calc.Centre)}
		thick := w
		thick.Thickness += units.Length(r.in(0.5, 1, 0.5))
		a, b := design(t, w), design(t, thick)
		for _, q := range []string{"check flexure capacity", "check shear capacity", "check plain-flexure capacity", "check plain-shear capacity"} {
			if x, y := read(t, a, q), read(t, b, q); y < x*(1-1e-9) {
				t.Errorf("%v to %v in: %s falls from %v to %v\n%+v", w.Thickness, thick.Thickness, q, x, y, w.Vertical)
			}
		}
	}
}
