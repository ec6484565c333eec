package footing

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"testing"

	"standingbeam/calc/units"
)

type scale struct {
	length         units.Length
	stress         units.Stress
	force, bending float64
}

var scales = map[string]scale{
	"kip": {units.Foot, 1000 * units.PSF, 1000 * float64(units.PLF), 1000},
	"SI":  {units.Metre, units.KPa, float64(units.KNPerM), float64(units.KNmPerM)},
}

func TestPublishedProjections(t *testing.T) {
	text, err := os.ReadFile("../../testdata/reference/stability/projections.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Cases []struct {
			Name, Unit, Source           string
			Width, Toe, Stem, Contact, D float64
			AtToe                        float64 `json:"at toe"`
			AtHeel                       float64 `json:"at heel"`
			OnToe                        float64 `json:"on toe"`
			OnHeel                       float64 `json:"on heel"`
			Expect                       []struct {
				What       string
				Value, Tol float64
			}
		}
	}
	if err := json.Unmarshal(text, &file); err != nil || len(file.Cases) < 3 {
		t.Fatalf("%d cases, %v", len(file.Cases), err)
	}
	for _, c := range file.Cases {
		u := scales[c.Unit]
		length := func(v float64) units.Length { return units.Length(v) * u.length }
		stress := func(v float64) units.Stress { return units.Stress(v) * u.stress }
		b := Base{Width: length(c.Width), Toe: length(c.Toe), Stem: length(c.Stem), Contact: length(c.Contact),
			AtToe: stress(c.AtToe), AtHeel: stress(c.AtHeel), OnToe: stress(c.OnToe), OnHeel: stress(c.OnHeel)}
		d := length(c.D)
		toe, heel := Toe(b).Demand(d, d), Heel(b).Demand(d, d)
		values := map[string]float64{
			"toe moment": float64(toe.Moment) / u.bending, "toe shear": float64(toe.Shear) / u.force,
			"heel moment": float64(heel.Moment) / u.bending, "heel shear": float64(heel.Shear) / u.force,
			"toe shear at d": float64(toe.ShearAtD) / u.force, "heel shear at d": float64(heel.ShearAtD) / u.force,
		}
		for _, e := range c.Expect {
			if got, ok := values[e.What]; !ok || math.Abs(got-e.Value) > e.Tol {
				t.Errorf("%s: %s = %v, want %v (%s)", c.Name, e.What, got, e.Value, c.Source)
			}
		}
	}
}

// some draws a base that is pressed over the whole width or from one edge.
func some(r *rand.Rand) Base {
	in := func(lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }
	b := Base{Width: units.Length(in(30, 120)), OnToe: units.Stress(in(0, 2)), OnHeel: units.Stress(in(0, 10))}
	b.Toe, b.Stem, b.Contact = b.Width*units.Length(in(0, 0.5)), b.Width*0.2, b.Width
	b.AtToe, b.AtHeel = units.Stress(in(0, 30)), units.Stress(in(0, 30))
	switch r.IntN(3) {
	case 0:
		b.AtHeel, b.Contact = 0, b.Width*units.Length(in(0.02, 1))
	case 1:
		b.AtToe, b.Contact = 0, b.Width*units.Length(in(0.02, 1))
	}
	return b
}

// under is the bearing at distance x from the toe's edge, by itself.
func (b Base) under(x float64) float64 {
	w, c := b.Width.Inches(), b.Contact.Inches()
	if c >= w {
		return b.AtToe.PSI() + (b.AtHeel-b.AtToe).PSI()*x/w
	}
	if b.AtToe > b.AtHeel {
		return max(0, b.AtToe.PSI()*(1-x/c))
	}
	return max(0, b.AtHeel.PSI()*(1-(w-x)/c))
}

// Moment and shear are the sums over thin slices of the projection.
func TestSlices(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 9))
	for range 200 {
		b := some(r)
		for name, p := range map[string]Projection{"toe": Toe(b), "heel": Heel(b)} {
			l := p.Length().Inches()
			from := l * r.Float64()
			const n = 4000
			var v, m, size float64
			for i := range n {
				a := from + (l-from)*(float64(i)+0.5)/n // from the face
				x, down := b.Toe.Inches()-a, b.OnToe.PSI()
				if name == "heel" {
					x, down = (b.Toe+b.Stem).Inches()+a, b.OnHeel.PSI()
				}
				q := (b.under(x) - down) * (l - from) / n
				v += q
				m += q * (a - from)
				size += math.Abs(q)
			}
			gm, gv := p.At(units.Length(from))
			if math.Abs(float64(gv)-v) > 1e-4*size+1e-9 || math.Abs(float64(gm)-m) > 1e-4*size*l+1e-9 {
				t.Fatalf("%s of %+v at %v: %v, %v, want %v, %v", name, b, from, gm, gv, m, v)
			}
		}
	}
}

// dM/dx = −V, and nothing acts beyond the edge.
func TestSlope(t *testing.T) {
	r := rand.New(rand.NewPCG(10, 11))
	for range 2000 {
		b := some(r)
		p := Toe(b)
		h := p.Length() / 1000
		x := p.Length() * units.Length(0.99*r.Float64())
		m0, v0 := p.At(x)
		m1, v1 := p.At(x + h)
		_, v := p.At(x + h/2)
		want := -float64(v0+4*v+v1) / 6 * h.Inches() // exact but where the contact ends
		if math.Abs(float64(m1-m0)-want) > 1e-4*(math.Abs(float64(v))+1)*h.Inches()+1e-12 {
			t.Fatalf("%+v: moment falls %v, want %v", b, m1-m0, want)
		}
		if m, v := p.At(p.Length()); math.Abs(float64(m))+math.Abs(float64(v)) > 0 {
			t.Fatalf("%v, %v at the edge", m, v)
		}
	}
}

func TestNoProjection(t *testing.T) {
	b := Base{Width: 20, Toe: 0, Stem: 24, Contact: 20, AtToe: 10, AtHeel: 5, OnHeel: 3}
	for name, p := range map[string]Projection{"toe": Toe(b), "heel": Heel(b)} {
		if d := p.Demand(0, 0); d != (Demand{}) || p.Length() > 0 {
			t.Errorf("%s: %+v", name, d)
		}
	}
	b = Base{Width: 40, Toe: 10, Stem: 8, OnToe: 1} // nothing presses back
	if m, v := Toe(b).At(0); math.Abs(float64(m)+50) > 1e-12 || math.Abs(float64(v)+10) > 1e-12 {
		t.Errorf("weight alone: %v, %v", m, v)
	}
}

func FuzzAt(f *testing.F) {
	f.Add(48.0, 12.0, 8.0, 48.0, 10.0, 3.0, 1.0, 5.0, 4.0)
	f.Add(48.0, 12.0, 8.0, 1e-9, 0.0, 3.0, 1.0, 5.0, 4.0)
	f.Fuzz(func(t *testing.T, width, toe, stem, contact, atToe, atHeel, onToe, onHeel, x float64) {
		for _, v := range []float64{width, toe, stem, contact, atToe, atHeel, onToe, onHeel, x} {
			if !(v >= 0 && v <= 1e9) {
				return
			}
		}
		b := Base{units.Length(width), units.Length(toe), units.Length(stem), units.Stress(atToe), units.Stress(atHeel),
			units.Length(contact), units.Stress(onToe), units.Stress(onHeel)}
		for _, p := range []Projection{Toe(b), Heel(b)} {
			m, v := p.At(units.Length(x))
			if s := float64(m) + float64(v); math.IsNaN(s) || math.IsInf(s, 0) {
				t.Fatalf("%+v: %v, %v", b, m, v)
			}
		}
	})
}

func BenchmarkDemand(b *testing.B) {
	base := Base{Width: 48, Toe: 12, Stem: 8, Contact: 40, AtToe: 10, OnToe: 1, OnHeel: 6}
	b.ReportAllocs()
	for b.Loop() {
		Toe(base).Demand(8, 10)
		Heel(base).Demand(8, 10)
	}
}

// A toe of 12 in, pressed by 10 psi at its edge and nothing at the far edge of
// a footing of 48 in, that weighs 1 psi.
func ExampleToe() {
	toe := Toe(Base{Width: 48, Toe: 12, Stem: 8, Contact: 48, AtToe: 10, OnToe: 1})
	d := toe.Demand(8.5, 12)
	fmt.Printf("%.1f lb-ft/ft and %.0f lb/ft at the face, %.0f lb/ft at d\n",
		d.Moment.LbFtPerFt(), d.Shear.PLF(), d.ShearAtD.PLF())
	// Output:
	// 588.0 lb-ft/ft and 1116 lb/ft at the face, 363 lb/ft at d
}
