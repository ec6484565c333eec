package rebar

import (
	"math"
	"testing"

	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// bar returns No. n.
func bar(t testing.TB, n int) Bar {
	t.Helper()
	b, ok := ByNumber(n)
	if !ok {
		t.Fatalf("no No. %d", n)
	}
	return b
}

// grade60 is bottom bars of Grade 60 in normal weight concrete.
func grade60(fc float64) Setting {
	return Setting{Fc: units.Stress(fc), Fy: 60 * units.KSI, Lambda: 1}
}

func TestLengths(t *testing.T) {
	for _, r := range reference.Rows(t, "aci/lengths.csv") {
		b, s := bar(t, r.Int("bar")), grade60(r.Number("fc"))
		r.Near("ld other", Development(b, s, nil).Inches())
		r.Near("ldc", CompressionDevelopment(b, s, nil).Inches())
		r.Near("ldh close yes, thin yes", Hook(b, s, nil).Inches())
		s.Favorable = true
		r.Near("ld favourable", Development(b, s, nil).Inches())
		r.Near("lap favourable", LapB(b, s, nil).Inches())
		s.SpacingSixDb = true
		r.Near("ldh close no, thin yes", Hook(b, s, nil).Inches())
		s.SideCoverSixDb = true
		r.Near("ldh close no, thin no", Hook(b, s, nil).Inches())
	}
}

// Points printed in digests of ACI 318-19: small bars in favourable
// surroundings need 33.94 db at 5,000 psi and 37.95 db at 4,000 psi; hooks of
// No. 5 and No. 6 at 5,000 psi, far apart and well covered, 7.115 and 9.353 in.
func TestPublishedPoints(t *testing.T) {
	within := func(name string, got, want, tol float64) {
		if math.Abs(got-want) > tol {
			t.Errorf("%s is %v, want %v", name, got, want)
		}
	}
	s := Setting{Fc: 5000, Fy: 60 * units.KSI, Favorable: true, SpacingSixDb: true, SideCoverSixDb: true}
	within("ld/db", float64(Development(bar(t, 5), s, nil)/bar(t, 5).Diameter), 33.94, 0.005)
	within("No. 5 ldh", Hook(bar(t, 5), s, nil).Inches(), 7.115, 0.0005)
	within("No. 6 ldh", Hook(bar(t, 6), s, nil).Inches(), 9.353, 0.0005)
	s.Fc = 4000
	within("ld/db", float64(Development(bar(t, 5), s, nil)/bar(t, 5).Diameter), 37.95, 0.005)
}

// The published tables round up to the inch.
func TestDevelopmentRounded(t *testing.T) {
	for _, r := range reference.Rows(t, "aci/development_rounded.csv") {
		s := grade60(r.Number("fc"))
		s.Favorable = true
		r.Near("published", math.Ceil(Development(bar(t, r.Int("bar")), s, nil).Inches()))
		r.Near("lap", LapB(bar(t, r.Int("bar")), s, nil).Inches())
	}
}

func TestDevelopmentGeneral(t *testing.T) {
	for _, r := range reference.Rows(t, "aci/general_equation.csv") {
		ld := DevelopmentGeneral(bar(t, 8), grade60(3000), units.Length(r.Number("cb")), units.Length(r.Number("ktr")), nil)
		r.Near("ld over db", float64(ld/bar(t, 8).Diameter))
	}
}

// Factors of Table 25.4.2.5, each alone.
func TestDevelopmentFactors(t *testing.T) {
	base := grade60(3000)
	b := bar(t, 8)
	ld := Development(b, base, nil)
	for _, test := range []struct {
		name   string
		change func(*Setting)
		times  float64
	}{
		{"top bar", func(s *Setting) { s.TopBar = true }, 1.3},
		{"Grade 40", func(s *Setting) { s.Fy = 40 * units.KSI }, 2.0 / 3},
		{"Grade 80", func(s *Setting) { s.Fy = 80 * units.KSI }, 4.0 / 3 * 1.15},
		{"Grade 75 counts as 80", func(s *Setting) { s.Fy = 75 * units.KSI }, 75.0 / 60 * 1.15},
		{"Grade 100", func(s *Setting) { s.Fy = 100 * units.KSI }, 5.0 / 3 * 1.3},
		{"lightweight", func(s *Setting) { s.Lambda = 0.75 }, 1 / 0.75},
		{"λ not given", func(s *Setting) { s.Lambda = 0 }, 1},
		{"favourable", func(s *Setting) { s.Favorable = true }, 2.0 / 3},
		{"√f'c ends at 100 psi", func(s *Setting) { s.Fc = 12000 }, math.Sqrt(3000) / 100},
	} {
		s := base
		test.change(&s)
		if got := Development(b, s, nil); math.Abs(float64(got/ld)-test.times) > 1e-9 {
			t.Errorf("%s: %v times, want %v", test.name, got/ld, test.times)
		}
	}
}

// With the bars as near as the table of 25.4.2.3 allows, clear 2 db and cover
// db, the general equation has cb = 1.5 db and asks for as much as the table:
// 3/40/1.5·0.8 = 1/25 and 3/40/1.5 = 1/20. Farther apart it asks for less.
func TestDevelopmentShortest(t *testing.T) {
	for _, n := range []int{4, 6, 7, 9} {
		b := bar(t, n)
		s := grade60(3000)
		s.Favorable = true
		table := Development(b, s, nil)
		s.Clear, s.Cover = 2*b.Diameter, b.Diameter
		if got := DevelopmentShortest(b, s, nil); math.Abs(float64(got/table)-1) > 1e-9 {
			t.Errorf("No. %d: %v, table %v", n, got, table)
		}
		s.Clear, s.Cover = 12, 2*b.Diameter
		if got := DevelopmentShortest(b, s, nil); got >= table || got < table*0.599 {
			t.Errorf("No. %d, far apart: %v, table %v, want 0.6 of it at best", n, got, table)
		}
		s.Clear, s.Cover = b.Diameter, 0.5*b.Diameter
		if got := DevelopmentShortest(b, s, nil); math.Abs(float64(got/table)-1) > 1e-9 {
			t.Errorf("No. %d, too near: %v, the table holds with %v", n, got, table)
		}
		s.Clear = 0
		if got := DevelopmentShortest(b, s, nil); math.Abs(float64(got/table)-1) > 1e-9 {
			t.Errorf("No. %d, not known: %v, table %v", n, got, table)
		}
	}
}

// No length falls under its minimum: strong concrete and small bars.
func TestLeastLengths(t *testing.T) {
	s := Setting{Fc: 8000, Fy: 40 * units.KSI, Favorable: true, SpacingSixDb: true, SideCoverSixDb: true}
	b := bar(t, 3)
	for name, got := range map[string]units.Length{
		"ld": Development(b, s, nil), "general": DevelopmentGeneral(b, s, 3, 0, nil), "lap": LapB(b, s, nil), "compression lap": CompressionLap(b, s, nil),
	} {
		if math.Abs(float64(got-12)) > 1e-12 {
			t.Errorf("%s is %v, want 12 in", name, got)
		}
	}
	if got := Hook(b, s, nil); math.Abs(float64(got-6)) > 1e-12 {
		t.Errorf("hook is %v, want 6 in", got)
	}
	if got := Hook(bar(t, 8), Setting{Fc: 8000, Fy: 20 * units.KSI, SpacingSixDb: true, SideCoverSixDb: true}, nil); math.Abs(float64(got-8)) > 1e-12 {
		t.Errorf("hook of No. 8 is %v, want 8 db", got)
	}
	if got := CompressionDevelopment(b, s, nil); math.Abs(float64(got-8)) > 1e-12 {
		t.Errorf("compression development is %v, want 8 in", got)
	}
}

// The steps of every working give its result.
func TestWorkings(t *testing.T) {
	for _, b := range Sizes() {
		for _, fc := range []float64{2500, 4000, 7000, 11000} {
			for _, fy := range []units.Stress{40 * units.KSI, 60 * units.KSI, 80 * units.KSI} {
				for i := range 8 {
					s := Setting{Fc: units.Stress(fc), Fy: fy, Favorable: i&1 != 0, TopBar: i&2 != 0, SpacingSixDb: i&4 != 0, Clear: 5, Cover: 1.5}
					for name, f := range lengths {
						checkWorking(t, name, f, b, s)
					}
				}
			}
		}
	}
}

// lengths are the functions of this package that show their working.
var lengths = map[string]func(Bar, Setting, *working.Chain) units.Length{
	"Development": Development, "DevelopmentShortest": DevelopmentShortest, "LapB": LapB, "Hook": Hook,
	"CompressionDevelopment": CompressionDevelopment, "CompressionLap": CompressionLap,
	"DevelopmentGeneral": func(b Bar, s Setting, w *working.Chain) units.Length { return DevelopmentGeneral(b, s, 1.5, 0.2, w) },
}

func checkWorking(t *testing.T, name string, f func(Bar, Setting, *working.Chain) units.Length, b Bar, s Setting) {
	t.Helper()
	w := &working.Chain{}
	got := f(b, s, w)
	if err := w.Verify(); err != nil {
		t.Errorf("%s of %s: %v", name, b.Name(), err)
	}
	if without := f(b, s, nil); math.Abs(float64(without-got)) > 1e-12 {
		t.Errorf("%s of %s is %v with its working and %v without", name, b.Name(), got, without)
	}
	if n := len(w.Steps); n == 0 || math.Abs(w.Steps[n-1].Value.Base-float64(got)) > 1e-12 || w.Steps[n-1].Clause == "" {
		t.Errorf("%s of %s: the working does not end with the result and its clause", name, b.Name())
	}
}

// Any setting gives a length that a tape can show, and more strength of
// concrete never a longer one.
func FuzzLengths(f *testing.F) {
	f.Add(4, 3000.0, 60000.0, 1.0, 1.5, 8.0, uint8(3))
	f.Add(11, -1.0, math.Inf(1), math.NaN(), 0.0, 0.0, uint8(0))
	f.Fuzz(func(t *testing.T, n int, fc, fy, lambda, cover, clear float64, bits uint8) {
		b, _ := ByNumber(n)
		s := Setting{Fc: units.Stress(fc), Fy: units.Stress(fy), Lambda: lambda, Cover: units.Length(cover), Clear: units.Length(clear),
			TopBar: bits&1 != 0, Favorable: bits&2 != 0, SpacingSixDb: bits&4 != 0, SideCoverSixDb: bits&8 != 0}
		for name, length := range lengths {
			got := length(b, s, &working.Chain{}).Inches()
			if !(got >= 0) || math.IsInf(got, 0) {
				t.Errorf("%s of %s in %+v is %v", name, b.Name(), s, got)
			}
			if fc >= 100 && fc < 20000 && got > 0 {
				weaker := s
				weaker.Fc *= 0.9
				if longer := length(b, weaker, nil).Inches(); longer < got-1e-9*got {
					t.Errorf("%s of %s grows from %v to %v with stronger concrete", name, b.Name(), longer, got)
				}
			}
		}
	})
}
