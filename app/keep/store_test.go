package keep

import (
	"bytes"
	"errors"
	"slices"
	"testing"

	"github.com/hack-pad/hackpadfs"
)

func TestStoreRoundTrip(t *testing.T) {
	d := newDevice(t)
	s := d.store(t, "a")
	if _, _, err := s.Load("walls"); !errors.Is(err, ErrNotFound) {
		t.Errorf("Load of nothing: %v, want ErrNotFound", err)
	}
	first := mustSave(t, s, "walls", "one", "")
	second := mustSave(t, s, "walls", "two", first)
	if first == second {
		t.Errorf("two saves have the same revision %q", first)
	}
	if got := wantData(t, d.store(t, "b"), "walls", "two"); got != second {
		t.Errorf("revision %q, want %q", got, second)
	}
	mustSave(t, s, "empty", "", "")
	wantData(t, s, "empty", "")
}

// Names may hold anything a person types.
func TestStoreNames(t *testing.T) {
	d := newDevice(t)
	s := d.store(t, "a")
	names := []string{".", "..", "a/b", "a.kept", "cellar wall, north – 8′ 6″", "%2F", "x.new", " "}
	for _, name := range names {
		mustSave(t, s, name, "data of "+name, "")
	}
	got, err := d.store(t, "b").Names()
	if want := slices.Sorted(slices.Values(names)); err != nil || !slices.Equal(got, want) {
		t.Errorf("Names() = %q, %v; want %q", got, err, want)
	}
	for _, name := range names {
		wantData(t, s, name, "data of "+name)
		if err := s.Remove(name); err != nil {
			t.Errorf("Remove(%q): %v", name, err)
		}
	}
	if got, err := s.Names(); err != nil || len(got) != 0 {
		t.Errorf("after removing all: %q, %v", got, err)
	}
	if err := s.Remove("never there"); err != nil {
		t.Errorf("Remove of nothing: %v", err)
	}
}

// A tab that has not seen another's save does not overwrite it.
func TestStoreTwoTabs(t *testing.T) {
	d := newDevice(t)
	a, b := d.store(t, "a"), d.store(t, "b")
	start := mustSave(t, a, "walls", "start", "")
	mustSave(t, b, "walls", "from b", start)
	if _, err := a.Save("walls", []byte("from a"), start, 1); !errors.Is(err, ErrChanged) {
		t.Errorf("Save over another's: %v, want ErrChanged", err)
	}
	seen := wantData(t, a, "walls", "from b")
	mustSave(t, a, "walls", "from a", seen)
	wantData(t, b, "walls", "from a")

	// Both came to the same: nothing is lost, so nobody need be asked.
	if _, err := b.Save("walls", []byte("from a"), start, 1); err != nil {
		t.Errorf("Save of what is there already: %v", err)
	}
}

// Whatever step of a save fails, the piece then is wholly the old or wholly
// the new one, and can be saved again.
func TestStoreFaults(t *testing.T) {
	faults := map[string]func(op, name string) error{
		"open":        func(op, name string) error { return broken(op == "open" && isTemporary(name)) },
		"write":       func(op, _ string) error { return broken(op == "write") },
		"torn write":  func(op, _ string) error { return broken(op == "write", errTorn) },
		"rename":      func(op, _ string) error { return broken(op == "rename") },
		"silent":      func(op, _ string) error { return broken(op == "rename", errSilent) },
		"all from it": func(op, _ string) error { return broken(op == "rename" || op == "remove") },
		"panic": func(op, _ string) error {
			if op == "rename" {
				panic("the database has gone")
			}
			return nil
		},
	}
	for name, fail := range faults {
		t.Run(name, func(t *testing.T) {
			d := newDevice(t)
			s := d.store(t, "a")
			first := mustSave(t, s, "walls", "old", "")
			d.fail = fail
			if _, err := s.Save("walls", []byte("new"), first, 1); !errors.Is(err, ErrRefused) {
				t.Errorf("Save with a fault: %v, want ErrRefused", err)
			}
			wantData(t, s, "walls", "old")
			d.fail = nil
			mustSave(t, s, "walls", "newer", first)
			wantData(t, d.store(t, "b"), "walls", "newer")
			if left := temporaries(t, d); len(left) > 0 {
				t.Errorf("temporary files are left: %q", left)
			}
		})
	}
}

func broken(is bool, how ...error) error {
	if is && len(how) > 0 {
		return how[0]
	}
	if is {
		return errBroken
	}
	return nil
}

func isTemporary(name string) bool { return bytes.HasSuffix([]byte(name), []byte(temporaryEnd)) }

func temporaries(t *testing.T, d *device) (left []string) {
	t.Helper()
	entries, err := hackpadfs.ReadDir(d, ".")
	if err != nil {
		t.Fatal(err)
	}
	for _, entry := range entries {
		if isTemporary(entry.Name()) {
			left = append(left, entry.Name())
		}
	}
	return left
}

// A page that is killed in the middle of a save leaves a temporary file. The
// next start finishes the save when that file is whole, else removes it.
func TestStoreMends(t *testing.T) {
	for _, test := range []struct {
		name string
		left []byte // in the temporary file
		want string
	}{
		{"whole and newer", seal("2-a-2", []byte("new")), "new"},
		{"torn", seal("2-a-2", []byte("new"))[:60], "old"},
		{"empty", nil, "old"},
		{"older", seal("1-z-1", []byte("stale")), "old"},
		{"strange", []byte("something else"), "old"},
	} {
		t.Run(test.name, func(t *testing.T) {
			d := newDevice(t)
			mustSave(t, d.store(t, "a"), "north wall", "old", "")
			writeFile(t, d, pieceFile("north wall")+".a"+temporaryEnd, test.left)
			wantData(t, d.store(t, "b"), "north wall", test.want)
			if left := temporaries(t, d); len(left) > 0 {
				t.Errorf("temporary files are left: %q", left)
			}
		})
	}
}

// The very first save, killed before the rename, is found too.
func TestStoreMendsFirstSave(t *testing.T) {
	d := newDevice(t)
	writeFile(t, d, pieceFile("walls")+".a"+temporaryEnd, seal("1-a-1", []byte("first")))
	wantData(t, d.store(t, "b"), "walls", "first")
}

// A piece that cannot be read is said to be, and can be saved anew.
func TestStoreDamaged(t *testing.T) {
	d := newDevice(t)
	s := d.store(t, "a")
	whole := seal("7-a-7", []byte("data"))
	for _, file := range [][]byte{nil, []byte("x"), whole[:len(whole)-1], bytes.Replace(whole, []byte("data"), []byte("dada"), 1), []byte("kept 1 0-a-1 x\n")} {
		writeFile(t, d, pieceFile("walls"), file)
		if _, _, err := s.Load("walls"); !errors.Is(err, ErrDamaged) {
			t.Errorf("Load of %q: %v, want ErrDamaged", file, err)
		}
	}
	mustSave(t, s, "walls", "anew", "")
	wantData(t, s, "walls", "anew")
}

func writeFile(t *testing.T, fs FS, name string, data []byte) {
	t.Helper()
	if err := hackpadfs.WriteFullFile(fs, name, data, 0o600); err != nil {
		t.Fatal(err)
	}
}

func FuzzUnseal(f *testing.F) {
	f.Add([]byte("kept 1 3-a-3 00\nx"))
	f.Add(seal("3-a-3", []byte("x")))
	f.Fuzz(func(t *testing.T, data []byte) {
		if _, held, ok := unseal(data); ok && !bytes.HasSuffix(data, held) {
			t.Errorf("unseal(%q) made up %q", data, held)
		}
		if revision, held, ok := unseal(seal("4-b-4", data)); !ok || revision != "4-b-4" || !bytes.Equal(held, data) {
			t.Errorf("sealed %q came back as %q, %q, %v", data, held, revision, ok)
		}
	})
}
