package working

import "unicode/utf8"

// Rename returns the formula with another name for one of its symbols.
func Rename(formula, from, to string) string {
	out := make([]byte, 0, len(formula)+len(to))
	p := parser{text: formula}
	for p.text != "" {
		before := p.text
		name := p.name()
		switch {
		case name == from:
			out = append(out, to...)
		case name != "":
			out = append(out, name...)
		default:
			_, n := utf8.DecodeRuneInString(before)
			out = append(out, before[:n]...)
			p.text = before[n:]
		}
	}
	return string(out)
}
