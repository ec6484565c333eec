package calc

import (
	"math"

	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// above is what acts above a section: the stretches that lie wholly above it,
// and the part of the one that it cuts.
type above struct {
	whole []stretch
	cut   *stretch
	t     float64 // depth of the section below the top of the cut stretch, in
	k     working.Term
	held  bool // the brace lies above
	y     level
}

// cutAt finds what lies above height y.
func (r *reckoning) cutAt(y units.Length) above {
	a := above{held: !r.cantilever && y < r.brace.y && !near(y, r.brace.y)}
	for i := range r.parts {
		p := &r.parts[i]
		switch {
		case p.bottom.y > y || near(p.bottom.y, y):
			a.whole = append(a.whole, *p)
		case p.top.y > y && !near(p.top.y, y):
			a.cut, a.t = p, float64(p.top.y-y)
		}
	}
	return a
}

// pushed is the force of the ground above the section, without the reaction.
func (a *above) pushed() (v float64) {
	for _, p := range a.whole {
		v += p.push.Value.Base
	}
	if a.cut != nil {
		v += a.cut.a.Value.Base*a.t + a.k.Value.Base*a.t*a.t/2
	}
	return v
}

// moment writes the moment of a need at its height; false where this sum does
// not come to it.
func (r *reckoning) moment(c *working.Chain, n momentNeed) bool {
	if !r.sound {
		return false
	}
	merge(c, r.steps)
	a := r.cutAt(n.at)
	if a.cut != nil {
		a.k = a.cut.growth(c)
	}
	if !r.still(c, &a, n.at) {
		a.y = r.w.levelAt(n.at, "ym")
		if near(n.at, r.brace.y) {
			a.y = r.brace
		}
	}
	sign := 1.0
	if n.face == FaceA {
		sign = -1
	}
	for _, couple := range [2]bool{n.at < r.w.Brace && !near(n.at, r.w.Brace), true} {
		e := expr{text: make([]byte, 0, 80), with: make([]working.Term, 0, 10)}
		if v := r.bends(&e, &a, couple, sign); alike(v, float64(n.m)) {
			e.to(c, "Mu", units.Of(n.m, units.LineMoment), "statics")
			return true
		}
	}
	return false
}

// still writes the place without shear, which is that of the greatest moment;
// false where the section is none.
func (r *reckoning) still(c *working.Chain, a *above, y units.Length) bool {
	if a.cut == nil || !a.held {
		return false
	}
	v := r.rt
	for _, p := range a.whole {
		v.Value.Base -= p.push.Value.Base
	}
	p0, k, left := a.cut.a.Value.Base, a.k.Value.Base, v.Value.Base
	under := p0*p0 + 2*k*left
	if !(left > 0 && under > 0) {
		return false
	}
	if t := 2 * left / (p0 + math.Sqrt(under)); math.Abs(t-a.t) > 1e-6 {
		return false
	}
	if len(a.whole) > 0 {
		e := expr{}
		e.symbol(r.rt)
		for _, p := range a.whole {
			e.say(" − ").symbol(p.push)
		}
		v.Symbol = "Vt"
		e.to(c, "Vt", v.Value, "statics")
	}
	e := expr{}
	e.symbol(a.cut.top.term()).say(" − ")
	switch {
	case a.k.Symbol == "":
		e.symbol(v).say("/").symbol(a.cut.b)
	case p0 == 0:
		e.say("√(2 ").symbol(v).say("/").symbol(a.k).say(")")
	default:
		e.say("2 ").symbol(v).say("/(").symbol(a.cut.a).say(" + √(").symbol(a.cut.a).say("^2 + 2 ").symbol(a.k).say(" ").symbol(v).say("))")
	}
	a.y = level{symbol: "ym", y: y}
	e.to(c, "ym", units.Of(y, units.Level), "statics")
	return true
}

// bends writes the moment of what acts above the section, times sign: positive
// with tension on B. What adds comes first.
func (r *reckoning) bends(e *expr, a *above, couple bool, sign float64) (v float64) {
	back := func() {
		if !a.held {
			return
		}
		e.symbol(r.rt).say(" ").rise(r.brace, a.y)
		v += sign * r.rt.Value.Base * float64(r.brace.y-a.y.y)
	}
	turn := func() {
		if couple && r.couple != 0 {
			r.withCouple(e, sign)
			v += sign * float64(r.couple)
		}
	}
	if sign > 0 {
		back()
		turn()
		v += r.leans(e, a, " − ")
		return v
	}
	v += r.leans(e, a, " + ")
	if a.held {
		e.say(" − ")
	}
	back()
	turn()
	return v
}

// leans writes the moments of the ground's pushes about the section with the
// given sign before each.
func (r *reckoning) leans(e *expr, a *above, sign string) (v float64) {
	next := func() {
		if len(e.text) > 0 || sign == " − " {
			e.say(sign)
		}
	}
	for _, p := range a.whole {
		next()
		at := level{symbol: p.at.Symbol, y: units.Length(p.at.Value.Base)}
		e.symbol(p.push).say(" ").rise(at, a.y)
		v += p.push.Value.Base * float64(at.y-a.y.y)
	}
	if a.cut != nil {
		if p := a.cut.a; p.Value.Base != 0 {
			next()
			e.symbol(p).say(" ").rise(a.cut.top, a.y).say("^2/2")
			v += p.Value.Base * a.t * a.t / 2
		}
		if a.k.Symbol != "" {
			next()
			e.symbol(a.k).say(" ").rise(a.cut.top, a.y).say("^3/6")
			v += a.k.Value.Base * a.t * a.t * a.t / 6
		}
	}
	if sign == " − " {
		return -v
	}
	return v
}

// shear writes the shear of a need at its height; false where this sum does
// not come to it.
func (r *reckoning) shear(c *working.Chain, n shearNeed) bool {
	if !r.sound {
		return false
	}
	merge(c, r.steps)
	a := r.cutAt(n.at)
	if a.cut != nil {
		a.k = a.cut.growth(c)
	}
	a.y = r.shearLevel(c, n)
	// At the brace there is the shear below it and that above it, at a foot above
	// the footing that above it and that below it.
	brace, foot := near(n.at, r.brace.y) && !r.cantilever, near(n.at, r.foot.y) && r.foot.symbol != ""
	for _, try := range [3]struct{ held, below bool }{{a.held || brace, false}, {a.held, false}, {a.held, foot}} {
		a.held = try.held
		v := a.pushed()
		if a.held {
			v -= r.rt.Value.Base
		}
		if try.below {
			v = a.pushed() - r.total
		}
		if !alike(math.Abs(v), float64(n.v)) {
			continue
		}
		e := expr{}
		rf := working.Term{}
		if try.below {
			rf = r.footReaction(c)
		}
		r.slides(&e, &a, rf, v < 0)
		e.to(c, "Vu", units.Of(n.v, units.LineForce), "statics")
		return true
	}
	return false
}

// shearLevel names the height of a shear: at d from a slab that presses on the
// foot it is d above the foot.
func (r *reckoning) shearLevel(c *working.Chain, n shearNeed) level {
	out := r.w.levelAt(n.at, "yd")
	if near(n.at, r.foot.y) {
		return r.foot
	}
	if n.tight == nil || out.symbol != "yd" || near(n.at, r.brace.y) {
		return out
	}
	if r.foot.symbol == "" {
		return level{symbol: "d", y: n.at, short: true}
	}
	c.Add("yd", "yf + d", units.Of(n.at, units.Level), "7.4.3.2", r.foot.term(), term("d", n.at-r.foot.y, units.Size))
	return out
}

// slides writes the shear: the ground's push less the reactions, or the other
// way around.
func (r *reckoning) slides(e *expr, a *above, rf working.Term, back bool) {
	plus := " + "
	if back {
		plus = " − "
		e.symbol(r.rt)
		if rf.Symbol != "" {
			e.say(" + ").symbol(rf)
		}
	}
	next := func() {
		if len(e.text) > 0 {
			e.say(plus)
		}
	}
	for _, p := range a.whole {
		next()
		e.symbol(p.push)
	}
	if a.cut != nil {
		if p := a.cut.a; p.Value.Base != 0 {
			next()
			e.symbol(p).say(" ").rise(a.cut.top, a.y)
		}
		if a.k.Symbol != "" {
			next()
			e.symbol(a.k).say(" ").rise(a.cut.top, a.y).say("^2/2")
		}
	}
	if a.held && !back {
		e.say(" − ").symbol(r.rt)
		if rf.Symbol != "" {
			e.say(" − ").symbol(rf)
		}
	}
}
