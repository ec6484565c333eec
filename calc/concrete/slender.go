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
// sustained part of the factored axial force, 0 to 1. It is false, with M2 not
// magnified, where the wall is too slender: Pu ≥ 0.75 Pc, or δ above 1.4
// (6.2.5.3). Without compression it is mu. The moment returned is positive.
//
// Source: ACI 318-19, 6.6.4.4.2, 6.6.4.4.4(a), 6.6.4.5.1 to 6.6.4.5.4, 6.2.5.3.
func MagnifiedMoment(mu units.MomentPerLength, pu units.ForcePerLength, fc units.Stress, h, lu units.Length, sustained float64, w *working.Chain) (units.MomentPerLength, bool) {
	m := math.Abs(float64(mu))
	if !(m <= farOff) || math.IsNaN(float64(pu)) {
		return 0, false
	}
	if pu <= 0 {
		return units.MomentPerLength(m), true
	}
	if !(fc >= 1 && fc <= most && h >= 0.01 && h <= most && lu >= 0.01 && lu <= most && sustained >= 0 && sustained <= 1 && pu <= farOff) {
		return units.MomentPerLength(m), false
	}
	s := slender{m: m, pu: float64(pu), ec: ModulusOfElasticity(fc), h: h, lu: lu, sustained: sustained}
	s.ig = Section{H: h}.GrossInertia()
	s.ei = 0.4 * s.ec.PSI() * s.ig / (1 + sustained)
	s.pc = math.Pi * math.Pi * s.ei / (lu.Inches() * lu.Inches())
	s.m2 = max(m, s.pu*(0.6+0.03*h.Inches()))
	if s.pu < aci.PhiStability*s.pc {
		s.delta = 1 / (1 - s.pu/(aci.PhiStability*s.pc))
	}
	s.record(w)
	if !(s.delta > 0 && s.delta <= aci.SecondOrderLimit) {
		return units.MomentPerLength(s.m2), false
	}
	return units.MomentPerLength(s.delta * s.m2), true
}

// slender holds the numbers of [MagnifiedMoment]. delta is 0 where the wall
// buckles.
type slender struct {
	m, pu, m2, ig, ei, pc, delta, sustained float64

	ec    units.Stress
	h, lu units.Length
}

// record writes the steps, as far as they go.
func (s slender) record(w *working.Chain) {
	if !w.On() {
		return
	}
	w.Add("Ig", "b h^3/12", units.Of(s.ig, units.Inertia), "", foot(), working.T("h", s.h, units.Size))
	w.Add("EI", "0.4 Ec Ig/(1 + βdns)", units.Of(s.ei, units.Stiffness), "6.6.4.4.4(a)",
		working.T("Ec", s.ec, units.Strength), working.T("Ig", s.ig, units.Inertia), working.Number("βdns", s.sustained))
	w.Add("Pc", "π^2 EI/lu^2", units.Of(s.pc, units.LineForce), "6.6.4.4.2",
		working.Number("π", math.Pi), working.T("EI", s.ei, units.Stiffness), working.T("lu", s.lu, units.Level))
	w.Add("M2", "max(Mu; Pu (0.6 + 0.03 h))", units.Of(s.m2, units.LineMoment), "6.6.4.5.4",
		working.T("Mu", s.m, units.LineMoment), working.T("Pu", s.pu, units.LineForce), working.T("h", s.h, units.Size))
	if !(s.delta > 0) {
		return
	}
	w.Add("δ", "1/(1 − Pu/(0.75 Pc))", units.Of(s.delta, units.None), "6.6.4.5.2",
		working.T("Pu", s.pu, units.LineForce), working.T("Pc", s.pc, units.LineForce))
	w.Add("Mc", "δ M2", units.Of(s.delta*s.m2, units.LineMoment), "6.6.4.5.1",
		working.Number("δ", s.delta), working.T("M2", s.m2, units.LineMoment))
}
