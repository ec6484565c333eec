package embed

import (
	"net/url"
	"slices"
	"strings"

	"standingbeam/app/wallfile"
	"standingbeam/app/words"
)

// Show is how much of the page is shown.
type Show string

// Shows.
const (
	Picture Show = "picture"
	Answer  Show = "answer"
	All     Show = "all"
)

// Field is one field of the wall as the page around wants it.
type Field struct{ Path, Text string }

// Ask is what the page around wants.
type Ask struct {
	Fields  []Field // in the order of the wall file
	Show    Show
	Lesson  string // as in the address of the lessons: "height", "height/9ft"
	System  words.System
	Comma   bool
	Lang    string
	Theme   string // "light", "dark", "glare", "" = as the device
	Colors  Colors
	Keep    bool
	KeepAs  string
	Host    string // an origin, "" = nobody is spoken with
	Refused []Refusal
}

// Refusal is something that was wanted and cannot be.
type Refusal struct{ Key, Text, ID string }

// Say writes the refusal as a sentence.
func (r Refusal) Say(s words.Speaker) string {
	return s.Sentence("embed.refused."+r.ID, r.Key, r.Text)
}

const mark = "#embed"

// Parse reads a fragment. It is false for one that asks for nothing.
func Parse(fragment string) (Ask, bool) {
	rest, ok := strings.CutPrefix(fragment, mark)
	if !ok || rest != "" && rest[0] != '&' {
		return Ask{}, false
	}
	if len(fragment) > MaxFragment {
		a := Ask{Show: All}
		a.refuse(mark, "", "too-long")
		return a, true
	}
	return ParseQuery(strings.TrimPrefix(rest, "&")), true
}

// ParseQuery reads the same without the mark before it.
func ParseQuery(query string) Ask {
	a := Ask{Show: All}
	values, err := url.ParseQuery(query)
	if err != nil {
		a.refuse(mark, "", "unreadable")
	}
	for _, key := range slices.Sorted(mapKeys(values)) {
		a.take(key, values[key][len(values[key])-1])
	}
	slices.SortFunc(a.Fields, func(x, y Field) int { return order[x.Path] - order[y.Path] })
	return a
}

func (a *Ask) refuse(key, text, id string) {
	if len(a.Refused) < maxRefused {
		a.Refused = append(a.Refused, Refusal{short(key), short(text), id})
	}
}

// short is a text that fits in a message.
func short(text string) string {
	text = strings.ToValidUTF8(text, "�")
	if r := []rune(text); len(r) > 40 {
		return string(r[:40]) + "…"
	}
	return text
}

// take reads one key.
func (a *Ask) take(key, text string) {
	if len(text) > wallfile.MaxText {
		a.refuse(key, text, "too-long")
		return
	}
	if path, ok := pathOf[key]; ok {
		a.Fields = append(a.Fields, Field{path, text})
		return
	}
	read, ok := own[key]
	switch {
	case !ok:
		a.refuse(key, text, "unknown")
	case !read(a, text):
		a.refuse(key, text, "value")
	}
}

// own are the keys that are no field of the wall. Each says whether it can use
// a text.
var own = map[string]func(*Ask, string) bool{
	"show":        func(a *Ask, t string) bool { return oneOf(t, &a.Show, Picture, Answer, All) },
	"lesson":      readLesson,
	"units":       readUnits,
	"decimal":     func(a *Ask, t string) bool { a.Comma = t == "comma"; return a.Comma || t == "point" },
	"lang":        func(a *Ask, t string) bool { return language(t, &a.Lang) },
	"theme":       readTheme,
	"color-paper": func(a *Ask, t string) bool { return a.Colors.Paper.read(t) },
	"color-ink":   func(a *Ask, t string) bool { return a.Colors.Ink.read(t) },
	"color-push":  func(a *Ask, t string) bool { return a.Colors.Push.read(t) },
	"color-steel": func(a *Ask, t string) bool { return a.Colors.Steel.read(t) },
	"keep":        func(a *Ask, t string) bool { a.Keep = t == "" || named(t, &a.KeepAs); return a.Keep },
	"host":        func(a *Ask, t string) bool { return origin(t, &a.Host) },
}

// readLesson takes the name of a lesson and where its control stands, parted
// by strokes.
func readLesson(a *Ask, t string) bool {
	for part := range strings.SplitSeq(t, "/") {
		if !named(strings.ReplaceAll(part, ".", ""), new(string)) || part[0] == '.' {
			return false
		}
	}
	a.Lesson = t
	return true
}

func readUnits(a *Ask, t string) bool {
	if a.System = words.US; t == "metric" {
		a.System = words.Metric
	}
	return t == "us" || t == "metric"
}

func readTheme(a *Ask, t string) bool {
	if t == "device" {
		a.Theme = ""
		return true
	}
	return oneOf(t, &a.Theme, "light", "dark", "glare")
}

// oneOf puts a text where it belongs, if it is one of those that may stand
// there.
func oneOf[T ~string](text string, to *T, all ...T) bool {
	ok := slices.Contains(all, T(text))
	if ok {
		*to = T(text)
	}
	return ok
}

// named takes a plain name: letters, digits and dashes.
func named(text string, to *string) bool {
	if text == "" || len(text) > 40 || strings.Trim(text, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-") != "" {
		return false
	}
	*to = text
	return true
}

// language takes the first part of a language's tag: one that is not known
// reads English.
func language(text string, to *string) bool {
	first, _, _ := strings.Cut(strings.ToLower(text), "-")
	return (len(first) == 2 || len(first) == 3) && named(first, to)
}

// origin takes the origin of a web page as browsers write it. That of a file
// or of a page without rights ("null") cannot be told from others, so nobody
// is spoken with there.
func origin(text string, to *string) bool {
	u, err := url.Parse(text)
	if err != nil || u.Scheme != "http" && u.Scheme != "https" || u.Host == "" || u.Scheme+"://"+u.Host != text {
		return false
	}
	*to = text
	return true
}
