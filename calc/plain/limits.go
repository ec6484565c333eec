package plain

import "standingbeam/calc/units"

// WallThickness returns the least thickness of a bearing wall of plain
// concrete whose shorter unsupported side, height or length, is side,
//
//	h ≥ max(5.5 in; side/24)
//
// and at least 7.5 in where the wall is an exterior basement or foundation
// wall.
//
// Source: ACI 318-19, Table 14.3.1.1. That a foundation wall which bears obeys
// both of its rows is judgement, on the safe side.
func WallThickness(side units.Length, foundation bool) units.Length {
	least := max(aci.PlainWall, units.Length(aci.PlainWallOf)*side)
	if foundation {
		least = max(least, aci.FoundationWall)
	}
	return least
}

// FootingThickness returns the least thickness of a plain footing, 8 in.
//
// Source: ACI 318-19, 14.3.2.1.
func FootingThickness() units.Length { return aci.PlainFooting }
