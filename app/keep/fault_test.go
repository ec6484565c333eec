package keep

import (
	"errors"
	"io"
	"testing"

	"github.com/hack-pad/hackpadfs"
	"github.com/hack-pad/hackpadfs/mem"
)

// device is a file system that can be made to fail. It outlives the stores
// opened on it, as a device outlives the pages.
type device struct {
	FS
	// fail is asked before each operation; what it returns happens instead.
	fail func(op, name string) error
}

var (
	errBroken = errors.New("broken")
	errTorn   = errors.New("torn") // of a write: half of it is done
	errKilled = errors.New("killed")
	errSilent = errors.New("nothing done, and no word of it")
)

func newDevice(t *testing.T) *device {
	t.Helper()
	fs, err := mem.NewFS()
	if err != nil {
		t.Fatal(err)
	}
	return &device{FS: fs}
}

func (d *device) check(op, name string) error {
	if d.fail == nil {
		return nil
	}
	return d.fail(op, name)
}

func (d *device) Open(name string) (hackpadfs.File, error) {
	return d.OpenFile(name, hackpadfs.FlagReadOnly, 0)
}

func (d *device) OpenFile(name string, flag int, perm hackpadfs.FileMode) (hackpadfs.File, error) {
	if err := d.check("open", name); err != nil {
		return nil, err
	}
	file, err := d.FS.OpenFile(name, flag, perm)
	if err != nil || flag&hackpadfs.FlagWriteOnly == 0 {
		return file, err
	}
	return &openFile{file, d, name}, nil
}

func (d *device) Rename(from, to string) error {
	if err := d.check("rename", from); errors.Is(err, errSilent) {
		return nil
	} else if err != nil {
		return err
	}
	return d.FS.Rename(from, to)
}

func (d *device) Remove(name string) error {
	if err := d.check("remove", name); err != nil {
		return err
	}
	return d.FS.Remove(name)
}

type openFile struct {
	hackpadfs.File
	device *device
	name   string
}

func (f *openFile) Write(data []byte) (int, error) {
	w := f.File.(io.Writer)
	if err := f.device.check("write", f.name); err != nil {
		if errors.Is(err, errTorn) {
			n, _ := w.Write(data[:len(data)/2])
			return n, err
		}
		return 0, err
	}
	return w.Write(data)
}

// store opens the device as a page does.
func (d *device) store(t *testing.T, tab string) *Store {
	t.Helper()
	s, err := NewStore(d, tab, nil)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// mustSave saves and returns the new revision.
func mustSave(t *testing.T, s *Store, name, data string, after Revision) Revision {
	t.Helper()
	revision, err := s.Save(name, []byte(data), after, 1)
	if err != nil {
		t.Fatalf("Save(%q, %q): %v", name, data, err)
	}
	return revision
}

// wantData fails unless the piece holds data.
func wantData(t *testing.T, s *Store, name, data string) Revision {
	t.Helper()
	got, revision, err := s.Load(name)
	if err != nil || string(got) != data {
		t.Fatalf("Load(%q) = %q, %v; want %q", name, got, err, data)
	}
	return revision
}
