package words

import "standingbeam/calc"

// Note writes a sentence of the calculation. In its sentence {0}, {1}, … are
// the note's quantities to the nearest digit, {0+} rounded up, {0-} rounded
// down; {t} is its proper name, which may be the id of a check, and {T} the
// same at the start of a sentence.
func (s Speaker) Note(n calc.Note) string {
	return fill(s.Word("note."+n.ID), func(place string) (string, bool) {
		switch {
		case place == "t" && s.Has("name."+n.Text):
			return s.inside(s.Word("name." + n.Text)), true
		case place == "T" && s.Has("name."+n.Text):
			return s.Word("name." + n.Text), true
		case place == "t", place == "T":
			return n.Text, true
		}
		i := int(place[0] - '0')
		if i < 0 || i >= len(n.Args) || len(place) > 2 {
			return "", false
		}
		switch place[1:] {
		case "":
			return s.Quantity(n.Args[i]), true
		case "+":
			return s.Demand(n.Args[i]), true
		case "-":
			return s.Capacity(n.Args[i]), true
		}
		return "", false
	})
}

// Notes writes several sentences.
func (s Speaker) Notes(list []calc.Note) []string {
	out := make([]string, 0, len(list))
	for _, n := range list {
		out = append(out, s.Note(n))
	}
	return out
}
