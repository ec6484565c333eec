package calc_test

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// handValues are one wall of each condition, whose values were found by hand.
func handValues() map[string]example {
	braced := basement(8*ft, 7*ft, 45*pcf)
	braced.Soil.Weight = 0
	braced.Material.CoverA, braced.Material.CoverB = 1.5*in, 0.75*in
	return map[string]example{
		"braced": {in: braced}, "free": {in: freeWall()}, "tied": {in: tiedWall()}, "both": {in: bothWall()},
	}
}

func freeWall() calc.Input {
	return calc.Input{Condition: calc.FreeTop, Height: 6 * ft, GradeA: 6 * ft, Thickness: 8 * in, Soil: fluid(30 * pcf),
		Material: material(3000 * units.PSI),
		Footing:  calc.Footing{Given: true, Width: 4 * ft, Thickness: 12 * in, Toe: 1 * ft, Bearing: 2000 * psf, Friction: 0.40}}
}

func tiedWall() calc.Input {
	return calc.Input{Condition: calc.TiedToSlab, Height: 8 * ft, GradeA: 8 * ft, Thickness: 8 * in, Soil: fluid(45 * pcf),
		Material: material(3000 * units.PSI),
		Tie:      calc.Tie{SlabThickness: 4 * in, SlabLength: 24 * ft, Friction: 0.35},
		Footing:  calc.Footing{Given: true, Width: 3 * ft, Thickness: 10 * in, Toe: 1 * ft, Bearing: 2000 * psf, Friction: 0.40}}
}

func bothWall() calc.Input {
	return calc.Input{Condition: calc.SoilBothSides, TopHeld: true, Height: 8 * ft, GradeA: 7 * ft, GradeB: 3 * ft, Thickness: 8 * in,
		Soil: fluid(45 * pcf), Material: material(3000 * units.PSI),
		Footing: calc.Footing{Given: true, Width: 2 * ft, Thickness: 10 * in, NoToe: true, Bearing: 2000 * psf, Friction: 0.40}}
}
