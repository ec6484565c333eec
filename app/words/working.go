package words

import (
	"slices"
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

// noClause are the sources that are no clause of a book, with their words.
var noClause = []struct{ source, id string }{
	{"common practice, no source", "working.practice"}, {"statics", "working.statics"}, {"geometry", "working.geometry"},
}

// Source writes where a rule or a step comes from: clauses stay as the books
// print them, what is no clause is said in the reader's language.
func (s Speaker) Source(clause string) string {
	for _, n := range noClause {
		clause = strings.Replace(clause, n.source, s.Word(n.id), 1)
	}
	return clause
}

// Below writes the words that stand below the letters of symbols in the
// reader's language: W heel soil is W suelo talón. The text may be typeset or
// plain, so that the words stand behind a tag, a mark, a comma or a blank.
func (s Speaker) Below(text string) string {
	l := known(s.Lang)
	if l == nil || l == languages[0] || text == "" {
		return text
	}
	l.table()
	return l.below.Replace(text)
}

// below makes the replacement of words below letters from "below.heel,soil"
// and the like, the longest first.
func below(words table) *strings.Replacer {
	var ids []string
	for id := range words {
		if name, ok := strings.CutPrefix(id, "below."); ok {
			ids = append(ids, name)
		}
	}
	slices.SortFunc(ids, func(a, b string) int { return len(b) - len(a) })
	var pairs []string
	for _, name := range ids {
		for _, at := range []struct{ before, between string }{{">", " "}, {"\x01", " "}, {",", ","}, {"\u2009", "\u2009"}} {
			pairs = append(pairs, at.before+strings.ReplaceAll(name, ",", at.between), at.before+strings.ReplaceAll(words["below."+name], " ", at.between))
		}
	}
	return strings.NewReplacer(pairs...)
}
