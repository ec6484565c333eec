package entry

import (
	"errors"
	"math"
	"strconv"
	"testing"

	"standingbeam/calc/units"
)

var (
	strict  = Options{Strict: true}
	metres  = Options{Metric: true}
	lenient = Options{}
)

// The values are by definition: a foot is 12 in, an inch 25.4 mm exactly.
func TestLength(t *testing.T) {
	for _, test := range []struct {
		text string
		o    Options
		want float64 // inches
	}{
		{"12'", strict, 144}, {"12 ft", strict, 144}, {"12ft", strict, 144}, {"12 feet", strict, 144},
		{`12' 6 1/2"`, strict, 150.5}, {`12'6 1/2"`, strict, 150.5}, {`12'-6 1/2"`, strict, 150.5},
		{`12'-6-1/2"`, strict, 150.5}, {"12' 6½\"", strict, 150.5}, {"12′ 6½″", strict, 150.5}, {"12’ 6 1/2”", strict, 150.5},
		{"12' 6 1/2''", strict, 150.5}, {"12 ft 6 1/2 in", strict, 150.5}, {"12 ft. 6.5 in.", strict, 150.5},
		{"12' 6", strict, 150}, {"12 ft 6 1/2", strict, 150.5}, {`12-6 1/2"`, strict, 150.5}, {"12-6 in", strict, 150},
		{"12-6 1/2", lenient, 150.5}, {"12-6-1/2", lenient, 150.5}, {"12 - 6", lenient, 150}, {"12-6", metres, 150},
		{"12.5 ft", strict, 150}, {"12,5 ft", lenient, 150}, {"1/2 ft", strict, 6}, {"8 1/2 ft", strict, 102},
		{"6 1/2 in", strict, 6.5}, {`6-1/2"`, strict, 6.5}, {"6-1/2 in", strict, 6.5}, {"6½\"", strict, 6.5}, {"½ in", strict, 0.5}, {"0 in", strict, 0},
		{"3.8 m", strict, 3800 / 25.4}, {"3,8 m", lenient, 3800 / 25.4}, {"3800 mm", strict, 3800 / 25.4},
		{"3,800 mm", lenient, 3800 / 25.4}, {"1,234,567.5 mm", lenient, 1234567.5 / 25.4}, {"0,375 m", lenient, 375 / 25.4}, {",5 m", lenient, 500 / 25.4},
		{"254 mm", strict, 10}, {"190.5 mm", strict, 7.5}, {"3\u202f800 mm", lenient, 3800 / 25.4},
		{"8", lenient, 96}, {"8.25", lenient, 99}, {"8,25", lenient, 99}, {"2.5", metres, 2500 / 25.4}, {"8", Options{Unit: "in"}, 8},
		{"8 1/2", Options{Unit: "in"}, 8.5}, {"-6 in", strict, -6}, {"−1 ft 6 in", strict, -18}, {"  12 '  6  \" ", strict, 150},
	} {
		got, err := Length(test.text, test.o)
		if err != nil || math.Abs(got.Inches()-test.want) > 1e-12*math.Abs(test.want) {
			t.Errorf("Length(%q, %+v) = %v, %v; want %v in", test.text, test.o, got.Inches(), err, test.want)
		}
	}
}

func TestQuantity(t *testing.T) {
	for _, test := range []struct {
		text string
		kind units.Kind
		want float64 // in the kind's inch-pound unit
		tol  float64
	}{
		{"45 pcf", units.Weight, 45, 0}, {"3000 psi", units.Strength, 3000, 0}, {"60 ksi", units.Strength, 60000, 0},
		{"2000 psf", units.Pressure, 2000, 0}, {"1200 lb/ft", units.LineForce, 1200, 0}, {"30 deg", units.Degrees, 30, 1e-12}, {"30°", units.Degrees, 30, 1e-12},
		{"0.40", units.None, 0.4, 0}, {"40 %", units.None, 0.4, 0}, {"40%", units.None, 0.4, 0}, {"100 lb", units.Load, 100, 0},
		// NIST SP 811 (2008), B.8: 1 lbf = 4.448 222 N, 1 psi = 6.894 757 kPa,
		// 1 psf = 47.880 26 Pa, 1 lb/ft3 (mass) = 16.018 46 kg/m3.
		{"4.448222 kN", units.Load, 1000, 1e-3}, {"6.894757 MPa", units.Strength, 1000, 1e-3},
		{"47.88026 kPa", units.Pressure, 1000, 1e-3}, {"18.850 kN/m3", units.Weight, 120, 5e-3}, {"18.850 kN/m³", units.Weight, 120, 5e-3},
		{"14.5939 kN/m", units.LineForce, 1000, 1e-2}, {"6.894757 kPa", units.Strength, 1, 1e-6},
	} {
		got, err := Quantity(test.text, test.kind, strict)
		if err != nil || math.Abs(got.US()-test.want) > test.tol+1e-12*test.want {
			t.Errorf("Quantity(%q) = %v, %v; want %v", test.text, got.US(), err, test.want)
		}
	}
}

func TestRefused(t *testing.T) {
	for _, test := range []struct {
		text string
		kind units.Kind
		o    Options
		id   string
	}{
		{"8", units.Level, strict, "no-unit"}, {"12-6 1/2", units.Level, strict, "no-unit"}, {"12-6", units.Level, strict, "no-unit"},
		{"3000", units.Strength, strict, "no-unit"}, {"12,5 ft", units.Level, strict, "comma"}, {"3,800 mm", units.Level, strict, "comma"},
		{"1,200,5 mm", units.Level, lenient, "comma-unclear"}, {"3.800,5 mm", units.Level, lenient, "comma-unclear"}, {"5, ft", units.Level, lenient, "comma-unclear"},
		{"", units.Level, lenient, "empty"}, {"  ", units.Level, strict, "empty"},
		{"NaN", units.Level, lenient, "not-a-number"}, {"Inf ft", units.Level, strict, "not-a-number"}, {"1e3 ft", units.Level, strict, "unknown-unit"},
		{"0x10 ft", units.Level, strict, "unknown-unit"}, {"1_000 ft", units.Level, strict, "unknown-unit"}, {"+8 ft", units.Level, strict, "not-a-number"},
		{"12 6", units.Level, lenient, "not-a-number"}, {"6 1/0 in", units.Level, strict, "not-a-number"}, {"6 3/2 in", units.Level, strict, "not-a-number"},
		{"6.5 1/2 in", units.Level, strict, "not-a-number"}, {"--6 in", units.Level, strict, "not-a-number"}, {"ft", units.Level, strict, "not-a-number"}, {". ft", units.Level, strict, "not-a-number"},
		{`12' 12"`, units.Level, strict, "inches-over-12"}, {"12.5' 6\"", units.Level, strict, "not-a-length"}, {"12' 50 mm", units.Level, strict, "not-a-length"},
		{"100-200 mm", units.Level, strict, "not-a-length"}, {"8 yards", units.Level, strict, "unknown-unit"}, {"8 lb", units.Level, strict, "unknown-unit"},
		{"30 pcf", units.Pressure, strict, "unknown-unit"}, {"0.4 psi", units.None, strict, "unknown-unit"}, {"9999999999 ft", units.Level, strict, "too-large"},
	} {
		got, err := Quantity(test.text, test.kind, test.o)
		var e *Error
		if !errors.As(err, &e) || e.ID != test.id || math.Abs(got.Base) > 0 {
			t.Errorf("Quantity(%q, strict %v) = %v, %v; want %q", test.text, test.o.Strict, got.Base, err, test.id)
		}
	}
}

func TestSpell(t *testing.T) {
	for _, test := range []struct {
		q      units.Quantity
		metric bool
		want   string
	}{
		{units.Of(112.5*units.Inch, units.Level), false, "9 ft 4 1/2 in"}, {units.Of(96*units.Inch, units.Level), false, "8 ft 0 in"},
		{units.Of(8.5*units.Inch, units.Size), false, "8 1/2 in"}, {units.Of(24*units.Inch, units.Size), false, "24 in"},
		{units.Of(-6*units.Inch, units.Level), false, "-6 in"}, {units.Of(0.5*units.Inch, units.Size), false, "1/2 in"},
		{units.Of(units.Length(3800/25.4), units.Level), true, "3.8 m"}, {units.Of(10*units.Inch, units.Size), true, "254 mm"},
		{units.Of(45*units.PCF, units.Weight), false, "45 pcf"}, {units.Of(3000*units.PSI, units.Strength), false, "3000 psi"},
		{units.Quantity{Base: 0.35}, false, "0.35"}, {units.Quantity{Base: math.NaN(), Kind: units.Level}, false, ""},
	} {
		if got := Spell(test.q, test.metric); got != test.want {
			t.Errorf("Spell(%v, %v) = %q, want %q", test.q, test.metric, got, test.want)
		}
	}
}

// Whatever is typed: no panic, a finite number or an error, and what is read
// can be spelled and read again.
func FuzzQuantity(f *testing.F) {
	for _, s := range []string{"12'", `12' 6 1/2"`, "12-6 1/2", "3,800 mm", "18.85 kN/m3", "40 %", "½", "-1/2 in", "1/", "'", "''", "-", "9 ft. -", "½½", "\xff"} {
		f.Add(s, uint8(1), true, false)
		f.Add(s, uint8(2), false, true)
	}
	f.Fuzz(func(t *testing.T, text string, k uint8, strict, metric bool) {
		kind := units.Kind(k % uint8(units.Stiffness+1))
		q, err := Quantity(text, kind, Options{Strict: strict, Metric: metric})
		if math.IsNaN(q.Base) || math.IsInf(q.Base, 0) {
			t.Fatalf("Quantity(%q) = %v", text, q.Base)
		}
		if err != nil {
			return
		}
		for _, m := range []bool{false, true} {
			spelled := Spell(q, m)
			back, err := Quantity(spelled, kind, Options{Strict: true})
			if err != nil || math.Abs(back.Base-q.Base) > 1e-9*math.Abs(q.Base)+1e-9 {
				t.Fatalf("%q reads as %v, is spelled %q, which reads as %v, %v", text, q.Base, spelled, back.Base, err)
			}
		}
	})
}

// Whoever writes decimals with a comma means one by every comma.
func TestDecimalComma(t *testing.T) {
	comma := Options{Metric: true, Comma: true}
	for text, inches := range map[string]float64{
		"3,048 m": 120, "3,048": 120, "3.048 m": 120, "0,254": 10, "3.048,0 mm": 120, "3 048": 0, "1,2,3": 0, "3.04,8 m": 0, "10 pies": 120,
		"2 pies 6 pulg": 30, "9 pies 4 1/2 pulgadas": 112.5, "3,048 metros": 120,
	} {
		got, err := Length(text, comma)
		if inches == 0 != (err != nil) || math.Abs(got.Inches()-inches) > 1e-9 {
			t.Errorf("%q reads %v (%v), want %v in", text, got.Inches(), err, inches)
		}
	}
	if got, err := Length("10 pies", Options{Strict: true}); err == nil {
		t.Errorf("a file takes pies for %v", got)
	}
}

// A length that is whole in inches is the same number in millimetres and
// metres: a limit that it meets exactly is met.
func TestMetricLengthsAreTheSameNumber(t *testing.T) {
	for n := 1; n <= 16*240; n++ {
		want := float64(n) / 16
		mm := strconv.FormatFloat(math.Round(want*25.4*1e4)/1e4, 'f', -1, 64)
		if got, err := Length(mm+" mm", strict); err != nil || math.Float64bits(got.Inches()) != math.Float64bits(want) {
			t.Errorf("%s mm = %v in, %v, want %v", mm, got.Inches(), err, want)
		}
	}
}
