package concrete

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// MagnifiedMoment returns the factored moment of a wall held at top and foot,
// with the effect of its slenderness,
//
//	Mc = δ M2,  δ = Cm/(1 − Pu/(0.75 Pc)) ≥ 1,  Pc = π² EI/(k lu)²
//
// with k = 1 and Cm = 1, EI = 0.4 Ec Ig/(1 + βdns), and M2 not below M2,min =
// Pu (0.6 + 0.03 h), Pu in compression, h in inches. sustained is βdns, the
// sustained part of the factored axial force, 0 to 1. It is false, with the
// moment not magnified, where the wall is too slender: Pu ≥ 0.75 Pc, or δ
// above 1.4 (6.2.5.3). Without compression it is mu.
//
// Source: ACI 318-19, 6.6.4.4.2, 6.6.4.4.4(a), 6.6.4.5.1 to 6.6.4.5.4, 6.2.5.3.
func MagnifiedMoment(mu units.MomentPerLength, pu units.ForcePerLength, fc units.Stress, h, lu units.Length, sustained float64, w *working.Chain) (units.MomentPerLength, bool) {
	m := math.Abs(float64(mu))
	if !(pu > 0) {
		return units.MomentPerLength(m), !math.IsNaN(m) && !math.IsNaN(float64(pu))
	}
	if !(fc > 0 && h > 0 && lu > 0 && sustained >= 0 && !math.IsNaN(m) && !math.IsInf(m, 0)) {
		return units.MomentPerLength(m), false
	}
	ig := Section{H: h}.GrossInertia()
	ec := ModulusOfElasticity(fc)
	ei := 0.4 * ec.PSI() * ig / (1 + sustained)
	pc := math.Pi * math.Pi * ei / (lu.Inches() * lu.Inches())
	least := float64(pu) * (0.6 + 0.03*h.Inches())
	m2 := max(m, least)
	part := float64(pu) / (aci.PhiStability * pc)
	ok := part < 1
	delta := 1.0
	if ok {
		delta = 1 / (1 - part)
		ok = delta <= aci.SecondOrderLimit
	}
	if !ok {
		return units.MomentPerLength(m2), false
	}
	mc := units.MomentPerLength(delta * m2)
	if w.On() {
		slender{m, float64(pu), float64(least), m2, ig, ei, pc, delta, float64(mc), sustained, ec, h, lu}.record(w)
	}
	return mc, true
}

// slender holds the numbers of [MagnifiedMoment] for its working.
type slender struct {
	m, pu, least, m2  float64
	ig, ei, pc, delta float64
	mc, sustained     float64
	ec                units.Stress
	h, lu             units.Length
}

// record writes the steps.
func (s slender) record(w *working.Chain) {
	w.Add("Ig", "b h^3/12", units.Of(s.ig, units.Inertia), "", foot(), working.T("h", s.h, units.Size))
	w.Add("EI", "0.4 Ec Ig/(1 + βdns)", units.Of(s.ei, units.Stiffness), "6.6.4.4.4(a)",
		working.T("Ec", s.ec, units.Strength), working.T("Ig", s.ig, units.Inertia), working.Number("βdns", s.sustained))
	w.Add("Pc", "π^2 EI/lu^2", units.Of(s.pc, units.LineForce), "6.6.4.4.2",
		working.Number("π", math.Pi), working.T("EI", s.ei, units.Stiffness), working.T("lu", s.lu, units.Level))
	w.Add("δ", "1/(1 − Pu/(0.75 Pc))", units.Of(s.delta, units.None), "6.6.4.5.2",
		working.T("Pu", s.pu, units.LineForce), working.T("Pc", s.pc, units.LineForce))
	w.Add("M2", "max(Mu; Pu (0.6 + 0.03 h))", units.Of(s.m2, units.LineMoment), "6.6.4.5.4",
		working.T("Mu", s.m, units.LineMoment), working.T("Pu", s.pu, units.LineForce), working.T("h", s.h, units.Size))
	w.Add("Mc", "δ M2", units.Of(s.mc, units.LineMoment), "6.6.4.5.1",
		working.Number("δ", s.delta), working.T("M2", s.m2, units.LineMoment))
}
