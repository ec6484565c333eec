package calc

import (
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

// analyse solves the strip of one stage at service and at factored level and
// records it. The axial couple is added where it adds to the span's moment
// only: an axial load never helps by its eccentricity.
func (w *wall) analyse(st Stage, pushes []Push, supports []statics.Support, couple, coupleU units.MomentPerLength) (*StageResult, bool) {
	sd, fd, ok := w.solve(pushes, supports, couple, coupleU)
	if !ok {
		w.leaveOpen("strip", st, units.Quantity{}, "5.3.1", note("strip-not-solved"))
		w.engineer("strip-not-solved")
		return nil, false
	}
	w.r.Stages = append(w.r.Stages, summary(st, pushes, sd, fd))
	return &w.r.Stages[len(w.r.Stages)-1], true
}

// solve solves the strip at service and at factored level.
func (w *wall) solve(pushes []Push, supports []statics.Support, couple, coupleU units.MomentPerLength) (sd, fd statics.Diagram, ok bool) {
	s := statics.Strip{Top: w.Height, EI: w.stiffness(), Supports: supports}
	f := s
	s.Loads, f.Loads = make([]statics.Load, 0, len(pushes)), make([]statics.Load, 0, len(pushes))
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
	return sd, fd, err1 == nil && err2 == nil
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
func footLevel(f Foot) units.Length {
	if f.Held == GroundOnly || f.SlabBase <= 6*units.Inch {
		return 0
	}
	return f.SlabBase + f.SlabThickness/2
}

func (w *wall) footLevel() units.Length { return footLevel(w.Foot) }

// heldSupports are the two supports of a wall held at level top.
func (w *wall) heldSupports(top units.Length) []statics.Support {
	foot := statics.Support{At: w.footLevel(), Kind: statics.Pinned}
	if w.Foot.Fixed {
		foot.Kind = statics.Fixed
	}
	return []statics.Support{foot, {At: top, Kind: statics.Pinned}}
}

var clampedFoot = []statics.Support{{At: 0, Kind: statics.Fixed}}

// axialCouples returns the service and the factored couple of the axial load
// about the wall's middle, 1.2 D + 1.6 L, positive for a load toward A.
func (w *wall) axialCouples() (s, u units.MomentPerLength) {
	e := -w.Axial.Eccentricity.Inches()
	d, l := float64(w.Axial.Dead), float64(w.Axial.Live)
	return units.MomentPerLength((d + l) * e), units.MomentPerLength((w.lf.Dead*d + w.lf.Live*l) * e)
}

// spanCouple is the couple where it adds tension on B in the span: a load
// toward A. One toward B is asked at the brace by itself.
func (w *wall) spanCouple() (s, u units.MomentPerLength) {
	if w.Axial.Eccentricity >= 0 {
		return 0, 0
	}
	return w.axialCouples()
}

// stemCouple is the couple where it adds tension on A at the foot of a free
// stem: a load toward B.
func (w *wall) stemCouple() (s, u units.MomentPerLength) {
	if w.Axial.Eccentricity <= 0 {
		return 0, 0
	}
	return w.axialCouples()
}

// held are the greatest reactions of a wall held at its top, over the stages
// with and without the axial load: its eccentricity never lowers one.
// pull is what the top must hold back, at service loads, where the load leans
// the wall into the ground.
type held struct{ top, topU, foot, footU, pull units.ForcePerLength }

func (w *wall) heldReactions(pushes []Push, supports []statics.Support) (h held) {
	s, u := w.axialCouples()
	for i, c := range [2][2]units.MomentPerLength{{0, 0}, {s, u}} {
		if i > 0 && c[0] == 0 {
			break
		}
		sd, fd, ok := w.solve(pushes, supports, c[0], c[1])
		if !ok {
			return h
		}
		sr, fr := sd.Reactions(), fd.Reactions()
		last := len(sr) - 1
		h.foot, h.footU = max(h.foot, sr[0].Force), max(h.footU, fr[0].Force)
		h.pull = max(h.pull, -sr[last].Force)
		h.top, h.topU = max(h.top, sr[last].Force), max(h.topU, fr[last].Force)
	}
	return h
}
