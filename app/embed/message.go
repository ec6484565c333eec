package embed

import (
	"bytes"
	"encoding/json"
	"io"
)

// Request is what the page around asks for after the start.
type Request struct {
	Asks string // "set": what Ask says is wanted from now on; "wall": the walls of File
	Ask  Ask
	File string
}

// Read reads a message from the page around. It is false for one that is not
// exactly of this version and shape; such a message is to be ignored.
func Read(text string) (Request, bool) {
	var m struct {
		Version int     `json:"standing-beam"`
		Asks    string  `json:"asks"`
		As      *string `json:"as"`
		File    *string `json:"file"`
	}
	if len(text) > MaxMessage {
		return Request{}, false
	}
	d := json.NewDecoder(bytes.NewReader([]byte(text)))
	d.DisallowUnknownFields()
	if d.Decode(&m) != nil || m.Version != Version {
		return Request{}, false
	}
	if _, err := d.Token(); err != io.EOF {
		return Request{}, false
	}
	switch {
	case m.Asks == "set" && m.As != nil && m.File == nil && len(*m.As) <= MaxFragment:
		return Request{Asks: m.Asks, Ask: ParseQuery(*m.As)}, true
	case m.Asks == "wall" && m.File != nil && m.As == nil:
		return Request{Asks: m.Asks, File: *m.File}, true
	}
	return Request{}, false
}

// Message is what the calculator says. Says is one of
//
//	ready    the wall is shown: its height and the answer
//	height   the height has changed
//	change   the wall or its answer has changed
//	refused  something that was wanted cannot be
type Message struct {
	Version int      `json:"standing-beam"`
	Says    string   `json:"says"`
	Height  int      `json:"height,omitempty"` // CSS pixels
	Answer  *Told    `json:"answer,omitempty"`
	What    []string `json:"what,omitempty"`
}

// Told is the wall and its answer.
type Told struct {
	File     json.RawMessage `json:"file"`     // a wall file
	Readable bool            `json:"readable"` // every field can be used; else the answer is the last that could
	Verdict  string          `json:"verdict"`
	Finished Line            `json:"finished"`
	Today    Line            `json:"today"`
}

// Line is one line of the headline.
type Line struct {
	State string `json:"state"`
	Mark  string `json:"mark"`
	Title string `json:"title"`
}

// Text is the message as it is sent, "" when it cannot be.
func (m Message) Text() string {
	m.Version = Version
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if e.Encode(m) != nil {
		return ""
	}
	return b.String()
}
