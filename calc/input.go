package calc

import "standingbeam/calc/units"

// Condition is how a wall is held when it is finished.
type Condition uint8

// The four ways to be held.
const (
	BracedTop     Condition = iota // held by the floor
	FreeTop                        // a cantilever from its footing
	TiedToSlab                     // tied at the top into a slab on the retained ground
	SoilBothSides                  // ground on both sides, top free or held
)

// Rulebook is the set of rules that decides the answer.
type Rulebook uint8

// Rulebooks. Unset: the residential tables where the wall is inside them,
// else engineered.
const (
	RulebookUnset Rulebook = iota
	Engineered
	Residential
)

// Face is a face of the wall: A looks at the retained (higher) ground, B away
// from it.
type Face uint8

// Faces and the place between them.
const (
	FaceUnset Face = iota
	FaceA
	FaceB
	Centre
)

// FootHold is what holds the foot of the wall against sliding toward B.
type FootHold uint8

// Ways to hold the foot. GroundOnly: the footing's own friction.
const (
	GroundOnly FootHold = iota
	SlabTight           // a slab on the B side, cast tight against the wall
	SlabLater           // the same slab, cast after the wall is filled
)

// Foot says what holds the foot.
type Foot struct {
	Held          FootHold
	SlabThickness units.Length // 0 = not given, 4 in assumed
	// SlabBase is the level of the slab's underside above the footing top. Up
	// to 6 in it holds at the footing top, above that at its own mid-depth.
	SlabBase units.Length
	// Fixed takes the foot as clamped: reinforced walls only, and the joint is
	// checked for the moment.
	Fixed bool
}

// SoilBasis says by what the soil is given.
type SoilBasis uint8

// Ways to give the soil.
const (
	SoilUnknown  SoilBasis = iota // "don't know"
	SoilClass                     // a USCS symbol
	SoilFluid                     // an equivalent fluid density
	SoilFriction                  // unit weight and friction angle
)

// PressureState is the state a given equivalent fluid stands for, for the
// report only.
type PressureState uint8

// States of a given equivalent fluid.
const (
	PressureUnsaid PressureState = iota
	PressureActive
	PressureAtRest
)

// Answer is a yes-or-no question that may be unanswered.
type Answer uint8

// Answers.
const (
	Unanswered Answer = iota
	Yes
	No
)

// Soil is the ground that pushes.
type Soil struct {
	Basis     SoilBasis
	Class     string // USCS symbol
	Fluid     units.UnitWeight
	Weight    units.UnitWeight // moist unit weight, 0 = not given (120 pcf)
	Saturated units.UnitWeight // 0 = not given
	Friction  units.Angle
	Pressure  PressureState
	Swells    Answer // swelling or organic ground: asked when the soil is not known
}

// Surcharge is a load spread on the retained ground.
type Surcharge struct{ Dead, Live units.Stress }

// Water is a level of standing water on the retained side.
type Water struct {
	Standing bool // false = drained
	Level    units.Length
}

// Concrete and steel.
type Material struct {
	Fc, Fy units.Stress
	CoverA units.Length // 0 = not given: by 20.5.1.3.1
	CoverB units.Length
}

// Axial is the load on the wall's top. Eccentricity is positive toward B.
type Axial struct {
	Dead, Live   units.ForcePerLength
	Eccentricity units.Length
}

// Footing is the footing under the wall. Given is false when nothing was said
// of it, which leaves every check that needs it open.
type Footing struct {
	Given     bool
	Width     units.Length
	Thickness units.Length
	Toe       units.Length // projection beyond face B; NoToe = wall centred
	NoToe     bool
	Bearing   units.Stress // allowable, 0 = not given
	Friction  float64      // 0 = not given
	// Passive asks for passive resistance before the footing, from PassiveFrom
	// (a level, measured from the footing top, negative downward) down.
	Passive     bool
	PassiveFrom units.Length
}

// Anchor is what holds the far end of a tie slab.
type Anchor uint8

// Anchors of a tie slab.
const (
	SlabDrag Anchor = iota
	OppositeWall
	TieStrength // a tie of given allowable strength
)

// StageHold is what holds the wall before its slab is cast.
type StageHold uint8

// Before the slab.
const (
	StandsAlone StageHold = iota
	Rakers
)

// Tie is the slab that ties the top of the wall.
type Tie struct {
	SlabThickness units.Length
	SlabLength    units.Length
	Friction      float64
	Anchor        Anchor
	Strength      units.ForcePerLength // allowable, TieStrength only
	Before        StageHold
}

// Bars are bars of one direction fixed by the person.
type Bars struct {
	Fixed   bool
	Size    int // No.
	Spacing units.Length
	Face    Face
	Depth   units.Length // 0 = by cover; else d from the compression face
}

// Dowels are the bars from the footing into the wall, fixed by the person.
type Dowels struct {
	Fixed    bool
	None     bool
	Size     int
	Spacing  units.Length
	Up       units.Length // into the wall
	Position Face
}

// Today is what stands today. Concrete is today's strength, 0 = not given.
type Today struct {
	Given    bool
	Concrete units.Stress
	Floor    bool
	Slab     bool
}

// FloorKind says how stiff the floor that braces the top is.
type FloorKind uint8

// Floors.
const (
	FloorUnset FloorKind = iota // taken as rigid: at-rest pressure
	FloorFlexible
	FloorRigid
)

// Input is one wall. Heights are measured up from the top of the footing.
// Side A is the retained, higher side.
type Input struct {
	Name      string
	Condition Condition
	TopHeld   bool // soil on both sides only
	Height    units.Length
	Brace     units.Length // level of the brace, 0 = the wall's top
	Thickness units.Length
	GradeA    units.Length
	GradeB    units.Length
	Foot      Foot
	Soil      Soil
	// LowSideStays counts the soil on side B at 0.9 when the wall is finished;
	// false counts it as 0, for soil that may be dug away (ACI 318-19 5.3.8).
	LowSideMayGo bool
	Surcharge    Surcharge
	Water        Water
	Material     Material
	Axial        Axial
	Footing      Footing
	Tie          Tie
	Vertical     Bars
	Horizontal   Bars
	Dowels       Dowels
	Roughened    bool // joint roughened to 1/4 in
	FourThirds   bool // below 11.6.1 steel by analysis, φMn ≥ 4/3 Mu
	Today        Today
	Seismic      string // "" = not asked, taken as B
	Rulebook     Rulebook
	Floor        FloorKind
	FloorEdge    units.ForcePerLength // allowable, 0 = not given
	Sizes        []int                // bars to choose from, empty = No. 4 to No. 8
}
