//go:build !js

package lean

import (
	"encoding/binary"
	"slices"
	"strings"
)

// keptNames is how the names begin by which the runtime tells its own
// goroutines from the program's.
const keptNames = "runtime."

// anyName stands for every cleared one. It has the form of a method, which the
// runtime takes apart when a method is called on no value.
const anyName = "cleared.(*T).f"

// forget clears from the memory what only serves to print places in the source
// and arguments, or to stop a program by signals. Nothing moves.
func forget(memory []byte) error {
	t, err := findTable(memory)
	if err != nil {
		return err
	}
	used, err := t.usedValues()
	if err != nil {
		return err
	}
	common, err := t.clearNames()
	if err != nil {
		return err
	}
	clear(t.units)
	clear(t.files)
	for i, v := range t.values {
		if !used[i] && v != 0 {
			t.values[i] = 0
		}
	}
	for _, about := range t.about {
		if !strings.HasPrefix(t.name(number(about, atName)), keptNames) {
			setNumber(about, atName, common)
		}
		for at, none := range unusedFields(about) {
			setNumber(about, at, none)
		}
	}
	return nil
}

// clearNames clears every name but those that are kept, and returns where the
// name of the others now stands.
func (t table) clearNames() (uint32, error) {
	common := -1
	for at := 0; at < len(t.names); {
		name := t.name(uint32(at))
		if !strings.HasPrefix(name, keptNames) {
			clear(t.names[at : at+len(name)])
			if common < 0 && len(name) >= len(anyName) {
				common = at
				copy(t.names[at:], anyName)
			}
		}
		at += len(name) + 1
	}
	if common < 0 {
		return 0, ErrNames
	}
	return uint32(common), nil
}

// usedValues tells which bytes of the tables of values the runtime reads other
// than to print lines and files.
func (t table) usedValues() ([]bool, error) {
	var starts []uint32
	for _, about := range t.about {
		for _, at := range usedFields(about) {
			starts = append(starts, number(about, at))
		}
	}
	slices.Sort(starts)
	used := make([]bool, len(t.values))
	for _, start := range slices.Compact(starts) {
		if start == emptyOffset {
			continue
		}
		size, err := valuesSize(t.values, start)
		if err != nil {
			return nil, err
		}
		for i := range size {
			used[int(start)+i] = true
		}
	}
	return used, nil
}

// valuesSize is the size of one table of values: pairs of a step of the value
// and a step in the code, up to a step of the value of zero, which is allowed
// only as the first.
func valuesSize(values []byte, start uint32) (int, error) {
	if int(start) >= len(values) {
		return 0, ErrNames
	}
	b := values[start:]
	size := 0
	for first := true; ; first = false {
		value, n := binary.Uvarint(b[size:])
		if n <= 0 {
			return 0, ErrNames
		}
		size += n
		if value == 0 && !first {
			return size, nil
		}
		_, n = binary.Uvarint(b[size:])
		if n <= 0 {
			return 0, ErrNames
		}
		size += n
	}
}
