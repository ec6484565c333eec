package calc_test

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// awkward are walls that are easily got wrong, with values found by hand.
func awkward() map[string]example {
	m := map[string]example{}
	change := func(name string, in calc.Input, f func(*calc.Input)) {
		f(&in)
		m[name] = example{in: in}
	}
	usual := basement(8*ft, 7*ft, 45*pcf)
	usual.FloorEdge = 1000 * plf
	footing := calc.Footing{Given: true, Width: 24 * in, Thickness: 12 * in, NoToe: true, Bearing: 4000 * psf, Friction: 0.40}

	change("water on a free wall", freeWall(), func(w *calc.Input) {
		w.Height, w.GradeA, w.Thickness = 8*ft, 8*ft, 12*in
		w.Soil = calc.Soil{Basis: calc.SoilFriction, Weight: 120 * pcf, Saturated: 130 * pcf, Friction: 30 * units.Degree}
		w.Water = calc.Water{Standing: true, Level: 3 * ft}
		w.Footing.Width, w.Footing.Thickness, w.Footing.Toe = 6*ft, 14*in, 18*in
	})
	change("brace below the top, water, surcharge", basement(9*ft, 8.5*ft, 60*pcf), func(w *calc.Input) {
		w.Brace, w.Soil.Saturated = 99*in, 130*pcf
		w.Water = calc.Water{Standing: true, Level: 2 * ft}
		w.Surcharge = calc.Surcharge{Dead: 50 * psf, Live: 100 * psf}
	})
	change("slab above the footing", usual, func(w *calc.Input) { w.Foot.SlabBase = 20 * in })
	load := calc.Axial{Dead: 1000 * plf, Live: 500 * plf}
	change("load toward the soil", usual, func(w *calc.Input) { w.Axial = load; w.Axial.Eccentricity = -2 * in })
	change("load toward the house", usual, func(w *calc.Input) { w.Axial = load; w.Axial.Eccentricity = 2 * in })
	change("high load", usual, func(w *calc.Input) {
		w.Axial = calc.Axial{Dead: 8000 * plf, Live: 4000 * plf}
		w.Vertical = barsAt(5, 12*in, 0)
	})
	change("80 ksi", usual, func(w *calc.Input) {
		w.Material = calc.Material{Fc: 4000 * units.PSI, Fy: 80 * units.KSI}
		w.Vertical = barsAt(5, 12*in, 0)
	})
	change("40 ksi", usual, func(w *calc.Input) { w.Material.Fy = 40 * units.KSI; w.Vertical = barsAt(5, 12*in, 0) })
	change("24 in wall", usual, func(w *calc.Input) { w.Thickness = 24 * in })
	change("bars on the soil side", usual, func(w *calc.Input) {
		w.Vertical = barsAt(4, 16*in, 0)
		w.Vertical.Face = calc.FaceA
	})
	change("bars at the middle", usual, func(w *calc.Input) {
		w.Vertical = barsAt(4, 16*in, 0)
		w.Vertical.Face = calc.Centre
	})
	change("toe only", freeWall(), func(w *calc.Input) { w.Footing.Width, w.Footing.Toe = 5*ft, 52*in })
	change("slab in front", freeWall(), func(w *calc.Input) {
		w.Footing.Friction = 0.30
		w.Foot = calc.Foot{Held: calc.SlabTight, SlabThickness: 4 * in}
	})
	change("low side may go", bothWall(), func(w *calc.Input) { w.LowSideMayGo = true })
	joint := func(w *calc.Input) {
		w.Foot, w.Footing = calc.Foot{}, footing
		w.Dowels = calc.Dowels{Fixed: true, Size: 4, Spacing: 12 * in, Up: 24 * in, Position: calc.Centre}
	}
	change("joint as cast", usual, joint)
	change("joint roughened", usual, func(w *calc.Input) { joint(w); w.Roughened = true })
	change("shallow footing", usual, func(w *calc.Input) { joint(w); w.Footing.Thickness = 8 * in })
	change("cracked deflection", basement(10*ft, 10*ft, 60*pcf), func(w *calc.Input) { w.Vertical = barsAt(5, 12*in, 0) })
	return m
}
