package rebar

import (
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// LapB returns the length of a class B tension lap, 1.3 ld and at least 12 in,
// where ld is taken without its own minimum of 12 in. It is 0 when the
// strengths are not positive.
//
// Source: ACI 318-19, Table 25.5.2.1.
func LapB(b Bar, s Setting, w *working.Chain) units.Length {
	raw := straight(b, s)
	if raw == 0 {
		return 0
	}
	lap := max(aci.Bars.LapB*raw, aci.Bars.Least.Inches())
	if w.On() {
		recordStraight(w, b, s, raw)
		w.Add("lst", "max(1.3 ldt; 12)", units.Of(lap, units.Size), "25.5.2.1", working.T("ldt", raw, units.Size))
	}
	return units.Length(lap)
}

// NoncontactGapLimit returns the greatest distance across, centre to centre,
// between lapped bars that do not touch: the smaller of lap/5 and 6 in.
//
// Source: ACI 318-19, 25.5.1.3; the same in IRC 2021 R404.1.3.3.7.5.
func NoncontactGapLimit(lap units.Length) units.Length {
	return max(0, min(lap/5, 6*units.Inch))
}

// CompressionDevelopment returns the length over which a straight bar takes up
// its yield strength in compression,
//
//	ldc = max(fy ψr/(50 λ √f'c) db; 0.0003 fy ψr db; 8 in)
//
// with ψr = 1, no confining ties. It is 0 when the strengths are not positive.
//
// Source: ACI 318-19, 25.4.9.2.
func CompressionDevelopment(b Bar, s Setting, w *working.Chain) units.Length {
	if !s.valid() {
		return 0
	}
	fc, lambda, root := s.concrete()
	db, fy := b.Diameter.Inches(), s.Fy.PSI()
	ldc := max(fy/(50*root)*db, 0.0003*fy*db, 8)
	if w.On() {
		w.Add("ldc", "max(fy ψr/(50 λ √f'c) db; 0.0003 fy ψr db; 8)", units.Of(ldc, units.Size), "25.4.9.2",
			working.T("fy", s.Fy, units.Strength), working.Number("ψr", 1), working.Number("λ", lambda), rootTerm(fc),
			working.T("db", b.Diameter, units.Size))
	}
	return units.Length(ldc)
}

// CompressionLap returns the length of a compression lap,
//
//	lsc = max(0.0005 fy db; 12 in)          fy ≤ 60,000 psi
//	lsc = max((0.0009 fy − 24) db; 12 in)   above, up to 80,000 psi
//
// a third longer when f'c < 3,000 psi. It is 0 when the strengths are not
// positive.
//
// Source: ACI 318-19, 25.5.5.1; the expression above 60,000 psi is from memory.
func CompressionLap(b Bar, s Setting, w *working.Chain) units.Length {
	if !s.valid() {
		return 0
	}
	db, fy := b.Diameter.Inches(), s.Fy.PSI()
	formula, lsc := "max(0.0005 fy db; 12)", max(0.0005*fy*db, 12)
	if fy > 60000 {
		formula, lsc = "max((0.0009 fy − 24) db; 12)", max((0.0009*fy-24)*db, 12)
	}
	if s.Fc < 3000*units.PSI {
		formula, lsc = "4/3 "+formula, lsc*4/3
	}
	if w.On() {
		w.Add("lsc", formula, units.Of(lsc, units.Size), "25.5.5.1",
			working.T("fy", s.Fy, units.Strength), working.T("db", b.Diameter, units.Size))
	}
	return units.Length(lsc)
}
