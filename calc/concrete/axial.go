package concrete

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// FlexureWithAxial returns the moment strength about mid-depth beside the
// factored axial force pu (compression positive), by strain compatibility: the
// neutral axis is where φ Pn = pu, with
//
//	Pn = 0.85 f'c a b − As fs,  Mn = 0.85 f'c a b (h/2 − a/2) + As fs (d − h/2)
//
// a = β1 c ≤ h, fs = Es 0.003 (d − c)/c within ±fy. Compressed bars count less
// the 0.85 f'c of the concrete that they displace. It is zero where pu is more than φ 0.80 Po in
// compression or φ As fy in tension. For pu = 0 it is [Section.Flexure].
//
// Source: ACI 318-19, 22.2, 22.4.2.1, Table 21.2.2.
func (s Section) FlexureWithAxial(pu units.ForcePerLength, w *working.Chain) Strength {
	if !s.valid() || !(math.Abs(float64(pu)) <= farOff) {
		return Strength{}
	}
	c, ok := s.axisAt(float64(pu))
	if !ok {
		return Strength{}
	}
	f := s.forces(c)
	r := Strength{
		Nominal: units.MomentPerLength(max(0, f.moment)), Phi: s.phi(f.strain), Strain: f.strain,
		TensionControlled: s.tensionControlled(f.strain),
	}
	r.Design = units.MomentPerLength(r.Phi * float64(r.Nominal))
	if w.On() {
		s.recordAxial(w, r, f, pu, c)
	}
	return r
}

// internal is the state of a section at one depth of the neutral axis, per
// inch of width.
type internal struct {
	a, strain, fs float64 // in, –, psi
	axial, moment float64 // lb/in compression, lb·in/in about mid-depth
}

// forces returns the state at the neutral axis c > 0, in inches.
func (s Section) forces(c float64) internal {
	h, d, block := s.H.Inches(), s.D.Inches(), 0.85*s.Fc.PSI()
	var f internal
	f.a = min(beta1(s.Fc)*c, h)
	f.strain = aci.ConcreteStrain * (d - c) / c
	f.fs = min(max(f.strain*aci.SteelModulus.PSI(), -s.Fy.PSI()), s.Fy.PSI())
	if f.fs < 0 {
		f.fs = min(0, f.fs+block) // less the concrete displaced
	}
	pull := float64(s.As) * f.fs
	f.axial = block*f.a - pull
	f.moment = block*f.a*(h-f.a)/2 + pull*(d-h/2)
	return f
}

// axisAt returns the neutral axis c at which φ Pn = pu, in inches. φ Pn rises
// steadily with c, so that halving finds it; a tension-controlled section with
// yielding bars, the usual one, has a closed form.
func (s Section) axisAt(pu float64) (float64, bool) {
	as, fy, block := float64(s.As), s.Fy.PSI(), 0.85*s.Fc.PSI()
	if pu <= -aci.PhiFlexure*as*fy || pu > aci.PhiCompression*s.axialCap() {
		return 0, false
	}
	c := (pu/aci.PhiFlexure + as*fy) / block / beta1(s.Fc)
	if f := s.forces(c); f.a < s.H.Inches() && s.tensionControlled(f.strain) {
		return c, true
	}
	low, high := 0.0, 100*s.H.Inches()
	for range 80 {
		c = (low + high) / 2
		f := s.forces(c)
		if s.phi(f.strain)*f.axial < pu {
			low = c
		} else {
			high = c
		}
	}
	return high, true
}

// axialCap returns Pn,max = 0.80 Po, Po = 0.85 f'c (Ag − Ast) + fy Ast, in
// lb/in.
//
// Source: ACI 318-19, Table 22.4.2.1, 22.4.2.2.
func (s Section) axialCap() float64 {
	block := 0.85 * s.Fc.PSI()
	return aci.AxialCap * (block*(s.H.Inches()-float64(s.As)) + s.Fy.PSI()*float64(s.As))
}

// recordAxial writes the steps of [Section.FlexureWithAxial]: the depth of the
// block in balance with φ, and the strain that this φ belongs to.
func (s Section) recordAxial(w *working.Chain, r Strength, f internal, pu units.ForcePerLength, c float64) {
	steel := s.steelTerm(f.fs)
	name := steel.Symbol
	w.Add("a", "(Pu/φ + As "+name+")/(0.85 f'c b)", units.Of(f.a, units.Size), "22.2.2.4.1",
		working.T("Pu", pu, units.LineForce), working.Number("φ", r.Phi), working.T("As", s.As, units.SteelArea),
		steel, working.T("f'c", s.Fc, units.Strength), foot())
	if f.a < s.H.Inches() {
		s.recordAxis(w, f.a, c)
	}
	s.recordStrain(w, r, c)
	w.Add("Mn", "max(0; 0.85 f'c a b (h − a)/2 + As "+name+" (d − h/2))", units.Of(r.Nominal, units.LineMoment), "22.3.1.1",
		working.T("f'c", s.Fc, units.Strength), working.T("a", f.a, units.Size), foot(), working.T("h", s.H, units.Size),
		working.T("As", s.As, units.SteelArea), steel, working.T("d", s.D, units.Size))
	s.recordDesign(w, r)
}
