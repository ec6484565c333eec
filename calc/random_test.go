package calc_test

import (
	"math/rand/v2"

	"standingbeam/calc"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// random makes walls from a fixed seed, so that a fault comes back.
type random struct{ *rand.Rand }

func seeded(seed uint64) random { return random{rand.New(rand.NewPCG(seed, 1))} }

// in returns a whole number of steps between lo and hi.
func (r random) in(lo, hi, step float64) float64 {
	return lo + step*float64(r.IntN(int((hi-lo)/step)+1))
}

// inches is a length between lo and hi: whole inches, sixteenths, or what
// somebody measured in centimetres.
func (r random) inches(lo, hi float64) units.Length {
	switch r.IntN(3) {
	case 0:
		return units.Length(r.in(lo, hi, 1.0/16))
	case 1:
		return min(units.Length(hi), units.Length(r.in(lo*2.54, hi*2.54, 1))*10*units.Millimetre)
	}
	return units.Length(r.in(lo, hi, 1))
}

// upTo is a length from 0 to most.
func (r random) upTo(most units.Length) units.Length { return r.inches(0, most.Inches()) }

// odds is true once in n.
func (r random) odds(n int) bool { return r.IntN(n) == 0 }

func pick[T any](r random, from ...T) T { return from[r.IntN(len(from))] }

// wall is any wall within the ranges of the inputs, of any condition.
func (r random) wall() calc.Input {
	w := calc.Input{
		Condition: pick(r, calc.BracedTop, calc.FreeTop, calc.TiedToSlab, calc.SoilBothSides),
		TopHeld:   r.odds(2),
		Height:    r.inches(24, 240), Thickness: units.Length(r.in(5.5, 24, 0.5)),
		Soil:     r.soil(),
		Material: calc.Material{Fc: units.Stress(r.in(2500, 8000, 500)), Fy: units.Stress(pick(r, 40000.0, 60000, 80000))},
		Rulebook: pick(r, calc.RulebookUnset, calc.Engineered, calc.Residential),
		Floor:    pick(r, calc.FloorUnset, calc.FloorFlexible, calc.FloorRigid),
		Seismic:  pick(r, "", "A", "B", "C", "D0", "D1", "D2"),
	}
	w.GradeA = r.upTo(w.Height)
	if r.odds(4) {
		w.GradeA = w.Height
	}
	if w.Condition == calc.SoilBothSides || r.odds(6) {
		w.GradeB = r.upTo(w.GradeA)
	}
	r.holds(&w)
	r.loads(&w)
	r.bars(&w)
	return w
}

func (r random) soil() calc.Soil {
	s := calc.Soil{Swells: pick(r, calc.Unanswered, calc.No, calc.No)}
	switch r.IntN(4) {
	case 0:
		s.Basis, s.Class = calc.SoilClass, pick(r, soil.Classes()[:12]...)
	case 1:
		s.Basis, s.Fluid = calc.SoilFluid, units.UnitWeight(r.in(20, 110, 5))*pcf
	case 2:
		s.Basis, s.Friction, s.Weight = calc.SoilFriction, units.Angle(r.in(20, 40, 1))*units.Degree, units.UnitWeight(r.in(90, 130, 5))*pcf
	}
	if s.Weight == 0 && r.odds(2) {
		s.Weight = units.UnitWeight(r.in(100, 130, 5)) * pcf
	}
	return s
}

// holds gives what holds the wall: foot, footing, tie, what stands today.
func (r random) holds(w *calc.Input) {
	w.Foot.Held = pick(r, calc.GroundOnly, calc.SlabTight, calc.SlabLater)
	if w.Foot.Held != calc.GroundOnly && r.odds(3) {
		w.Foot.SlabThickness = units.Length(r.in(3, 8, 1))
		w.Foot.SlabBase = units.Length(r.in(0, w.Height.Inches()/4, 1))
	}
	w.Foot.Fixed = r.odds(6)
	if !r.odds(5) {
		f := calc.Footing{Given: true, Width: w.Thickness + units.Length(r.in(0, 120, 2)), Thickness: units.Length(r.in(8, 24, 1)), NoToe: r.odds(2)}
		if !f.NoToe {
			f.Toe = r.upTo(f.Width - w.Thickness)
		}
		if r.odds(2) {
			f.Bearing, f.Friction = units.Stress(r.in(1000, 6000, 500))*psf, r.in(0.25, 0.6, 0.05)
		}
		f.Passive = r.odds(6)
		w.Footing = f
	}
	if w.Condition == calc.TiedToSlab {
		w.Tie = calc.Tie{SlabThickness: units.Length(r.in(4, 8, 1)), SlabLength: units.Length(r.in(0, 60, 5)) * ft,
			Anchor: pick(r, calc.SlabDrag, calc.OppositeWall, calc.TieStrength), Before: pick(r, calc.StandsAlone, calc.Rakers),
			Strength: pick(r, 0, 500*plf, 5000*plf)}
	}
	if r.odds(2) {
		w.FloorEdge = units.ForcePerLength(r.in(100, 3000, 100)) * plf
	}
	if r.odds(4) && w.Height > 60*in && w.Foot.SlabBase == 0 {
		w.Brace = w.Height - units.Length(r.in(1, 20, 1))
	}
	if r.odds(2) {
		w.Today = calc.Today{Given: true, Floor: r.odds(2), Slab: r.odds(2), Concrete: pick(r, 0, 500*units.PSI, 1500*units.PSI, 2500*units.PSI, 8000*units.PSI)}
	}
}

// loads gives surcharge, water and the load on the wall.
func (r random) loads(w *calc.Input) {
	if r.odds(3) {
		w.Surcharge = calc.Surcharge{Dead: units.Stress(r.in(0, 200, 25)) * psf, Live: units.Stress(r.in(0, 200, 20)) * psf}
	}
	if r.odds(4) {
		w.Water = calc.Water{Standing: true, Level: r.upTo(w.GradeA)}
	}
	if r.odds(3) {
		most := w.Thickness.Inches() / 2
		w.Axial = calc.Axial{Dead: units.ForcePerLength(r.in(0, 4000, 100)) * plf, Live: units.ForcePerLength(r.in(0, 4000, 100)) * plf,
			Eccentricity: pick(r, 0, 0, units.Length(most/2), units.Length(-most/2))}
	}
	w.LowSideMayGo = r.odds(4)
}

// bars gives covers and, now and then, bars and dowels fixed by the person.
func (r random) bars(w *calc.Input) {
	if r.odds(3) {
		w.Material.CoverA, w.Material.CoverB = units.Length(r.in(0.75, 2.5, 0.25)), units.Length(r.in(0.75, 2.5, 0.25))
	}
	if r.odds(4) {
		w.Vertical = calc.Bars{Fixed: true, Size: 3 + r.IntN(9), Spacing: units.Length(r.in(4, 48, 2)),
			Face: pick(r, calc.FaceUnset, calc.FaceA, calc.FaceB, calc.Centre)}
	}
	if r.odds(8) {
		w.Horizontal = calc.Bars{Fixed: true, Size: 3 + r.IntN(4), Spacing: units.Length(r.in(6, 48, 2))}
	}
	if r.odds(5) {
		w.Dowels = calc.Dowels{Fixed: true, None: r.odds(4), Size: 3 + r.IntN(6), Spacing: units.Length(r.in(6, 48, 2)),
			Up: units.Length(r.in(6, 24, 2)), Position: pick(r, calc.FaceUnset, calc.FaceA, calc.FaceB, calc.Centre)}
	}
	w.Roughened, w.FourThirds = r.odds(4), r.odds(6)
}

// walls calls each with n random walls that are within their ranges.
func walls(seed uint64, n int, each func(calc.Input, calc.Result)) (made int) {
	r := seeded(seed)
	for range n {
		w := r.wall()
		if a, err := calc.Design(w); err == nil {
			made++
			each(w, a)
		}
	}
	return made
}
