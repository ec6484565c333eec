package lesson

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"
	"testing"

	"standingbeam/app/words"
)

var speakers = map[string]words.Speaker{"us": {}, "metric": {System: words.Metric}, "comma": {System: words.Metric, DecimalComma: true},
	"us es": {Lang: "es"}, "metric es": {Lang: "es", System: words.Metric, DecimalComma: true}}

// sizes of the picture: phones, small phones, one that lies, frames in another
// page, and a wide page.
var sizes = [][2]float64{{390, 330}, {360, 330}, {320, 280}, {740, 560}, {390, 265}, {320, 227}, {484, 298}, {320, 330}, {600, 372}}

// screens calls f for every lesson in all systems and sizes: asked, and shown
// at every place of its control on a phone, at every seventh elsewhere.
func screens(f func(name string, form Form, v View)) {
	for system, sp := range speakers {
		for i := range all {
			for n, size := range sizes {
				form := Start(sp, all[i].id)
				form.Width, form.Height = size[0], size[1]
				name := fmt.Sprintf("%s, %s, %v×%v", all[i].id, system, size[0], size[1])
				v := New(form)
				f(name+", asked", form, v)
				form.Shown, form.Guess = true, 1
				for at := range v.Control.Stops {
					if n == 0 && system != "comma" || at%7 == 0 || at == len(v.Control.Stops)-1 {
						form.At = at
						f(fmt.Sprintf("%s at %s", name, v.Control.Stops[at]), form, New(form))
					}
				}
			}
		}
	}
}

// checkBoxes fails unless every label lies inside and no two on each other.
func checkBoxes(t *testing.T, name string, boxes []Box, w, h float64) {
	t.Helper()
	for i, b := range boxes {
		if !(b.X >= 0 && b.Y >= 0 && b.X+b.W <= w && b.Y+b.H <= h) {
			t.Errorf("%s: %q leaves the picture: %+v", name, b.Text, b)
		}
		for _, c := range boxes[:i] {
			if b.X < c.X+c.W && c.X < b.X+b.W && b.Y < c.Y+c.H && c.Y < b.Y+b.H {
				t.Errorf("%s: %q lies on %q", name, b.Text, c.Text)
			}
		}
	}
}

func TestLabelsKeepClear(t *testing.T) {
	lost := map[string]int{}
	screens(func(name string, _ Form, v View) {
		checkBoxes(t, name, v.Picture.Boxes, v.Picture.Width, v.Picture.Height)
		for _, l := range v.Picture.Lost {
			// A height beside the axis gives way to the height that is looked at.
			if v.ID != "heights" {
				lost[v.ID+": "+l]++
			}
		}
	})
	for l, n := range lost {
		t.Errorf("without a place in %d pictures: %s", n, l)
	}
}

var bad = regexp.MustCompile(`NaN|Inf|style=|lesson\.|picture\.[a-z]|fill="#|stroke="|\{\d|–`)

// texts are all the words of a screen.
func (v *View) texts() []string {
	out := []string{v.Title, v.Lead, v.Count, v.Say, v.Keep, v.Picture.Desc, v.Question.Text, v.Question.Verdict, v.Question.Answer,
		v.Control.Label, v.Control.Less, v.Control.More, v.Prev.Text, v.Next.Text, v.Score}
	out = append(out, v.Control.Stops...)
	out = append(out, v.Table.Head...)
	for _, c := range v.Question.Choices {
		out = append(out, c.Text)
	}
	for _, m := range v.Meters {
		out = append(out, m.Label, m.Value)
	}
	for _, r := range v.Table.Rows {
		out = append(out, r...)
	}
	for _, p := range v.Picks {
		out = append(append(out, p.Label), p.Stops...)
	}
	return out
}

func TestScreensAreWhole(t *testing.T) {
	screens(func(name string, f Form, v View) {
		for _, text := range append(v.texts(), v.Picture.SVG) {
			if m := bad.FindString(text); m != "" {
				t.Errorf("%s: %q in %.80q", name, m, text)
			}
		}
		if v.Title == "" || v.Lead == "" || v.Picture.Desc == "" || len(v.Question.Choices) != 3 || len(v.Control.Stops) < 3 {
			t.Errorf("%s: the screen lacks something: %+v", name, v)
		}
		if v.Question.Asked != !f.Shown || f.Shown != (v.Say != "") || f.Shown != (v.Keep != "") || f.Shown != (v.Question.Answer != "") {
			t.Errorf("%s: asked %v, says %q, keep %q", name, v.Question.Asked, v.Say, v.Keep)
		}
		for _, m := range v.Meters {
			if !(m.Share >= 0 && m.Share <= 1 && m.Mark >= 0 && m.Mark <= 1) || m.Label == "" || m.Value == "" {
				t.Errorf("%s: meter %+v", name, m)
			}
		}
	})
}

// Nothing gives the answer away before it is asked for: the picture of the
// question is the same wherever the control stands.
func TestQuestionHidesTheAnswer(t *testing.T) {
	for i := range all {
		form := Start(words.Speaker{}, all[i].id)
		form.Width, form.Height = 390, 330
		v := New(form)
		for _, c := range v.Question.Choices {
			if c.Right {
				t.Errorf("%s: %q is marked before the guess", v.ID, c.Text)
			}
		}
		if v.Question.Verdict != "" || v.Question.Answer != "" || len(v.Meters) > 0 {
			t.Errorf("%s: the answer shows before the guess", v.ID)
		}
		form.Shown, form.Guess = true, all[i].right
		if q := New(form).Question; !q.Right || !q.Guessed {
			t.Errorf("%s: the right guess is not right", v.ID)
		}
		form.Guess = all[i].right%3 + 1
		if q := New(form).Question; q.Right || !q.Guessed || q.Verdict == "" {
			t.Errorf("%s: a wrong guess is right", v.ID)
		}
		form.Guess = 0
		if q := New(form).Question; q.Right || q.Guessed {
			t.Errorf("%s: no guess counts as one", v.ID)
		}
	}
}

// What moves must be seen to move: at two places of the control the pictures
// and what is said of them differ.
func TestControlMovesThePicture(t *testing.T) {
	for i := range all {
		form := Start(words.Speaker{}, all[i].id)
		form.Width, form.Height, form.Shown = 390, 330, true
		seen := map[string]bool{}
		n := len(New(form).Control.Stops)
		for form.At = range n {
			seen[New(form).Picture.SVG] = true
		}
		if len(seen) != n {
			t.Errorf("%s: %d pictures at %d places", form.ID, len(seen), n)
		}
	}
}

// The list, and a screen with its hand-out, are sound markup with no id twice.
func TestMarkupIsSound(t *testing.T) {
	list := New(Form{})
	if len(list.Cards) != len(all)+1 {
		t.Errorf("%d cards of %d lessons", len(list.Cards), len(all))
	}
	markup := "<x>"
	for _, c := range list.Cards {
		markup += c.SVG
	}
	sound(t, "list", markup+"</x>")
	for i := range all {
		form := Start(words.Speaker{}, all[i].id)
		form.Shown, form.Width, form.Height = true, 390, 330
		v := New(form)
		paper := NewPaper(form)
		markup := "<x>" + v.Picture.SVG + paper.Asking
		for _, p := range paper.Panels {
			markup += p.SVG
		}
		sound(t, v.ID, markup+"</x>")
	}
	check := New(Form{ID: judge, Cases: [3]int{1, 2, 3}, Width: 390, Height: 330})
	markup = "<x>"
	for _, c := range check.Cases {
		markup += c.Picture.SVG
	}
	sound(t, "check", markup+"</x>")
}

func sound(t *testing.T, name, markup string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(markup))
	seen := map[string]bool{}
	for {
		tok, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if e, ok := tok.(xml.StartElement); ok {
			for _, a := range e.Attr {
				if a.Name.Local == "id" && seen[a.Value] {
					t.Errorf("%s: id %s twice", name, a.Value)
				} else if a.Name.Local == "id" {
					seen[a.Value] = true
				}
			}
		}
	}
}

func TestTable(t *testing.T) {
	for i := range all {
		form := Start(words.Speaker{}, all[i].id)
		form.Shown, form.Open, form.Width, form.Height = true, true, 390, 330
		v := New(form)
		if len(v.Table.Rows) != len(v.Control.Stops) {
			t.Errorf("%s: %d rows at %d places", v.ID, len(v.Table.Rows), len(v.Control.Stops))
		}
		for _, r := range v.Table.Rows {
			if len(r) != len(v.Table.Head) {
				t.Errorf("%s: a row of %d under %d", v.ID, len(r), len(v.Table.Head))
			}
		}
	}
}

func TestPaper(t *testing.T) {
	for system, sp := range speakers {
		for i := range all {
			p := NewPaper(Start(sp, all[i].id))
			if len(p.Panels) != 3 || p.Keep == "" {
				t.Errorf("%s, %s: %+v", all[i].id, system, p)
			}
			texts := []string{p.Answer, p.Keep, p.Asking}
			for n, panel := range p.Panels {
				name := fmt.Sprintf("%s, %s, panel %d", all[i].id, system, n)
				checkBoxes(t, name, panel.Boxes, panel.Width, panel.Height)
				checkLines(t, name, panel.SVG, panel.Boxes)
				if len(panel.Lost) > 0 && all[i].id != "heights" {
					t.Errorf("%s: without a place: %v", name, panel.Lost)
				}
				texts = append(texts, panel.SVG, panel.Say, panel.At)
			}
			for _, text := range texts {
				if m := bad.FindString(text); m != "" {
					t.Errorf("%s, %s: %q in %.80q", all[i].id, system, m, text)
				}
			}
		}
	}
	if p := NewPaper(Form{ID: judge}); len(p.Panels) > 0 {
		t.Error("the check has a hand-out")
	}
}

func TestCheckScreen(t *testing.T) {
	for system, sp := range speakers {
		for n := range 4 {
			v := New(Form{ID: judge, Speaker: sp, Cases: [3]int{n, n, n}, Width: 390, Height: 330})
			right := 0
			for i, c := range v.Cases {
				name := fmt.Sprintf("%s: case %d judged %d", system, i, n)
				checkBoxes(t, name, c.Picture.Boxes, c.Picture.Width, c.Picture.Height)
				checkLines(t, name, c.Picture.SVG, c.Picture.Boxes)
				if len(c.Picture.Lost) > 0 {
					t.Errorf("%s: without a place: %v", name, c.Picture.Lost)
				}
				for _, text := range []string{c.Title, c.Question.Text, c.Question.Answer, c.Picture.SVG, c.Picture.Desc} {
					if m := bad.FindString(text); m != "" {
						t.Errorf("%s: %q in %.80q", name, m, text)
					}
				}
				if c.Question.Right {
					right++
				}
			}
			if n > 0 && (right != 1 || v.Score == "") || n == 0 && (right != 0 || v.Score != "") {
				t.Errorf("%s: all judged %d: %d right, score %q", system, n, right, v.Score)
			}
		}
	}
}

func BenchmarkNew(b *testing.B) {
	for i := range all {
		form := Start(words.Speaker{}, all[i].id)
		form.Shown, form.Width, form.Height = true, 390, 330
		b.Run(all[i].id, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				New(form)
			}
		})
	}
}
