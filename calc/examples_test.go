package calc_test

import (
	"math"
	"strings"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

// unitOf are the units of the published values, in inches and pounds.
var unitOf = map[string]float64{
	"": 1, "in": 1, "ft": float64(units.Foot), "m": float64(units.Metre),
	"psi": float64(units.PSI), "psf": float64(units.PSF), "ksf": 1000 * float64(units.PSF), "kPa": float64(units.KPa),
	"lb/ft": float64(units.PLF), "kip/ft": 1000 * float64(units.PLF), "kN/m": float64(units.KNPerM),
	"lb-ft/ft": 1, "kN-m/m": float64(units.KNmPerM), "in2/ft": float64(units.In2PerFt), "in3/ft": 1.0 / 12,
}

// example is one published case as a wall. With less, the value is what in has
// over it.
type example struct {
	in   calc.Input
	less *calc.Input
}

// TestExamples drives published and derived examples through Design, one row
// of testdata/reference/design a number. Every case must be used.
func TestExamples(t *testing.T) {
	for _, file := range []string{"strips", "soil", "concrete", "bars", "free", "four_walls", "awkward"} {
		t.Run(file, func(t *testing.T) {
			cases := examples[file]()
			used := map[string]bool{}
			for _, row := range reference.Rows(t, "design/"+file+".csv") {
				name := row.Text("case")
				e, ok := cases[name]
				if !ok {
					t.Errorf("%s: no wall for %q", file, name)
					continue
				}
				used[name] = true
				e.hold(t, row)
			}
			for name := range cases {
				if !used[name] {
					t.Errorf("%s: %q has no value", file, name)
				}
			}
		})
	}
}

// hold compares one value of the example with its row.
func (e example) hold(t *testing.T, row reference.Row) {
	t.Helper()
	times := 1.0
	if row.Text("times") != "" {
		times = row.Number("times")
	}
	unit, ok := unitOf[row.Text("unit")]
	if !ok {
		t.Fatalf("%s: unit %q", row.Text("case"), row.Text("unit"))
	}
	tol := row.HalfDigit("value")
	if row.Text("tol") != "" {
		tol = row.Number("tol")
	}
	q := row.Text("quantity")
	got := read(t, design(t, e.in), q)
	if e.less != nil {
		got -= read(t, design(t, *e.less), q)
	}
	got /= unit * times
	if !(math.Abs(got-row.Number("value")) <= tol+1e-9*math.Abs(got)) {
		t.Errorf("%s: %s = %v, want %s ± %v (%s)", row.Text("case"), q, got, row.Text("value"), tol, row.Text("source"))
	}
}

// design answers a wall that must be within its ranges.
func design(t testing.TB, in calc.Input) calc.Result {
	t.Helper()
	r, err := calc.Design(in)
	if err != nil {
		t.Fatalf("%s: %v", in.Name, err)
	}
	return r
}

// read finds a quantity of the finished wall by its words, in inches and
// pounds. "at 5 ft" at the end gives a level.
func read(t testing.TB, r calc.Result, q string) float64 {
	t.Helper()
	if rest, ok := strings.CutPrefix(q, "check "); ok {
		return readCheck(t, r, rest)
	}
	if rest, ok := strings.CutPrefix(q, "stability "); ok {
		return readStability(t, finished(t, r), rest)
	}
	q, level, _ := strings.Cut(q, " at ")
	y := levelOf(t, level)
	if f, ok := readers[q]; ok {
		return f(r, finished(t, r), y)
	}
	t.Fatalf("no reader of %q", q)
	return 0
}

// levelOf reads "2.5 m"; nothing and "foot" are the footing's top.
func levelOf(t testing.TB, text string) units.Length {
	t.Helper()
	if text == "" || text == "foot" {
		return 0
	}
	number, unit, _ := strings.Cut(text, " ")
	return units.Length(parse(t, number) * unitOf[unit])
}

func finished(t testing.TB, r calc.Result) *calc.StageResult {
	t.Helper()
	for i := range r.Stages {
		if r.Stages[i].Name == calc.Finished {
			return &r.Stages[i]
		}
	}
	t.Fatalf("%s: no finished stage", r.Input.Name)
	return nil
}

// check finds the first check of an id, deciding ones first.
func check(t testing.TB, r calc.Result, id string) calc.Check {
	t.Helper()
	for _, decides := range []bool{true, false} {
		for _, c := range r.Checks {
			if c.ID == id && c.Decides == decides {
				return c
			}
		}
	}
	t.Fatalf("%s: no check %s", r.Input.Name, id)
	return calc.Check{}
}
