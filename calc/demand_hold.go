package calc

import (
	"math"
	"strconv"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// hold writes the couple at the brace and the reaction of the top.
func (r *reckoning) hold(c *working.Chain) bool {
	w := r.w
	if r.couple != 0 {
		formula, clause := "(Pd + Pl) ea", "statics"
		if r.factored {
			formula, clause = "(1.2 Pd + 1.6 Pl) ea", "5.3.1"
		}
		r.ca = term("Ca", units.MomentPerLength(math.Abs(float64(r.couple))), units.LineMoment)
		c.Add("Ca", formula, r.ca.Value, clause, w.axialTerms()...)
	}
	r.brace = level{symbol: "ℓ", y: w.Brace}
	if r.cantilever {
		return true
	}
	r.span = r.brace.term()
	if y := w.footLevel(); y > 0 {
		r.foot, r.brace = level{symbol: "yf", y: y}, level{symbol: "yb", y: w.Brace}
		r.span = term("ℓ", w.Brace-y, units.Level)
		e := expr{}
		e.rise(r.brace, r.foot).to(c, "ℓ", r.span.Value, "statics")
	}
	if r.fixed {
		return r.foot.y == 0 && r.propped(c)
	}
	e := expr{}
	v := -float64(r.couple)
	sum := len(r.parts) > 1 || r.couple != 0
	if sum {
		e.say("(")
	}
	for i, p := range r.parts {
		if i > 0 {
			e.say(" + ")
		}
		e.symbol(p.push).say(" ").rise(level{symbol: p.at.Symbol, y: units.Length(p.at.Value.Base)}, r.foot)
		v += p.push.Value.Base * (p.at.Value.Base - float64(r.foot.y))
	}
	r.withCouple(&e, -1)
	if sum {
		e.say(")")
	}
	e.say("/").symbol(r.span)
	r.top(c, &e, v/r.span.Value.Base)
	return true
}

func (r *reckoning) top(c *working.Chain, e *expr, v float64) {
	r.rt = working.Term{Symbol: r.u("Rt"), Value: units.Of(units.ForcePerLength(v), units.LineForce)}
	e.to(c, r.rt.Symbol, r.rt.Value, "statics")
}

// withCouple adds the couple, times sign, behind a sum.
func (r *reckoning) withCouple(e *expr, sign float64) {
	switch {
	case r.couple == 0:
	case float64(r.couple)*sign > 0 && len(e.text) == 0:
		e.symbol(r.ca)
	case float64(r.couple)*sign > 0:
		e.say(" + ").symbol(r.ca)
	default:
		e.say(" − ").symbol(r.ca)
	}
}

// propped writes the top's reaction of a wall that is fixed at its foot: what
// brings the top of the cantilever back to its place. A pressure p(y) gives
//
//	∫ p y² (3 ℓ − y) dy/(2 ℓ³)
//
// up to the brace, and ∫ p (3 y − ℓ) dy/(2 ℓ) above it; a couple takes off
// 3 C/(2 ℓ).
func (r *reckoning) propped(c *working.Chain) bool {
	e, total := expr{}, 0.0
	alone := len(r.parts) == 1 && r.couple == 0
	for i := range r.parts {
		part, v := r.share(c, &r.parts[i])
		if alone {
			e = part
		} else {
			t := working.Term{Symbol: r.u("Rt" + strconv.Itoa(i+1)), Value: units.Of(units.ForcePerLength(v), units.LineForce)}
			part.to(c, t.Symbol, t.Value, "statics")
			if i > 0 {
				e.say(" + ")
			}
			e.symbol(t)
		}
		total += v
	}
	if r.couple != 0 {
		sign := " − 3 "
		if r.couple < 0 {
			sign = " + 3 "
		}
		e.say(sign).symbol(r.ca).say("/(2 ").symbol(r.span).say(")")
		total -= 1.5 * float64(r.couple) / r.span.Value.Base
	}
	r.top(c, &e, total)
	last := r.st.Reactions[len(r.st.Reactions)-1]
	if r.factored {
		return !near(r.couple, r.w.coupleOf(r.st)) || alike(units.ForcePerLength(total), last.Factored)
	}
	return r.couple != 0 || r.w.coupleOf(r.st) != 0 || alike(units.ForcePerLength(total), last.Service)
}

// share writes what one stretch gives to the top of a propped wall.
func (r *reckoning) share(c *working.Chain, p *stretch) (e expr, v float64) {
	l, t, b := r.span.Value.Base, float64(p.top.y), float64(p.bottom.y)
	pb := p.b.Value.Base
	if p.a.Value.Base == 0 && b == 0 && t <= l {
		e.symbol(p.b).say(" ").symbol(p.top.term()).say("^3 (5 ").symbol(r.span).say(" − ").symbol(p.top.term()).say(")/(40 ").symbol(r.span).say("^3)")
		return e, pb * t * t * t * (5*l - t) / (40 * l * l * l)
	}
	k := p.growth(c)
	rate := k.Value.Base
	atFoot := pb + rate*b // the pressure drawn on to the foot
	power := func(n int) float64 { return math.Pow(t, float64(n)) - math.Pow(b, float64(n)) }
	say := func(n int) {
		to := ""
		if n > 1 {
			to = "^" + strconv.Itoa(n)
		}
		if p.bottom.symbol == "" {
			e.symbol(p.top.term()).say(to)
			return
		}
		e.say("(").symbol(p.top.term()).say(to).say(" − ").symbol(p.bottom.term()).say(to).say(")")
	}
	foot := func() {
		switch {
		case k.Symbol == "":
			e.symbol(p.b)
		case p.bottom.symbol == "":
			e.symbol(p.b)
		default:
			e.say("(").symbol(p.b).say(" + ").symbol(k).say(" ").symbol(p.bottom.term()).say(")")
		}
	}
	e.say("(")
	foot()
	if b >= l*(1-1e-12) {
		e.say(" (3 ")
		say(2)
		e.say("/2 − ").symbol(r.span).say(" ")
		say(1)
		e.say(")")
		v = atFoot * (1.5*power(2) - l*power(1))
		if k.Symbol != "" {
			e.say(" − ").symbol(k).say(" (")
			say(3)
			e.say(" − ").symbol(r.span).say(" ")
			say(2)
			e.say("/2)")
			v -= rate * (power(3) - l*power(2)/2)
		}
		e.say(")/(2 ").symbol(r.span).say(")")
		return e, v / (2 * l)
	}
	e.say(" (").symbol(r.span).say(" ")
	say(3)
	e.say(" − ")
	say(4)
	e.say("/4)")
	v = atFoot * (l*power(3) - power(4)/4)
	if k.Symbol != "" {
		e.say(" − ").symbol(k).say(" (3 ").symbol(r.span).say(" ")
		say(4)
		e.say("/4 − ")
		say(5)
		e.say("/5)")
		v -= rate * (0.75*l*power(4) - power(5)/5)
	}
	e.say(")/(2 ").symbol(r.span).say("^3)")
	return e, v / (2 * l * l * l)
}

// reaction writes the reaction v of the top or of the foot; false where this
// sum does not come to it.
func (r *reckoning) reaction(c *working.Chain, v units.ForcePerLength, top bool) bool {
	if !r.sound || r.cantilever {
		return false
	}
	rt := r.rt.Value.Base
	if top {
		if !alike(float64(v), rt) {
			return false
		}
		merge(c, r.steps)
		return true
	}
	if !alike(float64(v), r.total-rt) {
		return false
	}
	merge(c, r.steps)
	r.footReaction(c)
	return true
}

// footReaction writes the reaction of the foot.
func (r *reckoning) footReaction(c *working.Chain) working.Term {
	e := expr{}
	for i, p := range r.parts {
		if i > 0 {
			e.say(" + ")
		}
		e.symbol(p.push)
	}
	rf := working.Term{Symbol: r.u("Rf"), Value: units.Of(units.ForcePerLength(r.total-r.rt.Value.Base), units.LineForce)}
	e.say(" − ").symbol(r.rt).to(c, rf.Symbol, rf.Value, "statics")
	return rf
}
