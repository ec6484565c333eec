package statics

import (
	"fmt"
	"math"
	"testing"

	"standingbeam/calc/units"
)

// exact is the relative error allowed against a closed form.
const exact = 1e-10

// same reports a relative error of got, against want or, where that is
// smaller, against the size of the case.
func same(got, want, size float64) bool {
	return math.Abs(got-want) <= exact*max(math.Abs(want), size)
}

func solve(t *testing.T, s Strip) Diagram {
	t.Helper()
	d, err := Solve(s)
	if err != nil {
		t.Fatalf("%+v: %v", s, err)
	}
	return d
}

// A cantilever of 96 in with an even load, propped by a spring at its top:
// R (1/k + L³/3EI) = w L⁴/8EI. From a spring that hardly is one to one that is
// a pin.
func TestSpringProp(t *testing.T) {
	const l, ei, w = 96.0, 1.5e8, 2.5
	for e := -12; e <= 18; e++ {
		k := math.Pow(10, float64(e)) * ei / (l * l * l)
		want := w * l * l * l * l / (8 * ei) / (1/k + l*l*l/(3*ei))
		d := solve(t, Strip{Top: l, EI: ei, Loads: []Load{{0, l, w, w}},
			Supports: []Support{{At: l, Kind: Spring, Stiffness: units.Stress(k)}, {At: 0, Kind: Fixed}}})
		r := d.Reactions()
		if !same(float64(r[0].Force), want, 0) {
			t.Errorf("k = %g: top %v, want %v", k, r[0].Force, want)
		}
		if !same(float64(r[1].Force), w*l-want, 0) || !same(float64(r[1].Moment), want*l-w*l*l/2, w*l*l/8) {
			t.Errorf("k = %g: foot %v", k, r[1])
		}
		if u := float64(d.Deflection(l)); math.Abs(u-want/k) > 1e-9*w*l*l*l*l/(8*ei) {
			t.Errorf("k = %g: top moves %v, want %v", k, u, want/k)
		}
	}
}

// Pins at both ends and a spring in the middle: R (1/k + L³/48EI) =
// 5 w L⁴/384EI.
func TestSpringInMiddle(t *testing.T) {
	const l, ei, w = 120.0, 3e7, 1.25
	for _, rel := range []float64{1e-9, 1e-3, 1, 48, 1e4, 1e12} {
		k := rel * ei / (l * l * l)
		want := 5 * w * l * l * l * l / (384 * ei) / (1/k + l*l*l/(48*ei))
		d := solve(t, Strip{Top: l, EI: ei, Loads: []Load{{0, l, w, w}}, Supports: []Support{
			{At: 0}, {At: l / 2, Kind: Spring, Stiffness: units.Stress(k)}, {At: l}}})
		if got := float64(d.Reactions()[1].Force); !same(got, want, 0) {
			t.Errorf("k = %g: %v, want %v", k, got, want)
		}
		if got := float64(d.Moment(l / 2)); !same(got, w*l*l/8-want*l/4, w*l*l/8) {
			t.Errorf("k = %g: moment %v", k, got)
		}
	}
}

// A simple span on two springs: statics gives the reactions, and the middle
// sinks by the mean of R/k and 5 w L⁴/384EI.
func TestTwoSprings(t *testing.T) {
	const l, ei, w = 100.0, 1e7, 3.0
	k1, k2 := 40.0, 1e-6
	d := solve(t, Strip{Top: l, EI: ei, Loads: []Load{{0, l, w, w}}, Supports: []Support{
		{At: 0, Kind: Spring, Stiffness: units.Stress(k1)}, {At: l, Kind: Spring, Stiffness: units.Stress(k2)}}})
	r := w * l / 2
	for i, k := range []float64{k1, k2} {
		if got := float64(d.Reactions()[i].Force); !same(got, r, 0) {
			t.Errorf("reaction %d = %v, want %v", i, got, r)
		}
		if got := float64(d.Deflection(units.Length(i) * l)); !same(got, r/k, 0) {
			t.Errorf("spring %d gives %v, want %v", i, got, r/k)
		}
	}
	want := (r/k1+r/k2)/2 + 5*w*l*l*l*l/(384*ei)
	if got := float64(d.Deflection(l / 2)); !same(got, want, 0) {
		t.Errorf("middle = %v, want %v", got, want)
	}
}

// A strip that does not bend shares a force at its top among three equal
// springs like a stiff plate among piles: 1/3 ± (distance)/(Σ distance²).
func TestStiffOnThreeSprings(t *testing.T) {
	k := units.Stress(10)
	d := solve(t, Strip{Top: 2, EI: 1e14, Points: []Point{{2, 6}}, Supports: []Support{
		{0, Spring, k}, {1, Spring, k}, {2, Spring, k}}})
	for i, want := range []float64{-1, 2, 5} {
		if got := float64(d.Reactions()[i].Force); !same(got, want, 1) {
			t.Errorf("spring %d = %v, want %v", i, got, want)
		}
	}
}

// Two unequal spans with an even load by the theorem of three moments:
// M = −w (l1³ + l2³)/(8 (l1 + l2)), also with two pins almost at one level,
// whatever the order of the pins.
func TestThreeMoments(t *testing.T) {
	for _, l1 := range []float64{0.01, 12, 40, 48.5, 90} {
		l2 := 96 - l1
		const w = 1.7
		m := -w * (l1*l1*l1 + l2*l2*l2) / (8 * 96)
		foot, middle, top := Support{At: 0}, Support{At: units.Length(l1)}, Support{At: 96}
		for _, pins := range [][]Support{{foot, middle, top}, {top, middle, foot}, {middle, top, foot}} {
			d := solve(t, Strip{Top: 96, EI: 1, Loads: []Load{{0, 96, w, w}}, Supports: pins})
			if got := float64(d.Moment(units.Length(l1))); !same(got, m, 0) {
				t.Errorf("l1 = %v: moment %v, want %v", l1, got, m)
			}
			if got, want := float64(reactionAt(t, d, 96).Force), w*l2/2+m/l2; !same(got, want, 0) {
				t.Errorf("l1 = %v: top %v, want %v", l1, got, want)
			}
		}
	}
}

// A wall held by a slab above its foot and by a ledger below its top, with
// 8 ft of triangle on the whole: the overhangs bend by themselves, w y²/2 and
// w y³/6, and the reactions are those of a simple span.
func TestOverhangs(t *testing.T) {
	const top, p, q = 108.0, 18.0, 90.0
	fill, base := 96.0, 2.0 // psi at the foot
	d := solve(t, Strip{Top: top, EI: 1e8, Loads: []Load{{0, 96, 2, 0}}, Supports: []Support{{At: p}, {At: q}}})
	w := base * fill / 2
	rq := w * (fill/3 - p) / (q - p)
	r := d.Reactions()
	if !same(float64(r[1].Force), rq, 0) || !same(float64(r[0].Force), w-rq, 0) {
		t.Errorf("reactions %v %v, want %v %v", r[0].Force, r[1].Force, w-rq, rq)
	}
	up := fill - q // what stands above the upper support
	if got, want := float64(d.Moment(q)), -base*up*up*up/(6*fill); !same(got, want, 0) {
		t.Errorf("moment at the ledger %v, want %v", got, want)
	}
	s := base * (1 - p/fill) // pressure at the slab
	if got, want := float64(d.Moment(p)), -(s*p*p/2 + (base-s)*p*p/3); !same(got, want, 0) {
		t.Errorf("moment at the slab %v, want %v", got, want)
	}
	if b, a := d.Shear(p); !same(float64(a-b), w-rq, 0) {
		t.Errorf("shear jumps %v at the slab, want %v", a-b, w-rq)
	}
	for _, y := range []units.Length{p, q} {
		if u := float64(d.Deflection(y)); math.Abs(u) > 1e-12 {
			t.Errorf("the strip moves %v at its support", u)
		}
	}
}

// A simple span with a triangle bows most at L √(1 − √(8/15)) from its light
// end, by W L³ (x/L)(3 x⁴/L⁴ − 10 x²/L² + 7)/(180 EI).
func TestBowOfTriangle(t *testing.T) {
	const l, ei, w = 96.0, 1e8, 3.0
	d := solve(t, Strip{Top: l, EI: ei, Loads: []Load{{0, l, w, 0}}, Supports: []Support{{At: 0}, {At: l}}})
	x := math.Sqrt(1 - math.Sqrt(8.0/15))
	want := w * l / 2 * l * l * l * x * (3*x*x*x*x - 10*x*x + 7) / (180 * ei)
	if at, u := d.MaxDeflection(); !same(l-at.Inches(), l*x, 0) || !same(float64(u), want, 0) {
		t.Errorf("bows %v at %v from the top, want %v at %v", u, l-at, want, l*x)
	}
}

// An axial load of 100 lb/in that stands 2 in toward A on the top of a simple
// span brings tension to B, from 200 lb-in at the top down to 0 at the foot.
func TestCoupleSign(t *testing.T) {
	d := solve(t, Strip{Top: 96, EI: 1, Couples: []Couple{{96, 200}}, Supports: []Support{{At: 0}, {At: 96}}})
	for _, y := range []units.Length{0, 24, 96} {
		if got, want := float64(d.Moment(y)), 200*y.Inches()/96; !same(got, want, 1) {
			t.Errorf("M(%v) = %v, want %v", y, got, want)
		}
	}
	if at, m := d.MaxMoment(); at != 96 || !same(float64(m), 200, 0) {
		t.Errorf("greatest %v at %v", m, at)
	}
	if at, m := d.MinMoment(); at != 0 || m != 0 {
		t.Errorf("least %v at %v, want none", m, at)
	}
}

// A couple inside the strip splits its moment among both sides of it.
func TestCoupleInside(t *testing.T) {
	d := solve(t, Strip{Top: 100, EI: 1, Couples: []Couple{{25, 40}}, Supports: []Support{{At: 0}, {At: 100}}})
	b, a := d.MomentLimits(25)
	if !same(float64(b), 10, 0) || !same(float64(a), -30, 0) || !same(float64(d.Moment(25)), -30, 0) {
		t.Errorf("M = %v below, %v above, %v", b, a, d.Moment(25))
	}
	_, most := d.MaxMoment()
	_, least := d.MinMoment()
	if !same(float64(most), 10, 0) || !same(float64(least), -30, 0) {
		t.Errorf("extremes %v %v", most, least)
	}
}

func TestFaults(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	pins := []Support{{At: 0}, {At: 10}}
	k := func(v float64) []Support { return []Support{{At: 0}, {10, Spring, units.Stress(v)}} }
	for _, test := range []struct {
		name string
		s    Strip
		want Error
	}{
		{"nothing holds", Strip{Top: 10, EI: 1}, Error{Mechanism, -1}},
		{"one pin", Strip{Top: 10, EI: 1, Supports: pins[:1]}, Error{Mechanism, -1}},
		{"one spring", Strip{Top: 10, EI: 1, Supports: k(5)[1:]}, Error{Mechanism, -1}},
		{"a spring of nothing", Strip{Top: 10, EI: 1, Supports: k(0)}, Error{Mechanism, -1}},
		{"no height", Strip{EI: 1, Supports: pins}, Error{BadTop, -1}},
		{"height no number", Strip{Top: units.Length(nan), EI: 1, Supports: pins}, Error{BadTop, -1}},
		{"no stiffness", Strip{Top: 10, Supports: pins}, Error{BadEI, -1}},
		{"stiffness without end", Strip{Top: 10, EI: inf, Supports: pins}, Error{BadEI, -1}},
		{"load upside down", Strip{Top: 10, EI: 1, Supports: pins, Loads: []Load{{0, 5, 1, 1}, {5, 4, 1, 1}}}, Error{BadLoad, 1}},
		{"load above the top", Strip{Top: 10, EI: 1, Supports: pins, Loads: []Load{{0, 11, 1, 1}}}, Error{BadLoad, 0}},
		{"load below the foot", Strip{Top: 10, EI: 1, Supports: pins, Loads: []Load{{-1, 5, 1, 1}}}, Error{BadLoad, 0}},
		{"load no number", Strip{Top: 10, EI: 1, Supports: pins, Loads: []Load{{0, 5, units.Stress(nan), 1}}}, Error{BadLoad, 0}},
		{"force outside", Strip{Top: 10, EI: 1, Supports: pins, Points: []Point{{12, 1}}}, Error{BadPoint, 0}},
		{"couple no number", Strip{Top: 10, EI: 1, Supports: pins, Couples: []Couple{{1, units.MomentPerLength(inf)}}}, Error{BadCouple, 0}},
		{"support outside", Strip{Top: 10, EI: 1, Supports: []Support{{At: 0}, {At: 20}}}, Error{BadSupport, 1}},
		{"support on another", Strip{Top: 10, EI: 1, Supports: []Support{{At: 0}, {At: 10}, {At: 0, Kind: Fixed}}}, Error{BadSupport, 2}},
		{"spring below nothing", Strip{Top: 10, EI: 1, Supports: k(-1)}, Error{BadSupport, 1}},
		{"unknown restraint", Strip{Top: 10, EI: 1, Supports: []Support{{At: 0, Kind: 9}}}, Error{BadSupport, 0}},
	} {
		if d, err := Solve(test.s); err != error(test.want) || d.Breaks() != nil {
			t.Errorf("%s: %v, want %v", test.name, err, test.want)
		}
	}
}

// The zero Diagram answers zero to everything.
func TestZeroDiagram(t *testing.T) {
	var d Diagram
	b, a := d.Shear(3)
	_, m := d.MaxMoment()
	_, n := d.MinMoment()
	_, v := d.MaxShear()
	_, u := d.MaxDeflection()
	got := fmt.Sprint(b, a, m, n, v, u, d.Moment(3), d.Slope(3), d.Deflection(3), len(d.Segments()), len(d.Reactions()))
	if want := "0 0 0 0 0 0 0 0 0 0 0"; got != want {
		t.Errorf("zero diagram says %s", got)
	}
}
