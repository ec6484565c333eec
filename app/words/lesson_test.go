package words

import (
	"regexp"
	"strings"
	"testing"
)

// A lesson states no figure by itself: each stands in a place and is measured.
func TestLessonsStateNoFigures(t *testing.T) {
	place := regexp.MustCompile(`\{\d\}`)
	for _, table := range []table{enLesson, enLessonMore} {
		for id, word := range table {
			if strings.ContainsAny(place.ReplaceAllString(word, ""), "0123456789") {
				t.Errorf("%q states a figure: %q", id, word)
			}
			if !strings.HasPrefix(id, "lesson.") {
				t.Errorf("%q is no word of a lesson", id)
			}
		}
	}
}
