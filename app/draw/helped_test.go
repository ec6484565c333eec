package draw

import (
	"strings"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// A free wall whose slab in front takes what friction does not is not drawn as
// failing where every check holds.
func TestSlidingWithTheSlab(t *testing.T) {
	r, err := calc.Design(wall(calc.FreeTop, 6*units.Foot, 8*units.Inch, 4*units.Foot, 0.3))
	if err != nil {
		t.Fatal(err)
	}
	for _, decides := range []bool{true, false} {
		for i := range r.Checks {
			if r.Checks[i].ID == "sliding" {
				r.Checks[i].State, r.Checks[i].Decides = calc.Fails, decides
			}
		}
		svg := Section(r, Options{Width: 1000, Height: 700}).SVG
		if got := strings.Contains(svg, "✕"); got != decides {
			t.Errorf("sliding that decides is %v: the picture shows a cross is %v", decides, got)
		}
		if got := strings.Contains(svg, "+ slab"); got == decides {
			t.Errorf("sliding that decides is %v: the picture names the slab is %v", decides, got)
		}
	}
}
