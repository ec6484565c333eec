package draw

import (
	"math"
	"strings"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// reaction writes a reaction in two lines: the service value that fasteners
// are rated by, and the factored one.
func (p *picture) reaction(id string, r *calc.Reaction) []line {
	s := p.sp.Demand(units.Of(units.ForcePerLength(math.Abs(float64(r.Service))), units.LineForce))
	u := p.sp.Demand(units.Of(units.ForcePerLength(math.Abs(float64(r.Factored))), units.LineForce))
	return []line{plainLine(p.sp.Sentence(id, s)), softLine(p.sp.Sentence("picture.service-factored", number(u)))}
}

func (p *picture) sayFloor(r *calc.Reaction, y float64) {
	l := label{class: "ink", lines: p.reaction("picture.floor-holds", r), rank: rankSupport, wander: true, tie: 44}
	l.x, l.y = p.faceB()+20, y
	start := p.faceB() + 52
	l.spots = []spot{{x: start, y: y - 2, h: 1}, {x: start, y: y - 8, h: 1}, {x: p.o.Width - 4, y: y - 2, h: -1}, {x: p.o.Width - 4, y: y - 8, h: -1},
		{x: p.o.Width - 4, y: p.y(p.floorTop()) - 3, h: -1, v: -1}, {x: p.o.Width - 4, y: margin, h: -1, v: 1}, {x: p.faceA(), y: margin, h: -1, v: 1}}
	p.say(l)
}

func (p *picture) sayFoot(id string, r *calc.Reaction, x, y float64) {
	l := label{class: "ink", lines: p.reaction(id, r), rank: rankSupport, wander: true}
	l.x, l.y = x, y
	low := y + 10
	l.spots = []spot{{x: p.o.Width - 4, y: low, h: -1, v: 1}, {x: p.x(p.t+p.toe) + 6, y: low, h: 1, v: 1}, {x: p.o.Width - 4, y: low + 8, h: -1, v: 1},
		{x: p.o.Width - 4, y: p.o.Height - 4, h: -1, v: -1}, {x: p.o.Width - 4, y: low + 24, h: -1, v: 1}}
	p.say(l)
}

func (p *picture) sayTie(r *calc.Reaction, y, top float64) {
	l := label{class: "ink", lines: p.reaction("picture.tie-pulls", r), rank: rankSupport, wander: true}
	l.x, l.y = p.faceA()-20, y
	clear := column + target + grip + 6
	l.spots = []spot{{x: clear, y: top - 4, h: 1, v: -1}, {x: p.faceB(), y: top - 4, h: -1, v: -1}, {x: p.faceB() + 20, y: top - 4, h: -1, v: -1}, {x: p.faceB() + 8, y: y, h: 1}, {x: p.faceA() - 4, y: y + 12, h: -1, v: 1}}
	p.say(l)
	t := p.in.Tie
	if t.SlabLength <= 0 {
		return
	}
	q := label{class: "ink", lines: []line{plainLine(p.sp.Sentence("picture.slab-length", p.sp.Length(t.SlabLength)))}, rank: rankMore, wander: true, tie: 16, most: 8}
	q.x, q.y = 60, y
	q.spots = []spot{{x: 4, y: top - 3, h: 1, v: -1}, {x: column + target + grip + 4, y: y + 10, h: 1, v: 1}, {x: column + grip + 4, y: y + 18, h: 1, v: 1}, {x: p.faceA() - 4, y: y + 18, h: -1, v: 1}}
	p.say(q)
}

// sayEmpty says that nothing holds the top.
func (p *picture) sayEmpty() {
	x, y := p.faceB(), p.y(p.h)
	l := label{class: "ink", lines: []line{plainLine(p.sp.Word("picture.nothing")), plainLine(p.sp.Word("picture.holds-top"))}, rank: rankSupport, wander: true}
	l.x, l.y = x, y
	l.spots = []spot{{x: x + 22, y: y - 6, h: 1, v: 1}, {x: x + 22, y: y - 20, h: 1, v: 1}, {x: p.o.Width - 4, y: y - 6, h: -1, v: 1},
		{x: (p.faceA() + x) / 2, y: y - 6, v: -1}, {x: p.o.Width - 4, y: margin, h: -1, v: 1}, {x: p.faceA() - 6, y: y, h: -1, v: -1}}
	p.say(l)
	p.sayStability()
}

// sayStability writes the safety against tipping and sliding on the open side.
func (p *picture) sayStability() {
	if p.st == nil || p.st.Stability == nil {
		return
	}
	l := label{class: "ink", rank: rankMore, wander: true, most: 14}
	need := ""
	for _, id := range []string{"overturning", "sliding"} {
		c := p.check(id)
		if c == nil || c.State == calc.NotApplicable {
			continue
		}
		have := p.sp.Capacity(c.Capacity)
		if c.Capacity.Base > 20 {
			have = p.sp.Sentence("picture.over", p.sp.Number(20, 0))
		}
		word := "picture." + id
		switch {
		case c.State == calc.Fails && !c.Decides && id == "sliding":
			word += ".helped" // the slab in front takes the rest, by a check of its own
		case c.State == calc.Fails:
			word += ".short"
			l.rank, l.most = rankBand, 0
		}
		l.lines = append(l.lines, plainLine(p.sp.Sentence(word, have)))
		need = p.sp.Demand(units.Quantity{Base: c.Demand.Base})
	}
	if len(l.lines) == 0 {
		return
	}
	l.lines = append(l.lines, softLine(p.sp.Sentence("picture.needed", need)))
	x := p.faceB() + 24
	l.x, l.y = p.faceB()+8, p.y(p.h*0.5)
	for _, t := range []float64{0.6, 0.5, 0.4, 0.7, 0.3} {
		y := p.y(p.h * t)
		l.spots = append(l.spots, spot{x: x, y: y, h: 1}, spot{x: p.o.Width - 4, y: y, h: -1})
	}
	p.say(l)
}

// check finds the first check of that name in the stage.
func (p *picture) check(id string) *calc.Check {
	for i := range p.r.Checks {
		if c := &p.r.Checks[i]; c.ID == id && p.st != nil && c.Stage == p.st.Name && !c.NoValue {
			return c
		}
	}
	return nil
}

// sayBearing writes the greatest bearing under the end where it is.
func (p *picture) sayBearing(toe, heel, y float64, atToe bool) {
	text := p.sp.Sentence("picture.bearing", p.sp.Demand(units.Of(p.st.Stability.BearingMax, units.Pressure)))
	l := label{class: "ink", rank: rankFooting, wander: true, lines: []line{plainLine(text)}, tie: 40, most: 14}
	if load, level, ok := strings.Cut(text, ", "); ok && p.narrow() {
		l.lines = []line{plainLine(load), plainLine(level)}
	}
	x, h := toe, int8(-1)
	if !atToe {
		x, h = heel, 1
	}
	l.x, l.y = x, y-4
	low := p.window.FootTop + p.foot*p.window.Scale + bearing + 2
	l.spots = []spot{{x: x, y: low, h: h, v: 1}, {x: (toe + heel) / 2, y: low, v: 1}, {x: x - float64(h)*6, y: y - 10, h: -h}}
	p.say(l)
}
