// Package wallfile is the file of walls and the form of the page: both hold a
// wall as it was typed.
//
// A file is JSON with the format's number and a list of walls. Every quantity
// is a text with its unit, as a person writes it; a bare number is refused.
// Pure ratios are texts without a unit. Unknown and doubled keys are refused.
// Heights are measured up from the top of the footing; side A is the retained,
// higher side, side B the other. In the order in which they are written, with
// the fixed words that a key may hold:
//
//	name
//	condition          braced top | free top | tied to slab | soil both sides
//	top                soil both sides only: free | braced
//	height, brace      brace: level at which the floor holds the wall, its top when left out
//	thickness
//	grade              a, b: level of the ground on each side
//	low side           soil both sides: stays | may be dug away
//	foot               held by: ground only | slab tight to wall | slab later;
//	                   slab thickness; slab underside (a level); fixed: no | yes
//	soil               "unknown", or one of: class; equivalent fluid; unit weight
//	                   with friction angle. Beside it unit weight, saturated weight,
//	                   pressure: active | at rest (what the fluid stands for, for
//	                   the report). by: unknown | class | equivalent fluid |
//	                   friction angle, where more than one of them is written
//	swells             no | yes: does the ground swell, or is it organic
//	surcharge          dead, live: on the ground of side A
//	water              level of standing water on side A, drained when left out
//	concrete, steel    f'c; 40, 60 or 80 ksi
//	cover              a, b: clear cover at each face
//	axial              dead, live, eccentricity (toward side B)
//	footing            width, thickness, toe (beyond face B, centered when left out),
//	                   allowable bearing, friction, passive from (a level; passive
//	                   resistance counts only where this is written)
//	tie                slab thickness, slab length, friction, anchor: slab drag |
//	                   opposite wall | tie; strength (allowable, of that tie or wall);
//	                   before the slab: stands alone | rakers
//	bars               vertical, horizontal: size ("No. 4"), spacing, face: a | b |
//	                   center, depth (d itself); bars written here are checked as
//	                   they are, others are chosen
//	dowels             "none", or size, spacing, up, position: a | b | center
//	joint              as cast | roughened
//	minimum steel      code | four thirds
//	sizes              a list of bars to choose from
//	floor              flexible | rigid
//	floor edge         allowable force that fasteners and blocking take
//	seismic category   A, B, C, D, D0, D1, D2, E or F
//	today              concrete; floor, slab: true | false
//	rulebook           engineered | residential, by the tables' limits when left out
//
// Needed are condition, height, thickness, the ground of side A, concrete and
// steel; width and thickness of a footing, size and spacing of bars and dowels
// once anything else of them is written; and the tie slab's thickness.
package wallfile

// Wall is one wall as typed. An empty field is left out.
type Wall struct {
	Name, Condition, Top     string
	Height, Brace, Thickness string
	GradeA, GradeB, LowSide  string

	FootHeldBy, FootSlabThickness, FootSlabUnderside, FootFixed string

	SoilBy, SoilClass, SoilFluid, SoilPressure string
	SoilWeight, SoilFriction, SoilSaturated    string
	Swells                                     string
	SurchargeDead, SurchargeLive, Water        string

	Concrete, Steel, CoverA, CoverB      string
	AxialDead, AxialLive, AxialOffCenter string
	FootingWidth, FootingThickness       string
	FootingToe, FootingBearing           string
	FootingFriction, FootingPassive      string
	TieSlabThickness, TieSlabLength      string
	TieFriction, TieAnchor               string
	TieStrength, TieBefore               string
	Vertical, Horizontal                 Bars
	DowelsBy, DowelsSize, DowelsSpacing  string
	DowelsUp, DowelsPosition             string
	Joint, MinimumSteel, Sizes           string
	Floor, FloorEdge, Seismic            string
	TodayConcrete, TodayFloor, TodaySlab string
	Rulebook                             string
}

// Bars are the bars of one direction as typed.
type Bars struct{ Size, Spacing, Face, Depth string }

// Field returns what is typed in the field of a path.
func (w Wall) Field(path string) string {
	if f, ok := find(path); ok {
		return *f.at(&w)
	}
	return ""
}

// Set types a text into the field of a path. It is false for an unknown path.
func (w *Wall) Set(path, text string) bool {
	f, ok := find(path)
	if ok {
		*f.at(w) = text
	}
	return ok
}
