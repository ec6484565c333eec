package draw

import (
	"strings"
	"testing"

	"standingbeam/calc"
)

// In a low picture the wall takes two fifths of the height at least, and of the handles only the
// levels are left.
func TestLowPicturesShowTheWall(t *testing.T) {
	grid(func(name string, w calc.Input) {
		r := design(t, w)
		for _, s := range small[1:] {
			p := Section(r, Options{Width: s[0], Height: s[1]})
			for _, h := range p.Handles {
				if strings.HasPrefix(h.ID, "footing.") {
					t.Errorf("%s at %v: handle %s", name, s, h.ID)
				}
			}
			if w.Height != 8*ft || w.Footing.Width > 5*ft {
				continue
			}
			if tall := w.Height.Inches() * p.Window.Scale; tall < 0.4*s[1] {
				t.Errorf("%s at %v: the wall is %.0f px high", name, s, tall)
			}
		}
	})
}

// What the wall comes to before its slab ties it is said in every picture of
// the finished wall, with a small drawing where there is room.
func TestBeforeTheSlabIsAlwaysSaid(t *testing.T) {
	grid(func(name string, w calc.Input) {
		if w.Condition != calc.TiedToSlab {
			return
		}
		r := design(t, w)
		for _, s := range append(small, sizes...) {
			p := Section(r, Options{Width: s[0], Height: s[1]})
			said := false
			for _, b := range p.Boxes {
				said = said || strings.HasPrefix(b.Text, "before")
			}
			if !said {
				t.Errorf("%s at %v: nothing of the stage before the slab", name, s)
			}
		}
	})
}
