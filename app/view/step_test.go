package view

import (
	"math"
	"strings"
	"testing"

	"standingbeam/app/draw"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc/units"
)

func TestStepBy(t *testing.T) {
	metric := words.Speaker{System: words.Metric}
	for _, test := range []struct {
		path, text string
		by         int
		s          words.Speaker
		want       string
	}{
		{"height", "9 ft", +1, words.Speaker{}, "9 ft 4 in"},
		{"height", "9 ft", -1, words.Speaker{}, "8 ft 8 in"},
		{"height", "9 ft 1 in", +1, words.Speaker{}, "9 ft 4 in"},
		{"height", "9 ft 1 in", -1, words.Speaker{}, "9 ft 0 in"},
		{"height", "20 ft", +1, words.Speaker{}, "20 ft 0 in"},
		{"thickness", "9.5 in", +1, words.Speaker{}, "10 in"},
		{"thickness", "6 in", -1, words.Speaker{}, "5 1/2 in"},
		{"grade.a", "9 ft", +1, words.Speaker{}, "9 ft 0 in"},
		{"grade.a", "0 in", -1, words.Speaker{}, "0 in"},
		{"height", "2.75 m", +1, metric, "2.8 m"},
		{"thickness", "250 mm", +1, metric, "300 mm"},
		// Held for long, it goes by three steps, to whole feet of height.
		{"height", "9 ft 4 in", +3, words.Speaker{}, "10 ft 0 in"},
		{"height", "10 ft", -3, words.Speaker{}, "9 ft 0 in"},
		{"height", "19 ft 8 in", +3, words.Speaker{}, "20 ft 0 in"},
		{"height", "20 ft", +3, words.Speaker{}, "20 ft 0 in"},
		{"grade.a", "8 in", -3, words.Speaker{}, "0 in"},
		{"height", "2.75 m", -3, metric, "2.7 m"},
	} {
		w := setting(Example(), test.path, test.text)
		StepBy(&w, test.path, test.by, test.s)
		if got := w.Field(test.path); got != test.want {
			t.Errorf("%s: %q stepped by %+d is %q, want %q", test.path, test.text, test.by, got, test.want)
		}
	}
}

// A level that must not stand above another goes down with it.
func TestStepTakesAlong(t *testing.T) {
	w := setting(held("soil both sides"), "height", "9 ft", "grade.a", "9 ft", "grade.b", "9 ft", "water", "9 ft")
	StepBy(&w, "height", -1, words.Speaker{})
	for _, path := range []string{"height", "grade.a", "grade.b", "water"} {
		if got := w.Field(path); got != "8 ft 8 in" {
			t.Errorf("%s is %q, want 8 ft 8 in", path, got)
		}
	}
	if _, problems := compute(w, Form{}); len(problems) > 0 {
		t.Errorf("stepping made %v", problems)
	}
}

// The soils go around and come back.
func TestStepSoil(t *testing.T) {
	w := Example()
	seen := map[string]bool{}
	for range soilValues() {
		seen[soilValue(&w)] = true
		if v, good := New(phone(w), Good{}); !good.Known || v.Stale != "" {
			t.Errorf("soil %s: %s", soilValue(&w), v.Announce)
		}
		StepBy(&w, soilPath, +3, words.Speaker{}) // one at a time, however long it is held
	}
	if len(seen) != len(soilValues()) || soilValue(&w) != "class:SM" {
		t.Errorf("after a whole round: %d soils, at %s", len(seen), soilValue(&w))
	}
}

// A drag of p pixels changes a level by p over the pixels of an inch, upward
// for a level, and lands on whole inches.
func TestDrag(t *testing.T) {
	v, _ := New(phone(Example()), Good{})
	for _, h := range v.Picture.Handles {
		for _, pixels := range []float64{-150, -40, -1, 0, 1, 40, 150} {
			w := Drag(Example(), h, pixels, words.Speaker{})
			got := valueOf(&w, h.ID, words.Speaker{}).Base
			want := math.Round(h.Now.Inches() + h.Sign*pixels/h.PxPerInch)
			info, _ := infoOf(h.ID)
			start := Example()
			low, high := bounds(&start, info, words.Speaker{})
			want = math.Min(math.Max(want, low), high)
			if math.Abs(got-want) > 1e-9 {
				t.Errorf("%s dragged by %v px: %v in, want %v", h.ID, pixels, got, want)
			}
		}
		if h.ID == "height" && !(h.Sign < 0) {
			t.Error("dragging the wall's top up must raise it")
		}
	}
	odd := v.Picture.Handles[0]
	odd.PxPerInch = 0
	for _, pixels := range []float64{1, math.NaN(), math.Inf(1)} {
		if Drag(Example(), odd, pixels, words.Speaker{}) != Example() {
			t.Error("a drag that means nothing changed the wall")
		}
	}
}

// Dragging there and back gives back what was there, since everything is
// reckoned from the start.
func TestDragBack(t *testing.T) {
	v, _ := New(phone(Example()), Good{})
	h := v.Picture.Handles[0]
	if far := Drag(Example(), h, 120, words.Speaker{}); far.GradeA == Example().GradeA {
		t.Error("lowering the wall below its fill left the fill")
	}
	back := Drag(Example(), h, 0, words.Speaker{})
	if back.GradeA != Example().GradeA {
		t.Errorf("fill is %q after dragging back, want %q", back.GradeA, Example().GradeA)
	}
}

func TestKey(t *testing.T) {
	v, _ := New(phone(Example()), Good{})
	var height draw.Handle
	for _, h := range v.Picture.Handles {
		if h.ID == "height" {
			height = h
		}
	}
	metric := words.Speaker{System: words.Metric}
	for _, test := range []struct {
		move Move
		s    words.Speaker
		want units.Length
	}{
		{More, words.Speaker{}, 109}, {Less, words.Speaker{}, 107},
		{MuchMore, words.Speaker{}, 120}, {MuchLess, words.Speaker{}, 96},
		{Most, words.Speaker{}, 240}, {Least, words.Speaker{}, 24},
		// 9 ft is 2743.2 mm: keys land on whole centimetres.
		{More, metric, 2750 * units.Millimetre}, {MuchMore, metric, 2840 * units.Millimetre},
	} {
		w := Key(Example(), height, test.move, test.s)
		if got := units.Length(valueOf(&w, "height", test.s).Base); math.Abs(float64(got-test.want)) > 1e-6 {
			t.Errorf("move %d: %v in, want %v", test.move, got, test.want)
		}
	}
}

// Every handle of every condition leads to a wall that can be computed.
func TestHandlesLeadSomewhere(t *testing.T) {
	for _, c := range conditions {
		start := setting(held(c.value), "water", "2 ft")
		v, _ := New(phone(start), Good{})
		for _, h := range v.Picture.Handles {
			for _, m := range []Move{More, Less, MuchMore, MuchLess, Least, Most} {
				w := Key(start, h, m, words.Speaker{})
				if _, problems := compute(w, Form{}); len(problems) > 0 {
					t.Errorf("%s: %s moved by %d: %v", c.value, h.ID, m, problems)
				}
			}
		}
	}
}

// Changing the condition changes what was only usual, never what was said.
func TestConditionFollows(t *testing.T) {
	w := Example()
	for _, c := range []string{"free top", "tied to slab", "soil both sides", "braced top"} {
		Choose(&w, "condition", c)
		for path, text := range usualOf[c] {
			if got := w.Field(path); got != text {
				t.Errorf("%s: %s is %q, want the usual %q", c, path, got, text)
			}
		}
	}
	if w != Example() {
		t.Errorf("after a round the example is\n%+v, want\n%+v", w, Example())
	}
	said := setting(Example(), "footing.width", "30 in", "grade.b", "1 ft", "surcharge.dead", "75 psf")
	for _, c := range []string{"free top", "tied to slab", "soil both sides", "braced top"} {
		Choose(&said, "condition", c)
		if said.Field("footing.width") != "30 in" || said.Field("grade.b") != "1 ft" || said.Field("surcharge.dead") != "75 psf" {
			t.Errorf("%s changed what was said: %+v", c, said)
		}
	}
}

// The usual walls hold or are open: they are what one may begin from.
func TestUsualWallsStand(t *testing.T) {
	for _, c := range conditions {
		v, _ := New(phone(held(c.value)), Good{})
		for _, l := range v.Lines {
			if l.ID == "finished" && l.State == Fails {
				t.Errorf("%s: %s", c.value, l.Title)
			}
		}
	}
}

// Every field of the wall file is asked somewhere, in some condition.
func TestEveryFieldIsAsked(t *testing.T) {
	asked := map[string]bool{"name": true, "condition": true, "soil.by": true, "soil.class": true, "dowels.by": true, "rulebook": true}
	for _, a := range stepperAsks {
		asked[a.path] = true
	}
	for _, g := range groupAsks {
		for _, a := range g.asks {
			asked[a.path] = true
		}
	}
	for _, info := range wallfile.Fields() {
		if !asked[info.Path] {
			t.Errorf("the page never asks for %s", info.Path)
		}
	}
}

func TestFreeName(t *testing.T) {
	got := FreeName("East", []string{"East", "East 2"}, words.Speaker{})
	if got != "East 3" {
		t.Errorf("FreeName = %q, want East 3", got)
	}
	if strings.Contains(FreeName("West", nil, words.Speaker{}), "2") {
		t.Error("a free name was numbered")
	}
}
