package stability

import (
	"encoding/json"
	"math"
	"os"
	"testing"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// entry is a name, a force and an arm or height.
type entry [3]any

func (e entry) read() (string, float64, float64) {
	return e[0].(string), e[1].(float64), e[2].(float64)
}

type published struct {
	Name, Unit, Source                 string
	Width, Friction, Adhesion, Passive float64
	Weights, Uplift, Drive, Resist     []entry
	Expect                             []struct {
		What       string
		Value, Tol float64
	}
}

type scale struct {
	length, force, bending float64
	stress                 units.Stress
}

var scales = map[string]scale{
	"US":  {12, float64(units.PLF), 1, units.PSF},
	"kip": {12, 1000 * float64(units.PLF), 1000, 1000 * units.PSF},
	"SI":  {float64(units.Metre), float64(units.KNPerM), float64(units.KNmPerM), units.KPa},
}

func (c published) body(u scale) Body {
	force := func(v float64) units.ForcePerLength { return units.ForcePerLength(v * u.force) }
	length := func(v float64) units.Length { return units.Length(v * u.length) }
	weights := func(es []entry) (out []Weight) {
		for _, e := range es {
			n, f, a := e.read()
			out = append(out, Weight{n, force(f), length(a)})
		}
		return out
	}
	pushes := func(es []entry) (out []Push) {
		for _, e := range es {
			n, f, a := e.read()
			out = append(out, Push{n, force(f), length(a)})
		}
		return out
	}
	return Body{Width: length(c.Width), Friction: c.Friction, Adhesion: force(c.Adhesion), Passive: force(c.Passive),
		Weights: weights(c.Weights), Uplift: weights(c.Uplift), Drive: pushes(c.Drive), Resist: pushes(c.Resist)}
}

// cases reads testdata/reference/stability/bodies.json.
func cases(t *testing.T) []published {
	t.Helper()
	text, err := os.ReadFile("../../testdata/reference/stability/bodies.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct{ Cases []published }
	if err := json.Unmarshal(text, &file); err != nil || len(file.Cases) < 12 {
		t.Fatalf("%d cases, %v", len(file.Cases), err)
	}
	return file.Cases
}

func TestPublishedBodies(t *testing.T) {
	for _, c := range cases(t) {
		u := scales[c.Unit]
		r := Check(c.body(u), nil)
		values := map[string]float64{
			"normal":             float64(r.Normal) / u.force,
			"righting":           float64(r.Righting) / u.bending,
			"overturning":        float64(r.Overturning) / u.bending,
			"overturning factor": r.OverturningFactor,
			"sliding factor":     r.SlidingFactor,
			"resultant":          r.Resultant.Inches() / u.length,
			"eccentricity":       r.Eccentricity.Inches() / u.length,
			"contact":            r.Contact.Inches() / u.length,
			"bearing toe":        float64(r.BearingToe / u.stress),
			"bearing heel":       float64(r.BearingHeel / u.stress),
			"bearing max":        float64(r.BearingMax / u.stress),
		}
		for _, e := range c.Expect {
			if got, ok := values[e.What]; !ok || math.Abs(got-e.Value) > e.Tol {
				t.Errorf("%s: %s = %v, want %v (%s)", c.Name, e.What, got, e.Value, c.Source)
			}
		}
		if r.Overturned {
			t.Errorf("%s counts as overturned", c.Name)
		}
	}
}

// Every step of every working gives what was answered.
func TestWorkings(t *testing.T) {
	for _, c := range cases(t) {
		b := c.body(scales[c.Unit])
		b.Drive = append(b.Drive, Push{"soil", 10, 3}, Push{"", 5, 4}) // a name twice, and none
		w := Workings{new(working.Chain), new(working.Chain), new(working.Chain), new(working.Chain)}
		r := Check(b, &w)
		for name, chain := range map[string]struct {
			c    *working.Chain
			last units.Quantity
		}{
			"overturning": {w.Overturning, units.Quantity{Base: r.OverturningFactor}},
			"sliding":     {w.Sliding, units.Quantity{Base: r.SlidingFactor}},
			"resultant":   {w.Resultant, units.Of(r.Eccentricity, units.Level)},
			"bearing":     {w.Bearing, units.Of(r.BearingMax, units.Pressure)},
		} {
			if err := chain.c.Verify(); err != nil {
				t.Errorf("%s, %s: %v", c.Name, name, err)
			}
			steps := chain.c.Steps
			if len(steps) < 2 {
				t.Fatalf("%s, %s: %d steps", c.Name, name, len(steps))
			}
			last := steps[len(steps)-1].Value
			if name == "bearing" && r.MiddleThird {
				last.Base = max(last.Base, steps[len(steps)-2].Value.Base)
			}
			if last.Kind != chain.last.Kind || math.Abs(last.Base-chain.last.Base) > 1e-12 {
				t.Errorf("%s, %s ends with %v, want %v", c.Name, name, last, chain.last)
			}
		}
	}
}

// The base presses back with what presses it: the sum of the bearing is N and
// its middle is where the resultant is.
func TestBearingBalances(t *testing.T) {
	const width, n = 60.0, 250.0
	for i := 1; i < 600; i++ {
		x := width * float64(i) / 600
		r := Check(Body{Width: width, Weights: []Weight{{"", n, units.Length(x)}}}, nil)
		c, toe, heel := r.Contact.Inches(), r.BearingToe.PSI(), r.BearingHeel.PSI()
		sum := (toe + heel) / 2 * c
		middle := c / 3 * (toe + 2*heel) / (toe + heel)
		if heel > toe {
			middle += width - c
		}
		if math.Abs(sum-n) > 1e-9*n || math.Abs(middle-x) > 1e-9*width || r.Overturned {
			t.Errorf("x = %v: %v at %v, %+v", x, sum, middle, r)
		}
		if inside := x >= width/3-1e-9 && x <= width*2/3+1e-9; r.MiddleThird != inside {
			t.Errorf("x = %v: middle third %v", x, r.MiddleThird)
		}
		// Turned around, toe and heel change places.
		o := Check(Body{Width: width, Weights: []Weight{{"", n, units.Length(width - x)}}}, nil)
		if math.Abs(o.BearingHeel.PSI()-toe) > 1e-9 || math.Abs(o.BearingToe.PSI()-heel) > 1e-9 {
			t.Errorf("x = %v: %+v turned around is %+v", x, r, o)
		}
	}
}

func TestOverturned(t *testing.T) {
	weight := []Weight{{"wall", 100, 24}}
	for _, test := range []struct {
		name string
		b    Body
	}{
		{"over the toe", Body{Width: 48, Weights: weight, Drive: []Push{{"", 200, 20}}}},
		{"exactly on the edge", Body{Width: 48, Weights: weight, Drive: []Push{{"", 100, 24}}}},
		{"back over the heel", Body{Width: 48, Weights: weight, Resist: []Push{{"", 200, 20}}}},
		{"nothing presses", Body{Width: 48}},
		{"floats", Body{Width: 48, Friction: 0.5, Weights: weight, Uplift: []Weight{{"", 101, 24}}}},
	} {
		r := Check(test.b, nil)
		if !r.Overturned || r.MiddleThird || r.Contact > 0 || float64(r.BearingMax) < Unlimited || r.SlidingResistance < 0 {
			t.Errorf("%s: %+v", test.name, r)
		}
	}
}

func TestNothingPushes(t *testing.T) {
	r := Check(Body{Width: 48, Friction: 0.4, Weights: []Weight{{"", 100, 24}}}, nil)
	if r.OverturningFactor < Unlimited || r.SlidingFactor < Unlimited || r.Overturned || !r.MiddleThird {
		t.Errorf("%+v", r)
	}
}
