package calc

import (
	"standingbeam/calc/concrete"
	"standingbeam/calc/plain"
	"standingbeam/calc/rebar"
	"standingbeam/calc/stability"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// cantilever is what a projection of the footing must carry, factored.
type cantilever struct {
	id     string // "heel" or "toe"
	stage  Stage
	role   BarRole
	length units.Length
	cover  units.Length
	moment units.MomentPerLength
	shear  func(from units.Length) units.ForcePerLength // at a distance from the stem's face
	steps  *working.Chain
	atStem bool // reinforced shear at the stem's face, else d from it
}

// designHeel designs the heel for the soil on it: the greater of 1.4 D and
// 1.2 D + 1.6 surcharge; the pressure under the heel is left out, which is
// safe. Shear at the stem's face (by judgement).
func (w *wall) designHeel(st Stage, g ground) {
	l := w.heel()
	if l <= 0 {
		return
	}
	self := float64(concreteWeight) * w.Footing.Thickness.Inches()
	dead := self + float64(w.soilColumn(1*units.Inch, g.a))
	q := 0.0
	if g.surcharge {
		q = float64(w.Surcharge.Dead + w.Surcharge.Live)
	}
	wu := max(w.lf.DeadOnly*dead, w.lf.Dead*dead+w.lf.Earth*q)
	m := units.MomentPerLength(wu * l.Inches() * l.Inches() / 2)
	c := chain()
	c.Add("wu", "max(1.4 D; 1.2 D + 1.6 q)", units.Of(units.Stress(wu), units.Pressure), "5.3.1",
		term("D", units.Stress(dead), units.Pressure), term("q", units.Stress(q), units.Pressure))
	c.Add("Mu", "wu L^2 / 2", units.Of(m, units.LineMoment), "", term("wu", units.Stress(wu), units.Pressure), term("L", l, units.Level))
	cover := 1.5 * units.Inch
	w.projection(cantilever{id: "heel", stage: st, role: HeelBar, length: l, cover: cover, moment: m, steps: c, atStem: true,
		shear: func(from units.Length) units.ForcePerLength {
			return units.ForcePerLength(wu * max(0, (l-from).Inches()))
		}})
}

// designToe designs the toe for the pressure under it: every load at 1.6, so
// that the one service diagram serves, less 0.9 of the toe's own weight.
func (w *wall) designToe(st Stage, r stability.Result) {
	l := w.Footing.Toe
	if l <= 0 {
		return
	}
	if r.Overturned {
		reason := note("resultant-outside")
		w.failed("toe-flexure", st, units.LineMoment, "13.2.7", reason)
		w.failed("toe-shear", st, units.LineForce, "13.2.7", reason)
		return
	}
	self := w.lf.DeadHelps * float64(concreteWeight) * w.Footing.Thickness.Inches()
	m, _ := w.under(r, l)
	x := l.Inches()
	mu := units.MomentPerLength(max(0, w.lf.Earth*m-self*x*x/2))
	c := chain()
	c.Add("Mu", "1.6 Mq - 0.9 wc L^2 / 2", units.Of(mu, units.LineMoment), "5.3.1",
		term("Mq", units.MomentPerLength(m), units.LineMoment),
		term("wc", units.Stress(float64(concreteWeight)*w.Footing.Thickness.Inches()), units.Pressure), term("L", l, units.Level))
	w.projection(cantilever{id: "toe", stage: st, role: ToeBar, length: l, cover: footingCover, moment: mu, steps: c,
		shear: func(from units.Length) units.ForcePerLength {
			rest := l - from
			if rest <= 0 {
				return 0
			}
			_, v := w.under(r, rest)
			return units.ForcePerLength(max(0, w.lf.Earth*v-self*rest.Inches()))
		}})
}

// under integrates the service bearing over the outer length l of the toe:
// its moment about the inner end and its sum.
func (w *wall) under(r stability.Result, l units.Length) (m, v float64) {
	x := l.Inches()
	q0 := float64(r.BearingToe)
	slope := (float64(r.BearingHeel) - q0) / w.Footing.Width.Inches()
	if r.Contact < w.Footing.Width {
		slope = -q0 / r.Contact.Inches()
		if c := r.Contact.Inches(); x > c {
			v = q0 * c / 2
			return v * (x - c/3), v
		}
	}
	v = q0*x + slope*x*x/2
	m = q0*x*x/2 + slope*x*x*x/6
	return m, v
}

// projection answers one cantilever of the footing: plain where chapter 14
// carries it (2 in taken off against soil, 8 in at least), else with bars.
func (w *wall) projection(p cantilever) {
	tf := w.Footing.Thickness
	ps := plain.Section{Fc: w.Material.Fc, H: tf - w.aci.PlainSoilLoss, Lambda: 1, Phi: w.aci.PhiPlain}
	v := p.shear(ps.H)
	if tf >= w.aci.PlainFooting && p.moment <= ps.DesignMoment(nil) && v <= ps.DesignShear(nil) {
		w.ask(p.id+"-flexure", p.stage, units.Of(p.moment, units.LineMoment), units.Of(ps.DesignMoment(p.steps), units.LineMoment), "14.5.2.1", steps(p.steps))
		c := chain()
		w.ask(p.id+"-shear", p.stage, units.Of(v, units.LineForce), units.Of(ps.DesignShear(c), units.LineForce), "14.5.5.1", steps(c))
		return
	}
	bar, spacing := w.chooseAcross(p)
	sec := w.acrossSection(p, bar)
	sec.As = bar.PerLength(spacing)
	w.ask(p.id+"-flexure", p.stage, units.Of(p.moment, units.LineMoment), units.Of(sec.Flexure(p.steps).Design, units.LineMoment), "22.3", steps(p.steps))
	from := sec.D
	if p.atStem {
		from = 0
	}
	c := chain()
	w.ask(p.id+"-shear", p.stage, units.Of(p.shear(from), units.LineForce), units.Of(sec.Shear(0, false, c), units.LineForce), "22.5.5.1", steps(c))
	w.r.Bars = append(w.r.Bars, Bar{Role: p.role, Direction: "across the footing", Size: bar.Number, Spacing: spacing,
		Cover: p.cover, Depth: sec.D, Hook: rebar.HookTail(bar), Rulebook: w.aci.Name, Clause: "7.6.1.1"})
}

func (w *wall) acrossSection(p cantilever, bar rebar.Bar) concrete.Section {
	return concrete.Section{Fc: w.Material.Fc, Fy: w.Material.Fy, H: w.Footing.Thickness,
		D: w.Footing.Thickness - p.cover - bar.Diameter/2, Lambda: 1}
}

// chooseAcross picks the bars across the footing: least steel, then fewer.
func (w *wall) chooseAcross(p cantilever) (rebar.Bar, units.Length) {
	var best rebar.Bar
	var spacing units.Length
	for _, n := range w.Sizes {
		bar, ok := rebar.ByNumber(n)
		if !ok {
			continue
		}
		sec := w.acrossSection(p, bar)
		if sec.D <= 0 {
			continue
		}
		as, fits := sec.SteelFor(p.moment)
		from := sec.D
		if p.atStem {
			from = 0
		}
		vs, carries := steelForShear(sec, p.shear(from))
		if !fits || !carries {
			continue
		}
		min := concrete.SlabMinimum(w.Footing.Thickness)
		as = max(as, vs, units.AreaPerLength(min.Ratio*w.Footing.Thickness.Inches()))
		s := buildable(minLength(min.MaxSpacing, units.Length(float64(bar.Area)/float64(as)*(1+1e-9))))
		if s < closest {
			continue
		}
		a, b := bar.PerLength(s), best.PerLength(max(spacing, 1))
		if spacing == 0 || a < b-1e-9 || (a < b+1e-9 && s > spacing) {
			best, spacing = bar, s
		}
	}
	if spacing == 0 {
		best, _ = rebar.ByNumber(w.Sizes[len(w.Sizes)-1])
		spacing = closest
	}
	return best, spacing
}
