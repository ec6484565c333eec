package words

import (
	"strings"
	"testing"
	"unicode"
)

// hasBuilt reports whether an id begins and ends so, for the search of ids.
func hasBuilt(before, after string) bool {
	for _, table := range english {
		for id := range table {
			if strings.HasPrefix(id, before) && strings.HasSuffix(id, after) {
				return true
			}
		}
	}
	return false
}

// whole are the languages that have every word.
var whole = map[string]bool{"es": true}

// A language has the ids of English and no other, each once and with the same
// places.
func TestLanguages(t *testing.T) {
	for _, l := range languages[1:] {
		for id, word := range l.table() {
			if en, ok := (Speaker{}).find(id); !ok {
				t.Errorf("%s: %q is no id of English", l.Code, id)
			} else if a, b := places(en), places(word); a != b {
				t.Errorf("%s: %q has places %s, in English %s", l.Code, id, b, a)
			}
		}
		seen := map[string]bool{}
		for i, line := range strings.Split(strings.TrimSuffix(l.text, "\n"), "\n") {
			id, word, ok := strings.Cut(line, " = ")
			if line != "" && line[0] != '#' && (!ok || word == "") {
				t.Errorf("%s: line %d is none of id = words: %q", l.Code, i+1, line)
			}
			if ok && seen[id] {
				t.Errorf("%s: %q stands twice", l.Code, id)
			}
			seen[id] = true
		}
		for _, table := range english {
			for id := range table {
				if whole[l.Code] && !seen[id] {
					t.Errorf("%s: no word for %q", l.Code, id)
				}
			}
		}
	}
}

// No id of English stands twice.
func TestTables(t *testing.T) {
	seen := map[string]bool{}
	for _, table := range english {
		for id := range table {
			if seen[id] {
				t.Errorf("%q stands twice", id)
			}
			seen[id] = true
		}
	}
}

// places lists the places of a sentence, each once, in order of their names.
func places(sentence string) string {
	var out string
	for _, p := range []string{"{0", "{1", "{2", "{3", "{t}", "{T}"} {
		if strings.Contains(sentence, p) {
			out += p
		}
	}
	return out
}

// A sentence has no stray places or blanks, and a check that has a name has a
// question.
func TestSentences(t *testing.T) {
	s := Speaker{}
	for _, table := range english {
		for id, word := range table {
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
