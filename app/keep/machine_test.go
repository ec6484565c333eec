package keep

import (
	"errors"
	"sync"
	"testing"
)

// slots stands for a browser's localStorage, which outlives the pages.
type slots struct {
	mu   sync.Mutex
	held map[string]string
}

func newSlots() *slots { return &slots{held: map[string]string{}} }

func (s *slots) Get(key string) (string, bool) {
	s.mu.Lock()
	defer s.mu.Unlock()
	v, ok := s.held[key]
	return v, ok
}

func (s *slots) Set(key, value string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.held[key] = value
}

func (s *slots) Remove(key string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	delete(s.held, key)
}

func (s *slots) Keys() (keys []string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	for key := range s.held {
		keys = append(keys, key)
	}
	return keys
}

// machine is a device with its slots and a clock.
type machine struct {
	*device
	slots *slots
	mu    sync.Mutex
	time  int64
}

func newMachine(t *testing.T) *machine {
	return &machine{device: newDevice(t), slots: newSlots()}
}

func (m *machine) now() int64 {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.time++
	return m.time
}

// page opens a keeper as a page does, and collects its reports.
func (m *machine) page(tab string) (*Keeper, *reports) {
	r := &reports{}
	open := func() (*Store, error) { return NewStore(m.device, tab, nil) }
	return NewKeeper(open, NewJournal(m.slots, "unsaved ", tab, m.now), r.add), r
}

type reports struct {
	mu  sync.Mutex
	all []Report
}

func (r *reports) add(one Report) {
	r.mu.Lock()
	defer r.mu.Unlock()
	r.all = append(r.all, one)
}

func (r *reports) last() error {
	r.mu.Lock()
	defer r.mu.Unlock()
	if len(r.all) == 0 {
		return errors.New("no report")
	}
	return r.all[len(r.all)-1].Err
}

func (r *reports) count() int {
	r.mu.Lock()
	defer r.mu.Unlock()
	return len(r.all)
}

func wantPiece(t *testing.T, k *Keeper, want string) {
	t.Helper()
	if got, err := k.Get("walls"); err != nil || string(got) != want {
		t.Fatalf("Get = %q, %v; want %q", got, err, want)
	}
}
