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

// moment, shear and load evaluate the polynomials at t.
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

func (g *Segment) slope(t, ei float64) float64 { return g.Slope - g.turn(t)/ei }

func (g *Segment) deflection(t, ei float64) float64 {
	return float64(g.Deflection) + g.Slope*t - g.bow(t)/ei
}

func (g *Segment) length() float64 { return float64(g.To - g.From) }

// event is a jump of the diagrams at one level, going down: V grows by v, M
// by m.
type event struct{ y, v, m float64 }

// insert keeps events sorted by level.
func insert(es []event, e event) []event {
	es = append(es, e)
	j := len(es) - 1
	for ; j > 0 && e.y < es[j-1].y; j-- {
		es[j] = es[j-1]
	}
	es[j] = e
	return es
}

// cuts returns the segments between all levels at which something changes,
// from 0 up to the top, with no diagrams yet.
func cuts(s *Strip) []Segment {
	var room [32]float64
	ys := append(room[:0], 0)
	add := func(y float64) {
		if !(y > 0 && y < s.Top.Inches()) {
			return
		}
		i := len(ys)
		for i > 0 && y < ys[i-1] {
			i--
		}
		if i > 0 && !(ys[i-1] < y) {
			return // already there
		}
		ys = append(ys, 0)
		copy(ys[i+1:], ys[i:])
		ys[i] = y
	}
	for _, l := range s.Loads {
		add(l.From.Inches())
		add(l.To.Inches())
	}
	for _, p := range s.Points {
		add(p.At.Inches())
	}
	for _, c := range s.Couples {
		add(c.At.Inches())
	}
	for _, p := range s.Supports {
		add(p.At.Inches())
	}
	segs := make([]Segment, len(ys))
	for i, y := range ys {
		segs[i] = Segment{From: units.Length(y), To: s.Top}
		if i > 0 {
			segs[i-1].To = units.Length(y)
		}
	}
	return segs
}

// pressure returns the load at both ends of segment g.
func (s *Strip) pressure(g *Segment) (lower, upper float64) {
	middle := (g.From + g.To) / 2
	for i := range s.Loads {
		l := &s.Loads[i]
		if !(l.From < middle && middle < l.To) {
			continue
		}
		rise := (l.AtTo - l.AtFrom).PSI()
		h := float64(l.To - l.From)
		lower += l.AtFrom.PSI() + rise*(float64(g.From-l.From)/h)
		upper += l.AtFrom.PSI() + rise*(float64(g.To-l.From)/h)
	}
	return lower, upper
}

// bend fills the moments of the segments for the loads and the reactions of
// hs, from the free top down.
func (s *Strip) bend(segs []Segment, hs []hold) {
	var room [24]event
	es := room[:0]
	for _, p := range s.Points {
		es = insert(es, event{p.At.Inches(), float64(p.Force), 0})
	}
	for _, c := range s.Couples {
		es = insert(es, event{c.At.Inches(), 0, float64(c.M)})
	}
	for _, h := range hs {
		es = insert(es, event{h.at, -h.force, -h.moment})
	}
	var v, m float64
	for i := len(segs) - 1; i >= 0; i-- {
		g := &segs[i]
		middle := float64(g.From+g.To) / 2
		for n := len(es) - 1; n >= 0 && es[n].y > middle; n-- {
			v += es[n].v
			m += es[n].m
			es = es[:n]
		}
		w0, w1 := s.pressure(g)
		l := g.length()
		c := &g.Moment
		c[3] = -(w1 - w0) / (6 * l)
		c[2] = -w0 / 2
		c[1] = v + (w0+w1)/2*l
		c[0] = m - l*(c[1]+l*(c[2]+l*c[3]))
		v, m = c[1], c[0]
	}
	for _, e := range es {
		m += e.m
	}
	segs[0].Moment[0] -= m // what rounding left at the foot: nothing is below it
}

// sway fills slope and deflection of the segments: the moments integrated up
// from the foot, and then the strip moved and turned onto its base.
func (s *Strip) sway(segs []Segment, b base, hs []hold) {
	var th, u float64
	for i := range segs {
		g := &segs[i]
		g.Slope, g.Deflection = th, units.Length(u)
		l := g.length()
		th, u = g.slope(l, s.EI), g.deflection(l, s.EI)
	}
	var turn, move float64
	gp, tp := locate(segs, b.p)
	if b.fixed {
		turn = -gp.slope(tp, s.EI)
		move = -gp.deflection(tp, s.EI) - turn*b.p
	} else {
		gq, tq := locate(segs, b.q)
		up := hs[0].force*hs[0].give/s.EI - gp.deflection(tp, s.EI)
		uq := hs[1].force*hs[1].give/s.EI - gq.deflection(tq, s.EI)
		turn = (uq - up) / (b.q - b.p)
		move = up - turn*b.p
	}
	for i := range segs {
		segs[i].Slope += turn
		segs[i].Deflection += units.Length(move + turn*segs[i].From.Inches())
	}
}

// locate returns the segment that holds height y, the upper one at a cut, and
// the height above its lower end. y is taken into the strip.
func locate(segs []Segment, y float64) (*Segment, float64) {
	i := len(segs) - 1
	for i > 0 && y < segs[i].From.Inches() {
		i--
	}
	t := y - segs[i].From.Inches()
	return &segs[i], max(0, min(t, segs[i].length()))
}
