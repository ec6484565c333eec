package statics

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"standingbeam/calc/units"
)

// values samples all diagrams at 41 places between the cuts.
func values(s Strip, d Diagram, at func(units.Length) units.Length) (v, m, th, u []float64) {
	for i := range 41 {
		y := at(s.Top * units.Length(float64(i)+0.37) / 41)
		b, _ := d.Shear(y)
		v = append(v, float64(b))
		m = append(m, float64(d.Moment(y)))
		th = append(th, d.Slope(y))
		u = append(u, float64(d.Deflection(y)))
	}
	return v, m, th, u
}

func straight(y units.Length) units.Length { return y }

// closely reports that a = f b everywhere, to 1e-9 of size.
func closely(a, b []float64, f, size float64) bool {
	for i := range a {
		if math.Abs(a[i]-f*b[i]) > 1e-9*size {
			return false
		}
	}
	return true
}

// times returns the strip with all loads times f.
func times(s Strip, f float64) Strip {
	s.Loads, s.Points, s.Couples = slices.Clone(s.Loads), slices.Clone(s.Points), slices.Clone(s.Couples)
	for i := range s.Loads {
		s.Loads[i].AtFrom *= units.Stress(f)
		s.Loads[i].AtTo *= units.Stress(f)
	}
	for i := range s.Points {
		s.Points[i].Force *= units.ForcePerLength(f)
	}
	for i := range s.Couples {
		s.Couples[i].M *= units.MomentPerLength(f)
	}
	return s
}

// Two sets of loads on the same supports add up, each with its factor; a
// factor of −1 is the mirror image in the wall's middle.
func TestLinearity(t *testing.T) {
	each(t, 500, func(t *testing.T, r *rand.Rand, s Strip, d Diagram, z sizes) {
		o := random(r)
		o.Top, o.EI, o.Supports = s.Top, s.EI, s.Supports
		o.Loads, o.Points, o.Couples = nil, []Point{{s.Top * 0.3, 11}}, []Couple{{s.Top * 0.65, -70}}
		fs, fo := -1.0, 2.5
		a, b := times(s, fs), times(o, fo)
		both := a
		both.Points = append(slices.Clone(a.Points), b.Points...)
		both.Couples = append(slices.Clone(a.Couples), b.Couples...)
		do := solve(t, o)
		v, m, th, u := values(s, solve(t, both), straight)
		v1, m1, th1, u1 := values(s, d, straight)
		v2, m2, th2, u2 := values(s, do, straight)
		zo := size(o, do)
		for i := range v {
			v[i] -= fo * v2[i]
			m[i] -= fo * m2[i]
			th[i] -= fo * th2[i]
			u[i] -= fo * u2[i]
		}
		if !closely(v, v1, fs, z.force+zo.force) || !closely(m, m1, fs, z.moment+zo.moment) ||
			!closely(th, th1, fs, z.slope+zo.slope) || !closely(u, u1, fs, z.deflection+zo.deflection) {
			t.Errorf("%v of one and %v of the other do not add up", fs, fo)
		}
	})
}

// A strip stood on its head has the same moment and deflection at mirrored
// levels, and the opposite shear and slope.
func TestMirror(t *testing.T) {
	each(t, 500, func(t *testing.T, _ *rand.Rand, s Strip, d Diagram, z sizes) {
		o := s
		o.Loads, o.Points, o.Couples, o.Supports = nil, nil, nil, nil
		for _, l := range s.Loads {
			o.Loads = append(o.Loads, Load{s.Top - l.To, s.Top - l.From, l.AtTo, l.AtFrom})
		}
		for _, p := range s.Points {
			o.Points = append(o.Points, Point{s.Top - p.At, p.Force})
		}
		for _, c := range s.Couples {
			o.Couples = append(o.Couples, Couple{s.Top - c.At, -c.M})
		}
		for _, p := range s.Supports {
			p.At = s.Top - p.At
			o.Supports = append(o.Supports, p)
		}
		v, m, th, u := values(s, solve(t, o), func(y units.Length) units.Length { return s.Top - y })
		v1, m1, th1, u1 := values(s, d, straight)
		if !closely(v, v1, -1, z.force) || !closely(m, m1, 1, z.moment) ||
			!closely(th, th1, -1, z.slope) || !closely(u, u1, 1, z.deflection) {
			t.Errorf("not the same upside down")
		}
	})
}

// The order of the lists means nothing but the order of the reactions.
func TestOrder(t *testing.T) {
	each(t, 300, func(t *testing.T, _ *rand.Rand, s Strip, d Diagram, z sizes) {
		o := s
		o.Loads, o.Points, o.Couples, o.Supports = slices.Clone(s.Loads), slices.Clone(s.Points), slices.Clone(s.Couples), slices.Clone(s.Supports)
		slices.Reverse(o.Loads)
		slices.Reverse(o.Points)
		slices.Reverse(o.Couples)
		slices.Reverse(o.Supports)
		do := solve(t, o)
		rs := do.Reactions()
		slices.Reverse(rs)
		for i, r := range d.Reactions() {
			if !alike(r.At, rs[i].At) || r.Kind != rs[i].Kind || math.Abs(float64(r.Force-rs[i].Force)) > 1e-9*z.force {
				t.Errorf("reaction %d: %v, reversed %v", i, r, rs[i])
			}
		}
		_, m, _, _ := values(s, do, straight)
		_, m1, _, _ := values(s, d, straight)
		if !closely(m, m1, 1, z.moment) {
			t.Errorf("not the same in another order")
		}
	})
}
