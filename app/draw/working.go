package draw

import (
	"math"
	"strings"

	"standingbeam/app/formula"
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Sketch is a small picture in the working of a check. It is drawn from the
// numbers of the working and from nothing else, and says them as they are
// printed there.
type Sketch struct {
	Kind  string // what it shows: "push", "bars", "base"
	SVG   string
	Desc  string
	Ends  bool  // it belongs to what there is, else to what is asked
	Boxes []Box // every line of type
	Lost  []string
}

// SketchWidth is the width of every sketch in pixels at its own size.
const SketchWidth = 360.0

// sketch is one sketch while it is drawn.
type sketch struct {
	check  calc.Check
	lines  []formula.Line
	sp     words.Speaker
	values map[string]formula.Given
	s      sheet
	p      placer
	labels []label
	kind   string
	ends   bool
}

// Working draws what helps to follow a working.
func Working(c calc.Check, lines []formula.Line, s words.Speaker) (out []Sketch) {
	k := &sketch{check: c, lines: lines, sp: s, values: map[string]formula.Given{}}
	for i := range lines {
		for _, t := range lines[i].Terms {
			if _, known := k.values[t.Symbol]; !known {
				k.values[t.Symbol] = t
			}
		}
	}
	for i := range lines {
		k.values[lines[i].Step.Symbol] = lines[i].Result
	}
	for _, draw := range [...]func(*sketch) bool{(*sketch).push, (*sketch).body, (*sketch).base, (*sketch).projection,
		(*sketch).reinforced, (*sketch).uncracked, (*sketch).anchored, (*sketch).spaced, (*sketch).dragged, (*sketch).together, (*sketch).bent} {
		if draw(k) {
			out = append(out, k.finish())
		}
	}
	return out
}

// begin starts a sketch of a kind and a height.
func (k *sketch) begin(kind string, high float64, ends bool) {
	k.s, k.labels, k.kind, k.ends = sheet{}, nil, kind, ends
	k.p = placer{w: SketchWidth, h: high, inked: newInked(SketchWidth, high)}
}

func (k *sketch) finish() Sketch {
	k.p.place(k.labels)
	body := k.s.b
	var said []string
	for _, l := range k.labels {
		for _, n := range l.lines {
			said = append(said, unmarked(n.text))
		}
	}
	out := Sketch{Kind: k.kind, Ends: k.ends, Desc: strings.ReplaceAll(strings.Join(said, "; "), "=; ", "= "), Lost: k.p.lost}
	k.s = sheet{b: make([]byte, 0, len(body)+1<<10)}
	k.s.raw(`<svg class="picture sketch" xmlns="http://www.w3.org/2000/svg" role="img" viewBox="0 0 360`)
	k.s.b = appendNumber(append(k.s.b, ' '), k.p.h)
	k.s.raw(`"><title>`)
	k.s.escape(k.sp.Word("sketch." + k.kind))
	k.s.raw("</title><desc>")
	k.s.escape(out.Desc)
	k.s.raw("</desc>")
	k.s.b = append(k.s.b, body...)
	out.Boxes = k.s.letter(k.p.done)
	k.s.raw("</svg>")
	out.SVG = string(k.s.b)
	return out
}

// has reports whether the working has all of these symbols.
func (k *sketch) has(symbols ...string) bool {
	for _, s := range symbols {
		if _, ok := k.values[s]; !ok {
			return false
		}
	}
	return true
}

// uses reports whether the step of a symbol takes another one.
func (k *sketch) uses(symbol, other string) bool {
	for i := range k.lines {
		if k.lines[i].Step.Symbol != symbol {
			continue
		}
		for _, t := range k.lines[i].Terms {
			if t.Symbol == other {
				return true
			}
		}
	}
	return false
}

// v is the value of a symbol in inches and pounds, 0 where there is none.
func (k *sketch) v(symbol string) float64 { return k.values[symbol].Of.Base }

// is writes a symbol with its value as the working prints it, or in metric
// units.
func (k *sketch) is(symbol string) string {
	g := k.values[symbol]
	if k.sp.System == words.Metric && g.Of.Kind.US() != g.Of.Kind.Metric() {
		return symbolOf(symbol) + " = " + k.sp.Quantity(g.Of)
	}
	if g.Unit.Symbol == "" {
		return symbolOf(symbol) + " = " + g.Text
	}
	return symbolOf(symbol) + " = " + g.Text + " " + g.Unit.Sign()
}

// amount writes a value that the working does not have by itself, with the
// digits of one that it has.
func (k *sketch) amount(v float64, kind units.Kind) string {
	q := units.Quantity{Base: v, Kind: kind}
	if k.sp.System == words.Metric {
		return k.sp.Quantity(q)
	}
	digits := 0
	if us := math.Abs(q.US()); us > 0 {
		digits = min(4, max(0, 3-int(math.Floor(math.Log10(us)))))
	}
	text := k.sp.Number(q.US(), digits)
	if digits > 0 {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".,")
	}
	return text + " " + kind.US().Sign()
}

// Marks around what stands below a letter, in a line of type.
const (
	lower = '\x01'
	raise = '\x02'
)

// symbolOf writes a symbol with what stands below its letter between marks.
func symbolOf(symbol string) string {
	letter, below := formula.Letters(symbol)
	if below == "" {
		return letter
	}
	return letter + string(lower) + below + string(raise)
}

// unmarked is a line of type without marks.
func unmarked(text string) string {
	return strings.Map(func(r rune) rune {
		if r == lower || r == raise {
			return -1
		}
		return r
	}, text)
}

// say puts a label beside a point. where lists the places to try: r, l, u and d
// are beside, above and below it, two of them the corners between; t turns it.
// One that finds none of them free goes to the nearest place that is, and keeps
// a leader.
func (k *sketch) say(class string, x, y float64, where, text string) {
	k.pin(class, x, y, x, y, where, text)
}

// tell says a symbol with its value.
func (k *sketch) tell(class string, x, y float64, where, symbol string) {
	k.pin(class, x, y, x, y, where, k.is(symbol))
}

// pin is say for a label that stands at (sx, sy) and speaks of (x, y).
func (k *sketch) pin(class string, x, y, sx, sy float64, where, text string) {
	l := label{class: class, x: x, y: y, rank: 1, wander: true, tie: 30}
	for _, n := range strings.Split(k.sp.Below(text), "\n") {
		l.lines = append(l.lines, plainLine(n))
	}
	const gap = cellSize + 0.5
	for _, w := range strings.Fields(where) {
		s := spot{x: sx, y: sy}
		for _, r := range w {
			switch r {
			case 'r':
				s.h, s.x = 1, sx+gap
			case 'l':
				s.h, s.x = -1, sx-gap
			case 'u':
				s.v, s.y = -1, sy-gap
			case 'd':
				s.v, s.y = 1, sy+gap
			case 't':
				s.turned = true
			}
		}
		l.spots = append(l.spots, s)
	}
	k.labels = append(k.labels, l)
}

// line draws a line that labels keep clear of.
func (k *sketch) line(class string, x1, y1, x2, y2 float64) {
	k.s.segment(class, x1, y1, x2, y2)
	k.p.inked.line(x1, y1, x2, y2, 9)
}

// arrow draws an arrow to (x2, y2). Short ones shrink.
func (k *sketch) arrow(class string, x1, y1, x2, y2 float64) {
	n := math.Hypot(x2-x1, y2-y1)
	if n < 2 {
		return
	}
	head := math.Min(9, 0.8*n)
	dx, dy := (x2-x1)/n, (y2-y1)/n
	k.line(class+" shaft", x1, y1, x2-dx*head*0.8, y2-dy*head*0.8)
	k.s.draw(class+" tip", new(path).head(x2, y2, dx, dy, head))
}

// across draws a level dimension line, and upright one that stands.
func (k *sketch) across(x1, x2, y float64) {
	k.line("dimension", x1, y, x2, y)
	k.s.draw("dimension", new(path).move(x1-3, y+4).line(x1+3, y-4).move(x2-3, y+4).line(x2+3, y-4))
}

func (k *sketch) upright(x, y1, y2 float64) {
	k.line("dimension", x, y1, x, y2)
	k.s.draw("dimension", new(path).move(x-4, y1+3).line(x+4, y1-3).move(x-4, y2+3).line(x+4, y2-3))
}

// block draws a closed shape through points that come as x, y, x, y.
func (k *sketch) block(class string, at ...float64) {
	p := new(path).move(at[0], at[1])
	for i := 2; i+1 < len(at); i += 2 {
		p.line(at[i], at[i+1])
	}
	k.s.draw(class, p.close())
}
