package calc_test

import (
	"testing"

	"standingbeam/calc"
)

// TestLeave holds what today's answer says together: leave goes with the whole
// height, a limit lies below it and is worth setting out, and without either
// there is a reason and no height. A wall that the floor will hold is not
// filled above what it stands by itself while there is no floor.
func TestLeave(t *testing.T) {
	walls(15, many, func(in calc.Input, r calc.Result) {
		d := r.Today
		fine := false
		switch d.Permission {
		case calc.MayFill:
			fine = d.Level >= in.GradeA
		case calc.FillOnlyTo:
			fine = d.Level >= 6 && d.Level < in.GradeA && len(d.Because) > 0
		case calc.DoNotFill:
			fine = d.Level <= 0 && len(d.Because) > 0
		}
		if !fine {
			t.Errorf("%+v of %v\n%+v", d, in.GradeA, in)
		}
		braced := in.Condition == calc.BracedTop || in.Condition == calc.SoilBothSides && in.TopHeld
		if braced && !in.Today.Floor && d.Level > r.UnbracedFill {
			t.Errorf("no floor: fill to %v, stands %v\n%+v", d.Level, r.UnbracedFill, in)
		}
		if d.Permission == calc.MayFill && in.GradeA > 0 && !in.Footing.Given && in.Foot.Held == calc.GroundOnly {
			t.Errorf("may fill without a word of the footing\n%+v", in)
		}
	})
}
