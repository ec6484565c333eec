package calc

import (
	"standingbeam/calc/concrete"
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

// across is the bars across a projection of the footing; none where plain
// concrete carries it.
type across struct {
	bar     rebar.Bar
	spacing units.Length
}

func (a across) none() bool { return a.spacing == 0 }

// projection answers one cantilever of the footing, plain where chapter 14
// carries it, else with bars, and keeps the bars in a.
func (w *wall) projection(p cantilever, a *across) {
	ps := w.plainFooting()
	asPlain := w.plainCarries(p, ps)
	if w.built != nil {
		*a = w.builtAcross(p)
		asPlain = a.none()
	}
	if asPlain {
		w.recordPlainFooting(p.steps)
		w.ask(p.id+"-flexure", p.stage, units.Of(p.moment, units.LineMoment), units.Of(ps.DesignMoment(p.steps), units.LineMoment), "14.5.2.1", steps(p.steps))
		c := p.shearSteps(p.plainFrom(ps))
		w.recordPlainFooting(c)
		w.ask(p.id+"-shear", p.stage, units.Of(p.shear(p.plainFrom(ps)), units.LineForce), units.Of(ps.DesignShear(c), units.LineForce), "14.5.5.1", steps(c))
		return
	}
	if w.built == nil {
		a.bar, a.spacing = w.chooseAcross(p)
	}
	sec := w.acrossSection(p, a.bar)
	sec.As = a.bar.PerLength(a.spacing)
	bent := sec
	bent.As = units.AreaPerLength(w.anchored(p, *a, w.Material.Fc) * float64(sec.As))
	w.recordAcross(p.steps, p, *a, sec, true)
	w.ask(p.id+"-flexure", p.stage, units.Of(p.moment, units.LineMoment), units.Of(bent.Flexure(p.steps).Design, units.LineMoment), "22.3", steps(p.steps), of(p.role))
	c := p.shearSteps(p.shearFrom(sec))
	w.recordAcross(c, p, *a, sec, false)
	w.ask(p.id+"-shear", p.stage, units.Of(p.shear(p.shearFrom(sec)), units.LineForce), units.Of(sec.Shear(0, false, c), units.LineForce), "22.5.5.1", steps(c), of(p.role))
	if p.role == ToeBar {
		w.ask(p.id+"-depth", p.stage, units.Of(leastFootingDepth, units.Size), units.Of(sec.D, units.Size), "13.3.1.2", of(p.role))
	}
	min := concrete.SlabMinimum(w.Footing.Thickness)
	mc := w.more()
	mc.Add("As,min", "ρ tf", units.Of(min.Area(w.Footing.Thickness), units.SteelArea), min.Clause, number("ρ", min.Ratio), term("tf", w.Footing.Thickness, units.Size))
	w.recordSteel(mc, "As", a.bar, a.spacing)
	w.ask(p.id+"-minimum", p.stage, units.Of(min.Area(w.Footing.Thickness), units.SteelArea), units.Of(sec.As, units.SteelArea), min.Clause, of(p.role), steps(mc))
	w.r.Bars = append(w.r.Bars, Bar{Role: p.role, Direction: "across the footing", Size: a.bar.Number, Spacing: a.spacing,
		Cover: w.acrossCover(p, a.bar), Depth: sec.D, Hook: rebar.HookTail(a.bar), Rulebook: w.aci.Name, Clause: "7.6.1.1"})
}

// leastFootingDepth is the least effective depth of a footing's bottom bars,
// ACI 318-19 13.3.1.2.
const leastFootingDepth = 6 * units.Inch

func (w *wall) builtAcross(p cantilever) across {
	if p.id == "toe" {
		return w.built.toeBars
	}
	return w.built.heelBars
}

// shearFrom is where the shear of a reinforced projection is asked.
func (p cantilever) shearFrom(sec concrete.Section) units.Length {
	if p.atStem {
		return 0
	}
	return sec.D
}

// acrossCover is the cover of bars across the footing: the toe's are cast on the
// ground, the heel's lie under the fill as a wall's on the soil side.
func (w *wall) acrossCover(p cantilever, bar rebar.Bar) units.Length {
	if p.role == ToeBar {
		return footingCover
	}
	return w.leastCover(FaceA, bar)
}

func (w *wall) acrossSection(p cantilever, bar rebar.Bar) concrete.Section {
	return concrete.Section{Fc: w.Material.Fc, Fy: w.Material.Fy, H: w.Footing.Thickness,
		D: w.Footing.Thickness - w.acrossCover(p, bar) - bar.Diameter/2, Lambda: 1}
}

// carries reports whether the projection, as plain concrete or with the bars
// that it has, takes p at concrete strength fc.
func (w *wall) carries(p cantilever, a across, fc units.Stress) bool {
	if a.none() {
		ps := w.plainFooting()
		ps.Fc = fc
		return w.plainCarries(p, ps)
	}
	sec := w.acrossSection(p, a.bar)
	sec.As, sec.Fc = a.bar.PerLength(a.spacing), fc
	bent := sec
	bent.As = units.AreaPerLength(w.anchored(p, a, fc) * float64(sec.As))
	return !over(p.moment, bent.Flexure(nil).Design) && !over(p.shear(p.shearFrom(sec)), sec.Shear(0, false, nil))
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
		s := w.acrossSpacing(p, bar)
		if s < w.closestSpacing() {
			continue
		}
		a, b := bar.PerLength(s), best.PerLength(max(spacing, 1))
		if spacing == 0 || a < b-1e-9 || (a < b+1e-9 && s > spacing) {
			best, spacing = bar, s
		}
	}
	if spacing == 0 {
		best, _ = rebar.ByNumber(w.Sizes[len(w.Sizes)-1])
		spacing = w.closestSpacing()
	}
	return best, spacing
}

// acrossSpacing is the widest buildable spacing of the bar that carries p; 0
// where none does.
func (w *wall) acrossSpacing(p cantilever, bar rebar.Bar) units.Length {
	sec := w.acrossSection(p, bar)
	if sec.D <= 0 {
		return 0
	}
	as, fits := sec.SteelFor(p.moment)
	vs, carries := steelForShear(sec, p.shear(p.shearFrom(sec)))
	if !fits || !carries {
		return 0
	}
	min := concrete.SlabMinimum(w.Footing.Thickness)
	widest := func(share float64) units.Length {
		if share <= 0 {
			return 0
		}
		need := max(units.AreaPerLength(float64(as)/share), vs, min.Area(w.Footing.Thickness))
		return buildable(minLength(min.MaxSpacing, units.Length(float64(bar.Area)/float64(need)*(1+1e-9))))
	}
	s := widest(w.anchored(p, across{bar, min.MaxSpacing}, w.Material.Fc))
	if s < 6*bar.Diameter { // hooks so close hold less
		s = widest(w.anchored(p, across{bar, s}, w.Material.Fc))
	}
	return s
}
