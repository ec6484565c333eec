//go:build !js

package lean

import "strings"

// The names by which the runtime does anything but print: its own goroutines
// begin in a function of its own (isSystemGoroutine of src/runtime/traceback.go
// of Go 1.26), and a method called by reflection has its arguments found by the
// caller's name (argMapInternal of stkframe.go).
const ownNames = "runtime."

var wholeNames = []string{"reflect.makeFuncStub", "reflect.methodValueCall"}

// What stands for every other name. The second has the form of a method, which
// the runtime takes apart when a method is called on no value.
const (
	ownName = "runtime.f"
	anyName = "cleared.(*T).f"
)

// shortened is what stands for a name.
func shortened(name string) string {
	for _, whole := range wholeNames {
		if name == whole {
			return name
		}
	}
	if strings.HasPrefix(name, ownNames) {
		return ownName
	}
	return anyName
}

// clearNames leaves one of each shortened name, where the first name that is
// long enough for it stood, and lets every function have it.
func (t table) clearNames() error {
	shorts := make([]string, len(t.about))
	for i, about := range t.about {
		shorts[i] = shortened(t.name(number(about, atName)))
	}
	at := map[string]int{}
	for from := 0; from < len(t.names); {
		name := t.name(uint32(from))
		short := shortened(name)
		clear(t.names[from : from+len(name)])
		if _, ok := at[short]; !ok && len(name) >= len(short) {
			at[short] = from
			copy(t.names[from:], short)
		}
		from += len(name) + 1
	}
	for i, about := range t.about {
		from, ok := at[shorts[i]]
		if !ok {
			return ErrNames
		}
		setNumber(about, atName, uint32(from))
	}
	return nil
}
