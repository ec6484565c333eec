package concrete_test

import (
	"fmt"

	"standingbeam/calc/concrete"
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// An 8 in wall with No. 4 at 18 in near one face: what bending and shear it
// carries, and the steel that a given moment needs.
func Example() {
	b, _ := rebar.ByNumber(4)
	s := concrete.Section{Fc: 3000 * units.PSI, Fy: 60 * units.KSI, H: 8 * units.Inch, D: 7 * units.Inch, As: b.PerLength(18 * units.Inch)}
	f := s.Flexure(nil)
	fmt.Printf("φMn %.0f lb-ft/ft, φ %.2f\n", f.Design.LbFtPerFt(), f.Phi)
	fmt.Printf("φVc %.0f lb/ft\n", s.Shear(0, true, nil).PLF())
	steel, _ := s.SteelFor(2000 * units.LbFtPerFt)
	fmt.Printf("2,000 lb-ft/ft needs %.3f in²/ft\n", steel.In2PerFt())
	// Output:
	// φMn 4122 lb-ft/ft, φ 0.90
	// φVc 3220 lb/ft
	// 2,000 lb-ft/ft needs 0.064 in²/ft
}
