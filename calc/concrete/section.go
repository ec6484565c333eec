// Package concrete computes reinforced sections by ACI 318-19, chapters 7, 11,
// 22 and 24, for a strip of wall, slab or footing one inch wide with one layer
// of bars.
//
// Moments are positive when they pull the face at which the bars count; axial
// force is positive in compression.
package concrete

import (
	"math"

	"standingbeam/calc/codes"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

var aci = codes.ACI318_19()

// Section is a rectangular section with one layer of bars. D is the distance
// from the compressed face to the centre of the bars, wherever they are.
type Section struct {
	Fc, Fy units.Stress
	H, D   units.Length
	As     units.AreaPerLength
	Lambda float64 // lightweight factor λ; 0 stands for 1, normal weight
}

// most bounds strengths, in psi, and lengths, in inches; farOff the actions, in
// lb and lb·in per inch: so that every result is finite.
const (
	most   = 1e6
	farOff = 1e12
)

// valid reports whether the section has any strength: positive values of this
// world and the bars inside the concrete.
func (s Section) valid() bool {
	return s.Fc >= 1 && s.Fc <= most && s.Fy >= 1 && s.Fy <= most && s.D >= 0.01 && s.H >= s.D && s.H <= most &&
		s.As >= 1e-9 && s.As <= most && s.Lambda >= 0
}

// lambda returns λ ≤ 1.
func (s Section) lambda() float64 {
	if s.Lambda == 0 {
		return 1
	}
	return min(s.Lambda, 1)
}

// root returns √f'c ≤ 100 psi, 22.5.3.1, in psi.
func (s Section) root() float64 {
	return min(math.Sqrt(s.Fc.PSI()), aci.RootLimit)
}

// beta1 returns β1, the depth of the stress block over that of the neutral
// axis: 0.85 up to f'c = 4,000 psi, 0.05 less for each 1,000 psi above, and
// not below 0.65.
//
// Source: ACI 318-19, Table 22.2.2.4.3.
func beta1(fc units.Stress) float64 {
	return max(0.65, 0.85-0.05*max(0, fc.PSI()-4000)/1000)
}

// yieldStrain returns εty = fy/Es.
//
// Source: ACI 318-19, 21.2.2.1.
func (s Section) yieldStrain() float64 {
	return s.Fy.PSI() / aci.SteelModulus.PSI()
}

// phi returns the strength reduction factor at the net tensile strain et: 0.90
// from εty + 0.003 on, 0.65 up to εty, and a straight line between.
//
// Source: ACI 318-19, Table 21.2.2.
func (s Section) phi(et float64) float64 {
	part := (et - s.yieldStrain()) / aci.TensionStrain
	part = min(max(part, 0), 1)
	return aci.PhiCompression + (aci.PhiFlexure-aci.PhiCompression)*part
}

// tensionControlled reports et ≥ εty + 0.003, Table 21.2.2.
func (s Section) tensionControlled(et float64) bool {
	return et >= s.yieldStrain()+aci.TensionStrain
}

// foot is b, the 12 in of the strip that the steps of a working are for.
func foot() working.Term { return working.T("b", 12*units.Inch, units.Size) }
