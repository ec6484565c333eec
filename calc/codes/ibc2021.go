package codes

import "standingbeam/calc/units"

// IBC holds the numbers of one edition of the building code that bear on
// foundation walls.
type IBC struct {
	Name string

	StabilityFactor   float64 // sliding and overturning, 1807.2.3
	StabilitySeismic  float64 // the same with earthquake, 1807.2.3
	EarthquakeService float64 // factor on E in that check, 1807.2.3

	ActiveDepth         units.Length // braced wall under a flexible floor may use active pressure, 1610.1
	SeismicSoilOver     units.Length // retained height above which D to F add a seismic increment, 1807.2.2
	FootingDepth        units.Length // least depth below grade, 1809.4
	FootingWidth        units.Length // least width, 1809.4
	FootingStepSlope    float64      // steeper than this: step, 1809.3
	PlainFootingEdge    units.Length // least edge thickness, 1809.8
	PlainFootingEdgeR3  units.Length // the same for one- and two-family houses, 1809.8
	FoundationStrength  units.Stress // least f'c, A to C and light frame up to two storeys, 1808.8.1
	FoundationStrengthD units.Stress // least f'c, other D to F, 1808.8.1

	// Plain walls in D and E, 1905.1.7 (one rendering seen).
	PlainSeismicHeight   units.Length
	PlainSeismicRetained units.Length
	PlainSeismicWall     units.Length
}

// IBC2021 returns the numbers of the International Building Code 2021.
func IBC2021() IBC {
	return IBC{
		Name:                 "IBC 2021",
		StabilityFactor:      1.5,
		StabilitySeismic:     1.1,
		EarthquakeService:    0.7,
		ActiveDepth:          8 * units.Foot,
		SeismicSoilOver:      6 * units.Foot,
		FootingDepth:         12 * units.Inch,
		FootingWidth:         12 * units.Inch,
		FootingStepSlope:     0.1,
		PlainFootingEdge:     8 * units.Inch,
		PlainFootingEdgeR3:   6 * units.Inch,
		FoundationStrength:   2500 * units.PSI,
		FoundationStrengthD:  3000 * units.PSI,
		PlainSeismicHeight:   8 * units.Foot,
		PlainSeismicRetained: 4 * units.Foot,
		PlainSeismicWall:     7.5 * units.Inch,
	}
}
