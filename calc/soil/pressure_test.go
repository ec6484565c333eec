package soil

import (
	"encoding/json"
	"math"
	"math/rand/v2"
	"os"
	"testing"

	"standingbeam/calc/units"
)

// layer is one ground of a published case.
type layer struct {
	Grade, Floor, Phi, K, Moist, Saturated, Fluid, Dead, Live float64
	State                                                     string
	Water                                                     *float64
}

type scale struct {
	length         units.Length
	weight         units.UnitWeight
	stress         units.Stress
	force, bending float64
}

var scales = map[string]scale{
	"US": {units.Foot, units.PCF, units.PSF, float64(units.PLF), 1},
	"SI": {units.Metre, units.KNPerM3, units.KPa, float64(units.KNPerM), float64(units.KNmPerM)},
}

func (l layer) ground(u scale) Ground {
	g := Ground{Grade: units.Length(l.Grade) * u.length, Floor: units.Length(l.Floor) * u.length,
		Moist: units.UnitWeight(l.Moist) * u.weight, Saturated: units.UnitWeight(l.Saturated) * u.weight,
		Fluid: units.UnitWeight(l.Fluid) * u.weight, K: l.K, Side: 'a',
		Dead: units.Stress(l.Dead) * u.stress, Live: units.Stress(l.Live) * u.stress}
	if l.State == "active" {
		g.K = ActiveCoefficient(units.Angle(l.Phi) * units.Degree)
	}
	if l.Water != nil {
		g.Wet, g.Water = true, units.Length(*l.Water)*u.length
	}
	return g
}

func TestPublishedPressures(t *testing.T) {
	text, err := os.ReadFile("../../testdata/reference/soil/pressures.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Cases []struct {
			Name, Unit, Source string
			Grounds            []layer
			Expect             []struct {
				What           string
				At, Value, Tol float64
			}
		}
	}
	if err := json.Unmarshal(text, &file); err != nil || len(file.Cases) < 6 {
		t.Fatalf("%d cases, %v", len(file.Cases), err)
	}
	for _, c := range file.Cases {
		u := scales[c.Unit]
		var blocks []Block
		for _, l := range c.Grounds {
			blocks = append(blocks, Pressure(l.ground(u))...)
		}
		push, level := Thrust(blocks, 'a')
		for _, e := range c.Expect {
			y := units.Length(e.At) * u.length
			got := map[string]float64{
				"thrust":      float64(push) / u.force,
				"level":       float64(level / u.length),
				"moment":      float64(push) * float64(level) / u.bending,
				"earth above": float64(sum(blocks, y, +1, false) / u.stress),
				"earth below": float64(sum(blocks, y, -1, false) / u.stress),
				"water above": float64(sum(blocks, y, +1, true) / u.stress),
			}
			v, ok := got[e.What]
			if !ok || math.Abs(v-e.Value) > e.Tol {
				t.Errorf("%s: %s at %v = %v, want %v (%s)", c.Name, e.What, e.At, v, e.Value, c.Source)
			}
		}
	}
}

// sum is the pressure just above (+1) or just below (−1) level y: of water, or
// of all the rest.
func sum(blocks []Block, y units.Length, side float64, water bool) (p units.Stress) {
	y += units.Length(side * 1e-9)
	for _, b := range blocks {
		if (b.Cause == Water) == water && b.To < y && y < b.From {
			f := units.Stress((b.From - y) / (b.From - b.To))
			p += b.Top + (b.Bottom-b.Top)*f
		}
	}
	return p
}

// some draws a ground.
func some(r *rand.Rand) Ground {
	in := func(lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }
	g := Ground{Grade: units.Length(in(-12, 120)), Floor: units.Length(in(-14, 10)), K: in(0.2, 1), Side: 'a',
		Moist: units.UnitWeight(in(90, 140)) * units.PCF, Saturated: units.UnitWeight(in(60, 150)) * units.PCF,
		Dead: units.Stress(in(0, 200)) * units.PSF, Live: units.Stress(in(0, 200)) * units.PSF}
	if r.IntN(2) == 0 {
		g.Wet, g.Water = true, units.Length(in(-20, 110))
	}
	return g
}

// Blocks are never empty, negative or below the floor; the earth is continuous
// at the water's level; and their sum is what the vertical stress gives.
func TestBlocks(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 5000 {
		g := some(r)
		blocks := Pressure(g)
		if (g.Grade <= g.Floor) != (len(blocks) == 0) {
			t.Fatalf("%+v gives %v", g, blocks)
		}
		for i, b := range blocks {
			inside := b.From > b.To && b.To >= g.Floor && b.From <= max(g.Grade, g.Water)
			if !inside || b.Top < 0 || b.Bottom < 0 || !(b.Top+b.Bottom > 0) || b.Side != 'a' {
				t.Fatalf("%+v gives %+v", g, b)
			}
			if i > 0 && b.Cause == Earth && math.Abs(float64(b.Top-blocks[0].Bottom)) > 1e-15 {
				t.Fatalf("earth jumps: %+v", blocks)
			}
		}
		if len(blocks) == 0 {
			continue
		}
		// At the floor: K (total − water) + K q + water, all by hand.
		z := float64(g.Grade - g.Floor)
		wet := 0.0
		if g.Wet {
			wet = max(0, float64(g.Water-g.Floor))
		}
		below := min(wet, z)
		stress := float64(g.Moist)*(z-below) + below*max(0, float64(g.Saturated-WaterWeight)) + float64(g.Dead+g.Live)
		want := g.K*stress + float64(WaterWeight)*wet
		if got := float64(atFloor(blocks, g.Floor)); math.Abs(got-want) > 1e-12 {
			t.Fatalf("%+v: %v at the floor, want %v", g, got, want)
		}
	}
}

// atFloor is the whole pressure at the floor level.
func atFloor(blocks []Block, floor units.Length) (p units.Stress) {
	for _, b := range blocks {
		if b.To <= floor {
			p += b.Bottom
		}
	}
	return p
}

// More ground, more water and more load never push less (with soil no lighter
// than water, K at most 1, and saturated no lighter than moist soil by more
// than the water's weight takes off).
func TestMorePushesMore(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 2000 {
		g := some(r)
		g.Saturated = g.Moist + 5*units.PCF
		if g.Wet {
			g.Water = min(g.Water, g.Grade)
		}
		p, _ := Thrust(Pressure(g), 'a')
		for name, change := range map[string]func(*Ground){
			"grade": func(g *Ground) { g.Grade += 3 },
			"water": func(g *Ground) { g.Wet, g.Water = true, max(g.Floor, g.Water)+3 },
			"dead":  func(g *Ground) { g.Dead += units.PSF },
			"live":  func(g *Ground) { g.Live += units.PSF },
			"K":     func(g *Ground) { g.K *= 1.01 },
		} {
			h := g
			change(&h)
			if more, _ := Thrust(Pressure(h), 'a'); more < p-1e-9 {
				t.Fatalf("more %s pushes %v, less than %v: %+v", name, more, p, g)
			}
		}
	}
}

// A load on the strip keeps push and level; side b pushes the other way.
func TestLoad(t *testing.T) {
	for _, side := range []byte{'a', 'b'} {
		b := Block{Earth, side, 84, 12, 0.5, 2}
		l := b.Load(1.6)
		sign := 1.6
		if side == 'b' {
			sign = -1.6
		}
		if math.Abs(l.From.Inches()-12) > 1e-12 || math.Abs(l.To.Inches()-84) > 1e-12 ||
			math.Abs(l.AtFrom.PSI()-sign*2) > 1e-12 || math.Abs(l.AtTo.PSI()-sign*0.5) > 1e-12 {
			t.Errorf("side %c: %+v", side, l)
		}
	}
	// A trapezoid 0.5 to 2 psi, 72 in: 90 lb/in at 72/3·(1 + 2)/2.5 above 12.
	b := Block{Earth, 'b', 84, 12, 0.5, 2}
	p, y := b.Resultant()
	if math.Abs(float64(p)-90) > 1e-12 || math.Abs(float64(y)-(12+28.8)) > 1e-12 {
		t.Errorf("resultant %v at %v", p, y)
	}
	if p, y := Thrust([]Block{b}, 'a'); math.Abs(float64(p))+math.Abs(float64(y)) > 0 {
		t.Errorf("side a pushes %v at %v", p, y)
	}
}
