package calc_test

import (
	"slices"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// has reports whether one of the notes has the id.
func has(notes []calc.Note, id string) bool {
	return slices.ContainsFunc(notes, func(n calc.Note) bool { return n.ID == id })
}

// TestUnknownGroundForbidsAnyFill holds that what is open about the ground
// forbids a low fill as well, while the floor is not on: a wall of ground that
// may swell, or that an earthquake presses by an amount nobody has said, has no
// height to which it stands.
func TestUnknownGroundForbidsAnyFill(t *testing.T) {
	for _, change := range []func(*calc.Input){
		func(w *calc.Input) { w.Soil = calc.Soil{} },
		func(w *calc.Input) { w.Soil, w.GradeA = calc.Soil{}, 3*ft },
		func(w *calc.Input) { w.Seismic, w.GradeA = "D2", 78*in },
		func(w *calc.Input) {
			w.Condition, w.Foot, w.Soil, w.Height = calc.FreeTop, calc.Foot{Held: calc.SlabTight}, calc.Soil{}, 6*ft
		},
	} {
		w := held()
		change(&w)
		for _, today := range []calc.Today{{Given: true}, {Given: true, Floor: true, Slab: true}} {
			w.Today = today
			if d := design(t, w).Today; d.Permission != calc.DoNotFill || d.Level != 0 || len(d.Because) == 0 {
				t.Errorf("%v to %v because %v\n%+v", d.Permission, d.Level, d.Because, w)
			}
		}
	}
}

// TestFillThatFinishesAFailingWall holds that a wall which stands its whole
// fill by itself is not filled when it fails as finished: the last inch of
// fill makes it the finished wall. 12 in of fill, 6,000 lb/ft on a footing of
// 24 in: bearing (6000 + 400 + 500 + 27 to 80)/2 > 2,000 psf.
func TestFillThatFinishesAFailingWall(t *testing.T) {
	w := held()
	w.GradeA, w.Axial.Dead, w.Footing.Bearing = 12*in, 6000*plf, 2000*psf
	for _, floor := range []bool{false, true} {
		w.Today.Floor = floor
		r := design(t, w)
		if s, _ := stateOf(t, r, "bearing", calc.Finished); s != calc.Fails || r.Today.Permission != calc.DoNotFill {
			t.Errorf("floor %v: bearing %v, today %v", floor, s, r.Today.Permission)
		}
	}
}

// TestTableScope holds limits of the residential tables' use: seismic category
// E and above is outside the residential code (IRC 2021 R301.2.2), and a wall
// whose foot nothing holds needs a design above 48 in of unbalanced fill
// (R404.1.1), to which a slab on the fill adds: 46 in and a slab of 8 in at
// 150 pcf, 100 psf, make 54 in.
func TestTableScope(t *testing.T) {
	w := held()
	w.Rulebook, w.GradeA = calc.RulebookUnset, 4*ft
	for category, inside := range map[string]bool{"C": true, "D2": true, "E": false, "F": false} {
		w.Seismic = category
		r := design(t, w)
		if r.Table.Inside != inside || (r.Governs == calc.Residential) != inside || has(r.Table.Reasons, "table-seismic") == inside {
			t.Errorf("category %s: inside %v, %v governs, %v", category, r.Table.Inside, r.Governs, r.Table.Reasons)
		}
	}
	w.Seismic, w.Foot = "", calc.Foot{}
	for _, c := range []struct {
		fill   units.Length
		dead   units.Stress
		inside bool
	}{{48 * in, 0, true}, {46 * in, 25 * psf, true}, {46 * in, 100 * psf, false}, {49 * in, 0, false}} {
		w.GradeA, w.Surcharge.Dead = c.fill, c.dead
		if r := design(t, w); has(r.Table.Reasons, "table-foot-not-held") == c.inside {
			t.Errorf("%v of fill and %v on it: %v", c.fill, c.dead, r.Table.Reasons)
		}
	}
}

// TestFreeStemBuckles holds a free wall with a load on its top against leaning
// over: its effective height is twice its height (ACI 318-19 6.6.4.4.3). By
// hand, 5.5 in × 20 ft, f'c 3000, Pd 3,000 lb/ft: Pu = 4,200; EI = 0.4·3.122e6·
// 166.4/2 = 1.039e8 lb-in²/ft; Pc = π²·1.039e8/480² = 4,450; 0.75 Pc = 3,338 <
// Pu: it buckles. 8 in × 6 ft: EI = 0.4·3.122e6·512/2 = 3.197e8; Pc =
// π²·3.197e8/144² = 152.2 kip/ft; δ = 1/(1 − 4.2/114.1) = 1.0382; the stem's
// 1.6·30·6³/6 = 1728 lb-ft/ft becomes 1794.
func TestFreeStemBuckles(t *testing.T) {
	w := stem(20*ft, fluid(30*pcf))
	w.Thickness, w.GradeA, w.Axial.Dead = 5.5*in, 1*ft, 3000*plf
	if s, asked := stateOf(t, design(t, w), "slenderness", calc.Finished); !asked || s != calc.Fails {
		t.Errorf("20 ft: slenderness asked %v, %v", asked, s)
	}
	w = stem(6*ft, fluid(30*pcf))
	w.Axial.Dead = 3000 * plf
	r := design(t, w)
	if m := check(t, r, "flexure").Demand.US(); m < 1793.5 || m > 1794.5 {
		t.Errorf("moment at the foot %.1f lb-ft/ft, by hand 1794", m)
	}
	for _, c := range r.Checks {
		if c.ID == "slenderness" {
			t.Errorf("6 ft: slenderness %v", c.State)
		}
	}
}

// TestLimitsInOtherUnits holds that a limit is permitted in whatever unit it
// was typed: the same length, force or pressure that comes with the rounding
// of another unit gives the same answer.
func TestLimitsInOtherUnits(t *testing.T) {
	w := held()
	w.GradeA, w.GradeB, w.Water = w.Height, w.Height, calc.Water{Standing: true, Level: w.Height}
	w.Axial.Dead, w.FloorEdge, w.Surcharge.Dead = 20000*plf, 20000*plf, 2000*psf
	want := design(t, w)
	more := 1 + 1e-13
	w.GradeA *= units.Length(more)
	w.GradeB *= units.Length(more * more)
	w.Water.Level = w.GradeB
	w.Brace = w.GradeB
	w.Axial.Dead, w.FloorEdge = w.Axial.Dead*units.ForcePerLength(more), w.FloorEdge*units.ForcePerLength(more)
	w.Surcharge.Dead *= units.Stress(more)
	got := design(t, w)
	if got.Verdict != want.Verdict || len(got.Checks) != len(want.Checks) || got.Today.Permission != want.Today.Permission {
		t.Errorf("%v, %d checks, %v; exactly at the limit %v, %d, %v", got.Verdict, len(got.Checks), got.Today.Permission,
			want.Verdict, len(want.Checks), want.Today.Permission)
	}
	w.Height = 20*ft + 0.01*in
	if _, err := calc.Design(w); err == nil {
		t.Error("0.01 in over 20 ft is permitted")
	}
}

// TestBarsTooClose holds bars that a person set too near: No. 11 at 2 in leaves
// 2 − 1.41 = 0.59 in, where its own diameter is asked (ACI 318-19 25.2.1), 2.82
// in centre to centre; No. 6 of Grade 80 at 5 in asks ties or 6 in (25.4.2.2);
// the residential book asks half the thickness, 4 in (R404.1.3.3.7.6).
func TestBarsTooClose(t *testing.T) {
	for _, c := range []struct {
		size    int
		spacing units.Length
		fy      units.Stress
		book    calc.Rulebook
		least   float64
		state   calc.State
	}{
		{11, 2 * in, 60 * units.KSI, calc.Engineered, 2.82, calc.Fails},
		{11, 3 * in, 60 * units.KSI, calc.Engineered, 2.82, calc.Holds},
		{4, 2 * in, 60 * units.KSI, calc.Engineered, 1.5, calc.Holds},
		{6, 5 * in, 80 * units.KSI, calc.Engineered, 6, calc.Fails},
		{6, 6 * in, 80 * units.KSI, calc.Engineered, 1.75, calc.Holds},
		{5, 3 * in, 60 * units.KSI, calc.Residential, 4, calc.Fails},
	} {
		w := held()
		w.Vertical = calc.Bars{Fixed: true, Size: c.size, Spacing: c.spacing, Face: calc.FaceB}
		w.Material.Fy, w.Rulebook = c.fy, c.book
		k := check(t, design(t, w), "bar-clearance")
		if d := k.Demand.US() - c.least; d > 1e-9 || d < -1e-9 || k.State != c.state || !k.Decides {
			t.Errorf("No. %d at %v, %v: least %v, %v", c.size, c.spacing, c.fy, k.Demand.US(), k.State)
		}
	}
}

// TestOpenFaceInTheWeather holds the cover of bars on the open face: 3/4 in
// inside a house, 1 1/2 in in the weather, ACI 318-19 Table 20.5.1.3.1. By hand
// No. 5 at 12 in in 8 in, f'c 3000: d = 8 − 1.5 − 0.3125 = 6.1875 in; a =
// 0.31·60/(0.85·3·12) = 0.6078; φMn = 0.9·0.31·60·(6.1875 − 0.3039)/12 = 8.208
// kip-ft/ft.
func TestOpenFaceInTheWeather(t *testing.T) {
	bars := calc.Bars{Fixed: true, Size: 5, Spacing: 12 * in, Face: calc.FaceB}
	w := basement(8*ft, 8*ft, 45*pcf)
	w.Vertical = bars
	inside, _ := vertical(design(t, w))
	w.Condition, w.Tie = calc.TiedToSlab, calc.Tie{SlabThickness: 4 * in, Before: calc.Rakers}
	r := design(t, w)
	open, _ := vertical(r)
	if inside.Cover != 0.75*in || open.Cover != 1.5*in {
		t.Errorf("cover inside %v, in the weather %v", inside.Cover, open.Cover)
	}
	if m := check(t, r, "flexure").Capacity.US(); m < 8207 || m > 8208.5 {
		t.Errorf("φMn %v, by hand 8,208 lb-ft/ft", m)
	}
}

// TestActivePressureOnAHeldWall holds that an equivalent fluid said to be
// active leaves a wall that is held at its top open: it needs the pressure at
// rest, but under a flexible floor up to 8 ft below grade (IBC 2021 1610.1). A
// slab is never flexible, a free wall moves.
func TestActivePressureOnAHeldWall(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*calc.Input)
		open   bool
	}{
		{"held", func(*calc.Input) {}, true},
		{"at rest", func(w *calc.Input) { w.Soil.Pressure = calc.PressureAtRest }, false},
		{"unsaid", func(w *calc.Input) { w.Soil.Pressure = calc.PressureUnsaid }, false},
		{"flexible floor", func(w *calc.Input) { w.Floor = calc.FloorFlexible }, false},
		{"flexible floor, 9 ft", func(w *calc.Input) { w.Floor, w.Height, w.GradeA = calc.FloorFlexible, 9*ft, 9*ft }, true},
		{"tied", func(w *calc.Input) {
			w.Condition, w.Floor, w.Tie = calc.TiedToSlab, calc.FloorFlexible, calc.Tie{SlabThickness: 4 * in}
		}, true},
		{"free", func(w *calc.Input) { w.Condition = calc.FreeTop }, false},
	} {
		w := held()
		w.Soil.Pressure = calc.PressureActive
		c.change(&w)
		r := design(t, w)
		open := slices.ContainsFunc(r.Checks, func(k calc.Check) bool { return k.ID == "soil-at-rest" && k.State == calc.Open && k.Decides })
		if open != c.open || (open && (r.Verdict == calc.Holds || r.Today.Permission == calc.MayFill)) {
			t.Errorf("%s: open %v, verdict %v, today %v", c.name, open, r.Verdict, r.Today.Permission)
		}
	}
}

// TestThinFootingWithBars holds that a footing whose bottom bars lie less than
// 6 in deep does not hold with them (ACI 318-19 13.3.1.2): 8 in less 3 in of
// cover and half a No. 4 leave 4.75 in; 10 in leave 6.75 in.
func TestThinFootingWithBars(t *testing.T) {
	for _, c := range []struct {
		thick units.Length
		depth float64
		state calc.State
	}{{8 * in, 4.75, calc.Fails}, {10 * in, 6.75, calc.Holds}} {
		w := stem(6*ft, fluid(45*pcf))
		w.Sizes = []int{4}
		w.Footing = calc.Footing{Given: true, Width: 84 * in, Thickness: c.thick, Toe: 42 * in, Bearing: 4000 * psf, Friction: 0.6}
		k := check(t, design(t, w), "toe-depth")
		if k.State != c.state || k.Demand.US() < 5.999 || k.Demand.US() > 6.001 || k.Capacity.US() < c.depth-1e-6 || k.Capacity.US() > c.depth+1e-6 {
			t.Errorf("%v thick: %v of %v, %v", c.thick, k.Demand.US(), k.Capacity.US(), k.State)
		}
	}
}

// TestShearOfABracket holds the shear that a load toward B gives at the brace:
// its couple over the span. By hand 24 in × 2 ft, f'c 3000, 6 in of fill of 45
// pcf, Pd = Pl = 8,000 lb/ft at 12 in: 2.8·8000·1/2 = 11,200 lb/ft, and the
// fill's 1.6·45·0.5³/6/2 = 0.75; plain φVn = 0.6·4/3·√3000·12·24 = 12,620.
func TestShearOfABracket(t *testing.T) {
	w := basement(2*ft, 6*in, 45*pcf)
	w.Thickness, w.Axial = 24*in, calc.Axial{Dead: 8000 * plf, Live: 8000 * plf, Eccentricity: 12 * in}
	k := check(t, design(t, w), "plain-shear")
	if d, c := k.Demand.US(), k.Capacity.US(); d < 11200 || d > 11201 || c < 12615 || c > 12625 {
		t.Errorf("shear %v of %v, by hand 11,201 of 12,620 lb/ft", d, c)
	}
}

// TestToeBeforeTheHouse holds that the toe of a free wall carries the fill
// before the house stands on it. By hand 6 ft by 8 in, 30 pcf, 120 and 150 pcf,
// footing 60 × 10 in, toe 42 in, without the load: 0.9 D + 1.6 H gives N =
// 1642.5 lb/ft at x = 2.069 ft, e = 0.431 ft, q = 498.3 to 158.7 psf, 260.6 at
// the stem, and Mu = 1877.8 lb-ft/ft; the load of 4,000 lb/ft, 4 in toward A,
// leaves less.
func TestToeBeforeTheHouse(t *testing.T) {
	w := stem(6*ft, fluid(30*pcf))
	w.Soil.Weight = 120 * pcf
	w.Footing = calc.Footing{Given: true, Width: 60 * in, Thickness: 10 * in, Toe: 42 * in, Bearing: 10000 * psf, Friction: 0.8}
	w.Axial = calc.Axial{Dead: 4000 * plf, Eccentricity: -4 * in}
	if m := check(t, design(t, w), "toe-flexure").Demand.US(); m < 1877.7 || m > 1877.9 {
		t.Errorf("toe %.1f lb-ft/ft, by hand 1877.8", m)
	}
}

// TestHeelWithoutAToe holds the anchorage of a heel's bars where the footing has
// no toe: under a stem of 8 in a hook has 8 − 3 = 5 in. By hand No. 7 in f'c
// 3000: ψc = 0.8, ldh = 60,000·0.8/(55·√3000)·0.875^1.5 = 13.04 in, so the bars
// reach 0.383 fy; No. 4 needs 5.63, at least 6 in, and reaches 0.833 fy: at 5
// in in 12 in, d = 12 − 1.5 − 0.25 = 10.25, As = 0.833·0.48 = 0.40; a = 0.7843;
// φMn = 0.9·0.40·60·(10.25 − 0.392)/12 = 17.74 kip-ft/ft.
func TestHeelWithoutAToe(t *testing.T) {
	w := stem(8*ft, fluid(45*pcf))
	w.Soil.Weight = 120 * pcf
	w.Footing = calc.Footing{Given: true, Width: 60 * in, Thickness: 12 * in, Bearing: 4000 * psf, Friction: 0.6}
	w.Sizes = []int{4}
	r := design(t, w)
	k := check(t, r, "heel-flexure")
	spacing := 0.0
	for _, b := range r.Bars {
		if b.Role == calc.HeelBar {
			spacing = b.Spacing.Inches()
		}
	}
	as := 5.0 / 6 * 0.20 * 12 / spacing
	byHand := 0.9 * as * 60000 * (10.25 - as*60/(0.85*3*12)/2) / 12
	if d := k.Capacity.US() - byHand; spacing == 0 || d > 1 || d < -1 {
		t.Errorf("No. 4 at %v in: φMn %v, by hand %v lb-ft/ft", spacing, k.Capacity.US(), byHand)
	}
	w.Sizes = []int{7}
	if k := check(t, design(t, w), "heel-flexure"); k.Capacity.US() > 0.40*0.9*0.6*12/4*60000*10/12 {
		t.Errorf("No. 7 count with %v lb-ft/ft", k.Capacity.US())
	}
}

// TestYoungerNeverGivesMoreLeave holds that weaker concrete today never permits
// more: below the least strength, 2,500 psi, what fails in 2,500 psi still
// counts, and 2,500 psi typed in another unit is not below it.
func TestYoungerNeverGivesMoreLeave(t *testing.T) {
	r := seeded(29)
	rank := map[calc.Permission]int{calc.DoNotFill: 0, calc.FillOnlyTo: 1, calc.MayFill: 2}
	for range 500 {
		w := r.wall()
		if calcErr(w) {
			continue
		}
		w.Today.Given, w.Today.Concrete = true, 2500*units.PSI
		at := design(t, w).Today
		w.Today.Concrete *= 1 - 1e-12
		near := design(t, w).Today
		w.Today.Concrete = 2499 * units.PSI
		below := design(t, w).Today
		if near.Permission != at.Permission || rank[below.Permission] > rank[at.Permission] || below.Level > at.Level {
			t.Errorf("2,500 psi %v to %v, beside it %v, 2,499 psi %v to %v\n%+v", at.Permission, at.Level, near.Permission, below.Permission, below.Level, w)
		}
	}
}

func calcErr(w calc.Input) bool {
	_, err := calc.Design(w)
	return err != nil
}

// TestLimitsOfUseInOtherUnits holds that a wall at a limit of the tables or of
// plain concrete in an earthquake is inside it in whatever unit it was typed.
func TestLimitsOfUseInOtherUnits(t *testing.T) {
	w := held()
	w.Rulebook, w.GradeA, w.Seismic = calc.RulebookUnset, 4*ft, "D2"
	w.GradeA *= 1 + 1e-12
	w.Material.Fc *= 1 - 1e-12
	if r := design(t, w); !r.Table.Inside {
		t.Errorf("outside: %v", r.Table.Reasons)
	}
	w.Rulebook = calc.Engineered
	if r := design(t, w); !r.Plain {
		t.Error("not plain")
	}
	w.Seismic, w.Rulebook, w.Material.Fc = "", calc.RulebookUnset, 2500*units.PSI*(1-1e-12)
	if r := design(t, w); !r.Table.Inside {
		t.Errorf("2,500 psi is outside: %v", r.Table.Reasons)
	}
}
