package working_test

import (
	"fmt"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// One step, shown and computed again from what is shown.
func Example() {
	var c working.Chain
	sm := 8.0 * 8 / 6 // in³ per inch
	c.Add("Sm", "b h^2/6", units.Of(sm, units.Modulus), "",
		working.T("b", 12*units.Inch, units.Size), working.T("h", 8*units.Inch, units.Size))
	s := c.Steps[0]
	fmt.Printf("%s = %s = %.0f %s\n", s.Symbol, s.Formula, s.Value.US(), s.Value.Kind.US().Symbol)
	fmt.Println(c.Verify())
	// Output:
	// Sm = b h^2/6 = 128 in3/ft
	// <nil>
}
