package calc_test

import (
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// The expectations of this file are common practice, no source: what the trade
// builds, held against what the answer asks for.

// tenInch is a wall of 10 in on a footing of 24 by 12 in, ground 6 in below
// its top, held by the floor and a slab.
func tenInch(height units.Length, g units.UnitWeight) calc.Input {
	w := basement(height, height-6*in, g)
	w.Thickness, w.Rulebook, w.FloorEdge = 10*in, calc.RulebookUnset, 3000*plf
	w.Footing = calc.Footing{Given: true, Width: 24 * in, Thickness: 12 * in, NoToe: true, Bearing: 2000 * psf, Friction: 0.40}
	return w
}

func bars(r calc.Result, role calc.BarRole) (out []calc.Bar) {
	for _, b := range r.Bars {
		if b.Role == role {
			out = append(out, b)
		}
	}
	return out
}

// TestTenInchWall: common practice, no source: at 9 ft in the best soil no
// verticals, one horizontal at mid-height and two at the top, two No. 5 along
// the footing and No. 4 L-bars. IRC 2021 Table R404.1.2(1) asks for one near
// each third point above 8 ft: the answer lists these and the top pair.
func TestTenInchWall(t *testing.T) {
	r := design(t, tenInch(9*ft, 30*pcf))
	if !r.Plain || len(bars(r, calc.VerticalBar)) > 0 || r.Governs != calc.Residential || r.Verdict != calc.Holds {
		t.Errorf("9 ft, best soil: plain %v, governs %v, verdict %v, verticals %v", r.Plain, r.Governs, r.Verdict, bars(r, calc.VerticalBar))
	}
	h := bars(r, calc.HorizontalBar)
	if len(h) != 1 || h[0].Size != 4 || h[0].Count != 3 || len(h[0].Levels) != 3 || h[0].Rulebook != "IRC 2021" {
		t.Errorf("9 ft: horizontals %+v, want three No. 4 by the table", h)
	} else if top, upper, lower := h[0].Levels[0], h[0].Levels[1], h[0].Levels[2]; 9*ft-top > 12*in || upper != 6*ft || lower != 3*ft {
		t.Errorf("9 ft: horizontals at %v, want within 12 in of the top and at 6 and 3 ft", h[0].Levels)
	}
	if p := bars(r, calc.TopBar); len(p) != 1 || p[0].Count != 2 || p[0].Rulebook != "common practice, no source" {
		t.Errorf("9 ft: top pair %+v", p)
	}
	if f := bars(r, calc.FootingBar); len(f) != 1 || f[0].Size != 5 || f[0].Count != 2 {
		t.Errorf("along the footing %+v, want two No. 5", f)
	}
	if d := bars(r, calc.DowelBar); len(d) != 1 || d[0].Size != 4 || d[0].Hook <= 0 {
		t.Errorf("dowels %+v, want No. 4 L-bars", d)
	}
	up8 := design(t, tenInch(8*ft, 30*pcf))
	if h := bars(up8, calc.HorizontalBar); !up8.Plain || len(h) != 1 || h[0].Count != 2 {
		t.Errorf("8 ft: plain %v, horizontals %+v, want two", up8.Plain, h)
	}
}

// TestTenInchWallNeedsVerticals: common practice, no source: at 11 ft the same
// wall needs verticals, in any soil; at 9 ft in any but the best.
func TestTenInchWallNeedsVerticals(t *testing.T) {
	for _, g := range []units.UnitWeight{30, 45, 60, 100} {
		r := design(t, tenInch(11*ft, g*pcf))
		if v := bars(r, calc.VerticalBar); r.Plain || len(v) != 1 || v[0].Face != calc.FaceB {
			t.Errorf("11 ft, %v pcf: plain %v, verticals %+v, want them on the open side", float64(g), r.Plain, v)
		}
		if g > 30 {
			if v := bars(design(t, tenInch(9*ft, g*pcf)), calc.VerticalBar); len(v) != 1 {
				t.Errorf("9 ft, %v pcf: verticals %+v", float64(g), v)
			}
		}
	}
}

// TestCrawlSpaceWall: common practice, no source: a wall of 4 ft held by the
// floor needs next to nothing, in any soil and by either rulebook.
func TestCrawlSpaceWall(t *testing.T) {
	for _, book := range []calc.Rulebook{calc.RulebookUnset, calc.Engineered} {
		for _, g := range []units.UnitWeight{30, 45, 60} {
			w := basement(4*ft, 3*ft, g*pcf)
			w.Foot = calc.Foot{}
			w.Footing = calc.Footing{Given: true, Width: 16 * in, Thickness: 8 * in, NoToe: true, Bearing: 1500 * psf, Friction: 0.40}
			w.Axial.Dead = 500 * plf
			w.Rulebook, w.FloorEdge = book, 300*plf
			r := design(t, w)
			if !r.Plain || len(bars(r, calc.VerticalBar)) > 0 {
				t.Errorf("%v pcf: plain %v, verticals %v", float64(g), r.Plain, bars(r, calc.VerticalBar))
			}
			if ratio := read(t, r, "check plain-flexure ratio"); ratio > 0.2 {
				t.Errorf("%v pcf: bending uses %v of the plain wall", float64(g), ratio)
			}
			if push := read(t, r, "top service") / float64(plf); push > 80 {
				t.Errorf("%v pcf: the floor takes %v lb/ft", float64(g), push)
			}
		}
	}
}

// TestLightWithSoilOnBothSides: common practice, no source: a wall with nearly
// equal ground on both sides gets light horizontals only. That holds where its
// top is held; with a free top chapter 14 does not allow plain concrete
// (14.2.2.2), and the answer is the least steel of a stem, hardly used.
func TestLightWithSoilOnBothSides(t *testing.T) {
	w := bothWall()
	w.Height, w.GradeA, w.GradeB = 4*ft, 3.5*ft, 3*ft
	r := design(t, w)
	if h := bars(r, calc.HorizontalBar); !r.Plain || len(bars(r, calc.VerticalBar)) > 0 || len(h) != 1 || h[0].Size != 4 || h[0].Count != 2 {
		t.Errorf("held: plain %v, verticals %v, horizontals %+v", r.Plain, bars(r, calc.VerticalBar), h)
	}
	w.TopHeld = false
	if ratio := read(t, design(t, w), "check flexure ratio"); ratio > 0.1 {
		t.Errorf("free: the least steel of a stem is used to %v", ratio)
	}
}
