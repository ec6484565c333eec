package concrete

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// Shear returns the one-way shear strength without shear steel,
//
//	φVc = φ (8 λs λ ρw^(1/3) √f'c + Nu/(6 Ag)) bw d
//
// with √f'c ≤ 100 psi, Nu/(6 Ag) ≤ 0.05 f'c and Vc ≤ 5 λ √f'c bw d, in psi and
// inches; nu is the factored axial force, compression positive. λs = √(2/(1 +
// d/10)) ≤ 1 is the size effect, left out (λs = 1) where sizeEffect is false,
// as 13.2.6.2 allows for footings. A tension nu lowers Vc, not below zero.
//
// Source: ACI 318-19, Table 22.5.5.1(c), 22.5.5.1.1 to 22.5.5.1.3, 22.5.3.1.
func (s Section) Shear(nu units.ForcePerLength, sizeEffect bool, w *working.Chain) units.ForcePerLength {
	if !s.valid() || !(math.Abs(float64(nu)) <= farOff) {
		return 0
	}
	d := s.D.Inches()
	rho := float64(s.As) / d
	size := 1.0
	if sizeEffect {
		size = min(1, math.Sqrt(2/(1+d/10)))
	}
	axial := min(float64(nu)/(6*s.H.Inches()), 0.05*s.Fc.PSI())
	vc := (8*size*s.lambda()*math.Cbrt(rho)*s.root() + axial) * d
	vc = max(0, min(vc, 5*s.lambda()*s.root()*d))
	design := aci.PhiShear * vc
	if w.On() {
		s.recordShear(w, nu, sizeEffect, size, rho, vc)
	}
	return units.ForcePerLength(design)
}

// recordShear writes the steps of [Section.Shear].
func (s Section) recordShear(w *working.Chain, nu units.ForcePerLength, sizeEffect bool, size, rho, vc float64) {
	w.Add("ρw", "As/(b d)", units.Of(rho, units.None), "",
		working.T("As", s.As, units.SteelArea), foot(), working.T("d", s.D, units.Size))
	if sizeEffect {
		w.Add("λs", "min(1; √(2/(1 + d/10)))", units.Of(size, units.None), "22.5.5.1.3", working.T("d", s.D, units.Size))
	}
	fc := min(s.Fc.PSI(), aci.RootLimit*aci.RootLimit)
	formula := "min(8 λs λ ρw^(1/3) √f'c b d; 5 λ √f'c b d)"
	terms := []working.Term{
		working.Number("λs", size), working.Number("λ", s.lambda()), working.Number("ρw", rho),
		working.T("f'c", fc, units.Strength), foot(), working.T("d", s.D, units.Size)}
	if nu < 0 || nu > 0 {
		formula = "max(0; min((8 λs λ ρw^(1/3) √f'c + min(Nu/(6 Ag); 0.05 f'c)) b d; 5 λ √f'c b d))"
		terms = append(terms, working.T("Nu", nu, units.LineForce), working.T("Ag", s.H, units.SteelArea))
	}
	w.Add("Vc", formula, units.Of(vc, units.LineForce), "22.5.5.1(c)", terms...)
	w.Add("φVc", "φ Vc", units.Of(aci.PhiShear*vc, units.LineForce), "21.2.1",
		working.Number("φ", aci.PhiShear), working.T("Vc", vc, units.LineForce))
}

// ShearFriction returns the strength of a joint in shear friction with bars
// straight across it,
//
//	φVn = φ min(μ Avf fy; cap b h),  fy ≤ 60,000 psi
//
// where cap is the least of 0.2 f'c, 480 + 0.08 f'c and 1,600 psi on a face
// roughened to 1/4 in, and the lesser of 0.2 f'c and 800 psi on another. The
// bars are developed on both sides; where they are not, avf is what is. It is
// zero for a value that is not positive.
//
// Source: ACI 318-19, 22.9.4.2, Table 22.9.4.4, 22.9.1.3.
func ShearFriction(avf units.AreaPerLength, fy units.Stress, mu float64, h units.Length, fc units.Stress, roughened bool, w *working.Chain) units.ForcePerLength {
	steel := min(fy, aci.FrictionFy)
	if !(avf > 0 && avf <= most && steel > 0 && mu > 0 && mu <= 10 && h > 0 && h <= most && fc > 0 && fc <= most) {
		return 0
	}
	formula, limit := "min(μ Avf fy; min(0.2 f'c; 800) b h)", min(0.2*fc.PSI(), 800)
	if roughened {
		formula = "min(μ Avf fy; min(0.2 f'c; 480 + 0.08 f'c; 1600) b h)"
		limit = min(0.2*fc.PSI(), 480+0.08*fc.PSI(), 1600)
	}
	vn := min(mu*float64(avf)*steel.PSI(), limit*h.Inches())
	design := aci.PhiShear * vn
	if w.On() {
		w.Add("Vn", formula, units.Of(vn, units.LineForce), "22.9.4.2",
			working.Number("μ", mu), working.T("Avf", avf, units.SteelArea), working.T("fy", steel, units.Strength),
			working.T("f'c", fc, units.Strength), foot(), working.T("h", h, units.Size))
		w.Add("φVn", "φ Vn", units.Of(design, units.LineForce), "21.2.1",
			working.Number("φ", aci.PhiShear), working.T("Vn", vn, units.LineForce))
	}
	return units.ForcePerLength(design)
}
