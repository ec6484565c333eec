// Package calc answers one foundation wall: what pushes on it, what holds it,
// where it bends, which bars go where, whether it stands, and whether it may
// be filled today.
//
// [Design] is the entry, and [Explain] the same with every working in full.
// They are pure functions of [Input]: no clock, no globals that change, no
// panics. Strength is by ACI 318-19 (plain concrete by
// chapter 14; reinforced by 7, 11, 13, 22, 25) with the load factors of ASCE
// 7-16; stability by IBC 2021; the residential tables are those of IRC 2021.
package calc

import (
	"errors"

	"standingbeam/calc/codes"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// Design answers one wall. The error, when not nil, joins a [*RangeError] for
// every input outside its range, and the result is then empty. A check that
// fails is part of the result.
//
// The workings of the checks show the strengths. [Explain] shows the demands as
// well.
func Design(in Input) (Result, error) { return design(in, true) }

// Explain answers one wall as [Design] does, and its workings also show how
// what is asked for was reached: the ground's pressure, the reactions, the
// moment and the shear of the section.
func Explain(in Input) (Result, error) { return design(in, false) }

func design(in Input, quiet bool) (Result, error) {
	if bad := in.Validate(); len(bad) > 0 {
		errs := make([]error, len(bad))
		for i, b := range bad {
			errs[i] = b
		}
		return Result{}, errors.Join(errs...)
	}
	w := newWall(in, nil)
	w.quiet = quiet
	return w.answer(true), nil
}

// answer answers a wall on the way to another one's answer.
func answer(in Input, as *built) Result { return newWall(in, as).answer(false) }

func newWall(in Input, as *built) *wall {
	r := Result{Editions: map[Rulebook]string{Engineered: codes.ACI318_19().Name, Residential: codes.IRC2021().Name}}
	r.Stages = make([]StageResult, 0, 4)
	r.Checks = make([]Check, 0, 36)
	return &wall{Input: in, given: in, room: newRoom(), r: &r, aci: codes.ACI318_19(), lf: codes.ASCE7_16(), ibc: codes.IBC2021(), built: as, quiet: true}
}

// answer fills in the result. spread says whether the classes of an unknown
// soil are run as well.
func (w *wall) answer(spread bool) Result {
	r := w.r
	w.fill()
	r.Input = w.Input
	if w.stop() {
		return *r
	}
	w.askSwelling()
	w.tableAnswer()
	switch {
	case w.Condition == FreeTop:
		w.answerFree(ground{a: w.GradeA, state: soil.Active, q: w.Surcharge, dead: w.Axial.Dead}, Finished)
	case w.Condition == TiedToSlab:
		w.answerTied()
	case w.Condition == SoilBothSides && !w.TopHeld:
		w.answerBothFree()
	default:
		w.answerBraced()
	}
	w.askAtRest()
	w.chooseRulebook()
	w.answerFilling()
	w.checkClearance()
	w.listBars()
	w.band()
	w.askSeismic()
	w.complete()
	if w.built == nil {
		w.unbraced()
		w.today()
	}
	if spread && w.Soil.Basis == SoilUnknown {
		w.spread()
	}
	r.Verdict = verdict(r.Checks)
	r.Input = w.Input
	return *r
}

// stop ends the answer without a number where the ground swells or is
// organic: no pressure can be given for it here.
func (w *wall) stop() bool {
	swells := w.Soil.Swells == Yes
	if w.Soil.Basis == SoilClass {
		if _, suitable := soil.ClassKnown(w.Soil.Class); !suitable {
			swells = true
		}
	}
	if !swells {
		return false
	}
	w.r.Stopped, w.r.Verdict, w.r.Governs = true, Open, Engineered
	w.leaveOpen("soil-suitable", Finished, units.Quantity{}, "1610.1", note("needs-geotechnical"), by(w.ibc.Name))
	w.engineer("soil-swells")
	w.caution("soil-swells")
	w.r.Today = TodayAnswer{Permission: DoNotFill, Because: []Note{note("soil-swells")}}
	return true
}

// askSwelling leaves the answer open while nobody has said that an unknown
// soil does not swell.
func (w *wall) askSwelling() {
	if w.Soil.Basis != SoilUnknown || w.Soil.Swells != Unanswered {
		return
	}
	w.leaveOpen("soil-suitable", Finished, units.Quantity{}, "1610.1", note("needs-swelling-answer"), by(w.ibc.Name))
}

// askAtRest leaves the answer open where an equivalent fluid was given as active
// for a wall that needs the pressure at rest (IBC 2021 1610.1). The residential
// tables have a basis of their own.
func (w *wall) askAtRest() {
	held := !w.freeStem() && w.heldState() == soil.AtRest
	if held && w.Soil.Basis == SoilFluid && w.Soil.Pressure == PressureActive {
		w.leaveOpen("soil-at-rest", Finished, units.Quantity{}, "1610.1", note("needs-at-rest"), by(w.ibc.Name))
	}
}

// askSeismic leaves the seismic increment of the earth pressure open: IBC 2021
// 1807.2.2 (and 1803.5.12 for foundation walls, from memory) asks for it in
// category D and above from 6 ft of backfill.
func (w *wall) askSeismic() {
	tables := w.r.Governs == Residential && w.r.Table.Inside // they have limits of their own
	if w.highSeismic() && w.GradeA > 6*units.Foot && !tables {
		w.leaveOpen("seismic-earth", Finished, units.Quantity{}, "1807.2.2", note("needs-seismic-earth"), by(w.ibc.Name))
		w.engineer("seismic-earth")
	}
}

// band is what the picture compares the curve with.
func (w *wall) band() {
	if len(w.r.Stages) == 0 {
		return
	}
	face := FaceB
	if m := w.governing().Moments; len(m) > 0 {
		face = m[0].TensionFace
	}
	b := Band{Face: face}
	if w.governing().held() {
		b.Plain = w.plainSection().DesignMoment(nil)
	}
	other := FaceA
	if face == FaceA {
		other = FaceB
	}
	if !w.vert.none() {
		b.Bars, b.BarsOther = w.capacity(face, 0, nil), w.capacity(other, 0, nil)
	}
	w.r.Band = b
}

// governing is the finished stage.
func (w *wall) governing() *StageResult {
	for i := range w.r.Stages {
		if w.r.Stages[i].Name == Finished {
			return &w.r.Stages[i]
		}
	}
	return &w.r.Stages[0]
}

// held reports whether the stage has two supports.
func (s *StageResult) held() bool { return len(s.Reactions) > 1 }

// spread runs the classes that an unknown soil may be: 30, 45 and 60 of the
// residential tables and the worst at-rest class.
func (w *wall) spread() {
	for _, g := range []units.UnitWeight{30 * units.PCF, 45 * units.PCF, 60 * units.PCF, soil.WorstAtRest()} {
		in := w.given
		in.Soil.Basis, in.Soil.Fluid, in.Rulebook = SoilFluid, g, Engineered
		r := answer(in, nil)
		s := Spread{Fluid: g, Plain: r.Plain, Possible: true, Table: r.Table}
		if len(r.Stages) > 0 && len(r.Stages[0].Moments) > 0 {
			s.Moment = r.Stages[0].Moments[0].Factored
		}
		for _, b := range r.Bars {
			if b.Role == VerticalBar {
				s.Size, s.Spacing = b.Size, b.Spacing
			}
		}
		for _, c := range r.Checks {
			if c.ID == "flexure" && c.Decides && c.State == Fails {
				s.Possible = false
			}
		}
		w.r.Spread = append(w.r.Spread, s)
	}
}
