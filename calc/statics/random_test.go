package statics

import (
	"math/rand/v2"

	"standingbeam/calc/units"
)

// random draws a strip that is held: one to five supports of all kinds at
// least a twentieth of the height apart, and any loads.
func random(r *rand.Rand) Strip {
	top := 24 + 200*r.Float64()
	s := Strip{Top: units.Length(top), EI: 1e5 + 1e8*r.Float64()}
	level := func() units.Length { return units.Length(float64(r.IntN(21)) / 20 * top) }
	between := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	for range r.IntN(4) {
		a, b := level(), level()
		if a > b {
			a, b = b, a
		}
		if a < b {
			s.Loads = append(s.Loads, Load{a, b, units.Stress(between(-3, 3)), units.Stress(between(-3, 3))})
		}
	}
	for range r.IntN(3) {
		s.Points = append(s.Points, Point{level(), units.ForcePerLength(between(-50, 50))})
	}
	for range r.IntN(3) {
		s.Couples = append(s.Couples, Couple{level(), units.MomentPerLength(between(-500, 500))})
	}
	n := 1 + r.IntN(5)
	for _, i := range r.Perm(21)[:n] {
		p := Support{At: units.Length(float64(i) / 20 * top), Kind: Restraint(r.IntN(3))}
		if p.Kind == Spring {
			p.Stiffness = units.Stress(s.EI / (top * top * top) * between(0.1, 1000))
		}
		s.Supports = append(s.Supports, p)
	}
	if n == 1 {
		s.Supports[0].Kind = Fixed
	}
	return s
}

// sizes are the magnitudes that errors of a strip are measured against.
type sizes struct{ force, moment, slope, deflection float64 }

// size adds up all that acts, the reactions too, without regard to sign.
func size(s Strip, d Diagram) (z sizes) {
	top := s.Top.Inches()
	abs := func(v float64) float64 { return max(v, -v) }
	for _, l := range s.Loads {
		z.force += (abs(l.AtFrom.PSI()) + abs(l.AtTo.PSI())) * float64(l.To-l.From)
	}
	for _, p := range s.Points {
		z.force += abs(float64(p.Force))
	}
	for _, c := range s.Couples {
		z.moment += abs(float64(c.M))
	}
	for _, r := range d.Reactions() {
		z.force += abs(float64(r.Force))
		z.moment += abs(float64(r.Moment))
	}
	z.moment += z.force * top
	z.force = z.moment / top
	z.slope = z.moment * top / s.EI
	z.deflection = z.slope * top
	for _, g := range d.Segments() {
		z.slope = max(z.slope, abs(g.Slope))
		z.deflection = max(z.deflection, abs(float64(g.Deflection)))
	}
	return z
}
