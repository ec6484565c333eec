package lesson

import (
	"strings"

	"standingbeam/app/words"
)

// Root is how the part of an address behind its # begins that means a lesson.
const Root = "why"

// Is reports whether the part of an address behind its # means a lesson.
func Is(fragment string) bool {
	fragment = strings.TrimPrefix(fragment, "#")
	return fragment == Root || strings.HasPrefix(fragment, Root+"/")
}

// Address is the part of an address behind its # that brings a screen back:
// "why", "why/height", "why/height/9ft". It holds where the control stands
// once the answer is shown; before, there is only the question.
func Address(f Form) string {
	out := Root
	l, _, ok := find(f.ID)
	switch {
	case f.ID == judge:
		return Root + "/" + judge
	case !ok:
		return out
	}
	out += "/" + l.id
	if !f.Shown {
		return out
	}
	k := newKit(f.Speaker, "", 80, 60)
	k.picks = f.Picks
	stops := l.stops(k)
	out += "/" + stops[min(max(f.At, 0), len(stops)-1)].slug
	if l.picks {
		for _, s := range k.pickSlugs() {
			out += "/" + s
		}
	}
	return out
}

// Read is the form that an address means. What it names in another system of
// units is taken at the nearest stop; what it cannot mean is left as it is
// first met.
func Read(sp words.Speaker, fragment string) Form {
	parts := strings.Split(strings.TrimPrefix(fragment, "#"), "/")
	if len(parts) < 2 || parts[0] != Root {
		return Form{Speaker: sp}
	}
	if parts[1] == judge {
		return Form{Speaker: sp, ID: judge}
	}
	l, _, ok := find(parts[1])
	if !ok {
		return Form{Speaker: sp}
	}
	f := Start(sp, l.id)
	if len(parts) < 3 {
		return f
	}
	k := newKit(sp, "", 80, 60)
	if l.picks {
		f.Picks = k.readPicks(parts[3:])
		k.picks = f.Picks
	}
	if at, ok := stopOf(l.stops(k), parts[2]); ok {
		f.At, f.Shown = at, true
	}
	return f
}
