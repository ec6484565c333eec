package calc

import (
	"standingbeam/calc/plain"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// plainSection is the strip as plain concrete, ACI 318-19 chapter 14. The 2 in
// taken off concrete cast against soil (14.5.1.7) is for footings, not for a
// formed wall.
func (w *wall) plainSection() plain.Section {
	return plain.Section{Fc: w.Material.Fc, H: w.Thickness, Lambda: 1, Phi: w.aci.PhiPlain}
}

// checkPlain asks whether the wall passes wholly by chapter 14: bending and
// shear in each stage that holds it at the top, the axial load, the thickness
// and the seismic limits. It returns whether it does; the checks it records
// decide only when the wall is answered as plain.
func (w *wall) checkPlain(moments []momentNeed, shears []shearNeed) bool {
	first := len(w.r.Checks)
	sec := w.plainSection()
	for _, n := range w.worstPlain(sec, moments) {
		c := w.forMoment(n)
		w.helping(c, n.pu)
		clause := "14.5.2.1"
		if n.pu > 0 {
			clause = "14.5.4.1"
		}
		w.ask("plain-flexure", n.stage, units.Of(n.m, units.LineMoment), units.Of(plainMoment(sec, n.pu, c), units.LineMoment), clause, at(n.at), steps(c))
	}
	for _, n := range worstShears(shears) {
		c := w.forShear(n)
		w.ask("plain-shear", n.stage, units.Of(n.v, units.LineForce), units.Of(sec.DesignShear(c), units.LineForce), "14.5.5.1", at(n.at), steps(c))
	}
	w.checkPlainAxial(moments)
	least := max(w.aci.FoundationWall, w.Brace/24)
	tc := w.more()
	tc.Add("hmin", "max(7.5; lc/24)", units.Of(least, units.Size), "14.3.1.1", term("lc", w.Brace, units.Level))
	w.ask("minimum-thickness", Finished, units.Of(least, units.Size), units.Of(w.Thickness, units.Size), "14.3.1.1", steps(tc))
	ok := w.seismicPlain()
	for _, c := range w.r.Checks[first:] {
		ok = ok && c.State == Holds
	}
	return ok
}

// checkPlainAxial asks for the compression face beside the axial load, 1.4D
// and 1.2D + 1.6L + 1.6H, with the least eccentricity of 0.10 h (14.4.2.1).
func (w *wall) checkPlainAxial(moments []momentNeed) {
	d, l := float64(w.Axial.Dead), float64(w.Axial.Live)
	if d+l <= 0 {
		return
	}
	sec := w.plainSection()
	pu := w.greatestAxial()
	e := max(w.aci.PlainEccentricity*w.Thickness.Inches(), absLength(w.Axial.Eccentricity).Inches())
	m := units.MomentPerLength(float64(pu) * e)
	for _, n := range moments {
		m = max(m, n.m)
	}
	c := w.forPlainAxial(moments, m, e)
	ratio := sec.Interaction(m, pu, w.Brace, c)
	if ratio >= plain.NoStrength {
		w.failed("plain-compression", Finished, units.LineForce, "14.5.3.1", note("too-slender", units.Of(pu, units.LineForce)))
		return
	}
	w.ask("plain-compression", Finished, units.Quantity{Base: ratio}, units.Quantity{Base: 1}, "14.5.4.1", steps(c))
}

// seismicPlain reports whether plain concrete is permitted in the seismic
// category: IBC 2021 1905.1.7 and IRC 2021 R404.1.4.2 allow it in D and above
// only for walls up to 8 ft, at least 7.5 in thick, retaining up to 4 ft.
func (w *wall) seismicPlain() bool {
	if !w.highSeismic() {
		return true
	}
	ok := !over(w.Height, 8*units.Foot) && !over(7.5*units.Inch, w.Thickness) && !over(w.GradeA, 4*units.Foot)
	if !ok {
		w.warn("plain-not-in-seismic")
	}
	return ok
}

// highSeismic reports a seismic design category of D or above.
func (w *wall) highSeismic() bool { return w.Seismic != "" && w.Seismic[0] >= 'D' }

func absLength(l units.Length) units.Length {
	if l < 0 {
		return -l
	}
	return l
}

// plainMoment is the plain section's strength beside the axial load pu.
func plainMoment(sec plain.Section, pu units.ForcePerLength, c *working.Chain) units.MomentPerLength {
	if pu > 0 {
		return sec.DesignMomentWithAxial(pu, c)
	}
	return sec.DesignMoment(c)
}

// worstPlain keeps, of each stage, the need that is nearest to its strength or
// farthest beyond, whatever its face: a plain section is the same both ways.
func (w *wall) worstPlain(sec plain.Section, all []momentNeed) []momentNeed {
	var out []momentNeed
next:
	for _, n := range all {
		for i, o := range out {
			if o.stage != n.stage {
				continue
			}
			if float64(n.m)*float64(plainMoment(sec, o.pu, nil)) > float64(o.m)*float64(plainMoment(sec, n.pu, nil)) {
				out[i] = n
			}
			continue next
		}
		out = append(out, n)
	}
	return out
}

// worstShears keeps the greatest shear of each stage.
func worstShears(all []shearNeed) []shearNeed {
	var out []shearNeed
next:
	for _, n := range all {
		for i := range out {
			if out[i].stage == n.stage {
				if n.v > out[i].v {
					out[i] = n
				}
				continue next
			}
		}
		out = append(out, n)
	}
	return out
}
