package sheet

import (
	"math"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Sizes in inches that the answer does not hold.
const (
	topCover   = 2.0 // over the verticals' upper ends (common practice, no source)
	earthCover = 3.0 // concrete cast against ground (ACI 318-19 Table 20.5.1.3.1)
	// A 2×10 joist on a 2×6 sill under 3/4 in boards (nominal sizes of the trade).
	sillDepth  = 1.5
	sillWidth  = 5.5
	joistDepth = 9.25
	boardDepth = 0.75
)

// scene is the wall as it is to be built, in inches: what all views, the bar
// table and the DXF read. x counts from face A toward side B, y up from the
// footing's top.
type scene struct {
	r  *calc.Result
	in *calc.Input
	sp words.Speaker

	h, t          float64 // wall
	heel, toe, tf float64 // footing
	said          bool    // the footing was given
	slab          *box    // at the foot, on side B; its x1 is left to the view
	tie           *box    // on the retained ground; its x0 is left to the view
	floored, hung bool    // a floor holds the top; it hangs on the wall's side
	brace         float64
	bars          []placed
}

func newScene(r *calc.Result, sp words.Speaker) *scene {
	in := &r.Input
	s := &scene{r: r, in: in, sp: sp.For(in.Condition), h: in.Height.Inches(), t: in.Thickness.Inches(), brace: in.Brace.Inches()}
	if s.said = in.Footing.Given; s.said {
		s.tf, s.toe = in.Footing.Thickness.Inches(), in.Footing.Toe.Inches()
		s.heel = math.Max(0, (in.Footing.Width - in.Footing.Toe - in.Thickness).Inches())
	} else {
		s.tf, s.toe, s.heel = s.t, s.t/2, s.t/2
	}
	if in.Foot.Held != calc.GroundOnly {
		thick := in.Foot.SlabThickness.Inches()
		if thick <= 0 {
			thick = 4
		}
		base := in.Foot.SlabBase.Inches()
		s.slab = &box{s.t, base, s.t, base + thick}
	}
	if in.Condition == calc.TiedToSlab {
		half := in.Tie.SlabThickness.Inches() / 2
		s.tie = &box{0, s.brace - half, 0, s.brace + half}
	}
	s.floored = in.Condition == calc.BracedTop || in.Condition == calc.SoilBothSides && in.TopHeld
	s.hung = s.floored && s.brace > 0 && s.brace < s.h-1
	s.place()
	return s
}

// floorTop is the level of the boards of the floor that holds the top.
func (s *scene) floorTop() float64 {
	if s.hung {
		return s.brace + joistDepth/2 + boardDepth
	}
	return s.h + sillDepth + joistDepth + boardDepth
}

// top is the level of the highest thing that is built.
func (s *scene) top() float64 {
	y := s.h
	if s.floored {
		y = math.Max(y, s.floorTop())
	}
	if s.tie != nil {
		y = math.Max(y, s.tie.y1)
	}
	return y
}

// width is that of the footing.
func (s *scene) width() float64 { return s.heel + s.t + s.toe }

// find returns the bars of a role, nil when there are none.
func (s *scene) find(role calc.BarRole) *placed {
	for i := range s.bars {
		if s.bars[i].Role == role {
			return &s.bars[i]
		}
	}
	return nil
}

func inches(v float64) units.Length { return units.Length(v) }
