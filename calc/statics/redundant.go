package statics

// redundant is one reaction beyond the base, with what the base answers to it
// when it is 1.
type redundant struct {
	hold          int     // index in the list of holds
	moment        bool    // the moment of a fixed support, else its force
	first, second float64 // of the base
}

// redundants lists the reactions beyond the base.
func redundants(hs []hold, b base, out []redundant) []redundant {
	for i := b.count(); i < len(hs); i++ {
		x := redundant{hold: i}
		x.first, x.second = b.react(-1, -hs[i].at)
		out = append(out, x)
		if hs[i].fixed {
			x = redundant{hold: i, moment: true}
			x.first, x.second = b.react(0, 1)
			out = append(out, x)
		}
	}
	return out
}

// line returns the moment that the redundant, when it is 1, brings to a
// segment: a + c t.
func (x redundant) line(hs []hold, b base, g *Segment) (a, c float64) {
	y, middle := g.From.Inches(), float64(g.From+g.To)/2
	add := func(at, force, moment float64) {
		if at > middle {
			a += force*(at-y) - moment
			c -= force
		}
	}
	if b.fixed {
		add(b.p, x.first, x.second)
	} else {
		add(b.p, x.first, 0)
		add(b.q, x.second, 0)
	}
	if x.moment {
		add(hs[x.hold].at, 0, 1)
	} else {
		add(hs[x.hold].at, 1, 0)
	}
	return a, c
}

// settle finds the reactions beyond the base and adds them to hs. segs holds
// the moments of the base alone. It reports false when there is no answer.
func settle(segs []Segment, b base, hs []hold) bool {
	var roomX [6]redundant
	xs := redundants(hs, b, roomX[:0])
	n := len(xs)
	var roomF [36]float64
	var roomD [6]float64
	f, d := take(roomF[:], n*n), take(roomD[:], n)
	bending(f, d, xs, segs, b, hs)
	yielding(f, d, xs, b, hs)
	if !cholesky(f, d, n) {
		return false
	}
	for i, x := range xs {
		h := &hs[x.hold]
		if x.moment {
			h.moment += d[i]
		} else {
			h.force += d[i]
		}
		hs[0].force += d[i] * x.first
		if b.fixed {
			hs[0].moment += d[i] * x.second
		} else {
			hs[1].force += d[i] * x.second
		}
	}
	return true
}

// bending and yielding add up the condition that the complementary energy is
// least, times EI,
//
//	Σj X[j] (∫ mi mj + Σ ri rj EI/k) = −∫ mi M − Σ ri R EI/k
//
// with mi the moment and ri the reactions of the redundant i when it is 1:
// bending the integrals, yielding the springs. Of the symmetric f only the
// lower half is filled.
func bending(f, d []float64, xs []redundant, segs []Segment, b base, hs []hold) {
	n := len(xs)
	var roomA, roomC [6]float64
	as, cs := take(roomA[:], n), take(roomC[:], n)
	for k := range segs {
		g := &segs[k]
		l := g.length()
		first, second := g.turn(l), g.weighted(l)
		for i, x := range xs {
			as[i], cs[i] = x.line(hs, b, g)
			d[i] -= as[i]*first + cs[i]*second
			for j := 0; j <= i; j++ {
				f[i*n+j] += l * (as[i]*as[j] + l*((as[i]*cs[j]+cs[i]*as[j])/2+l*cs[i]*cs[j]/3))
			}
		}
	}
}

func yielding(f, d []float64, xs []redundant, b base, hs []hold) {
	n := len(xs)
	for i, x := range xs {
		if !x.moment {
			f[i*n+i] += hs[x.hold].give
		}
		if b.fixed {
			continue
		}
		d[i] -= x.first*hs[0].force*hs[0].give + x.second*hs[1].force*hs[1].give
		for j := 0; j <= i; j++ {
			f[i*n+j] += x.first*xs[j].first*hs[0].give + x.second*xs[j].second*hs[1].give
		}
	}
}

// take returns n zeros, in room where they fit.
func take(room []float64, n int) []float64 {
	if n <= len(room) {
		return room[:n]
	}
	return make([]float64, n)
}
