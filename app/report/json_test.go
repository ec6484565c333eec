package report

import (
	"bytes"
	"encoding/json"
	"math"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"

	"standingbeam/app/entry"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// answers computes the walls of an example file.
func answers(t testing.TB, name string) []calc.Result {
	t.Helper()
	data, err := os.ReadFile("../../testdata/walls/" + name)
	if err != nil {
		t.Fatal(err)
	}
	walls, problems := wallfile.Decode(bytes.NewReader(data))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	var out []calc.Result
	for _, w := range walls {
		in, _ := w.Input(entry.Options{Strict: true})
		r, err := calc.Design(in)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, r)
	}
	return out
}

type object = map[string]any

// printed is the JSON of results, read back.
func printed(t testing.TB, results []calc.Result, s words.Speaker) []object {
	t.Helper()
	var b bytes.Buffer
	if err := JSON(&b, slices.Values(results), s); err != nil {
		t.Fatal(err)
	}
	var file struct {
		Format int      `json:"format"`
		Walls  []object `json:"walls"`
	}
	if err := json.Unmarshal(b.Bytes(), &file); err != nil {
		t.Fatalf("%v\n%s", err, b.Bytes())
	}
	if file.Format != 1 || len(file.Walls) != len(results) {
		t.Fatalf("format %d, %d walls", file.Format, len(file.Walls))
	}
	return file.Walls
}

// The answer to the first wall as the format's description prints it, by keys
// and fixed words. A null stands for whatever value is there.
const example = `{"name":"braced","governs":"engineered",
"editions":{"engineered":"ACI 318-19","residential":"IRC 2021"},
"verdict":"open","headline":null,
"stages":[{"name":"finished",
 "pressures":[{"cause":"soil","side":"a","from":{"value":7,"unit":"ft"},"to":{"value":0,"unit":"ft"},"top":{"value":0,"unit":"psf"},"bottom":{"value":315,"unit":"psf"},"basis":"equivalent fluid, as given","factor":1.6}],
 "reactions":[{"at":{"value":8,"unit":"ft"},"support":"pinned","service":321.5625,"factored":514.5,"unit":"lb/ft"},
              {"at":{"value":0,"unit":"ft"},"support":"pinned","service":780.9375,"factored":1249.5,"unit":"lb/ft"}],
 "moment":[{"service":1131.9926,"factored":1811.1882,"unit":"lb-ft/ft","at":{"value":3.219568,"unit":"ft"},"tension face":"b"}],
 "shear":[{"service":780.9375,"factored":1249.5,"unit":"lb/ft","at":{"value":0,"unit":"ft"}}]}],
"checks":[{"id":"plain-flexure","stage":"finished","at":{"value":3.219568,"unit":"ft"},
  "demand":1811.1882,"capacity":1752.7122,"unit":"lb-ft/ft","ratio":1.033363,"state":"fails","decides":false,
  "rulebook":"ACI 318-19","clause":"14.5.2.1"},
 {"id":"flexure","stage":"finished","at":{"value":3.219568,"unit":"ft"},"demand":1811.1882,"capacity":4121.5686,"unit":"lb-ft/ft","ratio":0.439442,"state":"holds","decides":true,"rulebook":"ACI 318-19","clause":"22.3"},
 {"id":"floor-edge","stage":"finished","level":"service","demand":321.5625,"capacity":null,"unit":"lb/ft","ratio":null,"state":"open","decides":true,"needs":null}],
"bars":[{"mark":"V","direction":"vertical","face":"b","size":"No. 4","spacing":{"value":18,"unit":"in"},"cover":{"value":0.75,"unit":"in"},"lap":{"value":0,"unit":"in"},"rulebook":"ACI 318-19"}],
"table":{"name":"IRC 2021 R404.1.2(8)","inside":null,"reasons":null},
"assumptions":[{"id":null,"text":null}],"warnings":[],"ask an engineer":[]}`

func TestExample(t *testing.T) {
	var want object
	if err := json.Unmarshal([]byte(example), &want); err != nil {
		t.Fatal(err)
	}
	got := printed(t, answers(t, "four.json")[:1], words.Speaker{})[0]
	covers(t, "", want, got)
	step := first(t, got, "checks", "id", "plain-flexure")["steps"].([]any)
	for _, one := range step {
		s := one.(object)
		if s["symbol"] == "Mn" {
			if s["formula"] != "min(5 λ √f'c Sm; 0.85 f'c Sm)" && s["formula"] != "5 λ √f'c Sm" {
				t.Errorf("Mn = %v", s["formula"])
			}
			with := s["with"].(object)
			if with["λ"] != "1" || with["f'c"] != "3000 psi" || with["Sm"] != "128 in3/ft" || !near(s["value"].(float64), 2921.187, 5e-4) || s["unit"] != "lb-ft/ft" {
				t.Errorf("Mn is worked as %v", s)
			}
			return
		}
	}
	t.Error("the working of the plain wall has no Mn")
}

// covers reports where got lacks what want has. A list's objects are found by
// their id, or else by their place.
func covers(t *testing.T, path string, want, got any) {
	t.Helper()
	switch w := want.(type) {
	case nil:
		if strings.HasSuffix(path, ".capacity") || strings.HasSuffix(path, ".ratio") {
			if got != nil {
				t.Errorf("%s = %v, want null", path, got)
			}
		}
	case object:
		g, ok := got.(object)
		if !ok {
			t.Errorf("%s is %v", path, got)
			return
		}
		for key, value := range w {
			if _, there := g[key]; !there {
				t.Errorf("%s has no %q", path, key)
				continue
			}
			covers(t, path+"."+key, value, g[key])
		}
	case []any:
		g, ok := got.([]any)
		if !ok || len(g) < len(w) {
			t.Errorf("%s is %v", path, got)
			return
		}
		for i, value := range w {
			one := g[i]
			if o, ok := value.(object); ok && o["id"] != nil {
				one = member(g, o["id"])
			}
			covers(t, path, value, one)
		}
	case float64:
		// Half of the last digit that the description prints.
		if g, ok := got.(float64); !ok || !near(g, w, 5e-5) && !near(g, w, 5e-7*math.Abs(w)) {
			t.Errorf("%s = %v, want %v", path, got, w)
		}
	default:
		if !reflect.DeepEqual(want, got) {
			t.Errorf("%s = %v, want %v", path, got, want)
		}
	}
}

func near(a, b, tol float64) bool { return math.Abs(a-b) <= tol }

func member(list []any, id any) any {
	for _, o := range list {
		if o.(object)["id"] == id {
			return o
		}
	}
	return nil
}

func first(t *testing.T, wall object, list, key string, value any) object {
	t.Helper()
	for _, o := range wall[list].([]any) {
		if o.(object)[key] == value {
			return o.(object)
		}
	}
	t.Fatalf("%v: no %s %v in %s", wall["name"], key, value, list)
	return nil
}

// Hand values of the format's description: reactions, moments, stability.
func TestHandValues(t *testing.T) {
	walls := printed(t, answers(t, "four.json"), words.Speaker{})
	finished := func(i int) object { return first(t, walls[i], "stages", "name", "finished") }
	held := func(i, n int) float64 { return finished(i)["reactions"].([]any)[n].(object)["service"].(float64) }
	moment := func(i int) float64 { return finished(i)["moment"].([]any)[0].(object)["service"].(float64) }
	body := finished(1)["stability"].(object)
	part := func(key string) float64 { return body[key].(object)["value"].(float64) }
	for _, test := range []struct {
		what           string
		got, want, tol float64
	}{
		{"braced, top", held(0, 0), 321.6, 0.05}, {"braced, foot", held(0, 1), 780.9, 0.05}, {"braced, moment", moment(0), 1132.0, 0.05},
		{"free, righting", part("righting moment"), 6760, 0.5}, {"free, overturning", part("overturning moment"), 1715, 0.5},
		{"free, turning over", body["overturning factor"].(float64), 3.94, 5e-3}, {"free, sliding", body["sliding factor"].(float64), 1.57, 5e-3},
		{"free, eccentricity in ft", part("eccentricity") / 12, 0.248, 5e-4}, {"free, toe", part("bearing at the toe"), 988, 0.5},
		{"tied, tie", held(2, 0), 480, 0.5}, {"tied, foot", held(2, 1), 960, 0.5}, {"tied, moment", moment(2), 1478, 0.5},
		{"both, top", held(3, 0), 296.25, 5e-3}, {"both, foot", held(3, 1), 603.75, 5e-3},
	} {
		if !near(test.got, test.want, test.tol) {
			t.Errorf("%s = %v, want %v", test.what, test.got, test.want)
		}
	}
	net := 0.0
	for _, b := range finished(3)["pressures"].([]any) {
		v := b.(object)["bottom"].(object)["value"].(float64)
		if b.(object)["side"] == "b" {
			v = -v
		}
		net += v
	}
	if !near(net, 180, 0.5) {
		t.Errorf("both, net pressure at the foot = %v, want 180", net)
	}
}

// In metric the same answer stands with other units: 1 lb/ft is 0.0145939 kN/m
// (NIST SP 811), 7 ft are 2.1336 m.
func TestMetric(t *testing.T) {
	wall := printed(t, answers(t, "four.json")[:1], words.Speaker{System: words.Metric})[0]
	stage := first(t, wall, "stages", "name", "finished")
	top := stage["reactions"].([]any)[0].(object)
	if !near(top["service"].(float64), 321.5625*0.0145939, 5e-5) || top["unit"] != "kN/m" {
		t.Errorf("top %v", top)
	}
	if from := stage["pressures"].([]any)[0].(object)["from"].(object); !near(from["value"].(float64), 2.1336, 1e-9) || from["unit"] != "m" {
		t.Errorf("from %v", from)
	}
	check := first(t, wall, "checks", "id", "plain-flexure")
	if !near(check["ratio"].(float64), 1.033363, 5e-7) {
		t.Errorf("ratio %v", check["ratio"])
	}
	// Workings stay in the units of their formulas.
	if with := check["steps"].([]any)[0].(object)["with"].(object); with["h"] != "8 in" {
		t.Errorf("working with %v", with)
	}
}

// The order of the checks is that of the calculation, the fixed words are no
// others, and open or idle checks say why.
func TestFixedWords(t *testing.T) {
	words4 := map[any]bool{"holds": true, "fails": true, "open": true, "not applicable": true}
	for _, file := range []string{"four.json", "braced.json", "free.json", "tied.json", "both.json"} {
		results := answers(t, file)
		for i, wall := range printed(t, results, words.Speaker{}) {
			if v := wall["verdict"]; v != "holds" && v != "fails" && v != "open" {
				t.Errorf("verdict %v", v)
			}
			for n, one := range wall["checks"].([]any) {
				c := one.(object)
				if c["id"] != results[i].Checks[n].ID || !words4[c["state"]] {
					t.Errorf("check %d is %v", n, c)
				}
				if c["state"] == "not applicable" && c["because"] == nil || c["state"] == "open" && c["needs"] == nil {
					t.Errorf("%v: %v, %v says nothing", wall["name"], c["id"], c["state"])
				}
			}
		}
	}
}

// A number that is none is written as null, whatever its place.
func TestNoNumber(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	q := units.Quantity{Base: nan, Kind: units.LineMoment}
	r := calc.Result{
		Checks: []calc.Check{{ID: "flexure", Demand: q, Capacity: units.Quantity{Base: inf, Kind: units.LineMoment}, HasAt: true, At: units.Length(inf),
			Steps: []working.Step{{Symbol: "x", Value: q, With: []working.Term{{Symbol: "y", Value: q}, {Symbol: "y", Value: q}}}}}},
		Stages: []calc.StageResult{{Pushes: []calc.Push{{Block: soil.Block{Side: 'a', Top: units.Stress(nan)}, Factor: inf}},
			Stability: &calc.Stability{OverturningFactor: inf, Normal: units.ForcePerLength(nan)}}},
		Band: calc.Band{Plain: units.MomentPerLength(nan)}, UnbracedFill: units.Length(inf),
		Assumptions: []calc.Note{{ID: "weight-assumed", Args: []units.Quantity{q}}},
	}
	wall := printed(t, []calc.Result{r}, words.Speaker{})[0]
	c := wall["checks"].([]any)[0].(object)
	if c["demand"] != nil || c["capacity"] != nil || c["at"].(object)["value"] != nil {
		t.Errorf("%v", c)
	}
	var b bytes.Buffer
	if err := Text(&b, slices.Values([]calc.Result{r}), words.Speaker{}); err != nil || strings.Contains(b.String(), "NaN") || strings.Contains(b.String(), "Inf") {
		t.Errorf("%v\n%s", err, b.String())
	}
}

// What takes a wall out of the tables is asked of an engineer, in the file too.
func TestReasonsAreAsked(t *testing.T) {
	results := answers(t, "braced.json")
	results[0].Table.Reasons = []calc.Note{{ID: "table-design-required"}}
	asked := printed(t, results, words.Speaker{})[0]["ask an engineer"].([]any)
	if len(asked) != len(results[0].Engineer)+1 || member(asked, "table-design-required") == nil {
		t.Errorf("asked are %v", asked)
	}
}
