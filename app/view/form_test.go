package view

import (
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"

	"standingbeam/app/wallfile"
	"standingbeam/app/words"
)

// phone is the form of a wall on a phone with everything open.
func phone(w wallfile.Wall) Form {
	open := map[string]bool{"more": true}
	for _, g := range groupAsks {
		open[g.id] = true
	}
	return Form{Wall: w, Width: 390, Height: 300, Open: open}
}

// held is the example in another condition.
func held(condition string) wallfile.Wall {
	w := Example()
	Choose(&w, "condition", condition)
	return w
}

func setting(w wallfile.Wall, pairs ...string) wallfile.Wall {
	for i := 0; i+1 < len(pairs); i += 2 {
		w.Set(pairs[i], pairs[i+1])
	}
	return w
}

// texts collects every text of a view.
func texts(v reflect.Value, out *[]string) {
	switch v.Kind() {
	case reflect.String:
		*out = append(*out, v.String())
	case reflect.Struct:
		for i := range v.NumField() {
			name := v.Type().Field(i).Name
			if name != "ID" && name != "Path" && name != "Key" && name != "Value" && name != "SVG" {
				texts(v.Field(i), out)
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			texts(v.Index(i), out)
		}
	case reflect.Pointer:
		if !v.IsNil() {
			texts(v.Elem(), out)
		}
	}
}

// Every wall gives a page without a word that is missing, a place that is not
// filled, or a number that is none.
func TestEveryPageReads(t *testing.T) {
	variants := [][]string{
		{},
		{"soil.by", "unknown"},
		{"soil.by", "class", "soil.class", "CH"},
		{"soil.by", "equivalent fluid", "soil.equivalent fluid", "60 pcf"},
		{"soil.by", "friction angle", "soil.friction angle", "30 deg", "soil.unit weight", "120 pcf"},
		{"water", "3 ft"},
		{"axial.dead", "1200 lb/ft", "axial.live", "800 lb/ft"},
		{"height", "3 ft", "grade.a", "2 ft", "grade.b", "0 in"},
		{"height", "16 ft", "grade.a", "15 ft", "thickness", "16 in"},
		{"bars.vertical.size", "No. 4", "bars.vertical.spacing", "48 in", "bars.vertical.face", "a"},
		{"rulebook", "engineered"},
		{"dowels.by", "none"},
		{"footing.width", "", "footing.thickness", "", "footing.toe", "", "footing.allowable bearing", "", "footing.friction", ""},
	}
	for _, c := range conditions {
		for _, system := range []words.System{words.US, words.Metric} {
			for _, variant := range variants {
				f := phone(setting(held(c.value), variant...))
				f.Speaker.System = system
				v, good := New(f, Good{})
				if !good.Known || v.Stale != "" {
					t.Errorf("%s %v: not computed: %s", c.value, variant, v.Announce)
					continue
				}
				readsWell(t, c.value+" "+strings.Join(variant, " "), v)
				if system == words.Metric && len(variant) > 0 {
					continue // the workings are the same
				}
				for _, k := range append(append(v.Checks, v.Compared...), v.Idle...) {
					f.Check = k.Key
					open, _ := New(f, good)
					readsWell(t, c.value+" "+k.Key, open)
				}
			}
		}
	}
}

// told are the texts that a test has complained of already.
var told = map[string]bool{}

func readsWell(t *testing.T, name string, v View) {
	t.Helper()
	var all []string
	texts(reflect.ValueOf(v), &all)
	for _, text := range all {
		for _, bad := range []string{"page.", "note.", "name.", "ask.", "short.", "choice.", "field.", "state.", "check.", "picture.", "NaN", "Inf", "{", "%!", "in2", "in3", "in4", "/m3", "mm2", "mm3", "mm4"} {
			if strings.Contains(text, bad) && !told[text] {
				told[text] = true
				t.Errorf("%s: %q holds %q", name, text, bad)
			}
		}
	}
	for _, reason := range v.Rulebooks.Reasons {
		if slices.Contains(v.Engineer, reason) {
			t.Errorf("%s: said twice: %q", name, reason)
		}
	}
	for i, l := range v.Lines {
		if l.Title == "" || l.Mark == "" {
			t.Errorf("%s: line %d of the headline is empty: %+v", name, i, l)
		}
	}
}

// The headline puts what fails first, and never says that a wall holds while a
// deciding check fails or is open.
func TestHeadlineOrder(t *testing.T) {
	for _, c := range conditions {
		for _, height := range []string{"4 ft", "9 ft", "13 ft"} {
			w := setting(held(c.value), "height", height)
			keepBelow(&w, "grade.a", "height")
			keepBelow(&w, "grade.b", "grade.a")
			v, good := New(phone(w), Good{})
			if order[v.Lines[0].State] > order[v.Lines[1].State] {
				t.Errorf("%s %s: %s stands before %s", c.value, height, v.Lines[0].State, v.Lines[1].State)
			}
			for _, l := range v.Lines {
				if l.ID == "finished" && l.State != state(good.Result.Verdict) && !good.Result.Stopped {
					t.Errorf("%s %s: finished reads %s, the checks say %s", c.value, height, l.State, state(good.Result.Verdict))
				}
			}
			for i := 1; i < len(v.Checks); i++ {
				if order[v.Checks[i-1].State] > order[v.Checks[i].State] {
					t.Errorf("%s %s: check %d is out of order", c.value, height, i)
				}
			}
		}
	}
}

// Whatever stands in a field, the problem stands at that field, what was typed
// stays, the last picture stays and the other fields go on working.
func TestBadInput(t *testing.T) {
	for _, test := range []struct{ path, text, says string }{
		{"height", "25 ft", "20 ft"},
		{"height", "abc", "abc"},
		{"height", "", "needed"},
		{"height", "NaN", "NaN"},
		{"height", "9 ft 14 in", "12 inches"},
		{"thickness", "2 in", "5 1/2 in"},
		{"thickness", "-10 in", "24 in"},
		{"grade.a", "10 ft", "9 ft"},
		{"concrete", "1000 psi", "2,500 psi"},
		{"concrete", "3000 ft", "psi"},
		{"steel", "50 ksi", "60"},
		{"footing.width", "4 in", "10 in"},
		{"floor edge", "lots", "lots"},
		{"today.concrete", "1e99 psi", "psi"},
		{"surcharge.live", "-1 psf", "0 psf"},
	} {
		start := Example()
		before, good := New(phone(start), Good{})
		bad := setting(start, test.path, test.text)
		after, good := New(phone(bad), good)
		field := fieldOf(t, after, test.path)
		if !strings.Contains(field.Problem, test.says) {
			t.Errorf("%s = %q: the problem is %q, want it to say %q", test.path, test.text, field.Problem, test.says)
		}
		if field.Text != test.text || field.Shown != test.text {
			t.Errorf("%s: typed %q, the field has %q and shows %q", test.path, test.text, field.Text, field.Shown)
		}
		if after.Picture.SVG != before.Picture.SVG {
			t.Errorf("%s = %q: the picture did not stay", test.path, test.text)
		}
		if after.Stale == "" {
			t.Errorf("%s = %q: the page does not say that its answer is another's", test.path, test.text)
		}
		other, otherText := "soil.class", "CL"
		moved, _ := New(phone(setting(bad, other, otherText)), good)
		want, _ := New(phone(setting(start, other, otherText)), Good{})
		if moved.Picture.SVG != want.Picture.SVG {
			t.Errorf("%s = %q: another field does not change the picture", test.path, test.text)
		}
	}
}

func fieldOf(t *testing.T, v View, path string) Field {
	t.Helper()
	for _, f := range v.Steppers {
		if f.Path == path {
			return f
		}
	}
	for _, g := range v.Groups {
		for _, f := range g.Fields {
			if f.Path == path {
				return f
			}
		}
	}
	t.Fatalf("no field %s on the page", path)
	return Field{}
}

// A problem opens the group that it stands in.
func TestProblemIsSeen(t *testing.T) {
	f := phone(setting(Example(), "concrete", "soft"))
	f.Open = nil
	v, _ := New(f, Good{})
	for _, g := range v.Groups {
		if faulty := g.ID == "carry"; g.Faulty != faulty || (len(g.Fields) > 0) != faulty {
			t.Errorf("group %s: faulty %v with %d fields", g.ID, g.Faulty, len(g.Fields))
		}
	}
}

// Lengths read as meant, however they are typed, and read back in the units of
// the reader. The values are the same wall height written in other ways.
func TestEntryReadsAsMeant(t *testing.T) {
	for _, text := range []string{"12' 6 1/2\"", "12-6 1/2", "12 ft 6 1/2 in", "12.541666666666666 ft", "150.5 in", "12’ 6½”"} {
		w := setting(Example(), "height", text)
		v, good := New(phone(w), Good{})
		if d := math.Abs(float64(good.Result.Input.Height) - 150.5); d > 1e-9 {
			t.Errorf("%q reads as %v in, want 150.5 (%s)", text, good.Result.Input.Height, fieldOf(t, v, "height").Problem)
		}
		if shown := fieldOf(t, v, "height").Shown; shown != "12 ft 6 1/2 in" {
			t.Errorf("%q shows as %q", text, shown)
		}
		f := phone(w)
		f.Focus = "height"
		if v, _ := New(f, Good{}); fieldOf(t, v, "height").Shown != text {
			t.Errorf("while it is typed in, the field shows %q instead of %q", fieldOf(t, v, "height").Shown, text)
		}
	}
}

// Without a unit a number has the field's, and keeps it when the units change.
func TestCommit(t *testing.T) {
	metric := words.Speaker{System: words.Metric}
	for _, test := range []struct {
		path, text string
		s          words.Speaker
		want       string
	}{
		{"height", "9", words.Speaker{}, "9 ft 0 in"},
		{"thickness", "10", words.Speaker{}, "10 in"},
		{"height", "2.75", metric, "2.75 m"},
		{"height", "2,75", metric, "2.75 m"},
		{"thickness", "250", metric, "250 mm"},
		{"concrete", "3,000", words.Speaker{}, "3000 psi"},
		{"height", "9 ft", words.Speaker{}, "9 ft"},
		{"height", "tall", words.Speaker{}, "tall"},
		{"height", "", words.Speaker{}, ""},
	} {
		w := setting(Example(), test.path, test.text)
		Commit(&w, test.path, test.s)
		if got := w.Field(test.path); got != test.want {
			t.Errorf("Commit(%s = %q) = %q, want %q", test.path, test.text, got, test.want)
		}
	}
}

// A wall that no number is offered for still has a page.
func TestStoppedWall(t *testing.T) {
	w := setting(Example(), "soil.by", "unknown", "swells", "yes")
	v, good := New(phone(w), Good{})
	if !good.Result.Stopped || v.Lines[0].State != Fails {
		t.Errorf("stopped %v, first line %+v", good.Result.Stopped, v.Lines[0])
	}
	if len(v.Checks) > 0 && v.Checks[0].State == Holds {
		t.Error("a stopped wall shows checks that hold")
	}
}
