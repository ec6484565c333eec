package sheet

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// before lists what must be in place before the fill, to be ticked.
func (s *scene) before() (out []string) {
	add := func(id string, args ...string) { out = append(out, s.sp.Sentence("sheet.tick."+id, args...)) }
	in := s.in
	add("bars")
	add("concrete", s.sp.Quantity(units.Of(in.Material.Fc, units.Strength)))
	if s.floored {
		add("floor", s.reaction())
	}
	switch in.Foot.Held {
	case calc.SlabTight:
		add("slab", s.sp.Size(inches(s.slab.y1-s.slab.y0)))
	case calc.SlabLater:
		add("slab-later")
	}
	if in.Condition == calc.TiedToSlab {
		if in.Tie.Before == calc.Rakers {
			add("rakers")
		} else {
			add("alone")
		}
		add("tie-slab")
	}
	if in.Condition == calc.SoilBothSides {
		add("both")
	}
	if in.Water.Standing {
		add("water", s.sp.Length(in.Water.Level))
	} else {
		add("drain")
	}
	add("soil", s.soil())
	if in.Surcharge.Live > 0 {
		add("load", s.sp.Quantity(units.Of(in.Surcharge.Live, units.Pressure)))
	} else {
		add("no-load", s.sp.Length(in.Height))
	}
	add("inspector")
	return out
}

// soil names the ground that was counted.
func (s *scene) soil() string {
	g := s.in.Soil
	switch g.Basis {
	case calc.SoilClass:
		if id := "choice.soil.class." + g.Class; s.sp.Has(id) {
			return s.sp.Word(id)
		}
		return tidy(g.Class)
	case calc.SoilFluid:
		return s.sp.Sentence("sheet.fluid", s.sp.Quantity(units.Of(g.Fluid, units.Weight)))
	case calc.SoilFriction:
		return s.sp.Sentence("sheet.friction", s.sp.Quantity(units.Of(g.Weight, units.Weight)), s.sp.Quantity(units.Of(g.Friction, units.Degrees)))
	}
	return s.sp.Word("sheet.soil-unknown")
}

// held says how the wall is held when it is finished.
func (s *scene) held() (out []string) {
	in := s.in
	out = append(out, s.sp.Sentence("sheet.held."+conditions[min(int(in.Condition), len(conditions)-1)], s.sp.Length(in.Brace), s.reaction()))
	if in.Condition == calc.SoilBothSides && !in.TopHeld {
		out[0] = s.sp.Word("sheet.held.both-free")
	}
	switch in.Foot.Held {
	case calc.SlabTight:
		out = append(out, s.slabWords())
	case calc.SlabLater:
		out = append(out, s.slabWords())
	default:
		out = append(out, s.sp.Word("sheet.held.ground"))
	}
	return out
}

var conditions = [...]string{calc.BracedTop: "braced", calc.FreeTop: "free", calc.TiedToSlab: "tied", calc.SoilBothSides: "both"}

// heldToday says how it is held today.
func (s *scene) heldToday() (out []string) {
	t := s.in.Today
	say := func(in bool, id string) {
		if in {
			out = append(out, s.sp.Word("sheet.today."+id))
		} else {
			out = append(out, s.sp.Word("sheet.today.no-"+id))
		}
	}
	if s.floored {
		say(t.Floor, "floor")
	}
	if s.in.Condition == calc.TiedToSlab {
		say(t.Slab, "tie")
	} else if s.in.Foot.Held != calc.GroundOnly {
		say(t.Slab, "slab")
	}
	if t.Concrete > 0 {
		out = append(out, s.sp.Sentence("sheet.today.concrete", s.sp.Quantity(units.Of(t.Concrete, units.Strength))))
	}
	if len(out) == 0 {
		out = append(out, s.sp.Word("sheet.today.itself"))
	}
	return out
}
