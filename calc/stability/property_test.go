package stability

import (
	"math"
	"math/rand/v2"
	"testing"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// some draws a wall that stands on its footing.
func some(r *rand.Rand) Body {
	in := func(lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }
	b := Body{Width: units.Length(in(24, 120)), Friction: in(0.2, 0.7)}
	for range 1 + r.IntN(4) {
		b.Weights = append(b.Weights, Weight{"", units.ForcePerLength(in(20, 200)), b.Width * units.Length(r.Float64())})
	}
	for range 1 + r.IntN(3) {
		b.Drive = append(b.Drive, Push{"", units.ForcePerLength(in(5, 60)), units.Length(in(1, 60))})
	}
	return b
}

// More push, less weight, less friction and more uplift never make a wall
// safer against what they work on, and passive and adhesion never change
// overturning.
func TestSafer(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 3000 {
		b := some(r)
		c := Check(b, nil)
		for name, change := range map[string]func(*Body){
			"push":     func(b *Body) { b.Drive = append(b.Drive, Push{"", 3, 5}) },
			"weight":   func(b *Body) { b.Weights = append([]Weight{}, b.Weights[1:]...) },
			"friction": func(b *Body) { b.Friction *= 0.9 },
			"uplift":   func(b *Body) { b.Uplift = []Weight{{"", 3, b.Width / 2}} },
		} {
			o := b
			change(&o)
			if w := Check(o, nil); w.OverturningFactor > c.OverturningFactor+1e-12 || w.SlidingFactor > c.SlidingFactor+1e-12 {
				t.Fatalf("%s: %+v becomes %+v", name, c, w)
			}
		}
		o := b
		o.Passive, o.Adhesion = 20, 10
		w := Check(o, nil)
		if math.Abs(w.OverturningFactor-c.OverturningFactor) > 1e-12 || !(w.SlidingFactor > c.SlidingFactor) ||
			math.Abs(float64(w.BearingMax-c.BearingMax)) > 1e-12 {
			t.Fatalf("passive: %+v becomes %+v", c, w)
		}
	}
}

// A body twice as heavy and twice as pushed has the same factors, the same
// resultant and twice the bearing.
func TestDouble(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 2000 {
		b := some(r)
		c := Check(b, nil)
		d := b
		d.Weights = append(append([]Weight{}, b.Weights...), b.Weights...)
		d.Drive = append(append([]Push{}, b.Drive...), b.Drive...)
		o := Check(d, nil)
		if c.Overturned {
			if !o.Overturned {
				t.Fatalf("%+v stands when doubled", c)
			}
			continue
		}
		same := func(a, b float64) bool { return math.Abs(a-b) <= 1e-9*max(1, math.Abs(b)) }
		if !same(o.OverturningFactor, c.OverturningFactor) || !same(o.SlidingFactor, c.SlidingFactor) ||
			!same(o.Resultant.Inches(), c.Resultant.Inches()) || o.BearingMax < Unlimited && !same(o.BearingMax.PSI(), 2*c.BearingMax.PSI()) {
			t.Fatalf("%+v becomes %+v", c, o)
		}
	}
}

// Whatever a valid body is, its answer is made of finite numbers, and an
// overturned one never looks safe.
func FuzzCheck(f *testing.F) {
	f.Add(48.0, 200.0, 24.0, 60.0, 28.0, 0.4, 10.0, 5.0, 30.0)
	f.Add(48.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0)
	f.Add(1e-6, 1e9, 1e6, 1e9, 1e6, 10.0, 1e9, 1e9, 1e6)
	f.Fuzz(func(t *testing.T, width, weight, arm, push, height, friction, uplift, resist, at float64) {
		for _, v := range []float64{width, weight, arm, push, height, friction, uplift, resist, at} {
			if !(v >= 0 && v <= 1e9) {
				return
			}
		}
		if !(width > 1e-6) {
			return
		}
		w := Workings{new(working.Chain), new(working.Chain), new(working.Chain), new(working.Chain)}
		r := Check(Body{Width: units.Length(width), Friction: friction,
			Weights: []Weight{{"wall", units.ForcePerLength(weight), units.Length(arm)}},
			Uplift:  []Weight{{"water", units.ForcePerLength(uplift), units.Length(at)}},
			Drive:   []Push{{"soil", units.ForcePerLength(push), units.Length(height)}},
			Resist:  []Push{{"soil", units.ForcePerLength(resist), units.Length(at)}}}, &w)
		for _, v := range []float64{float64(r.Normal), float64(r.Overturning), float64(r.Righting), r.OverturningFactor,
			float64(r.Driving), float64(r.SlidingResistance), r.SlidingFactor, float64(r.Resultant), float64(r.Eccentricity),
			float64(r.Contact), float64(r.BearingToe), float64(r.BearingHeel), float64(r.BearingMax)} {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				t.Fatalf("%+v", r)
			}
		}
		if r.OverturningFactor > Unlimited || r.SlidingFactor > Unlimited || r.OverturningFactor < 0 || r.SlidingFactor < 0 {
			t.Fatalf("factors of %+v", r)
		}
		if r.Overturned && (r.MiddleThird || float64(r.BearingMax) < Unlimited) {
			t.Fatalf("%+v looks safe", r)
		}
	})
}

func BenchmarkCheck(b *testing.B) {
	body := Body{Width: 48, Friction: 0.4,
		Weights: []Weight{{"stem", 50, 16}, {"footing", 50, 24}, {"soil", 140, 34}, {"dead load", 30, 16}},
		Drive:   []Push{{"soil", 61, 28}, {"surcharge", 10, 42}, {"water", 5, 12}}}
	b.Run("silent", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			Check(body, nil)
		}
	})
	b.Run("with workings", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			Check(body, &Workings{new(working.Chain), new(working.Chain), new(working.Chain), new(working.Chain)})
		}
	})
}
