package rebar

import (
	"math"

	"standingbeam/calc/codes"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

var aci = codes.ACI318_19()

// Setting is what a development length depends on beside the bar. The bars are
// uncoated, ψe = 1.
type Setting struct {
	Fc, Fy units.Stress
	Lambda float64 // lightweight factor λ; 0 stands for 1, normal weight

	TopBar    bool // horizontal with more than 12 in of fresh concrete below
	Favorable bool // clear spacing ≥ 2 db and cover ≥ db, 25.4.2.3

	// Hooks, 25.4.3.2.
	SpacingSixDb   bool // spacing of the hooked bars ≥ 6 db
	SideCoverSixDb bool // side cover normal to the plane of the hook ≥ 6 db

	// Clear spacing of the bars and their cover, 0 = not known: read by
	// DevelopmentShortest only.
	Clear, Cover units.Length
}

// concrete returns f'c, λ ≤ 1 and λ√f'c with √f'c ≤ 100 psi (25.4.1.4), in psi.
func (s Setting) concrete() (fc, lambda, root float64) {
	fc, lambda = s.Fc.PSI(), min(s.Lambda, 1)
	if lambda == 0 {
		lambda = 1
	}
	return fc, lambda, lambda * min(math.Sqrt(fc), aci.RootLimit)
}

// most bounds the strengths, in psi, so that every length is finite.
const most = 1e6

// valid reports whether a length can be computed: positive strengths of this
// world.
func (s Setting) valid() bool {
	return s.Fc >= 1 && s.Fc <= most && s.Fy >= 1 && s.Fy <= most && (s.Lambda == 0 || s.Lambda >= 0.01)
}

// psiT returns ψt, Table 25.4.2.5.
func (s Setting) psiT() float64 {
	if s.TopBar {
		return aci.Bars.Top
	}
	return 1
}

// psiG returns ψg, Table 25.4.2.5: 1.0 up to Grade 60, 1.15 up to 80, else 1.3.
// A grade between two is taken as the higher.
func (s Setting) psiG() float64 {
	switch {
	case s.Fy <= 60*units.KSI:
		return 1
	case s.Fy <= 80*units.KSI:
		return aci.Bars.Grade80
	}
	return aci.Bars.Grade100
}

// divisor returns the number under fy in the table of 25.4.2.3: 25 and 20 in
// favourable surroundings for bars up to No. 6 and from No. 7, else 50/3 and
// 40/3.
func (s Setting) divisor(b Bar) (over, under float64) {
	over, under = 3, 50
	if b.Number >= 7 {
		under = 40
	}
	if s.Favorable {
		return 1, under / 2
	}
	return over, under
}

// straight returns the table's length before the 12 in minimum, in inches.
func straight(b Bar, s Setting) float64 {
	if !s.valid() {
		return 0
	}
	over, under := s.divisor(b)
	_, _, root := s.concrete()
	return over * s.Fy.PSI() * s.psiT() * s.psiG() / (under * root) * b.Diameter.Inches()
}

// Development returns the length ld over which a straight bar takes up its
// yield strength in tension,
//
//	ld = fy ψt ψe ψg/(25 λ √f'c) db   No. 6 and smaller, favourable
//	ld = fy ψt ψe ψg/(20 λ √f'c) db   No. 7 and larger, favourable
//	ld = 3 fy ψt ψe ψg/(50 λ √f'c) db and 3 fy ψt ψe ψg/(40 λ √f'c) db otherwise
//
// and at least 12 in, with fy and f'c in psi and db in inches. Favourable:
// clear spacing ≥ 2 db and cover ≥ db. It is 0 when the strengths are not
// positive.
//
// Source: ACI 318-19, 25.4.2.1, 25.4.2.3, Table 25.4.2.5. The row of No. 7 and
// larger, otherwise, is from memory.
func Development(b Bar, s Setting, w *working.Chain) units.Length {
	raw := straight(b, s)
	if raw == 0 {
		return 0
	}
	ld := max(raw, aci.Bars.Least.Inches())
	if w.On() {
		recordStraight(w, b, s, raw)
		w.Add("ld", "max(ldt; 12)", units.Of(ld, units.Size), "25.4.2.1", working.T("ldt", raw, units.Size))
	}
	return units.Length(ld)
}

// recordStraight writes the step of the table of 25.4.2.3.
func recordStraight(w *working.Chain, b Bar, s Setting, raw float64) {
	formula := [2][2]string{
		{"3 fy ψt ψe ψg/(50 λ √f'c) db", "fy ψt ψe ψg/(25 λ √f'c) db"},
		{"3 fy ψt ψe ψg/(40 λ √f'c) db", "fy ψt ψe ψg/(20 λ √f'c) db"},
	}
	row, column := 0, 0
	if b.Number >= 7 {
		row = 1
	}
	if s.Favorable {
		column = 1
	}
	fc, lambda, _ := s.concrete()
	w.Add("ldt", formula[row][column], units.Of(raw, units.Size), "25.4.2.3",
		working.T("fy", s.Fy, units.Strength), working.Number("ψt", s.psiT()), working.Number("ψe", 1),
		working.Number("ψg", s.psiG()), working.Number("λ", lambda), rootTerm(fc),
		working.T("db", b.Diameter, units.Size))
}

// rootTerm is the term f'c of a step that takes its root, held to the limit of
// 25.4.1.4.
func rootTerm(fc float64) working.Term {
	return working.T("f'c", min(fc, aci.RootLimit*aci.RootLimit), units.Strength)
}
