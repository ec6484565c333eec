package wallfile

import (
	"strconv"
	"strings"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Problem is one fault of a wall or a file.
type Problem struct {
	Wall     int    // number of the wall in the file, from 1; 0 = the file's own
	Name     string // of the wall
	Field    string // path of the field, "" = the whole
	ID       string // word id, without "problem."
	Text     string // what was written
	Min, Max units.Quantity
	Ranged   bool // Min and Max are the permitted range
	err      *calc.RangeError
}

// Say writes the fault as a sentence, without its place.
func (p Problem) Say(s words.Speaker) string {
	if p.err != nil && p.ID == "out-of-range" {
		return s.Problem(p.err)
	}
	written := p.Text
	if !strings.HasPrefix(p.ID, "file-") {
		written = quoted(p.Text)
	}
	id, offer := p.ID, p.offer(s)
	if id == "unknown-unit" && offer == "" {
		id = "unit-of-number"
	}
	text := s.Sentence("problem."+id, written, offer)
	if p.Ranged {
		low, high := s.Range(p.Min, p.Max)
		return s.Sentence("problem.permitted", text, low, high)
	}
	if list := p.list(); list != "" && list != id {
		text += " " + s.Word("problem."+list)
	}
	return text
}

// list is the word that says what is permitted where that is a list and not a
// range.
func (p Problem) list() string {
	switch {
	case p.Field == "steel":
		return "steel-grade"
	case strings.HasSuffix(p.Field, ".size"):
		return "bar-size"
	}
	return ""
}

// offer is what may be written instead: the fixed words, or a unit.
func (p Problem) offer(s words.Speaker) string {
	f, ok := find(p.Field)
	if !ok {
		return ""
	}
	switch p.ID {
	case "choice":
		return strings.Join(f.words, ", ")
	case "no-unit", "unknown-unit":
		us, metric := f.unit(false), f.unit(true)
		if us == metric {
			return us
		}
		return s.Sentence("problem.either", us, metric)
	}
	return ""
}

// Line writes the fault with its place: wall, field and sentence.
func (p Problem) Line(s words.Speaker) string {
	text := p.Say(s)
	if p.Field != "" {
		text = s.Sentence("problem.place", p.Field, text)
	}
	if p.Wall == 0 && p.Name == "" {
		return text
	}
	name := p.Name
	if name == "" {
		name = s.Sentence("problem.wall-unnamed", strconv.Itoa(p.Wall))
	}
	return s.Sentence("problem.place", oneLine(name), text)
}

// quoted is what was written, short enough to stand in a sentence.
func quoted(text string) string {
	if text == "" {
		return text
	}
	text = oneLine(text)
	if r := []rune(text); len(r) > 40 {
		text = string(r[:40]) + "…"
	}
	return "“" + text + "”"
}

// oneLine keeps a text on its line.
func oneLine(text string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f || r == '\u2028' || r == '\u2029' {
			return ' '
		}
		return r
	}, text)
}
