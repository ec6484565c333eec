package sheet

import (
	"fmt"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

const (
	ft = units.Foot
	in = units.Inch
)

// wall is a wall of a condition as houses have it.
func wall(c calc.Condition) calc.Input {
	w := calc.Input{Condition: c, Height: 9 * ft, GradeA: 8 * ft, Thickness: 10 * in,
		Soil:     calc.Soil{Basis: calc.SoilClass, Class: "SM"},
		Material: calc.Material{Fc: 3000 * units.PSI, Fy: 60 * units.KSI},
		Footing:  calc.Footing{Given: true, Width: 24 * in, Thickness: 12 * in, NoToe: true, Bearing: 2000 * units.PSF, Friction: 0.4},
	}
	switch c {
	case calc.BracedTop:
		w.Name, w.Foot.Held = "East cellar wall", calc.SlabTight
	case calc.FreeTop:
		w.Name, w.Height, w.GradeA = "Garden wall", 6*ft, 6*ft
		w.Footing.Width, w.Footing.NoToe, w.Footing.Toe = 5*ft, false, 18*in
	case calc.TiedToSlab:
		w.Name, w.Footing.Width = "Porch wall", 36*in
		w.Tie = calc.Tie{SlabThickness: 4 * in, SlabLength: 30 * ft}
	case calc.SoilBothSides:
		w.Name, w.TopHeld, w.GradeB = "Garage wall", true, 4*ft
	}
	return w
}

// walls are walls of each condition, and the odd ones: not held, plain, wet,
// with bars fixed, without a footing, with no number.
func walls() map[string]calc.Input {
	out := map[string]calc.Input{}
	for c, name := range []string{"braced", "free", "tied", "both"} {
		out[name] = wall(calc.Condition(c))
	}
	free := wall(calc.SoilBothSides)
	free.TopHeld = false
	out["both-free"] = free
	wet := wall(calc.BracedTop)
	wet.Water, wet.Foot.Held, wet.Surcharge.Live = calc.Water{Standing: true, Level: 5 * ft}, calc.SlabLater, 100*units.PSF
	out["wet"] = wet
	plain := wall(calc.BracedTop)
	plain.Height, plain.GradeA = 4*ft, 3*ft
	out["crawl"] = plain
	fixed := wall(calc.BracedTop)
	fixed.Rulebook, fixed.Vertical = calc.Engineered, calc.Bars{Fixed: true, Size: 4, Spacing: 18 * in, Face: calc.FaceA}
	out["wrong-face"] = fixed
	unsaid := wall(calc.BracedTop)
	unsaid.Footing, unsaid.Soil, unsaid.Foot.Held = calc.Footing{}, calc.Soil{Basis: calc.SoilUnknown, Swells: calc.No}, calc.GroundOnly
	out["unsaid"] = unsaid
	swells := wall(calc.FreeTop)
	swells.Soil.Class = "CH"
	out["swells"] = swells
	rakers := wall(calc.TiedToSlab)
	rakers.Tie.Before, rakers.Tie.Anchor = calc.Rakers, calc.OppositeWall
	out["rakers"] = rakers
	hung := wall(calc.BracedTop)
	hung.Brace, hung.Foot.SlabBase = 7*ft+6*in, 20*in
	out["hung"] = hung
	return out
}

func answered(t testing.TB, w calc.Input) calc.Result {
	t.Helper()
	r, err := calc.Design(w)
	if err != nil {
		t.Fatalf("%s: %v", w.Name, err)
	}
	return r
}

// readers are who the papers are made for.
func readers() map[string]Options {
	out := map[string]Options{}
	for _, paper := range []string{Letter, A4} {
		for sys, name := range []string{"ft-in", "metric"} {
			for _, language := range []string{"en", "es"} {
				out[name+" "+paper+" "+language] = Options{Speaker: words.Speaker{Lang: language, System: words.System(sys)}, Paper: paper,
					Job: "Mill Lane 4", Date: "25 Nov", Person: "A. Mason"}
			}
		}
	}
	return out
}

// eachPaper runs a test over all walls and readers.
func eachPaper(t *testing.T, test func(t *testing.T, r calc.Result, o Options)) {
	for name, w := range walls() {
		r := answered(t, w)
		for reader, o := range readers() {
			t.Run(fmt.Sprint(name, " ", reader), func(t *testing.T) { test(t, r, o) })
		}
	}
}
