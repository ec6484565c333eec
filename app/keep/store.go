package keep

import (
	"bytes"
	"errors"
	"fmt"
	"net/url"
	"slices"
	"strings"

	"github.com/hack-pad/hackpadfs"
)

// FS is what a Store needs of a file system. Those of hackpadfs have it.
type FS interface {
	hackpadfs.FS
	hackpadfs.OpenFileFS
	hackpadfs.RenameFS
	hackpadfs.RemoveFS
}

// Store keeps named pieces in one folder of a file system. Its methods block
// and are to be called from one goroutine at a time, never from a JavaScript
// callback.
type Store struct {
	fs   FS
	tab  string
	lock func() (unlock func(), err error)
}

// The ends of the names of files: a piece, and one that is being written.
const (
	pieceEnd     = ".kept"
	temporaryEnd = ".new"
)

// NewStore returns the store in fs, after mending what an interrupted save has
// left there. tab tells this store from others over the same files. lock keeps
// those out for the time of a save; it may be nil where there are none.
func NewStore(fs FS, tab string, lock func() (unlock func(), err error)) (*Store, error) {
	if lock == nil {
		lock = func() (func(), error) { return func() {}, nil }
	}
	s := &Store{fs: fs, tab: tab, lock: lock}
	return s, s.locked(s.mend)
}

// Load returns a piece and its revision.
func (s *Store) Load(name string) (data []byte, revision Revision, err error) {
	err = s.guarded(func() error {
		revision, data, err = s.read(pieceFile(name))
		return err
	})
	return data, revision, err
}

// Save replaces a piece that is still at revision after, "" for one that is
// not there, and returns its new revision. One that another tab has changed to
// the same data is left as it is. change counts the changes of this tab.
func (s *Store) Save(name string, data []byte, after Revision, change int) (saved Revision, err error) {
	err = s.locked(func() error {
		current, held, err := s.read(pieceFile(name))
		switch {
		case errors.Is(err, ErrNotFound), errors.Is(err, ErrDamaged):
			current = "" // nothing that could be lost
		case err != nil:
			return err
		}
		if current != after {
			if saved = current; bytes.Equal(held, data) {
				return nil
			}
			return fmt.Errorf("%s: %w", name, ErrChanged)
		}
		saved = current.next(s.tab, change)
		return s.replace(name, saved, data)
	})
	return saved, err
}

// Remove deletes a piece; one that is not there is no fault.
func (s *Store) Remove(name string) error {
	return s.locked(func() error {
		err := s.fs.Remove(pieceFile(name))
		if errors.Is(err, hackpadfs.ErrNotExist) {
			return nil
		}
		return err
	})
}

// Names returns the names of all pieces, in order.
func (s *Store) Names() (names []string, err error) {
	err = s.guarded(func() error {
		files, err := s.files()
		for _, file := range files {
			if name, ok := strings.CutSuffix(file, pieceEnd); ok {
				if name, err := url.PathUnescape(name); err == nil {
					names = append(names, name)
				}
			}
		}
		slices.Sort(names)
		return err
	})
	return names, err
}

// replace puts data in the place of a piece, whole or not at all, and looks
// whether it is there: a browser may drop a save without saying so.
func (s *Store) replace(name string, revision Revision, data []byte) error {
	temporary := pieceFile(name) + "." + s.tab + temporaryEnd
	err := hackpadfs.WriteFullFile(s.fs, temporary, seal(revision, data), 0o600)
	if err == nil {
		err = s.fs.Rename(temporary, pieceFile(name))
	}
	if err == nil {
		var found Revision
		if found, _, err = s.read(pieceFile(name)); found != revision {
			err = fmt.Errorf("%w: %s is not there after it was saved", ErrRefused, name)
		}
	}
	if err != nil {
		_ = s.fs.Remove(temporary) // if it stays, the next start mends it
	}
	return err
}

// mend finishes saves that were interrupted after their file was whole, and
// removes the rest of those that were not.
func (s *Store) mend() error {
	files, err := s.files()
	if err != nil {
		return err
	}
	for _, temporary := range files {
		piece, _, ok := strings.Cut(temporary, pieceEnd+".")
		if !ok || !strings.HasSuffix(temporary, temporaryEnd) {
			continue
		}
		piece += pieceEnd
		newer, _, err := s.read(temporary)
		current, _, _ := s.read(piece) // "" when it is missing or damaged
		if err == nil && newer.number() > current.number() {
			err = s.fs.Rename(temporary, piece)
		} else {
			err = s.fs.Remove(temporary)
		}
		if err != nil && !errors.Is(err, hackpadfs.ErrNotExist) {
			return err
		}
	}
	return nil
}

func (s *Store) read(file string) (Revision, []byte, error) {
	sealed, err := hackpadfs.ReadFile(s.fs, file)
	if errors.Is(err, hackpadfs.ErrNotExist) {
		return "", nil, ErrNotFound
	}
	if err != nil {
		return "", nil, err
	}
	revision, data, ok := unseal(sealed)
	if !ok {
		return "", nil, fmt.Errorf("%s: %w", file, ErrDamaged)
	}
	return revision, data, nil
}

func (s *Store) files() ([]string, error) {
	entries, err := hackpadfs.ReadDir(s.fs, ".")
	var names []string
	for _, entry := range entries {
		names = append(names, entry.Name())
	}
	return names, err
}

// locked runs do while no other tab saves.
func (s *Store) locked(do func() error) error {
	return s.guarded(func() error {
		unlock, err := s.lock()
		if err != nil {
			return err
		}
		defer unlock()
		return do()
	})
}

// guarded gives every fault one of the names of this package. The file system
// of a browser can also panic, when its database has gone.
func (s *Store) guarded(do func() error) (err error) {
	defer func() {
		if fault := recover(); fault != nil {
			err = fmt.Errorf("%w: %v", ErrRefused, fault)
		}
	}()
	err = do()
	if err == nil || named(err) {
		return err
	}
	if isFull(err) {
		return fmt.Errorf("%w: %w", ErrFull, err)
	}
	return fmt.Errorf("%w: %w", ErrRefused, err)
}

func named(err error) bool {
	for _, one := range []error{ErrRefused, ErrFull, ErrChanged, ErrDamaged, ErrCleared, ErrNotFound} {
		if errors.Is(err, one) {
			return true
		}
	}
	return false
}

func pieceFile(name string) string { return url.PathEscape(name) + pieceEnd }
