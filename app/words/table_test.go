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

// languages lists every language with its tables; English is the measure.
var languages = map[string][]table{"en": english}

func TestTables(t *testing.T) {
	for lang, tables := range languages {
		seen := map[string]string{}
		for _, table := range tables {
			for id, word := range table {
				if _, twice := seen[id]; twice {
					t.Errorf("%s: %q stands twice", lang, id)
				}
				seen[id] = word
			}
		}
		for _, table := range english {
			for id, word := range table {
				if seen[id] == "" {
					t.Errorf("%s: no word for %q", lang, id)
				}
				if a, b := places(word), places(seen[id]); a != b {
					t.Errorf("%s: %q has places %s, in English %s", lang, id, b, a)
				}
			}
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
