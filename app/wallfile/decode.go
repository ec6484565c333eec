package wallfile

import (
	"bytes"
	"io"
	"strconv"

	"standingbeam/app/entry"
)

// Format is the number of the format that is read and written.
const Format = 1

// Limits of a file. A wall takes less than two kilobytes.
const (
	MaxWalls  = 20000
	MaxBytes  = 32 << 20
	MaxText   = 200  // bytes of one field
	maxFaults = 1000 // more are not listed
)

// Decode reads a file strictly: every key known and written once, every
// quantity with its unit and within its range. With problems the walls are
// those that could be read, and are not to be used for an answer.
func Decode(r io.Reader) ([]Wall, []Problem) {
	walls, problems := Read(r)
	type place struct {
		wall  int
		field string
	}
	faulty := make(map[place]bool, len(problems))
	for _, p := range problems {
		faulty[place{p.Wall, p.Field}] = true
	}
	for i, w := range walls {
		_, faults := w.Input(entry.Options{Strict: true})
		for _, p := range faults {
			p.Wall = i + 1
			if len(problems) < maxFaults && !faulty[place{p.Wall, p.Field}] {
				problems = append(problems, p)
			}
		}
	}
	return walls, problems
}

// Read reads a file without looking at what the texts say: for walls that were
// kept while they were being typed. Read(Encode(walls)) gives the same walls.
func Read(r io.Reader) ([]Wall, []Problem) {
	data, err := io.ReadAll(io.LimitReader(r, MaxBytes+1))
	if err != nil {
		return nil, []Problem{{ID: "file-unread"}}
	}
	if len(data) > MaxBytes {
		return nil, []Problem{{ID: "file-too-big", Text: strconv.Itoa(MaxBytes >> 20)}}
	}
	root, fault := parse(bytes.TrimPrefix(data, []byte("\xef\xbb\xbf")))
	if fault.ID != "" {
		return nil, []Problem{fault}
	}
	d := decoder{}
	d.file(root)
	return d.walls, d.problems
}

type decoder struct {
	walls    []Wall
	problems []Problem
	number   int    // of the wall that is being read, from 1
	name     string // of that wall
}

func (d *decoder) fault(field, id, text string) {
	if len(d.problems) < maxFaults {
		d.problems = append(d.problems, Problem{Wall: d.number, Name: d.name, Field: field, ID: id, Text: text})
	}
}

// file reads the outermost object.
func (d *decoder) file(root node) {
	if root.kind != '{' {
		d.fault("", "file-object", "")
		return
	}
	seen := map[string]bool{}
	for _, key := range root.keys {
		switch {
		case seen[key]:
			d.fault(key, "file-doubled-key", "")
		case key != "format" && key != "walls":
			d.fault(key, "file-unknown-key", "")
		}
		seen[key] = true
	}
	format, ok := root.get("format")
	switch {
	case !ok:
		d.fault("format", "file-no-format", "")
	case format.kind != '0' || format.text != strconv.Itoa(Format):
		d.fault("format", "file-format", "")
		return
	}
	walls, ok := root.get("walls")
	switch {
	case !ok:
		d.fault("walls", "file-no-walls", "")
	case walls.kind != '[':
		d.fault("walls", "file-walls", "")
	case len(walls.items) == 0:
		d.fault("walls", "file-no-walls", "")
	case len(walls.items) > MaxWalls:
		d.fault("walls", "file-too-many", strconv.Itoa(MaxWalls))
	default:
		d.list(walls.items)
	}
}

func (d *decoder) list(items []node) {
	d.walls = make([]Wall, 0, len(items))
	for i, item := range items {
		var w Wall
		d.number, d.name = i+1, ""
		if name, ok := item.get("name"); ok && name.kind == '"' {
			d.name = name.text
		}
		if item.kind != '{' {
			d.fault("", "file-object", "")
		} else {
			d.object(&w, item, "")
		}
		d.walls = append(d.walls, w)
	}
	d.number, d.name = 0, ""
}

// lineOf is the number of the line at an offset, from 1.
func lineOf(data []byte, offset int64) string {
	n := min(max(int(offset), 0), len(data))
	return strconv.Itoa(1 + bytes.Count(data[:n], []byte("\n")))
}
