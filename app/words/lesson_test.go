package words

import (
	"regexp"
	"strings"
	"testing"
)

// A lesson states no figure by itself: each stands in a place and is measured.
func TestLessonsStateNoFigures(t *testing.T) {
	place := regexp.MustCompile(`\{\d\}`)
	for _, l := range languages {
		for id, word := range l.table() {
			if strings.HasPrefix(id, "lesson.") && strings.ContainsAny(place.ReplaceAllString(word, ""), "0123456789") {
				t.Errorf("%s: %q states a figure: %q", l.Code, id, word)
			}
		}
	}
}
