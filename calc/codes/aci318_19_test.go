package codes

import (
	"math"
	"testing"

	"standingbeam/calc/internal/reference"
)

// Every factor and limit held against the clause it is read from.
func TestACILimits(t *testing.T) {
	a := ACI318_19()
	values := map[string]float64{
		"phi flexure": a.PhiFlexure, "phi compression": a.PhiCompression, "phi shear": a.PhiShear,
		"phi bearing": a.PhiBearing, "phi plain": a.PhiPlain, "phi stability": a.PhiStability,
		"concrete strain": a.ConcreteStrain, "tension strain": a.TensionStrain, "steel modulus": a.SteelModulus.PSI(),
		"root limit": a.RootLimit, "axial cap": a.AxialCap, "second order": a.SecondOrderLimit,
		"friction steel": a.FrictionFy.PSI(), "friction roughened": a.RoughenedFriction, "friction as cast": a.AsCastFriction,
		"plain tension": a.PlainTension, "plain compression": a.PlainCompression, "plain axial": a.PlainAxial,
		"plain shear": a.PlainShear, "plain eccentricity": a.PlainEccentricity, "plain soil loss": a.PlainSoilLoss.Inches(),
		"plain footing": a.PlainFooting.Inches(), "plain wall": a.PlainWall.Inches(), "plain wall of side": a.PlainWallOf,
		"foundation wall":     a.FoundationWall.Inches(),
		"wall vertical small": a.Wall.VerticalSmall, "wall vertical": a.Wall.Vertical,
		"wall horizontal small": a.Wall.HorizontalSmall, "wall horizontal": a.Wall.Horizontal,
		"wall spacing": a.Wall.Spacing.Inches(), "wall spacing of h": a.Wall.SpacingOf, "wall one layer": a.Wall.OneLayer.Inches(),
		"wall least": a.Wall.Least.Inches(), "wall least of side": a.Wall.LeastOf,
		"small bar": float64(a.Wall.SmallBar), "small steel": a.Wall.SmallFy.PSI(),
		"slab flexural": a.Slab.Flexural, "slab shrinkage": a.Slab.Shrinkage, "slab spacing": a.Slab.Spacing.Inches(),
		"slab flexural of h": a.Slab.FlexuralOf, "slab shrinkage of h": a.Slab.ShrinkageOf,
		"cover soil": a.Cover.AgainstSoil.Inches(), "cover exposed small": a.Cover.ExposedSmall.Inches(),
		"cover exposed": a.Cover.Exposed.Inches(), "cover sheltered": a.Cover.Sheltered.Inches(),
		"cover small bar": float64(a.Cover.SmallBar), "clear": a.Cover.Clear.Inches(), "clear of stone": a.Cover.ClearStones,
		"psi t": a.Bars.Top, "psi t depth": a.Bars.TopDepth.Inches(), "psi s": a.Bars.SmallSize,
		"psi g 80": a.Bars.Grade80, "psi g 100": a.Bars.Grade100, "ld least": a.Bars.Least.Inches(), "lap B": a.Bars.LapB,
		"psi r": a.Bars.HookClose, "psi o": a.Bars.HookThin, "ldh least": a.Bars.HookLeast.Inches(), "ldh least of db": a.Bars.HookLeastB,
	}
	rows := reference.Rows(t, "aci/limits.csv")
	if len(rows) != len(values) {
		t.Errorf("%d limits, want %d", len(values), len(rows))
	}
	for _, r := range rows {
		v, ok := values[r.Text("name")]
		if !ok || math.Abs(v-r.Number("value")) > 1e-6*max(1, math.Abs(v)) {
			t.Errorf("%s is %v, want %s (%s)", r.Text("name"), v, r.Text("value"), r.Text("clause"))
		}
	}
}
