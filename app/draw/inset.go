package draw

import (
	"math"

	"standingbeam/calc"
)

// Size of the inset.
const (
	insetWidth  = 51.0
	insetHeight = 70.0
)

// inset shows, beside the finished wall that a slab ties, the stage before
// that slab: the fill is there already, and nothing holds the top.
func (p *picture) inset() {
	if p.in.Condition != calc.TiedToSlab || !p.held || p.st == nil {
		return
	}
	words := p.insetWords()
	tw, th := 0.0, 0.0
	for _, n := range words {
		tw = math.Max(tw, n.width())
		th += n.height()
	}
	w, h := insetWidth+tw+6, math.Max(insetHeight, th+8)
	best, found := Box{}, false
	least := 40.0
	for i, at := range [][2]float64{{3, p.o.Height - h - 3}, {p.o.Width - w - 3, p.o.Height - h - 3}, {p.o.Width - w - 3, 3},
		{p.o.Width - w - 3, p.o.Height - h - 30}, {3, p.y(0) - h}, {p.o.Width - w - 3, p.y(p.h / 2)}} {
		b := Box{X: at[0], Y: at[1], W: w, H: h}
		if !p.p.free(b) {
			continue
		}
		if c := p.p.inked.cost(b) + float64(3*i); c < least {
			best, found, least = b, true, c
		}
	}
	if !found {
		l := label{class: "ink", lines: words, rank: rankSupport, wander: true, x: p.faceB(), y: p.y(p.h)}
		l.spots = []spot{{x: margin, y: p.o.Height - 2*margin, h: 1, v: -1}, {x: p.o.Width - margin, y: p.o.Height - 2*margin, h: -1, v: -1}}
		p.say(l)
		return
	}
	p.s.rect("inset", "", best.X, best.Y, best.W, best.H)
	p.miniature(best.X+4, best.Y+4)
	l := label{class: "ink", lines: words, x: best.X + insetWidth, y: best.Y + best.H/2}
	l.spots = []spot{{x: best.X + insetWidth + 3, y: best.Y + best.H/2, h: 1}}
	p.p.one(&l)
	p.p.keep(best)
}

// insetWords say what the stage before the slab comes to.
func (p *picture) insetWords() []line {
	state := calc.Holds
	for i := range p.r.Checks {
		c := &p.r.Checks[i]
		if c.Stage != calc.BeforeSlab || !c.Decides {
			continue
		}
		if c.State == calc.Fails || c.State == calc.Open && state != calc.Fails {
			state = c.State
		}
	}
	id := [...]string{calc.Holds: "picture.before.holds", calc.Fails: "picture.before.fails", calc.Open: "picture.before.open"}[state]
	out := []line{plainLine(p.sp.Word("picture.before")), plainLine(p.sp.Word("picture.the-slab"))}
	if p.in.Tie.Before == calc.Rakers {
		id = "picture.before.rakers"
	}
	return append(out, strongLine(p.sp.Word(id)))
}

// miniature draws the wall alone under its fill, leaning.
func (p *picture) miniature(x, y float64) {
	const high, wide = 62.0, 47.0
	base := y + high - 9
	wall := x + 27
	p.s.drawIn("earth", "", new(path).move(x, y+8).line(wall, y+8).line(wall, base).line(wall-9, base).line(wall-9, base+7).line(wall+15, base+7).
		line(wall+15, base).line(x+wide, base).line(x+wide, y+high).line(x, y+high).close())
	p.s.drawIn("hatched", p.o.ID+"-earth", new(path).move(x, y+8).line(wall, y+8).line(wall, base).line(x, base).close())
	p.s.draw("lean", new(path).move(wall, base).cubic(wall, base-15, wall+3, y+22, wall+9, y+6).line(wall+15, y+6).cubic(wall+9, y+22, wall+6, base-15, wall+6, base))
	p.s.rect("concrete edged", "", wall, y+6, 6, base-y-6)
	p.s.rect("concrete edged", "", wall-9, base, 24, 7)
	if p.in.Tie.Before == calc.Rakers {
		p.s.segment("hold shaft", wall+7, y+18, x+wide, base)
	}
	p.s.draw("push shaft", new(path).move(wall-20, base-6).line(wall-5, base-6).move(wall-13, base-20).line(wall-5, base-20))
	p.s.draw("push tip", new(path).head(wall, base-6, 1, 0, 6).head(wall, base-20, 1, 0, 6))
}
