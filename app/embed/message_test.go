package embed

import (
	"encoding/json"
	"strings"
	"testing"
)

func TestRead(t *testing.T) {
	if r, ok := Read(`{"standing-beam":1,"asks":"set","as":"height=6+ft&show=picture"}`); !ok || r.Ask.Show != Picture || len(r.Ask.Fields) != 1 {
		t.Errorf("set is read as %+v, %v", r, ok)
	}
	if r, ok := Read(` {"asks":"wall","standing-beam":1,"file":"{\"format\":1}"} `); !ok || r.File != `{"format":1}` {
		t.Errorf("wall is read as %+v, %v", r, ok)
	}
}

// Anything else is ignored.
func TestReadIgnores(t *testing.T) {
	for _, text := range []string{
		"", "null", "1", `"set"`, "[]", "{}", "{", `{"asks":"set","as":""}`,
		`{"standing-beam":0,"asks":"set","as":""}`, `{"standing-beam":2,"asks":"set","as":""}`, `{"standing-beam":"1","asks":"set","as":""}`,
		`{"standing-beam":1,"asks":"set"}`, `{"standing-beam":1,"asks":"set","as":1}`, `{"standing-beam":1,"asks":"set","as":"","file":""}`,
		`{"standing-beam":1,"asks":"wall"}`, `{"standing-beam":1,"asks":"wall","file":{}}`, `{"standing-beam":1,"asks":"wall","as":"","file":""}`,
		`{"standing-beam":1,"asks":"go","as":""}`, `{"standing-beam":1,"asks":"set","as":"","more":1}`,
		`{"standing-beam":1,"asks":"set","as":""}{}`, `{"standing-beam":1,"asks":"set","as":""} x`,
		`{"standing-beam":1,"asks":"set","as":"` + strings.Repeat("x", MaxFragment+1) + `"}`,
		`{"standing-beam":1,"asks":"wall","file":"` + strings.Repeat("x", MaxMessage) + `"}`,
	} {
		if r, ok := Read(text); ok {
			t.Errorf("%.80s was read as %+v", text, r)
		}
	}
}

func TestMessageText(t *testing.T) {
	var got map[string]any
	m := Message{Says: "ready", Height: 640, Answer: &Told{File: json.RawMessage(`{"format":1}`), Readable: true, Verdict: "open", Today: Line{State: "fails"}}}
	if err := json.Unmarshal([]byte(m.Text()), &got); err != nil {
		t.Fatal(err)
	}
	if got["standing-beam"] != 1.0 || got["says"] != "ready" || got["height"] != 640.0 || got["what"] != nil {
		t.Errorf("written as %s", m.Text())
	}
	if answer, _ := got["answer"].(map[string]any); answer["verdict"] != "open" || answer["file"].(map[string]any)["format"] != 1.0 {
		t.Errorf("the answer is written as %s", m.Text())
	}
}

func FuzzRead(f *testing.F) {
	f.Add(`{"standing-beam":1,"asks":"set","as":"height=6+ft"}`)
	f.Add(`{"standing-beam":1,"asks":"wall","file":"x"}`)
	f.Fuzz(func(t *testing.T, text string) {
		r, ok := Read(text)
		if ok != (r.Asks == "set" || r.Asks == "wall") {
			t.Errorf("%q: %+v, %v", text, r, ok)
		}
	})
}
