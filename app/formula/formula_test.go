package formula

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

func us(v float64, decimals int) string {
	return strings.ReplaceAll(strconv.FormatFloat(v, 'f', decimals, 64), "-", "−")
}

// The formulas of the code books, with the values of their symbols chosen so
// that the result is seen without a calculator.
func TestParse(t *testing.T) {
	at := values{"a": 2, "b": 3, "c": 4, "f'c": 9, "q,toe": 5, "ρw": 8}
	for _, test := range []struct {
		text, back string
		want       float64
	}{
		{"a b^2/6", "a b^2 / 6", 3},
		{"2/3 a/b", "2/3 a/b", 4.0 / 9},
		{"a/b c/2 b", "a/b c/2 b", 4},
		{"a/b/c", "a / (b c)", 1.0 / 6},
		{"5 a √f'c b", "5 a √f'c b", 90},
		{"a (b − c/2)", "a (b − c/2)", 2},
		{"√(2/(1 + b/2))", "√(2 / (1 + b/2))", math.Sqrt(0.8)},
		{"min(a b; max(b; c; 1))", "min(a b; max(b; c; 1))", 4},
		{"8 ρw^(1/3) a", "8 ρw^(1/3) a", 32},
		{"max(a; −a)", "|a|", 2},
		{"−a + b", "−a + b", 1},
		{"q,toe − (b − a)", "q,toe − (b − a)", 4},
		{"57000 a", "57,000 a", 114000},
		{"(a − b)/0.5", "(a − b) / 0.5", -2},
		{"(a/b)^2 9", "(a/b)^2 9", 4},
		{"sin(a) 0 + 1", "sin(a) 0 + 1", 1},
	} {
		f, err := Parse(test.text)
		if err != nil {
			t.Errorf("%q: %v", test.text, err)
			continue
		}
		if got := f.root.eval(at); math.Abs(got-test.want) > 1e-12 {
			t.Errorf("%q = %v, want %v", test.text, got, test.want)
		}
		if f.Text() != test.back {
			t.Errorf("%q is written %q, want %q", test.text, f.Text(), test.back)
		}
		again, err := Parse(f.Text())
		if err != nil || math.Abs(again.root.eval(at)-test.want) > 1e-12 {
			t.Errorf("%q, read back from %q: %v, %v", test.text, f.Text(), again, err)
		}
	}
	for _, text := range []string{"", "a +", "(a", "a)", "min(a", "2..3", "a # b", strings.Repeat("(", 100) + "a"} {
		if _, err := Parse(text); err == nil {
			t.Errorf("%q is no formula and is read as one", text)
		}
	}
}

// lines of two textbooks' sums and of factors of 12, computed by hand.
func TestWrite(t *testing.T) {
	number := working.Number
	in := func(s string, v float64) working.Term { return working.T(s, units.Length(v), units.Size) }
	ft := func(s string, v float64) working.Term { return working.T(s, units.Length(12*v), units.Level) }
	psi := func(s string, v float64) working.Term { return working.T(s, units.Stress(v), units.Strength) }
	plf := func(s string, v float64) working.Term {
		return working.T(s, units.ForcePerLength(v)*units.PLF, units.LineForce)
	}
	lbft := func(s string, v float64) working.Term {
		return working.T(s, units.MomentPerLength(v), units.LineMoment)
	}
	pcf := func(s string, v float64) working.Term {
		return working.T(s, units.UnitWeight(v)*units.PCF, units.Weight)
	}
	steel := working.T("As", 0.2*units.In2PerFt, units.SteelArea)
	step := func(symbol, formula string, value units.Quantity, with ...working.Term) working.Step {
		return working.Step{Symbol: symbol, Formula: formula, Value: value, With: with}
	}
	for _, test := range []struct {
		step            working.Step
		numbers, result string
	}{
		// 0.2·60,000/(0.85·3,000·12) = 0.39216 in; a strip of 12 in.
		{step("a", "As fy/(0.85 f'c b)", units.Of(12000.0/30600, units.Size), steel, psi("fy", 60000), psi("f'c", 3000), in("b", 12)),
			"0.2 · 60000 / (0.85 · 3000 · 12)", "0.3922 in"},
		// 0.2·60,000·(6 − 0.2) = 69,600 lb-in, 5,800 lb-ft.
		{step("Mn", "As fy (d − a/2)", units.Of(units.MomentPerLength(5800), units.LineMoment), steel, psi("fy", 60000), in("d", 6), in("a", 0.4)),
			"0.2 · 60000 · (6 − 0.4/2) / 12", "5800 lb-ft/ft"},
		// The greater of 1,000 lb-ft and 2,400 lb · (0.6 + 0.03·8) in = 2,016 lb-in = 168 lb-ft.
		{step("M2", "max(Mu; Pu (0.6 + 0.03 h))", units.Of(units.MomentPerLength(1000), units.LineMoment), lbft("Mu", 1000), plf("Pu", 2400), in("h", 8)),
			"max(1000; 2400 · (0.6 + 0.03 · 8) / 12)", "1000 lb-ft/ft"},
		// A wall 8 in thick and 9 ft tall: 150·8/12·9 = 900 lb/ft.
		{step("W,stem", "γc h ht", units.Of(900*units.PLF, units.LineForce), pcf("γc", 150), in("h", 8), ft("ht", 9)),
			"150 · 8/12 · 9", "900 lb/ft"},
		// N/B (1 + 6 e/B) = 3,000/6·(1 + 6·0.5/6) = 750 psf.
		{step("q", "N/B (1 + 6 e/B)", units.Of(750*units.PSF, units.Pressure), plf("N", 3000), ft("B", 6), ft("e", 0.5)),
			"3000/6 · (1 + 6 · 0.5 / 6)", "750 psf"},
		// √(2·360/40) = 4.2426 ft.
		{step("t", "√(2 R/k)", units.Of(units.Length(12*math.Sqrt(18)), units.Level), plf("R", 360), pcf("k", 40)),
			"√(2 · 360 / 40)", "4.243 ft"},
		// 0.6·3,000·96·(1 − (96/(32·8))²) = 148,500 lb of a strip of 12 in.
		{step("Pn", "0.60 f'c Ag (1 − (lc/(32 h))^2)", units.Of(148500*units.PLF, units.LineForce), psi("f'c", 3000),
			working.T("Ag", 96*units.In2PerFt, units.SteelArea), ft("lc", 8), in("h", 8)),
			"0.6 · 3000 · 96 · (1 − (96 / (32 · 8))^2)", "148500 lb/ft"},
		// (1 − sin 30°)/(1 + sin 30°) = 1/3.
		{step("Ka", "(1 − sin(φ'))/(1 + sin(φ'))", units.Of(1.0/3, units.None), working.T("φ'", 30*units.Degree, units.Degrees)),
			"(1 − sin(30°)) / (1 + sin(30°))", "0.3333 "},
		{step("Lh", "B − Lt", units.Of(2*units.Foot, units.Level), ft("B", 3), ft("Lt", 1)), "3 − 1", "2 ft"},
		// EI in kip-in²: 0.4·3,000,000·500/(1 + 1) = 300,000,000 lb-in² = 300,000 kip-in².
		{step("EI", "0.4 Ec Ig/(1 + βdns)", units.Quantity{Base: 3e8 / 12, Kind: units.Stiffness}, psi("Ec", 3e6),
			units3("Ig", 500), number("βdns", 1)), "0.4 · 3000000 · 500 / (1 + 1) / 1000", "300000 kip-in2/ft"},
	} {
		got := Write([]working.Step{test.step}, us)[0]
		// A book's constant has its commas, the printed numbers here have none.
		numbers := strings.ReplaceAll(got.Numbers.Text(), ",", "")
		if result := got.Result.Text + " " + got.Result.Unit.Symbol; numbers != test.numbers || result != test.result {
			t.Errorf("%s = %s is written %q = %q, want %q = %q", test.step.Symbol, test.step.Formula, numbers, result, test.numbers, test.result)
		}
	}
}

func units3(s string, v float64) working.Term {
	return working.Term{Symbol: s, Value: units.Quantity{Base: v / 12, Kind: units.Inertia}}
}

// A difference of two near numbers gets the digits that it takes.
func TestDigits(t *testing.T) {
	f := func(s string, v float64) working.Term {
		return working.T(s, units.ForcePerLength(v)*units.PLF, units.LineForce)
	}
	chain := []working.Step{
		{Symbol: "A", Formula: "2 x", Value: f("", 2*1234.5678).Value, With: []working.Term{f("x", 1234.5678)}},
		{Symbol: "D", Formula: "A − y", Value: f("", 2*1234.5678-2469).Value, With: []working.Term{f("A", 2*1234.5678), f("y", 2469)}},
	}
	lines := Write(chain, us)
	for i, want := range []string{"2 · 1234.57 = 2469.14", "2469.14 − 2469 = 0.1356"} {
		if got := lines[i].Numbers.Text() + " = " + lines[i].Result.Text; got != want {
			t.Errorf("line %d is %q, want %q", i, got, want)
		}
	}
	if lines[1].Terms[0].From != 0 || lines[1].Terms[1].From != -1 {
		t.Errorf("A comes from line %d, y from %d", lines[1].Terms[0].From, lines[1].Terms[1].From)
	}
}

func TestMathML(t *testing.T) {
	for _, test := range []struct{ formula, want string }{
		{"a/b", "<mfrac><mrow><mi>a</mi></mrow><mrow><mi>b</mi></mrow></mfrac>"},
		{"√f'c", "<msqrt><msub><mrow><mi>f</mi><mo>′</mo></mrow><mtext>c</mtext></msub></msqrt>"},
		{"φMn", "<mrow><mi>φ</mi>" + thin + "<msub><mi>M</mi><mtext>n</mtext></msub></mrow>"},
		{"W,heel,soil", "<msub><mi>W</mi><mtext>heel soil</mtext></msub>"},
		{"b^2", "<msup><mi>b</mi><mrow><mn>2</mn></mrow></msup>"},
		{"ld", "<msub><mi>ℓ</mi><mtext>d</mtext></msub>"},
		{"FS", "<mi>FS</mi>"},
	} {
		f, err := Parse(test.formula)
		if err != nil {
			t.Fatal(err)
		}
		got := f.MathML("")
		if len(got) != 1 || !strings.Contains(got[0], test.want) {
			t.Errorf("%q is set as %q, want %q in it", test.formula, got, test.want)
		}
	}
	f, _ := Parse("a b + c d − e")
	if got := f.MathML(Symbol("s") + Sign("=")); len(got) != 3 || !strings.Contains(got[0], "<mi>s</mi><mo>=</mo>") || !strings.Contains(got[2], "<mo>−</mo>") {
		t.Errorf("a sum comes as %q", got)
	}
	// What min and max choose from may break, a long product once, and nothing
	// is lost: the pieces hold what the line of text holds.
	for formula, pieces := range map[string]int{"min(a b; c)/12": 2, "max(0.65; min(0.9; a + b))": 4, "a b c d e f": 2, "a b c": 1, "(a + b) c/d": 1} {
		f, _ := Parse(formula)
		got := f.MathML("")
		bare := func(s string) string {
			return strings.NewReplacer(" ", "", "·", "", "(", "", ")", "", "/", "", ";", "").Replace(s)
		}
		text := regexp.MustCompile(`<[^>]*>|&[^;]*;`).ReplaceAllString(strings.Join(got, ""), "")
		if len(got) != pieces || bare(text) != bare(f.Text()) {
			t.Errorf("%s comes in %d pieces, %q, want %d", formula, len(got), text, pieces)
		}
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"min(5 λ √f'c Sm; 0.85 f'c Sm)", "2^^(", "|a|", "a/b/c", "−−a"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > 300 {
			return
		}
		p, err := Parse(text)
		if err != nil {
			return
		}
		again, err := Parse(p.Text())
		if err != nil {
			t.Fatalf("%q is written %q, which cannot be read: %v", text, p.Text(), err)
		}
		a, b := p.root.eval(values{}), again.root.eval(values{})
		if math.Abs(a-b) > 1e-9*math.Max(math.Abs(a), 1) && !math.IsNaN(a) && !math.IsInf(a, 0) {
			t.Fatalf("%q = %v is written %q = %v", text, a, p.Text(), b)
		}
		_ = p.MathML("")
	})
}

func Example() {
	chain := working.Chain{}
	chain.Add("Sm", "b h^2/6", units.Of(8.0*8/6, units.Modulus), "",
		working.T("b", 12*units.Inch, units.Size), working.T("h", 8*units.Inch, units.Size))
	l := Write(chain.Steps, us)[0]
	fmt.Printf("%s = %s = %s = %s %s\n", l.Result.Symbol, l.Formula.Text(), l.Numbers.Text(), l.Result.Text, l.Result.Unit.Symbol)
	// Output: Sm = b h^2 / 6 = 12 · 8^2 / 6 = 128 in3/ft
}
