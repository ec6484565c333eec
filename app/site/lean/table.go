//go:build !js

package lean

import (
	"bytes"
	"encoding/binary"
)

// The table of functions as the Go linker lays it out since Go 1.20:
// src/runtime/symtab.go (pcHeader, functab) and runtime2.go (_func) of Go 1.26.
const (
	tableMark   = "\xf1\xff\xff\xff\x00\x00\x01\x08" // magic, two of padding, quantum 1, pointers of 8 bytes
	headSize    = 72
	entrySize   = 8  // of functab: where the code starts, where the function is described
	aboutSize   = 44 // of _func, without the two lists behind it
	emptyOffset = 0  // "there is no table"
)

// Where the fields of _func stand in it.
const (
	atName      = 4
	atStack     = 16 // pcsp
	atFile      = 20 // pcfile
	atLine      = 24 // pcln
	atCount     = 28 // npcdata
	atUnit      = 32 // cuOffset
	atFirstLine = 36 // startLine
	atLastCount = 43 // nfuncdata, one byte
)

// Places in the two lists behind _func, of tables of values (pcdata) and of
// data (funcdata): src/internal/abi/symtab.go of Go 1.26.
const (
	unsafePoint = 0 // where a signal may not stop a goroutine; WebAssembly has no signals
	inlined     = 2 // which entry of the inlined calls
	argLive     = 3 // which arguments are alive, to print them

	argPointers   = 0
	localPointers = 1
	stackObjects  = 2
	inlinedCalls  = 3
	openDefers    = 4
	argInfo       = 5 // how to print the arguments
	argLiveInfo   = 6
	wrapped       = 7
	noData        = 1<<32 - 1 // "there is none"
)

// table is the linker's table of functions, in parts of the memory.
type table struct {
	names, units, files []byte
	values              []byte   // pctab: tables of values by place in the code
	about               [][]byte // _func of each function, with its lists of tables
	data                []byte   // go:func.*: what the lists of data point into
	buckets             []byte   // findfunctab: from a place in the code to its function
}

// findTable finds the one table of functions in the memory.
func findTable(memory []byte) (table, error) {
	var t table
	from := bytes.Index(memory, []byte(tableMark))
	if from < 0 || bytes.Contains(memory[from+1:], []byte(tableMark)) {
		return t, ErrNames
	}
	b := memory[from:]
	if len(b) < headSize {
		return t, ErrNames
	}
	word := func(i int) uint64 { return binary.LittleEndian.Uint64(b[8*i:]) }
	count := word(1)
	bounds := []uint64{word(4), word(5), word(6), word(7), word(8)}
	last := uint64(headSize)
	for _, at := range bounds {
		if at < last || at > uint64(len(b)) {
			return t, ErrNames
		}
		last = at
	}
	part := func(i int) []byte { return b[bounds[i]:bounds[i+1]] }
	t.names, t.units, t.files, t.values = part(0), part(1), part(2), part(3)
	if err := t.readFunctions(b[bounds[4]:], count); err != nil {
		return t, err
	}
	err := t.readModule(memory, uint64(from))
	return t, err
}

// readFunctions finds the description of each function.
func (t *table) readFunctions(b []byte, count uint64) error {
	if count == 0 || count*entrySize > uint64(len(b)) {
		return ErrNames
	}
	for i := range count {
		at := uint64(binary.LittleEndian.Uint32(b[i*entrySize+4:]))
		if at+aboutSize > uint64(len(b)) {
			return ErrNames
		}
		about := b[at:]
		size := aboutSize + 4*uint64(number(about, atCount)) + 4*uint64(about[atLastCount])
		if size > uint64(len(about)) {
			return ErrNames
		}
		about = about[:size]
		if int(number(about, atName)) >= len(t.names) {
			return ErrNames
		}
		t.about = append(t.about, about)
	}
	return nil
}

// lists are the offsets of a function's data, by kind; noData where it has none.
func lists(about []byte) []uint32 {
	var offsets []uint32
	from := aboutSize + 4*int(number(about, atCount))
	for at := from; at < len(about); at += 4 {
		offsets = append(offsets, number(about, at))
	}
	return offsets
}

// usedFields are the fields of a function's tables of values that the runtime reads
// other than to print.
func usedFields(about []byte) []int {
	fields := []int{atStack}
	for i := range int(number(about, atCount)) {
		if i != unsafePoint && i != argLive {
			fields = append(fields, aboutSize+4*i)
		}
	}
	return fields
}

// unusedFields are those that it reads only to print, or never in a browser,
// with what stands for none.
func unusedFields(about []byte) map[int]uint32 {
	fields := map[int]uint32{atFile: emptyOffset, atLine: emptyOffset, atUnit: 0, atFirstLine: 0}
	tables := int(number(about, atCount))
	for _, i := range []int{unsafePoint, argLive} {
		if i < tables {
			fields[aboutSize+4*i] = emptyOffset
		}
	}
	for _, i := range []int{argInfo, argLiveInfo} {
		if i < int(about[atLastCount]) {
			fields[aboutSize+4*(tables+i)] = noData
		}
	}
	return fields
}

func number(about []byte, at int) uint32 { return binary.LittleEndian.Uint32(about[at:]) }

func setNumber(about []byte, at int, n uint32) { binary.LittleEndian.PutUint32(about[at:], n) }

// name is the text at an offset of the names.
func (t table) name(offset uint32) string {
	text := t.names[offset:]
	if stop := bytes.IndexByte(text, 0); stop >= 0 {
		text = text[:stop]
	}
	return string(text)
}
