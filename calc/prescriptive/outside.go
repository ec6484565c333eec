package prescriptive

import "standingbeam/calc/units"

// Reason is why a wall is outside the tables: a fixed word and the limit it
// passes.
type Reason struct {
	ID    string
	Limit units.Quantity
}

// Reasons.
const (
	HeightOverTable     = "height-over-table"     // taller than the table's last row
	FillAboveWall       = "fill-above-wall"       // the fill is higher than the wall
	FluidOverTable      = "fluid-over-table"      // more than 60 psf per ft
	ThicknessUnderTable = "thickness-under-table" // thinner than the thinnest row
	CentredNotEight     = "centred-not-eight"     // bars at the centre line: read for 8 in nominal only
	StrengthUnder       = "fc-under-table"        // f'c below 2,500 psi
	SteelUnder          = "fy-under-table"        // fy below 40,000 psi
)

// Outside returns every reason why the tables do not cover the wall, none
// where they do. Conditions that a table cannot see, such as water, a free top
// or a slab on the fill, are for the caller.
//
// Source: IRC 2021 R404.1.3.2, R404.1.3.3.1, R404.1.3.3.7.1, Tables
// R404.1.2(3) and (8).
func Outside(q Query) []Reason {
	var reasons []Reason
	outside(q, func(id string, limit units.Quantity) {
		reasons = append(reasons, Reason{id, limit})
	})
	return reasons
}

// outside reports whether a wall is outside the tables and calls each, when it
// is not nil, with the reasons. Every comparison is written so that NaN fails.
func outside(q Query, each func(string, units.Quantity)) bool {
	out := false
	test := func(inside bool, id string, limit units.Quantity) {
		if inside {
			return
		}
		out = true
		if each != nil {
			each(id, limit)
		}
	}
	n := nominal(q.Thickness)
	test(q.Height > 0 && q.Height <= irc.Height+hair, HeightOverTable, units.Of(irc.Height, units.Level))
	test(q.Fill <= q.Height+hair, FillAboveWall, units.Of(q.Height, units.Level))
	test(q.Fluid >= 0 && q.Fluid.PCF() <= irc.Fluid.PCF()+1e-6, FluidOverTable, units.Of(irc.Fluid, units.Weight))
	test(n > 0, ThicknessUnderTable, units.Of(6*units.Inch-irc.ThicknessLoss, units.Size))
	test(!q.Centred || n == 8 || n == 0, CentredNotEight, units.Of(8*units.Inch, units.Size))
	test(q.Fc >= irc.Strength*(1-1e-9), StrengthUnder, units.Of(irc.Strength, units.Strength))
	test(q.Fy >= irc.Steel*(1-1e-9), SteelUnder, units.Of(irc.Steel, units.Strength))
	return out
}
