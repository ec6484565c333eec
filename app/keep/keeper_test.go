package keep

import (
	"errors"
	"fmt"
	"maps"
	"sync"
	"testing"
)

func TestKeeperSaves(t *testing.T) {
	m := newMachine(t)
	k, r := m.page("a")
	if _, err := k.Get("walls"); !errors.Is(err, ErrNotFound) {
		t.Errorf("Get of nothing: %v, want ErrNotFound", err)
	}
	k.Put("walls", []byte("8 ft"))
	k.Flush()
	if err := r.last(); err != nil {
		t.Errorf("report %v", err)
	}
	next, _ := m.page("b")
	wantPiece(t, next, "8 ft")
	if keys := m.slots.Keys(); len(keys) != 0 {
		t.Errorf("the journal still holds %q", keys)
	}
	next.Remove("walls")
	next.Flush()
	if _, err := k.Get("walls"); !errors.Is(err, ErrNotFound) {
		t.Errorf("Get of a removed piece: %v, want ErrNotFound", err)
	}
}

// Of many changes in a row the last is saved, and saves in between are left
// out while one is under way.
func TestKeeperLatestWins(t *testing.T) {
	m := newMachine(t)
	k, r := m.page("a")
	gate := make(chan struct{})
	m.fail = func(op, _ string) error {
		if op == "rename" {
			<-gate
		}
		return nil
	}
	for i := range 1000 {
		k.Put("walls", fmt.Appendf(nil, "height %d", i))
	}
	close(gate)
	k.Flush()
	if n := r.count(); n > 10 {
		t.Errorf("%d saves for changes that came while one was under way", n)
	}
	next, _ := m.page("b")
	wantPiece(t, next, "height 999")
}

// The caller may go on using what it has put.
func TestKeeperCopies(t *testing.T) {
	m := newMachine(t)
	k, _ := m.page("a")
	data := []byte("8 ft")
	k.Put("walls", data)
	data[0] = '9'
	k.Flush()
	next, _ := m.page("b")
	wantPiece(t, next, "8 ft")
}

// A page may be killed at any step of any save: the last change put is there
// for the next page, each time.
func TestKeeperKilled(t *testing.T) {
	for step := range 40 {
		m := newMachine(t)
		k, _ := m.page("a")
		k.Put("walls", []byte("first"))
		k.Flush()
		n := 0
		m.fail = func(string, string) error {
			if n++; n > step {
				return errKilled // from here on the page does nothing more
			}
			return nil
		}
		last := ""
		for i := range 4 {
			last = fmt.Sprintf("change %d", i)
			k.Put("walls", []byte(last))
			if i%2 == 0 {
				k.Flush()
			}
		}
		k.Flush()
		m.fail = nil
		next, _ := m.page("b")
		wantPiece(t, next, last)
		next.Put("walls", []byte("goes on"))
		next.Flush()
		third, _ := m.page("c")
		wantPiece(t, third, "goes on")
	}
}

func TestKeeperTwoTabs(t *testing.T) {
	m := newMachine(t)
	a, ra := m.page("a")
	a.Put("walls", []byte("start"))
	a.Flush()
	b, rb := m.page("b")
	wantPiece(t, b, "start")
	b.Put("walls", []byte("from b"))
	b.Flush()
	if err := rb.last(); err != nil {
		t.Fatalf("b's save: %v", err)
	}

	a.Put("walls", []byte("from a"))
	a.Flush()
	if err := ra.last(); !errors.Is(err, ErrChanged) {
		t.Fatalf("a's save over b's: %v, want ErrChanged", err)
	}
	wantPiece(t, b, "from b")

	a.Put("walls", []byte("from a, more")) // still not answered
	a.Flush()
	wantPiece(t, b, "from b")
	a.TakeMine("walls")
	a.Flush()
	if err := ra.last(); err != nil {
		t.Errorf("a's save after TakeMine: %v", err)
	}
	wantPiece(t, b, "from a, more")
	a.Put("walls", []byte("a goes on"))
	a.Flush()
	if err := ra.last(); err != nil {
		t.Errorf("a goes on: %v", err)
	}
	b.Put("walls", []byte("b too"))
	b.Flush()
	if err := rb.last(); !errors.Is(err, ErrChanged) {
		t.Errorf("b's save over a's: %v, want ErrChanged", err)
	}
	wantPiece(t, b, "a goes on") // the other answer
	b.Put("walls", []byte("b after a"))
	b.Flush()
	if err := rb.last(); err != nil {
		t.Errorf("b after reading a's: %v", err)
	}
}

// A journal note that another tab's later save has overtaken comes not back.
func TestKeeperStaleNote(t *testing.T) {
	m := newMachine(t)
	a, _ := m.page("a")
	a.Put("walls", []byte("start"))
	a.Flush()
	b, _ := m.page("b")
	wantPiece(t, b, "start")
	m.fail = func(op, _ string) error { return broken(op == "rename", errKilled) }
	a.Put("walls", []byte("unsaved"))
	a.Flush()
	m.fail = nil
	b.Put("walls", []byte("later"))
	b.Flush()
	c, _ := m.page("c")
	wantPiece(t, c, "later")
	if keys := m.slots.Keys(); len(keys) != 0 {
		t.Errorf("the journal still holds %q", keys)
	}
}

// A killed browser may have lost the latest of the journal and bring back a
// note whose change, and later ones, are long saved.
func TestKeeperOldNote(t *testing.T) {
	m := newMachine(t)
	a, _ := m.page("a")
	a.Put("walls", []byte("start"))
	a.Flush()
	m.fail = func(op, _ string) error { return broken(op == "rename") }
	a.Put("walls", []byte("old"))
	a.Flush()
	m.fail = nil
	old := maps.Clone(m.slots.held)
	if len(old) != 1 {
		t.Fatalf("the journal holds %v, want one note", old)
	}
	for _, data := range []string{"old", "newer", "newest", "newer"} {
		a.Put("walls", []byte(data))
		a.Flush()
	}
	m.slots.held = old
	b, _ := m.page("b")
	wantPiece(t, b, "newer")
}

// Refused storage is reported, loses nothing while the page is open, and is
// tried again with the next change.
func TestKeeperRefused(t *testing.T) {
	m := newMachine(t)
	refuse := true
	opened := 0
	r := &reports{}
	k := NewKeeper(func() (*Store, error) {
		if opened++; refuse {
			return nil, fmt.Errorf("%w: private window", ErrRefused)
		}
		return NewStore(m.device, "a", nil)
	}, NewJournal(m.slots, "unsaved ", "a", m.now), r.add)
	if _, err := k.Get("walls"); !errors.Is(err, ErrRefused) {
		t.Errorf("Get: %v, want ErrRefused", err)
	}
	k.Put("walls", []byte("8 ft"))
	k.Flush()
	if err := r.last(); !errors.Is(err, ErrRefused) {
		t.Errorf("report %v, want ErrRefused", err)
	}
	if got, err := k.Get("walls"); string(got) != "8 ft" || !errors.Is(err, ErrRefused) {
		t.Errorf("Get = %q, %v; want what the journal has, and ErrRefused", got, err)
	}
	refuse = false
	k.Put("walls", []byte("9 ft"))
	k.Flush()
	if err := r.last(); err != nil {
		t.Errorf("report %v after storage works", err)
	}
	next, _ := m.page("b")
	wantPiece(t, next, "9 ft")

	// A store that stops working, as when the browser ends its connection, is
	// opened anew.
	before := opened
	m.fail = func(string, string) error { return errBroken }
	k.Put("walls", []byte("10 ft"))
	k.Flush()
	m.fail = nil
	k.Put("walls", []byte("11 ft"))
	k.Flush()
	if err := r.last(); err != nil || opened != before+1 {
		t.Errorf("report %v, opened %d times more; want one", err, opened-before)
	}
	wantPiece(t, next, "11 ft")
}

// Many goroutines at once, under the race detector.
func TestKeeperConcurrent(t *testing.T) {
	m := newMachine(t)
	k, r := m.page("a")
	var all sync.WaitGroup
	for i := range 8 {
		all.Go(func() {
			for j := range 50 {
				k.Put(fmt.Sprint("piece ", i), fmt.Appendf(nil, "%d", j))
			}
		})
	}
	all.Wait()
	k.Flush()
	if err := r.last(); err != nil {
		t.Error(err)
	}
	names, err := k.Names()
	if err != nil || len(names) != 8 {
		t.Fatalf("Names() = %q, %v", names, err)
	}
	for _, name := range names {
		if got, err := k.Get(name); err != nil || string(got) != "49" {
			t.Errorf("%s holds %q, %v; want the last, 49", name, got, err)
		}
	}
}
