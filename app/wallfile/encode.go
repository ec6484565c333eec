package wallfile

import (
	"bytes"
	"encoding/json"
	"strconv"
	"strings"
)

// Encode writes walls as a file, the keys in their order, each wall's own keys
// on lines of their own. Fields that are empty are left out. The texts are
// written as they are: see [Wall.Settled] for units that were left to the page.
func Encode(walls []Wall) []byte {
	var b bytes.Buffer
	b.WriteString(`{"format":` + strconv.Itoa(Format) + `,"walls":[`)
	for i := range walls {
		if i > 0 {
			b.WriteByte(',')
		}
		b.WriteString("\n{")
		encode(&b, &walls[i])
		b.WriteByte('}')
	}
	b.WriteString("\n]}\n")
	return b.Bytes()
}

func encode(b *bytes.Buffer, w *Wall) {
	var open []string // groups that are open
	first := true     // nothing stands yet in the innermost of them
	for _, f := range fields {
		text := *f.at(w)
		if text == "" {
			continue
		}
		groups, key := w.place(f, text)
		same := 0
		for same < len(open) && same < len(groups) && open[same] == groups[same] {
			same++
		}
		for ; len(open) > same; open = open[:len(open)-1] {
			b.WriteByte('}')
			first = false
		}
		if !first {
			b.WriteByte(',')
			if len(open) == 0 {
				b.WriteString("\n ")
			}
		}
		for _, g := range groups[same:] {
			quote(b, g)
			b.WriteString(":{")
			open = append(open, g)
		}
		quote(b, key)
		b.WriteByte(':')
		f.write(b, text)
		first = false
	}
	b.WriteString(strings.Repeat("}", len(open)))
}

// place is where a field is written: the groups it stands in and its key. A
// group of which nothing but its short word is known is written as that word.
func (w *Wall) place(f field, text string) (groups []string, key string) {
	groups = strings.Split(f.path, ".")
	key = groups[len(groups)-1]
	groups = groups[:len(groups)-1]
	if len(groups) == 1 && f.path == short[groups[0]].path && text == short[groups[0]].word && w.alone(f.path, groups[0]+".") {
		return nil, groups[0]
	}
	return groups, key
}

// alone reports whether a field is the only one of its group that is filled.
func (w *Wall) alone(path, prefix string) bool {
	for _, f := range fields {
		if strings.HasPrefix(f.path, prefix) && f.path != path && *f.at(w) != "" {
			return false
		}
	}
	return true
}

// write writes the value of a field.
func (f field) write(b *bytes.Buffer, text string) {
	switch {
	case f.kind == YesNo && text == "yes":
		b.WriteString("true")
	case f.kind == YesNo && text == "no":
		b.WriteString("false")
	case f.kind == BarList:
		b.WriteByte('[')
		for i, one := range strings.Split(text, listMark) {
			if i > 0 {
				b.WriteByte(',')
			}
			quote(b, one)
		}
		b.WriteByte(']')
	default:
		quote(b, text)
	}
}

// quote writes a text as a JSON string, without the escapes that only a web
// page needs.
func quote(b *bytes.Buffer, text string) {
	e := json.NewEncoder(b)
	e.SetEscapeHTML(false)
	if e.Encode(text) == nil {
		b.Truncate(b.Len() - 1) // the line's end
	}
}
