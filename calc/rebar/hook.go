package rebar

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// Hook returns the length ldh over which a standard hook takes up the yield
// strength of its bar in tension, from the critical section to the outside of
// the bend,
//
//	ldh = max(fy ψe ψr ψo ψc/(55 λ √f'c) db^1.5; 8 db; 6 in)
//
// with fy and f'c in psi and db in inches. ψr is 1.0 for bars at least 6 db
// apart, else 1.6; ψo is 1.0 for a side cover of at least 6 db, else 1.25; ψc
// = f'c/15,000 + 0.6 below 6,000 psi, else 1.0. It is 0 when the strengths are
// not positive.
//
// Source: ACI 318-19, 25.4.3.1, Table 25.4.3.2.
func Hook(b Bar, s Setting, w *working.Chain) units.Length {
	if !s.valid() || b.Diameter <= 0 {
		return 0
	}
	fc, lambda, root := s.concrete()
	psiR, psiO := aci.Bars.HookClose, aci.Bars.HookThin
	if s.SpacingSixDb {
		psiR = 1
	}
	if s.SideCoverSixDb {
		psiO = 1
	}
	psiC := 1.0
	if fc < 6000 {
		psiC = fc/15000 + 0.6
	}
	db := b.Diameter.Inches()
	raw := s.Fy.PSI() * psiR * psiO * psiC / (55 * root) * db * math.Sqrt(db)
	ldh := max(raw, aci.Bars.HookLeastB*db, aci.Bars.HookLeast.Inches())
	if w.On() {
		if fc < 6000 {
			w.Add("ψc", "f'c/15000 + 0.6", units.Of(psiC, units.None), "25.4.3.2", working.T("f'c", s.Fc, units.Strength))
		}
		w.Add("ldh", "max(fy ψe ψr ψo ψc/(55 λ √f'c) db^1.5; 8 db; 6)", units.Of(ldh, units.Size), "25.4.3.1",
			working.T("fy", s.Fy, units.Strength), working.Number("ψe", 1), working.Number("ψr", psiR),
			working.Number("ψo", psiO), working.Number("ψc", psiC), working.Number("λ", lambda), rootTerm(fc),
			working.T("db", b.Diameter, units.Size))
	}
	return units.Length(ldh)
}
