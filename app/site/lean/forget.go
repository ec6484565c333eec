//go:build !js

package lean

import (
	"encoding/binary"
	"slices"
)

// forget clears from the memory what only serves to print places in the source
// and arguments, or to stop a program by signals. Nothing moves.
func forget(memory []byte) error {
	t, err := findTable(memory)
	if err != nil {
		return err
	}
	usedValues, err := t.usedValues()
	if err != nil {
		return err
	}
	usedData, err := t.usedData()
	if err != nil {
		return err
	}
	if err := t.coarsen(); err != nil {
		return err
	}
	if err := t.clearNames(); err != nil {
		return err
	}
	clear(t.units)
	clear(t.files)
	clearUnused(t.values, usedValues)
	clearUnused(t.data, usedData)
	for _, about := range t.about {
		for at, none := range unusedFields(about) {
			setNumber(about, at, none)
		}
	}
	return nil
}

func clearUnused(b []byte, used []bool) {
	for i := range b {
		if !used[i] {
			b[i] = 0
		}
	}
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
