package codes

import (
	"math"
	"testing"

	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

// Every limit held against the section it is read from.
func TestLimits(t *testing.T) {
	irc := IRC2021()
	heights := irc.PermitHeights()
	values := map[string]float64{
		"least strength":               irc.Strength.PSI(),
		"least strength D0-D2":         irc.StrengthSeismic.PSI(),
		"least steel":                  irc.Steel.PSI(),
		"least steel D0-D2":            irc.SteelSeismic.PSI(),
		"actual under nominal":         irc.ThicknessLoss.Inches(),
		"actual over nominal":          irc.ThicknessGain.Inches(),
		"inside cover":                 irc.BarCover.Inches(),
		"place tolerance":              irc.BarTolerance.Inches(),
		"place tolerance of thickness": irc.BarToleranceOf,
		"greatest spacing":             irc.MaxSpacing.Inches(),
		"least spacing of thickness":   irc.MinSpacingOf,
		"lap gap":                      irc.LapGap.Inches(),
		"lap gap of lap":               irc.LapGapOf,
		"note l strength":              irc.NoteLStrength.PSI(),
		"note l thinner by":            irc.NoteLLess.Inches(),
		"note m strength":              irc.NoteMStrength.PSI(),
		"brace before fill":            irc.BraceBeforeFill.Feet(),
		"design unheld":                irc.DesignUnheld.Inches(),
		"design unheld, loaded":        irc.DesignLoaded.Inches(),
		"stability":                    irc.StabilityFactor,
		"plain D0-D2 height":           irc.PlainSeismicHeight.Feet(),
		"plain D0-D2 fill":             irc.PlainSeismicFill.Feet(),
		"plain D0-D2 thickness":        irc.PlainSeismicWall.Inches(),
		"plain D0-D2 low wall":         irc.PlainSeismicLow.Feet(),
		"plain D0-D2 low thickness":    irc.PlainSeismicLowWall.Inches(),
		"plain D0-D2 spacing":          irc.PlainSeismicSpacing.Inches(),
		"stem top bar D0-D2":           irc.TopBarsSeismic.Inches(),
		"joint spacing":                irc.JointSpacing.Inches(),
		"joint embedment":              irc.JointEmbed.Inches(),
		"footing width":                irc.FootingWidth.Inches(),
		"footing thickness":            irc.FootingDepth.Inches(),
		"footing projection":           irc.ProjectionMin.Inches(),
		"footing below ground":         irc.FootingBelow.Inches(),
		"footing slope":                irc.FootingSlope,
		"permit height":                heights[0].Limit.Feet(),
		"permit fill":                  heights[1].Limit.Inches(),
		"permit fill, older":           heights[2].Limit.Inches(),
	}
	rows := reference.Rows(t, "irc/limits.csv")
	if len(rows) != len(values) {
		t.Errorf("%d limits, want %d", len(values), len(rows))
	}
	for _, r := range rows {
		v, ok := values[r.Text("name")]
		if !ok || math.Abs(v-r.Number("value")) > 1e-9 {
			t.Errorf("%s is %v, want %s %s (%s)", r.Text("name"), v, r.Text("value"), r.Text("unit"), r.Text("section"))
		}
	}
}

// Factors of ASCE 7-16 2.3.1 and ACI 318-19 5.3.1, 5.3.8: what adds is taken
// larger, what resists smaller.
func TestFactors(t *testing.T) {
	f := ASCE7_16()
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"1.2D", f.Dead, 1.2}, {"1.4D", f.DeadOnly, 1.4}, {"0.9D", f.DeadHelps, 0.9},
		{"1.6L", f.Live, 1.6}, {"1.6H", f.Earth, 1.6}, {"0.9H", f.EarthResists, 0.9},
	} {
		if math.Abs(c.got-c.want) > 1e-12 {
			t.Errorf("%s is %v", c.name, c.got)
		}
	}
}

// IBC 2021 1807.2.3, 1610.1, 1809.4, as adopted by several states.
func TestIBC(t *testing.T) {
	ibc := IBC2021()
	if math.Abs(ibc.StabilityFactor-1.5)+math.Abs(ibc.StabilitySeismic-1.1)+math.Abs(ibc.EarthquakeService-0.7) > 1e-9 {
		t.Errorf("stability factors %v, %v, %v, want 1.5, 1.1, 0.7", ibc.StabilityFactor, ibc.StabilitySeismic, ibc.EarthquakeService)
	}
	if math.Abs(float64(ibc.ActiveDepth-8*units.Foot)) > 1e-9 || math.Abs(float64(ibc.FootingDepth-ibc.FootingWidth)) > 1e-9 {
		t.Errorf("active to %v, footing %v by %v", ibc.ActiveDepth, ibc.FootingWidth, ibc.FootingDepth)
	}
}
