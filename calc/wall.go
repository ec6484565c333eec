package calc

import (
	"standingbeam/calc/codes"
	"standingbeam/calc/concrete"
	"standingbeam/calc/prescriptive"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// wall is one wall while it is being answered: the input with what was assumed
// filled in, the rules, and the result that is being built.
type wall struct {
	Input
	r   *Result
	aci codes.ACI
	lf  codes.Factors
	ibc codes.IBC

	given             Input  // before anything was taken for it
	built             *built // the wall as it is built, when only its strength is asked
	heelBars, toeBars across

	cell  prescriptive.Cell // of the residential tables
	soils [2]soilState      // at rest and active, filled on first use
	alone *standing         // how high it stands with nothing at its top

	room         *room        // for the free bodies
	mostFriction units.Stress // that nobody has measured gives at most

	quiet    bool         // no working of the demands is wanted
	reckoned []*reckoning // their sums, each done once

	// plain strip or reinforced strip of the governing engineered answer
	vert    barSet // verticals; size 0 = none (plain)
	vertA   barSet // verticals on the soil side, for a stage or the other moment
	dowel   dowelSet
	plainOK bool
	pulled  Face // where an unbraced stem is in tension
}

// built is what is in the wall whatever the answer: for the question with
// today's concrete.
type built struct {
	plain             bool
	vert, vertA       barSet
	dowel             dowelSet
	heelBars, toeBars across
}

// asBuilt is the wall of this answer as it will be built.
func (w *wall) asBuilt() *built {
	return &built{plain: w.r.Plain, vert: w.vert, vertA: w.vertA, dowel: w.dowel, heelBars: w.heelBars, toeBars: w.toeBars}
}

func note(id string, args ...units.Quantity) Note { return Note{ID: id, Args: args} }

func noteText(id, text string) Note { return Note{ID: id, Text: text} }

func (w *wall) assume(id string, args ...units.Quantity) {
	w.r.Assumptions = append(w.r.Assumptions, note(id, args...))
}

func (w *wall) warn(id string, args ...units.Quantity) {
	w.r.Warnings = append(w.r.Warnings, note(id, args...))
}

func (w *wall) engineer(id string, args ...units.Quantity) {
	w.r.Engineer = append(w.r.Engineer, note(id, args...))
}

func (w *wall) caution(id string, args ...units.Quantity) {
	w.r.Cautions = append(w.r.Cautions, note(id, args...))
}

// fill puts the assumed value where nothing was said, and says so.
func (w *wall) fill() {
	// A limit may be passed by the rounding of another unit.
	w.GradeA, w.Brace = min(w.GradeA, w.Height), min(w.Brace, w.Height)
	w.GradeB, w.Water.Level = min(w.GradeB, w.GradeA), min(w.Water.Level, w.GradeA)
	s := &w.Soil
	if s.Weight == 0 {
		s.Weight = 120 * units.PCF
		if w.Surcharge != (Surcharge{}) || w.Water.Standing || w.Footing.Given || s.Basis != SoilFluid {
			w.assume("weight-assumed", units.Of(s.Weight, units.Weight))
		}
	}
	if s.Saturated == 0 {
		s.Saturated = max(s.Weight, 130*units.PCF)
		if w.Water.Standing {
			w.assume("saturated-assumed", units.Of(s.Saturated, units.Weight))
		}
	}
	if w.Brace == 0 || w.Condition == FreeTop {
		w.Brace = w.Height
	}
	if w.Foot.Held != GroundOnly && w.Foot.SlabThickness == 0 {
		w.Foot.SlabThickness = 4 * units.Inch
		w.assume("slab-thickness-assumed", units.Of(w.Foot.SlabThickness, units.Size))
	}
	if !w.Water.Standing && w.GradeA > 0 {
		w.assume("drained")
	}
	w.fillFooting()
	w.fillTie()
	if w.Seismic == "" {
		w.assume("seismic-assumed")
	}
	if len(w.Sizes) == 0 {
		w.Sizes = defaultSizes
	}
}

var defaultSizes = []int{4, 5, 6, 7, 8}

// fillFooting takes presumptive bearing and friction where they were not
// given: the least values of IBC 2021 Table 1806.2. Sand rubs with 0.25 of the
// load, clay clings with 130 psf of the contact: the lesser of the two counts.
func (w *wall) fillFooting() {
	f := &w.Footing
	if !f.Given {
		return
	}
	if f.NoToe {
		f.Toe = (f.Width - w.Thickness) / 2
	}
	if f.Bearing == 0 {
		f.Bearing = 1500 * units.PSF
		w.assume("bearing-assumed", units.Of(f.Bearing, units.Pressure))
	}
	if f.Friction == 0 {
		f.Friction, w.mostFriction = 0.25, 130*units.PSF
		w.assume("friction-assumed", units.Of(f.Friction, units.None), units.Of(w.mostFriction, units.Pressure))
	}
}

func (w *wall) fillTie() {
	t := &w.Tie
	if w.Condition != TiedToSlab {
		return
	}
	if t.Friction == 0 {
		t.Friction = 0.35
		w.assume("slab-friction-assumed", units.Of(t.Friction, units.None))
	}
	if own := units.Stress(t.SlabThickness) * units.Stress(concreteWeight); w.Surcharge.Dead < own {
		w.warn("slab-weight-not-in-surcharge", units.Of(own, units.Pressure))
	}
}

// concreteWeight is the weight of reinforced concrete, 150 pcf (common
// practice; ACI 318-19 19.2.2.1 allows 135 to 160 pcf for normalweight Ec).
const concreteWeight = 150 * units.PCF

// heel is the footing's projection beyond face A; what rounding leaves is none.
func (w *wall) heel() units.Length {
	if l := w.Footing.Width - w.Footing.Toe - w.Thickness; l > 1e-6 {
		return l
	}
	return 0
}

// fluid returns the equivalent fluid pressure of the moist soil, its
// coefficient K to the vertical stress, and by what it was found.
func (w *wall) fluid(st soil.State) (g units.UnitWeight, k float64, basis Note) {
	s := w.Soil
	switch s.Basis {
	case SoilFluid:
		g, basis = s.Fluid, note("basis-given", units.Of(s.Fluid, units.Weight))
	case SoilClass:
		g, _ = soil.ClassFluid(s.Class, st)
		basis = noteText("basis-class-"+stateWord(st), s.Class)
	case SoilFriction:
		k = soil.AtRestCoefficient(s.Friction)
		if st == soil.Active {
			k = soil.ActiveCoefficient(s.Friction)
		}
		return units.UnitWeight(k) * s.Weight, k, note("basis-friction-"+stateWord(st), units.Of(s.Friction, units.Degrees))
	default:
		g = soil.WorstAtRest()
		if st == soil.Active {
			g = soil.WorstActive()
		}
		basis = note("basis-unknown-"+stateWord(st), units.Of(g, units.Weight))
	}
	return g, float64(g / s.Weight), basis
}

// soilState is the soil's coefficient and the words for it, of one state.
type soilState struct {
	known            bool
	k                float64
	basis, surcharge Note
}

// soilOf returns the soil of a state, found once.
func (w *wall) soilOf(st soil.State) *soilState {
	s := &w.soils[st]
	if !s.known {
		s.known = true
		_, s.k, s.basis = w.fluid(st)
		s.surcharge = note("basis-surcharge", units.Of(s.k, units.None))
	}
	return s
}

func stateWord(st soil.State) string {
	if st == soil.Active {
		return "active"
	}
	return "at-rest"
}

// heldState is the soil state behind a wall held at its top: at rest, or
// active where the wall reaches no more than 8 ft below grade under a flexible
// floor (IBC 2021 1610.1, exception). A slab is never flexible.
func (w *wall) heldState() soil.State {
	if w.Floor == FloorFlexible && w.Soil.Basis != SoilUnknown && w.Condition != TiedToSlab && w.GradeA <= 8*units.Foot {
		return soil.Active
	}
	return soil.AtRest
}

// blocks appends the pressure of both sides down to level floor, for grades a
// and b, to out. Side A comes first.
func (w *wall) blocks(out []soil.Block, st soil.State, a, b, floor units.Length, q Surcharge) []soil.Block {
	k := w.soilOf(st).k
	ga := soil.Ground{Grade: a, Floor: floor, Moist: w.Soil.Weight, Saturated: w.Soil.Saturated, K: k,
		Wet: w.Water.Standing, Water: w.Water.Level, Dead: q.Dead, Live: q.Live, Side: 'a'}
	out = soil.Append(out, ga)
	return soil.Append(out, soil.Ground{Grade: b, Floor: floor, Moist: w.Soil.Weight, Saturated: w.Soil.Saturated, K: k, Side: 'b'})
}

// pushes are the blocks with their load factors, 1.6 for side A and low for
// side B, and by what each was found.
func (w *wall) pushes(st soil.State, a, b, floor units.Length, q Surcharge, low float64) []Push {
	ground := w.soilOf(st)
	var buf [6]soil.Block
	blocks := w.blocks(buf[:0], st, a, b, floor, q)
	out := make([]Push, 0, len(blocks))
	for _, bl := range blocks {
		p := Push{Block: bl, Factor: w.lf.Earth, Basis: ground.basis}
		if bl.Side == 'b' {
			p.Factor = low
		}
		switch bl.Cause {
		case soil.Water:
			p.Basis = note("basis-water")
		case soil.SurchargeDead, soil.SurchargeLive:
			p.Basis = ground.surcharge
		}
		out = append(out, p)
	}
	return out
}

// stiffness returns Ec Ig of the uncracked strip.
func (w *wall) stiffness() float64 {
	h := w.Thickness.Inches()
	return concrete.ModulusOfElasticity(w.Material.Fc).PSI() * h * h * h / 12
}
