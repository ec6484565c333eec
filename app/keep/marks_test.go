package keep

import (
	"errors"
	"testing"
)

// A store that was cleared is told from one that was never used, until
// something is kept in it again or everything was erased by ourselves.
func TestCleared(t *testing.T) {
	m := newMachine(t)
	open := func(tab string) *Keeper {
		k, _ := m.page(tab)
		k.marks = marks{m.slots, ""}
		return k
	}
	want := func(what string, want error) {
		t.Helper()
		if _, err := open("look").Get("walls"); !errors.Is(err, want) {
			t.Errorf("%s: %v, want %v", what, err, want)
		}
	}
	want("never used", ErrNotFound)
	k := open("one")
	if _, err := k.Get("walls"); !errors.Is(err, ErrNotFound) {
		t.Fatal(err)
	}
	k.Put("walls", []byte("nine feet"))
	k.Flush()
	wantPiece(t, open("two"), "nine feet")
	m.device = newDevice(t) // somebody clears the device's store
	want("cleared", ErrCleared)
	k = open("three")
	if _, err := k.Get("walls"); !errors.Is(err, ErrCleared) {
		t.Fatal(err)
	}
	k.Put("walls", []byte("ten feet"))
	k.Flush()
	wantPiece(t, open("four"), "ten feet")
	if err := k.Erase(); err != nil {
		t.Fatal(err)
	}
	want("erased", ErrNotFound)
	if left := m.slots.Keys(); len(left) != 0 {
		t.Errorf("after erasing there is still %q", left)
	}
}
