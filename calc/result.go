package calc

import (
	"standingbeam/calc/soil"
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// State is the state of a check. An open check lacks an answer and never
// counts as holding.
type State uint8

// States.
const (
	Holds State = iota
	Fails
	Open
	NotApplicable
)

// Stage names a moment in the life of the wall. The words are fixed by the
// file format.
type Stage string

// Stages.
const (
	Finished   Stage = "finished"
	Unbraced   Stage = "unbraced"
	BeforeSlab Stage = "before the slab"
	Filling    Stage = "while filling"
)

// Note is a sentence to be read: an id of the words table and the quantities
// that stand in it, in order.
type Note struct {
	ID   string
	Args []units.Quantity
	Text string // a proper name that stands in it, e.g. a soil class
}

// Check is one question put to the wall. Ratio = Demand/Capacity; a safety
// factor is written demand 1.5, capacity = actual.
type Check struct {
	ID       string
	Stage    Stage
	At       units.Length
	HasAt    bool
	Service  bool // service level, else factored
	Demand   units.Quantity
	Capacity units.Quantity
	NoValue  bool // the capacity is not known
	State    State
	Decides  bool
	Rulebook string // edition
	Clause   string
	Steps    []working.Step
	Bar      BarRole // the bars it asks about, "" = the wall
	Because  *Note   // why it does not apply or is open; what is short
	Needs    *Note   // the missing answer
}

// Ratio returns demand/capacity, and false when either is not known or the
// capacity is zero. See [Check.Overrun] for drawing it.
func (c Check) Ratio() (float64, bool) {
	if c.NoValue || c.State == NotApplicable || c.Capacity.Base <= 0 {
		return 0, false
	}
	return c.Demand.Base / c.Capacity.Base, true
}

// BarRole is the job of a bar.
type BarRole string

// Roles, which are also the marks on the drawing.
const (
	VerticalBar     BarRole = "V"  // verticals of the wall
	HorizontalBar   BarRole = "H"  // horizontals of the wall
	TopBar          BarRole = "HT" // the horizontal pair at the top
	DowelBar        BarRole = "D"  // footing into wall
	ToeBar          BarRole = "FT" // across the footing, bottom
	HeelBar         BarRole = "FH" // across the footing, top
	FootingBar      BarRole = "FL" // along the footing
	TieBar          BarRole = "T"  // wall into slab
	SoilVerticalBar BarRole = "VA" // verticals on the soil side for a stage
)

// Bar is one set of bars to be placed.
type Bar struct {
	Role      BarRole
	Direction string // "vertical", "horizontal", "across the footing", "along the footing", "into the slab"
	Face      Face
	Size      int
	Spacing   units.Length // 0 when Count is given
	Count     int
	Levels    []units.Length // of counted horizontals, up from the footing top
	Cover     units.Length
	Depth     units.Length // d
	Lap       units.Length
	Hook      units.Length // length of the hook's tail, 0 = straight
	HookAvail units.Length // available embedment of the hook in the footing or wall
	Up, Down  units.Length // dowels: into the wall, into the footing
	Length    units.Length // tie bars: into the slab
	Rulebook  string
	Clause    string
	Fixed     bool // by the person
}

// Reaction is a reaction of a stage.
type Reaction struct {
	At                            units.Length
	Restraint                     statics.Restraint
	Service, Factored             units.ForcePerLength
	ServiceMoment, FactoredMoment units.MomentPerLength
}

// Peak is an extreme of a diagram.
type MomentPeak struct {
	At                units.Length
	Service, Factored units.MomentPerLength
	TensionFace       Face
}

// ShearPeak is the greatest shear of a stage.
type ShearPeak struct {
	At                units.Length
	Service, Factored units.ForcePerLength
}

// Push is one block of pressure of a stage with its load factor.
type Push struct {
	soil.Block
	Factor float64
	Basis  Note
}

// StageResult is what happens in one stage.
type StageResult struct {
	Name      Stage
	Pushes    []Push
	Reactions []Reaction
	Moments   []MomentPeak // greatest on each face, largest first
	Shears    []ShearPeak
	// Service and Factored are the exact diagrams. Factored governs the
	// picture.
	Service, Factored statics.Diagram
	Stability         *Stability
}

// Stability is the free body of wall and footing at service loads.
type Stability struct {
	Normal                              units.ForcePerLength
	Driving, Resisting                  units.ForcePerLength
	Overturning, Righting               units.MomentPerLength
	OverturningFactor, SlidingFactor    float64
	Resultant, Eccentricity, Contact    units.Length
	BearingToe, BearingHeel, BearingMax units.Stress
	Overturned, MiddleThird             bool
}

// Band is the strength a picture compares the bending curve with.
type Band struct {
	Plain     units.MomentPerLength // plain concrete, φMn
	Bars      units.MomentPerLength // with the bars shown, 0 = none
	BarsOther units.MomentPerLength // tension on face A
	Face      Face
}

// TableAnswer is what the residential tables say.
type TableAnswer struct {
	Name     string
	Inside   bool
	Reasons  []Note
	Plain    bool // no vertical bars needed
	Size     int
	Spacing  units.Length
	Column   units.UnitWeight
	Row      units.Length
	FillRow  units.Length
	Footnote string
	ByNote   string // the footnote by which it needs no bars, l or m
	Others   []Alternative
}

// Alternative is the same cell in another size or grade.
type Alternative struct {
	Size    int
	Fy      units.Stress
	Spacing units.Length
}

// Permission is whether the wall may be filled today.
type Permission uint8

// Permissions.
const (
	DoNotFill Permission = iota
	FillOnlyTo
	MayFill
)

// TodayAnswer is the answer for today.
type TodayAnswer struct {
	Permission Permission
	Level      units.Length // FillOnlyTo: height of fill above the footing top, rounded down to the inch
	Because    []Note       // what governs, first the strongest
	Governs    string       // id of the check that governs the level
}

// LevelPair is one row of the filling chart: with the low side at Low, the
// high side may go up to High.
type LevelPair struct {
	Low, High units.Length
	Governs   string
}

// Spread is the answer for one possible soil where the soil is not known.
type Spread struct {
	Fluid    units.UnitWeight
	Moment   units.MomentPerLength
	Plain    bool // plain concrete carries it
	Size     int
	Spacing  units.Length
	Possible bool
	Table    TableAnswer // what the residential table says of this class
}

// Layout is the geometry that was used, for the picture.
type Layout struct {
	Brace     units.Length // level of the upper support, 0 = none
	FootLevel units.Length // level of the lower support
	SlabBase  units.Length
	SlabThick units.Length // slab at the foot, B side
	Toe, Heel units.Length // footing projections beyond faces B and A
	TieLevel  units.Length
	TieThick  units.Length
	Wedge     units.Length // length of slab over the sliding wedge
	Friction  float64
}

// Result is the whole answer for one wall. The same input gives the same
// result; nothing is kept between calls.
type Result struct {
	Input        Input // as computed, with what was assumed filled in
	Stopped      bool  // no number is offered: swelling or organic ground
	Governs      Rulebook
	Editions     map[Rulebook]string
	Verdict      State // Holds, Fails or Open over the deciding checks
	Plain        bool  // the governing answer is a wall without vertical bars
	Stages       []StageResult
	Checks       []Check
	Bars         []Bar
	Compare      []Bar // verticals by the rulebook that does not govern
	ComparePlain bool
	Band         Band
	Table        TableAnswer
	Today        TodayAnswer
	UnbracedFill units.Length // least height of fill it stands with nothing at its top
	Chart        []LevelPair
	LowFirst     LevelPair // Low: how high the low side may go with the high side empty
	Spread       []Spread
	Layout       Layout
	Assumptions  []Note
	Warnings     []Note
	Engineer     []Note // beside the reasons why the wall is outside the table
	Cautions     []Note // matter today, shown under the headline
}
