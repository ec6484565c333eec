package view

import (
	"testing"

	"standingbeam/app/words"
)

// Whatever is typed on the way to 12 ft, the fill is where it was; a height
// below the fill takes the fill along.
func TestTypedHeight(t *testing.T) {
	start := Example()
	for _, test := range []struct{ text, fill string }{
		{"1", "8 ft 4 in"}, {"12", "8 ft 4 in"}, {"2", "2 ft 0 in"}, {"7 ft", "7 ft 0 in"}, {"", "8 ft 4 in"},
		{"abc", "8 ft 4 in"}, {"40 ft", "8 ft 4 in"}, {"9 ft", "8 ft 4 in"},
	} {
		w := Type(start, "height", test.text, words.Speaker{})
		if w.Height != test.text || w.GradeA != test.fill {
			t.Errorf("height typed as %q: the fill stands at %q, want %q", test.text, w.GradeA, test.fill)
		}
	}
}

// Where the decimal sign is a comma, a field that is begun shows one; what is
// typed there stays as it is typed, whatever the sign.
func TestBegin(t *testing.T) {
	comma := words.Speaker{System: words.Metric, DecimalComma: true}
	for _, test := range []struct{ path, text, want string }{
		{"height", "2.74 m", "2,74 m"}, {"height", "9 ft 4 1/2 in", "9 ft 4 1/2 in"}, {"height", "2,5", "2,5"},
		{"height", "1.2.3", "1.2.3"}, {"height", "", ""}, {"footing.friction", "0.35", "0,35"},
		{"concrete", "3.5 ksi", "3,5 ksi"}, {"name", "No. 4", "No. 4"},
	} {
		w := setting(Example(), test.path, test.text)
		if got := Begin(&w, test.path, comma); got != test.want {
			t.Errorf("%s %q begins as %q, want %q", test.path, test.text, got, test.want)
		}
		if got := Begin(&w, test.path, words.Speaker{}); got != test.text {
			t.Errorf("with a point, %s %q begins as %q", test.path, test.text, got)
		}
	}
	for _, test := range []struct {
		text, want string
		typed      bool
	}{{"2.74 m", "2,74 m", false}, {"2.7", "2.7", true}, {"2,7", "2,7", true}} {
		f := phone(setting(Example(), "height", test.text))
		f.Speaker, f.Focus, f.Typed = comma, "height", test.typed
		v, _ := New(f, Good{})
		if got := fieldOf(t, v, "height").Shown; got != test.want {
			t.Errorf("%q, typed %v, shows as %q, want %q", test.text, test.typed, got, test.want)
		}
	}
}

// An unreadable height is said at the height alone, and the fill that it
// limits is not blamed.
func TestBlame(t *testing.T) {
	_, good := New(phone(Example()), Good{})
	for _, test := range []struct{ path, text string }{
		{"height", "abc"}, {"height", "40 ft"}, {"height", ""}, {"thickness", "x"},
	} {
		v, _ := New(phone(setting(Example(), test.path, test.text)), good)
		for _, f := range v.Steppers {
			if (f.Problem != "") != (f.Path == test.path) {
				t.Errorf("%s typed as %q: at %s stands %q", test.path, test.text, f.Path, f.Problem)
			}
		}
	}
}

// The stages that can be drawn are those that the wall has; a stage that it
// does not have leaves the finished wall.
func TestStages(t *testing.T) {
	alone := setting(held("tied to slab"), "tie.before the slab", "")
	f := phone(alone)
	f.Stage = "before the slab"
	v, _ := New(f, Good{})
	if len(v.Picture.Stages) != 2 || !v.Picture.Stages[0].Chosen || v.Picture.Stage == "" {
		t.Errorf("a tied wall that stands alone before its slab offers %v", v.Picture.Stages)
	}
	f.Wall = Example()
	v, _ = New(f, Good{})
	if len(v.Picture.Stages) != 0 || v.Picture.Stage != "" {
		t.Errorf("a wall of one stage offers %v and says %q", v.Picture.Stages, v.Picture.Stage)
	}
}

// A bare number keeps the unit that it was read in.
func TestCommitKeepsUnit(t *testing.T) {
	w := setting(Example(), "steel", "60", "soil.unit weight", "125")
	CommitAll(&w, words.Speaker{})
	if w.Steel != "60 ksi" || w.SoilWeight != "125 pcf" {
		t.Errorf("kept as %q and %q", w.Steel, w.SoilWeight)
	}
}
