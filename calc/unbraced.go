package calc

import (
	"math"

	"standingbeam/calc/rebar"
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

// standing is what the wall has when nothing holds its top, at one concrete
// strength: the joint with its dowels as developed, and the wall's own section.
type standing struct {
	fc                  units.Stress
	joint, above        units.MomentPerLength
	from                units.Length // the level from which the section has to carry by itself
	jointShear, section units.ForcePerLength
	slabIn              bool
	level               units.Length // side A, with side B empty
	governs             string
	scanned             bool
}

// standingAt finds that strength. The section of a wall without verticals has
// the plain strength, else that of its verticals where they lie and as far as
// they are lapped, never both.
func (w *wall) standingAt(fc units.Stress) *standing {
	if w.alone != nil && w.alone.fc == fc {
		return w.alone
	}
	sec := w.plainSection()
	sec.Fc = fc
	s := &standing{fc: fc, joint: w.jointMoment(FaceA, fc, nil), jointShear: w.jointShear(fc, nil),
		above: sec.DesignMoment(nil), section: sec.DesignShear(nil),
		slabIn: w.Foot.Held != GroundOnly && w.footLevel() == 0 && w.Today.Slab && w.slabHolds()}
	if set := w.bestSet(FaceA); !set.none() && !w.r.Plain {
		steel := w.section(set, FaceA)
		steel.Fc = fc
		s.section = steel.Shear(0, true, nil)
		if lap := w.lapAt(fc, nil); lap > 0 {
			steel.As = units.AreaPerLength(float64(steel.As) * min(1, float64(w.dowel.up/lap)))
		}
		s.above = steel.Flexure(nil).Design
	}
	s.from = w.dowelsEnd(s.above, fc)
	w.alone = s
	return s
}

// dowelsEnd is the level above which the dowels give less than the section's
// own strength m: their share of fy falls to zero at their end. Below it their
// strength lies above the straight line between the joint and this level, and
// the moment of the soil below it, so that the two ends decide.
func (w *wall) dowelsEnd(m units.MomentPerLength, fc units.Stress) units.Length {
	d := w.dowel
	if d.absent || d.bar.Number == 0 {
		return 0
	}
	full := w.section(d.barSet, FaceA)
	full.Fc = fc
	need, ok := full.SteelFor(m)
	if !ok || need <= 0 || full.As <= 0 {
		return 0
	}
	share := float64(need / full.As)
	if share >= w.developed(fc) {
		return 0
	}
	ld := rebar.Development(d.bar, w.setting(d.barSet, fc), nil)
	return max(0, d.up-units.Length(share*ld.Inches()))
}

// standsAt reports whether the wall stands with nothing at its top, side A
// filled to a and side B to b, and what governs when it does not: bending and
// shear at the joint, the section above the dowels, sliding, overturning and
// bearing. No floor load; soil pushes at 1.6, soil that opposes counts 0.9 or
// 0.
func (w *wall) standsAt(s *standing, a, b units.Length) (string, bool) {
	if a <= 0 || (a <= b && !w.LowSideMayGo && w.Surcharge == (Surcharge{}) && !w.Water.Standing) {
		return "", true
	}
	low := w.lowFactor()
	m, v := w.cantileverAt(a, b, 0, low)
	if over(m, s.joint) {
		return "joint-bending", false
	}
	if !s.slabIn && over(v, s.jointShear) {
		return "joint-shear-friction", false
	}
	if over(v, s.section) {
		return "shear", false
	}
	above := m
	if s.from > 0 {
		above, _ = w.cantileverAt(a, b, s.from, low)
	}
	if over(above, s.above) {
		return "section-above-dowels", false
	}
	r, q := w.stands(ground{a: a, b: b, state: soil.Active, q: w.Surcharge, low: low}, nil)
	switch {
	case r.Overturned || over(w.ibc.StabilityFactor, r.OverturningFactor):
		return "overturning", false
	case !s.slabIn && over(w.ibc.StabilityFactor, r.SlidingFactor):
		return "sliding", false
	case q.Overturned || over(q.BearingMax, w.Footing.Bearing):
		return "bearing", false
	}
	return "", true
}

// cantileverAt is the factored moment and shear of the unbraced wall at level
// y: 1.6 on side A, low on side B.
func (w *wall) cantileverAt(a, b, y units.Length, low float64) (units.MomentPerLength, units.ForcePerLength) {
	var m, v float64
	var buf [6]soil.Block
	for _, p := range w.blocks(buf[:0], soil.Active, a, b, y, w.Surcharge) {
		f, h := p.Resultant()
		k := float64(f) * w.lf.Earth
		if p.Side == 'b' {
			k = -float64(f) * low
		}
		v += k
		m += k * float64(h-y)
	}
	return units.MomentPerLength(max(0, m)), units.ForcePerLength(max(0, v))
}

// highest finds how high side A may be filled with side B at b, up to most:
// upward foot by foot, for the fill passes through every height, and within
// the first foot that fails down to the whole inch.
func (w *wall) highest(b, most units.Length, fc units.Stress) (units.Length, string) {
	s := w.standingAt(fc)
	if b == 0 && s.scanned {
		return s.level, s.governs
	}
	level, governs := w.scan(s, b, most, w.standsAt)
	if level > b {
		if base, g := w.scan(s, b, level, w.baseAt); base < level {
			level, governs = base, g
		}
	}
	if b == 0 {
		s.level, s.governs, s.scanned = level, governs, true
	}
	return level, governs
}

// baseAt reports whether heel and toe carry the fill a beside b.
func (w *wall) baseAt(s *standing, a, b units.Length) (string, bool) {
	g := ground{a: a, b: b, state: soil.Active, q: w.Surcharge, low: w.lowFactor()}
	if w.heel() > 0 && !w.carries(w.heelOf(Unbraced, g, nil), w.heelBars, s.fc) {
		return "heel-flexure", false
	}
	if w.Footing.Toe > 0 && !w.carries(w.toeOf(Unbraced, g, nil), w.toeBars, s.fc) {
		return "toe-flexure", false
	}
	return "", true
}

// scan finds the last whole inch above b, up to most, at which ok holds.
func (w *wall) scan(s *standing, b, most units.Length, holds func(*standing, units.Length, units.Length) (string, bool)) (units.Length, string) {
	safe, fails, governs := b, units.Length(-1), ""
	outside := w.room
	w.room = outside.probe
	defer func() { w.room = outside }()
	for safe < most && fails < 0 {
		a := minLength(safe+units.Foot, most)
		w.room.clear()
		if g, ok := holds(s, a, b); ok {
			safe = a
		} else {
			fails, governs = a, g
		}
	}
	if fails < 0 {
		return most, ""
	}
	// Whole inches above safe, counted, so that rounding cannot hold it up.
	from, lo, hi := safe, 0, int(math.Ceil(float64(fails-safe)-1e-9))
	for hi-lo > 1 {
		mid := (lo + hi) / 2
		w.room.clear()
		if g, ok := holds(s, from+units.Length(mid), b); ok {
			lo = mid
		} else {
			hi, governs = mid, g
		}
	}
	return max(b, units.Length(math.Floor(float64(from)+float64(lo)+1e-9))), governs
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
