//go:build !js

package lean

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
)

// The head of a file: its mark and version 1 of the format.
// WebAssembly Core Specification, Binary Format, Modules.
const (
	fileHead    = "\x00asm\x01\x00\x00\x00"
	dataSection = 11
)

type section struct {
	id   byte
	body []byte
}

var errShort = errors.New("the file ends too early")

// split returns the sections of a WebAssembly file in their order.
func split(file []byte) ([]section, error) {
	rest, found := bytes.CutPrefix(file, []byte(fileHead))
	if !found {
		return nil, errors.New("not a WebAssembly file")
	}
	var sections []section
	for len(rest) > 0 {
		id := rest[0]
		size, body, err := readSize(rest[1:])
		if err != nil || size > uint64(len(body)) {
			return nil, fmt.Errorf("section %d: %w", id, errShort)
		}
		sections = append(sections, section{id, body[:size]})
		rest = body[size:]
	}
	return sections, nil
}

// join is the file of the sections.
func join(sections []section) []byte {
	file := []byte(fileHead)
	for _, s := range sections {
		file = append(file, s.id)
		file = binary.AppendUvarint(file, uint64(len(s.body)))
		file = append(file, s.body...)
	}
	return file
}

// readSize reads an unsigned LEB128 number and returns what follows it.
func readSize(b []byte) (size uint64, rest []byte, err error) {
	size, n := binary.Uvarint(b)
	if n <= 0 {
		return 0, nil, errShort
	}
	return size, b[n:], nil
}

// readAddress reads a signed LEB128 number of 32 bits that stands for an
// address, which is never negative, and returns what follows it.
func readAddress(b []byte) (address uint64, rest []byte, err error) {
	address, rest, err = readSize(b)
	if err != nil {
		return 0, nil, err
	}
	// The sign is the second highest bit of the last byte.
	last := b[len(b)-len(rest)-1]
	if last&0x40 != 0 || address > 1<<31-1 {
		return 0, nil, fmt.Errorf("address %d is outside the memory", address)
	}
	return address, rest, nil
}

// appendAddress writes what readAddress reads.
func appendAddress(b []byte, address uint64) []byte {
	for address >= 0x40 {
		b = append(b, byte(address)|0x80)
		address >>= 7
	}
	return append(b, byte(address))
}
