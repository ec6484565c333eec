package sheet

import (
	"math"

	"standingbeam/calc"
	"standingbeam/calc/rebar"
)

// placed is a set of bars where it lies.
type placed struct {
	calc.Bar
	mark   string
	db     float64   // diameter
	x      float64   // of the middle of an upright bar, from face A
	line   []vertex  // in the section, a bar that lies in its plane
	dots   []point   // in the section, bars that cross it
	levels []float64 // of the wall's horizontals
	hooked bool      // the line ends in a hook that is drawn
	flat   bool      // its hook finds no room in the section: turned along the wall
	length float64   // of one bar along its middle, 0 = goes with the wall
	legs   []float64 // of a bent bar, outside to outside
	fits   bool      // a hook's whole tail fits the concrete
}

// place works out where every set of bars lies.
func (s *scene) place() {
	for _, b := range s.r.Bars {
		bar, _ := rebar.ByNumber(b.Size)
		p := placed{Bar: b, mark: string(b.Role), db: bar.Diameter.Inches(), fits: true}
		switch b.Role {
		case calc.VerticalBar, calc.SoilVerticalBar:
			s.vertical(&p)
		case calc.DowelBar:
			s.dowel(&p, bar)
		case calc.ToeBar, calc.HeelBar:
			s.acrossFooting(&p, bar)
		case calc.TieBar:
			s.tieBar(&p, bar)
		}
		s.bars = append(s.bars, p)
	}
	for i := range s.bars {
		switch p := &s.bars[i]; p.Role {
		case calc.HorizontalBar, calc.TopBar:
			s.horizontal(p)
		case calc.FootingBar:
			s.alongFooting(p)
		}
	}
}

// faceX is how far from face A the middle of a wall's bar lies.
func (s *scene) faceX(p *placed) float64 {
	d := p.Depth.Inches()
	switch {
	case p.Face == calc.FaceA && d > 0:
		return s.t - d
	case p.Face == calc.FaceA:
		return p.Cover.Inches() + p.db/2
	case p.Face == calc.FaceB && d <= 0:
		return s.t - p.Cover.Inches() - p.db/2
	case d > 0:
		return d
	}
	return s.t / 2
}

// vertical stands on the footing and ends under the wall's top.
func (s *scene) vertical(p *placed) {
	p.x = s.faceX(p)
	p.length = math.Floor(s.h - topCover + 1e-9)
	p.line = []vertex{{point: point{p.x, 0}}, {point: point{p.x, p.length}}}
}

// dowel stands in the footing on its hook. The hook turns toward the toe where
// it holds a wall that leans that way, else to where the footing is wider.
func (s *scene) dowel(p *placed, bar rebar.Bar) {
	p.x = s.faceX(p)
	up, down := math.Min(p.Up.Inches(), s.h-1), p.Down.Inches()
	if !s.said {
		down = s.tf - earthCover
	}
	leg := rebar.HookLeg(bar).Inches()
	right := s.t + s.toe - topCover - (p.x - p.db/2)
	left := s.heel - topCover + p.x + p.db/2
	dir := 1.0
	if leg > right && left > right {
		dir = -1
	}
	p.flat = leg > math.Max(left, right)
	s.hooked(p, point{p.x, up}, point{p.x, -down}, point{dir, 0}, bar)
	p.length = math.Ceil(p.length - 1e-9)
	if !s.said {
		p.length, p.legs = 0, nil // they hang on the footing
	}
}

// hooked draws a bar from an end to the outside of a hook that turns aside,
// and takes its length along its middle.
//
//	length = straight + π/2 (r + db/2) + tail
func (s *scene) hooked(p *placed, end, outside, aside point, bar rebar.Bar) {
	r := rebar.BendDiameter(bar).Inches()/2 + p.db/2
	leg, tail := rebar.HookLeg(bar).Inches(), rebar.HookTail(bar).Inches()
	far := math.Hypot(outside.x-end.x, outside.y-end.y)
	along := point{(outside.x - end.x) / far, (outside.y - end.y) / far}
	p.legs, p.hooked = []float64{far, leg}, true
	p.length = math.Max(0, far-p.db/2-r) + math.Pi/2*r + tail
	bend := math.Max(0, far-p.db/2-r)
	at := func(a, b float64) point {
		return point{end.x + along.x*a + aside.x*b, end.y + along.y*a + aside.y*b}
	}
	turn := quarter
	if along.x*aside.y-along.y*aside.x < 0 {
		turn = -quarter
	}
	p.line = []vertex{{point: end}, {at(bend, 0), turn}, {point: at(bend+r, r)}, {point: at(bend+r, leg-p.db/2)}}
	if p.flat {
		p.line = []vertex{{point: end}, {point: at(bend+r, 0)}}
		p.hooked = false
	}
}

// acrossFooting runs across the footing: toe bars below with the hook at the
// toe's end, heel bars above with the hook at the heel's end.
func (s *scene) acrossFooting(p *placed, bar rebar.Bar) {
	leg := rebar.HookLeg(bar).Inches()
	a, b := point{-s.heel + earthCover, 0}, point{s.t + s.toe - earthCover, 0}
	up := point{0, 1}
	if p.Role == calc.ToeBar {
		a.y = -s.tf + p.Cover.Inches() + p.db/2
	} else {
		a.y = -p.Cover.Inches() - p.db/2
		a.x, b.x, up.y = b.x, a.x, -1
	}
	b.y = a.y
	if p.Hook <= 0 || math.Abs(b.x-a.x) < leg {
		p.length = math.Floor(math.Abs(b.x-a.x) + 1e-9)
		p.line = []vertex{{point: a}, {point: b}}
		return
	}
	other := earthCover // over the hook's end
	if p.Role == calc.ToeBar {
		other = 1.5
	}
	p.flat = leg > s.tf-p.Cover.Inches()-other
	s.hooked(p, a, b, up, bar)
	p.length = math.Floor(p.length + 1e-9)
}

// tieBar runs from its hook in the wall into the slab.
func (s *scene) tieBar(p *placed, bar rebar.Bar) {
	s.hooked(p, point{-p.Length.Inches(), s.brace}, point{p.HookAvail.Inches(), s.brace}, point{0, -1}, bar)
	p.length = math.Ceil(p.length - 1e-9)
}

// horizontal is tied to the verticals on their inner side; the pair at the top
// lies one at each face.
func (s *scene) horizontal(p *placed) {
	p.levels = s.levels(&p.Bar)
	if p.Role == calc.TopBar && p.Count > 1 {
		inner := math.Max(s.t/2-topCover-p.db/2, p.db)
		for i := range p.Count {
			x := s.t/2 - inner + 2*inner*float64(i)/float64(p.Count-1)
			p.dots = append(p.dots, point{x, p.levels[0]})
		}
		return
	}
	p.x = s.faceX(p)
	for _, role := range []calc.BarRole{calc.VerticalBar, calc.SoilVerticalBar, calc.DowelBar} {
		o := s.find(role)
		if o == nil || (o.Face != p.Face && math.Abs(o.x-p.x) > (o.db+p.db)/2) {
			continue
		}
		p.x = o.x + (o.db+p.db)/2
		if o.x > s.t/2 {
			p.x = o.x - (o.db+p.db)/2
		}
		break
	}
	for _, y := range p.levels {
		p.dots = append(p.dots, point{p.x, y})
	}
}

// levels are the heights of a set of horizontals: those listed, else counted
// up by the spacing from half a space above the footing.
func (s *scene) levels(b *calc.Bar) (out []float64) {
	for _, l := range b.Levels {
		out = append(out, math.Min(math.Max(l.Inches(), 1), s.h-1))
	}
	step := b.Spacing.Inches()
	if len(out) > 0 || step < 2 {
		return out
	}
	for y := math.Min(step/2, s.h/2); y < s.h-topCover && len(out) < 80; y += step {
		out = append(out, y)
	}
	return out
}

// alongFooting spreads the bars along the footing over its width, on what
// crosses them below.
func (s *scene) alongFooting(p *placed) {
	y := -s.tf + p.Cover.Inches() + p.db/2
	rise := 0.0
	if d := s.find(calc.DowelBar); d != nil && d.hooked {
		rise = d.db
	}
	if f := s.find(calc.ToeBar); f != nil {
		rise = math.Max(rise, f.db)
	}
	from, to := -s.heel+earthCover+p.db/2, s.t+s.toe-earthCover-p.db/2
	for i := range p.Count {
		share := 0.5
		if p.Count > 1 {
			share = float64(i) / float64(p.Count-1)
		}
		p.dots = append(p.dots, point{from + share*(to-from), y + rise})
	}
}
