package calc

import (
	"testing"

	"standingbeam/calc/units"
)

// A fill whose height is no whole number of inches is scanned to an end, and
// answered in whole inches at or under what stands.
func TestFillOfOddInches(t *testing.T) {
	for _, c := range []Condition{BracedTop, FreeTop, TiedToSlab, SoilBothSides} {
		for sixteenths := units.Length(0); sixteenths < 64; sixteenths += 3 {
			in := sample(c)
			in.GradeA -= sixteenths * units.Inch / 16
			r, err := Design(in)
			if err != nil {
				t.Fatal(err)
			}
			level := r.Today.Level.Inches()
			if level > in.GradeA.Inches() || (r.Today.Permission == FillOnlyTo && level < in.GradeA.Inches() && level-float64(int(level)) > 1e-9) {
				t.Errorf("%v, fill %v in: level %v in", c, in.GradeA.Inches(), level)
			}
		}
	}
}
