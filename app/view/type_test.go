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
