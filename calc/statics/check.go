package statics

import "math"

// slack is how far, as a part of the height, a level may lie outside the strip
// by rounding alone.
const slack = 1e-9

// check returns the first fault of the strip's description.
func (s *Strip) check() error {
	top := s.Top.Inches()
	if !positive(top) {
		return Error{BadTop, -1}
	}
	if !positive(s.EI) {
		return Error{BadEI, -1}
	}
	inside := func(y float64) bool { return y >= -slack*top && y <= top*(1+slack) }
	for i, l := range s.Loads {
		if !(inside(l.From.Inches()) && inside(l.To.Inches()) && l.From < l.To &&
			finite(l.AtFrom.PSI()) && finite(l.AtTo.PSI())) {
			return Error{BadLoad, i}
		}
	}
	for i, p := range s.Points {
		if !(inside(p.At.Inches()) && finite(float64(p.Force))) {
			return Error{BadPoint, i}
		}
	}
	for i, c := range s.Couples {
		if !(inside(c.At.Inches()) && finite(float64(c.M))) {
			return Error{BadCouple, i}
		}
	}
	for i, p := range s.Supports {
		k := p.Stiffness.PSI()
		ok := inside(p.At.Inches()) && p.Kind <= Spring
		if p.Kind == Spring {
			ok = ok && k >= 0 && finite(k)
		}
		for _, q := range s.Supports[:i] {
			ok = ok && math.Abs(float64(p.At-q.At)) > slack*top
		}
		if !ok {
			return Error{BadSupport, i}
		}
	}
	return nil
}

func finite(v float64) bool   { return math.Abs(v) <= math.MaxFloat64 }
func positive(v float64) bool { return v > 0 && finite(v) }
