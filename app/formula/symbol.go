package formula

import (
	"html"
	"strings"
	"unicode"
	"unicode/utf8"
)

// A symbol is written as the calculation names it: its first letter, what
// stands below it, and after commas words that stand below it. φ before a
// capital is a factor of its own: φMn is φ times Mn.

// whole are the symbols that are not a letter with something below.
var whole = map[string]bool{"FS": true, "EI": true, "kd": true, "use": true}

// Letters parts a symbol into its letter and what stands below it, "" where
// nothing does. φ of a reduced strength stands with the letter.
func Letters(symbol string) (letter, below string) {
	if rest, ok := reduced(symbol); ok {
		letter, below = letters(rest)
		return "φ" + letter, below
	}
	return letters(symbol)
}

// letters parts a symbol that has no φ before it.
func letters(symbol string) (letter, below string) {
	if whole[symbol] {
		return symbol, ""
	}
	if rest, ok := strings.CutPrefix(symbol, "f'"); ok {
		return "f′", rest
	}
	_, n := utf8.DecodeRuneInString(symbol)
	letter, below = symbol[:n], symbol[n:]
	if letter == "l" {
		letter = "ℓ" // as books print it, apart from a 1
	}
	return letter, strings.ReplaceAll(strings.TrimPrefix(below, ","), ",", " ")
}

// reduced reports a symbol with its strength reduction factor, φMn, and
// returns the symbol behind φ.
func reduced(symbol string) (string, bool) {
	rest, ok := strings.CutPrefix(symbol, "φ")
	if r, _ := utf8.DecodeRuneInString(rest); ok && unicode.IsUpper(r) {
		return rest, true
	}
	return symbol, false
}

// SymbolText writes a symbol in a line of text: "W heel soil", "φMn".
func SymbolText(symbol string) string {
	if rest, ok := reduced(symbol); ok {
		return "φ" + SymbolText(rest)
	}
	if before, after, comma := strings.Cut(symbol, ","); comma {
		return before + "\u2009" + strings.ReplaceAll(after, ",", "\u2009")
	}
	return symbol
}

// mathSymbol typesets a symbol.
func mathSymbol(b *strings.Builder, symbol string) {
	if rest, ok := reduced(symbol); ok {
		b.WriteString("<mrow><mi>φ</mi>")
		b.WriteString(thin)
		mathSymbol(b, rest)
		b.WriteString("</mrow>")
		return
	}
	letter, below := letters(symbol)
	open, shut := "<mi>", "</mi>"
	if letter == "f′" {
		letter, open, shut = "f", "<mrow><mi>", "</mi><mo>′</mo></mrow>"
	}
	if below == "" {
		b.WriteString(open + html.EscapeString(letter) + shut)
		return
	}
	b.WriteString("<msub>" + open + html.EscapeString(letter) + shut + "<mtext>" + html.EscapeString(below) + "</mtext></msub>")
}
