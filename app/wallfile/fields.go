package wallfile

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// fields are all fields in the order of the file.
var fields = join(wallFields, soilFields, memberFields, barFields, siteFields)

func join(lists ...[]field) (all []field) {
	for _, l := range lists {
		all = append(all, l...)
	}
	return all
}

var wallFields = []field{
	text("name", func(w *Wall) *string { return &w.Name }),
	choice("condition", func(w *Wall) *string { return &w.Condition }, func(in *calc.Input) *calc.Condition { return &in.Condition },
		[]string{"braced top", "free top", "tied to slab", "soil both sides"}, calc.BracedTop, calc.FreeTop, calc.TiedToSlab, calc.SoilBothSides),
	choice("top", func(w *Wall) *string { return &w.Top }, func(in *calc.Input) *bool { return &in.TopHeld },
		[]string{"free", "braced"}, false, true),
	quantity("height", units.Level, func(w *Wall) *string { return &w.Height }, func(in *calc.Input) *units.Length { return &in.Height }),
	quantity("brace", units.Level, func(w *Wall) *string { return &w.Brace }, func(in *calc.Input) *units.Length { return &in.Brace }),
	quantity("thickness", units.Size, func(w *Wall) *string { return &w.Thickness }, func(in *calc.Input) *units.Length { return &in.Thickness }),
	quantity("grade.a", units.Level, func(w *Wall) *string { return &w.GradeA }, func(in *calc.Input) *units.Length { return &in.GradeA }),
	quantity("grade.b", units.Level, func(w *Wall) *string { return &w.GradeB }, func(in *calc.Input) *units.Length { return &in.GradeB }),
	choice("low side", func(w *Wall) *string { return &w.LowSide }, func(in *calc.Input) *bool { return &in.LowSideMayGo },
		[]string{"stays", "may be dug away"}, false, true),
	choice("foot.held by", func(w *Wall) *string { return &w.FootHeldBy }, func(in *calc.Input) *calc.FootHold { return &in.Foot.Held },
		[]string{"ground only", "slab tight to wall", "slab later"}, calc.GroundOnly, calc.SlabTight, calc.SlabLater),
	quantity("foot.slab thickness", units.Size, func(w *Wall) *string { return &w.FootSlabThickness }, func(in *calc.Input) *units.Length { return &in.Foot.SlabThickness }),
	quantity("foot.slab underside", units.Level, func(w *Wall) *string { return &w.FootSlabUnderside }, func(in *calc.Input) *units.Length { return &in.Foot.SlabBase }),
	choice("foot.fixed", func(w *Wall) *string { return &w.FootFixed }, func(in *calc.Input) *bool { return &in.Foot.Fixed },
		[]string{"no", "yes"}, false, true),
}

var soilFields = []field{
	choice("soil.by", func(w *Wall) *string { return &w.SoilBy }, func(in *calc.Input) *calc.SoilBasis { return &in.Soil.Basis },
		[]string{"unknown", "class", "equivalent fluid", "friction angle"}, calc.SoilUnknown, calc.SoilClass, calc.SoilFluid, calc.SoilFriction),
	soilClass,
	quantity("soil.equivalent fluid", units.Weight, func(w *Wall) *string { return &w.SoilFluid }, func(in *calc.Input) *units.UnitWeight { return &in.Soil.Fluid }),
	choice("soil.pressure", func(w *Wall) *string { return &w.SoilPressure }, func(in *calc.Input) *calc.PressureState { return &in.Soil.Pressure },
		[]string{"active", "at rest"}, calc.PressureActive, calc.PressureAtRest),
	quantity("soil.unit weight", units.Weight, func(w *Wall) *string { return &w.SoilWeight }, func(in *calc.Input) *units.UnitWeight { return &in.Soil.Weight }),
	quantity("soil.friction angle", units.Degrees, func(w *Wall) *string { return &w.SoilFriction }, func(in *calc.Input) *units.Angle { return &in.Soil.Friction }),
	quantity("soil.saturated weight", units.Weight, func(w *Wall) *string { return &w.SoilSaturated }, func(in *calc.Input) *units.UnitWeight { return &in.Soil.Saturated }),
	choice("swells", func(w *Wall) *string { return &w.Swells }, func(in *calc.Input) *calc.Answer { return &in.Soil.Swells },
		[]string{"no", "yes"}, calc.No, calc.Yes),
	quantity("surcharge.dead", units.Pressure, func(w *Wall) *string { return &w.SurchargeDead }, func(in *calc.Input) *units.Stress { return &in.Surcharge.Dead }),
	quantity("surcharge.live", units.Pressure, func(w *Wall) *string { return &w.SurchargeLive }, func(in *calc.Input) *units.Stress { return &in.Surcharge.Live }),
	quantity("water", units.Level, func(w *Wall) *string { return &w.Water }, func(in *calc.Input) *units.Length { return &in.Water.Level }),
}
