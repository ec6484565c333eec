package plain

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// DesignShear returns the one-way shear strength
//
//	φVn = φ 4/3 λ √f'c bw h
//
// with f'c in psi and bw, h in inches.
//
// Source: ACI 318-19, Table 14.5.5.1(a).
func (s Section) DesignShear(w *working.Chain) units.ForcePerLength {
	if !s.valid() {
		return 0
	}
	vn := aci.PlainShear * s.lambda() * math.Sqrt(s.Fc.PSI()) * s.H.Inches()
	design := s.phi() * vn
	if w.On() {
		w.Add("Vn", "4/3 λ √f'c b h", units.Of(vn, units.LineForce), "14.5.5.1",
			working.Number("λ", s.lambda()), working.T("f'c", s.Fc, units.Strength),
			working.T("b", 12*units.Inch, units.Size), working.T("h", s.H, units.Size))
		w.Add("φVn", "φ Vn", units.Of(design, units.LineForce), "21.2.1",
			working.Number("φ", s.phi()), working.T("Vn", vn, units.LineForce))
	}
	return units.ForcePerLength(design)
}
