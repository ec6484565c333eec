package statics

import "math"

// slack is how far, as a part of the height, a level may lie outside the strip
// by rounding alone.
const slack = 1e-9

// far bounds the numbers of a strip, in inches and pounds: none of a wall comes
// near, and no polynomial of such numbers overflows.
const far = 1e30

// check returns the first fault of the strip's description.
func (s *Strip) check() error {
	top := s.Top.Inches()
	if !measure(top) {
		return Error{BadTop, -1}
	}
	if !measure(s.EI) {
		return Error{BadEI, -1}
	}
	inside := func(y float64) bool { return y >= -slack*top && y <= top*(1+slack) }
	for i, l := range s.Loads {
		if !(inside(l.From.Inches()) && inside(l.To.Inches()) && l.From < l.To &&
			near(l.AtFrom.PSI()) && near(l.AtTo.PSI())) {
			return Error{BadLoad, i}
		}
	}
	for i, p := range s.Points {
		if !(inside(p.At.Inches()) && near(float64(p.Force))) {
			return Error{BadPoint, i}
		}
	}
	for i, c := range s.Couples {
		if !(inside(c.At.Inches()) && near(float64(c.M))) {
			return Error{BadCouple, i}
		}
	}
	for i, p := range s.Supports {
		k := p.Stiffness.PSI()
		ok := inside(p.At.Inches()) && p.Kind <= Spring
		if p.Kind == Spring {
			ok = ok && k >= 0 && near(k)
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

func near(v float64) bool    { return math.Abs(v) <= far }
func measure(v float64) bool { return v >= 1/far && v <= far }
func finite(v float64) bool  { return math.Abs(v) <= math.MaxFloat64 }
