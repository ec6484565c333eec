package calc

import (
	"standingbeam/calc/concrete"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// slabFc is the strength taken for a floor slab whose concrete was not asked
// for: the least of IRC 2021 Table R402.2.
const slabFc = 2500 * units.PSI

// slabHolds reports whether standing water leaves the foot's slab on the
// ground: a slab whose uplift exceeds 0.9 of its weight does not hold the foot.
func (w *wall) slabHolds() bool {
	if !w.Water.Standing {
		return true
	}
	up := float64(soil.WaterWeight) * max(0, (w.Water.Level-w.Foot.SlabBase).Inches())
	return up <= w.lf.DeadHelps*float64(concreteWeight)*w.Foot.SlabThickness.Inches()
}

// checkSlabStrut asks whether the slab at the foot takes the service force
// need: bearing of its edge, φ 0.85 f'c (22.8), shared by the load factor.
func (w *wall) checkSlabStrut(st Stage, need units.ForcePerLength) {
	if !w.slabHolds() {
		w.ask("foot-support", st, units.Of(need, units.LineForce), units.Quantity{Kind: units.LineForce}, "5.3.7", service, because(note("slab-floats")))
		return
	}
	c := w.forReaction(need, false, false)
	v := w.aci.PhiBearing * 0.85 * slabFc.PSI() * w.Foot.SlabThickness.Inches() / w.lf.Earth
	capacity := units.Of(units.ForcePerLength(v), units.LineForce)
	c.Add("Ra", "φ 0.85 f'c b t / 1.6", capacity, "22.8.3.2", number("φ", w.aci.PhiBearing),
		term("f'c", slabFc, units.Strength), term("b", 12*units.Inch, units.Size), term("t", w.Foot.SlabThickness, units.Size))
	w.ask("foot-support", st, units.Of(need, units.LineForce), capacity, "22.8.3.2", service, steps(c))
	w.assume("slab-other-end")
}

// checkFoot asks what takes the foot's reaction of a wall held at its top: a
// tight slab; without one the joint, and the footing's friction at 1.5 with the
// push on the footing's own depth added. A slab that comes later leaves the
// foot to the footing while the wall is filled; so does the house's load.
func (w *wall) checkFoot(h held) {
	if w.Foot.Held != GroundOnly {
		w.checkSlabStrut(Finished, h.foot)
	}
	switch {
	case w.Foot.Held == SlabTight:
		w.without("joint-shear-friction", Finished, "22.9.4", note("slab-takes-the-foot"))
	case w.Foot.Held == SlabLater:
		w.checkFooting(Filling, h, 0)
	default:
		w.checkFooting(Finished, h, w.Axial.Dead)
		if w.Axial.Dead > 0 {
			w.checkFooting(Filling, h, 0)
		}
	}
}

// checkFooting asks for the joint and the footing's sliding in one stage, with
// the dead load that stands on the wall then.
func (w *wall) checkFooting(st Stage, h held, dead units.ForcePerLength) {
	w.checkJoint(st, h.footU)
	foot := units.Of(h.foot, units.LineForce)
	if !w.Footing.Given {
		w.leaveOpen("foot-support", st, foot, "1807.2.3", note("needs-footing"), service, by(w.ibc.Name))
		return
	}
	drive, resist, ch := w.footSliding(h.foot, dead)
	if drive <= 0 {
		w.without("foot-support", st, "1807.2.3", note("nothing-pushes"), by(w.ibc.Name))
		return
	}
	w.askFactor("foot-support", st, float64(resist/drive), "1807.2.3", steps(ch))
}

// footSliding returns the service force that drives the footing toward B, the
// foot's reaction and the push on the footing's own depth, and the friction
// that resists it. Soil weight on the heel counts once; soil that opposes on
// the other side is left out.
func (w *wall) footSliding(foot, dead units.ForcePerLength) (drive, resist units.ForcePerLength, ch *working.Chain) {
	f := w.Footing
	b := w.body(ground{a: w.GradeA, b: w.GradeB, state: w.heldState(), q: w.Surcharge, low: w.lowFactor(), dead: dead})
	var n, below units.ForcePerLength
	for _, x := range b.Weights {
		n += x.Force
	}
	for _, x := range b.Uplift {
		n -= x.Force
	}
	for _, p := range b.Drive {
		below += p.Force
	}
	for _, p := range w.blocks(nil, w.heldState(), w.GradeA, 0, 0, w.Surcharge) {
		t, _ := p.Resultant()
		below -= t
	}
	n, below = max(0, n), max(0, below)
	drive = foot + below
	rub := units.ForcePerLength(f.Friction * float64(n))
	ch = w.forReaction(foot, false, false)
	w.recordFriction(ch, dead, b, n, below)
	ch.Add("Ph", "Rf + Pf", units.Of(drive, units.LineForce), "", term("Rf", foot, units.LineForce), term("Pf", below, units.LineForce))
	passive := term("Pp", b.Passive, units.LineForce)
	if most := units.ForcePerLength(float64(b.MostFriction) * f.Width.Inches()); most > 0 {
		t := term("Fμ", min(rub, most), units.LineForce)
		ch.Add("Fμ", "min(μ N; ca B)", t.Value, "IBC 2021 1806.2", number("μ", f.Friction), term("N", n, units.LineForce),
			term("ca", b.MostFriction, units.Pressure), term("B", f.Width, units.Level))
		resist = min(rub, most) + b.Passive
		ch.Add("Fr", "Fμ + Pp", units.Of(resist, units.LineForce), "", t, passive)
	} else {
		resist = rub + b.Passive
		ch.Add("Fr", "μ N + Pp", units.Of(resist, units.LineForce), "", number("μ", f.Friction), term("N", n, units.LineForce), passive)
	}
	if drive > 0 {
		ch.Add("FS", "Fr / Ph", units.Quantity{Base: float64(resist / drive)}, "", term("Fr", resist, units.LineForce), term("Ph", drive, units.LineForce))
	}
	return drive, resist, ch
}

// checkFloorEdge asks whether the floor's edge takes the service reaction at
// the top: ratings of bolts and blocking are allowable values. Until its
// capacity is known the check is open.
func (w *wall) checkFloorEdge(h held) {
	v, c := h.top, w.forReaction(h.top, false, true)
	if h.pull > h.top+least {
		v, c = h.pull, w.forReaction(-h.pull, false, true)
		if c.On() && len(c.Steps) > 0 {
			c.Add("Rp", "−Rt", units.Of(v, units.LineForce), "statics", term("Rt", -v, units.LineForce))
		}
		w.warn("floor-pulls", units.Of(v, units.LineForce))
	}
	demand := units.Of(v, units.LineForce)
	if w.FloorEdge == 0 {
		w.leaveOpen("floor-edge", Finished, demand, "1604.4", note("needs-floor-edge", demand), service, by(w.ibc.Name), steps(c))
		return
	}
	w.ask("floor-edge", Finished, demand, units.Of(w.FloorEdge, units.LineForce), "1604.4", service, by(w.ibc.Name), steps(c))
}

// checkJoint asks for shear friction at the footing joint, with dowels at
// their developed strength.
func (w *wall) checkJoint(st Stage, v units.ForcePerLength) {
	if !w.Footing.Given {
		w.leaveOpen("joint-shear-friction", st, units.Of(v, units.LineForce), "22.9.4", note("needs-footing"), steps(w.forJoint(st, v)))
		return
	}
	c := w.forJoint(st, v)
	w.recordShare(c, "Avf")
	w.ask("joint-shear-friction", st, units.Of(v, units.LineForce), units.Of(w.jointShear(w.Material.Fc, c), units.LineForce), "22.9.4", steps(c))
}

// checkDeflection asks for the service deflection with the long-term part,
// against L/240, the basis of the residential tables (IRC 2021 Table
// R404.1.2(8), footnote).
func (w *wall) checkDeflection(s *StageResult) {
	_, d := s.Service.MaxDeflection()
	d = absLength(d)
	c := chain()
	m := s.Moments
	ig := w.section(barSet{}, FaceB).GrossInertia()
	ie := ig
	if !w.vert.none() && len(m) > 0 {
		ie = w.section(w.bestSet(m[0].TensionFace), m[0].TensionFace).EffectiveInertia(m[0].Service)
	}
	factor := 1 + concrete.LongTermFactor(60)
	total := units.Length(d.Inches() * ig / ie * factor)
	w.recordStiffness(c, s)
	c.Add("Δ", "Δg Ig / Ie (1 + λΔ)", units.Of(total, units.Deflection), "24.2.3.5, 24.2.4.1",
		term("Δg", d, units.Deflection), term("Ig", units.Length(ig), units.Inertia), term("Ie", units.Length(ie), units.Inertia), number("λΔ", factor-1))
	span := w.Brace - w.footLevel()
	if len(s.Reactions) < 2 {
		w.record(c, "Δmax", "ht/120", units.Of(w.Height/120, units.Deflection), commonPractice, term("ht", w.Height, units.Level))
		w.ask("deflection", s.Name, units.Of(total, units.Deflection), units.Of(w.Height/120, units.Deflection), "24.2", service, compareOnly, steps(c))
		return
	}
	w.record(c, "Δmax", "ℓ/240", units.Of(span/240, units.Deflection), "IRC 2021 Table R404.1.2(8)", term("ℓ", span, units.Level))
	w.ask("deflection", s.Name, units.Of(total, units.Deflection), units.Of(span/240, units.Deflection), "24.2", service, steps(c))
}
