package draw

import (
	"fmt"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Walls that are odd in one way each: a floor hung below the top with a raised
// slab, water and a load on the ground, ground left on the low side, rakers, a
// soil that nobody knows, an axial load that stands off the middle.
func oddWalls() map[string]calc.Input {
	hung := braced()
	hung.Height, hung.Brace, hung.GradeA = 9*ft, 7.5*ft, 8*ft
	hung.Foot = calc.Foot{Held: calc.SlabLater, SlabThickness: 4 * in, SlabBase: 12 * in}
	wet := braced()
	wet.Water, wet.Surcharge.Live = calc.Water{Standing: true, Level: 4 * ft}, 100*units.PSF
	wetFree := free()
	wetFree.Water, wetFree.Surcharge.Live = calc.Water{Standing: true, Level: 5.5 * ft}, 40*units.PSF
	low := free()
	low.GradeB = 2 * ft
	rakers := wall(calc.TiedToSlab, 9*ft, 8*in, 4*ft, 0.5)
	rakers.Tie.Before, rakers.Tie.Anchor = calc.Rakers, calc.OppositeWall
	rakers.Water = calc.Water{Standing: true, Level: 1 * ft}
	unknown := braced()
	unknown.Soil = calc.Soil{}
	crawl := braced()
	crawl.Height, crawl.GradeA, crawl.GradeB, crawl.Foot = 3.5*ft, 2*ft, 1*ft, calc.Foot{}
	house := braced()
	house.Axial = calc.Axial{Dead: 1200 * units.PLF, Live: 800 * units.PLF, Eccentricity: -2 * in}
	flooded := wall(calc.SoilBothSides, 6*ft, 8*in, 3*ft, 0.5)
	flooded.GradeA, flooded.GradeB = 4*ft, 4*ft
	flooded.Water = calc.Water{Standing: true, Level: 4 * ft}
	bare := braced()
	bare.GradeA = 0
	return map[string]calc.Input{"hung floor": hung, "wet": wet, "wet and free": wetFree, "low side": low, "rakers": rakers, "unknown soil": unknown,
		"crawl space": crawl, "house on it": house, "even and flooded": flooded, "no ground": bare}
}

func TestLabelsKeepClearOnOddWalls(t *testing.T) {
	for name, w := range oddWalls() {
		r := design(t, w)
		for _, s := range append(small, sizes...) {
			for _, reader := range []words.Speaker{{}, {System: words.Metric, DecimalComma: true}, {Lang: "es"}, {Lang: "es", System: words.Metric}} {
				p := Section(r, Options{Width: s[0], Height: s[1], Speaker: reader})
				checkPicture(t, fmt.Sprintf("%s at %v×%v, %+v", name, s[0], s[1], reader), p, s[0], s[1])
				sound(t, name, p.SVG)
				most := 1
				if reader.Lang == "es" {
					most = 2 // its words are a quarter longer
				}
				if s[0] < 350 || s[1] < 260 {
					most += 2
				}
				if len(p.Lost) > most {
					t.Errorf("%s at %v×%v: %+v: labels without a place: %q", name, s[0], s[1], reader, p.Lost)
				}
			}
		}
	}
}
