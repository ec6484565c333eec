package wallfile

import (
	"bytes"
	"encoding/json"
	"io"
)

// node is one value of a JSON text with its keys in order, doubled ones
// included.
type node struct {
	kind  byte // '{', '[', '"', '0', 't' true, 'f' false, 'n' null
	text  string
	keys  []string
	items []node
}

// deepest is how far a file may be nested; the format needs five levels.
const deepest = 12

// parse reads one JSON text and nothing behind it. The fault is empty when all
// is well.
func parse(data []byte) (node, Problem) {
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	root, id := value(d, 0)
	if id != "" {
		return node{}, Problem{ID: id, Text: lineOf(data, d.InputOffset())}
	}
	if _, err := d.Token(); err != io.EOF {
		return node{}, Problem{ID: "file-trailing"}
	}
	return root, Problem{}
}

// value reads the next value.
func value(d *json.Decoder, depth int) (n node, fault string) {
	token, err := d.Token()
	if err != nil {
		return n, "file-json"
	}
	switch t := token.(type) {
	case string:
		return node{kind: '"', text: t}, ""
	case json.Number:
		return node{kind: '0', text: t.String()}, ""
	case bool:
		if t {
			return node{kind: 't'}, ""
		}
		return node{kind: 'f'}, ""
	case json.Delim:
		if depth >= deepest {
			return n, "file-too-deep"
		}
		return members(d, node{kind: byte(t)}, depth+1)
	}
	return node{kind: 'n'}, ""
}

// members reads what stands in an object or a list, up to its end.
func members(d *json.Decoder, n node, depth int) (node, string) {
	for d.More() {
		if n.kind == '{' {
			key, err := d.Token()
			if err != nil {
				return n, "file-json"
			}
			n.keys = append(n.keys, key.(string))
		}
		item, fault := value(d, depth)
		if fault != "" {
			return n, fault
		}
		n.items = append(n.items, item)
	}
	if _, err := d.Token(); err != nil {
		return n, "file-json"
	}
	return n, ""
}

// get returns the value of a key and whether it is there.
func (n node) get(key string) (node, bool) {
	for i, k := range n.keys {
		if k == key {
			return n.items[i], true
		}
	}
	return node{}, false
}
