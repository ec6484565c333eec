// Package words holds every word that a person reads, one table a language,
// and writes numbers the way a person reads them.
//
// A word is found by its id. Ids begin with what they name: "field." a field
// of the wall file, "name." and "ask." a check, "note." a sentence of the
// calculation, "problem." a fault of what was typed, "choice." an answer to
// choose from. A language is one file of text, en.txt or es.txt, named in
// languages.
package words

import (
	"strings"

	"standingbeam/calc"
)

// System is the units a person reads.
type System uint8

// Systems.
const (
	US System = iota
	Metric
)

// Speaker writes for one reader. The zero value writes English in feet, inches
// and pounds.
type Speaker struct {
	Lang         string
	System       System
	DecimalComma bool
	// TwoSided names the faces high side and low side, for a wall with soil on
	// both sides. See [Speaker.For].
	TwoSided bool
}

// For returns the speaker for one wall: it names the faces as that wall's
// condition does.
func (s Speaker) For(c calc.Condition) Speaker {
	s.TwoSided = c == calc.SoilBothSides
	return s
}

// Language is the code of the language that is spoken.
func (s Speaker) Language() string {
	if known(s.Lang) != nil {
		return s.Lang
	}
	return languages[0].Code
}

type table = map[string]string

// find returns the word of an id.
func (s Speaker) find(id string) (string, bool) {
	if l := known(s.Lang); l != nil {
		if w, ok := l.table()[id]; ok {
			return w, true
		}
	}
	w, ok := languages[0].table()[id]
	return w, ok
}

// Word returns the word of an id, and the id itself where there is none.
func (s Speaker) Word(id string) string {
	if w, ok := s.find(id); ok {
		return w
	}
	return id
}

// Has reports whether there is a word of an id.
func (s Speaker) Has(id string) bool {
	_, ok := s.find(id)
	return ok
}

// Sentence returns the sentence of an id with args in its places {0}, {1}, …
func (s Speaker) Sentence(id string, args ...string) string {
	return fill(s.Word(id), func(place string) (string, bool) {
		if n := int(place[0] - '0'); len(place) == 1 && n >= 0 && n < len(args) {
			return args[n], true
		}
		return "", false
	})
}

// fill writes a sentence with what stands in its places. A place that nothing
// is known for stays as it is.
func fill(sentence string, in func(place string) (string, bool)) string {
	var b strings.Builder
	for {
		open := strings.IndexByte(sentence, '{')
		if open < 0 {
			break
		}
		length := strings.IndexByte(sentence[open:], '}')
		if length < 0 {
			break
		}
		b.WriteString(sentence[:open])
		place := sentence[open+1 : open+length]
		if text, ok := "", false; place != "" {
			if text, ok = in(place); !ok {
				text = "{" + place + "}"
			}
			b.WriteString(text)
		}
		sentence = sentence[open+length+1:]
	}
	b.WriteString(sentence)
	return b.String()
}
