package keep

import (
	"errors"
	"sync"
)

// Report tells the outcome of a save.
type Report struct {
	Name string
	Err  error // nil when the latest is saved
}

// Keeper saves pieces in the background, one save at a time and always the
// latest. Put, Remove and TakeMine return at once and may be called from an
// event handler; Get, Names and Flush block.
type Keeper struct {
	open    func() (*Store, error)
	journal Journal
	report  func(Report)
	marks   marks

	using sync.Mutex // held by whoever uses store
	store *Store

	mu      sync.Mutex
	idle    sync.Cond // no save is under way or due
	working bool
	changes int                 // how often something was put
	due     map[string]piece    // the latest of each piece that is not saved
	seen    map[string]Revision // the revision that each piece follows
	held    map[string]error    // why a piece that is due is not tried
	mine    map[string]bool     // pieces that replace whatever is saved
}

// piece is data to be saved, or a piece to be removed.
type piece struct {
	data   []byte
	change int // counts what was put
	remove bool
}

// NewKeeper returns a keeper of the store that open opens when it is first
// needed, and again after a fault. report is called, from another goroutine,
// after each save; it may be nil.
func NewKeeper(open func() (*Store, error), journal Journal, report func(Report)) *Keeper {
	if report == nil {
		report = func(Report) {}
	}
	k := &Keeper{
		open: open, journal: journal, report: report,
		due: map[string]piece{}, seen: map[string]Revision{}, held: map[string]error{}, mine: map[string]bool{},
	}
	k.idle.L = &k.mu
	return k
}

// Get returns a piece as it was last put, whether or not its save came to an
// end, and takes notice of what other tabs have saved. What was put here and
// is not saved by then is dropped. It may return data together with an error:
// what the journal has, when the store does not answer.
func (k *Keeper) Get(name string) ([]byte, error) {
	var data []byte
	var present Revision
	err := k.with(func(s *Store) error {
		var err error
		data, present, err = s.Load(name)
		k.mu.Lock()
		defer k.mu.Unlock()
		k.seen[name] = present
		k.forget(name)
		return err
	})
	nothing := errors.Is(err, ErrNotFound) || errors.Is(err, ErrDamaged)
	if err != nil && !nothing {
		present = unknown
	}
	unsaved, noted := k.journal.Read(name, present)
	switch {
	case !noted && errors.Is(err, ErrNotFound) && k.marks.has(name):
		return nil, ErrCleared
	case !noted:
		return data, err
	case nothing:
		return unsaved, nil
	}
	return unsaved, err
}

// Names returns the names of all saved pieces, in order.
func (k *Keeper) Names() (names []string, err error) {
	err = k.with(func(s *Store) error {
		names, err = s.Names()
		return err
	})
	return names, err
}

// forget drops what was put of a piece. The caller holds mu.
func (k *Keeper) forget(name string) {
	delete(k.due, name)
	delete(k.held, name)
	delete(k.mine, name)
}

// Put has a piece saved. It keeps a copy of data.
func (k *Keeper) Put(name string, data []byte) {
	k.mu.Lock()
	defer k.mu.Unlock()
	k.changes++
	data = append([]byte(nil), data...)
	k.journal.Write(name, k.seen[name], k.changes, data)
	k.due[name] = piece{data: data, change: k.changes}
	if !errors.Is(k.held[name], ErrChanged) {
		delete(k.held, name)
	}
	k.start()
}

// Remove has a piece deleted.
func (k *Keeper) Remove(name string) {
	k.mu.Lock()
	defer k.mu.Unlock()
	k.journal.Clear(name)
	k.changes++
	k.due[name] = piece{remove: true, change: k.changes}
	delete(k.held, name)
	k.start()
}

// TakeMine answers ErrChanged: what was put here is to replace what the other
// tab has saved. The other answer is Get.
func (k *Keeper) TakeMine(name string) {
	k.mu.Lock()
	defer k.mu.Unlock()
	k.mine[name] = true
	delete(k.held, name)
	k.start()
}

// Flush waits until no save is under way and each piece is saved or has been
// reported as not.
func (k *Keeper) Flush() {
	k.mu.Lock()
	defer k.mu.Unlock()
	for k.working {
		k.idle.Wait()
	}
}

// start has due pieces saved, unless that is already going on.
func (k *Keeper) start() {
	if !k.working {
		k.working = true
		go k.work()
	}
}

func (k *Keeper) work() {
	k.mu.Lock()
	defer k.mu.Unlock()
	for {
		name, p, ok := k.next()
		if !ok {
			k.working = false
			k.idle.Broadcast()
			return
		}
		k.mu.Unlock()
		err := k.with(func(s *Store) error { return k.write(s, name, p) })
		k.mu.Lock()
		if err != nil {
			k.held[name] = err
		}
		k.mu.Unlock()
		k.report(Report{name, err})
		k.mu.Lock()
	}
}

// next is a piece that is due and may be tried.
func (k *Keeper) next() (string, piece, bool) {
	for name, p := range k.due {
		if k.held[name] == nil {
			return name, p, true
		}
	}
	return "", piece{}, false
}

// write saves or removes a piece.
func (k *Keeper) write(s *Store, name string, p piece) error {
	if p.remove {
		err := s.Remove(name)
		if err == nil {
			k.settle(name, p, "")
		}
		return err
	}
	k.mu.Lock()
	after, mine := k.seen[name], k.mine[name]
	k.mu.Unlock()
	if mine {
		_, present, err := s.Load(name)
		if err != nil && !errors.Is(err, ErrNotFound) && !errors.Is(err, ErrDamaged) {
			return err
		}
		after = present
	}
	saved, err := s.Save(name, p.data, after, p.change)
	if err == nil {
		k.settle(name, p, saved)
	}
	return err
}

// settle notes that a piece is saved. One that was put again meanwhile stays
// due.
func (k *Keeper) settle(name string, p piece, saved Revision) {
	k.mu.Lock()
	defer k.mu.Unlock()
	k.seen[name] = saved
	if k.due[name].change == p.change {
		k.forget(name)
		k.journal.Clear(name)
	}
	k.marks.set(name, !p.remove)
}

// with runs do on the store, which it opens when it is not. A store that does
// not work is opened anew the next time.
func (k *Keeper) with(do func(*Store) error) error {
	k.using.Lock()
	defer k.using.Unlock()
	if k.store == nil {
		store, err := k.open()
		if err != nil {
			return err
		}
		k.store = store
	}
	err := do(k.store)
	if errors.Is(err, ErrRefused) {
		k.store = nil
	}
	return err
}
