package statics

import (
	"encoding/json"
	"math"
	"os"
	"testing"

	"standingbeam/calc/units"
)

// published is one case of testdata/reference/statics/strips.json.
type published struct {
	Name, Unit, Source string
	Top                float64
	Loads              [][4]float64
	Points, Couples    [][2]float64
	Supports           [][2]any
	Expect             []expected
}

type expected struct {
	What           string
	At, Value, Tol float64
}

// scale is the size of a case's units in inches and pounds.
type scale struct{ length, pressure, force, moment float64 }

var scales = map[string]scale{
	"US": {12, float64(units.PSF), float64(units.PLF), 1},
	"1":  {1, 1, 1, 1},
}

// strip builds the case with EI = 1.
func (c published) strip(u scale) Strip {
	length := func(v float64) units.Length { return units.Length(v * u.length) }
	s := Strip{Top: length(c.Top), EI: 1}
	for _, l := range c.Loads {
		s.Loads = append(s.Loads, Load{length(l[0]), length(l[1]), units.Stress(l[2] * u.pressure), units.Stress(l[3] * u.pressure)})
	}
	for _, q := range c.Points {
		s.Points = append(s.Points, Point{length(q[0]), units.ForcePerLength(q[1] * u.force)})
	}
	for _, q := range c.Couples {
		s.Couples = append(s.Couples, Couple{length(q[0]), units.MomentPerLength(q[1] * u.moment)})
	}
	for _, q := range c.Supports {
		p := Support{At: length(q[1].(float64))}
		if q[0] == "fixed" {
			p.Kind = Fixed
		}
		s.Supports = append(s.Supports, p)
	}
	return s
}

func TestPublishedStrips(t *testing.T) {
	text, err := os.ReadFile("../../testdata/reference/statics/strips.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct{ Cases []published }
	if err := json.Unmarshal(text, &file); err != nil {
		t.Fatal(err)
	}
	if len(file.Cases) < 25 {
		t.Fatalf("%d cases read", len(file.Cases))
	}
	for _, c := range file.Cases {
		t.Run(c.Name, func(t *testing.T) {
			u, ok := scales[c.Unit]
			if !ok || len(c.Expect) == 0 {
				t.Fatalf("unit %q, %d values", c.Unit, len(c.Expect))
			}
			s := c.strip(u)
			d := solve(t, s)
			for _, e := range c.Expect {
				if got := read(t, d, s, e, u); math.Abs(got-e.Value) > e.Tol {
					t.Errorf("%s at %v = %v, want %v (%s)", e.What, e.At, got, e.Value, c.Source)
				}
			}
		})
	}
}

// read returns what e asks of the diagram, in the units of the case.
func read(t *testing.T, d Diagram, s Strip, e expected, u scale) float64 {
	t.Helper()
	y := units.Length(e.At * u.length)
	switch e.What {
	case "reaction":
		return float64(reactionAt(t, d, y).Force) / u.force
	case "reaction moment":
		return float64(reactionAt(t, d, y).Moment) / u.moment
	case "moment":
		return float64(d.Moment(y)) / u.moment
	case "moment B":
		_, m := d.MaxMoment()
		return float64(m) / u.moment
	case "moment B from top":
		at, _ := d.MaxMoment()
		return float64(s.Top-at) / u.length
	case "moment A":
		_, m := d.MinMoment()
		return float64(m) / u.moment
	case "shear":
		_, v := d.MaxShear()
		return float64(v) / u.force
	case "deflection":
		_, v := d.MaxDeflection()
		return float64(v)
	case "deflection from top":
		at, _ := d.MaxDeflection()
		return float64(s.Top-at) / u.length
	case "thrust":
		var f float64
		for _, r := range d.Reactions() {
			f += float64(r.Force)
		}
		return f / u.force
	case "load":
		for _, g := range d.Segments() {
			if g.From <= y && y < g.To {
				x := float64(y - g.From)
				return -(2*g.Moment[2] + 6*g.Moment[3]*x) / u.pressure
			}
		}
	}
	t.Fatalf("nothing is called %q", e.What)
	return 0
}

func reactionAt(t *testing.T, d Diagram, y units.Length) Reaction {
	t.Helper()
	for _, r := range d.Reactions() {
		if math.Abs(float64(r.At-y)) < 1e-9 {
			return r
		}
	}
	t.Fatalf("no support at %v", y)
	return Reaction{}
}
