package sheet

import (
	"math"
	"strings"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Lengths of bars by hand. A standard 90° hook of a No. 4 (ACI 318-19 Table
// 25.3.1): bend 6 db inside, tail 12 db, so that its leg is 3 + 1 + 12 = 16 db
// = 8 in; along its middle it is π/2 · 3.5 db = 2.749 in round the bend.
func TestLengths(t *testing.T) {
	w := wall(calc.TiedToSlab)
	r := answered(t, w)
	r.Bars = []calc.Bar{
		{Role: calc.VerticalBar, Face: calc.FaceB, Size: 4, Spacing: 16, Cover: 0.75, Depth: 9},
		{Role: calc.DowelBar, Face: calc.Centre, Size: 4, Spacing: 16, Up: 29, Down: 9, Hook: 6, Depth: 5},
		{Role: calc.TieBar, Size: 4, Spacing: 12, Length: 24, HookAvail: 9.25, Hook: 6},
		{Role: calc.FootingBar, Size: 5, Count: 2, Cover: 3},
	}
	s := newScene(&r, words.Speaker{})
	for _, test := range []struct {
		role calc.BarRole
		sum  float64 // by hand, before it is rounded to the inch
		want float64
	}{
		{calc.VerticalBar, 9*12 - 2, 106},                                       // 2 in under the top
		{calc.DowelBar, 29 + 9 - 0.5/2 - 3.5*0.5 + 2.749 + 6, 45},               // up: 44.749
		{calc.TieBar, 24 + 9.25 - 0.5/2 - 3.5*0.5 + 2.749 + 6, math.Ceil(40.0)}, // up: 39.999
		{calc.FootingBar, 0, 0},                                                 // goes with the footing
	} {
		b := s.find(test.role)
		if math.Abs(b.length-test.want) > 1e-9 {
			t.Errorf("%s is %v in long, want %v (%v by hand)", test.role, b.length, test.want, test.sum)
		}
		if test.sum > 0 && (math.Abs(b.length-test.sum) > 1) {
			t.Errorf("%s is %v in long, by hand %v", test.role, b.length, test.sum)
		}
	}
	d := s.find(calc.DowelBar)
	if d.legs[0] != 38 || math.Abs(d.legs[1]-8) > 1e-9 {
		t.Errorf("legs %v, want 38 and 8", d.legs)
	}
	row := s.schedule()[1]
	for _, want := range []string{"3 ft 9 in", "38 in + 8 in hook, tail 6 in", "up 29 in, down 9 in"} {
		if !strings.Contains(row.plain(s), want) {
			t.Errorf("the dowels' line %q does not say %q", row.plain(s), want)
		}
	}
}

// Bars stay inside the concrete that holds them, and a hook's drawn leg is the
// standard one.
func TestBarsInConcrete(t *testing.T) {
	list := walls()
	for i, w := range grid() {
		if i%5 == 0 {
			list[w.Name] = w
		}
	}
	for name, w := range list {
		r, err := calc.Design(w)
		if err != nil {
			continue
		}
		s := newScene(&r, words.Speaker{})
		solid := []box{{0, 0, s.t, s.h}, {-s.heel, -s.tf, s.t + s.toe, 0}}
		if s.tie != nil {
			solid = append(solid, box{-1e4, s.tie.y0, 0, s.tie.y1})
		}
		inside := func(p point) bool {
			for _, b := range solid {
				if p.x >= b.x0-1e-6 && p.x <= b.x1+1e-6 && p.y >= b.y0-1e-6 && p.y <= b.y1+1e-6 {
					return true
				}
			}
			return false
		}
		for _, b := range s.bars {
			for _, c := range b.line {
				if !inside(c.point) && b.HookAvail >= 0 && !short(s, &b) {
					t.Errorf("%s: %s leaves the concrete at %v", name, b.mark, c.point)
				}
			}
			for _, p := range b.dots {
				if !inside(p) {
					t.Errorf("%s: %s lies outside the concrete at %v", name, b.mark, p)
				}
			}
		}
	}
}

// short reports a hook that the concrete cannot hold: a check says so.
func short(s *scene, b *placed) bool {
	switch b.Role {
	case calc.DowelBar:
		return b.Down <= 0
	case calc.TieBar:
		return s.brace < b.legs[1]
	}
	return false
}

// What must be in place follows from how the wall is held.
func TestBefore(t *testing.T) {
	for name, want := range map[string][]string{
		"braced": {"Floor on", "cast tight", "Drain laid", "SM, silty sand", "kept back"},
		"free":   {"Concrete has reached 3,000 psi", "kept back"},
		"tied":   {"stands alone", "Tie bars"},
		"rakers": {"Rakers in place"},
		"both":   {"Both sides raised together", "Floor on"},
		"wet":    {"Water no higher than 5 ft 0 in", "comes later", "100 psf"},
	} {
		r := answered(t, walls()[name])
		all := strings.Join(newScene(&r, words.Speaker{}).before(), "\n")
		for _, w := range want {
			if !strings.Contains(all, w) {
				t.Errorf("%s: nothing of %q in\n%s", name, w, all)
			}
		}
	}
	r := answered(t, walls()["free"])
	if all := strings.Join(newScene(&r, words.Speaker{}).before(), "\n"); strings.Contains(all, "Floor") || strings.Contains(all, "slab") {
		t.Errorf("a free wall waits for a floor or a slab:\n%s", all)
	}
}

// Labels keep their order and their distance, stay in the column and off what
// is blocked; where one has room at the place that it wants, it stands there.
func TestSpread(t *testing.T) {
	seed := uint32(7)
	random := func(n int) float64 {
		seed = seed*1664525 + 1013904223
		return float64(seed>>8%uint32(n*100)) / 100
	}
	placed := 0
	for range 300 {
		slots := make([]slot, int(random(6))+1)
		for i := range slots {
			slots[i] = slot{random(200), 8 + random(20)}
		}
		blocked := []span{{60, 60 + random(40)}}
		where, ok := spread(slots, 0, 260, blocked)
		if !ok {
			continue
		}
		placed++
		for i, at := range where {
			from, to := at-slots[i].size/2, at+slots[i].size/2
			if from < -1e-9 || to > 260+1e-9 || from < blocked[0].to-1e-9 && to > blocked[0].from+1e-9 {
				t.Errorf("label %d lies at %v to %v", i, from, to)
			}
			if i > 0 && where[i-1]+slots[i-1].size/2 > from+1e-9 {
				t.Errorf("labels %d and %d touch", i-1, i)
			}
		}
	}
	if placed < 200 {
		t.Errorf("only %d of 300 columns found room", placed)
	}
	for _, test := range []struct {
		slots []slot
		want  []float64 // nil = no room
	}{
		{[]slot{{50, 10}}, []float64{50}},
		{[]slot{{50, 10}, {100, 10}}, []float64{50, 100}},
		{[]slot{{50, 100}, {50, 61}}, nil},
		{nil, nil},
	} {
		got, ok := spread(test.slots, 0, 160, nil)
		if ok != (test.want != nil || test.slots == nil) {
			t.Errorf("%v: found room is %v", test.slots, ok)
		}
		for i := range test.want {
			if math.Abs(got[i]-test.want[i]) > 0.5 {
				t.Errorf("%v lie at %v, want %v", test.slots, got, test.want)
			}
		}
	}
}

// No letter is smaller than 7 points, and no line thinner than half a point.
func TestLegible(t *testing.T) {
	eachPaper(t, func(t *testing.T, r calc.Result, o Options) {
		for _, v := range newScene(&r, o.Speaker).standalone(o).views {
			for _, x := range v.texts {
				if x.size < 7 {
					t.Errorf("%q is %v points high", x.words, x.size)
				}
			}
			for _, p := range v.paths {
				if p.pen < 0.5 {
					t.Errorf("a pen of %v points", p.pen)
				}
			}
		}
	})
}

// Odd answers of any kind become papers without a panic.
func FuzzPapers(f *testing.F) {
	f.Add(108.0, 96.0, 10.0, 24.0, 12.0, 7.0, 0, 45.0, 0.0)
	f.Add(24.0, 24.0, 5.5, 180.0, 6.0, 160.0, 1, 100.0, 3.0)
	f.Fuzz(func(t *testing.T, h, a, thick, width, tf, toe float64, c int, fluid, water float64) {
		w := wall(calc.Condition(uint(c) % 4))
		w.Height, w.GradeA, w.Thickness = units.Length(h), units.Length(a), units.Length(thick)
		w.GradeB = min(w.GradeB, w.GradeA)
		w.Footing.Width, w.Footing.Thickness, w.Footing.NoToe, w.Footing.Toe = units.Length(width), units.Length(tf), false, units.Length(toe)
		w.Soil = calc.Soil{Basis: calc.SoilFluid, Fluid: units.UnitWeight(fluid) * units.PCF}
		w.Water = calc.Water{Standing: water > 0, Level: units.Length(water)}
		r, err := calc.Design(w)
		if err != nil {
			return
		}
		o := Options{}
		for _, paper := range []string{Crew(r, o), Calculation(r, o), DXF(r, o)} {
			if strings.Contains(paper, "NaN") || strings.Contains(paper, "Inf") {
				t.Error("a number that is none")
			}
		}
	})
}
