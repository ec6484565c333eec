package view

import (
	"math/rand/v2"

	"standingbeam/calc"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// random makes walls within the ranges of the inputs, from a fixed seed.
type random struct{ *rand.Rand }

func seeded(seed uint64) random { return random{rand.New(rand.NewPCG(seed, 7))} }

// in is a whole number of steps between lo and hi.
func (r random) in(lo, hi, step float64) float64 {
	return lo + step*float64(r.IntN(int((hi-lo)/step)+1))
}

func (r random) inches(lo, hi float64) units.Length {
	if r.IntN(2) == 0 {
		return units.Length(r.in(lo, hi, 1))
	}
	return units.Length(r.in(lo*25.4, hi*25.4, 10)) * units.Millimetre
}

func (r random) odds(n int) bool { return r.IntN(n) == 0 }

func pick[T any](r random, from ...T) T { return from[r.IntN(len(from))] }

func (r random) plf(hi float64) units.ForcePerLength {
	return units.ForcePerLength(r.in(0, hi, 50)) * units.PLF
}

// wall is one wall of any condition.
func (r random) wall() calc.Input {
	w := calc.Input{
		Condition: pick(r, calc.BracedTop, calc.FreeTop, calc.TiedToSlab, calc.SoilBothSides), TopHeld: r.odds(2),
		Height: r.inches(36, 200), Thickness: units.Length(r.in(6, 16, 0.5)),
		Material: calc.Material{Fc: units.Stress(r.in(2500, 6000, 500)), Fy: units.Stress(pick(r, 40000.0, 60000, 60000, 80000))},
		Rulebook: pick(r, calc.Engineered, calc.Engineered, calc.Residential, calc.RulebookUnset),
		Floor:    pick(r, calc.FloorUnset, calc.FloorFlexible), Seismic: pick(r, "", "B", "D1"),
		Foot: calc.Foot{Held: pick(r, calc.GroundOnly, calc.SlabTight, calc.SlabTight, calc.SlabLater), Fixed: r.odds(6)},
	}
	w.GradeA = r.inches(12, w.Height.Inches())
	if w.Condition == calc.SoilBothSides || r.odds(8) {
		w.GradeB = r.inches(0, w.GradeA.Inches())
	}
	if w.Foot.Held != calc.GroundOnly && r.odds(5) {
		w.Foot.SlabThickness, w.Foot.SlabBase = 4*units.Inch, units.Length(r.in(0, 20, 1))
	}
	if w.Foot.SlabBase == 0 && w.Height > 60 && r.odds(6) {
		w.Brace = w.Height - units.Length(r.in(1, 18, 1))
	}
	r.ground(&w)
	r.footing(&w)
	r.steel(&w)
	return w
}

func (r random) ground(w *calc.Input) {
	w.Soil = calc.Soil{Swells: calc.No, Weight: units.UnitWeight(r.in(100, 130, 5)) * units.PCF}
	switch r.IntN(4) {
	case 0:
		w.Soil.Basis, w.Soil.Class = calc.SoilClass, pick(r, soil.Classes()[:10]...)
	case 1:
		w.Soil.Basis, w.Soil.Fluid = calc.SoilFluid, units.UnitWeight(r.in(30, 100, 5))*units.PCF
	case 2:
		w.Soil.Basis, w.Soil.Friction = calc.SoilFriction, units.Angle(r.in(22, 38, 1))*units.Degree
	}
	if r.odds(3) {
		w.Surcharge = calc.Surcharge{Dead: units.Stress(r.in(0, 150, 25)) * units.PSF, Live: units.Stress(r.in(0, 100, 20)) * units.PSF}
	}
	if r.odds(4) {
		w.Water = calc.Water{Standing: true, Level: r.inches(0, w.GradeA.Inches())}
	}
	if r.odds(3) {
		w.Axial = calc.Axial{Dead: r.plf(3000), Live: r.plf(3000), Eccentricity: units.Length(pick(r, 0, 1, -1, 2.5))}
	}
	w.LowSideMayGo = r.odds(5)
}

func (r random) footing(w *calc.Input) {
	if r.odds(6) {
		return
	}
	most := 72.0
	if w.Condition == calc.FreeTop {
		most = 130
	}
	f := calc.Footing{Given: true, Width: w.Thickness + units.Length(r.in(4, most, 2)), Thickness: units.Length(r.in(8, 20, 1)), NoToe: r.odds(3), Passive: r.odds(6)}
	if !f.NoToe {
		f.Toe = r.inches(0, (f.Width - w.Thickness).Inches())
	}
	if r.odds(2) {
		f.Bearing, f.Friction = units.Stress(r.in(1500, 4000, 250))*units.PSF, r.in(0.25, 0.5, 0.05)
	}
	w.Footing = f
	if w.Condition == calc.TiedToSlab {
		w.Tie = calc.Tie{SlabThickness: units.Length(r.in(4, 6, 1)), SlabLength: units.Length(r.in(0, 40, 4)) * units.Foot,
			Anchor: pick(r, calc.SlabDrag, calc.SlabDrag, calc.OppositeWall), Before: pick(r, calc.StandsAlone, calc.Rakers)}
	}
}

func (r random) steel(w *calc.Input) {
	if r.odds(3) {
		w.Material.CoverA, w.Material.CoverB = units.Length(r.in(1, 2.5, 0.25)), units.Length(r.in(0.75, 2.5, 0.25))
	}
	if r.odds(4) {
		w.Vertical = calc.Bars{Fixed: true, Size: 4 + r.IntN(5), Spacing: units.Length(r.in(6, 36, 2)), Face: pick(r, calc.FaceA, calc.FaceB, calc.Centre)}
	}
	if r.odds(4) {
		w.Dowels = calc.Dowels{Fixed: true, Size: 4 + r.IntN(3), Spacing: units.Length(r.in(8, 36, 2)), Up: units.Length(r.in(12, 30, 2)), Position: pick(r, calc.FaceA, calc.Centre)}
	}
	if r.odds(3) {
		w.FloorEdge = r.plf(3000)
	}
	w.Roughened, w.FourThirds = r.odds(4), r.odds(6)
}
