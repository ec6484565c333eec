package calc

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"standingbeam/calc/soil"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// reckoning is the sum of one stage's strip at one level of load: pressures,
// pushes and reactions, which its moments and shears are written from.
type reckoning struct {
	w                 *wall
	st                *StageResult
	factored          bool
	couple            units.MomentPerLength
	sound             bool // the sum comes to that of the analysis
	cantilever, fixed bool

	state       soil.State
	q           Surcharge
	low         float64 // factor of side B's soil
	parts       []stretch
	foot, brace level
	span        working.Term // from foot to brace
	rt, ca      working.Term // the top's reaction; the couple at the brace without its sign
	total       float64      // of the pushes
	steps       []working.Step
}

// stretch is a part of the strip over which the pressure is linear, from the
// top down. A pressure that is zero has no symbol.
type stretch struct {
	top, bottom level
	a, b        working.Term // pressure at the top and at the bottom
	push, at    working.Term // its resultant and the height of that
	k           string       // symbol of the pressure's growth
}

// reckon returns the sum of a stage, done once.
func (w *wall) reckon(s *StageResult, factored bool, couple units.MomentPerLength) *reckoning {
	for _, r := range w.reckoned {
		if r.st.Name == s.Name && r.factored == factored && near(r.couple, couple) {
			return r
		}
	}
	r := &reckoning{w: w, st: s, factored: factored, couple: couple}
	w.reckoned = append(w.reckoned, r)
	r.state, r.q = w.stageGround(s.Name)
	r.low = w.lowFactor()
	if !factored && r.low > 0 {
		r.low = 1
	}
	r.cantilever = !s.held()
	r.fixed = !r.cantilever && w.Foot.Fixed
	c := chain()
	r.sound = r.pressures(c) && r.hold(c)
	r.steps = c.Steps
	return r
}

// u marks the symbols of factored load.
func (r *reckoning) u(symbol string) string {
	if r.factored {
		return symbol + "u"
	}
	return symbol
}

// earth is the factor on what side A pushes with.
func (r *reckoning) earth() float64 {
	if r.factored {
		return r.w.lf.Earth
	}
	return 1
}

// pressures writes the soil, the pressure at the ends of each stretch, and the
// push of each.
func (r *reckoning) pressures(c *working.Chain) bool {
	w := r.w
	if w.GradeA <= 0 {
		return false
	}
	wet := w.Water.Standing && w.Water.Level > 0
	w.recordSoil(c, r.state, wet, r.q != (Surcharge{}))
	levels := r.cuts(wet)
	one := len(levels) == 2
	above := working.Term{}
	for i := 1; i < len(levels); i++ {
		s := stretch{top: levels[i-1], bottom: levels[i]}
		name := func(symbol string, n int) string {
			if one && (n == 1 || r.q == (Surcharge{})) {
				return symbol
			}
			return symbol + strconv.Itoa(n)
		}
		if i == 1 {
			above = r.pressure(c, s.top, name(r.u("p"), 0))
		}
		s.a = above
		s.b = r.pressure(c, s.bottom, name(r.u("p"), i))
		above = s.b
		if s.a.Value.Base == 0 && s.b.Value.Base == 0 {
			continue
		}
		if !(s.a.Value.Base+s.b.Value.Base > 0) || s.a.Value.Base < 0 || s.b.Value.Base < 0 {
			return false
		}
		s.k = name("k", i)
		s.resultant(c, name("F", i), name("yF", i))
		r.total += s.push.Value.Base
		r.parts = append(r.parts, s)
	}
	return r.asAnalysed()
}

// asAnalysed reports whether the pushes are those of the analysis.
func (r *reckoning) asAnalysed() bool {
	var total float64
	for _, p := range r.st.Pushes {
		f, _ := p.Resultant()
		switch {
		case p.Side == 'b':
			total -= r.low * float64(f)
		default:
			total += r.earth() * float64(f)
		}
	}
	return alike(total, r.total)
}

// cuts are the levels at which the pressure bends, from the ground down.
func (r *reckoning) cuts(wet bool) []level {
	w := r.w
	out := append(make([]level, 0, 5), w.levelAt(w.GradeA, ""))
	add := func(y units.Length) {
		if y < w.GradeA && y > 0 && !near(y, w.GradeA) && !near(y, 0) {
			for i := 1; i < len(out); i++ {
				if near(y, out[i].y) {
					return
				}
			}
			out = append(out, w.levelAt(y, "ℓ"))
		}
	}
	if wet {
		add(w.Water.Level)
	}
	if r.low > 0 && r.hasB() {
		add(w.GradeB)
	}
	if r.fixed {
		add(w.Brace)
	}
	slices.SortFunc(out, func(a, b level) int { return cmp.Compare(b.y, a.y) })
	return append(out, level{})
}

func (r *reckoning) hasB() bool {
	for _, p := range r.st.Pushes {
		if p.Side == 'b' {
			return true
		}
	}
	return false
}

// pressure writes the net pressure at a level; just below the ground the
// surcharge is there already. Without pressure nothing is written.
func (r *reckoning) pressure(c *working.Chain, at level, symbol string) working.Term {
	e := expr{text: make([]byte, 0, 64), with: make([]working.Term, 0, 8)}
	v := r.sideA(&e, at)
	if k := r.earth(); v > 0 && r.factored {
		v *= k
		e.text = append([]byte("1.6 "), e.text...)
	}
	if b := r.w.GradeB; r.low > 0 && r.hasB() && b > at.y && !near(b, at.y) {
		e.say(" − ")
		if r.factored {
			e.say("0.9 ")
		}
		e.symbol(term("γeq", units.UnitWeight(r.w.moist(r.state)), units.Weight)).say(" ").rise(r.w.levelAt(b, "hB"), at)
		v -= r.low * r.w.moist(r.state) * float64(b-at.y)
	}
	if v == 0 {
		return working.Term{}
	}
	clause := "IBC 2021 1610.1"
	if r.factored {
		clause = "5.3.1, 5.3.8"
	}
	q := units.Of(units.Stress(v), units.Pressure)
	e.to(c, symbol, q, clause)
	return working.Term{Symbol: symbol, Value: q}
}

// sideA writes what side A presses with at a level, in brackets where it is a
// sum.
func (r *reckoning) sideA(e *expr, at level) (v float64) {
	w := r.w
	inside, items := expr{}, 0
	plus := func() {
		if items++; items > 1 {
			inside.say(" + ")
		}
	}
	ground := w.levelAt(w.GradeA, "hA")
	dry := at // where the moist soil ends
	if w.Water.Standing && w.Water.Level > at.y && !near(w.Water.Level, at.y) {
		dry = w.levelAt(w.Water.Level, "hw")
	}
	if !near(dry.y, ground.y) {
		plus()
		inside.symbol(term("γeq", units.UnitWeight(w.moist(r.state)), units.Weight)).say(" ").rise(ground, dry)
		v += w.moist(r.state) * float64(ground.y-dry.y)
	}
	if dry != at {
		plus()
		inside.say("(").symbol(term("γb", units.UnitWeight(w.buoyant(r.state)), units.Weight)).say(" + ").
			symbol(term("γw", soil.WaterWeight, units.Weight)).say(") ").rise(dry, at)
		v += (w.buoyant(r.state) + float64(soil.WaterWeight)) * float64(dry.y-at.y)
	}
	if q := r.q.Dead + r.q.Live; q > 0 {
		plus()
		k := w.soilOf(r.state).k
		inside.symbol(number(w.coefficient(r.state), k)).say(" ").symbol(term("qs", q, units.Pressure))
		v += k * float64(q)
	}
	several := items > 1 && r.factored
	if several {
		e.say("(")
	}
	e.text, e.with = append(e.text, inside.text...), append(e.with, inside.with...)
	if several {
		e.say(")")
	}
	return v
}

// resultant writes the push of the stretch and the height at which it acts.
func (s *stretch) resultant(c *working.Chain, push, at string) {
	a, b, l := s.a.Value.Base, s.b.Value.Base, float64(s.top.y-s.bottom.y)
	f, y := expr{}, expr{}
	if s.bottom.symbol != "" {
		y.symbol(s.bottom.term()).say(" + ")
	}
	y.rise(s.top, s.bottom)
	var up float64
	switch {
	case a == 0:
		f.symbol(s.b).say(" ").rise(s.top, s.bottom).say("/2")
		y.say("/3")
		up = l / 3
	case alike(a, b):
		f.symbol(s.b).say(" ").rise(s.top, s.bottom)
		y.say("/2")
		up = l / 2
	default:
		f.say("(").symbol(s.a).say(" + ").symbol(s.b).say(") ").rise(s.top, s.bottom).say("/2")
		y.say(" (2 ").symbol(s.a).say(" + ").symbol(s.b).say(")/(3 (").symbol(s.a).say(" + ").symbol(s.b).say("))")
		up = l / 3 * (2*a + b) / (a + b)
	}
	s.push = working.Term{Symbol: push, Value: units.Of(units.ForcePerLength((a+b)/2*l), units.LineForce)}
	s.at = working.Term{Symbol: at, Value: units.Of(s.bottom.y+units.Length(up), units.Level)}
	f.to(c, push, s.push.Value, "statics")
	y.to(c, at, s.at.Value, "statics")
}

// growth writes by how much the pressure of the stretch grows a foot, and
// returns it; nothing where it is even.
func (s *stretch) growth(c *working.Chain) working.Term {
	a, b := s.a.Value.Base, s.b.Value.Base
	if alike(a, b) {
		return working.Term{}
	}
	e := expr{}
	if a == 0 {
		e.symbol(s.b)
	} else {
		e.say("(").symbol(s.b).say(" − ").symbol(s.a).say(")")
	}
	e.say("/").rise(s.top, s.bottom)
	k := term(s.k, units.UnitWeight((b-a)/float64(s.top.y-s.bottom.y)), units.Weight)
	if !has(c, k.Symbol) {
		e.to(c, k.Symbol, k.Value, "statics")
	}
	return k
}

// recordSoil writes the coefficients and unit weights of the ground that a sum
// needs.
func (w *wall) recordSoil(c *working.Chain, st soil.State, wet, surcharge bool) {
	k, symbol := w.soilOf(st).k, w.coefficient(st)
	eq := term("γeq", units.UnitWeight(w.moist(st)), units.Weight)
	weight := term("γ", w.Soil.Weight, units.Weight)
	if w.Soil.Basis == SoilFriction {
		formula, clause := "1 − sin(φ')", "Jaky (1944)"
		if st == soil.Active {
			formula, clause = "(1 − sin(φ'))/(1 + sin(φ'))", "Rankine (1857)"
		}
		c.Add(symbol, formula, units.Quantity{Base: k}, clause, term("φ'", w.Soil.Friction, units.Degrees))
		c.Add("γeq", symbol+" γ", eq.Value, "IBC 2021 1610.1", number(symbol, k), weight)
	} else if wet || surcharge {
		c.Add(symbol, "γeq/γ", units.Quantity{Base: k}, "IBC 2021 1610.1", eq, weight)
	}
	if wet {
		c.Add("γb", symbol+" max(0; γsat − γw)", units.Of(units.UnitWeight(w.buoyant(st)), units.Weight), "IBC 2021 1610.1",
			number(symbol, k), term("γsat", w.Soil.Saturated, units.Weight), term("γw", soil.WaterWeight, units.Weight))
	}
}

// moist is the pressure of the moist soil per depth, psi/in.
func (w *wall) moist(st soil.State) float64 { return w.soilOf(st).k * float64(w.Soil.Weight) }

// buoyant is the pressure of the soil below the water, without the water's.
func (w *wall) buoyant(st soil.State) float64 {
	return w.soilOf(st).k * math.Max(0, float64(w.Soil.Saturated-soil.WaterWeight))
}

// coefficient is the symbol of the horizontal over the vertical pressure.
func (w *wall) coefficient(st soil.State) string {
	switch {
	case w.Soil.Basis != SoilFriction:
		return "K"
	case st == soil.Active:
		return "Ka"
	}
	return "K0"
}
