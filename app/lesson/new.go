package lesson

import (
	"strconv"

	"standingbeam/app/words"
)

// The pictures of the list, in CSS pixels.
const thumbWidth, thumbHeight = 208, 182

// New makes the screen of a form. What the form cannot mean is taken as its
// nearest.
func New(f Form) View {
	if f.ID == judge {
		return newCheck(f)
	}
	l, n, ok := find(f.ID)
	if !ok {
		return newList(f)
	}
	k := newKit(f.Speaker, "why", f.Width, f.Height)
	k.picks = f.Picks
	stops := l.stops(k)
	f.At = min(max(f.At, 0), len(stops)-1)
	v := View{ID: l.id, Count: f.Speaker.Sentence("lesson.count", strconv.Itoa(n+1), strconv.Itoa(len(all)))}
	facts := l.measure(k)
	v.Title, v.Lead = l.word(k, "title", nil), l.word(k, "lead", facts.lead)
	v.Bent = !l.flat
	v.Question = l.question(k, f, facts)
	v.Control = l.control(k, stops, f.At)
	l.draw(k, stops[f.At].at, !f.Shown)
	v.Picture = k.picture(&l, !f.Shown)
	if f.Shown {
		v.Say, v.Meters = k.told.say, k.told.meters
		v.Keep = l.word(k, "keep", facts.keep)
		if l.picks {
			v.Picks = k.pickList()
		}
		if f.Open {
			v.Table = l.table(f, stops)
		}
	}
	v.Prev, v.Next = around(f.Speaker, n)
	v.Fragment = Address(f)
	return v
}

func newKit(sp words.Speaker, id string, w, h float64) *kit {
	return &kit{scene: newScene(id, w, h), sp: sp}
}

// draw draws the lesson with its control at a place.
func (l *lesson) draw(k *kit, at float64, asking bool) {
	k.at, k.asking = at, asking
	l.show(k)
}

func (k *kit) picture(l *lesson, asking bool) Picture {
	p := Picture{SVG: k.svg(), Width: k.w, Height: k.h, Boxes: k.boxes, Lost: k.lost, Desc: l.word(k, "picture", nil)}
	if !asking {
		p.Desc += " " + k.told.say
	}
	return p
}

func (l *lesson) question(k *kit, f Form, facts facts) Question {
	q := Question{Text: l.word(k, "ask", facts.ask), Asked: !f.Shown}
	for i := range facts.choices {
		c := Choice{Letter: string(rune('A' + i)), Text: l.word(k, "choice."+strconv.Itoa(i+1), facts.choices[i]), Chosen: f.Guess == i+1}
		c.Right = f.Shown && l.right == i+1
		q.Choices = append(q.Choices, c)
	}
	if !f.Shown {
		return q
	}
	q.Guessed = f.Guess > 0 && f.Guess <= len(q.Choices)
	q.Right = f.Guess == l.right
	q.Verdict = verdict(k.sp, q)
	q.Answer = l.word(k, "answer", facts.answer)
	return q
}

func verdict(sp words.Speaker, q Question) string {
	switch {
	case !q.Guessed:
		return sp.Word("lesson.verdict.shown")
	case q.Right:
		return sp.Word("lesson.verdict.right")
	}
	return sp.Word("lesson.verdict.wrong")
}

func (l *lesson) control(k *kit, stops []stop, at int) Control {
	c := Control{Label: l.word(k, "control", nil), Named: l.named, At: at}
	c.Less, c.More = l.word(k, "less", nil), l.word(k, "more", nil)
	for _, s := range stops {
		c.Stops = append(c.Stops, s.text)
	}
	return c
}

// table is what the lesson tells at every stop.
func (l *lesson) table(f Form, stops []stop) Table {
	var t Table
	for _, s := range stops {
		k := newKit(f.Speaker, "why-table", 80, 60)
		k.bare, k.picks = true, f.Picks
		l.draw(k, s.at, false)
		row := []string{s.text}
		for _, m := range k.told.meters {
			row = append(row, m.Value)
		}
		if t.Head == nil {
			t.Head = append(t.Head, l.word(k, "control", nil))
			for _, m := range k.told.meters {
				t.Head = append(t.Head, m.Label)
			}
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// Turn is a form in another speaker's units: the control stands at the stop
// that is nearest to where it stood.
func Turn(f Form, sp words.Speaker) Form {
	l, _, ok := find(f.ID)
	if !ok {
		f.Speaker = sp
		return f
	}
	k := newKit(f.Speaker, "", 80, 60)
	k.picks = f.Picks
	stops := l.stops(k)
	at := stops[min(max(f.At, 0), len(stops)-1)].at
	f.Speaker, k.sp = sp, sp
	f.At = nearest(l.stops(k), at)
	return f
}

// Start is the form of a lesson as it is first met.
func Start(sp words.Speaker, id string) Form {
	f := Form{Speaker: sp, ID: id}
	if l, _, ok := find(id); ok {
		k := newKit(sp, "", 80, 60)
		f.Picks = firstPicks
		f.At = nearest(l.stops(k), l.start(k))
	}
	return f
}

// newList is the list of all lessons.
func newList(f Form) View {
	v := View{Title: f.Speaker.Word("lesson.title"), Lead: f.Speaker.Word("lesson.lead"), Fragment: Address(Form{})}
	for i := range all {
		l := &all[i]
		k := newKit(f.Speaker, "why-thumb-"+l.id, thumbWidth, thumbHeight)
		k.bare, k.picks = true, firstPicks
		l.draw(k, l.start(k), false)
		v.Cards = append(v.Cards, Card{Fragment: Address(Form{ID: l.id}), Number: strconv.Itoa(i + 1),
			Title: l.word(k, "title", nil), Idea: l.word(k, "idea", nil), SVG: k.svg()})
	}
	v.Cards = append(v.Cards, Card{Fragment: Address(Form{ID: judge}), Number: "✓",
		Title: f.Speaker.Word("lesson.check.title"), Idea: f.Speaker.Word("lesson.check.idea")})
	return v
}

// around are the links to the lessons before and after the one of that place.
func around(sp words.Speaker, n int) (prev, next Link) {
	link := func(i int) Link {
		if i < 0 {
			return Link{}
		}
		id := judge
		if i < len(all) {
			id = all[i].id
		}
		return Link{Fragment: Address(Form{ID: id}), Text: sp.Word("lesson." + id + ".title")}
	}
	return link(n - 1), link(n + 1)
}
