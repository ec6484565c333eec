package view

import (
	"math"
	"os"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"strings"
	"testing"

	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// everyWall calls each with the walls of the reference files, among them the
// four of the file format's own description, and with n random ones.
func everyWall(t *testing.T, n int, each func(name string, r calc.Result)) {
	t.Helper()
	files, err := filepath.Glob("../../testdata/walls/*.json")
	if err != nil || len(files) < 5 {
		t.Fatalf("reference walls: %v, %v", files, err)
	}
	for _, file := range files {
		data, err := os.Open(file)
		if err != nil {
			t.Fatal(err)
		}
		list, problems := wallfile.Decode(data)
		data.Close()
		if len(problems) > 0 {
			t.Fatalf("%s: %v", file, problems)
		}
		for _, w := range list {
			good, problems := compute(w, Form{Check: "open"})
			if !good.Known {
				t.Fatalf("%s, %s: %v", file, w.Name, problems)
			}
			each(filepath.Base(file)+" "+w.Name, good.Result)
		}
	}
	r, made := seeded(11), 0
	for made < n {
		in := r.wall()
		if result, err := calc.Explain(in); err == nil {
			made++
			each("random", result)
		}
	}
}

// fewer is a count of walls, less where they take ten times as long and the
// sums are the same.
func fewer(n int) int {
	if runtime.GOARCH == "wasm" {
		return n / 20
	}
	return n
}

// said is one printed line taken apart.
type said struct{ symbol, formula, numbers, result string }

// taken parts "a = b/c = 1/2 = 0.5 in": without numbers there are three parts.
func taken(text string) said {
	p := strings.Split(text, " = ")
	if len(p) == 4 {
		return said{p[0], p[1], p[2], p[3]}
	}
	return said{p[0], p[1], "", p[len(p)-1]}
}

// Every printed line of every check, computed again as it stands by somebody
// who has only what is printed, gives the result that is printed beside it: for
// certain within what the rounding of its numbers permits, and to one of the
// last digit, or a 50,000th of the greatest number where next to nothing is left
// of a difference.
func TestSumsComeOut(t *testing.T) {
	walls := fewer(2000)
	seen, checks := map[string]bool{}, map[string]bool{}
	lines := 0
	readers := []words.Speaker{{}, {System: words.Metric}, {System: words.Metric, DecimalComma: true}}
	everyWall(t, walls, func(name string, r calc.Result) {
		s := readers[(lines/7)%3].For(r.Input.Condition)
		for _, c := range r.Checks {
			for _, p := range workingOf(s, c, c.ID).Parts {
				for _, step := range p.Steps {
					if seen[step.Text] {
						continue
					}
					seen[step.Text], checks[c.ID] = true, true
					if s.DecimalComma {
						step.Text = strings.NewReplacer(",", ".", "\u202f", "").Replace(step.Text)
					}
					line := taken(step.Text)
					if line.numbers == "" {
						continue
					}
					lines++
					got, err := computeAgain(line.numbers)
					want, err2 := computeAgain(strings.Fields(line.result)[0])
					if err != nil || err2 != nil {
						t.Errorf("%s, %s: %s: %v, %v", name, c.ID, step.Text, err, err2)
						continue
					}
					if got.low > want.high || got.high < want.low {
						t.Errorf("%s, %s: %s comes out between %v and %v", name, c.ID, step.Text, got.low, got.high)
					}
					if digit := 2 * (want.high - want.at); math.Abs(got.at-want.at) > max(1.02*digit, 2e-5*greatestIn(line.numbers)) {
						t.Errorf("%s, %s: %s comes out as %v", name, c.ID, step.Text, got.at)
					}
				}
			}
		}
	})
	t.Logf("%d lines of %d checks", lines, len(checks))
	if lines < 5*walls || len(checks) < 30 {
		t.Errorf("only %d lines of %d checks were computed again", lines, len(checks))
	}
}

// The metric value beside a result is that result in metric units, within the
// rounding of both.
func TestMetricValuesAreTheResults(t *testing.T) {
	kinds := map[string]units.Kind{}
	for k := units.Level; k <= units.Stiffness; k++ {
		kinds[k.US().Sign()+"|"+k.Metric().Sign()] = k
	}
	compared := 0
	everyWall(t, fewer(200), func(name string, r calc.Result) {
		for _, c := range r.Checks {
			for _, p := range workingOf(words.Speaker{System: words.Metric}, c, c.ID).Parts {
				for _, step := range p.Steps {
					if step.Metric == "" {
						continue
					}
					result, unit, _ := strings.Cut(taken(step.Text).result, " ")
					there, metricUnit, _ := strings.Cut(step.Metric, " ")
					kind, ok := kinds[unit+"|"+metricUnit]
					a, err := computeAgain(strings.Replace(result, "−", "", 1))
					b, err2 := strconv.ParseFloat(strings.NewReplacer(",", "", "−", "").Replace(there), 64)
					if !ok || err != nil || err2 != nil {
						t.Errorf("%s, %s: %s = %s: %v, %v", name, c.ID, step.Text, step.Metric, err, err2)
						continue
					}
					_, part, _ := strings.Cut(there, ".")
					half, times := math.Pow(10, -float64(len(part)))/2, kind.US().Base/kind.Metric().Base
					if a.low*times > b+half+1e-9 || a.high*times < b-half-1e-9 {
						t.Errorf("%s, %s: %s is said to be %s", name, c.ID, step.Text, step.Metric)
					}
					compared++
				}
			}
		}
	})
	if compared < fewer(5000) {
		t.Errorf("only %d results were compared", compared)
	}
}

// greatestIn is the greatest number of a printed sum.
func greatestIn(text string) (most float64) {
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return !strings.ContainsRune("0123456789.,", r) }) {
		v, err := computeAgain(word)
		if err == nil {
			most = math.Max(most, v.at)
		}
	}
	return most
}

// What is printed is what was computed, in the unit that is printed with it.
func TestResultsAreTheAnswers(t *testing.T) {
	everyWall(t, 100, func(name string, r calc.Result) {
		for _, c := range r.Checks {
			w := workingOf(words.Speaker{}, c, "")
			chain, _ := inOrder(c)
			at := 0
			for _, p := range w.Parts {
				for _, step := range p.Steps {
					value := chain[at].Value
					at++
					fields := strings.Fields(taken(step.Text).result)
					printed, err := computeAgain(fields[0])
					unit := strings.Join(fields[1:], " ")
					if err != nil || value.US() < printed.low-1e-12 || value.US() > printed.high+1e-12 || unit != value.Kind.US().Sign() {
						t.Errorf("%s, %s: %s is printed for %v %s", name, c.ID, step.Text, value.US(), value.Kind.US().Symbol)
					}
				}
			}
			if at != len(chain) {
				t.Errorf("%s, %s: %d of %d steps are shown", name, c.ID, at, len(chain))
			}
		}
	})
}

// Every symbol is explained, and every number of a sum is either given or the
// result of another step that it leads to.
func TestSymbolsAreExplained(t *testing.T) {
	s := words.Speaker{}
	everyWall(t, 600, func(name string, r calc.Result) {
		for _, c := range r.Checks {
			w := workingOf(s, c, "key")
			ids := map[string]bool{}
			for _, p := range w.Parts {
				for _, step := range p.Steps {
					if ids[step.ID] {
						t.Fatalf("%s: %s stands twice", c.ID, step.ID)
					}
					ids[step.ID] = true
					if step.Means == "" {
						t.Errorf("%s: nothing says what %s is", c.ID, taken(step.Text).symbol)
					}
					if step.Source == "" {
						t.Errorf("%s: %s has no source", c.ID, step.Text)
					}
				}
			}
			for _, g := range w.Given {
				if g.Means == "" {
					t.Errorf("%s: nothing says what %s is", c.ID, g.Text)
				}
				if strings.HasPrefix(g.Text, "W") || strings.HasPrefix(g.Text, "P\u2009") {
					t.Errorf("%s: %s is not worked out", c.ID, g.Text)
				}
			}
			for _, p := range w.Parts {
				for _, step := range p.Steps {
					for _, u := range step.Uses {
						if !ids[u.ID] {
							t.Errorf("%s: %s leads nowhere", c.ID, u.Name)
						}
					}
				}
			}
		}
	})
}

// A clause stands with the book that it is of: chapters 1 to 27 with ACI 318,
// 16 and 18 with the building code by four digits, R with the residential one.
func TestClausesStandWithTheirBook(t *testing.T) {
	book := regexp.MustCompile(`^(ACI 318-19, ([1-9]|1[0-9]|2[0-7])\.\d.*|IBC 2021,? 1[68]\d\d\.\d.*|IRC 2021,? (Table )?R\d.*|Jaky \(1944\)|Rankine \(1857\)|statics|geometry|common practice, no source|)$`)
	s := words.Speaker{}
	everyWall(t, fewer(600), func(name string, r calc.Result) {
		for _, c := range r.Checks {
			if from := source(s, c.Rulebook, c.Clause); !book.MatchString(from) || from == "" && c.State != calc.NotApplicable {
				t.Errorf("%s, %s comes from %q", name, c.ID, from)
			}
			for _, p := range workingOf(s, c, c.ID).Parts {
				for _, step := range p.Steps {
					if !book.MatchString(step.Source) {
						t.Errorf("%s, %s: %s comes from %q", name, c.ID, step.Text, step.Source)
					}
				}
			}
		}
	})
}

// Each check says what it asks, and how that ends.
func TestWorkingSaysItsEnd(t *testing.T) {
	everyWall(t, 300, func(name string, r calc.Result) {
		for i := range r.Checks {
			c := &r.Checks[i]
			w := workingOf(words.Speaker{}, *c, "")
			if c.State != calc.NotApplicable && !c.NoValue && w.Limit == "" {
				t.Errorf("%s, %s has no end", name, c.ID)
			}
			if c.State != calc.NotApplicable && !c.NoValue && len(w.Parts) == 0 && w.Note == "" {
				t.Errorf("%s, %s shows nothing", name, c.ID)
			}
		}
	})
}

// A metric reader sees each value in both, since the formula is in inches and
// pounds, and is told why.
func TestMetricWorking(t *testing.T) {
	metric := words.Speaker{System: words.Metric}
	everyWall(t, 20, func(name string, r calc.Result) {
		for _, c := range r.Checks {
			w := workingOf(metric, c, "")
			if len(w.Parts) > 0 && w.Note != metric.Word("working.pounds") {
				t.Errorf("%s: nothing says why the formulas are in inches and pounds", c.ID)
			}
			chain, _ := inOrder(c)
			at := 0
			for _, p := range w.Parts {
				for _, step := range p.Steps {
					kind := chain[at].Value.Kind
					at++
					if has := step.Metric != ""; has != (kind != units.None && kind != units.Degrees) {
						t.Errorf("%s: %s has the metric value %q", c.ID, step.Text, step.Metric)
					}
				}
			}
			for _, g := range w.Given {
				if unit := strings.Contains(g.Value, " ") && !strings.HasSuffix(g.Value, "deg"); unit != (g.Metric != "") {
					t.Errorf("%s: %s = %s has the metric value %q", c.ID, g.Text, g.Value, g.Metric)
				}
			}
		}
	})
}
