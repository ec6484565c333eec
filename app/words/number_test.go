package words

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"standingbeam/app/entry"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

var (
	us     = Speaker{}
	metric = Speaker{System: Metric}
	comma  = Speaker{System: Metric, DecimalComma: true}
)

func TestQuantity(t *testing.T) {
	moment := units.Of(1811.1882*units.LbFtPerFt, units.LineMoment)
	for _, test := range []struct {
		got, want string
	}{
		{us.Quantity(moment), "1,811 lb·ft/ft"}, {us.Demand(moment), "1,812 lb·ft/ft"}, {us.Capacity(moment), "1,811 lb·ft/ft"},
		// 1 lb-ft/ft is 4.448222 N-m/m (NIST SP 811): 8.0566 kN-m/m.
		{metric.Quantity(moment), "8.06 kN·m/m"}, {metric.Capacity(moment), "8.05 kN·m/m"}, {comma.Quantity(moment), "8,06 kN·m/m"},
		{us.Demand(units.Of(322*units.PLF, units.LineForce)), "322 lb/ft"}, {us.Demand(units.Of(321.5625*units.PLF, units.LineForce)), "322 lb/ft"},
		{us.Capacity(units.Of(321.999999999*units.PLF, units.LineForce)), "322 lb/ft"}, {us.Quantity(units.Of(1234567*units.PLF, units.LineForce)), "1,234,567 lb/ft"},
		{comma.Quantity(units.Of(1234567*units.KNPerM, units.LineForce)), "1\u202f234\u202f567 kN/m"},
		// Four figures say enough: rounded up for a demand, down for a capacity.
		{metric.Demand(units.Of(151.8001*units.KNmPerM, units.LineMoment)), "151.9 kN·m/m"}, {metric.Capacity(units.Of(151.89*units.KNmPerM, units.LineMoment)), "151.8 kN·m/m"},
		{metric.Quantity(units.Of(18.85*units.KNPerM3, units.Weight)), "18.85 kN/m³"},
		{us.Quantity(units.Of(45*units.PCF, units.Weight)), "45 pcf"}, {us.Quantity(units.Of(62.4*units.PCF, units.Weight)), "62.4 pcf"},
		{us.Quantity(units.Of(30*units.Degree, units.Degrees)), "30 deg"}, {us.Quantity(units.Quantity{Base: 0.4}), "0.40"}, {us.Demand(units.Quantity{Base: 1.5}), "1.50"},
		{us.Capacity(units.Quantity{Base: 1.4999}), "1.49"}, {us.Quantity(units.Of(-0.2*units.PLF, units.LineForce)), "−0.2 lb/ft"}, {us.Quantity(units.Of(0*units.PLF, units.LineForce)), "0 lb/ft"},
		{us.Quantity(units.Of(0.1333*units.In2PerFt, units.SteelArea)), "0.133 in²/ft"},
		{us.Quantity(units.Quantity{Base: math.NaN(), Kind: units.Strength}), "–"}, {us.Demand(units.Quantity{Base: math.Inf(1), Kind: units.Level}), "–"},
		{us.Number(-0.001, 2), "0.00"}, {us.Number(2500, 0), "2,500"},
	} {
		if test.got != test.want {
			t.Errorf("got %q, want %q", test.got, test.want)
		}
	}
}

func TestLength(t *testing.T) {
	for _, test := range []struct {
		got, want string
	}{
		{us.Length(120), "10 ft 0 in"}, {us.Length(112.5), "9 ft 4 1/2 in"}, {us.Length(112.49), "9 ft 4 1/2 in"}, {us.Length(8), "8 in"}, {us.Length(0), "0 in"},
		{us.Length(-18), "−1 ft 6 in"}, {us.Length(11.99), "1 ft 0 in"}, {us.Length(12.0625), "1 ft 1/16 in"}, {us.Length(units.Length(math.NaN())), "–"},
		{us.Size(8.5), "8 1/2 in"}, {us.Size(0.75), "3/4 in"}, {us.Size(24), "24 in"}, {metric.Size(10), "254 mm"}, {metric.Length(120), "3.05 m"}, {comma.Length(120), "3,05 m"},
		{us.AtLeast(28.01), "29 in"}, {us.AtLeast(28), "28 in"}, {metric.AtLeast(29), "740 mm"}, {metric.Spacing(16), "400 mm"}, {us.Spacing(16), "16 in"},
		{metric.Spacing(units.Length(400 / 25.4)), "400 mm"}, {us.Capacity(units.Of(units.Length(37.04), units.Level)), "3 ft 1 in"},
	} {
		if test.got != test.want {
			t.Errorf("got %q, want %q", test.got, test.want)
		}
	}
}

// What is written on a tape's sixteenths or in whole centimetres is read back
// as the same length, by any reader of that speech.
func TestLengthReadsBack(t *testing.T) {
	for n := -40; n < 4000; n += 7 {
		l := units.Length(n) / 16
		if got, err := entry.Length(us.Length(l), entry.Options{Strict: true}); err != nil || math.Abs(float64(got-l)) > 1e-9 {
			t.Fatalf("%q reads as %v, %v", us.Length(l), got, err)
		}
		c := units.Length(n) * 10 * units.Millimetre
		for _, s := range []Speaker{metric, comma} {
			if got, err := entry.Length(s.Length(c), entry.Options{Metric: true}); err != nil || math.Abs(float64(got-c)) > 1e-9 {
				t.Fatalf("%q reads as %v, %v", s.Length(c), got, err)
			}
		}
	}
}

// A demand never reads smaller and a capacity never larger than it is.
func TestRoundingIsSafe(t *testing.T) {
	for k := units.None; k <= units.Stiffness; k++ {
		for _, s := range []Speaker{us, metric} {
			for v := 0.013; v < 1e5; v *= 1.37 {
				q := units.Quantity{Base: v * k.US().Base, Kind: k}
				hi, lo := value(t, s.Demand(q), s, k), value(t, s.Capacity(q), s, k)
				if hi < q.Base*(1-1e-5) || lo > q.Base*(1+1e-5) {
					t.Errorf("%v: demand %s, capacity %s", q.In(s.unit(k)), s.Demand(q), s.Capacity(q))
				}
			}
		}
	}
}

func value(t *testing.T, text string, s Speaker, k units.Kind) float64 {
	t.Helper()
	if k == units.Level || k == units.Size {
		l, err := entry.Length(text, entry.Options{Strict: true})
		if err != nil && s.System == US {
			t.Fatalf("%q: %v", text, err)
		}
		if err == nil {
			return float64(l)
		}
	}
	v, err := strconv.ParseFloat(strings.ReplaceAll(strings.TrimSuffix(text, " "+s.Unit(k)), ",", ""), 64)
	if err != nil {
		t.Fatalf("%q: %v", text, err)
	}
	return v * s.unit(k).Base
}

func TestBars(t *testing.T) {
	set := calc.Bar{Role: calc.VerticalBar, Size: 4, Spacing: 16, Face: calc.FaceB}
	for _, test := range []struct {
		got, want string
	}{
		{us.BarSize(4), "No. 4"}, {metric.BarSize(4), "No. 4 (13 mm)"}, {metric.BarSize(11), "No. 11 (36 mm)"},
		{us.BarSet(set), "No. 4 at 16 in, open side"}, {metric.BarSet(set), "No. 4 (13 mm) at 400 mm, open side"},
		{us.For(calc.SoilBothSides).BarSet(set), "No. 4 at 16 in, low side"}, {us.BarSet(calc.Bar{Size: 5, Count: 2}), "2 No. 5"},
		{us.FaceFirst(calc.FaceB), "open side (away from the soil)"}, {us.For(calc.SoilBothSides).FaceFirst(calc.FaceA), "high side"}, {us.Face(calc.Centre), "center"},
	} {
		if test.got != test.want {
			t.Errorf("got %q, want %q", test.got, test.want)
		}
	}
}

func TestSentence(t *testing.T) {
	if got, want := us.Sentence("bar.at", "No. 4"), "No. 4 at {1}"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	if got := us.Sentence("no such word {0} {", "x"); got != "no such word x {" {
		t.Errorf("got %q", got)
	}
	if got := us.Note(calc.Note{ID: "unbraced-governed", Text: "sliding"}); got != "What ends it: sliding of the footing." {
		t.Errorf("got %q", got)
	}
	if got := us.Note(calc.Note{ID: "today-check-fails", Text: "bearing"}); got != "Pressure on the ground: fails." {
		t.Errorf("got %q", got)
	}
	for _, n := range []calc.Note{{ID: "nothing-of-the-kind"}, {ID: "needs-floor-edge"}, {ID: "concrete-too-young"}} {
		_ = us.Note(n) // a note without its quantities must not panic
	}
}

func FuzzSentence(f *testing.F) {
	f.Add("{0} of {1}", "a")
	f.Add("{}{0+}{t}{", "{0}")
	f.Fuzz(func(t *testing.T, sentence, arg string) {
		fill(sentence, func(place string) (string, bool) { return arg, place == "0" })
		us.Sentence(sentence, arg)
		us.Note(calc.Note{ID: sentence, Text: arg, Args: []units.Quantity{{Base: math.NaN()}}})
	})
}

// What only just holds does not read as if it failed; what fails still does.
func TestAmounts(t *testing.T) {
	steel := func(v float64) units.Quantity {
		return units.Of(units.AreaPerLength(v)*units.In2PerFt, units.SteelArea)
	}
	c := calc.Check{State: calc.Holds, Demand: steel(0.10041), Capacity: steel(0.10054)}
	if d, have := us.Amounts(c); d != "0.100 in²/ft" || have != "0.101 in²/ft" {
		t.Errorf("%s of %s", d, have)
	}
	moment := func(v float64) units.Quantity { return units.Quantity{Base: v, Kind: units.LineMoment} }
	tight := calc.Check{State: calc.Holds, Demand: moment(11373.2), Capacity: moment(11464.7)}
	if d, have := us.Amounts(tight); !strings.HasPrefix(d, "11,374 ") || !strings.HasPrefix(have, "11,464 ") {
		t.Errorf("%s of %s", d, have)
	}
	c.State, c.Demand, c.Capacity = calc.Fails, steel(0.10049), steel(0.10041)
	if d, have := us.Amounts(c); d != "0.101 in²/ft" || have != "0.100 in²/ft" {
		t.Errorf("%s of %s", d, have)
	}
}
