package wallfile

import "strings"

// short are the groups that may be written as one word, and the field that the
// word stands for.
var short = map[string]struct{ path, word string }{
	"soil":   {"soil.by", "unknown"},
	"dowels": {"dowels.by", "none"},
}

// object reads the keys of a wall, or of a group within it, into w.
func (d *decoder) object(w *Wall, n node, prefix string) {
	seen := make(map[string]bool, len(n.keys))
	for i, key := range n.keys {
		path, item := prefix+key, n.items[i]
		if seen[key] {
			d.fault(path, "file-doubled-key", "")
			continue
		}
		seen[key] = true
		f, known := find(path)
		switch {
		case strings.Contains(key, "."):
			d.fault(path, "file-unknown-key", "")
		case known:
			d.field(w, f, item)
		case !isGroup(path):
			d.fault(path, "file-unknown-key", "")
		case item.kind == '{':
			d.object(w, item, path+".")
		case item.kind == '"' && item.text != "" && item.text == short[path].word:
			w.Set(short[path].path, item.text)
		case item.kind == '"' && short[path].word != "":
			d.problems = append(d.problems, Problem{Wall: d.number, Name: d.name, Field: short[path].path, ID: "choice", Text: item.text})
		default:
			d.fault(path, "file-object", "")
		}
	}
}

func isGroup(path string) bool {
	for _, f := range fields {
		if strings.HasPrefix(f.path, path+".") {
			return true
		}
	}
	return false
}

// field reads the value of one key.
func (d *decoder) field(w *Wall, f field, item node) {
	text, id := f.text(item)
	switch {
	case id != "":
		d.fault(f.path, id, item.text)
	case len(text) > MaxText:
		d.fault(f.path, "too-long", "")
	default:
		*f.at(w) = text
	}
}

// text is what a value of the file says; id says why it may not stand here.
func (f field) text(item node) (text, id string) {
	switch {
	case f.kind == BarList && item.kind == '[':
		var sizes []string
		for _, one := range item.items {
			if one.kind != '"' {
				return "", "file-not-list"
			}
			sizes = append(sizes, one.text)
		}
		return strings.Join(sizes, listMark), ""
	case f.kind == BarList:
		return "", "file-not-list"
	case f.kind == YesNo && item.kind == 't':
		return "yes", ""
	case f.kind == YesNo && item.kind == 'f':
		return "no", ""
	case f.kind == YesNo && item.kind != '"':
		return "", "file-not-yes-no"
	case item.kind == '0':
		return "", "file-bare-number"
	case item.kind != '"':
		return "", "file-not-text"
	}
	return item.text, ""
}

// listMark parts the members of a list in the text of its field.
const listMark = ", "
