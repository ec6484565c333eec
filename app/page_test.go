package main

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"standingbeam/app/keep"
	"standingbeam/app/view"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// mounted is a page in an engine that plays the browser.
func mounted(t *testing.T) (*page, app.TestEngine) {
	t.Helper()
	p := &page{}
	engine := app.NewTestEngine()
	if err := engine.Load(p); err != nil {
		t.Fatal(err)
	}
	engine.ConsumeAll()
	return p, engine
}

// The document that is sent already holds the answer and the picture.
func TestPrerenderedPage(t *testing.T) {
	p := firstPage()
	html := app.HTMLString(p)
	for _, want := range []string{"East cellar wall", `id="picture"`, "FILL ONLY TO", "verticals at", "What was checked", "9 ft 0 in"} {
		if !strings.Contains(html, want) {
			t.Errorf("the document does not hold %q", want)
		}
	}
	if strings.Contains(html, "style=") {
		t.Error("the document holds a style attribute, which the security policy refuses")
	}
}

// The page draws itself in every condition, in both systems, open and closed.
func TestPageDraws(t *testing.T) {
	p, engine := mounted(t)
	for _, condition := range []string{"braced top", "free top", "tied to slab", "soil both sides"} {
		for _, system := range []words.System{words.US, words.Metric} {
			for _, open := range []bool{false, true} {
				view.Choose(p.wall(), "condition", condition)
				p.speaker.System = system
				for _, id := range []string{"walls", "more", "push", "hold", "today", "carry", "rest", "compared", "idle"} {
					p.open[id] = open
				}
				p.Render()
				if p.fault != "" {
					t.Fatalf("%s: %s", condition, p.fault)
				}
			}
		}
	}
	engine.ConsumeAll()
}

// What is kept comes back as it was typed, readable or not.
func TestRecord(t *testing.T) {
	p := firstPage()
	second := view.Example()
	second.Set("name", "Garage \"west\" wall ½")
	second.Set("height", "11 f")
	p.walls = append(p.walls, kept{wall: second})
	p.here, p.theme, p.speaker = 1, "dark", words.Speaker{Lang: "es", System: words.Metric, DecimalComma: true}
	q := firstPage()
	if !q.restore(p.record()) {
		t.Fatal("the record is refused")
	}
	if q.here != 1 || q.theme != "dark" || q.speaker != p.speaker || len(q.walls) != 2 {
		t.Errorf("came back as wall %d, %q, %+v, %d walls", q.here, q.theme, q.speaker, len(q.walls))
	}
	for i := range p.walls {
		if p.walls[i].wall != q.walls[i].wall {
			t.Errorf("wall %d came back as %+v, want %+v", i, q.walls[i].wall, p.walls[i].wall)
		}
	}
}

func TestRestoreRefuses(t *testing.T) {
	for _, data := range []string{"", "{", "null", "[]", `{"format":1,"walls":[]}`, `{"format":2,"walls":[{}]}`, `{"format":1,"walls":[{"height":9}]}`} {
		if p := firstPage(); p.restore([]byte(data)) {
			t.Errorf("%s was taken for a record", data)
		}
	}
	p := firstPage()
	if !p.restore([]byte(`{"format":1,"here":99,"walls":[{"name":"A","no such field":"x"}]}`)) || p.here != 0 {
		t.Errorf("a record with a strange key: at wall %d", p.here)
	}
}

// memory is a keeper that answers from what it was given.
type memory struct {
	data  []byte
	err   error
	wait  time.Duration
	put   []byte
	taken bool
}

func (m *memory) Get(string) ([]byte, error) { time.Sleep(m.wait); return m.data, m.err }
func (m *memory) Put(_ string, data []byte)  { m.put = data }
func (m *memory) TakeMine(string)            { m.taken = true }

// What was kept is there when the page is first drawn; what was typed before
// it came stands beside it; a storage that refuses is said to.
func TestBegin(t *testing.T) {
	old := firstPage()
	old.wall().Set("height", "12 ft")
	record := old.record()

	p := firstPage()
	p.begin(&memory{data: record})
	if p.wall().Height != "12 ft" || len(p.walls) != 1 || p.storage != "page.storage.kept" {
		t.Errorf("begun with %q, %d walls, %s", p.wall().Height, len(p.walls), p.storage)
	}
	p = firstPage()
	p.wall().Set("height", "10 ft")
	p.early = true
	p.begin(&memory{data: record})
	if p.wall().Height != "10 ft" || len(p.walls) != 2 || p.walls[0].wall.Height != "12 ft" {
		t.Errorf("typed early: on the screen %q of %d walls", p.wall().Height, len(p.walls))
	}
	for _, test := range []struct {
		err  error
		want string
	}{
		{nil, "page.storage.kept"}, {keep.ErrNotFound, "page.storage.kept"},
		{fmt.Errorf("x: %w", keep.ErrFull), "page.storage.full"}, {keep.ErrDamaged, "page.storage.damaged"},
		{keep.ErrChanged, "page.storage.changed"}, {errors.New("odd"), "page.storage.refused"},
	} {
		p := firstPage()
		p.begin(&memory{err: test.err})
		if p.storage != test.want || len(p.walls) != 1 {
			t.Errorf("%v: %s, %d walls", test.err, p.storage, len(p.walls))
		}
	}
}

// A save hands over the whole state, once.
func TestFlush(t *testing.T) {
	m := &memory{}
	p := firstPage()
	p.keeper = m
	p.flush()
	if m.put != nil {
		t.Error("nothing had changed, and it was saved")
	}
	p.wall().Set("height", "10 ft")
	p.changes++
	p.flush()
	if q := firstPage(); !q.restore(m.put) || q.wall().Height != "10 ft" {
		t.Errorf("saved %s", m.put)
	}
	m.put = nil
	if p.flush(); m.put != nil {
		t.Error("the same was saved twice")
	}
}

// The file for others holds every wall with its units.
func TestFileOfPage(t *testing.T) {
	p := firstPage()
	p.wall().Set("height", "9.5")
	walls, problems := wallfile.Decode(strings.NewReader(string(p.file())))
	if len(problems) > 0 || len(walls) != 1 || walls[0].Height != "9 ft 6 in" {
		t.Errorf("the file reads back as %+v, %v", walls, problems)
	}
}

// A fault in the drawing of the page shows itself instead of stopping the
// program, and one in a handler leaves the wall as it was drawn last.
func TestFaults(t *testing.T) {
	p := firstPage()
	p.Render()
	good := *p.wall()
	p.compute = func(view.Form, view.Good) (view.View, view.Good) { panic("broken") }
	html := app.HTMLString(p)
	if !strings.Contains(html, "broken") || !strings.Contains(html, "fault-saved") {
		t.Errorf("a fault in the drawing shows\n%s", html)
	}
	p = firstPage()
	p.Render()
	func() {
		defer p.caught()
		p.wall().Set("height", "half done")
		panic("in a handler")
	}()
	if *p.wall() != good || p.fault != "in a handler" {
		t.Errorf("after the fault: %q, wall %+v", p.fault, *p.wall())
	}
	if html := app.HTMLString(p); !strings.Contains(html, "in a handler") {
		t.Error("the fault does not show")
	}
}

// Keys of ours write at the caret; a blank is put before a unit but not twice.
func TestTypedKeys(t *testing.T) {
	for _, test := range []struct {
		text     string
		from, to int
		key      string
		want     string
		at       int
	}{
		{"9", 1, 1, "_ft_", "9 ft ", 5},
		{"9 ft ", 5, 5, "_1/2", "9 ft 1/2", 8},
		{"9 ft 4", 6, 6, "_in", "9 ft 4 in", 9},
		{"", 0, 0, "_ft_", "ft ", 3},
		{"12", 0, 2, "back", "", 0},
		{"12", 2, 2, "back", "1", 1},
		{"12", 0, 0, "back", "12", 0},
		{"½", 1, 1, "/", "½/", 2},
		{"9", 7, 9, "_m", "9 m", 3},
	} {
		if got, at := typed(test.text, test.from, test.to, test.key); got != test.want || at != test.at {
			t.Errorf("typed(%q, %d, %d, %q) = %q, %d, want %q, %d", test.text, test.from, test.to, test.key, got, at, test.want, test.at)
		}
	}
}

func TestStepOf(t *testing.T) {
	for step, want := range map[string]int{"height+": 1, "grade.a-": -1, "footing.width+": 1} {
		if path, by := stepOf(step); by != want || strings.ContainsAny(path, "+-") {
			t.Errorf("stepOf(%q) = %q, %d", step, path, by)
		}
	}
}

// Drawing the page once, as every event does.
func BenchmarkRender(b *testing.B) {
	p := firstPage()
	for b.Loop() {
		p.Render()
	}
}
