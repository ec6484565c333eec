package keep

import (
	"encoding/json"
	"strings"
)

// Journal notes each change before it is saved. It must answer at once, and
// may lose what it is given: it is a second net, not a store.
type Journal interface {
	// Write notes the unsaved data of a piece that follows a revision, in the
	// place of what this tab has noted of it before. change counts the changes
	// of this tab.
	Write(name string, after Revision, change int, data []byte)
	// Clear drops what this tab has noted of a piece.
	Clear(name string)
	// Read returns the latest data noted of a piece, by any tab, that is newer
	// than its present revision. Others are dropped: a save of another tab
	// has overtaken them. For an unknown revision it returns the latest and
	// drops none.
	Read(name string, present Revision) ([]byte, bool)
}

// Slots are the named strings of a browser's localStorage. Each method
// answers at once; a fault is silence.
type Slots interface {
	Get(key string) (string, bool)
	Set(key, value string)
	Remove(key string)
	Keys() []string
}

// NewJournal returns a journal in slots whose keys begin with prefix. now is
// the time in milliseconds.
func NewJournal(slots Slots, prefix, tab string, now func() int64) Journal {
	return &journal{slots, prefix, tab, now}
}

type journal struct {
	slots  Slots
	prefix string
	tab    string
	now    func() int64
}

// note is one slot's content.
type note struct {
	After  Revision `json:"after"`
	Change int      `json:"change"`
	Time   int64    `json:"time"`
	Data   []byte   `json:"data"`
}

// follows tells whether a note of tab is newer than a revision: it was made
// upon it, or it is a later change of the tab that made the revision. Which of
// a tab's notes a killed browser leaves is open: it may be an old one.
func (n note) follows(present Revision, tab string) bool {
	_, saver, change := present.parts()
	return present == unknown || n.After == present || saver == tab && n.Change > change
}

// slots of a piece: the prefix, the tab, a space and the name.
func (j *journal) key(name string) string { return j.prefix + j.tab + " " + name }

func (j *journal) Write(name string, after Revision, change int, data []byte) {
	text, err := json.Marshal(note{after, change, j.now(), data})
	if err == nil {
		j.slots.Set(j.key(name), string(text))
	}
}

func (j *journal) Clear(name string) { j.slots.Remove(j.key(name)) }

func (j *journal) Read(name string, present Revision) ([]byte, bool) {
	var latest note
	found := false
	for _, key := range j.slots.Keys() {
		rest, ours := strings.CutPrefix(key, j.prefix)
		tab, of, _ := strings.Cut(rest, " ")
		if !ours || of != name {
			continue
		}
		text, _ := j.slots.Get(key)
		var n note
		if json.Unmarshal([]byte(text), &n) != nil || !n.follows(present, tab) {
			j.slots.Remove(key)
			continue
		}
		if !found || n.Time >= latest.Time {
			latest, found = n, true
		}
	}
	return latest.Data, found
}
