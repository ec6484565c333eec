package soil_test

import (
	"fmt"

	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// Seven feet of clayey sand, at rest, with water to 3 ft above the footing.
func ExamplePressure() {
	moist := 120 * units.PCF
	fluid, ok := soil.ClassFluid("SC", soil.AtRest)
	if !ok {
		return
	}
	for _, b := range soil.Pressure(soil.Ground{
		Grade: 7 * units.Foot, Moist: moist, Saturated: 130 * units.PCF, Side: 'a',
		Fluid: fluid, K: float64(fluid / moist),
		Wet: true, Water: 3 * units.Foot,
	}) {
		name := "soil"
		if b.Cause == soil.Water {
			name = "water"
		}
		fmt.Printf("%s from %.0f ft to %.0f ft: %.0f to %.0f psf\n", name, b.From.Feet(), b.To.Feet(), b.Top.PSF(), b.Bottom.PSF())
	}
	// Output:
	// soil from 7 ft to 3 ft: 0 to 400 psf
	// soil from 3 ft to 0 ft: 400 to 569 psf
	// water from 3 ft to 0 ft: 0 to 187 psf
}
