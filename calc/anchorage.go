package calc

import (
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// anchorage is how the bars across a projection are held on the weaker side of
// the stem's face: over the projection itself, or under the stem and beyond it,
// each less the cover at the footing's edge. The bars end in standard hooks.
func (w *wall) anchorage(p cantilever, a across, fc units.Stress) (there, needed units.Length) {
	there = max(0, min(p.length, w.Footing.Width-p.length)-footingCover)
	set := rebar.Setting{Fc: fc, Fy: w.Material.Fy, Lambda: 1, SpacingSixDb: a.spacing >= 6*a.bar.Diameter, SideCoverSixDb: true}
	return there, rebar.Hook(a.bar, set, nil)
}

// anchored is the part of fy that the bars across a projection reach at the
// stem's face, as for dowels: min(1, embedment/ldh).
func (w *wall) anchored(p cantilever, a across, fc units.Stress) float64 {
	return rebar.Share(w.anchorage(p, a, fc))
}

// recordAnchored writes the steel across a projection as far as its hooks hold
// it.
func (w *wall) recordAnchored(c *working.Chain, p cantilever, a across) {
	share := w.anchored(p, a, w.Material.Fc)
	if share >= 1 || w.quiet {
		w.recordSteel(c, "As", a.bar, a.spacing)
		return
	}
	there, ldh := w.anchorage(p, a, w.Material.Fc)
	c.Add("η", "min(1; lav/ldh)", units.Quantity{Base: share}, "25.4.10.1", term("lav", there, units.Size), term("ldh", ldh, units.Size))
	c.Add("As", "η Ab/s", units.Of(units.AreaPerLength(share*float64(a.bar.PerLength(a.spacing))), units.SteelArea), "25.4.10.1",
		append(areaTerms(a.bar, a.spacing), number("η", share))...)
}
