package calc

import (
	"math"

	"standingbeam/calc/concrete"
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// dowelSet is the bars from the footing into the wall with how far they are
// developed on both sides of the joint.
type dowelSet struct {
	barSet
	up, down units.Length // into the wall; to the outside of the hook
	ld, ldh  units.Length // needed for full fy: straight in the wall, hook in the footing
	lap      units.Length // class B lap with the verticals
	absent   bool
}

// footingCover is the cover of concrete cast against ground, ACI 318-19 Table
// 20.5.1.3.1.
const footingCover = 3 * units.Inch

// setting returns what development of a bar of this wall depends on.
func (w *wall) setting(b barSet, fc units.Stress) rebar.Setting {
	cover := w.coverOf(b)
	return rebar.Setting{Fc: fc, Fy: w.Material.Fy, Lambda: 1,
		Favorable:    cover >= b.bar.Diameter && b.spacing >= 3*b.bar.Diameter,
		SpacingSixDb: b.spacing >= 6*b.bar.Diameter,
		// The hook lies across the footing; beside it, along the wall, the
		// concrete goes on for more than six diameters.
		SideCoverSixDb: true}
}

// hookLength is the development length of a standard hook of the wall's bars
// in the footing.
func (w *wall) hookLength(b rebar.Bar, spacing units.Length) units.Length {
	return rebar.Hook(b, w.setting(barSet{bar: b, spacing: spacing, face: Centre}, w.Material.Fc), nil)
}

// hookRoom is the embedment that the footing offers a hook; 0 without one.
func (w *wall) hookRoom() units.Length {
	if !w.Footing.Given {
		return 0
	}
	return max(0, w.Footing.Thickness-footingCover)
}

// setDowels fixes the dowels: the person's; else those of a reinforced wall
// match its verticals (16.3.4.2), on their face where the wall is free, at the
// centre where it is braced and the gap to the verticals permits a lap
// (25.5.1.3); a plain wall gets No. 4 at 24 in (IRC 2021 R404.1.3.3.7.8).
func (w *wall) setDowels() {
	d := &w.dowel
	if w.built != nil {
		*d = w.built.dowel
		if !d.absent {
			w.developDowels()
		}
		return
	}
	switch {
	case w.Dowels.Fixed && w.Dowels.None:
		d.absent = true
		return
	case w.Dowels.Fixed:
		d.bar, _ = rebar.ByNumber(w.Dowels.Size)
		d.spacing, d.face, d.fixed = w.Dowels.Spacing, w.Dowels.Position, true
		if d.face == FaceUnset {
			d.face = Centre
		}
		d.up = w.Dowels.Up
	case w.vert.none():
		d.bar, _ = rebar.ByNumber(4)
		d.spacing, d.face, d.up = 24*units.Inch, Centre, 24*units.Inch
	default:
		base := w.lapped()
		d.bar, d.spacing, d.face = base.bar, base.spacing, base.face
		if base.face == FaceB && !w.Foot.Fixed {
			d.face = Centre
		}
	}
	w.developDowels()
	if !d.fixed && d.face == Centre && !w.vert.none() && w.vert.face == FaceB {
		gap := w.depth(w.vert, FaceB) - w.Thickness/2
		if gap > rebar.NoncontactGapLimit(d.lap) {
			d.face = FaceB
			w.developDowels()
		}
	}
}

// lapped is the layer of verticals that the dowels match.
func (w *wall) lapped() barSet {
	if w.vertA.face == FaceA {
		return w.vertA
	}
	return w.vert
}

// developDowels fills in the lengths of the dowels at their place.
func (w *wall) developDowels() {
	d := &w.dowel
	s := w.setting(d.barSet, w.Material.Fc)
	d.ld, d.ldh = rebar.Development(d.bar, s, nil), rebar.Hook(d.bar, s, nil)
	d.lap = w.lapAt(w.Material.Fc, nil)
	if !d.fixed && !w.vert.none() && w.built == nil {
		d.up = units.Length(math.Ceil(d.lap.Inches() - 1e-9))
	}
	if d.fixed && d.up == 0 {
		d.up = units.Length(math.Ceil(d.lap.Inches() - 1e-9))
	}
	d.down = w.hookRoom()
}

// developed is the share of fy that the dowels reach at the joint at concrete
// strength fc: min(1, embedment/ld, embedment/ldh) at the weaker side. The
// straight side is in the wall, the hook in the footing.
func (w *wall) developed(fc units.Stress) float64 {
	d := w.dowel
	if d.absent || d.bar.Number == 0 || d.down <= 0 {
		return 0
	}
	ld, ldh := d.ld, d.ldh
	if fc != w.Material.Fc {
		s := w.setting(d.barSet, fc)
		ld, ldh = rebar.Development(d.bar, s, nil), rebar.Hook(d.bar, s, nil)
	}
	return math.Min(1, math.Min(float64(d.up/ld), float64(d.down/ldh)))
}

// jointSection is the strip at the footing joint: only the dowels pass, at the
// strength that their embedment gives.
func (w *wall) jointSection(f Face, fc units.Stress) concrete.Section {
	sec := w.section(w.dowel.barSet, f)
	sec.Fc = fc
	sec.As = units.AreaPerLength(float64(sec.As) * w.developed(fc))
	return sec
}

// jointMoment is φMn of the joint for tension on face f. Plain concrete passes
// no bending through a joint (14.2.2.1, 14.4.1.3): without dowels it is zero.
func (w *wall) jointMoment(f Face, fc units.Stress, c *working.Chain) units.MomentPerLength {
	sec := w.jointSection(f, fc)
	if sec.As <= 0 {
		return 0
	}
	return sec.Flexure(c).Design
}

// jointShear is φVn of shear friction at the joint, ACI 318-19 22.9.4, with
// the dowels at their developed strength.
func (w *wall) jointShear(fc units.Stress, c *working.Chain) units.ForcePerLength {
	share := w.developed(fc)
	if share <= 0 {
		return 0
	}
	mu := w.aci.AsCastFriction
	if w.Roughened {
		mu = w.aci.RoughenedFriction
	}
	avf := units.AreaPerLength(float64(w.dowel.area()) * share)
	return concrete.ShearFriction(avf, w.Material.Fy, mu, w.Thickness, fc, w.Roughened, c)
}
