package calc

import (
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// lapAt is the lap of dowels and verticals at concrete strength fc: the longest
// over the layers that the dowels meet, which are both where a person set the
// dowels and the matched one else. A wall without verticals keeps its dowels'
// own.
func (w *wall) lapAt(fc units.Stress, c *working.Chain) (lap units.Length) {
	d := w.dowel
	if d.absent || d.bar.Number == 0 {
		return 0
	}
	if w.vert.none() {
		return rebar.LapB(d.bar, w.setting(d.barSet, fc), c)
	}
	longest := w.lapped()
	if d.fixed {
		for _, v := range [2]barSet{w.vert, w.vertA} {
			if l := w.lapWith(v, fc, nil); !v.none() && l > lap {
				lap, longest = l, v
			}
		}
	}
	return w.lapWith(longest, fc, c)
}

// lapWith is the lap of the dowels with the layer v: class B (ACI 318-19
// 25.5.2.1); of bars of two sizes the greater of ld of the larger and the lap of
// the smaller (25.5.2.2).
func (w *wall) lapWith(v barSet, fc units.Stress, c *working.Chain) units.Length {
	small, big := w.dowel.barSet, v
	if small.bar.Number > big.bar.Number {
		small, big = big, small
	}
	of := func(b barSet, c *working.Chain) units.Length { return rebar.LapB(b.bar, w.setting(b, fc), c) }
	if small.bar.Number == big.bar.Number {
		if of(big, nil) > of(small, nil) {
			small = big // the layer with the less cover
		}
		return of(small, c)
	}
	ld := rebar.Development(big.bar, w.setting(big, fc), nil)
	if ld <= of(small, nil) {
		return of(small, c)
	}
	rebar.Development(big.bar, w.setting(big, fc), c)
	c.Add("lst", "ld", units.Of(ld, units.Size), "25.5.2.2", term("ld", ld, units.Size))
	return ld
}
