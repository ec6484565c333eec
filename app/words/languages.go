package words

import (
	_ "embed" // the texts of the languages
	"strings"
	"sync"
)

// A language is a code of BCP 47, its name in itself, and its words: a text
// with a line for each id, which is far smaller in the program than a table
// written in Go. A new one is a file beside es.txt and its lines here.
type language struct {
	Code, Name string
	text       string
	words      table
	below      *strings.Replacer // see [Speaker.Below]
	read       sync.Once
}

// table is the language's words, read from its text when they are first asked
// for.
func (l *language) table() table {
	l.read.Do(func() {
		l.words = parse(l.text)
		l.below = below(l.words)
	})
	return l.words
}

var (
	//go:embed en.txt
	english string
	//go:embed es.txt
	spanish string
)

// languages are what there is to choose from. English is the first: it holds
// the ids, and its words stand in for any that another should lack.
var languages = []*language{
	{Code: "en", Name: "English", text: english},
	{Code: "es", Name: "Español", text: spanish},
}

// Languages lists the codes of the languages, English first.
func Languages() []string {
	var out []string
	for _, l := range languages {
		out = append(out, l.Code)
	}
	return out
}

// LanguageName is the name of a language in itself.
func LanguageName(code string) string {
	if l := known(code); l != nil {
		return l.Name
	}
	return code
}

// LanguageFor is the language that a reader of the given tag is best spoken to
// in: "es" for "es-MX", "en" where there is none.
func LanguageFor(tag string) string {
	main, _, _ := strings.Cut(strings.ReplaceAll(strings.ToLower(tag), "_", "-"), "-")
	if known(main) != nil {
		return main
	}
	return languages[0].Code
}

func known(code string) *language {
	for _, l := range languages {
		if l.Code == code {
			return l
		}
	}
	return nil
}

// parse reads the words of a language: a line "id = words" each. A line that
// begins with # parts them for the reader of the file; quotes around the words
// keep blanks at their ends.
func parse(text string) table {
	out := make(table, strings.Count(text, "\n"))
	for line := range strings.Lines(text) {
		id, word, ok := strings.Cut(strings.TrimSuffix(line, "\n"), " = ")
		if !ok || line[0] == '#' {
			continue
		}
		if n := len(word); n > 1 && word[0] == '"' && word[n-1] == '"' {
			word = word[1 : n-1]
		}
		out[id] = word
	}
	return out
}
