package words

import (
	"strconv"
	"strings"
)

// Symbol says what a symbol stands for in the working of a check, "" where the
// table does not know it.
func (s Speaker) Symbol(check, symbol string) string {
	for _, id := range []string{"symbol." + check + "." + symbol, "symbol." + symbol} {
		if s.Has(id) {
			return s.Word(id)
		}
	}
	if letter, part, comma := strings.Cut(symbol, ","); comma && s.Has("symbol."+letter+",*") && s.Has("symbol.part."+part) {
		return s.Sentence("symbol."+letter+",*", s.Word("symbol.part."+part))
	}
	if name, number, ok := numbered(symbol); ok && s.Has("symbol."+name) {
		return s.Sentence("symbol."+name, number)
	}
	return ""
}

// numbered parts a symbol from its number: pu2 is pu# and 2, Rt1u is Rt#u and
// 1.
func numbered(symbol string) (name, number string, ok bool) {
	at := strings.IndexAny(symbol, "0123456789")
	if at < 0 {
		return "", "", false
	}
	end := at + 1
	for end < len(symbol) && symbol[end] >= '0' && symbol[end] <= '9' {
		end++
	}
	if _, err := strconv.Atoi(symbol[at:end]); err != nil {
		return "", "", false
	}
	return symbol[:at] + "#" + symbol[end:], symbol[at:end], true
}
