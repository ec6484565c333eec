package calc

import (
	"math"

	"standingbeam/calc/concrete"
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// barSet is one layer of verticals. Size 0 means none.
type barSet struct {
	bar     rebar.Bar
	spacing units.Length
	face    Face
	d       units.Length // d given by the person, from the far face; 0 = by cover
	fixed   bool
}

func (b barSet) none() bool { return b.bar.Number == 0 }

func (b barSet) area() units.AreaPerLength {
	if b.none() {
		return 0
	}
	return b.bar.PerLength(b.spacing)
}

// leastCover is the clear cover that ACI 318-19 Table 20.5.1.3.1 asks of a bar
// at face f: 1.5 in (No. 5 and smaller) or 2 in against ground or weather, 0.75
// in inside. A formed face with soil on it is exposed to ground; the open face
// of a free wall, and of one that holds the fill under a slab, to weather.
func (w *wall) leastCover(f Face, b rebar.Bar) units.Length {
	ground := f == FaceA || w.GradeB > 0 || w.freeStem() || w.Condition == TiedToSlab
	switch {
	case !ground:
		return 0.75 * units.Inch
	case b.Number <= 5:
		return 1.5 * units.Inch
	}
	return 2 * units.Inch
}

// cover is the clear cover of a vertical bar at face f: as given, else the
// least.
func (w *wall) cover(f Face, b rebar.Bar) units.Length {
	given := w.Material.CoverA
	if f == FaceB {
		given = w.Material.CoverB
	}
	if given != 0 {
		return given
	}
	return w.leastCover(f, b)
}

// coverOf is the clear cover that the set has where it lies.
func (w *wall) coverOf(b barSet) units.Length {
	if b.face == Centre {
		return w.depth(b, FaceB) - b.bar.Diameter/2
	}
	return w.Thickness - w.depth(b, b.face) - b.bar.Diameter/2
}

// checkCover asks for the cover of bars whose place the person gave.
func (w *wall) checkCover(set barSet, opts []option) {
	given := set.d != 0 || (set.face == FaceA && w.Material.CoverA != 0) || (set.face == FaceB && w.Material.CoverB != 0)
	if !given || set.face == Centre {
		return
	}
	w.ask("cover", Finished, units.Of(w.leastCover(set.face, set.bar), units.Size), units.Of(w.coverOf(set), units.Size), "20.5.1.3.1", opts...)
}

// depth returns d of the set for tension on face f: from the compression face
// to the bar's centre, where the bar lies. A bar on the wrong face keeps the
// small d that it has there.
func (w *wall) depth(b barSet, f Face) units.Length {
	if b.face == Centre {
		if b.d != 0 {
			return min(b.d, w.Thickness-b.d)
		}
		return w.Thickness / 2
	}
	own := b.d
	if own == 0 {
		own = w.Thickness - w.cover(b.face, b.bar) - b.bar.Diameter/2
	}
	if b.face == f {
		return own
	}
	return w.Thickness - own
}

// section returns the reinforced strip for tension on face f.
func (w *wall) section(b barSet, f Face) concrete.Section {
	return concrete.Section{Fc: w.Material.Fc, Fy: w.Material.Fy, H: w.Thickness,
		D: w.depth(b, f), As: b.area(), Lambda: 1}
}

// momentNeed is a factored moment that the verticals must carry.
type momentNeed struct {
	stage Stage
	face  Face // in tension
	m     units.MomentPerLength
	at    units.Length
	pu    units.ForcePerLength // 0.9 D that stands on the section for certain
	joint bool                 // at the footing joint, where only dowels pass
}

// shearNeed is a factored shear.
type shearNeed struct {
	stage Stage
	face  Face
	v     units.ForcePerLength
	at    units.Length
	joint bool
	// tight is the stage whose foot a tight slab presses on: the shear there is
	// asked at d from it.
	tight *StageResult
}

// atD is the shear with the reduction that a strip of depth d has.
func (n shearNeed) atD(w *wall, d units.Length) shearNeed {
	if n.tight == nil {
		return n
	}
	foot := w.footLevel()
	_, v := n.tight.Factored.Shear(foot + d)
	below, _ := n.tight.Factored.Shear(foot)
	top, _ := n.tight.Factored.Shear(w.Brace)
	n.v, n.at = absForce(v), foot+d
	if b := absForce(below); foot > 0 && b > n.v {
		n.v, n.at = b, foot
	}
	if t := absForce(top); t > n.v {
		n.v, n.at = t, w.Brace
	}
	return n
}

// barRule is the minimum and the greatest spacing of a rulebook's chapter.
type barRule func(b barSet) concrete.Minimum

func (w *wall) wallRule(b barSet) concrete.Minimum {
	return concrete.WallVerticalMinimum(b.bar, w.Material.Fy, w.Thickness)
}

// stemRule is the rule of a free stem: a one-way slab (13.3.6.1, 7.6.1.1), with
// the spacing that 24.3.2 allows at fs = 2/3 fy (7.7.2.2).
func (w *wall) stemRule(b barSet) concrete.Minimum {
	m := concrete.SlabMinimum(w.Thickness)
	if s := concrete.CrackSpacing(w.Material.Fy*2/3, w.tensionCover(b)); s < m.MaxSpacing {
		m.MaxSpacing = s
	}
	return m
}

// tensionCover is the concrete between a layer and the face that it serves in
// tension: its own, of bars in the middle and of those that a person has set the
// face that the unbraced stem is pulled at.
func (w *wall) tensionCover(b barSet) units.Length {
	f := b.face
	if f == Centre || b.fixed {
		f = w.pulled
	}
	return w.Thickness - w.depth(b, f) - b.bar.Diameter/2
}

// choose finds the size and spacing for a layer on one face: least steel
// first, then fewer bars. room is the straight-down embedment that a hook has
// in the footing; 0 asks nothing of it. Bars whose hook has no room, or that want
// more cover than was given, are taken only where no others do. When nothing
// carries the need it returns the strongest layer and false, so that the checks
// show by how much.
func (w *wall) choose(face Face, m units.MomentPerLength, v func(d units.Length) units.ForcePerLength, rule barRule, room units.Length) (barSet, bool) {
	best, ok := barSet{}, false
	var least units.AreaPerLength
	for pass := 0; pass < 3 && !ok; pass++ {
		for _, n := range w.Sizes {
			bar, found := rebar.ByNumber(n)
			short := pass < 2 && room > 0 && w.hookLength(bar, 18*units.Inch) > room
			if !found || short || pass == 0 && over(w.leastCover(face, bar), w.cover(face, bar)) {
				continue
			}
			set := barSet{bar: bar, face: face}
			s, fits := w.spacingFor(set, m, v, rule)
			if !fits {
				continue
			}
			set.spacing = s
			if a := set.area(); !ok || a < least-1e-9 || (a < least+1e-9 && s > best.spacing) {
				best, least, ok = set, a, true
			}
		}
	}
	if ok {
		return best, true
	}
	bar, _ := rebar.ByNumber(w.Sizes[len(w.Sizes)-1])
	return barSet{bar: bar, face: face, spacing: w.closestSpacing()}, false
}

// spacingFor returns the widest buildable spacing of the set's bar that
// carries m and v and meets the rule.
func (w *wall) spacingFor(set barSet, m units.MomentPerLength, v func(d units.Length) units.ForcePerLength, rule barRule) (units.Length, bool) {
	sec := w.section(barSet{bar: set.bar, face: set.face, spacing: closest}, set.face)
	sec.As = 0
	as, ok := sec.SteelFor(m)
	if !ok {
		return 0, false
	}
	vs, ok := steelForShear(sec, v(sec.D))
	if !ok {
		return 0, false
	}
	min := rule(set)
	as = max(as, vs, units.AreaPerLength(min.Ratio*w.Thickness.Inches()))
	s := units.Length(min.MaxSpacing)
	if as > 0 {
		s = minLength(s, units.Length(float64(set.bar.Area)/float64(as)*(1+1e-9)))
	}
	s = buildable(s)
	return s, s >= w.closestSpacing()
}

// steelForShear inverts Vc = 8 λs λ ρw^(1/3) √f'c bw d (22.5.5.1 (c)) for the
// steel that a strip without shear reinforcement needs.
func steelForShear(sec concrete.Section, v units.ForcePerLength) (units.AreaPerLength, bool) {
	if v <= 0 {
		return 0, true
	}
	probe := sec
	probe.As = units.AreaPerLength(0.001 * sec.D.Inches())
	base := probe.Shear(0, true, nil)
	if base <= 0 {
		return 0, false
	}
	ratio := float64(v / base)
	// Less than a millionth of an inch is no section of a bar.
	probe.As = units.AreaPerLength(max(1e-6, 0.001*ratio*ratio*ratio*sec.D.Inches()*(1+1e-9)))
	return probe.As, probe.Shear(0, true, nil) >= v*(1-1e-9)
}

// buildable rounds a spacing down to one that a crew sets out: whole inches
// to 8 in, even inches above, 18 in at most for engineered walls.
func buildable(s units.Length) units.Length {
	n := math.Floor(s.Inches() + 1e-9)
	if n > 8 {
		n = 2 * math.Floor(n/2)
	}
	return units.Length(n)
}

func minLength(a, b units.Length) units.Length {
	if a < b {
		return a
	}
	return b
}

// capacity is the design strength of the verticals for tension on face f with
// the axial load pu that helps: the better of the two layers, never their sum.
func (w *wall) capacity(f Face, pu units.ForcePerLength, c *working.Chain) units.MomentPerLength {
	set := w.bestSet(f)
	if set.none() {
		return 0
	}
	sec := w.section(set, f)
	if pu > 0 {
		return sec.FlexureWithAxial(pu, c).Design
	}
	return sec.Flexure(c).Design
}

// bestSet is the layer that is stronger for tension on face f.
func (w *wall) bestSet(f Face) barSet {
	if w.vertA.none() || w.vert.none() {
		if w.vert.none() {
			return w.vertA
		}
		return w.vert
	}
	a, b := w.section(w.vert, f), w.section(w.vertA, f)
	if b.Flexure(nil).Design > a.Flexure(nil).Design {
		return w.vertA
	}
	return w.vert
}
