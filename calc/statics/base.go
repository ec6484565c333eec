package statics

// hold is a support while the strip is solved: its place, its give EI/k (0
// when rigid) and its reactions, force toward A and moment as the jump of M
// going up across it.
type hold struct {
	at, give      float64
	fixed         bool
	index         int
	force, moment float64
}

// holds lists the supports that hold, stiffest first: fixed, pinned, springs
// by their stiffness.
func holds(s *Strip, out []hold) []hold {
	for i, p := range s.Supports {
		h := hold{at: p.At.Inches(), fixed: p.Kind == Fixed, index: i}
		if p.Kind == Spring {
			if p.Stiffness < 1/far {
				continue // as soft as nothing
			}
			h.give = s.EI / p.Stiffness.PSI()
		}
		j := len(out)
		out = append(out, h)
		for ; j > 0 && stiffer(h, out[j-1]); j-- {
			out[j] = out[j-1]
		}
		out[j] = h
	}
	return out
}

func stiffer(a, b hold) bool {
	if a.fixed != b.fixed {
		return a.fixed
	}
	return a.give < b.give
}

// base is the part of the supports that holds by statics alone: one fixed
// support, or two others.
type base struct {
	p, q  float64 // levels; a fixed base has only p
	fixed bool
}

// chooseBase returns the base that the first, stiffest supports make, false
// when they do not hold the strip.
func chooseBase(hs []hold) (base, bool) {
	switch {
	case len(hs) > 0 && hs[0].fixed:
		return base{p: hs[0].at, fixed: true}, true
	case len(hs) > 1:
		return base{p: hs[0].at, q: hs[1].at}, true
	}
	return base{}, false
}

// count is how many supports the base takes.
func (b base) count() int {
	if b.fixed {
		return 1
	}
	return 2
}

// react returns the reactions of the base to a force toward B and its moment
// about height 0 (force times height, less the couples): the two forces, or
// the force and the moment of a fixed support.
func (b base) react(force, moment float64) (first, second float64) {
	if b.fixed {
		return force, force*b.p - moment
	}
	second = (moment - force*b.p) / (b.q - b.p)
	return force - second, second
}

// resultant returns the sum of the loads toward B and their moment about
// height 0, less the couples.
func (s *Strip) resultant() (force, moment float64) {
	for _, l := range s.Loads {
		h := float64(l.To - l.From)
		a, b := l.AtFrom.PSI(), l.AtTo.PSI()
		f := (a + b) / 2 * h
		force += f
		moment += f*l.From.Inches() + (a+2*b)*h*h/6
	}
	for _, p := range s.Points {
		force += float64(p.Force)
		moment += float64(p.Force) * p.At.Inches()
	}
	for _, c := range s.Couples {
		moment -= float64(c.M)
	}
	return force, moment
}

// sound reports whether all reactions are numbers.
func sound(hs []hold) bool {
	for _, h := range hs {
		if !finite(h.force) || !finite(h.moment) {
			return false
		}
	}
	return true
}
