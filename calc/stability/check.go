package stability

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// Weight is a vertical force with its arm from the outer edge of the toe.
type Weight struct {
	Name  string
	Force units.ForcePerLength
	Arm   units.Length
}

// Push is a horizontal force with its height above the bottom of the footing.
type Push struct {
	Name   string
	Force  units.ForcePerLength
	Height units.Length
}

// Body is wall, footing and the soil that stands on the footing. Weights press
// down, Uplift lifts. Drive pushes toward the toe, Resist the other way (soil
// on the toe's side). Passive is what the ground before the footing gives and
// Adhesion what the ground below it gives beside friction; both count against
// sliding only.
type Body struct {
	Width    units.Length
	Weights  []Weight
	Drive    []Push
	Resist   []Push
	Uplift   []Weight
	Friction float64
	Adhesion units.ForcePerLength
	Passive  units.ForcePerLength
	// MostFriction is what friction gives at most, on the length of the base
	// that is pressed; 0 = without limit.
	MostFriction units.Stress
}

// Unlimited stands for a factor where nothing pushes, and for the bearing in
// psi of a body that does not stand: a number so great that it is no value.
const Unlimited = 1e6

// Result is the state of the body. Resultant is the distance from the toe's
// edge at which the resultant meets the ground, Eccentricity its distance from
// the middle, positive toward the toe. Contact is the length of the base that
// is pressed; BearingToe and BearingHeel are the pressures at the two edges.
type Result struct {
	Normal            units.ForcePerLength
	Overturning       units.MomentPerLength
	Righting          units.MomentPerLength
	OverturningFactor float64
	Driving           units.ForcePerLength
	SlidingResistance units.ForcePerLength
	SlidingFactor     float64
	Resultant         units.Length
	Eccentricity      units.Length
	Contact           units.Length
	BearingToe        units.Stress
	BearingHeel       units.Stress
	BearingMax        units.Stress
	Overturned        bool // the resultant leaves the base, or nothing presses it
	MiddleThird       bool // the whole base is pressed
}

// Workings are the chains the steps are written to, each of which may be nil.
type Workings struct {
	Overturning, Sliding, Resultant, Bearing *working.Chain
}

// Check returns the state of body b at service loads.
//
//	FS overturning = Mr/Mo,  Mr = Σ W x + Σ Resist y,  Mo = Σ Drive y + Σ U x
//	FS sliding = (min(μ N; most · contact) + adhesion + passive + Σ Resist)/Σ Drive
//	N = Σ W − Σ U
//
// with moments about the outer edge of the toe. Uplift stands with the loads
// that overturn, which gives the smaller factor. The resultant and the bearing
// are those of [bearing]. The factors are at most [Unlimited]. The caller
// validates: all numbers finite, Width > 0.
//
// Source: statics of a rigid body; the factors 1.5 asked for are those of IBC
// 2021 1807.2.3.
func Check(b Body, w *Workings) Result {
	var r Result
	var down, up, push, back, righting, overturning float64
	for _, v := range b.Weights {
		down += float64(v.Force)
		righting += float64(v.Force) * v.Arm.Inches()
	}
	for _, v := range b.Uplift {
		up += float64(v.Force)
		overturning += float64(v.Force) * v.Arm.Inches()
	}
	for _, v := range b.Drive {
		push += float64(v.Force)
		overturning += float64(v.Force) * v.Height.Inches()
	}
	for _, v := range b.Resist {
		back += float64(v.Force)
		righting += float64(v.Force) * v.Height.Inches()
	}
	n := down - up
	r.Normal = units.ForcePerLength(n)
	r.Righting, r.Overturning = units.MomentPerLength(righting), units.MomentPerLength(overturning)
	r.OverturningFactor = factor(righting, overturning)
	bearing(&r, b.Width.Inches())
	grip := float64(b.Passive) + back
	if n > 0 {
		grip += float64(b.friction(&r) + b.Adhesion)
	}
	r.Driving, r.SlidingResistance = units.ForcePerLength(push), units.ForcePerLength(grip)
	r.SlidingFactor = factor(grip, push)
	if w != nil {
		w.record(&b, &r)
	}
	return r
}

// friction is what friction gives under a body that is pressed down.
func (b *Body) friction(r *Result) units.ForcePerLength {
	f := units.ForcePerLength(b.Friction) * r.Normal
	if b.MostFriction > 0 {
		f = min(f, units.ForcePerLength(float64(b.MostFriction)*r.Contact.Inches()))
	}
	return f
}

// factor returns resisting over driving, at most Unlimited, at least 0.
func factor(resisting, driving float64) float64 {
	if !(driving > 0) {
		return Unlimited
	}
	return max(0, min(Unlimited, resisting/driving))
}

// bearing finds where the resultant meets the base of width B and how the base
// presses on the ground,
//
//	x = (Mr − Mo)/N,  e = B/2 − x
//	|e| ≤ B/6:  q = N/B (1 ± 6 e/B)
//	else:       contact 3 x (3 (B − x) toward the heel), q = 2 N/contact
//
// linear over the contact, with no tension between footing and ground. With
// the resultant outside the base it is overturned and the bearing is without
// limit.
//
// Source: statics of a rigid base on ground without tension, as in any
// textbook of foundations.
func bearing(r *Result, width float64) {
	n := float64(r.Normal)
	x := 0.0
	if n > 0 {
		x = float64(r.Righting-r.Overturning) / n
	}
	e := width/2 - x
	r.Resultant, r.Eccentricity = units.Length(x), units.Length(e)
	if !(n > 0 && x > 0 && x < width) {
		r.Overturned = true
		r.BearingMax = Unlimited
		if x < width {
			r.BearingToe = Unlimited
		} else {
			r.BearingHeel = Unlimited
		}
		return
	}
	if math.Abs(e) <= width/6*(1+1e-12) {
		r.MiddleThird = true
		r.Contact = units.Length(width)
		r.BearingToe = units.Stress(n / width * (1 + 6*e/width))
		r.BearingHeel = units.Stress(n / width * (1 - 6*e/width))
	} else {
		contact := 3 * min(x, width-x)
		r.Contact = units.Length(contact)
		q := units.Stress(min(Unlimited, 2*n/contact))
		if e > 0 {
			r.BearingToe = q
		} else {
			r.BearingHeel = q
		}
	}
	r.BearingToe, r.BearingHeel = max(0, r.BearingToe), max(0, r.BearingHeel)
	r.BearingMax = max(r.BearingToe, r.BearingHeel)
}
