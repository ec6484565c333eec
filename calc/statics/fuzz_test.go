package statics

import (
	"math"
	"testing"

	"standingbeam/calc/units"
)

// Whatever the numbers, Solve does not panic, and what it solves is made of
// finite numbers.
func FuzzSolve(f *testing.F) {
	f.Add(96.0, 1e8, 0.0, 84.0, 2.0, 0.0, 40.0, 3.0, 0.0, 96.0, 48.0, 100.0, uint8(0b010000))
	f.Add(1e30, 1e-30, 0.0, 1e30, 1e30, -1e30, 1e29, 1e30, 0.0, 1e-20, 5.0, 1e-30, uint8(0b011001))
	f.Add(1e-9, 1e30, 0.0, 1e-300, 1.0, 2.0, 1e-9, -1.0, 0.0, 1e-9, 5e-10, 1e30, uint8(0b101000))
	f.Fuzz(func(t *testing.T, top, ei, from, to, a, b, at, p, s1, s2, s3, k float64, kinds uint8) {
		s := Strip{Top: units.Length(top), EI: ei,
			Loads:   []Load{{units.Length(from), units.Length(to), units.Stress(a), units.Stress(b)}},
			Points:  []Point{{units.Length(at), units.ForcePerLength(p)}},
			Couples: []Couple{{units.Length(at), units.MomentPerLength(a)}}}
		for i, at := range []float64{s1, s2, s3} {
			kind := Restraint(kinds >> (2 * i) & 3)
			s.Supports = append(s.Supports, Support{units.Length(at), kind, units.Stress(k)})
		}
		if kinds>>6 == 1 {
			s.Supports = s.Supports[:2]
		}
		d, err := Solve(s)
		if err != nil {
			return
		}
		for _, v := range everything(d, s.Top) {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				t.Fatalf("%v in %v of %+v", v, d, s)
			}
		}
	})
}

// everything is all that a diagram says.
func everything(d Diagram, top units.Length) (out []float64) {
	for _, r := range d.Reactions() {
		out = append(out, float64(r.Force), float64(r.Moment))
	}
	y1, m1 := d.MaxMoment()
	y2, m2 := d.MinMoment()
	y3, v := d.MaxShear()
	y4, u := d.MaxDeflection()
	out = append(out, float64(y1), float64(m1), float64(y2), float64(m2), float64(y3), float64(v), float64(y4), float64(u))
	for i := range 11 {
		y := top * units.Length(i) / 10
		b, a := d.Shear(y)
		out = append(out, float64(b), float64(a), float64(d.Moment(y)), d.Slope(y), float64(d.Deflection(y)))
	}
	return out
}
