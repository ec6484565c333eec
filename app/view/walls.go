package view

import (
	"strconv"

	"standingbeam/app/wallfile"
	"standingbeam/app/words"
)

// Example is the wall that the page first shows: our own scenario, complete
// but for what a person must find out on the site.
func Example() wallfile.Wall {
	var w wallfile.Wall
	for _, f := range []struct{ path, text string }{
		{"name", "East cellar wall"}, {"condition", "braced top"},
		{"height", "9 ft"}, {"thickness", "10 in"}, {"grade.a", "8 ft 4 in"}, {"grade.b", "0 in"},
		{"foot.held by", "slab tight to wall"}, {"foot.slab thickness", "4 in"},
		{"soil.by", "class"}, {"soil.class", "SM"},
		{"footing.width", "24 in"}, {"footing.thickness", "12 in"},
		{"concrete", "3000 psi"}, {"steel", "60 ksi"},
		{"today.floor", "no"}, {"today.slab", "no"},
	} {
		w.Set(f.path, f.text)
	}
	return w
}

// Fresh is a new wall: the example under a name of its own.
func Fresh(names []string, s words.Speaker) wallfile.Wall {
	w := Example()
	w.Set("name", FreeName(s.Word("page.new-wall"), names, s))
	return w
}

// FreeName is a name that no wall has yet: the one wanted, else the same with
// a number.
func FreeName(want string, names []string, s words.Speaker) string {
	taken := make(map[string]bool, len(names))
	for _, n := range names {
		taken[n] = true
	}
	name := want
	for n := 2; taken[name]; n++ {
		name = s.Sentence("page.numbered", want, strconv.Itoa(n))
	}
	return name
}

// Summary is a wall in one line of the list of kept walls: its name in When,
// its answer in Title.
func Summary(w wallfile.Wall, good Good, s words.Speaker) Line {
	good, _, _ = answer(Form{Wall: w, Speaker: s}, good)
	finished, _ := s.Headline(good.Result)
	l := line(s, "finished", finished)
	if l.When = w.Field("name"); l.When == "" {
		l.When = s.Word("page.unnamed")
	}
	return l
}
