package soil

import (
	"strings"

	"standingbeam/calc/units"
)

// WaterWeight is the unit weight of fresh water, 62.4 pcf. It is the number of
// the inch-pound books; 9.81 kN/m³, that of the metric ones, is 62.45 pcf and
// so 0.08 % more.
const WaterWeight = 62.4 * units.PCF

// class is one soil of the Unified Soil Classification System. The lateral
// loads are in psf per foot of depth, 0 = unsuitable as backfill; column is
// that of the residential tables, 0 = the tables may not be used.
type class struct {
	symbol         string
	active, atRest float64
	column         float64
	swells         bool
	organic        bool
}

// classes are the soils of IBC 2021 Table 1610.1 (active and at-rest pressure
// of moist soil at its optimum density), joined with IRC 2021 Table R405.1 and
// the soil columns of its tables R404.1.2. Pt is in R405.1 only.
var classes = [...]class{
	{symbol: "GW", active: 30, atRest: 60, column: 30},
	{symbol: "GP", active: 30, atRest: 60, column: 30},
	{symbol: "GM", active: 40, atRest: 60, column: 45},
	{symbol: "GC", active: 45, atRest: 60, column: 45},
	{symbol: "SW", active: 30, atRest: 60, column: 30},
	{symbol: "SP", active: 30, atRest: 60, column: 30},
	{symbol: "SM", active: 45, atRest: 60, column: 45},
	{symbol: "SM-SC", active: 45, atRest: 100, column: 45},
	{symbol: "SC", active: 60, atRest: 100, column: 60},
	{symbol: "ML", active: 45, atRest: 100, column: 45},
	{symbol: "ML-CL", active: 60, atRest: 100, column: 60},
	{symbol: "CL", active: 60, atRest: 100, column: 60},
	{symbol: "OL", organic: true},
	{symbol: "MH", swells: true},
	{symbol: "CH", swells: true},
	{symbol: "OH", swells: true, organic: true},
	{symbol: "Pt", organic: true},
}

// find returns the class of a symbol, in any case of letters.
func find(symbol string) (class, bool) {
	for _, c := range classes {
		if strings.EqualFold(c.symbol, symbol) {
			return c, true
		}
	}
	return class{}, false
}

// Classes returns the symbols, gravels first.
func Classes() []string {
	out := make([]string, len(classes))
	for i, c := range classes {
		out[i] = c.symbol
	}
	return out
}

// ClassKnown reports whether the symbol is a class of the table, and whether
// that soil is suitable as backfill.
func ClassKnown(symbol string) (known, suitable bool) {
	c, ok := find(symbol)
	return ok, ok && c.active > 0
}

// ClassFluid returns the design lateral soil load of a class as an equivalent
// fluid. It is false for a soil that is unknown or unsuitable as backfill.
//
// Source: IBC 2021, Table 1610.1.
func ClassFluid(symbol string, s State) (units.UnitWeight, bool) {
	c, ok := find(symbol)
	if !ok || c.active <= 0 {
		return 0, false
	}
	if s == Active {
		return units.UnitWeight(c.active) * units.PCF, true
	}
	return units.UnitWeight(c.atRest) * units.PCF, true
}

// TableColumn returns the soil column of the residential tables that a class
// belongs to: 30, 45 or 60 psf per foot. It is false where the tables may not
// be used.
//
// Source: IRC 2021, Tables R405.1 and R404.1.2.
func TableColumn(symbol string) (units.UnitWeight, bool) {
	c, ok := find(symbol)
	return units.UnitWeight(c.column) * units.PCF, ok && c.column > 0
}

// Swells reports whether a class changes its volume much with its water:
// CH, MH and OH.
//
// Source: IRC 2021, Table R405.1, volume change potential "high".
func Swells(symbol string) bool {
	c, _ := find(symbol)
	return c.swells
}

// Organic reports whether a class is organic: OL, OH and Pt.
//
// Source: IRC 2021, Table R405.1.
func Organic(symbol string) bool {
	c, _ := find(symbol)
	return c.organic
}

// WorstAtRest returns the greatest at-rest load among the classes that may be
// used as backfill: 100 psf per foot.
//
// Source: IBC 2021, Table 1610.1.
func WorstAtRest() units.UnitWeight { return worst(AtRest) }

// WorstActive returns the greatest active load among them: 60 psf per foot.
//
// Source: IBC 2021, Table 1610.1.
func WorstActive() units.UnitWeight { return worst(Active) }

func worst(s State) (w units.UnitWeight) {
	for _, c := range classes {
		g, _ := ClassFluid(c.symbol, s)
		w = max(w, g)
	}
	return w
}
