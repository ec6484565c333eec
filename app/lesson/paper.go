package lesson

import "strconv"

// The pictures of a hand-out, in CSS pixels.
const paperWidth, paperHeight, panelHeight = 300, 280, 330

// NewPaper is the hand-out of a lesson; one of a screen that has none is
// empty.
func NewPaper(f Form) Paper {
	l, _, ok := find(f.ID)
	if !ok {
		return Paper{}
	}
	k := newKit(f.Speaker, "why-paper-0", paperWidth, l.high(paperHeight))
	k.picks = firstPicks
	facts := l.measure(k)
	l.draw(k, l.start(k), true)
	p := Paper{Asking: k.svg(), Answer: string(rune('A'+l.right-1)) + ". " + l.word(k, "answer", facts.answer), Keep: l.word(k, "keep", facts.keep)}
	stops := l.stops(k)
	for i, at := range l.prints(k) {
		p.Panels = append(p.Panels, l.panel(f, stops[nearest(stops, at)], i+1))
	}
	return p
}

// high is how high a picture is where others have that height.
func (l *lesson) high(others float64) float64 {
	if l.low {
		return 0.72 * others
	}
	return others
}

func (l *lesson) panel(f Form, s stop, n int) Panel {
	k := newKit(f.Speaker, "why-paper-"+strconv.Itoa(n), paperWidth, l.high(panelHeight))
	k.picks = f.Picks
	l.draw(k, s.at, false)
	return Panel{SVG: k.svg(), At: s.text, Say: k.told.say, Boxes: k.boxes, Width: k.w, Height: k.h, Lost: k.lost}
}
