package plain_test

import (
	"fmt"

	"standingbeam/calc/plain"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// An 8 in wall of 3,000 psi without bars: what bending it carries.
func Example() {
	var w working.Chain
	m := plain.Section{Fc: 3000 * units.PSI, H: 8 * units.Inch}.DesignMoment(&w)
	for _, s := range w.Steps {
		fmt.Printf("%s = %s = %.1f %s\n", s.Symbol, s.Formula, s.Value.US(), s.Value.Kind.US().Symbol)
	}
	fmt.Printf("%.0f lb-ft/ft\n", m.LbFtPerFt())
	// Output:
	// Sm = b h^2/6 = 128.0 in3/ft
	// Mn = min(5 λ √f'c Sm; 0.85 f'c Sm) = 2921.2 lb-ft/ft
	// φMn = φ Mn = 1752.7 lb-ft/ft
	// 1753 lb-ft/ft
}
