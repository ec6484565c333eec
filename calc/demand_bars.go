package calc

import (
	"standingbeam/calc/concrete"
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

func areaTerms(b rebar.Bar, spacing units.Length) []working.Term {
	return []working.Term{term("Ab", b.Area, units.BarArea), term("s", spacing, units.Size)}
}

// recordSteel writes the area of bars per length of wall.
func (w *wall) recordSteel(c *working.Chain, symbol string, b rebar.Bar, spacing units.Length) {
	if w.quiet || b.Number == 0 || spacing <= 0 {
		return
	}
	c.Add(symbol, "Ab/s", units.Of(b.PerLength(spacing), units.SteelArea), "geometry", areaTerms(b, spacing)...)
}

// recordSet writes the area of a layer and its depth for tension on face f.
func (w *wall) recordSet(c *working.Chain, set barSet, f Face) {
	if w.quiet || set.none() {
		return
	}
	w.recordSteel(c, "As", set.bar, set.spacing)
	w.recordDepth(c, set, f)
}

// recordDepth writes d where the bars lie: by their cover, or as given.
func (w *wall) recordDepth(c *working.Chain, set barSet, f Face) {
	h := term("h", w.Thickness, units.Size)
	with, formula := []working.Term{h}, ""
	switch {
	case set.face == Centre && set.d == 0:
		formula = "h/2"
	case set.face == Centre:
		formula, with = "min(dv; h − dv)", append(with, term("dv", set.d, units.Size))
	case set.d != 0 && set.face == f:
		return
	case set.d != 0:
		formula, with = "h − dv", append(with, term("dv", set.d, units.Size))
	default:
		cover := []working.Term{term("cc", w.cover(set.face, set.bar), units.Size), term("db", set.bar.Diameter, units.Size)}
		if formula = "cc + db/2"; set.face == f {
			formula = "h − cc − db/2"
			with = append(with, cover...)
		} else {
			with = cover
		}
	}
	c.Add("d", formula, units.Of(w.depth(set, f), units.Size), "geometry", with...)
}

// recordShare writes how much of fy the dowels reach at the joint.
func (w *wall) recordShare(c *working.Chain, symbol string) {
	d := w.dowel
	if w.quiet || d.absent || d.bar.Number == 0 || d.down <= 0 || !(d.ld > 0 && d.ldh > 0) {
		return
	}
	share := w.developed(w.Material.Fc)
	c.Add("η", "min(1; lup/ld; ldn/ldh)", units.Quantity{Base: share}, "25.4.10.1",
		term("lup", d.up, units.Size), term("ld", d.ld, units.Size), term("ldn", d.down, units.Size), term("ldh", d.ldh, units.Size))
	c.Add(symbol, "η Ab/s", units.Of(units.AreaPerLength(float64(d.area())*share), units.SteelArea), "25.4.10.1",
		append(areaTerms(d.bar, d.spacing), number("η", share))...)
}

// recordDowels writes the dowels as the steel of the joint.
func (w *wall) recordDowels(c *working.Chain, f Face) {
	if w.quiet || w.dowel.absent || w.dowel.bar.Number == 0 {
		return
	}
	w.recordShare(c, "As")
	w.recordDepth(c, w.dowel.barSet, f)
}

// recordAcross writes the bars across a projection of the footing, for bending
// as far as they are anchored.
func (w *wall) recordAcross(c *working.Chain, p cantilever, a across, sec concrete.Section, bending bool) {
	if w.quiet {
		return
	}
	if bending {
		w.recordAnchored(c, p, a)
	} else {
		w.recordSteel(c, "As", a.bar, a.spacing)
	}
	c.Add("d", "tf − cc − db/2", units.Of(sec.D, units.Size), "geometry", term("tf", w.Footing.Thickness, units.Size),
		term("cc", w.acrossCover(p, a.bar), units.Size), term("db", a.bar.Diameter, units.Size))
}

// recordPlainFooting writes the thickness of plain concrete cast against soil.
func (w *wall) recordPlainFooting(c *working.Chain) {
	if w.quiet {
		return
	}
	c.Add("h", "tf − 2", units.Of(w.plainFooting().H, units.Size), "14.5.1.7", term("tf", w.Footing.Thickness, units.Size))
}

// recordSpacing writes the greatest spacing of bars: times h, 18 in, and where
// that is more the limit of cracks with bars at the given cover.
func (w *wall) recordSpacing(c *working.Chain, most, cover units.Length) {
	if w.quiet {
		return
	}
	h := term("h", w.Thickness, units.Size)
	q := units.Of(most, units.Size)
	for _, times := range [2]struct {
		formula string
		of      units.Length
	}{{"min(3 h; 18)", 3}, {"min(5 h; 18)", 5}} {
		if alike(most, min(times.of*w.Thickness, 18*units.Inch)) {
			c.Add("smax", times.formula, q, "", h)
			return
		}
	}
	fs := w.Material.Fy * 2 / 3
	if !alike(most, min(3*w.Thickness, 18*units.Inch, concrete.CrackSpacing(fs, cover))) {
		return
	}
	c.Add("fs", "2/3 fy", units.Of(fs, units.Strength), "24.3.2.1", term("fy", w.Material.Fy, units.Strength))
	formula := "min(3 h; 18; 15 40000/fs − 2.5 cc; 12 40000/fs)"
	if most <= 0 {
		formula = "max(0; " + formula + ")"
	}
	c.Add("smax", formula, q, "24.3.2", h,
		term("fs", fs, units.Strength), term("cc", cover, units.Size))
}

// lapWorking is the working of the lap of dowels and verticals.
func (w *wall) lapWorking() *working.Chain {
	c := chain()
	w.lapAt(w.Material.Fc, c)
	return c
}

// recordStiffness writes the effective inertia of a deflection.
func (w *wall) recordStiffness(c *working.Chain, s *StageResult) {
	if w.quiet {
		return
	}
	if m := s.Moments; !w.vert.none() && len(m) > 0 {
		set := w.bestSet(m[0].TensionFace)
		w.recordSet(c, set, m[0].TensionFace)
		w.section(set, m[0].TensionFace).RecordInertia(m[0].Service, c)
		return
	}
	ig := units.Quantity{Base: w.section(barSet{}, FaceB).GrossInertia(), Kind: units.Inertia}
	c.Add("Ig", "b h^3/12", ig, "geometry", term("b", 12*units.Inch, units.Size), term("h", w.Thickness, units.Size))
	c.Add("Ie", "Ig", ig, "24.2.3.5", working.Term{Symbol: "Ig", Value: ig})
}
