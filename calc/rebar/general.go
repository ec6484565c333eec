package rebar

import (
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// DevelopmentGeneral returns ld by the general equation,
//
//	ld = 3/40 fy/(λ √f'c) ψt ψe ψs ψg/min((cb + Ktr)/db; 2.5) db ≥ 12 in
//
// where cb is the smaller of the distance from the bar's centre to the nearest
// face and half the spacing, and Ktr = 40 Atr/(s n), which may be taken as 0.
// All in inches and psi. It is 0 when a value is not positive (cb under 0.01 in).
//
// Source: ACI 318-19, Eq. (25.4.2.4a), Table 25.4.2.5.
func DevelopmentGeneral(b Bar, s Setting, cb, ktr units.Length, w *working.Chain) units.Length {
	if !s.valid() || !(cb >= 0.01) || !(ktr >= 0) || b.Diameter <= 0 {
		return 0
	}
	fc, lambda, root := s.concrete()
	db := b.Diameter.Inches()
	psiS := 1.0
	if b.Number <= 6 {
		psiS = aci.Bars.SmallSize
	}
	hold := min((cb+ktr).Inches()/db, 2.5)
	raw := 3.0 / 40 * s.Fy.PSI() / root * s.psiT() * psiS * s.psiG() / hold * db
	ld := max(raw, aci.Bars.Least.Inches())
	if w.On() {
		w.Add("ldt", "3/40 fy/(λ √f'c) ψt ψe ψs ψg/min((cb + Ktr)/db; 2.5) db", units.Of(raw, units.Size), "25.4.2.4",
			working.T("fy", s.Fy, units.Strength), working.Number("λ", lambda), rootTerm(fc),
			working.Number("ψt", s.psiT()), working.Number("ψe", 1), working.Number("ψs", psiS),
			working.Number("ψg", s.psiG()), working.T("cb", cb, units.Size), working.T("Ktr", ktr, units.Size),
			working.T("db", b.Diameter, units.Size))
		w.Add("ld", "max(ldt; 12)", units.Of(ld, units.Size), "25.4.2.1", working.T("ldt", raw, units.Size))
	}
	return units.Length(ld)
}

// DevelopmentShortest returns the smaller of [Development] and of
// [DevelopmentGeneral] with the cb that the clear spacing and the cover of s
// give and Ktr = 0. Where these are not known it is [Development].
//
// Source: ACI 318-19, 25.4.2.1(a), which allows either.
func DevelopmentShortest(b Bar, s Setting, w *working.Chain) units.Length {
	table := Development(b, s, nil)
	if !(s.Clear > 0 && s.Cover > 0) {
		return Development(b, s, w)
	}
	cb := min(s.Cover+b.Diameter/2, (s.Clear+b.Diameter)/2)
	if general := DevelopmentGeneral(b, s, cb, 0, nil); general > 0 && general < table {
		return DevelopmentGeneral(b, s, cb, 0, w)
	}
	return Development(b, s, w)
}
