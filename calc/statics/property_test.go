package statics

import (
	"math"
	"math/rand/v2"
	"testing"

	"standingbeam/calc/units"
)

// each runs check on many random strips and names the seed of a failure.
func each(t *testing.T, n int, check func(t *testing.T, r *rand.Rand, s Strip, d Diagram, z sizes)) {
	t.Helper()
	for seed := range uint64(n) {
		r := rand.New(rand.NewPCG(seed, 7))
		s := random(r)
		d := solve(t, s)
		check(t, r, s, d, size(s, d))
		if t.Failed() {
			t.Fatalf("seed %d: %+v", seed, s)
		}
	}
}

// Forces toward B and A balance, and so do moments about the foot.
func TestEquilibrium(t *testing.T) {
	each(t, 3000, func(t *testing.T, _ *rand.Rand, s Strip, d Diagram, z sizes) {
		force, moment := 0.0, 0.0
		for _, l := range s.Loads {
			h, a, b := float64(l.To-l.From), l.AtFrom.PSI(), l.AtTo.PSI()
			force += h * (a + b) / 2
			moment += h*a/2*(l.From.Inches()+h/3) + h*b/2*(l.From.Inches()+2*h/3)
		}
		for _, p := range s.Points {
			force += float64(p.Force)
			moment += float64(p.Force) * p.At.Inches()
		}
		for _, c := range s.Couples {
			moment -= float64(c.M)
		}
		for _, r := range d.Reactions() {
			force -= float64(r.Force)
			moment -= float64(r.Force)*r.At.Inches() - float64(r.Moment)
		}
		if math.Abs(force) > 1e-9*z.force || math.Abs(moment) > 1e-9*z.moment {
			t.Errorf("left over: force %g of %g, moment %g of %g", force, z.force, moment, z.moment)
		}
	})
}

// Within a segment dV/dy = −w, dM/dy = V, EI dθ/dy = −M and du/dy = θ: each
// difference over a stretch is the integral of the next, by a rule that is
// exact for its degree (middle, Simpson, Boole).
func TestDerivatives(t *testing.T) {
	each(t, 500, func(t *testing.T, r *rand.Rand, s Strip, d Diagram, z sizes) {
		for _, g := range d.segments {
			a := float64(g.From) + g.length()*(0.01+0.88*r.Float64())
			h := 0.1 * g.length()
			y := func(i float64) units.Length { return units.Length(a + i*h/4) }
			v := func(i float64) float64 { b, _ := d.Shear(y(i)); return float64(b) }
			m := func(i float64) float64 { return float64(d.Moment(y(i))) }
			th := func(i float64) float64 { return d.Slope(y(i)) }
			u := func(i float64) float64 { return float64(d.Deflection(y(i))) }
			for _, c := range []struct {
				name       string
				rise, want float64
				size       float64
			}{
				{"V", v(4) - v(0), -h * pressureAt(s, y(2)), z.force},
				{"M", m(4) - m(0), h / 6 * (v(0) + 4*v(2) + v(4)), z.moment},
				{"slope", th(4) - th(0), -h / 6 * (m(0) + 4*m(2) + m(4)) / s.EI, z.slope},
				{"deflection", u(4) - u(0), h / 90 * (7*th(0) + 32*th(1) + 12*th(2) + 32*th(3) + 7*th(4)), z.deflection},
			} {
				if math.Abs(c.rise-c.want) > 1e-11*c.size {
					t.Errorf("%s rises %v at %v, want %v", c.name, c.rise, a, c.want)
				}
			}
		}
	})
}

// pressureAt is the load at y, added up here by itself.
func pressureAt(s Strip, y units.Length) (w float64) {
	for _, l := range s.Loads {
		if l.From < y && y < l.To {
			f := float64(y-l.From) / float64(l.To-l.From)
			w += (1-f)*l.AtFrom.PSI() + f*l.AtTo.PSI()
		}
	}
	return w
}

// alike reports that a and b are one level.
func alike(a, b units.Length) bool { return math.Abs(float64(a-b)) < 1e-9 }

// The diagrams are continuous but for what acts at a level: V jumps by a
// reaction and a line force, M by a couple and a fixed support; and both are
// zero beyond the ends.
func TestContinuity(t *testing.T) {
	each(t, 1000, func(t *testing.T, _ *rand.Rand, s Strip, d Diagram, z sizes) {
		const eps = 1e-9
		for _, y := range d.Breaks() {
			var v, m float64
			for i, r := range d.Reactions() {
				if alike(s.Supports[i].At, y) {
					v += float64(r.Force)
					m += float64(r.Moment)
				}
			}
			for _, p := range s.Points {
				if alike(p.At, y) {
					v -= float64(p.Force)
				}
			}
			for _, c := range s.Couples {
				if alike(c.At, y) {
					m -= float64(c.M)
				}
			}
			vb, va := d.Shear(y)
			mb, ma := d.MomentLimits(y)
			if math.Abs(float64(va-vb)-v) > 1e-10*z.force || math.Abs(float64(ma-mb)-m) > 1e-10*z.moment {
				t.Errorf("at %v V jumps %v, want %v; M %v, want %v", y, va-vb, v, ma-mb, m)
			}
			lo, hi := y-eps, y+eps
			if math.Abs(d.Slope(hi)-d.Slope(lo)) > 1e-9*z.slope ||
				math.Abs(float64(d.Deflection(hi)-d.Deflection(lo))) > 1e-9*z.deflection {
				t.Errorf("slope or deflection jumps at %v", y)
			}
		}
	})
}

// What rounding leaves is no bending: loads toward B give a simple span no
// tension on A and a cantilever none on B, and a foot that nothing turns has no
// moment, all exactly.
func TestNoBending(t *testing.T) {
	each(t, 2000, func(t *testing.T, r *rand.Rand, s Strip, d Diagram, z sizes) {
		turned := false
		for _, c := range s.Couples {
			turned = turned || alike(c.At, 0)
		}
		for _, p := range s.Supports {
			turned = turned || alike(p.At, 0)
		}
		if _, a := d.MomentLimits(0); !turned && math.Abs(float64(a)) > 0 {
			t.Errorf("M = %v at a free foot", a)
		}
		s.Couples = nil
		for i := range s.Loads {
			s.Loads[i].AtFrom, s.Loads[i].AtTo = max(s.Loads[i].AtFrom, -s.Loads[i].AtFrom), max(s.Loads[i].AtTo, -s.Loads[i].AtTo)
		}
		for i := range s.Points {
			s.Points[i].Force = max(s.Points[i].Force, -s.Points[i].Force)
		}
		s.Supports = []Support{{At: 0}, {At: s.Top}}
		d = solve(t, s)
		at, m := d.MinMoment()
		if _, a := d.MomentLimits(0); math.Abs(float64(at))+math.Abs(float64(m))+math.Abs(float64(a)) > 0 {
			t.Errorf("simple span: %v on A at %v, %v at its foot", m, at, a)
		}
		s.Supports = []Support{{At: 0, Kind: Fixed}}
		d = solve(t, s)
		if at, m := d.MaxMoment(); math.Abs(float64(at))+math.Abs(float64(m)) > 0 {
			t.Errorf("cantilever: %v on B at %v", m, at)
		}
	})
}

// A pin does not move, a fixed support does not turn either, a spring gives
// its reaction over its stiffness. With the equations above that makes the
// solution the only one.
func TestSupports(t *testing.T) {
	each(t, 3000, func(t *testing.T, _ *rand.Rand, s Strip, d Diagram, z sizes) {
		for i, r := range d.Reactions() {
			p := s.Supports[i]
			want := 0.0
			if p.Kind == Spring {
				want = float64(r.Force) / p.Stiffness.PSI()
			}
			if u := float64(d.Deflection(p.At)); math.Abs(u-want) > 1e-10*z.deflection {
				t.Errorf("support %d moves %v, want %v", i, u, want)
			}
			if p.Kind == Fixed && math.Abs(d.Slope(p.At)) > 1e-10*z.slope {
				t.Errorf("support %d turns %v", i, d.Slope(p.At))
			}
			if p.Kind != Fixed && math.Abs(float64(r.Moment)) > 0 {
				t.Errorf("support %d gives a moment %v", i, r.Moment)
			}
		}
	})
}

// No sample exceeds an extreme, and each extreme stands in the diagram.
func TestExtremes(t *testing.T) {
	each(t, 300, func(t *testing.T, _ *rand.Rand, s Strip, d Diagram, z sizes) {
		atB, most := d.MaxMoment()
		atA, least := d.MinMoment()
		atV, shear := d.MaxShear()
		atU, bow := d.MaxDeflection()
		abs := func(v float64) float64 { return math.Abs(v) }
		for i := range 1001 {
			y := s.Top * units.Length(i) / 1000
			lo, hi := d.MomentLimits(y)
			vb, va := d.Shear(y)
			if max(lo, hi) > most+units.MomentPerLength(1e-11*z.moment) || min(lo, hi) < least-units.MomentPerLength(1e-11*z.moment) {
				t.Errorf("M(%v) = %v, %v beyond %v … %v", y, lo, hi, least, most)
			}
			if max(abs(float64(vb)), abs(float64(va))) > abs(float64(shear))+1e-11*z.force {
				t.Errorf("V(%v) = %v, %v beyond %v", y, vb, va, shear)
			}
			if abs(float64(d.Deflection(y))) > abs(float64(bow))+1e-11*z.deflection {
				t.Errorf("u(%v) = %v beyond %v", y, d.Deflection(y), bow)
			}
		}
		attained := func(name string, want, size float64, got ...float64) {
			for _, g := range got {
				if abs(g-want) <= 1e-11*size {
					return
				}
			}
			t.Errorf("%s %v is not in the diagram: %v", name, want, got)
		}
		lo, hi := d.MomentLimits(atB)
		attained("M on B", float64(most), z.moment, float64(lo), float64(hi))
		lo, hi = d.MomentLimits(atA)
		attained("M on A", float64(least), z.moment, float64(lo), float64(hi))
		vb, va := d.Shear(atV)
		attained("V", float64(shear), z.force, float64(vb), float64(va))
		attained("u", float64(bow), z.deflection, float64(d.Deflection(atU)))
		if most < 0 || least > 0 {
			t.Errorf("M on B %v, on A %v", most, least)
		}
	})
}
