package calc_test

import (
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// strip footing of the walls below.
var strip = calc.Footing{Given: true, Width: 24 * in, Thickness: 12 * in, NoToe: true, Bearing: 4000 * psf, Friction: 0.40}

// held is a wall that stands finished and today, everything asked and given.
func held() calc.Input {
	w := basement(8*ft, 6*ft, 45*pcf)
	w.FloorEdge, w.Footing = 1000*plf, strip
	w.Today = calc.Today{Given: true, Floor: true, Slab: true, Concrete: 3000 * units.PSI}
	return w
}

// TestHeld holds the wall that the others start from: it holds and may be
// filled.
func TestHeld(t *testing.T) {
	r := design(t, held())
	if r.Verdict != calc.Holds || r.Today.Permission != calc.MayFill || !r.Plain {
		t.Errorf("verdict %v, today %v, plain %v", r.Verdict, r.Today.Permission, r.Plain)
	}
}

// TestToday holds what may be filled today where one thing is missing: what is
// not there yet, is not asked, or does not hold, never gives leave.
func TestToday(t *testing.T) {
	for _, test := range []struct {
		name   string
		change func(*calc.Input)
	}{
		{"no floor", func(w *calc.Input) { w.Today.Floor = false }},
		{"no slab", func(w *calc.Input) { w.Today.Slab = false }},
		{"floor edge not known", func(w *calc.Input) { w.FloorEdge = 0 }},
		{"floor edge too weak", func(w *calc.Input) { w.FloorEdge = 100 * plf }},
		// Plain φMn at 2,500 psi 0.6·5·50·128/12 = 1600; 80 in of fill asks 1634.
		{"plain concrete too young", func(w *calc.Input) {
			w.Material.Fc, w.GradeA, w.Today.Concrete = 4000*units.PSI, 80*in, 2500*units.PSI
		}},
		{"concrete of a day", func(w *calc.Input) { w.Today.Concrete = 500 * units.PSI }},
		{"no footing said", func(w *calc.Input) { w.Footing, w.Foot = calc.Footing{}, calc.Foot{} }},
		{"seismic earth pressure left open", func(w *calc.Input) {
			w.Condition, w.TopHeld, w.Seismic, w.GradeA = calc.SoilBothSides, true, "D2", 7*ft
		}},
		{"swelling not answered", func(w *calc.Input) { w.Soil = calc.Soil{} }},
		{"swelling", func(w *calc.Input) { w.Soil.Swells = calc.Yes }},
	} {
		w := held()
		test.change(&w)
		r := design(t, w)
		if r.Today.Permission == calc.MayFill || r.Today.Level >= w.GradeA {
			t.Errorf("%s: may fill to %v (%v)", test.name, r.Today.Level, r.Today.Permission)
		}
		if len(r.Today.Because) == 0 {
			t.Errorf("%s: no reason", test.name)
		}
	}
}

// TestUnbracedNeedsDowels: no bending passes a joint in plain concrete (ACI
// 318-19 14.2.2.1, 14.4.1.3), and the house's load does not help a wall that
// nothing holds.
func TestUnbracedNeedsDowels(t *testing.T) {
	w := held()
	w.Today.Floor = false
	with := design(t, w).UnbracedFill
	if with <= 0 {
		t.Fatalf("with dowels: %v in", with)
	}
	w.Axial.Dead = 3000 * plf
	if got := design(t, w).UnbracedFill; got > with {
		t.Errorf("the house's load raises the unbraced fill from %v to %v in", with, got)
	}
	w.Dowels = calc.Dowels{Fixed: true, None: true}
	if r := design(t, w); r.UnbracedFill > 0 || r.Today.Permission != calc.DoNotFill {
		t.Errorf("without dowels: %v in, %v", r.UnbracedFill, r.Today.Permission)
	}
}

// stateOf finds the state of a check at a stage; "" is any.
func stateOf(t *testing.T, r calc.Result, id string, st calc.Stage) (calc.State, bool) {
	t.Helper()
	for _, c := range r.Checks {
		if c.ID == id && (st == "" || c.Stage == st) {
			return c.State, c.Decides
		}
	}
	t.Fatalf("no check %s at %q", id, st)
	return 0, false
}

// TestStates holds single checks of walls whose answer follows from a rule.
func TestStates(t *testing.T) {
	bare := held()
	bare.Foot = calc.Foot{}
	for _, test := range []struct {
		name, rule string
		in         calc.Input
		change     func(*calc.Input)
		id         string
		stage      calc.Stage
		state      calc.State
		decides    bool
	}{
		{"four thirds", "φMn 2491.8 ≥ 4/3·1811.2", basement(8*ft, 7*ft, 45*pcf), func(w *calc.Input) {
			w.FourThirds, w.Vertical = true, barsAt(4, 30*in, 0)
		}, "minimum-vertical", "", calc.NotApplicable, false},
		{"less than four thirds", "φMn 2337.7 < 4/3·1811.2", basement(8*ft, 7*ft, 45*pcf), func(w *calc.Input) {
			w.FourThirds, w.Vertical = true, barsAt(4, 32*in, 0)
		}, "minimum-vertical", "", calc.Fails, true},
		{"no four thirds for a stem", "7.6.1.1", freeWall(), func(w *calc.Input) {
			w.FourThirds, w.Vertical = true, calc.Bars{Fixed: true, Size: 4, Spacing: 18 * in, Face: calc.FaceA}
		}, "minimum-vertical", "", calc.Fails, true},
		{"little steel counts as plain", "11.6.1, chapter 14", held(), func(w *calc.Input) { w.Vertical = barsAt(4, 48*in, 0) },
			"plain-flexure", "", calc.Holds, true},
		{"bars too far apart, plain carries", "chapter 14 wholly", held(), func(w *calc.Input) { w.Vertical = barsAt(6, 24*in, 0) },
			"plain-flexure", "", calc.Holds, true},
		{"free wall, no footing said", "an answer is missing", stem(6*ft, fluid(30*pcf)), func(*calc.Input) {},
			"overturning", "", calc.Open, true},
		{"slab cast later, free", "must exist before the fill", freeWall(), func(w *calc.Input) {
			w.Foot.Held, w.Footing.Friction = calc.SlabLater, 0.30
		}, "sliding", "", calc.Fails, true},
		{"slab cast later, held", "the footing resists while filling", held(), func(w *calc.Input) { w.Foot.Held = calc.SlabLater },
			"foot-support", calc.Filling, calc.Fails, true},
		{"slab that floats", "uplift over 0.9 of its weight", held(), func(w *calc.Input) {
			w.Water = calc.Water{Standing: true, Level: 2 * ft}
		}, "foot-support", "", calc.Fails, true},
		{"opposite wall not known", "up to its own top reaction", tiedWall(), func(w *calc.Input) { w.Tie.Anchor = calc.OppositeWall },
			"slab-drag", "", calc.Open, true},
		{"rakers", "nothing stands alone", tiedWall(), func(w *calc.Input) { w.Tie.Before = calc.Rakers },
			"overturning", calc.BeforeSlab, calc.NotApplicable, false},
		{"buckles", "Pu 42,000 over 0.75 Pc = 13,370 lb/ft", basement(20*ft, 5*ft, 30*pcf), func(w *calc.Input) {
			w.Thickness, w.Axial = 5.5*in, calc.Axial{Dead: 15000 * plf, Live: 15000 * plf}
		}, "slenderness", "", calc.Fails, true},
		{"buckles without any fill", "Pu 42,000 over 0.75 Pc = 13,370 lb/ft", basement(20*ft, 0, 30*pcf), func(w *calc.Input) {
			w.Thickness, w.Axial = 5.5*in, calc.Axial{Dead: 15000 * plf, Live: 15000 * plf}
		}, "slenderness", "", calc.Fails, true},
		{"dowels too far from the bars", "25.5.1.3: 8.9 in over min(35.6/5; 6)", basement(16*ft, 15*ft, 60*pcf), func(w *calc.Input) {
			w.Thickness, w.Vertical, w.Footing = 20*in, barsAt(5, 10*in, 0), strip
			w.Dowels = calc.Dowels{Fixed: true, Size: 5, Spacing: 10 * in, Up: 48 * in, Position: calc.Centre}
		}, "lap-gap", "", calc.Fails, true},
		{"too little cover on the soil side", "20.5.1.3.1: 1.5 in", freeWall(), func(w *calc.Input) { w.Material.CoverA = 0.5 * in },
			"cover", "", calc.Fails, true},
		{"free wall that leans on the house's weight", "filled before the house stands: 0.30·2880/735 = 1.18", freeWall(), func(w *calc.Input) {
			w.Footing.Friction, w.Axial.Dead = 0.30, 2000*plf
		}, "sliding", calc.Filling, calc.Fails, true},
		{"slab well above the footing, free", "does not stop the footing", freeWall(), func(w *calc.Input) {
			w.Footing.Friction = 0.30
			w.Foot = calc.Foot{Held: calc.SlabTight, SlabThickness: 4 * in, SlabBase: 24 * in}
		}, "sliding", "", calc.Fails, true},
		{"seismic earth pressure, held", "IBC 2021 1803.5.12, 1807.2.2", held(), func(w *calc.Input) { w.Seismic, w.GradeA = "D2", 7*ft },
			"seismic-earth", "", calc.Open, true},
		{"horizontals too far apart for the table", "two No. 4 up to 8 ft", held(), func(w *calc.Input) {
			w.Rulebook, w.Horizontal = calc.Residential, calc.Bars{Fixed: true, Size: 4, Spacing: 60 * in}
		}, "table-horizontals", "", calc.Fails, true},
		{"horizontals of the table", "two No. 4 up to 8 ft", held(), func(w *calc.Input) {
			w.Rulebook, w.Horizontal = calc.Residential, calc.Bars{Fixed: true, Size: 4, Spacing: 48 * in}
		}, "table-horizontals", "", calc.Holds, true},
		{"resultant outside the base", "overturned", freeWall(), func(w *calc.Input) { w.Footing.Width, w.Footing.Toe = 12*in, 2*in },
			"bearing", "", calc.Fails, true},
	} {
		test.change(&test.in)
		r := design(t, test.in)
		if state, decides := stateOf(t, r, test.id, test.stage); state != test.state || decides != test.decides {
			t.Errorf("%s (%s): %s is %v, decides %v; want %v, %v", test.name, test.rule, test.id, state, decides, test.state, test.decides)
		}
	}
}

// TestOneSideAtOnce: with soil on both sides and a free top the worst order of
// filling is one side at once. By hand, 6 ft by 8 in, 45 pcf, footing 24 by 10
// in, friction 0.40: at 32 in 0.40·1063.3/(45·3.5²/2) = 1.543, at 33 in 1.487.
func TestOneSideAtOnce(t *testing.T) {
	w := bothWall()
	w.TopHeld, w.Height, w.GradeA, w.GradeB = false, 6*ft, 5*ft, 5*ft
	r := design(t, w)
	if r.Today.Permission != calc.FillOnlyTo || r.Today.Level < 32*in || r.Today.Level > 32*in || len(r.Today.Because) == 0 {
		t.Errorf("may fill one side to %v in (%v), want 32 in", r.Today.Level, r.Today.Permission)
	}
}

// TestFixedFootBesideHighSlab: a foot is clamped at the footing, not at a slab
// well above it.
func TestFixedFootBesideHighSlab(t *testing.T) {
	w := held()
	w.Foot.Fixed, w.Foot.SlabBase = true, 24*in
	if _, err := calc.Design(w); err == nil {
		t.Error("clamped at a slab 24 in above the footing")
	}
}

// TestSlabAboveTheFooting: a slab well above the footing does not stop the
// footing from sliding: a fill below it stands no higher with the slab than
// without.
func TestSlabAboveTheFooting(t *testing.T) {
	w := held()
	w.GradeA, w.Foot.SlabBase, w.Footing.Friction, w.Today.Floor = 90*in, 40*in, 0.30, false
	with := design(t, w).UnbracedFill
	w.Today.Slab = false
	if without := design(t, w).UnbracedFill; with > without {
		t.Errorf("fill to %v in with the slab, %v without", with, without)
	}
}

// TestSeismicTable: in D0 to D2 the residential tables ask for No. 4 at 48 in
// where they print no verticals (IRC 2021 R404.1.4.2).
func TestSeismicTable(t *testing.T) {
	w := held()
	w.Rulebook, w.Seismic, w.GradeA = calc.RulebookUnset, "D1", 4*ft
	r := design(t, w)
	v := bars(r, calc.VerticalBar)
	if r.Governs != calc.Residential || r.Plain || len(v) != 1 || v[0].Size != 4 || v[0].Spacing > 48*in || v[0].Spacing < 48*in {
		t.Errorf("governs %v, plain %v, verticals %+v, want No. 4 at 48 in", r.Governs, r.Plain, v)
	}
}

// TestUnknownSoilUnderAFlexibleFloor: what nobody knows is taken at rest, the
// worst class.
func TestUnknownSoilUnderAFlexibleFloor(t *testing.T) {
	w := held()
	w.Soil, w.Floor = calc.Soil{Swells: calc.No}, calc.FloorFlexible
	if got := read(t, design(t, w), "pressure at foot") / float64(psf); got < 600-1e-6 {
		t.Errorf("%v psf at the foot, want 6·100", got)
	}
}

// TestFreeWallIsNeverPlain: plain walls must be braced (ACI 318-19 14.2.2.2).
func TestFreeWallIsNeverPlain(t *testing.T) {
	for _, thickness := range []units.Length{8, 12, 24} {
		w := freeWall()
		w.Thickness, w.Height, w.GradeA = thickness, 3*ft, 2*ft
		r := design(t, w)
		if c := check(t, r, "plain-flexure"); r.Plain || c.Decides || c.Capacity.Base > 0 {
			t.Errorf("%v in: plain %v, plain strength %v", thickness, r.Plain, c.Capacity)
		}
	}
}

// TestOutsideTheTable names each reason that puts a wall outside the
// residential tables.
func TestOutsideTheTable(t *testing.T) {
	for _, test := range []struct {
		reason string
		change func(*calc.Input)
	}{
		{"table-water", func(w *calc.Input) { w.Water = calc.Water{Standing: true, Level: 1 * ft} }},
		{"table-surcharge", func(w *calc.Input) { w.Surcharge.Live = 40 * psf }},
		{"table-not-this-condition", func(w *calc.Input) { w.Condition = calc.FreeTop }},
		{"table-foot-not-held", func(w *calc.Input) { w.Foot.Held = calc.GroundOnly }},
		{"table-brace-below-top", func(w *calc.Input) { w.Brace = 5 * ft }},
		{"table-height-over-table", func(w *calc.Input) { w.Height = 10*ft + 1 }},
		{"table-fluid-over-table", func(w *calc.Input) { w.Soil.Fluid = 61 * pcf }},
		{"table-soil-not-listed", func(w *calc.Input) {
			w.Soil = calc.Soil{Basis: calc.SoilFriction, Weight: 120 * pcf, Friction: 30 * units.Degree}
		}},
		{"table-fill-above-wall", func(w *calc.Input) { w.GradeA, w.Surcharge.Dead = w.Height, 50*psf }},
	} {
		w := held()
		w.Rulebook = calc.RulebookUnset
		if r := design(t, w); !r.Table.Inside || r.Governs != calc.Residential {
			t.Fatalf("the wall is outside by itself: %v", r.Table.Reasons)
		}
		test.change(&w)
		r := design(t, w)
		found := false
		for _, n := range r.Table.Reasons {
			found = found || n.ID == test.reason
		}
		if !found || r.Table.Inside || r.Governs != calc.Engineered {
			t.Errorf("%s: inside %v, governs %v, reasons %v", test.reason, r.Table.Inside, r.Governs, r.Table.Reasons)
		}
	}
}
