package report

import (
	"bytes"
	"slices"
	"sort"
	"strings"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
)

// The text has no holes, no untranslated ids and no line that runs off.
func TestText(t *testing.T) {
	for _, file := range []string{"four.json", "braced.json", "free.json", "tied.json", "both.json"} {
		for _, s := range []words.Speaker{{}, {System: words.Metric}, {System: words.Metric, DecimalComma: true}} {
			var b bytes.Buffer
			if err := Text(&b, slices.Values(answers(t, file)), s); err != nil {
				t.Fatal(err)
			}
			for _, line := range strings.Split(b.String(), "\n") {
				for _, bad := range []string{"{", "}", "note.", "name.", "report.", "page.", "–", "%!"} {
					if strings.Contains(line, bad) {
						t.Errorf("%s: %q holds %q", file, line, bad)
					}
				}
				if n := len([]rune(line)); n > 96 || strings.TrimRight(line, " ") != line {
					t.Errorf("%s: %q is %d long", file, line, n)
				}
			}
		}
	}
}

// Deciding failures are read first, then open checks, then those that hold.
func TestReadingOrder(t *testing.T) {
	for _, r := range answers(t, "four.json") {
		var b bytes.Buffer
		if err := Text(&b, slices.Values([]calc.Result{r}), words.Speaker{}); err != nil {
			t.Fatal(err)
		}
		order := map[string]int{"fails": 0, "open": 1, "holds": 2, "(fails)": 3, "(open)": 3, "(holds)": 3, "does not apply": 4}
		var seen []int
		inside := false
		for _, line := range strings.Split(b.String(), "\n") {
			if strings.HasPrefix(line, "  ") && !strings.HasPrefix(line, "   ") {
				inside = strings.TrimSpace(line) == words.Speaker{}.Word("report.checks")
			}
			mark, _, _ := strings.Cut(strings.TrimSpace(line), ":")
			if n, ok := order[mark]; ok && inside && strings.HasPrefix(line, "    ") && !strings.HasPrefix(line, "     ") {
				seen = append(seen, n)
			}
		}
		if len(seen) != len(r.Checks) || !sort.IntsAreSorted(seen) {
			t.Errorf("%s: %v of %d checks", r.Input.Name, seen, len(r.Checks))
		}
	}
}
