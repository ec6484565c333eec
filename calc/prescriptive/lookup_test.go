package prescriptive

import (
	"math"
	"testing"

	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

// ask is a wall inside the tables, in ft and pcf.
func ask(thickness, height, fill, fluid float64) Query {
	return Query{Thickness: units.Length(thickness), Height: units.Length(height) * units.Foot, Fill: units.Length(fill) * units.Foot,
		Fluid: units.UnitWeight(fluid) * units.PCF, Fc: 2500, Fy: 60 * units.KSI}
}

// Every cell is found by a wall that just meets its row and column.
func TestLookupFindsEveryCell(t *testing.T) {
	for file, centred := range map[string]bool{"irc/r404_1_2_8.csv": false, "irc/r404_1_2_3.csv": true} {
		for _, r := range reference.Rows(t, file) {
			q := ask(r.Number("nominal")-0.5, r.Number("height"), r.Number("fill"), r.Number("column"))
			q.Centred = centred
			c := Lookup(q)
			if !c.Found || c.Nominal != r.Int("nominal") || c.HeightRow != r.Int("height") || c.FillRow != r.Int("fill") || c.Column != r.Int("column") {
				t.Fatalf("%+v finds %+v", q, c)
			}
			want := r.Text("result")
			if c.None != (want == "NR") || c.Design != (want == "DR") || c.Note != r.Text("note") {
				t.Errorf("%+v: %+v, want %s", q, c, want)
			}
			if want[0] == '#' && (c.Bar.Name() != "No. "+want[1:2] || c.Spacing <= 0) {
				t.Errorf("%+v: %s at %v, want %s", q, c.Bar.Name(), c.Spacing, want)
			}
			if len(Outside(q)) > 0 {
				t.Errorf("%+v is outside: %v", q, Outside(q))
			}
		}
	}
}

// Height, fill and soil go up to the next row, thickness down.
func TestLookupRounds(t *testing.T) {
	for _, c := range []struct {
		name                          string
		q                             Query
		nominal, height, fill, column int
		none                          bool
		number                        int
		spacing                       float64
	}{
		{"on the rows", ask(7.5, 8, 7, 45), 8, 8, 7, 45, false, 5, 41},
		{"an inch taller", ask(7.5, 8+1.0/12, 7, 45), 8, 9, 7, 45, false, 5, 37},
		{"an inch more fill", ask(7.5, 8, 7+1.0/12, 45), 8, 8, 8, 45, false, 6, 43},
		{"a heavier soil", ask(7.5, 8, 7, 46), 8, 8, 7, 60, false, 6, 43},
		{"an eighth thinner", ask(7.375, 8, 7, 45), 6, 8, 7, 45, false, 6, 37},
		{"a full 10 in", ask(10, 8, 7, 45), 10, 8, 7, 45, true, 0, 0},
		{"two feet thick", ask(24, 9, 9, 60), 12, 9, 9, 60, false, 6, 39},
		{"low and light", ask(5.5, 2, 0, 0), 6, 5, 4, 30, true, 0, 0},
		{"half a foot", ask(7.5, 7.5, 6.5, 30), 8, 8, 7, 30, true, 0, 0},
		{"metres: 2.4384 is 8 ft", Query{Thickness: 190.5 * units.Millimetre, Height: 2.4384 * units.Metre, Fill: 2.1336 * units.Metre,
			Fluid: 45 * units.PCF, Fc: 2500, Fy: 60000}, 8, 8, 7, 45, false, 5, 41},
	} {
		got := Lookup(c.q)
		if !got.Found || got.Nominal != c.nominal || got.HeightRow != c.height || got.FillRow != c.fill || got.Column != c.column ||
			got.None != c.none || got.Bar.Number != c.number || math.Abs(got.Spacing.Inches()-c.spacing) > 1e-9 {
			t.Errorf("%s: %+v", c.name, got)
		}
	}
}

// Each limit, alone, takes the wall out of the tables with its own reason.
func TestOutside(t *testing.T) {
	inside := ask(7.5, 8, 7, 45)
	for _, c := range []struct {
		id     string
		change func(*Query)
		limit  float64 // in the unit people read
	}{
		{HeightOverTable, func(q *Query) { q.Height = 121 }, 10},
		{HeightOverTable, func(q *Query) { q.Height = units.Length(math.Inf(1)) }, 10},
		{FillAboveWall, func(q *Query) { q.Fill = 97 }, 8},
		{FillAboveWall, func(q *Query) { q.Fill = units.Length(math.NaN()) }, 8},
		{FluidOverTable, func(q *Query) { q.Fluid = 61 * units.PCF }, 60},
		{FluidOverTable, func(q *Query) { q.Fluid = units.UnitWeight(math.NaN()) }, 60},
		{ThicknessUnderTable, func(q *Query) { q.Thickness = 5.25 }, 5.5},
		{CentredNotEight, func(q *Query) { q.Thickness, q.Centred = 10, true }, 8},
		{CentredNotEight, func(q *Query) { q.Thickness, q.Centred = 6, true }, 8},
		{StrengthUnder, func(q *Query) { q.Fc = 2000 }, 2500},
		{SteelUnder, func(q *Query) { q.Fy = 33 * units.KSI }, 40000},
	} {
		q := inside
		c.change(&q)
		got := Outside(q)
		if len(got) != 1 || got[0].ID != c.id || math.Abs(got[0].Limit.US()-c.limit) > 1e-9 {
			t.Errorf("%s: %v, want the limit %v", c.id, got, c.limit)
		}
		if Lookup(q).Found {
			t.Errorf("%s: a cell is found", c.id)
		}
	}
	if got := Outside(inside); got != nil {
		t.Errorf("inside the table: %v", got)
	}
	bad := Query{Thickness: 4, Height: 200, Fill: 300, Fluid: 1, Fc: 1, Fy: 1}
	if got := Outside(bad); len(got) != 6 {
		t.Errorf("six limits are passed, %d are said: %v", len(got), got)
	}
}

// The same spacing in other bars: cell 8/8/7/45 prints No. 5 at 41 in, and row
// 41 of table (9) reads 26, 48, 18, 27, 39.
func TestAlternatives(t *testing.T) {
	list := Alternatives(Lookup(ask(7.5, 8, 7, 45)))
	want := []struct {
		number  int
		grade   float64
		spacing float64
	}{{4, 60, 26}, {6, 60, 48}, {4, 40, 18}, {5, 40, 27}, {6, 40, 39}}
	if len(list) != len(want) {
		t.Fatalf("%v", list)
	}
	for i, w := range want {
		if a := list[i]; a.Bar.Number != w.number || math.Abs(a.Grade.KSI()-w.grade) > 1e-9 || math.Abs(a.Spacing.Inches()-w.spacing) > 1e-9 {
			t.Errorf("alternative %d is %v, want %v", i, a, w)
		}
	}
	for _, q := range []Query{ask(7.5, 8, 4, 30), ask(5.5, 10, 10, 60), ask(7.5, 11, 8, 30)} {
		if got := Alternatives(Lookup(q)); got != nil {
			t.Errorf("%+v has no bars, alternatives %v", q, got)
		}
	}
}

func TestInSteel(t *testing.T) {
	c := Lookup(ask(7.5, 8, 7, 45))
	for fy, want := range map[units.Stress]float64{60000: 41, 80000: 41, 40000: 27, 50000: 27} {
		if a, ok := InSteel(c, fy); !ok || a.Bar.Number != 5 || math.Abs(a.Spacing.Inches()-want) > 1e-9 {
			t.Errorf("fy %v: %v, %v, want %v", fy, a, ok, want)
		}
	}
	if a, ok := InSteel(c, 33000); ok {
		t.Errorf("fy 33,000 psi: %v", a)
	}
	if a, ok := InSteel(Lookup(ask(7.5, 8, 4, 30)), 60000); ok {
		t.Errorf("a wall without bars: %v", a)
	}
}

// Note m: 12/9/8/60 prints No. 4 at 48 in, or plain with 3,500 psi. Note l:
// 8/8/6/30 needs none and may be 2 in thinner with 4,000 psi, where 6/8/6/30
// prints No. 4 at 37 in. 8/6/6/45 needs none but has no note.
func TestPlainByNote(t *testing.T) {
	m, l := ask(11.5, 9, 8, 60), ask(5.5, 8, 6, 30)
	for _, c := range []struct {
		q    Query
		fc   units.Stress
		note string
	}{{m, 3000, ""}, {m, 3500, "m"}, {l, 3500, ""}, {l, 4000, "l"}, {ask(7.5, 8, 8, 60), 8000, ""}, {ask(7.5, 8, 4, 30), 8000, ""}, {ask(5.5, 6, 6, 45), 8000, ""}} {
		c.q.Fc = c.fc
		got, ok := PlainByNote(c.q)
		if ok != (c.note != "") || ok && (got.Note != c.note || !got.None || got.Bar.Number != 0) {
			t.Errorf("%+v: %+v, %v, want note %q", c.q, got, ok, c.note)
		}
	}
}

func TestHorizontals(t *testing.T) {
	for _, r := range reference.Rows(t, "irc/r404_1_2_1.csv") {
		n, places := Horizontals(units.Length(r.Number("height")) * units.Foot)
		if n != r.Int("count") || len(places) != n {
			t.Errorf("%s ft: %d bars at %v, want %s", r.Text("height"), n, places, r.Text("count"))
		}
	}
	for height, want := range map[units.Length][]float64{96: {1, 0.5}, 108: {1, 2.0 / 3, 1.0 / 3}} {
		_, places := Horizontals(height)
		for i := range want {
			if math.Abs(places[i]-want[i]) > 1e-12 {
				t.Errorf("%v: %v, want %v", height, places, want)
			}
		}
	}
	if HorizontalBar() != 4 {
		t.Errorf("horizontals are No. %d", HorizontalBar())
	}
}

// A wall is either inside, with a cell that answers, or outside with a reason.
func FuzzLookup(f *testing.F) {
	f.Add(7.5, 96.0, 84.0, 45.0, 2500.0, 60000.0, false)
	f.Add(math.NaN(), math.Inf(1), -5.0, math.NaN(), 0.0, 0.0, true)
	f.Fuzz(func(t *testing.T, thickness, height, fill, fluid, fc, fy float64, centred bool) {
		q := Query{units.Length(thickness), units.Length(height), units.Length(fill), units.UnitWeight(fluid) * units.PCF,
			units.Stress(fc), units.Stress(fy), centred}
		c := Lookup(q)
		if c.Found == (len(Outside(q)) > 0) {
			t.Fatalf("%+v: %+v and %v", q, c, Outside(q))
		}
		if c.Found && !c.None && !c.Design && (c.Bar.Number == 0 || !(c.Spacing > 0)) {
			t.Errorf("%+v has no answer: %+v", q, c)
		}
		if c.Found && (float64(c.HeightRow*12) < height-1e-3 || float64(c.FillRow*12) < fill-1e-3 || float64(c.Column) < fluid-1e-3) {
			t.Errorf("%+v reads a lower row: %+v", q, c)
		}
		_, _ = PlainByNote(q)
		_ = Alternatives(c)
	})
}
