//go:build !js

package lean

import "encoding/binary"

// Sizes of what the data of a function consist of: src/runtime/symtab.go
// (stackmap), stack.go (stackObjectRecord) and symtabinl.go (inlinedCall) of
// Go 1.26.
const (
	mapHead    = 8
	objectHead = 8
	objectSize = 16
	callSize   = 16
)

// usedData tells which bytes of the functions' data the runtime reads other
// than to print.
func (t table) usedData() ([]bool, error) {
	used := make([]bool, len(t.data))
	for _, about := range t.about {
		for kind, offset := range lists(about) {
			if offset == noData {
				continue
			}
			if uint64(offset) > uint64(len(t.data)) {
				return nil, ErrNames
			}
			size, err := t.dataSize(about, kind, t.data[offset:])
			if err != nil || size > uint64(len(t.data))-uint64(offset) {
				return nil, ErrNames
			}
			for i := range size {
				used[uint64(offset)+i] = true
			}
		}
	}
	return used, nil
}

// dataSize is how much of a function's data of a kind is read.
func (t table) dataSize(about []byte, kind int, b []byte) (uint64, error) {
	if len(b) < 8 && kind <= stackObjects {
		return 0, ErrNames
	}
	switch kind {
	case argPointers, localPointers:
		return mapHead + uint64(number(b, 0))*((uint64(number(b, 4))+7)/8), nil
	case stackObjects:
		count := binary.LittleEndian.Uint64(b)
		if count > uint64(len(b)) {
			return 0, ErrNames
		}
		return objectHead + count*objectSize, nil
	case inlinedCalls:
		most, err := t.mostValue(about, inlined)
		return uint64(most+1) * callSize, err
	case openDefers:
		_, n := binary.Uvarint(b)
		_, m := binary.Uvarint(b[max(n, 0):])
		if n <= 0 || m <= 0 {
			return 0, ErrNames
		}
		return uint64(n + m), nil
	case argInfo, argLiveInfo:
		return 0, nil
	case wrapped:
		return 4, nil
	}
	return 0, ErrNames
}

// mostValue is the greatest value of a function's table of values, or -1.
func (t table) mostValue(about []byte, kind int) (int64, error) {
	if kind >= int(number(about, atCount)) {
		return -1, nil
	}
	start := number(about, aboutSize+4*kind)
	if start == emptyOffset {
		return -1, nil
	}
	size, err := valuesSize(t.values, start)
	if err != nil {
		return 0, err
	}
	value, most := int64(-1), int64(-1)
	for b := t.values[start:][:size-1]; len(b) > 0; {
		step, n := binary.Varint(b)
		_, m := binary.Uvarint(b[n:])
		value += step
		most = max(most, value)
		b = b[n+m:]
	}
	return most, nil
}
