package words

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// few joins sentences, each once, three at most: the rest stand elsewhere.
func (s Speaker) few(sentences []string) string {
	var out []string
	for _, text := range sentences {
		if text != "" && !contains(out, text) {
			out = append(out, text)
		}
	}
	if more := len(out) - 3; more > 1 {
		out = append(out[:3], s.Sentence("headline.more", strconv.Itoa(more)))
	}
	return strings.Join(out, " ")
}

func contains(list []string, text string) bool {
	for _, l := range list {
		if l == text {
			return true
		}
	}
	return false
}

// inside writes a name so that it can stand inside a sentence.
func (s Speaker) inside(name string) string {
	r, size := utf8.DecodeRuneInString(name)
	if next, _ := utf8.DecodeRuneInString(name[size:]); unicode.IsUpper(next) {
		return name
	}
	return string(unicode.ToLower(r)) + name[size:]
}

// Capital writes a text so that it can begin a sentence.
func Capital(text string) string {
	r, size := utf8.DecodeRuneInString(text)
	if size == 0 {
		return text
	}
	return string(unicode.ToUpper(r)) + text[size:]
}

// stopped ends a sentence with its point.
func stopped(text string) string {
	if text == "" || strings.HasSuffix(text, ".") {
		return text
	}
	return text + "."
}
