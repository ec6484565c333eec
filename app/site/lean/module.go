//go:build !js

package lean

import (
	"bytes"
	"encoding/binary"
)

// Where the module's own description (moduledata of src/runtime/symtab.go of
// Go 1.26) says what: words of eight bytes.
const (
	wordBuckets = 19
	wordFirst   = 20 // minpc
	wordLast    = 21 // maxpc
	wordData    = 40 // gofunc
	wordEnd     = 41 // epclntab
)

// A bucket of findfunctab: the first function of 4,096 places in the code, and
// how many more there are before each sixteenth of them.
const (
	bucketPlaces = 4096
	bucketSize   = 4 + 16
)

// coarse is how many functions begin their search at the same one. The runtime
// searches upwards from there, so that a lower start is as right and a little
// slower; equal starts are smaller.
const coarse = 64

// readModule finds the parts that only the module's own description names. It
// begins with the addresses of the table's head and of the names behind it.
func (t *table) readModule(memory []byte, head uint64) error {
	mark := binary.LittleEndian.AppendUint64(nil, head)
	mark = binary.LittleEndian.AppendUint64(mark, head+headSize)
	at := bytes.Index(memory, mark)
	if at < 0 || len(memory)-at < 8*(wordEnd+1) || bytes.Contains(memory[at+1:], mark) {
		return ErrNames
	}
	word := func(i int) uint64 { return binary.LittleEndian.Uint64(memory[at+8*i:]) }
	data, buckets, end := word(wordData), word(wordBuckets), word(wordEnd)
	first, last := word(wordFirst), word(wordLast)
	if first > last || last > 1<<40 || data < head || data > buckets || buckets > end || end > uint64(len(memory)) {
		return ErrNames
	}
	whole := (last - first) / bucketPlaces * bucketSize // the last may be cut short
	if whole > end-buckets || end-buckets > whole+bucketSize+bucketSize {
		return ErrNames
	}
	t.data, t.buckets = memory[data:buckets], memory[buckets:buckets+whole]
	return nil
}

// coarsen lets the search for a function begin at few different ones.
func (t table) coarsen() error {
	for at := 0; at < len(t.buckets); at += bucketSize {
		first := number(t.buckets, at)
		if int(first) >= len(t.about) {
			return ErrNames
		}
		setNumber(t.buckets, at, first-first%coarse)
		clear(t.buckets[at+4 : at+bucketSize])
	}
	return nil
}
