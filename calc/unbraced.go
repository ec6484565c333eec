package calc

import (
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// todayFc is the concrete strength that today's answers use.
func (w *wall) todayFc() units.Stress {
	if w.Today.Concrete != 0 {
		return w.Today.Concrete
	}
	return w.Material.Fc
}

// stands reports whether the wall stands with nothing at its top, side A
// filled to a and side B to b, at concrete strength fc, and what governs when
// it does not: bending and shear at the joint with the dowels as developed,
// the wall's own section above the dowels, sliding, overturning and bearing.
// No floor load; soil pushes at 1.6, soil that opposes counts 0.9 or 0.
func (w *wall) standsAt(a, b units.Length, fc units.Stress) (string, bool) {
	if a <= 0 || (a <= b && !w.LowSideMayGo && w.Surcharge == (Surcharge{}) && !w.Water.Standing) {
		return "", true
	}
	low := w.lowFactor()
	m, v := w.cantileverAt(a, b, 0, low)
	if m > w.jointMoment(FaceA, fc, nil) {
		return "joint-bending", false
	}
	slabIn := w.Foot.Held != GroundOnly && w.Today.Slab && w.slabHolds()
	if !slabIn && v > w.jointShear(fc, nil) {
		return "joint-shear-friction", false
	}
	sec := w.plainSection()
	sec.Fc = fc
	if v > max(sec.DesignShear(nil), w.shearCapacity(FaceA)) {
		return "shear", false
	}
	up := w.dowel.up
	above, _ := w.cantileverAt(a, b, up, low)
	if above > max(sec.DesignMoment(nil), w.capacity(FaceA, 0, nil)) {
		return "section-above-dowels", false
	}
	r := w.stands(ground{a: a, b: b, state: soil.Active, surcharge: true, low: low}, nil)
	switch {
	case r.Overturned || r.OverturningFactor < w.ibc.StabilityFactor:
		return "overturning", false
	case !slabIn && r.SlidingFactor < w.ibc.StabilityFactor:
		return "sliding", false
	case r.BearingMax > w.Footing.Bearing:
		return "bearing", false
	}
	return "", true
}

// cantileverAt is the factored moment and shear of the unbraced wall at level
// y: 1.6 on side A, low on side B.
func (w *wall) cantileverAt(a, b, y units.Length, low float64) (units.MomentPerLength, units.ForcePerLength) {
	var m, v float64
	for _, p := range w.pushes(soil.Active, a, b, y, true, low) {
		f, h := thrust([]Push{p}, p.Side)
		k := float64(f) * p.Factor
		if p.Side == 'b' {
			k = -k
		}
		v += k
		m += k * float64(h-y)
	}
	return units.MomentPerLength(max(0, m)), units.ForcePerLength(max(0, v))
}

// highest scans the fill on side A upward from the level of side B, in 6 in
// steps and then by the inch, and returns the last whole inch at which the
// wall stands: the first height that fails ends it, for the fill passes
// through all of them.
func (w *wall) highest(b, most units.Length, fc units.Stress) (units.Length, string) {
	safe := b
	for a := b; ; {
		a = minLength(a+6*units.Inch, most)
		if governs, ok := w.standsAt(a, b, fc); !ok {
			for x := safe + 1; x < a; x++ {
				g, ok := w.standsAt(x, b, fc)
				if !ok {
					return safe, g
				}
				safe = x
			}
			return safe, governs
		}
		safe = a
		if a >= most {
			return most, ""
		}
	}
}

// unbraced finds the height of fill that the wall stands with nothing at its
// top, and says so as a check that decides nothing about the finished wall.
func (w *wall) unbraced() {
	if w.Condition == FreeTop || (w.Condition == SoilBothSides && !w.TopHeld) {
		return
	}
	demand := units.Of(w.GradeA, units.Level)
	if !w.Footing.Given {
		w.leaveOpen("unbraced-fill", Unbraced, demand, "R404.1.7", note("needs-footing"), compareOnly, by(w.r.Editions[Residential]))
		return
	}
	level, governs := w.highest(0, w.GradeA, w.todayFc())
	w.r.UnbracedFill = level
	opts := []option{compareOnly, service, by(w.r.Editions[Residential])}
	if governs != "" {
		opts = append(opts, because(noteText("unbraced-governed", governs)))
	}
	w.r.Today.Governs = governs
	w.ask("unbraced-fill", Unbraced, demand, units.Of(level, units.Level), "R404.1.7", opts...)
}
