package embed

import (
	"iter"
	"maps"
	"net/url"
	"strings"

	"standingbeam/app/wallfile"
)

// pathOf finds the path of a field by its key, and order its place in the file.
var pathOf, order = func() (map[string]string, map[string]int) {
	paths, places := map[string]string{}, map[string]int{}
	for i, f := range wallfile.Fields() {
		paths[Key(f.Path)], places[f.Path] = f.Path, i
	}
	return paths, places
}()

// Key is how a field's path is written as an attribute: "foot.held by" is
// foot-held-by.
func Key(path string) string { return strings.NewReplacer(".", "-", " ", "-").Replace(path) }

func mapKeys(m map[string][]string) iter.Seq[string] { return maps.Keys(m) }

// Fragment asks for a wall as it stands, whole, in the same units and looks,
// in a page of its own.
func (a Ask) Fragment(w wallfile.Wall) string {
	q := url.Values{}
	for _, f := range wallfile.Fields() {
		if text := w.Field(f.Path); text != "" {
			q.Set(Key(f.Path), text)
		}
	}
	for key, text := range map[string]string{
		"lang": a.Lang, "theme": a.Theme, "units": [...]string{"us", "metric"}[a.System],
		"color-paper": a.Colors.Paper.String(), "color-ink": a.Colors.Ink.String(),
		"color-push": a.Colors.Push.String(), "color-steel": a.Colors.Steel.String(),
	} {
		if text != "" {
			q.Set(key, text)
		}
	}
	if a.Comma {
		q.Set("decimal", "comma")
	}
	return mark + "&" + q.Encode()
}
