package calc_test

import (
	"testing"

	"standingbeam/calc"
)

// TestEveryCheckIsListed: none of the checks that a wall of its condition is
// asked is missing in silence.
func TestEveryCheckIsListed(t *testing.T) {
	every := []string{"plain-flexure", "plain-shear", "flexure", "shear", "minimum-vertical", "minimum-horizontal", "bar-spacing", "minimum-thickness",
		"deflection", "dowel-lap", "dowel-hook", "joint-shear-friction"}
	base := []string{"overturning", "sliding", "resultant-in-middle-third", "bearing", "heel-flexure", "heel-shear", "toe-flexure", "toe-shear"}
	tie := []string{"tie-tension", "tie-development-wall", "tie-development-slab", "slab-drag", "foot-support"}
	walls(16, many, func(in calc.Input, r calc.Result) {
		want := append([]string(nil), every...)
		switch {
		case in.Condition == calc.FreeTop:
			want = append(want, base...)
		case in.Condition == calc.TiedToSlab:
			want = append(append(want, base...), tie...)
		case in.Condition == calc.SoilBothSides && !in.TopHeld:
			want = append(append(want, base...), "level-difference")
		case in.Condition == calc.SoilBothSides:
			want = append(want, "floor-edge", "foot-support", "unbraced-fill", "level-difference")
		default:
			want = append(want, "floor-edge", "foot-support", "unbraced-fill")
		}
		for _, id := range want {
			if !listed(r, id) {
				t.Errorf("no check %s\n%+v", id, in)
			}
		}
	})
}

func listed(r calc.Result, id string) bool {
	for _, c := range r.Checks {
		if c.ID == id {
			return true
		}
	}
	return false
}
