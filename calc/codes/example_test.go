package codes_test

import (
	"fmt"

	"standingbeam/calc/codes"
)

// The printed cell for an 8 in wall, 8 ft high, 7 ft of fill, 45 psf per ft.
func Example() {
	irc := codes.IRC2021()
	cell, _ := irc.InsideCell(8, 7, 8, 45)
	fmt.Printf("%s: No. %d at %.0f in\n", irc.Name, cell.Bar, cell.Spacing.Inches())
	// Output: IRC 2021: No. 5 at 41 in
}
