package concrete

import "standingbeam/calc/units"

// CrackSpacing returns the greatest spacing of the bars nearest a tension face
// that keeps cracks small,
//
//	s = min(15 (40,000/fs) − 2.5 cc; 12 (40,000/fs))
//
// with the steel stress at service level fs in psi, for which 2/3 fy may be
// taken, and the clear cover cc in inches. A stress below 1 psi is taken as
// 1 psi.
//
// Source: ACI 318-19, Table 24.3.2.
func CrackSpacing(fs units.Stress, cc units.Length) units.Length {
	if !(fs >= 1) {
		fs = 1
	}
	ratio := 40000 / fs.PSI()
	return units.Length(max(0, min(15*ratio-2.5*positive(cc.Inches()), 12*ratio)))
}

// WallThickness returns the least thickness of a reinforced bearing wall whose
// shorter unsupported side, height or length, is side: max(4 in; side/25), and
// at least 7.5 in where it is an exterior basement or foundation wall. It binds
// only the simplified method of 11.5.3: a thinner wall may be shown by
// analysis.
//
// Source: ACI 318-19, Table 11.3.1.1 and its footnote. That a foundation wall
// obeys both of its rows is judgement, on the safe side.
func WallThickness(side units.Length, foundation bool) units.Length {
	least := max(aci.Wall.Least, units.Length(aci.Wall.LeastOf)*side)
	if foundation {
		least = max(least, aci.FoundationWall)
	}
	return least
}

// TwoLayers reports whether a wall of thickness h needs bars near both faces:
// above 10 in, but for a basement wall of one storey and a cantilever
// retaining wall.
//
// Source: ACI 318-19, 11.7.2.3.
func TwoLayers(h units.Length, basementOrRetaining bool) bool {
	return h > aci.Wall.OneLayer && !basementOrRetaining
}
