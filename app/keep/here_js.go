package keep

import (
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"path"
	"syscall/js"
	"time"

	"github.com/hack-pad/go-indexeddb/idb"
	"github.com/hack-pad/hackpadfs/indexeddb"
)

// openPatience bounds the opening of the database, which some browsers leave
// unanswered.
const openPatience = 10 * time.Second

// Here returns the keeper of this device, for the folder that the page is
// served from: IndexedDB, with a journal in localStorage.
func Here(report func(Report)) *Keeper {
	folder, _ := path.Split(js.Global().Get("location").Get("pathname").String())
	name := "standing-beam " + folder
	tab := newTab()
	open := func() (*Store, error) { return openHere(name, tab) }
	journal := NewJournal(localStorage{}, name+" unsaved ", tab, func() int64 { return time.Now().UnixMilli() })
	k := NewKeeper(open, journal, report)
	k.marks = marks{localStorage{}, name + " "}
	return k
}

// newTab tells this page from every other.
func newTab() string { return rand.Text()[:10] }

func openHere(name, tab string) (store *Store, err error) {
	defer func() {
		if fault := recover(); fault != nil {
			err = fmt.Errorf("%w: %v", ErrRefused, fault)
		}
	}()
	if !global("indexedDB").Truthy() {
		return nil, fmt.Errorf("%w: no database in this browser", ErrRefused)
	}
	ctx, cancel := context.WithTimeout(context.Background(), openPatience)
	defer cancel()
	fs, err := indexeddb.NewFS(ctx, name, indexeddb.Options{})
	if err != nil {
		if isFull(err) {
			return nil, fmt.Errorf("%w: %w", ErrFull, err)
		}
		return nil, fmt.Errorf("%w: %w", ErrRefused, err)
	}
	return NewStore(fs, tab, func() (func(), error) { return lockTabs(name) })
}

// global is a property of the window. Where a browser refuses it, this panics
// in a way that can be recovered from, as js.Value.Get does not.
func global(name string) js.Value {
	return js.Global().Get("Reflect").Call("get", js.Global(), name)
}

// isFull tells whether the device has no room left.
func isFull(err error) bool { return errors.Is(err, idb.NewDOMException("QuotaExceededError")) }
