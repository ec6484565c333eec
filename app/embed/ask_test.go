package embed

import (
	"net/url"
	"strings"
	"testing"

	"standingbeam/app/view"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
)

func TestParse(t *testing.T) {
	a, ok := Parse("#embed&condition=free+top&height=6%20ft&grade-a=5+ft+4+in&footing-allowable-bearing=1500+psf&show=answer" +
		"&units=metric&decimal=comma&lang=es-US&theme=dark&keep=garage-1&host=https%3A%2F%2Fbuilder.example%3A8443&color-ink=%23FFF")
	if !ok || len(a.Refused) > 0 {
		t.Fatalf("Parse = %v, refused %v", ok, a.Refused)
	}
	want := []Field{{"condition", "free top"}, {"height", "6 ft"}, {"grade.a", "5 ft 4 in"}, {"footing.allowable bearing", "1500 psf"}}
	if len(a.Fields) != len(want) {
		t.Fatalf("fields %v, want %v", a.Fields, want)
	}
	for i, f := range want {
		if a.Fields[i] != f {
			t.Errorf("field %d is %v, want %v", i, a.Fields[i], f)
		}
	}
	if a.Show != Answer || a.System != words.Metric || !a.Comma || a.Lang != "es" || a.Theme != "dark" || !a.Keep || a.KeepAs != "garage-1" || a.Host != "https://builder.example:8443" {
		t.Errorf("read as %+v", a)
	}
	if got := a.Colors.Ink.String(); got != "#ffffff" {
		t.Errorf("color-ink %q, want #ffffff", got)
	}
}

func TestParseLeavesOthers(t *testing.T) {
	for _, fragment := range []string{"", "#", "#picture", "#embedded", "embed&height=6+ft", "#embedheight=6"} {
		if _, ok := Parse(fragment); ok {
			t.Errorf("%q was taken as a request", fragment)
		}
	}
	if a, ok := Parse("#embed"); !ok || a.Show != All {
		t.Errorf("a bare request is read as %+v, %v", a, ok)
	}
}

// What cannot be used is refused by name and changes nothing.
func TestRefusals(t *testing.T) {
	for _, test := range []struct{ query, id string }{
		{"wide=6+ft", "unknown"}, {"show=half", "value"}, {"units=imperial", "value"}, {"decimal=dot", "value"},
		{"lang=english", "value"}, {"lang=e%22", "value"}, {"theme=blue", "value"}, {"lesson=a//b", "value"}, {"lesson=", "value"}, {"lesson=..%2Fx", "value"},
		{"keep=two+words", "value"}, {"height=" + strings.Repeat("1", 201), "too-long"}, {"height=%zz", "unreadable"},
		{"color-ink=red", "value"}, {"color-ink=%2312345", "value"}, {"color-ink=%23gggggg", "value"}, {"color-ink=url(x)", "value"},
		{"color-paper=%23fff;background:url(//x)", "unreadable"}, {"color-paper=%23ffffff0", "value"},
		{"host=null", "value"}, {"host=*", "value"}, {"host=https://a.example/", "value"}, {"host=https://a.example/x", "value"},
		{"host=ftp://a.example", "value"}, {"host=https://me@a.example", "value"}, {"host=javascript:alert(1)", "value"},
	} {
		a := ParseQuery(test.query)
		if len(a.Refused) != 1 || a.Refused[0].ID != test.id {
			t.Errorf("%s: refused %v, want one %s", test.query, a.Refused, test.id)
			continue
		}
		if say := a.Refused[0].Say(words.Speaker{}); strings.ContainsAny(say, "{}") || say == "" {
			t.Errorf("%s: it says %q", test.query, say)
		}
		a.Refused = nil
		if len(a.Fields) > 0 || a.Host != "" || a.Lesson != "" || a.Lang != "" || a.Keep || a.Colors != (Colors{}) || a.Show != All {
			t.Errorf("%s: left %+v", test.query, a)
		}
	}
	if a, ok := Parse("#embed&height=" + strings.Repeat("x", MaxFragment)); !ok || len(a.Refused) != 1 || len(a.Fields) > 0 {
		t.Errorf("a fragment that is too long is read as %v %+v", ok, a)
	}
}

// Every field of the wall has a key of its own that no attribute of HTML and
// no other key has.
func TestKeys(t *testing.T) {
	if len(pathOf) != len(wallfile.Fields()) {
		t.Errorf("%d keys for %d fields", len(pathOf), len(wallfile.Fields()))
	}
	for key := range pathOf {
		if own[key] != nil {
			t.Errorf("%q stands for two things", key)
		}
		if strings.ToLower(key) != key || strings.Trim(key, "abcdefghijklmnopqrstuvwxyz-") != "" {
			t.Errorf("%q cannot be an attribute", key)
		}
		for _, html := range []string{"id", "class", "style", "title", "hidden", "slot", "part", "dir", "role", "tabindex", "from"} {
			if key == html || strings.HasPrefix(key, "data-") || strings.HasPrefix(key, "aria-") || strings.HasPrefix(key, "on") {
				t.Errorf("%q means something else in HTML", key)
			}
		}
	}
}

// A wall of the contract asked for field by field comes out as it is there.
func TestWall(t *testing.T) {
	a := ParseQuery("condition=free+top&height=6+ft&thickness=8+in&grade-a=6+ft&grade-b=0+in&soil-equivalent-fluid=30+pcf" +
		"&soil-unit-weight=120+pcf&footing-width=4+ft&footing-thickness=12+in&footing-toe=1+ft&footing-allowable-bearing=2000+psf&footing-friction=0.40" +
		"&concrete=3000+psi&steel=60+ksi")
	w := a.Wall()
	for path, want := range map[string]string{
		"condition": "free top", "height": "6 ft", "grade.a": "6 ft", "soil.by": "equivalent fluid", "soil.equivalent fluid": "30 pcf",
		"footing.width": "4 ft", "footing.toe": "1 ft", "steel": "60 ksi",
	} {
		if got := w.Field(path); got != want {
			t.Errorf("%s is %q, want %q", path, got, want)
		}
	}
	if problems := a.Problems(); len(problems) > 0 {
		t.Errorf("problems %v", problems)
	}
}

// A wall of which only the height is said is one that can be used, in every
// condition: the ground goes down with the top.
func TestOnlyTheHeight(t *testing.T) {
	for _, condition := range []string{"", "braced top", "free top", "tied to slab", "soil both sides"} {
		for _, height := range []string{"2 ft", "4 ft", "6", "12 ft 6 in", "20 ft", "1.2 m"} {
			q := url.Values{"height": {height}}
			if condition != "" {
				q.Set("condition", condition)
			}
			if problems := ParseQuery(q.Encode()).Problems(); len(problems) > 0 {
				t.Errorf("%s, %s: %v", condition, height, problems)
			}
		}
	}
	if got := ParseQuery("height=6+ft").Wall().GradeA; got != `5 ft 4 in` {
		t.Errorf("6 ft high the ground stands at %q, want 5 ft 4 in", got)
	}
	if got := ParseQuery("height=2&units=metric").Wall().GradeA; got != "1.8 m" {
		t.Errorf("2 m high the ground stands at %q, want 1.8 m", got)
	}
	if got := ParseQuery("").Wall(); got != view.Example() {
		t.Errorf("nothing asked for gives %+v", got)
	}
}

// The fragment of a wall gives that wall.
func TestFragmentRoundTrip(t *testing.T) {
	a := ParseQuery("condition=tied+to+slab&name=A+%26+B+%23%25+%E2%80%9Cx%E2%80%9D&height=9+ft&units=metric&lang=es&decimal=comma&theme=dark&color-steel=%23abc&color-paper=%23000000")
	w := a.Wall()
	b, ok := Parse(a.Fragment(w))
	if !ok || len(b.Refused) > 0 || b.Wall() != w {
		t.Errorf("the fragment %s gives %+v, refused %v, want %+v", a.Fragment(w), b.Wall(), b.Refused, w)
	}
	if b.Speaker() != a.Speaker() || b.Colors != a.Colors || b.Theme != a.Theme {
		t.Errorf("%+v came back as %+v", a, b)
	}
}

func FuzzParse(f *testing.F) {
	f.Add("#embed&height=6+ft&color-ink=%23fff&host=http://a.example&keep")
	f.Add("#embed&=&&%&soil-by=class&color-paper=%23&lang=--")
	f.Fuzz(func(t *testing.T, fragment string) {
		a, ok := Parse(fragment)
		if !ok {
			return
		}
		a.Wall()
		for _, v := range a.Colors.Palette(a.Theme).Vars {
			if _, ok := parseHex(v.Value); !ok {
				t.Errorf("%s is %q", v.Name, v.Value)
			}
		}
		if strings.ContainsAny(a.KeepAs+a.Lesson+a.Lang, "\\. \"'<>&") {
			t.Errorf("names %q %q %q", a.KeepAs, a.Lesson, a.Lang)
		}
	})
}

// What is kept belongs to the name and the wall that was asked for, not to the
// looks.
func TestKeptName(t *testing.T) {
	name := func(q string) string { return ParseQuery(q).KeptName() }
	if name("keep=a&height=6+ft&show=picture") != name("keep=a&height=6+ft&units=metric") {
		t.Error("the looks change what is kept")
	}
	for _, other := range []string{"keep=b&height=6+ft", "keep=a&height=7+ft", "keep&height=6+ft", "keep=a"} {
		if name("keep=a&height=6+ft") == name(other) {
			t.Errorf("%s is kept in the same place", other)
		}
	}
}
