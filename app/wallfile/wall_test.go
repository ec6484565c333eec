package wallfile

import (
	"fmt"
	"math"
	"reflect"
	"strings"
	"testing"
	"unicode/utf8"

	"standingbeam/app/entry"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// show writes an input with nine digits a number, so that two that differ by
// rounding are the same.
func show(in calc.Input) string {
	var b strings.Builder
	var walk func(v reflect.Value)
	walk = func(v reflect.Value) {
		switch v.Kind() {
		case reflect.Struct:
			b.WriteByte('{')
			for i := range v.NumField() {
				b.WriteString(v.Type().Field(i).Name + ":")
				walk(v.Field(i))
			}
			b.WriteByte('}')
		case reflect.Float64:
			fmt.Fprintf(&b, "%.9g ", v.Float())
		default:
			fmt.Fprintf(&b, "%v ", v)
		}
	}
	walk(reflect.ValueOf(in))
	return b.String()
}

// filled is a wall with something in every field, each what its kind asks for.
func filled() Wall {
	var w Wall
	for _, f := range fields {
		at := f.at(&w)
		switch f.kind {
		case Text:
			*at = `north "long" wall <1>`
		case Choice, YesNo:
			*at = f.words[len(f.words)-1]
		case Quantity:
			*at = strings.TrimSpace("1 " + f.unit(false))
		case Bar:
			*at = "No. 5"
		case BarList:
			*at = "No. 4, No. 5"
		}
	}
	return w
}

// Every field of the struct is a field of the file, and reaches the input.
func TestEveryField(t *testing.T) {
	w := filled()
	var empty func(v reflect.Value, name string)
	empty = func(v reflect.Value, name string) {
		if v.Kind() == reflect.Struct {
			for i := range v.NumField() {
				empty(v.Field(i), name+"."+v.Type().Field(i).Name)
			}
		} else if v.String() == "" {
			t.Errorf("Wall%s has no field", name)
		}
	}
	empty(reflect.ValueOf(w), "")
	s := words.Speaker{}
	for _, f := range fields {
		if !s.Has("field." + f.path) {
			t.Errorf("field %q has no name", f.path)
		}
		for _, word := range f.words {
			if !s.Has("choice." + f.path + "." + word) {
				t.Errorf("choice %q of %q has no name", word, f.path)
			}
		}
		if f.kind == Text || f.kind == BarList {
			continue
		}
		changed := false
		for _, i := range []int{0, len(f.words) - 1} {
			var in calc.Input
			text := w.Field(f.path)
			if f.words != nil {
				text = f.words[max(0, i)]
			}
			if p, ok := f.read(&in, text, strict); !ok {
				t.Errorf("%s %q: %v", f.path, text, p)
			}
			changed = changed || show(in) != show(calc.Input{})
		}
		if !changed {
			t.Errorf("%s does not reach the input", f.path)
		}
	}
	walls, problems := Read(strings.NewReader(string(Encode([]Wall{w, {}, w}))))
	if len(problems) > 0 || len(walls) != 3 || walls[0] != w || walls[1] != (Wall{}) || walls[2] != w {
		t.Errorf("round trip: %v", problems)
	}
}

func TestSetAndField(t *testing.T) {
	var w Wall
	for i, f := range Fields() {
		text := fmt.Sprint(i)
		if !w.Set(f.Path, text) || w.Field(f.Path) != text {
			t.Errorf("%s does not keep its text", f.Path)
		}
	}
	if w.Set("grade", "x") || w.Set("", "x") || w.Field("nothing") != "" {
		t.Error("an unknown path is taken")
	}
}

// The ranges are those that the calculation states: 2 to 20 ft, 5.5 to 24 in,
// 2,500 to 8,000 psi.
func TestRanges(t *testing.T) {
	for path, want := range map[string][2]units.Quantity{
		"height":    {units.Of(24*units.Inch, units.Level), units.Of(240*units.Inch, units.Level)},
		"thickness": {units.Of(5.5*units.Inch, units.Size), units.Of(24*units.Inch, units.Size)},
		"concrete":  {units.Of(2500*units.PSI, units.Strength), units.Of(8000*units.PSI, units.Strength)},
	} {
		f, _ := Info(path)
		if !f.Ranged || math.Abs(f.Min.Base-want[0].Base) > 1e-9 || math.Abs(f.Max.Base-want[1].Base) > 1e-9 || f.Min.Kind != want[0].Kind {
			t.Errorf("%s: %v to %v, want %v", path, f.Min, f.Max, want)
		}
	}
	for _, f := range Fields() {
		if f.Kind == Quantity && !f.Ranged && f.Path != "steel" {
			t.Errorf("%s has no range", f.Path)
		}
	}
	// The ground of a wall of 8 ft reaches 8 ft.
	if _, high, ok := (Wall{Height: "8 ft"}).Range("grade.a"); !ok || math.Abs(high.Base-96) > 1e-9 {
		t.Errorf("grade.a up to %v", high)
	}
}

// On the page: units may be left out, what is not asked is passed over, and a
// settled wall says the same to the strict reader.
func TestPage(t *testing.T) {
	typed := Wall{Condition: "braced top", Height: "2,75", Thickness: "250", GradeA: "2.5", Concrete: "25", Steel: "420 MPa",
		TieStrength: "?", SoilClass: "??", SoilBy: "equivalent fluid", SoilFluid: "7", Sizes: "4, #5", Vertical: Bars{Size: "#4", Spacing: "400"}}
	o := entry.Options{Metric: true}
	in, problems := typed.Input(o)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, test := range []struct {
		name      string
		got, want float64
	}{
		{"height", in.Height.Millimetres(), 2750}, {"thickness", in.Thickness.Millimetres(), 250}, {"fc", float64(in.Material.Fc / units.MPa), 25},
		{"fy, grade 420 is grade 60", in.Material.Fy.KSI(), 60}, {"fluid", float64(in.Soil.Fluid / units.KNPerM3), 7}, {"spacing", in.Vertical.Spacing.Millimetres(), 400},
	} {
		if math.Abs(test.got-test.want) > 1e-9 {
			t.Errorf("%s = %v, want %v", test.name, test.got, test.want)
		}
	}
	settled := typed.Settled(o)
	again, problems := settled.Input(entry.Options{Strict: true})
	if len(problems) != 2 { // the two that were passed over
		t.Error(problems)
	}
	again.Soil.Class = in.Soil.Class
	if show(in) != show(again) {
		t.Errorf("settled:\n got %s\nwant %s", show(again), show(in))
	}
	if settled.TieStrength != "?" || settled.Height != "2.75 m" || settled.Sizes != "No. 4, No. 5" {
		t.Errorf("settled %+v", settled)
	}
}

// Any file: no panic; what is read can be written and read again, and every
// fault has a sentence.
func FuzzDecode(f *testing.F) {
	f.Add(`{"format":1,"walls":[{"name":"a","soil":"unknown","dowels":"none","today":{"floor":true},"sizes":["No. 4"],"bars":{"vertical":{"size":"No. 4"}}}]}`)
	f.Add(`{"format":1,"walls":[{"height":8,"height":"8 ft","soil":{"by":"unknown"}}],"x":[[]]}`)
	f.Add("\xef\xbb\xbf{")
	f.Fuzz(func(t *testing.T, text string) {
		walls, problems := Decode(strings.NewReader(text))
		for _, p := range problems {
			if line := p.Line(words.Speaker{}); line == "" || strings.Contains(line, "\n") {
				t.Fatalf("%+v says %q", p, line)
			}
		}
		again, faults := Read(strings.NewReader(string(Encode(walls))))
		if len(walls) > 0 && (len(faults) > 0 || !reflect.DeepEqual(walls, again)) {
			t.Fatalf("%q: %+v became %+v, %v", text, walls, again, faults)
		}
	})
}

// Any text in any field: no panic, and an input without problems is one that
// the calculation takes.
func FuzzInput(f *testing.F) {
	f.Add("12' 6\"", "8", uint8(3), false)
	f.Add("NaN", "1e9 ft", uint8(20), true)
	f.Fuzz(func(t *testing.T, a, b string, n uint8, metric bool) {
		if !utf8.ValidString(a) || !utf8.ValidString(b) || len(a) > MaxText || len(b) > MaxText {
			return
		}
		w := Wall{Condition: "braced top", Height: "8 ft", Thickness: "8 in", GradeA: "7 ft", Concrete: "3000 psi", Steel: "60 ksi"}
		*fields[int(n)%len(fields)].at(&w) = a
		*fields[(int(n)+7)%len(fields)].at(&w) = b
		o := entry.Options{Metric: metric}
		in, problems := w.Input(o)
		if len(problems) == 0 && len(in.Validate()) > 0 {
			t.Fatalf("%+v passes, but %v", w, in.Validate())
		}
		again, _ := w.Settled(o).Input(o)
		if len(problems) == 0 && show(in) != show(again) {
			t.Fatalf("settled: %s became %s", show(in), show(again))
		}
		walls, faults := Read(strings.NewReader(string(Encode([]Wall{w}))))
		if len(faults) > 0 || walls[0] != w {
			t.Fatalf("%+v became %+v, %v", w, walls, faults)
		}
	})
}
