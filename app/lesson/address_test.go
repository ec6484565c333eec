package lesson

import (
	"strings"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc/units"
)

// Every screen's address brings the same screen back.
func TestAddressRoundTrip(t *testing.T) {
	for system, sp := range speakers {
		for i := range all {
			form := Start(sp, all[i].id)
			if back := Read(sp, Address(form)); back != form {
				t.Errorf("%s: %s reads as %+v, was %+v", system, Address(form), back, form)
			}
			k := newKit(sp, "", 80, 60)
			k.picks = form.Picks
			for at := range all[i].stops(k) {
				form.At, form.Shown = at, true
				if back := Read(sp, "#"+Address(form)); back != form {
					t.Errorf("%s: %s reads as %+v, was %+v", system, Address(form), back, form)
				}
			}
			if a := Address(form); strings.ContainsAny(a, " %#?&\"'") || !Is(a) {
				t.Errorf("%s is no address", a)
			}
		}
	}
	form := Start(words.Speaker{}, "heights")
	form.Shown = true
	for s := range sweepSoils {
		for th := range sweepThick {
			for b := range sweepBars {
				form.Picks = [3]int{s, th, b}
				if back := Read(words.Speaker{}, Address(form)); back != form {
					t.Errorf("%s reads as %+v", Address(form), back)
				}
			}
		}
	}
}

// A link made in one system of units opens in the other at the nearest stop.
func TestAddressAcrossUnits(t *testing.T) {
	metric := words.Speaker{System: words.Metric}
	f := Read(metric, "why/height/10ft")
	if got := New(sized(f)).Control.Stops[f.At]; got != metric.Length(mm(3000)) || !f.Shown {
		t.Errorf("10 ft opens at %s", got)
	}
	f = Read(words.Speaker{}, "why/height/3m")
	if got := New(sized(f)).Control.Stops[f.At]; got != (words.Speaker{}).Length(10*ft) {
		t.Errorf("3 m opens at %s", got)
	}
	turned := Turn(f, metric)
	if got := New(sized(turned)).Control.Stops[turned.At]; got != metric.Length(units.Length(3000)*units.Millimetre) || !turned.Shown {
		t.Errorf("10 ft turned to metric is %s", got)
	}
}

func sized(f Form) Form {
	f.Width, f.Height = 390, 330
	return f
}

func TestIs(t *testing.T) {
	for text, want := range map[string]bool{"why": true, "#why": true, "why/height": true, "#why/height/9ft": true, "whyever": false, "": false, "#": false, "wall": false} {
		if Is(text) != want {
			t.Errorf("Is(%q) = %v", text, !want)
		}
	}
}

// Whatever stands in an address, a screen comes of it.
func FuzzRead(f *testing.F) {
	for _, text := range []string{"why", "why/height/9ft4in", "why/heights/9ft/45pcf/8in/no4-16in", "why/check", "why/beam/45deg", "#why/side/floor", "why//", "why/height/NaN"} {
		f.Add(text, false)
	}
	f.Fuzz(func(t *testing.T, text string, metric bool) {
		sp := words.Speaker{}
		if metric {
			sp.System = words.Metric
		}
		form := Read(sp, text)
		v := New(sized(form))
		if v.Title == "" || !Is(v.Fragment) {
			t.Errorf("%q gives %+v", text, v)
		}
		if back := Read(sp, v.Fragment); back != form {
			t.Errorf("%q is %+v, its address %q %+v", text, form, v.Fragment, back)
		}
	})
}

// A form with numbers out of range is taken at its nearest.
func TestFormOutOfRange(t *testing.T) {
	for i := range all {
		for _, n := range []int{-1000, -1, 4, 1000} {
			f := Form{ID: all[i].id, At: n, Guess: n, Picks: [3]int{n, n, n}, Cases: [3]int{n, n, n}, Shown: true, Width: float64(n), Height: float64(n)}
			if v := New(f); v.Title == "" || v.Say == "" {
				t.Errorf("%s with %d: %+v", all[i].id, n, v)
			}
		}
	}
}
