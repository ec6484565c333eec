package prescriptive

import (
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// Alternative is the same cell with bars of another size or grade. Grade is the
// yield strength, 40 or 60 ksi.
type Alternative struct {
	Bar     rebar.Bar
	Grade   units.Stress
	Spacing units.Length
}

// Alternatives returns what Table R404.1.2(9) allows instead of the printed
// bars: the other sizes in Grade 60, then No. 4, 5 and 6 in Grade 40. Spacings
// over 48 in stay at 48 in. It is empty where the cell has no bars or its
// spacing is not in the table.
//
// Source: IRC 2021 Table R404.1.2(9).
func Alternatives(c Cell) []Alternative {
	if !c.Found || c.None || c.Design {
		return nil
	}
	var list []Alternative
	for _, grade := range [2]int{60, 40} {
		for n := 4; n <= 6; n++ {
			if grade == 60 && n == c.Bar.Number {
				continue
			}
			spacing, ok := irc.Alternate(c.Bar.Number, c.Spacing, n, grade)
			if !ok {
				return nil
			}
			b, _ := rebar.ByNumber(n)
			list = append(list, Alternative{b, units.Stress(grade) * units.KSI, spacing})
		}
	}
	return list
}

// InSteel returns the cell's bars for steel of strength fy: as printed from
// 60,000 psi on, else by table (9) for Grade 40. It is false where the cell has
// no bars or fy is below 40,000 psi.
func InSteel(c Cell, fy units.Stress) (Alternative, bool) {
	if !c.Found || c.None || c.Design || !(fy >= irc.Steel) {
		return Alternative{}, false
	}
	if fy >= 60*units.KSI {
		return Alternative{c.Bar, 60 * units.KSI, c.Spacing}, true
	}
	spacing, ok := irc.Alternate(c.Bar.Number, c.Spacing, c.Bar.Number, 40)
	return Alternative{c.Bar, 40 * units.KSI, spacing}, ok
}
