package calc_test

import (
	"reflect"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

func explain(t testing.TB, in calc.Input) calc.Result {
	t.Helper()
	r, err := calc.Explain(in)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// demanded are the checks whose working must show how the demand was reached.
var demanded = []string{"plain-flexure", "plain-shear", "plain-compression", "flexure", "shear", "axial-flexure", "joint-shear-friction",
	"floor-edge", "tie-tension", "bearing", "heel-flexure", "heel-shear", "toe-flexure", "toe-shear"}

// Explain gives the answer of Design, and its workings reach what is asked for
// by the sums of a text book, which here come to what the exact diagrams gave.
func TestExplain(t *testing.T) {
	type count struct{ all, shown int }
	seen := map[string]*count{}
	for _, id := range demanded {
		seen[id] = &count{}
	}
	walls(21, many, func(in calc.Input, r calc.Result) {
		full := explain(t, in)
		for _, c := range full.Checks {
			if n := seen[c.ID]; n != nil && c.Demand.Base > 1e-3 {
				n.all++
				for _, s := range c.Steps {
					if s.Value.Kind == c.Demand.Kind && close9(s.Value.Base, c.Demand.Base) {
						n.shown++
						break
					}
				}
			}
			oneValue(t, c)
		}
		if !reflect.DeepEqual(bare(r), bare(full)) {
			t.Errorf("Explain answers otherwise than Design\n%+v", in)
		}
	})
	for id, n := range seen {
		// What is left are sums of which next to nothing remains.
		if n.all < 50 || float64(n.shown) < 0.975*float64(n.all) {
			t.Errorf("%s: %d of %d workings show the demand", id, n.shown, n.all)
		}
	}
}

// oneValue holds that a symbol has one value in one working.
func oneValue(t *testing.T, c calc.Check) {
	t.Helper()
	values := map[string]units.Quantity{}
	note := func(symbol string, q units.Quantity) {
		if v, ok := values[symbol]; ok && !close9(v.Base, q.Base) {
			t.Errorf("%s: %s is %v and %v", c.ID, symbol, v, q)
		}
		values[symbol] = q
	}
	for _, s := range c.Steps {
		for _, w := range s.With {
			note(w.Symbol, w.Value)
		}
		note(s.Symbol, s.Value)
	}
}

// bare is a result without its workings.
func bare(r calc.Result) calc.Result {
	r.Checks = append([]calc.Check(nil), r.Checks...)
	for i := range r.Checks {
		r.Checks[i].Steps = nil
	}
	return r
}

// The wall of the contract, held by the floor: 45 pcf, 7 ft of fill, 8 ft tall.
// By hand: 45·7²/2 = 1,102.5 lb/ft at 7/3 ft; 321.56 lb/ft at the top and
// 780.94 at the foot; no shear at 7 − √(2·321.56/45) = 3.2196 ft, and there
// 1,131.99 lb-ft, times 1.6.
func TestExplainByHand(t *testing.T) {
	in := calc.Input{Condition: calc.BracedTop, Height: 8 * ft, Thickness: 8 * units.Inch, GradeA: 7 * ft,
		Foot: calc.Foot{Held: calc.SlabTight}, Soil: calc.Soil{Basis: calc.SoilFluid, Fluid: 45 * pcf}, Rulebook: calc.Engineered,
		Material: calc.Material{Fc: 3000 * units.PSI, Fy: 60 * units.KSI}}
	want := map[string]struct {
		formula string
		us, tol float64
	}{
		"pu": {"1.6 γeq hA", 504, 0.05}, "Fu": {}, "F": {"pu hA/2", 1764, 0.05}, "yF": {"hA/3", 2.3333, 5e-5},
		"Rtu": {"F yF/ℓ", 514.5, 0.05}, "k": {"pu/hA", 72, 0.05}, "ym": {"hA − √(2 Rtu/k)", 3.2196, 5e-5},
		"Mu": {"Rtu (ℓ − ym) − k (hA − ym)^3/6", 1811.19, 0.005},
	}
	found := 0
	for _, c := range explain(t, in).Checks {
		if c.ID != "flexure" {
			continue
		}
		for _, s := range c.Steps {
			if w, ok := want[s.Symbol]; ok {
				found++
				if s.Formula != w.formula || s.Value.US() < w.us-w.tol || s.Value.US() > w.us+w.tol {
					t.Errorf("%s = %s = %v, want %s = %v", s.Symbol, s.Formula, s.Value.US(), w.formula, w.us)
				}
			}
		}
	}
	if found != len(want)-1 {
		t.Errorf("%d steps of the demand were found", found)
	}
}
