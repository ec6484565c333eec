package statics_test

import (
	"fmt"

	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

// A wall of 8 ft, held by the floor at its top and by the slab at its foot,
// with 7 ft of soil that pushes like a fluid of 45 pcf.
func ExampleSolve() {
	d, err := statics.Solve(statics.Strip{
		Top: 8 * units.Foot,
		EI:  1.33e8, // 3.12 million psi times 8³/12
		Loads: []statics.Load{
			{From: 0, To: 7 * units.Foot, AtFrom: 315 * units.PSF, AtTo: 0},
		},
		Supports: []statics.Support{{At: 0}, {At: 8 * units.Foot}},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range d.Reactions() {
		fmt.Printf("%.0f ft: %.1f lb/ft\n", r.At.Feet(), r.Force.PLF())
	}
	at, m := d.MaxMoment()
	fmt.Printf("%.1f lb-ft/ft at %.3f ft, tension on face B\n", m.LbFtPerFt(), at.Feet())
	// Output:
	// 0 ft: 780.9 lb/ft
	// 8 ft: 321.6 lb/ft
	// 1132.0 lb-ft/ft at 3.220 ft, tension on face B
}
