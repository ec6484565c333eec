//go:build !js

package lean

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
)

// How a piece with a fixed address begins: memory 0, i32.const … end.
// WebAssembly Core Specification, Binary Format, Data Section.
const (
	activePiece = 0x00
	i32Const    = 0x41
	end         = 0x0b
)

// farApart is how many zeros between two pieces keep them apart: below it,
// the zeros compress better than the address of another piece.
const farApart = 4096

// mostMemory is more than any program for a page begins with.
const mostMemory = 64 << 20

// memory is what a program finds in its memory at its start, from address 0.
type memory []byte

// readMemory lays the pieces of a data section out in memory, in their order.
func readMemory(body []byte) (memory, error) {
	var m memory
	count, rest, err := readSize(body)
	if err != nil {
		return nil, err
	}
	for i := range count {
		address, piece, after, err := readPiece(rest)
		if err != nil {
			return nil, fmt.Errorf("piece %d: %w", i, err)
		}
		if address+uint64(len(piece)) > mostMemory {
			return nil, fmt.Errorf("piece %d: it lies beyond %d bytes", i, mostMemory)
		}
		if missing := int(address) + len(piece) - len(m); missing > 0 {
			m = append(m, make([]byte, missing)...)
		}
		copy(m[address:], piece)
		rest = after
	}
	if len(rest) > 0 {
		return nil, errors.New("more than its pieces")
	}
	return m, nil
}

func readPiece(b []byte) (address uint64, piece, rest []byte, err error) {
	if len(b) < 2 {
		return 0, nil, nil, errShort
	}
	if b[0] != activePiece || b[1] != i32Const {
		return 0, nil, nil, errors.New("its address is not a constant")
	}
	address, b, err = readAddress(b[2:])
	if err != nil {
		return 0, nil, nil, err
	}
	if len(b) == 0 || b[0] != end {
		return 0, nil, nil, errors.New("its address is not a constant")
	}
	size, b, err := readSize(b[1:])
	if err != nil || size > uint64(len(b)) {
		return 0, nil, nil, errShort
	}
	return address, b[:size], b[size:], nil
}

// join is the data section of the memory in as few pieces as serve: long runs
// of zeros, which memory holds anyway, are left out.
func (m memory) join() []byte {
	var pieces []byte
	count := uint64(0)
	b, address := m, uint64(0)
	for len(b) > 0 {
		size := bytes.Index(b, make([]byte, farApart))
		if size < 0 {
			size = len(bytes.TrimRight(b, "\x00"))
		}
		if size > 0 {
			pieces = append(pieces, activePiece, i32Const)
			pieces = append(appendAddress(pieces, address), end)
			pieces = binary.AppendUvarint(pieces, uint64(size))
			pieces = append(pieces, b[:size]...)
			count++
		}
		gap := len(b[size:]) - len(bytes.TrimLeft(b[size:], "\x00"))
		b, address = b[size+gap:], address+uint64(size+gap)
	}
	return append(binary.AppendUvarint(nil, count), pieces...)
}
