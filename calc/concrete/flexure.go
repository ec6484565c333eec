package concrete

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// Strength is the flexural strength of a section. Strain is the net tensile
// strain εt of the bars. A section that is not TensionControlled is not
// permitted in a slab or beam with little axial force (7.3.3.1), whatever its
// strength.
type Strength struct {
	Nominal, Design   units.MomentPerLength
	Phi, Strain       float64
	TensionControlled bool
}

// Flexure returns the flexural strength without axial force,
//
//	a = As fy/(0.85 f'c b),  Mn = As fy (d − a/2)
//
// with φ by the strain εt = 0.003 (d − c)/c, c = a/β1. Where the bars would not
// yield (εt < εty) their stress follows from the strain instead of fy. It is
// zero for a section without bars.
//
// Source: ACI 318-19, 22.2, 22.3.1.1, Table 21.2.2.
func (s Section) Flexure(w *working.Chain) Strength {
	if !s.valid() {
		return Strength{}
	}
	as, d, block := float64(s.As), s.D.Inches(), 0.85*s.Fc.PSI()
	fs := s.Fy.PSI()
	a := as * fs / block
	c := a / beta1(s.Fc)
	et := aci.ConcreteStrain * (d - c) / c
	if et < s.yieldStrain() {
		c = s.unyieldedAxis()
		a = beta1(s.Fc) * c
		et = aci.ConcreteStrain * (d - c) / c
		fs = et * aci.SteelModulus.PSI()
	}
	mn := as * fs * (d - a/2)
	r := Strength{
		Nominal: units.MomentPerLength(mn), Phi: s.phi(et), Strain: et,
		TensionControlled: s.tensionControlled(et),
	}
	r.Design = units.MomentPerLength(r.Phi * mn)
	if w.On() {
		s.recordFlexure(w, r, fs, a, c)
	}
	return r
}

// unyieldedAxis returns the depth c of the neutral axis in inches where the
// bars stay elastic: As Es 0.003 (d − c)/c = 0.85 f'c β1 c.
func (s Section) unyieldedAxis() float64 {
	pull := float64(s.As) * aci.SteelModulus.PSI() * aci.ConcreteStrain
	push := 0.85 * s.Fc.PSI() * beta1(s.Fc)
	// push c² + pull c − pull d = 0
	half := pull / (2 * push)
	return math.Sqrt(half*half+2*half*s.D.Inches()) - half
}

// recordFlexure writes the steps of [Section.Flexure].
func (s Section) recordFlexure(w *working.Chain, r Strength, fs, a, c float64) {
	steel := s.steelTerm(fs)
	name := steel.Symbol
	w.Add("a", "As "+name+"/(0.85 f'c b)", units.Of(a, units.Size), "22.2.2.4.1",
		working.T("As", s.As, units.SteelArea), steel, working.T("f'c", s.Fc, units.Strength), foot())
	s.recordAxis(w, a, c)
	s.recordStrain(w, r, c)
	w.Add("Mn", "As "+name+" (d − a/2)", units.Of(r.Nominal, units.LineMoment), "22.3.1.1",
		working.T("As", s.As, units.SteelArea), steel, working.T("d", s.D, units.Size), working.T("a", a, units.Size))
	s.recordDesign(w, r)
}

// steelTerm is the stress of the bars: fy where they yield, else fs.
func (s Section) steelTerm(fs float64) working.Term {
	if fs < s.Fy.PSI() {
		return working.T("fs", fs, units.Strength)
	}
	return working.T("fy", s.Fy, units.Strength)
}

// recordAxis writes the step from the stress block to the neutral axis.
func (s Section) recordAxis(w *working.Chain, a, c float64) {
	w.Add("c", "a/β1", units.Of(c, units.Size), "22.2.2.4.1",
		working.T("a", a, units.Size), working.Number("β1", beta1(s.Fc)))
}

// recordStrain writes the steps from the neutral axis to φ.
func (s Section) recordStrain(w *working.Chain, r Strength, c float64) {
	w.Add("εt", "0.003 (d − c)/c", units.Of(r.Strain, units.None), "22.2.1.2",
		working.T("d", s.D, units.Size), working.T("c", c, units.Size))
	w.Add("φ", "max(0.65; min(0.90; 0.65 + 0.25 (εt − εty)/0.003))", units.Of(r.Phi, units.None), "21.2.2",
		working.Number("εt", r.Strain), working.Number("εty", s.yieldStrain()))
}

// recordDesign writes the last step, φMn.
func (s Section) recordDesign(w *working.Chain, r Strength) {
	w.Add("φMn", "φ Mn", units.Of(r.Design, units.LineMoment), "21.2.2",
		working.Number("φ", r.Phi), working.T("Mn", r.Nominal, units.LineMoment))
}

// SteelFor returns the least steel with φMn ≥ mu at φ = 0.90, in closed form:
//
//	As = (0.85 f'c b/fy) (d − √(d² − 2 Mu/(φ 0.85 f'c b)))
//
// The steel that s holds is not read. It is false where no tension-controlled
// section of this depth is strong enough.
//
// Source: ACI 318-19, 22.2, solved for As; 7.3.3.1.
func (s Section) SteelFor(mu units.MomentPerLength) (units.AreaPerLength, bool) {
	s.As = 1
	if !s.valid() || math.IsNaN(float64(mu)) {
		return 0, false
	}
	if mu <= 0 {
		return 0, true
	}
	block, d := 0.85*s.Fc.PSI(), s.D.Inches()
	under := d*d - 2*float64(mu)/(aci.PhiFlexure*block)
	if !(under >= 0) {
		return 0, false
	}
	a := 2 * float64(mu) / (aci.PhiFlexure * block) / (d + math.Sqrt(under)) // d − √under without cancellation
	if et := aci.ConcreteStrain * (d*beta1(s.Fc) - a) / a; !s.tensionControlled(et) {
		return 0, false
	}
	return units.AreaPerLength(a * block / s.Fy.PSI()), true
}
