package sheet

import (
	"math"
	"slices"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Sizes of the diagrams on paper, in points.
const (
	diagramHeight = 132.0
	diagramReach  = 46.0 // of a curve to each side of its axis
	diagramLabels = 54.0 // from the axis to its numbers
)

// reading is one number of a diagram at a level.
type reading struct {
	level, value float64
	words        string
}

// diagrams draws push, shear and bending of a stage beside each other, on
// paper: nothing in them is in true size but the levels.
func (s *scene) diagrams(st *calc.StageResult, width float64) *drawing {
	v := &figure{name: "diagrams", scale: 1}
	each := width * 72 / 3
	up := diagramHeight / s.h
	push, pushSaid := s.pushCurve(st)
	shear, shearSaid := s.shearCurve(st)
	bend, bendSaid := s.bendCurve(st)
	for i, d := range []struct {
		id    string
		curve []reading
		said  []reading
	}{{"push", push, pushSaid}, {"shear", shear, shearSaid}, {"bending", bend, bendSaid}} {
		x := v.pt(float64(i)*each + diagramReach + 6)
		s.curve(v, x, v.pt(up), d.curve, d.said)
		v.say(text{at: point{x - v.pt(diagramReach+6), v.pt(diagramHeight + 18)}, words: s.sp.Word("sheet.diagram." + d.id), h: 1, v: 1, bold: true})
		s.levelMarks(v, x, v.pt(up), st)
	}
	b := v.bounds()
	d := &drawing{width: width, height: b.y1 - b.y0 + 0.06, views: []*figure{v}}
	v.origin = point{0, b.y1 + 0.03}
	return d
}

// levelMarks draws the axis and what supports the wall.
func (s *scene) levelMarks(v *figure, x, up float64, st *calc.StageResult) {
	v.line(concrete, heavy, point{x, 0}, point{x, s.h * up})
	for _, r := range st.Reactions {
		y := r.At.Inches() * up
		v.area(dimensions, thin, paper, point{x, y}, point{x - v.pt(4), y - v.pt(3.4)}, point{x - v.pt(4), y + v.pt(3.4)})
	}
}

// curve draws one diagram about an upright axis: positive to the right.
func (s *scene) curve(v *figure, x, up float64, curve, said []reading) {
	most := 0.0
	for _, r := range curve {
		most = math.Max(most, math.Abs(r.value))
	}
	if most == 0 {
		return
	}
	across := v.pt(diagramReach) / most
	at := func(r reading) point { return point{x + r.value*across, r.level * up} }
	outline := make([]point, 0, len(curve)+2)
	outline = append(outline, point{x, curve[0].level * up})
	for _, r := range curve {
		outline = append(outline, at(r))
	}
	outline = append(outline, point{x, curve[len(curve)-1].level * up})
	v.line(lettering, 1.1, outline...)
	s.shade(v, x, up, across, curve)
	notes := make([]callout, 0, len(said))
	for _, r := range said {
		notes = append(notes, callout{lines: []string{r.words, s.sp.Length(inches(r.level))}, target: at(r)})
	}
	v.column(x+v.pt(diagramLabels), -v.pt(12), s.h*up+v.pt(12), notes, nil)
}

// shade hatches a diagram with level strokes.
func (s *scene) shade(v *figure, x, up, across float64, curve []reading) {
	step := v.pt(7) / up
	for y := step / 2; y < s.h; y += step {
		for i := 0; i+1 < len(curve); i++ {
			a, b := curve[i], curve[i+1]
			if y < a.level || y >= b.level || b.level == a.level {
				continue
			}
			value := a.value + (b.value-a.value)*(y-a.level)/(b.level-a.level)
			if math.Abs(value*across) > v.pt(1) {
				v.line(hatching, thin, point{x, y * up}, point{x + value*across, y * up})
			}
		}
	}
}

// pushCurve is the net service pressure, from side A positive.
func (s *scene) pushCurve(st *calc.StageResult) (curve, said []reading) {
	levels := map[float64]bool{0: true, s.h: true}
	for _, p := range st.Pushes {
		levels[p.From.Inches()], levels[p.To.Inches()] = true, true
	}
	sum := func(y float64, above bool) (q float64) {
		for _, p := range st.Pushes {
			from, to := p.From.Inches(), p.To.Inches()
			if y > from || y < to || (above && y >= from) || (!above && y <= to) || from <= to {
				continue
			}
			v := p.Top.PSI() + (p.Bottom-p.Top).PSI()*(from-y)/(from-to)
			if p.Side == 'b' {
				v = -v
			}
			q += v
		}
		return q
	}
	for _, y := range sorted(levels) {
		if y < 0 || y > s.h {
			continue
		}
		below, over := sum(y, false), sum(y, true)
		for i, q := range []float64{below, over} {
			if i == 0 && y == 0 || i == 1 && y == s.h {
				continue
			}
			r := reading{level: y, value: q, words: s.sp.Quantity(units.Of(units.Stress(q), units.Pressure))}
			curve = append(curve, r)
			if math.Abs(q) > 1e-9 && (i == 1 || math.Abs(q-over) > 1e-6) {
				said = append(said, r)
			}
		}
	}
	return curve, said
}

func sorted(set map[float64]bool) []float64 {
	out := make([]float64, 0, len(set))
	for y := range set {
		out = append(out, y)
	}
	slices.Sort(out)
	return out
}

// stations are the levels at which a curve is drawn.
func (s *scene) stations(st *calc.StageResult) []float64 {
	set := map[float64]bool{0: true, s.h: true}
	for _, y := range st.Factored.Breaks() {
		set[y.Inches()] = true
	}
	for i := range 48 {
		set[s.h*float64(i)/48] = true
	}
	for _, m := range st.Moments {
		set[m.At.Inches()] = true
	}
	return sorted(set)
}

func (s *scene) shearCurve(st *calc.StageResult) (curve, said []reading) {
	for _, y := range s.stations(st) {
		below, above := st.Factored.Shear(inches(y))
		for _, v := range []units.ForcePerLength{below, above} {
			curve = append(curve, reading{level: y, value: float64(v)})
		}
	}
	word := func(y float64, v units.ForcePerLength) {
		if math.Abs(float64(v)) > 1e-9 {
			said = append(said, reading{y, float64(v), s.sp.Demand(units.Of(max(v, -v), units.LineForce))})
		}
	}
	for _, r := range st.Reactions {
		below, above := st.Factored.Shear(r.At)
		word(r.At.Inches(), below)
		if math.Abs(float64(above-below)) > 1e-9 {
			word(r.At.Inches(), above)
		}
	}
	return curve, said
}

func (s *scene) bendCurve(st *calc.StageResult) (curve, said []reading) {
	for _, y := range s.stations(st) {
		below, above := st.Factored.MomentLimits(inches(y))
		curve = append(curve, reading{level: y, value: float64(below)}, reading{level: y, value: float64(above)})
	}
	for _, m := range st.Moments {
		v := float64(m.Factored)
		if m.TensionFace == calc.FaceA {
			v = -v
		}
		if math.Abs(v) > 1e-9 {
			said = append(said, reading{m.At.Inches(), v, s.sp.Demand(units.Of(m.Factored, units.LineMoment))})
		}
	}
	return curve, said
}
