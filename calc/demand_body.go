package calc

import (
	"strings"

	"standingbeam/calc/soil"
	"standingbeam/calc/stability"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// loads writes the forces on the free body of wall and footing and their arms.
type loads struct {
	w        *wall
	c        *working.Chain
	g        ground
	dead     string // load factors as they stand in a formula, "" at service
	live     string
	drive    string
	resist   string
	factored bool
}

// recordBody writes the weights and pushes of a free body: at service loads,
// or with the factor dead on weights and those of soil and live load.
func (w *wall) recordBody(c *working.Chain, g ground, b stability.Body, dead float64, factored bool) {
	if w.quiet {
		return
	}
	l := w.loadsOf(g, dead, w.lf.Live, factored)
	if len(b.Drive) > 0 {
		w.recordSoil(l.c, g.state, w.Water.Standing && g.a > 0, g.q != (Surcharge{}))
	}
	l.geometry()
	names := stability.SymbolsOf(b)
	for i, x := range b.Weights {
		l.weight(x, names.Weights[i])
	}
	for i, x := range b.Uplift {
		l.uplift(x, names.Uplift[i], i == 0)
	}
	if len(b.Drive) > 0 { // 1.4 D goes without
		l.pushes(b, names)
	}
	l.passive(b)
	merge(c, l.c.Steps)
}

func (w *wall) loadsOf(g ground, dead, live float64, factored bool) loads {
	l := loads{w: w, g: g, c: &working.Chain{Steps: make([]working.Step, 0, 24)}, factored: factored}
	if !factored {
		return l
	}
	l.dead = map[float64]string{w.lf.Dead: "1.2 ", w.lf.DeadOnly: "1.4 ", w.lf.DeadHelps: "0.9 "}[dead]
	if live > 0 {
		l.live = "1.6 "
	}
	l.drive, l.resist = "1.6 ", "0.9 "
	return l
}

// Terms of the body.
func (l *loads) width() working.Term { return term("B", l.w.Footing.Width, units.Level) }
func (l *loads) toe() working.Term   { return term("Lt", l.w.Footing.Toe, units.Level) }
func (l *loads) heel() working.Term  { return term("Lh", l.w.heel(), units.Level) }
func (l *loads) thick() working.Term { return term("tw", l.w.Thickness, units.Size) }
func (l *loads) deep() working.Term  { return term("tf", l.w.Footing.Thickness, units.Size) }

func (l *loads) concrete() working.Term { return term("γc", concreteWeight, units.Weight) }
func (l *loads) water() working.Term    { return term("γw", soil.WaterWeight, units.Weight) }

func (l *loads) add(symbol, formula string, value units.Quantity, clause string, with ...working.Term) {
	l.c.Add(symbol, formula, value, clause, with...)
}

// geometry writes the projections of the footing.
func (l *loads) geometry() {
	w := l.w
	if w.Footing.NoToe {
		l.add("Lt", "(B − tw)/2", l.toe().Value, "geometry", l.width(), l.thick())
	}
	if h := w.heel(); h > 0 {
		l.add("Lh", "B − Lt − tw", l.heel().Value, "geometry", l.width(), l.toe(), l.thick())
	}
}

// weight writes one weight and its arm.
func (l *loads) weight(x stability.Weight, name [2]string) {
	w, dead, clause := l.w, l.dead, "statics"
	if l.factored {
		clause = "5.3.1"
	}
	force := func(formula string, with ...working.Term) {
		l.add(name[0], formula, units.Of(x.Force, units.LineForce), clause, with...)
	}
	arm := func(formula string, with ...working.Term) {
		l.add(name[1], formula, units.Of(x.Arm, units.Level), "geometry", with...)
	}
	switch x.Name {
	case "stem":
		force(dead+"γc tw ht", l.concrete(), l.thick(), term("ht", w.Height, units.Level))
		arm("Lt + tw/2", l.toe(), l.thick())
	case "footing":
		force(dead+"γc B tf", l.concrete(), l.width(), l.deep())
		arm("B/2", l.width())
	case "heel soil":
		e := expr{}
		e.say(dead).symbol(l.heel()).say(" ")
		l.column(&e, true)
		force(string(e.text), e.with...)
		arm("Lt + tw + Lh/2", l.toe(), l.thick(), l.heel())
	case "toe soil":
		force(dead+"γ Lt hB", term("γ", w.Soil.Weight, units.Weight), l.toe(), term("hB", l.g.b, units.Level))
		arm("Lt/2", l.toe())
	case "dead load":
		force(dead+"Pd", term("Pd", l.g.dead, units.LineForce))
		l.onWall(arm)
	case liveLoad:
		force(l.live+"Pl", term("Pl", l.g.live, units.LineForce))
		l.onWall(arm)
	case onHeel:
		force(l.live+"qs Lh", term("qs", l.g.q.Dead+l.g.q.Live, units.Pressure), l.heel())
		arm("Lt + tw + Lh/2", l.toe(), l.thick(), l.heel())
	}
}

// onWall writes the arm of a load on the wall.
func (l *loads) onWall(arm func(string, ...working.Term)) {
	ea := l.w.axialTerms()[2]
	switch e := l.w.Axial.Eccentricity; {
	case e > 0:
		arm("Lt + tw/2 − ea", l.toe(), l.thick(), ea)
	case e < 0:
		arm("Lt + tw/2 + ea", l.toe(), l.thick(), ea)
	default:
		arm("Lt + tw/2", l.toe(), l.thick())
	}
}

// column writes the weight of the soil on a square foot of the heel, in
// brackets where it is a sum and factor is true.
func (l *loads) column(e *expr, factor bool) {
	w := l.w
	moist, wet := term("γ", w.Soil.Weight, units.Weight), term("γsat", w.Soil.Saturated, units.Weight)
	ground, water := w.levelAt(l.g.a, "hA"), level{}
	if w.Water.Standing {
		water = w.levelAt(min(w.Water.Level, l.g.a), "hw")
	}
	switch {
	case water.symbol == "":
		e.symbol(moist).say(" ").symbol(ground.term())
	case near(water.y, ground.y):
		e.symbol(wet).say(" ").symbol(ground.term())
	default:
		if factor {
			e.say("(")
		}
		e.symbol(moist).say(" ").rise(ground, water).say(" + ").symbol(wet).say(" ").symbol(water.term())
		if factor {
			e.say(")")
		}
	}
}

// uplift writes the water's push on the footing: its even part first, then the
// head at the heel.
func (l *loads) uplift(x stability.Weight, name [2]string, even bool) {
	force, arm := l.drive+"γw hw B/2", "2/3 B"
	with := []working.Term{l.water(), l.width(), term("hw", min(l.w.Water.Level, l.g.a), units.Level)}
	if even {
		force, arm = l.drive+"γw tf B", "B/2"
		with[2] = l.deep()
	}
	l.add(name[0], force, units.Of(x.Force, units.LineForce), "statics", with...)
	l.add(name[1], arm, units.Of(x.Arm, units.Level), "statics", l.width())
}

// pushes writes the pushes on both sides, down to the footing's bottom.
func (l *loads) pushes(b stability.Body, names stability.Symbols) {
	w := l.w
	var buf [6]soil.Block
	drive, resist := 0, 0
	for _, bl := range w.blocks(buf[:0], l.g.state, l.g.a, l.g.b, -w.Footing.Thickness, l.g.q) {
		var name [2]string
		var p stability.Push
		factor := l.drive
		switch {
		case bl.Side == 'a':
			name, p = names.Drive[drive], b.Drive[drive]
			drive++
		case l.g.low > 0 && l.g.b > 0:
			name, p, factor = names.Resist[resist], b.Resist[resist], l.resist
			resist++
		default:
			continue
		}
		e := expr{}
		e.say(factor)
		l.push(&e, bl, true)
		l.add(name[0], string(e.text), units.Of(p.Force, units.LineForce), "IBC 2021 1610.1", e.with...)
		e = expr{}
		l.height(&e, bl)
		l.add(name[1], string(e.text), units.Of(p.Height, units.Level), "statics", e.with...)
	}
}

// depth writes how deep the footing's bottom, or its top, lies below a level.
func (l *loads) depth(e *expr, top level, bottom bool) *expr {
	switch {
	case !bottom:
		return e.symbol(top.term())
	case top.symbol == "":
		return e.symbol(l.deep())
	}
	return e.say("(").symbol(top.term()).say(" + ").symbol(l.deep()).say(")")
}

// levels are the ground and the water of a block's side.
func (l *loads) levels(bl soil.Block) (ground, water level) {
	if bl.Side == 'b' {
		return l.w.levelAt(l.g.b, "hB"), level{}
	}
	return l.w.levelAt(l.g.a, "hA"), l.w.levelAt(min(l.w.Water.Level, l.g.a), "hw")
}

// push writes the push of a block down to the footing's bottom, or to its top.
func (l *loads) push(e *expr, bl soil.Block, bottom bool) {
	w := l.w
	ground, water := l.levels(bl)
	eq := term("γeq", units.UnitWeight(w.moist(l.g.state)), units.Weight)
	buoyant := term("γb", units.UnitWeight(w.buoyant(l.g.state)), units.Weight)
	k := number(w.coefficient(l.g.state), w.soilOf(l.g.state).k)
	switch {
	case bl.Cause == soil.Water:
		l.depth(e.symbol(l.water()).say(" "), water, bottom).say("^2/2")
	case bl.Cause == soil.SurchargeDead:
		l.depth(e.symbol(k).say(" ").symbol(term("qd", l.g.q.Dead, units.Pressure)).say(" "), ground, bottom)
	case bl.Cause == soil.SurchargeLive:
		l.depth(e.symbol(k).say(" ").symbol(term("ql", l.g.q.Live, units.Pressure)).say(" "), ground, bottom)
	case !l.wet(bl):
		l.depth(e.symbol(eq).say(" "), ground, bottom).say("^2/2")
	case l.aboveWater(bl):
		e.symbol(eq).say(" ").rise(ground, water).say("^2/2")
	case near(ground.y, water.y):
		l.depth(e.symbol(buoyant).say(" "), water, bottom).say("^2/2")
	default:
		e.say("(").symbol(eq).say(" ").rise(ground, water).say(" + ").symbol(buoyant).say(" ")
		l.depth(l.depth(e, water, bottom).say("/2) "), water, bottom)
	}
}

func (l *loads) wet(bl soil.Block) bool { return bl.Side == 'a' && l.w.Water.Standing }

// aboveWater reports the moist soil above standing water.
func (l *loads) aboveWater(bl soil.Block) bool {
	return near(bl.To, min(l.w.Water.Level, l.g.a)) && bl.From > bl.To
}

// height writes how high the push of a block acts above the footing's bottom.
func (l *loads) height(e *expr, bl soil.Block) {
	w := l.w
	ground, water := l.levels(bl)
	switch {
	case bl.Cause == soil.SurchargeDead, bl.Cause == soil.SurchargeLive:
		l.depth(e, ground, true).say("/2")
	case bl.Cause == soil.Water:
		l.depth(e, water, true).say("/3")
	case !l.wet(bl):
		l.depth(e, ground, true).say("/3")
	case l.aboveWater(bl):
		e.symbol(l.deep()).say(" + ")
		if water.symbol != "" {
			e.symbol(water.term()).say(" + ")
		}
		e.rise(ground, water).say("/3")
	case near(ground.y, water.y):
		l.depth(e, water, true).say("/3")
	default:
		moist := func() {
			e.symbol(term("γeq", units.UnitWeight(w.moist(l.g.state)), units.Weight)).say(" ").rise(ground, water).say(" + ")
			l.depth(e.symbol(term("γb", units.UnitWeight(w.buoyant(l.g.state)), units.Weight)).say(" "), water, true)
		}
		l.depth(e, water, true).say(" (3 ")
		moist()
		e.say(")/(3 (2 ")
		moist()
		e.say("))")
	}
}

// passive writes what the ground before the footing gives.
func (l *loads) passive(b stability.Body) {
	if b.Passive <= 0 {
		return
	}
	e := expr{}
	grade := l.w.levelAt(l.g.b, "hB")
	e.symbol(term("kp", passiveRate, units.Weight)).say(" ")
	if from := l.w.Footing.PassiveFrom; l.g.b > from {
		e.say("(")
		l.depth(&e, grade, true).say("^2 − ").rise(grade, level{symbol: "hp", y: from}).say("^2)/2")
	} else {
		l.depth(&e, grade, true).say("^2/2")
	}
	e.to(l.c, "Pp", units.Of(b.Passive, units.LineForce), "IBC 2021 1806.2")
}

// forces leaves the arms out of the steps of a body.
func forces(all []working.Step) []working.Step {
	out := make([]working.Step, 0, len(all))
	for _, s := range all {
		if arm, _, comma := strings.Cut(s.Symbol, ","); comma && strings.Contains("x u y z", arm) {
			continue
		}
		out = append(out, s)
	}
	return out
}
