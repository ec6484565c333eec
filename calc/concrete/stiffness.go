package concrete

import (
	"math"

	"standingbeam/calc/units"
)

// positive returns v, and 0 for what is not a positive number of this world.
func positive(v float64) float64 {
	if v > 0 && v <= most {
		return v
	}
	return 0
}

// ModulusOfElasticity returns Ec = 57,000 √f'c for normal weight concrete, in
// psi.
//
// Source: ACI 318-19, 19.2.2.1(b).
func ModulusOfElasticity(fc units.Stress) units.Stress {
	return units.Stress(57000 * math.Sqrt(positive(fc.PSI())))
}

// Rupture returns the modulus of rupture fr = 7.5 λ √f'c in psi; λ = 0 stands
// for 1.
//
// Source: ACI 318-19, Eq. (19.2.3.1).
func Rupture(fc units.Stress, lambda float64) units.Stress {
	return units.Stress(7.5 * Section{Lambda: positive(lambda)}.lambda() * math.Sqrt(positive(fc.PSI())))
}

// CrackingMoment returns Mcr = fr Ig/yt = fr h²/6.
//
// Source: ACI 318-19, Eq. (24.2.3.5).
func (s Section) CrackingMoment() units.MomentPerLength {
	h := positive(s.H.Inches())
	return units.MomentPerLength(Rupture(s.Fc, s.Lambda).PSI() * h * h / 6)
}

// GrossInertia returns Ig = h³/12 in in⁴ per inch of width, the steel left out.
func (s Section) GrossInertia() float64 {
	h := positive(s.H.Inches())
	return h * h * h / 12
}

// CrackedInertia returns Icr in in⁴ per inch of width: of the compressed
// concrete and n = Es/Ec times the bars, about the neutral axis kd where
//
//	kd²/2 = n As (d − kd),  Icr = kd³/3 + n As (d − kd)²
//
// It is zero without bars.
//
// Source: mechanics of the cracked, elastic section.
func (s Section) CrackedInertia() float64 {
	if !s.valid() {
		return 0
	}
	kd := s.crackedAxis()
	return kd*kd*kd/3 + s.transformed()*(s.D.Inches()-kd)*(s.D.Inches()-kd)
}

// transformed returns n As, the bars as concrete, in in²/in.
func (s Section) transformed() float64 {
	return aci.SteelModulus.PSI() / ModulusOfElasticity(s.Fc).PSI() * float64(s.As)
}

// crackedAxis returns kd, the depth of the neutral axis of the cracked, elastic
// section, in inches.
func (s Section) crackedAxis() float64 {
	steel := s.transformed()
	return math.Sqrt(steel*steel+2*steel*s.D.Inches()) - steel
}

// EffectiveInertia returns Ie in in⁴ per inch of width under the service moment
// ma: Ig up to (2/3) Mcr, and above
//
//	Ie = Icr/(1 − ((2/3) Mcr/Ma)² (1 − Icr/Ig))
//
// It is never more than Ig, and zero where a section without bars cracks.
//
// Source: ACI 318-19, Table 24.2.3.5.
func (s Section) EffectiveInertia(ma units.MomentPerLength) float64 {
	ig := s.GrossInertia()
	level := 2.0 / 3 * float64(s.CrackingMoment())
	m := math.Abs(float64(ma))
	if m <= level || math.IsNaN(m) {
		return ig
	}
	icr := min(s.CrackedInertia(), ig)
	if icr <= 0 {
		return 0
	}
	part := level / m
	return min(ig, icr/(1-part*part*(1-icr/ig)))
}

// LongTermFactor returns λΔ = ξ/(1 + 50 ρ') with ρ' = 0, the deflection that a
// sustained load adds over the months, as a multiple of the immediate one: 1.0
// at 3 months, 1.2 at 6, 1.4 at 12, and 2.0 from there to 5 years and more. A
// time between two rows takes the later one.
//
// Source: ACI 318-19, Eq. (24.2.4.1.1), Table 24.2.4.1.3.
func LongTermFactor(months float64) float64 {
	switch {
	case months <= 0:
		return 0
	case months <= 3:
		return 1.0
	case months <= 6:
		return 1.2
	case months <= 12:
		return 1.4
	}
	return 2.0
}
