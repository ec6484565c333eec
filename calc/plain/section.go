// Package plain computes the strength of concrete without reinforcement, ACI
// 318-19 chapter 14, for a strip of wall or footing one inch wide.
//
// Moments are positive whichever face they pull; axial force is positive in
// compression.
package plain

import (
	"math"

	"standingbeam/calc/codes"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

var aci = codes.ACI318_19()

// Section is a solid rectangular section of plain concrete.
type Section struct {
	Fc     units.Stress
	H      units.Length // thickness that counts
	Lambda float64      // lightweight factor λ; 0 stands for 1, normal weight
	Phi    float64      // strength reduction factor; 0 stands for that of the code, 0.60
}

// AgainstSoil returns the thickness that counts of concrete cast against soil,
// 2 in less than specified, as of a footing. A formed wall counts in full.
//
// Source: ACI 318-19, 14.5.1.7.
func AgainstSoil(specified units.Length) units.Length {
	return max(0, specified-aci.PlainSoilLoss)
}

// most bounds strength, in psi, and thickness, in inches, so that every result
// is finite.
const most = 1e6

// valid reports whether the section has any strength: positive values of this
// world.
func (s Section) valid() bool {
	return s.Fc >= 1 && s.Fc <= most && s.H >= 0.01 && s.H <= most && s.Lambda >= 0 && s.Phi >= 0
}

// lambda returns λ ≤ 1.
func (s Section) lambda() float64 {
	if s.Lambda == 0 {
		return 1
	}
	return min(s.Lambda, 1)
}

// phi returns the strength reduction factor, at most 1.
func (s Section) phi() float64 {
	if s.Phi == 0 {
		return aci.PhiPlain
	}
	return min(s.Phi, 1)
}

// Modulus returns the elastic section modulus Sm = h²/6 in in³ per inch of
// width.
func (s Section) Modulus() float64 {
	if !(s.H > 0 && s.H <= most) {
		return 0
	}
	return s.H.Inches() * s.H.Inches() / 6
}

// tension returns 5 λ √f'c, the modulus of rupture for strength, in psi.
func (s Section) tension() float64 {
	return aci.PlainTension * s.lambda() * math.Sqrt(s.Fc.PSI())
}

// NominalMoment returns the nominal flexural strength
//
//	Mn = min(5 λ √f'c Sm; 0.85 f'c Sm),  Sm = b h²/6
//
// with f'c in psi and Sm in in³. It is zero for a section without positive
// strength and thickness.
//
// Source: ACI 318-19, Eqs. (14.5.2.1a), (14.5.2.1b).
func (s Section) NominalMoment(w *working.Chain) units.MomentPerLength {
	if !s.valid() {
		return 0
	}
	sm := s.Modulus()
	mn := units.MomentPerLength(min(s.tension()*sm, aci.PlainCompression*s.Fc.PSI()*sm))
	if w.On() {
		s.recordModulus(w)
		w.Add("Mn", "min(5 λ √f'c Sm; 0.85 f'c Sm)", units.Of(mn, units.LineMoment), "14.5.2.1",
			working.Number("λ", s.lambda()), working.T("f'c", s.Fc, units.Strength), working.T("Sm", sm, units.Modulus))
	}
	return mn
}

// recordModulus writes the step of the section modulus on a strip of 12 in.
func (s Section) recordModulus(w *working.Chain) {
	w.Add("Sm", "b h^2/6", units.Of(s.Modulus(), units.Modulus), "",
		working.T("b", 12*units.Inch, units.Size), working.T("h", s.H, units.Size))
}

// DesignMoment returns φ Mn, see [Section.NominalMoment].
//
// Source: ACI 318-19, 14.5.2.1, 21.2.1.
func (s Section) DesignMoment(w *working.Chain) units.MomentPerLength {
	if !s.valid() {
		return 0
	}
	mn := s.NominalMoment(w)
	design := units.MomentPerLength(s.phi() * float64(mn))
	if w.On() {
		w.Add("φMn", "φ Mn", units.Of(design, units.LineMoment), "21.2.1",
			working.Number("φ", s.phi()), working.T("Mn", mn, units.LineMoment))
	}
	return design
}
