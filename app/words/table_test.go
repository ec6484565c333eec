package words

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"
)

// hasBuilt reports whether an id begins and ends so, for the search of ids.
func hasBuilt(before, after string) bool {
	for id := range languages[0].table() {
		if strings.HasPrefix(id, before) && strings.HasSuffix(id, after) {
			return true
		}
	}
	return false
}

// Every line of a language's file is a word, a remark or empty, and no id
// stands twice.
func TestFiles(t *testing.T) {
	for _, l := range languages {
		seen := map[string]bool{}
		for i, line := range strings.Split(strings.TrimSuffix(l.text, "\n"), "\n") {
			id, word, ok := strings.Cut(line, " = ")
			switch {
			case line == "" || line[0] == '#':
			case !ok || word == "" || strings.TrimSpace(line) != line:
				t.Errorf("%s: line %d is not id = words: %q", l.Code, i+1, line)
			case seen[id]:
				t.Errorf("%s: %q stands twice", l.Code, id)
			}
			seen[id] = true
		}
	}
}

// A language has the ids of English and no other, each with the same places.
func TestLanguages(t *testing.T) {
	english := languages[0].table()
	for _, l := range languages[1:] {
		for id, word := range l.table() {
			if en, ok := english[id]; !ok {
				t.Errorf("%s: %q is no id of English", l.Code, id)
			} else if a, b := places(en), places(word); a != b {
				t.Errorf("%s: %q has places %s, in English %s", l.Code, id, b, a)
			}
		}
		for id := range english {
			if _, ok := l.table()[id]; !ok {
				t.Errorf("%s: no word for %q", l.Code, id)
			}
		}
	}
}

// places lists the places of a sentence, each once, in order of their names.
func places(sentence string) string {
	all := regexp.MustCompile(`\{[^}]*\}`).FindAllString(sentence, -1)
	slices.Sort(all)
	return strings.Join(slices.Compact(all), "")
}

// A sentence has no stray places or blanks, and a check that has a name has a
// question.
func TestSentences(t *testing.T) {
	for _, l := range languages {
		s := Speaker{Lang: l.Code}
		for id, word := range l.table() {
			if strings.TrimSpace(word) == "" || strings.Contains(word, "  ") || strings.Count(word, "{") != strings.Count(word, "}") {
				t.Errorf("%q says %q", id, word)
			}
			ending := "."
			if strings.HasPrefix(id, "note.question.") {
				ending = "?."
			}
			if strings.HasPrefix(id, "note.") && !strings.HasPrefix(id, "note.basis-") && !strings.ContainsAny(word[max(0, len(word)-1):], ending) {
				t.Errorf("%q is no sentence: %q", id, word)
			}
			if name, ok := strings.CutPrefix(id, "name."); ok && !strings.Contains(name, ".") && !ends[name] && !s.Has("ask."+name) {
				t.Errorf("%q has no question", id)
			}
			for _, r := range word {
				if unicode.IsControl(r) || r == '\u00a0' {
					t.Errorf("%q holds %q", id, r)
				}
			}
		}
	}
}

// ends are what may end a fill without being a check of its own.
var ends = map[string]bool{"joint-bending": true, "section-above-dowels": true}
