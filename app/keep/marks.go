package keep

import "strings"

// marks note beside the store which pieces are kept in it, so that a store
// that was cleared is told from one that was never used.
type marks struct {
	slots  Slots  // nil: nothing is noted
	prefix string // of every slot that this package uses for the store
}

func (m marks) key(name string) string { return m.prefix + "kept " + name }

func (m marks) has(name string) bool {
	if m.slots == nil {
		return false
	}
	_, found := m.slots.Get(m.key(name))
	return found
}

func (m marks) set(name string, kept bool) {
	switch {
	case m.slots == nil:
	case kept:
		m.slots.Set(m.key(name), "1")
	default:
		m.slots.Remove(m.key(name))
	}
}

// Erase removes every piece, saved or not, of every tab. It blocks.
func (k *Keeper) Erase() error {
	k.mu.Lock()
	for name := range k.due {
		k.forget(name)
	}
	k.mu.Unlock()
	if k.marks.slots != nil {
		for _, key := range k.marks.slots.Keys() {
			if strings.HasPrefix(key, k.marks.prefix) {
				k.marks.slots.Remove(key)
			}
		}
	}
	return k.with(func(s *Store) error {
		names, err := s.Names()
		for _, name := range names {
			if err == nil {
				err = s.Remove(name)
			}
		}
		return err
	})
}
