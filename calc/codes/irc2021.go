package codes

import "standingbeam/calc/units"

// IRC holds the numbers of one edition of the residential code that bear on
// foundation walls of concrete. Its tables are reached through methods.
type IRC struct {
	Name string

	Strength        units.Stress // least f'c, seismic A to C, R404.1.3.3.1
	StrengthSeismic units.Stress // least f'c, D0 to D2, R404.1.3.3.1
	Steel           units.Stress // least fy, A to C, R404.1.3.3.7.1
	SteelSeismic    units.Stress // least fy, D0 to D2, R404.1.3.3.7.1

	Height        units.Length     // greatest wall of the tables, R404.1.2(8)
	Fluid         units.UnitWeight // greatest column of the tables, R404.1.2(8)
	ThicknessLoss units.Length     // actual may be under nominal by, R608.3
	ThicknessGain units.Length     // actual may be over nominal by, R608.3

	BarCover       units.Length // greatest cover from the inside face, table (8), R404.1.3.3.7.2
	BarTolerance   units.Length // the greater of this …, R404.1.3.3.7.2
	BarToleranceOf float64      // … and this part of the thickness, R404.1.3.3.7.2
	MaxSpacing     units.Length // R404.1.3.3.7.6
	MinSpacingOf   float64      // least spacing, part of the thickness, R404.1.3.3.7.6
	LapGap         units.Length // noncontact laps: the smaller of this …, R404.1.3.3.7.5
	LapGapOf       float64      // … and this part of the lap, R404.1.3.3.7.5

	NoteLStrength units.Stress // f'c of note l, table (8)
	NoteLLess     units.Length // … the wall may be thinner by, note l
	NoteMStrength units.Stress // f'c of note m, table (8): a plain 12 in wall

	BraceBeforeFill units.Length // support top and bottom first from this fill on, table notes, R404.1.7
	DesignUnheld    units.Length // fill above which a wall not held at top or foot needs a design, R404.1.1, R404.4
	DesignLoaded    units.Length // the same with more lateral load, R404.4
	StabilityFactor float64      // sliding and overturning, R404.4

	Horizontal          int          // bar of the horizontals, table (1)
	HorizontalTwoUpTo   units.Length // up to this height two, above three, table (1)
	HorizontalFromTop   units.Length // the upper one within, table (1)
	TopBarsSeismic      units.Length // a No. 4 within this of the stem's top, D0 to D2, R403.1.3.1
	PlainSeismicHeight  units.Length // greatest plain wall in D0 to D2, R404.1.4.2
	PlainSeismicFill    units.Length // greatest fill on it, R404.1.4.2
	PlainSeismicWall    units.Length // its least thickness, R404.1.4.2
	PlainSeismicLow     units.Length // up to this height …, R404.1.4.2
	PlainSeismicLowWall units.Length // … this thickness is enough, R404.1.4.2
	PlainSeismicBar     int          // least verticals where the tables ask for none, R404.1.4.2
	PlainSeismicSpacing units.Length // … their spacing, R404.1.4.2

	JointBar      int          // dowels of a joint in a plain wall, R404.1.3.3.7.8
	JointSpacing  units.Length // … greatest spacing, R404.1.3.3.7.8
	JointEmbed    units.Length // … into each side, R404.1.3.3.7.8
	FootingWidth  units.Length // least, R403.1.1
	FootingDepth  units.Length // least thickness, R403.1.1
	FootingBelow  units.Length // least depth below undisturbed ground, R403.1.4
	FootingSlope  float64      // of the bottom, steeper needs steps, R403.1.5
	ProjectionMin units.Length // of the footing beyond the wall, R403.1.1; the greatest is its thickness
}

// IRC2021 returns the numbers of the International Residential Code 2021.
func IRC2021() IRC {
	irc := IRC{Name: "IRC 2021"}
	irc.setMaterial()
	irc.setSeismic()

	irc.Height = 10 * units.Foot
	irc.Fluid = 60 * units.PCF
	irc.ThicknessLoss = 0.5 * units.Inch
	irc.ThicknessGain = 0.25 * units.Inch
	irc.BarCover = 1.25 * units.Inch
	irc.BarTolerance = 0.375 * units.Inch
	irc.BarToleranceOf = 0.10
	irc.MaxSpacing = 48 * units.Inch
	irc.MinSpacingOf = 0.5
	irc.LapGap = 6 * units.Inch
	irc.LapGapOf = 0.2

	irc.BraceBeforeFill = 4 * units.Foot
	irc.DesignUnheld = 48 * units.Inch
	irc.DesignLoaded = 24 * units.Inch
	irc.StabilityFactor = 1.5

	irc.Horizontal = 4
	irc.HorizontalTwoUpTo = 8 * units.Foot
	irc.HorizontalFromTop = 12 * units.Inch
	irc.JointBar = 4
	irc.JointSpacing = 24 * units.Inch
	irc.JointEmbed = 12 * units.Inch
	irc.FootingWidth = 12 * units.Inch
	irc.FootingDepth = 6 * units.Inch
	irc.FootingBelow = 12 * units.Inch
	irc.FootingSlope = 0.1
	irc.ProjectionMin = 2 * units.Inch
	return irc
}

// setMaterial sets the strengths of concrete and steel.
func (irc *IRC) setMaterial() {
	irc.Strength = 2500 * units.PSI
	irc.StrengthSeismic = 3000 * units.PSI
	irc.Steel = 40 * units.KSI
	irc.SteelSeismic = 60 * units.KSI
	irc.NoteLStrength = 4000 * units.PSI
	irc.NoteLLess = 2 * units.Inch
	irc.NoteMStrength = 3500 * units.PSI
}

// setSeismic sets the limits of seismic categories D0 to D2.
func (irc *IRC) setSeismic() {
	irc.TopBarsSeismic = 12 * units.Inch
	irc.PlainSeismicHeight = 8 * units.Foot
	irc.PlainSeismicFill = 4 * units.Foot
	irc.PlainSeismicWall = 7.5 * units.Inch
	irc.PlainSeismicLow = 4.5 * units.Foot
	irc.PlainSeismicLowWall = 6 * units.Inch
	irc.PlainSeismicBar = 4
	irc.PlainSeismicSpacing = 48 * units.Inch
}

// PermitHeight is one way in which the height of a wall is measured to ask
// whether it needs a permit or a design.
type PermitHeight struct {
	ID     string
	Limit  units.Length
	Clause string
}

// PermitHeights returns the three measures met in practice: which one rules is
// a question to the local office.
func (irc IRC) PermitHeights() [3]PermitHeight {
	return [3]PermitHeight{
		{"footing-bottom-to-top", 4 * units.Foot, "R105.2"}, // a retaining wall without surcharge
		{"unbalanced-fill", irc.DesignUnheld, "R404.4"},
		{"unbalanced-fill-older", 24 * units.Inch, "R404.4 (2009 text, kept in places)"},
	}
}
