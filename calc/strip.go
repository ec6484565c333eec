package calc

import (
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

// analyse solves the strip of one stage at service and at factored level and
// records it. The axial couple is added where it adds to the span's moment
// only: an axial load never helps by its eccentricity.
func (w *wall) analyse(st Stage, pushes []Push, supports []statics.Support, couple, coupleU units.MomentPerLength) (*StageResult, bool) {
	s := statics.Strip{Top: w.Height, EI: w.stiffness(), Supports: supports}
	f := s
	for _, p := range pushes {
		sf := 1.0
		if p.Side == 'b' && p.Factor == 0 {
			sf = 0
		}
		s.Loads = append(s.Loads, p.Load(sf))
		f.Loads = append(f.Loads, p.Load(p.Factor))
	}
	if couple != 0 {
		s.Couples = []statics.Couple{{At: w.Brace, M: couple}}
		f.Couples = []statics.Couple{{At: w.Brace, M: coupleU}}
	}
	sd, err1 := statics.Solve(s)
	fd, err2 := statics.Solve(f)
	if err1 != nil || err2 != nil {
		w.engineer("strip-not-solved")
		return nil, false
	}
	w.r.Stages = append(w.r.Stages, summary(st, pushes, sd, fd))
	return &w.r.Stages[len(w.r.Stages)-1], true
}

// summary picks reactions and extremes out of the two diagrams.
func summary(st Stage, pushes []Push, sd, fd statics.Diagram) StageResult {
	r := StageResult{Name: st, Pushes: pushes, Service: sd, Factored: fd}
	fr := fd.Reactions()
	for i, a := range sd.Reactions() {
		r.Reactions = append(r.Reactions, Reaction{At: a.At, Restraint: a.Kind, Service: a.Force, Factored: fr[i].Force,
			ServiceMoment: a.Moment, FactoredMoment: fr[i].Moment})
	}
	atB, mB := fd.MaxMoment()
	atA, mA := fd.MinMoment()
	b := MomentPeak{At: atB, Factored: mB, Service: sd.Moment(atB), TensionFace: FaceB}
	if sa, sm := sd.MaxMoment(); near(sa, atB) {
		b.Service = sm
	}
	a := MomentPeak{At: atA, Factored: -mA, Service: -sd.Moment(atA), TensionFace: FaceA}
	if b.Factored >= a.Factored {
		r.Moments = []MomentPeak{b, a}
	} else {
		r.Moments = []MomentPeak{a, b}
	}
	if len(r.Moments) > 1 && r.Moments[1].Factored <= 1e-9 {
		r.Moments = r.Moments[:1]
	}
	atV, v := fd.MaxShear()
	_, sv := sd.MaxShear()
	r.Shears = []ShearPeak{{At: atV, Service: absForce(sv), Factored: absForce(v)}}
	return r
}

func absForce(v units.ForcePerLength) units.ForcePerLength {
	if v < 0 {
		return -v
	}
	return v
}

// peak returns the factored moment with tension on face f.
func (s *StageResult) peak(f Face) MomentPeak {
	for _, m := range s.Moments {
		if m.TensionFace == f {
			return m
		}
	}
	return MomentPeak{TensionFace: f}
}

// lowFactor is the factor on soil that opposes: 0.9, or 0 where it may be dug
// away (ACI 318-19 5.3.8).
func (w *wall) lowFactor() float64 {
	if w.LowSideMayGo {
		return 0
	}
	return w.lf.EarthResists
}

// footLevel is the level at which a slab holds the foot: the footing top for a
// slab within 6 in of it, else the slab's mid-depth.
func (w *wall) footLevel() units.Length {
	if w.Foot.Held == GroundOnly || w.Foot.SlabBase <= 6*units.Inch {
		return 0
	}
	return w.Foot.SlabBase + w.Foot.SlabThickness/2
}

// heldSupports are the two supports of a wall held at level top.
func (w *wall) heldSupports(top units.Length) []statics.Support {
	foot := statics.Support{At: w.footLevel(), Kind: statics.Pinned}
	if w.Foot.Fixed {
		foot.Kind = statics.Fixed
	}
	return []statics.Support{foot, {At: top, Kind: statics.Pinned}}
}

var clampedFoot = []statics.Support{{At: 0, Kind: statics.Fixed}}

// axialCouple is the couple of the axial load about the wall's middle, service
// and factored. Only a load that stands toward A adds tension on B in the
// span; one toward B is checked at the brace by itself.
func (w *wall) axialCouple() (s, u units.MomentPerLength) {
	e := w.Axial.Eccentricity
	if e >= 0 {
		return 0, 0
	}
	d, l := float64(w.Axial.Dead), float64(w.Axial.Live)
	s = units.MomentPerLength(-(d + l) * e.Inches())
	u = units.MomentPerLength(-(w.lf.Dead*d + w.lf.Live*l) * e.Inches())
	return s, u
}
