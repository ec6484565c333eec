package wallfile

import (
	"strings"

	"standingbeam/app/entry"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Asks reports whether the field of a path is asked of a wall of this kind.
func (w Wall) Asks(path string) bool {
	group, key, _ := strings.Cut(path, ".")
	two := w.Condition == "soil both sides"
	switch group {
	case "top", "low side":
		return two
	case "brace", "floor", "floor edge":
		return w.Condition != "free top" && w.Condition != "tied to slab" && (!two || w.Top == "braced")
	case "tie":
		return w.Condition == "tied to slab" && (key != "strength" || w.TieAnchor == "tie" || w.TieAnchor == "opposite wall")
	case "dowels":
		return key == "by" || w.DowelsBy != "none"
	case "soil":
		return w.asksSoil(key)
	}
	return true
}

func (w Wall) asksSoil(key string) bool {
	basis := w.soilBasis()
	switch key {
	case "class":
		return basis == calc.SoilClass
	case "equivalent fluid", "pressure":
		return basis == calc.SoilFluid
	case "friction angle":
		return basis == calc.SoilFriction
	}
	return true
}

// soilBasis is by what the soil is given: as said, else by what is written.
func (w Wall) soilBasis() calc.SoilBasis {
	switch {
	case w.SoilBy == "class", w.SoilBy == "" && w.SoilClass != "":
		return calc.SoilClass
	case w.SoilBy == "equivalent fluid", w.SoilBy == "" && w.SoilFluid != "":
		return calc.SoilFluid
	case w.SoilBy == "friction angle", w.SoilBy == "" && w.SoilFriction != "":
		return calc.SoilFriction
	}
	return calc.SoilUnknown
}

// soilTwoWays reports that more than one way is written and none is said.
func (w Wall) soilTwoWays() bool {
	n := 0
	for _, text := range []string{w.SoilClass, w.SoilFluid, w.SoilFriction} {
		if text != "" {
			n++
		}
	}
	return w.SoilBy == "" && n > 1
}

func (w Wall) hasFooting() bool {
	return w.FootingWidth != "" || w.FootingThickness != "" || w.FootingToe != "" ||
		w.FootingBearing != "" || w.FootingFriction != "" || w.FootingPassive != ""
}

func (w Wall) hasDowels() bool {
	return w.DowelsBy != "none" && (w.DowelsBy == "given" || w.DowelsSize != "" || w.DowelsSpacing != "" ||
		w.DowelsUp != "" || w.DowelsPosition != "")
}

// needed lists the fields without which this wall cannot be answered.
func (w Wall) needed() []string {
	out := []string{"condition", "height", "thickness", "grade.a", "concrete", "steel"}
	if w.hasFooting() {
		out = append(out, "footing.width", "footing.thickness")
	}
	switch w.soilBasis() {
	case calc.SoilClass:
		out = append(out, "soil.class")
	case calc.SoilFluid:
		out = append(out, "soil.equivalent fluid")
	case calc.SoilFriction:
		out = append(out, "soil.friction angle", "soil.unit weight")
	}
	if w.Condition == "tied to slab" {
		out = append(out, "tie.slab thickness")
	}
	if w.Vertical != (Bars{}) {
		out = append(out, "bars.vertical.size", "bars.vertical.spacing")
	}
	if w.Horizontal != (Bars{}) {
		out = append(out, "bars.horizontal.size", "bars.horizontal.spacing")
	}
	if w.hasDowels() {
		out = append(out, "dowels.size", "dowels.spacing")
	}
	return out
}

// farOff is beyond every permitted range, in base units.
const farOff = 1e8

// Range returns the permitted range of a quantity of this wall, as the
// calculation states it for a value that is far outside. It is false where
// the calculation knows none.
func (w Wall) Range(path string) (low, high units.Quantity, ok bool) {
	f, known := find(path)
	if !known || f.kind != Quantity {
		return low, high, false
	}
	in, _ := w.read(entry.Options{Strict: true})
	f.number(&in, farOff)
	w.claim(&in, path)
	for _, e := range in.Validate() {
		if e.Field == path && e.ID == "out-of-range" {
			return e.Min, e.Max, true
		}
	}
	return low, high, false
}

// claim marks as given whatever a field belongs to, so that its range is
// looked at.
func (w Wall) claim(in *calc.Input, path string) {
	switch path {
	case "water":
		in.Water.Standing = true
	case "footing.passive from":
		in.Footing.Passive = true
	case "footing.toe":
		in.Footing.NoToe = false
	case "soil.equivalent fluid":
		in.Soil.Basis = calc.SoilFluid
	case "soil.friction angle":
		in.Soil.Basis = calc.SoilFriction
	}
	group, _, _ := strings.Cut(path, ".")
	switch group {
	case "footing":
		in.Footing.Given = true
	case "tie":
		in.Condition = calc.TiedToSlab
	case "dowels":
		in.Dowels.Fixed, in.Dowels.None = true, false
	case "bars":
		in.Vertical.Fixed, in.Horizontal.Fixed = true, true
	}
}

// largest is a wall as large as they come, for the widest range of a field.
var largest = Wall{Condition: "braced top", Height: "20 ft", Thickness: "24 in", GradeA: "20 ft",
	FootingWidth: "20 ft", FootingThickness: "36 in"}
