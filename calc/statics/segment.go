package statics

import "standingbeam/calc/units"

// Segment is a stretch of the strip over which the diagrams are polynomials.
// With t = y − From in inches, per inch of wall,
//
//	M = Moment[0] + Moment[1] t + Moment[2] t² + Moment[3] t³   in lb·in
//	V = dM/dt
//
// Slope and Deflection are the values at From.
type Segment struct {
	From, To   units.Length
	Moment     [4]float64
	Slope      float64
	Deflection units.Length
}

// moment and shear are M and V at t.
func (g *Segment) moment(t float64) float64 {
	c := &g.Moment
	return c[0] + t*(c[1]+t*(c[2]+t*c[3]))
}

func (g *Segment) shear(t float64) float64 {
	c := &g.Moment
	return c[1] + t*(2*c[2]+t*3*c[3])
}

// turn and bow are the first and second integral of M over 0 to t.
func (g *Segment) turn(t float64) float64 {
	c := &g.Moment
	return t * (c[0] + t*(c[1]/2+t*(c[2]/3+t*c[3]/4)))
}

func (g *Segment) bow(t float64) float64 {
	c := &g.Moment
	return t * t * (c[0]/2 + t*(c[1]/6+t*(c[2]/12+t*c[3]/20)))
}

// weighted is the integral of M t over 0 to l.
func (g *Segment) weighted(l float64) float64 {
	c := &g.Moment
	return l * l * (c[0]/2 + l*(c[1]/3+l*(c[2]/4+l*c[3]/5)))
}

func (g *Segment) slope(t, ei float64) float64 { return g.Slope - g.turn(t)/ei }

func (g *Segment) deflection(t, ei float64) float64 {
	return float64(g.Deflection) + g.Slope*t - g.bow(t)/ei
}

func (g *Segment) length() float64 { return float64(g.To - g.From) }
