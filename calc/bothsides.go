package calc

import (
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// answerBothFree designs a wall with soil on both sides and nothing at its
// top: a cantilever under the difference of the two pressures.
func (w *wall) answerBothFree() {
	w.answerFree(ground{a: w.GradeA, b: w.GradeB, state: soil.Active, q: w.Surcharge, low: w.lowFactor(), dead: w.Axial.Dead}, Finished)
	w.assume("free-top-needs-bars")
}

// answerFilling answers how such a wall may be filled, with the bars that are
// listed: it comes after the rulebook is chosen.
func (w *wall) answerFilling() {
	if w.Condition != SoilBothSides || len(w.r.Stages) == 0 {
		return
	}
	w.fillingChart()
	w.askLevels(!w.TopHeld && w.r.Governs != Residential)
}

// fillingChart finds, for each level of the low side, how high the high side
// may go while nothing holds the top: the moment at the joint follows h₁³ −
// h₂³, so that one greatest difference would be unsafe.
func (w *wall) fillingChart() {
	if !w.Footing.Given {
		return
	}
	fc := w.todayFc()
	w.lowSideFirst(fc)
	for low := units.Length(0); ; low += units.Foot {
		if low > w.GradeB {
			low = w.GradeB
		}
		high, governs := w.highest(low, w.GradeA, fc)
		w.r.Chart = append(w.r.Chart, LevelPair{Low: low, High: high, Governs: governs})
		if low >= w.GradeB {
			return
		}
	}
}

// lowSideFirst finds how high the low side may be filled while the high side
// is empty: the wall is then pushed the other way, with tension on B, toe
// and heel exchanged and plain.
func (w *wall) lowSideFirst(fc units.Stress) {
	if w.GradeB <= 0 {
		return
	}
	m := *w
	m.alone, m.r = nil, &Result{Plain: w.r.Plain}
	m.GradeA, m.GradeB = w.GradeB, w.GradeA
	m.Surcharge, m.Water = Surcharge{}, Water{}
	m.Material.CoverA, m.Material.CoverB = w.Material.CoverB, w.Material.CoverA
	m.Footing.Toe = w.heel()
	// A slab on the open side holds no wall that leans from it, and bars across the
	// footing then lie on its pressed side.
	m.Foot, m.Footing.Passive = Foot{}, false
	m.heelBars, m.toeBars = across{}, across{}
	m.vert.face, m.vertA.face, m.dowel.face = opposite(w.vert.face), opposite(w.vertA.face), opposite(w.dowel.face)
	level, governs := m.highest(0, w.GradeB, fc)
	w.r.LowFirst = LevelPair{Low: level, Governs: governs}
	if level < w.GradeB {
		w.caution("low-side-not-first", units.Of(level, units.Level))
	}
}

func opposite(f Face) Face {
	switch f {
	case FaceA:
		return FaceB
	case FaceB:
		return FaceA
	}
	return f
}

// askLevels asks whether the final difference of levels stands while nothing
// holds the top. It decides for a wall whose top stays free; a wall that the
// floor will hold is filled on after the floor is on.
func (w *wall) askLevels(decides bool) {
	demand := units.Of(w.GradeA, units.Level)
	if len(w.r.Chart) == 0 {
		w.leaveOpen("level-difference", Filling, demand, "R404.1.7", note("needs-footing"), decidesIf(decides), by(w.r.Editions[Residential]))
		return
	}
	last := w.r.Chart[len(w.r.Chart)-1]
	opts := []option{decidesIf(decides), service}
	if last.High < w.GradeA {
		opts = append(opts, because(noteText("levels-governed", last.Governs)))
	}
	w.ask("level-difference", Filling, demand, units.Of(last.High, units.Level), "5.3.8", opts...)
}
