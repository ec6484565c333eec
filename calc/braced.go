package calc

import "standingbeam/calc/units"

// answerBraced designs a wall held at its top by the floor, with or without
// soil on the other side.
func (w *wall) answerBraced() {
	st := w.heldState()
	low := w.lowFactor()
	couple, coupleU := w.spanCouple()
	supports := w.heldSupports(w.Brace)
	s, ok := w.analyse(Finished, w.pushes(st, w.GradeA, w.GradeB, 0, w.Surcharge, low), supports, couple, coupleU)
	if !ok {
		return
	}
	w.layout(w.Brace)
	w.answerHeld(s, supports, nil, nil)
	w.checkDowels(!w.r.Plain)
	h := w.heldReactions(s.Pushes, supports)
	w.checkFloorEdge(h)
	w.checkFoot(h)
	w.checkHorizontals()
	w.checkDeflection(s)
	w.checkStripBase(s)
	w.assume("floor-whole-length")
	if w.Floor == FloorUnset && w.Soil.Basis != SoilFluid {
		w.assume("floor-rigid")
	}
}

// layout records the geometry for the picture.
func (w *wall) layout(brace units.Length) {
	l := &w.r.Layout
	l.Brace, l.FootLevel = brace, w.footLevel()
	l.Friction = w.Footing.Friction
	if w.Foot.Held != GroundOnly {
		l.SlabBase, l.SlabThick = w.Foot.SlabBase, w.Foot.SlabThickness
	}
	if w.Footing.Given {
		l.Toe, l.Heel = w.Footing.Toe, w.heel()
	}
}
