package rebar_test

import (
	"fmt"

	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// A No. 4 dowel in concrete of 3,000 psi: how far it laps with the wall's bar,
// and the sum behind it.
func Example() {
	b, _ := rebar.ByNumber(4)
	s := rebar.Setting{Fc: 3000 * units.PSI, Fy: 60 * units.KSI, Favorable: true}
	var w working.Chain
	lap := rebar.LapB(b, s, &w)
	for _, step := range w.Steps {
		fmt.Printf("%s = %s = %.2f in (%s)\n", step.Symbol, step.Formula, step.Value.US(), step.Clause)
	}
	fmt.Printf("%s laps %.1f in\n", b.Name(), lap.Inches())
	// Output:
	// ldt = fy ψt ψe ψg/(25 λ √f'c) db = 21.91 in (25.4.2.3)
	// lst = max(1.3 ldt; 12) = 28.48 in (25.5.2.1)
	// No. 4 laps 28.5 in
}
