package plain

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// NoStrength is the ratio returned where a section has no strength at all
// against what acts on it: finite, and far above 1.
const NoStrength = 1e6

// farOff bounds the actions, in lb and lb·in per inch, so that every result is
// finite. What is beyond it has no strength against it.
const farOff = 1e12

// DesignMomentWithAxial returns the moment that the tension face carries beside
// the factored axial force pu,
//
//	M = (φ 5 λ √f'c + Pu/Ag) Sm
//
// with stresses in psi and Sm in in³. A tension pu lowers it; it is never below
// zero. For pu = 0 it is [Section.DesignMoment] (where f'c ≥ 35 psi, so that
// the tension face governs). The compression face is a check of its own, see
// [Section.Interaction].
//
// Source: ACI 318-19, 14.5.4.1(a): Mu/Sm − Pu/Ag ≤ φ 5 λ √f'c.
func (s Section) DesignMomentWithAxial(pu units.ForcePerLength, w *working.Chain) units.MomentPerLength {
	if !s.valid() || !(math.Abs(float64(pu)) <= farOff) {
		return 0
	}
	sm := s.Modulus()
	m := units.MomentPerLength(max(0, (s.phi()*s.tension()+float64(pu)/s.H.Inches())*sm))
	if w.On() {
		s.recordModulus(w)
		s.recordArea(w)
		w.Add("φMn", "max(0; (φ 5 λ √f'c + Pu/Ag) Sm)", units.Of(m, units.LineMoment), "14.5.4.1",
			working.Number("φ", s.phi()), working.Number("λ", s.lambda()), working.T("f'c", s.Fc, units.Strength),
			working.T("Pu", pu, units.LineForce), working.T("Ag", s.H, units.SteelArea), working.T("Sm", sm, units.Modulus))
	}
	return m
}

// recordArea writes the step of the gross area of a strip of 12 in.
func (s Section) recordArea(w *working.Chain) {
	w.Add("Ag", "b h", units.Of(s.H, units.SteelArea), "",
		working.T("b", 12*units.Inch, units.Size), working.T("h", s.H, units.Size))
}

// TensionStress returns Mu/Sm − Pu/Ag, the stress of the tension face, which is
// to be compared with φ 5 λ √f'c; positive in tension.
//
// Source: ACI 318-19, 14.5.4.1(a).
func (s Section) TensionStress(mu units.MomentPerLength, pu units.ForcePerLength) units.Stress {
	if !s.valid() {
		return 0
	}
	m, p := math.Abs(float64(mu)), float64(pu)
	if !(m <= farOff) {
		m = farOff
	}
	if !(math.Abs(p) <= farOff) {
		p = -farOff
	}
	return units.Stress(m/s.Modulus() - p/s.H.Inches())
}

// TensionLimit returns φ 5 λ √f'c, see [Section.TensionStress].
func (s Section) TensionLimit() units.Stress {
	if !s.valid() {
		return 0
	}
	return units.Stress(s.phi() * s.tension())
}

// AxialStrength returns the design strength of a wall of clear height lc under
// axial compression,
//
//	φPn = φ 0.60 f'c Ag (1 − (lc/(32 h))^2)
//
// which is zero from lc = 32 h on.
//
// Source: ACI 318-19, Eq. (14.5.3.1).
func (s Section) AxialStrength(lc units.Length, w *working.Chain) units.ForcePerLength {
	if !s.valid() || !(lc >= 0 && lc <= farOff) {
		return 0
	}
	slender := lc.Inches() / (32 * s.H.Inches())
	pn := max(0, aci.PlainAxial*s.Fc.PSI()*s.H.Inches()*(1-slender*slender))
	design := s.phi() * pn
	if w.On() {
		s.recordArea(w)
		w.Add("Pn", "max(0; 0.60 f'c Ag (1 − (lc/(32 h))^2))", units.Of(pn, units.LineForce), "14.5.3.1",
			working.T("f'c", s.Fc, units.Strength), working.T("Ag", s.H, units.SteelArea),
			working.T("lc", lc, units.Level), working.T("h", s.H, units.Size))
		w.Add("φPn", "φ Pn", units.Of(design, units.LineForce), "21.2.1",
			working.Number("φ", s.phi()), working.T("Pn", pn, units.LineForce))
	}
	return units.ForcePerLength(design)
}

// Interaction returns the use of the compression face under the factored
// moment mu and axial force pu of a wall of clear height lc,
//
//	Mu/(φ Mn) + Pu/(φ Pn) ≤ 1
//
// with Mn = 0.85 f'c Sm, the strength of that face (14.5.2.1b), and Pn of
// [Section.AxialStrength]. A tension pu counts as zero. Where the section has
// no strength it is [NoStrength].
//
// Source: ACI 318-19, 14.5.4.1(b). Mn of the compression face alone as in HUD,
// Residential Structural Design Guide, 2000, Example 4.3; else judgement.
func (s Section) Interaction(mu units.MomentPerLength, pu units.ForcePerLength, lc units.Length, w *working.Chain) float64 {
	if !s.valid() || math.IsNaN(float64(mu)) || math.IsNaN(float64(pu)) {
		return NoStrength
	}
	m, p := math.Abs(float64(mu)), max(0, float64(pu))
	sm := s.Modulus()
	mn := aci.PlainCompression * s.Fc.PSI() * sm
	var pn float64 // φPn
	if p > 0 {
		if pn = float64(s.AxialStrength(lc, w)); pn <= 0 {
			return NoStrength
		}
	}
	use := m / (s.phi() * mn)
	if p > 0 {
		use += p / pn
	}
	if !(use < NoStrength) {
		return NoStrength
	}
	if w.On() {
		s.recordInteraction(w, m, mn, p, pn, use)
	}
	return use
}

// recordInteraction writes the steps of the compression face.
func (s Section) recordInteraction(w *working.Chain, m, mn, p, pn, use float64) {
	s.recordModulus(w)
	w.Add("Mn", "0.85 f'c Sm", units.Of(mn, units.LineMoment), "14.5.2.1",
		working.T("f'c", s.Fc, units.Strength), working.T("Sm", s.Modulus(), units.Modulus))
	formula, terms := "Mu/(φ Mn)", []working.Term{
		working.T("Mu", m, units.LineMoment), working.Number("φ", s.phi()), working.T("Mn", mn, units.LineMoment)}
	if p > 0 {
		formula += " + Pu/φPn"
		terms = append(terms, working.T("Pu", p, units.LineForce), working.T("φPn", pn, units.LineForce))
	}
	w.Add("use", formula, units.Of(use, units.None), "14.5.4.1", terms...)
}

// LeastMoment returns the moment of the least eccentricity, 0.10 h, of an axial
// force: the wall is designed for at least this moment.
//
// Source: ACI 318-19, 14.4.2.1.
func (s Section) LeastMoment(pu units.ForcePerLength) units.MomentPerLength {
	if !s.valid() || !(pu > 0) {
		return 0
	}
	return units.MomentPerLength(aci.PlainEccentricity * s.H.Inches() * float64(pu))
}
