package stability_test

import (
	"fmt"

	"standingbeam/calc/stability"
	"standingbeam/calc/units"
)

// A free wall of 6 ft by 8 in on a footing of 4 ft by 12 in with its toe 1 ft
// before the wall; soil of 120 pcf on the heel pushes like a fluid of 30 pcf
// down to the footing's bottom.
func ExampleCheck() {
	r := stability.Check(stability.Body{
		Width:    4 * units.Foot,
		Friction: 0.40,
		Weights: []stability.Weight{
			{Name: "stem", Force: 600 * units.PLF, Arm: 16 * units.Inch},
			{Name: "footing", Force: 600 * units.PLF, Arm: 24 * units.Inch},
			{Name: "heel soil", Force: 1680 * units.PLF, Arm: 34 * units.Inch},
		},
		Drive: []stability.Push{{Name: "soil", Force: 735 * units.PLF, Height: 28 * units.Inch}},
	}, nil)
	fmt.Printf("overturning %.2f, sliding %.2f, e = %.3f ft, toe %.0f psf\n",
		r.OverturningFactor, r.SlidingFactor, r.Eccentricity.Feet(), r.BearingToe.PSF())
	// Output:
	// overturning 3.94, sliding 1.57, e = 0.248 ft, toe 988 psf
}
