package concrete

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// RecordInertia writes the steps of [Section.EffectiveInertia] under the
// service moment ma, to stand in the working of a deflection.
//
// Source: ACI 318-19, 19.2.2.1, 19.2.3.1, Table 24.2.3.5.
func (s Section) RecordInertia(ma units.MomentPerLength, w *working.Chain) {
	if !w.On() || !s.valid() || !(math.Abs(float64(ma)) <= farOff) {
		return
	}
	m := units.MomentPerLength(math.Abs(float64(ma)))
	ig, mcr := s.GrossInertia(), s.CrackingMoment()
	w.Add("Ig", "b h^3/12", units.Of(ig, units.Inertia), "", foot(), working.T("h", s.H, units.Size))
	w.Add("Mcr", "7.5 λ √f'c b h^2/6", units.Of(mcr, units.LineMoment), "24.2.3.5",
		working.Number("λ", s.lambda()), working.T("f'c", s.Fc, units.Strength), foot(), working.T("h", s.H, units.Size))
	if float64(m) <= 2.0/3*float64(mcr) {
		w.Add("Ie", "Ig", units.Of(ig, units.Inertia), "24.2.3.5", working.T("Ig", ig, units.Inertia))
		return
	}
	n := aci.SteelModulus.PSI() / ModulusOfElasticity(s.Fc).PSI()
	icr := s.CrackedInertia()
	w.Add("n", "Es/(57000 √f'c)", units.Of(n, units.None), "19.2.2.1",
		working.T("Es", aci.SteelModulus, units.Strength), working.T("f'c", s.Fc, units.Strength))
	w.Add("kd", "√((n As/b)^2 + 2 n As d/b) − n As/b", units.Of(s.crackedAxis(), units.Size), "",
		working.Number("n", n), working.T("As", s.As, units.SteelArea), foot(), working.T("d", s.D, units.Size))
	w.Add("Icr", "b kd^3/3 + n As (d − kd)^2", units.Of(icr, units.Inertia), "",
		foot(), working.T("kd", s.crackedAxis(), units.Size), working.Number("n", n),
		working.T("As", s.As, units.SteelArea), working.T("d", s.D, units.Size))
	w.Add("Ie", "min(Ig; Icr/(1 − (2/3 Mcr/Ma)^2 (1 − min(1; Icr/Ig))))", units.Of(s.EffectiveInertia(ma), units.Inertia), "24.2.3.5",
		working.T("Icr", icr, units.Inertia), working.T("Mcr", mcr, units.LineMoment),
		working.T("Ma", m, units.LineMoment), working.T("Ig", ig, units.Inertia))
}
