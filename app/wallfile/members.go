package wallfile

import (
	"standingbeam/calc"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// soilClass is chosen from the symbols that the calculation knows.
var soilClass = choice("soil.class", func(w *Wall) *string { return &w.SoilClass }, func(in *calc.Input) *string { return &in.Soil.Class },
	soil.Classes(), soil.Classes()...)

// steel is typed as a grade. The metric grades 280, 420 and 550 MPa are the
// same bars as 40, 60 and 80 ksi (ASTM A615/A615M), and are read as these.
var steel = field{path: "steel", kind: Quantity, measure: units.Strength, us: "ksi", at: func(w *Wall) *string { return &w.Steel },
	number: func(in *calc.Input, v float64) {
		in.Material.Fy = units.Stress(v)
		for _, grade := range []struct{ metric, us units.Stress }{{280, 40}, {420, 60}, {550, 80}} {
			if d := in.Material.Fy - grade.metric*units.MPa; d > -50 && d < 50 {
				in.Material.Fy = grade.us * units.KSI
			}
		}
	}}

var memberFields = []field{
	quantity("concrete", units.Strength, func(w *Wall) *string { return &w.Concrete }, func(in *calc.Input) *units.Stress { return &in.Material.Fc }),
	steel,
	quantity("cover.a", units.Size, func(w *Wall) *string { return &w.CoverA }, func(in *calc.Input) *units.Length { return &in.Material.CoverA }),
	quantity("cover.b", units.Size, func(w *Wall) *string { return &w.CoverB }, func(in *calc.Input) *units.Length { return &in.Material.CoverB }),
	quantity("axial.dead", units.LineForce, func(w *Wall) *string { return &w.AxialDead }, func(in *calc.Input) *units.ForcePerLength { return &in.Axial.Dead }),
	quantity("axial.live", units.LineForce, func(w *Wall) *string { return &w.AxialLive }, func(in *calc.Input) *units.ForcePerLength { return &in.Axial.Live }),
	quantity("axial.eccentricity", units.Size, func(w *Wall) *string { return &w.AxialOffCenter }, func(in *calc.Input) *units.Length { return &in.Axial.Eccentricity }),
	quantity("footing.width", units.Size, func(w *Wall) *string { return &w.FootingWidth }, func(in *calc.Input) *units.Length { return &in.Footing.Width }),
	quantity("footing.thickness", units.Size, func(w *Wall) *string { return &w.FootingThickness }, func(in *calc.Input) *units.Length { return &in.Footing.Thickness }),
	quantity("footing.toe", units.Size, func(w *Wall) *string { return &w.FootingToe }, func(in *calc.Input) *units.Length { return &in.Footing.Toe }),
	quantity("footing.allowable bearing", units.Pressure, func(w *Wall) *string { return &w.FootingBearing }, func(in *calc.Input) *units.Stress { return &in.Footing.Bearing }),
	quantity("footing.friction", units.None, func(w *Wall) *string { return &w.FootingFriction }, func(in *calc.Input) *float64 { return &in.Footing.Friction }),
	quantity("footing.passive from", units.Level, func(w *Wall) *string { return &w.FootingPassive }, func(in *calc.Input) *units.Length { return &in.Footing.PassiveFrom }),
	quantity("tie.slab thickness", units.Size, func(w *Wall) *string { return &w.TieSlabThickness }, func(in *calc.Input) *units.Length { return &in.Tie.SlabThickness }),
	quantity("tie.slab length", units.Level, func(w *Wall) *string { return &w.TieSlabLength }, func(in *calc.Input) *units.Length { return &in.Tie.SlabLength }),
	quantity("tie.friction", units.None, func(w *Wall) *string { return &w.TieFriction }, func(in *calc.Input) *float64 { return &in.Tie.Friction }),
	choice("tie.anchor", func(w *Wall) *string { return &w.TieAnchor }, func(in *calc.Input) *calc.Anchor { return &in.Tie.Anchor },
		[]string{"slab drag", "opposite wall", "tie"}, calc.SlabDrag, calc.OppositeWall, calc.TieStrength),
	quantity("tie.strength", units.LineForce, func(w *Wall) *string { return &w.TieStrength }, func(in *calc.Input) *units.ForcePerLength { return &in.Tie.Strength }),
	choice("tie.before the slab", func(w *Wall) *string { return &w.TieBefore }, func(in *calc.Input) *calc.StageHold { return &in.Tie.Before },
		[]string{"stands alone", "rakers"}, calc.StandsAlone, calc.Rakers),
}

// faces are the fixed words for where a bar lies.
var faces = []string{"a", "b", "center"}

func barsOf(path string, at func(*Wall) *Bars, to func(*calc.Input) *calc.Bars) []field {
	return []field{
		bar(path+".size", func(w *Wall) *string { return &at(w).Size }, func(in *calc.Input) *int { return &to(in).Size }),
		quantity(path+".spacing", units.Size, func(w *Wall) *string { return &at(w).Spacing }, func(in *calc.Input) *units.Length { return &to(in).Spacing }),
		choice(path+".face", func(w *Wall) *string { return &at(w).Face }, func(in *calc.Input) *calc.Face { return &to(in).Face },
			faces, calc.FaceA, calc.FaceB, calc.Centre),
		quantity(path+".depth", units.Size, func(w *Wall) *string { return &at(w).Depth }, func(in *calc.Input) *units.Length { return &to(in).Depth }),
	}
}

var barFields = join(
	barsOf("bars.vertical", func(w *Wall) *Bars { return &w.Vertical }, func(in *calc.Input) *calc.Bars { return &in.Vertical }),
	barsOf("bars.horizontal", func(w *Wall) *Bars { return &w.Horizontal }, func(in *calc.Input) *calc.Bars { return &in.Horizontal }),
	[]field{
		choice("dowels.by", func(w *Wall) *string { return &w.DowelsBy }, func(in *calc.Input) *bool { return &in.Dowels.None },
			[]string{"none", "given"}, true, false),
		bar("dowels.size", func(w *Wall) *string { return &w.DowelsSize }, func(in *calc.Input) *int { return &in.Dowels.Size }),
		quantity("dowels.spacing", units.Size, func(w *Wall) *string { return &w.DowelsSpacing }, func(in *calc.Input) *units.Length { return &in.Dowels.Spacing }),
		quantity("dowels.up", units.Size, func(w *Wall) *string { return &w.DowelsUp }, func(in *calc.Input) *units.Length { return &in.Dowels.Up }),
		choice("dowels.position", func(w *Wall) *string { return &w.DowelsPosition }, func(in *calc.Input) *calc.Face { return &in.Dowels.Position },
			faces, calc.FaceA, calc.FaceB, calc.Centre),
	},
)

var siteFields = []field{
	choice("joint", func(w *Wall) *string { return &w.Joint }, func(in *calc.Input) *bool { return &in.Roughened },
		[]string{"as cast", "roughened"}, false, true),
	choice("minimum steel", func(w *Wall) *string { return &w.MinimumSteel }, func(in *calc.Input) *bool { return &in.FourThirds },
		[]string{"code", "four thirds"}, false, true),
	{path: "sizes", kind: BarList, at: func(w *Wall) *string { return &w.Sizes },
		pick: func(in *calc.Input, n int) { in.Sizes = append(in.Sizes, n) }},
	choice("floor", func(w *Wall) *string { return &w.Floor }, func(in *calc.Input) *calc.FloorKind { return &in.Floor },
		[]string{"flexible", "rigid"}, calc.FloorFlexible, calc.FloorRigid),
	quantity("floor edge", units.LineForce, func(w *Wall) *string { return &w.FloorEdge }, func(in *calc.Input) *units.ForcePerLength { return &in.FloorEdge }),
	choice("seismic category", func(w *Wall) *string { return &w.Seismic }, func(in *calc.Input) *string { return &in.Seismic },
		categories, categories...),
	quantity("today.concrete", units.Strength, func(w *Wall) *string { return &w.TodayConcrete }, func(in *calc.Input) *units.Stress { return &in.Today.Concrete }),
	yesNo("today.floor", func(w *Wall) *string { return &w.TodayFloor }, func(in *calc.Input) *bool { return &in.Today.Floor }),
	yesNo("today.slab", func(w *Wall) *string { return &w.TodaySlab }, func(in *calc.Input) *bool { return &in.Today.Slab }),
	choice("rulebook", func(w *Wall) *string { return &w.Rulebook }, func(in *calc.Input) *calc.Rulebook { return &in.Rulebook },
		[]string{"engineered", "residential"}, calc.Engineered, calc.Residential),
}

var categories = []string{"A", "B", "C", "D", "D0", "D1", "D2", "E", "F"}
