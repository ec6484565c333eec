package calc_test

import (
	"fmt"
	"math"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// TestChosenBarsAreLeast searches every size and every buildable spacing for
// the verticals of random walls held by the floor: of those with which every
// deciding check of the wall's verticals holds, the chosen ones have the least
// steel.
func TestChosenBarsAreLeast(t *testing.T) {
	r := seeded(10)
	tried := 0
	for range 250 {
		w := basement(r.inches(84, 168), 0, units.UnitWeight(r.in(30, 100, 5))*pcf)
		w.GradeA = w.Height - r.inches(0, 24)
		w.Thickness = units.Length(r.in(7.5, 14, 0.5))
		w.Material.Fc = units.Stress(r.in(2500, 5000, 500))
		w.Material.Fy = units.Stress(pick(r, 40000.0, 60000, 80000))
		a := design(t, w)
		chosen, ok := vertical(a)
		if !ok || !verticalsHold(a) {
			continue
		}
		tried++
		least := math.Inf(1)
		best := ""
		for _, n := range []int{4, 5, 6, 7, 8} {
			for s := 18; s >= 4; s-- {
				if s > 8 && s%2 == 1 {
					continue
				}
				w.Vertical = calc.Bars{Fixed: true, Size: n, Spacing: units.Length(s), Face: chosen.Face}
				if area := steel(n, s); area < least && verticalsHold(design(t, w)) {
					least, best = area, fmt.Sprintf("No. %d at %d in", n, s)
				}
			}
		}
		if got := steel(chosen.Size, int(chosen.Spacing)); got > least*(1+1e-9) {
			t.Errorf("chosen No. %d at %v in, %s holds too\n%+v", chosen.Size, chosen.Spacing, best, w)
		}
	}
	if tried < 100 {
		t.Errorf("%d walls with bars", tried)
	}
}

func steel(n, spacing int) float64 {
	area := map[int]float64{4: 0.20, 5: 0.31, 6: 0.44, 7: 0.60, 8: 0.79}[n] // ASTM A615
	return area / float64(spacing)
}

func vertical(r calc.Result) (calc.Bar, bool) {
	for _, b := range r.Bars {
		if b.Role == calc.VerticalBar {
			return b, true
		}
	}
	return calc.Bar{}, false
}

// verticalsHold reports whether the checks of the verticals hold.
func verticalsHold(r calc.Result) bool {
	for _, c := range r.Checks {
		switch c.ID {
		case "flexure", "shear", "minimum-vertical", "bar-spacing", "bar-clearance":
			if c.State != calc.Holds && c.Bar != calc.HorizontalBar && c.Rulebook == "ACI 318-19" {
				return false
			}
		}
	}
	return true
}
