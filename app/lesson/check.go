package lesson

import (
	"math"
	"strconv"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// fate is what becomes of a wall.
type fate uint8

// The three answers of the check, in their order.
const (
	stands fate = iota + 1
	tears
	falls
)

// caseOf is one of the three walls to judge.
type caseOf struct {
	id   string
	fate fate
	wall func(k *kit) calc.Input
	bars calc.Face // where its verticals are drawn, none = FaceUnset
	held bool      // floor and slab are in
}

var cases = [3]caseOf{
	{"bars", tears, barsWall, calc.FaceA, true},
	{"crawl", stands, crawlWall, calc.FaceUnset, true},
	{"today", falls, todayWall, calc.FaceB, false},
}

// barsWall is held and filled, with its bars on the soil side.
func barsWall(k *kit) calc.Input {
	w := k.held(k.pick(9*ft, mm(2700)), k.pick(9*ft, mm(2700)))
	w.Vertical = calc.Bars{Fixed: true, Size: 5, Spacing: k.pick(16*in, mm(400)), Face: calc.FaceA}
	w.FloorEdge = 2000 * units.PLF
	return w
}

// crawlWall is low and has no verticals.
func crawlWall(k *kit) calc.Input {
	w := k.held(k.pick(4*ft, mm(1200)), k.pick(3*ft, mm(900)))
	w.FloorEdge = 2000 * units.PLF
	return w
}

// todayWall has its bars where they belong, and neither floor nor slab yet.
func todayWall(k *kit) calc.Input {
	w := k.held(k.pick(9*ft, mm(2700)), k.pick(7*ft, mm(2100)))
	w.Vertical = calc.Bars{Fixed: true, Size: 5, Spacing: k.pick(16*in, mm(400)), Face: calc.FaceB}
	w.FloorEdge = 2000 * units.PLF
	w.Today = calc.Today{Given: true}
	return w
}

// newCheck is the last screen.
func newCheck(f Form) View {
	sp := f.Speaker
	v := View{ID: judge, Title: sp.Word("lesson.check.title"), Lead: sp.Word("lesson.check.lead"), Fragment: Address(f)}
	right, done := 0, 0
	for i := range cases {
		c := cases[i].view(f, i)
		v.Cases = append(v.Cases, c)
		if c.Question.Guessed {
			done++
		}
		if c.Question.Guessed && c.Question.Right {
			right++
		}
	}
	if done == len(cases) {
		v.Score = sp.Sentence("lesson.check.score", strconv.Itoa(right), strconv.Itoa(done))
	}
	v.Prev, _ = around(sp, len(all))
	return v
}

func (c *caseOf) view(f Form, n int) Case {
	k := newKit(f.Speaker, "why-case-"+c.id, f.Width, f.Height)
	guess := f.Cases[n]
	k.asking = guess == 0
	in0 := c.wall(k)
	r := answer(in0)
	c.draw(k, &r)
	name := "lesson.check." + c.id
	out := Case{Title: k.sp.Sentence(name+".title", strconv.Itoa(n+1))}
	args := c.args(k, &r)
	out.Picture = Picture{SVG: k.svg(), Width: k.w, Height: k.h, Boxes: k.boxes, Lost: k.lost, Desc: k.sp.Sentence(name+".lead", args...)}
	q := Question{Text: k.sp.Sentence(name+".lead", args...), Asked: k.asking, Guessed: guess > 0, Right: guess == int(c.fate)}
	for i := range 3 {
		q.Choices = append(q.Choices, Choice{Letter: string(rune('A' + i)), Text: k.sp.Word("lesson.check.choice." + strconv.Itoa(i+1)),
			Chosen: guess == i+1, Right: !k.asking && int(c.fate) == i+1})
	}
	if !k.asking {
		q.Verdict = verdict(k.sp, q)
		q.Answer = k.sp.Sentence(name+".answer", args...)
	}
	out.Question = q
	return out
}

// args are what the sentences of a case state: height, fill, thickness, bars,
// what bends and what is borne, the level to which it stands alone.
func (c *caseOf) args(k *kit, r *calc.Result) []string {
	in0 := r.Input
	st := stageOf(r, calc.Finished)
	bars := ""
	bears := float64(r.Band.Plain)
	if c.bars != calc.FaceUnset {
		bars = k.sp.Bars(calc.Bar{Size: in0.Vertical.Size, Spacing: in0.Vertical.Spacing})
		bears = float64(r.Band.Bars)
	}
	m := float64(most(st).Factored)
	return []string{k.sp.Length(in0.Height), k.sp.Length(in0.GradeA), k.sp.Size(in0.Thickness), bars,
		k.borne(share(bears, m)), k.lowLength(r.Today.Level), k.sp.Number(math.Floor(share(bears, m)), 0)}
}

// draw draws the wall; once it is judged, what becomes of it.
func (c *caseOf) draw(k *kit, r *calc.Result) {
	in0 := r.Input
	w := k.upright(&in0, room{tallest: k.pick(6*ft, mm(1800)), above: floorDepth, left: 0.42})
	st := stageOf(r, calc.Finished)
	level, _ := peak(&st.Factored)
	switch {
	case k.asking:
	case c.fate == tears:
		w.bend = elastic(&st.Service, 0).broken(level, w.h, 0.07*k.w)
	case c.fate == falls:
		w.bend, w.shift = w.bend.leaning(0.16*w.k), 12
	}
	w.ground(in0.GradeA.Inches(), 0)
	w.slabAtFoot(c.held)
	if c.held {
		w.floor(true)
	}
	w.footing()
	w.draw()
	switch c.bars {
	case calc.FaceA:
		w.bar(2, w.h-2, 1.9)
	case calc.FaceB:
		w.bar(2, w.h-2, w.t-1.2)
	}
	w.push(st, 'a', in0.GradeA.Inches(), share(0.26*k.w, float64(fluid)*9*12))
	k.say("soft", k.sp.Length(in0.GradeA), anchor{8, w.px(in0.GradeA.Inches()) - 12, 1}, anchor{8, w.px(in0.GradeA.Inches()) + 14, 1})
	k.caseLabels(w, c)
}

func (k *kit) caseLabels(w *stand, c *caseOf) {
	if c.bars == calc.FaceUnset {
		return
	}
	x, y := w.x+w.t*w.k+w.bend.u(w.h*0.72)+w.shift+12, w.px(w.h*0.72)
	id := "face.b"
	if c.bars == calc.FaceA {
		id = "face.a"
	}
	k.say("steel", k.sp.Sentence("lesson.check.bars-at", k.sp.Word(id)), anchor{x, y, 1}, anchor{k.w - 4, y, -1}, anchor{k.w - 4, y + 20, -1})
}
