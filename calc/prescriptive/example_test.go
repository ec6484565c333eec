package prescriptive_test

import (
	"fmt"

	"standingbeam/calc/prescriptive"
	"standingbeam/calc/units"
)

// An 8 in wall, 8 ft high, with 6 ft 6 in of fill that weighs 45 psf per ft:
// the row of 7 ft answers, and table (9) gives the same in No. 4.
func Example() {
	cell := prescriptive.Lookup(prescriptive.Query{
		Thickness: 8 * units.Inch, Height: 8 * units.Foot, Fill: 6.5 * units.Foot, Fluid: 45 * units.PCF,
		Fc: 2500 * units.PSI, Fy: 60 * units.KSI,
	})
	fmt.Printf("%s, fill row %d ft: %s at %.0f in\n", cell.Table, cell.FillRow, cell.Bar.Name(), cell.Spacing.Inches())
	first := prescriptive.Alternatives(cell)[0]
	fmt.Printf("or %s at %.0f in\n", first.Bar.Name(), first.Spacing.Inches())
	// Output:
	// R404.1.2(8), fill row 7 ft: No. 5 at 41 in
	// or No. 4 at 26 in
}
