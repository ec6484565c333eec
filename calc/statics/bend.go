package statics

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
