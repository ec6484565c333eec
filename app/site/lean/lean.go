//go:build !js

// Package lean makes a Go program for the browser smaller to transfer without
// changing what it does. It works on the finished WebAssembly file:
//
//   - The linker writes the program's first memory as up to 100,000 pieces and
//     leaves out every run of eight zeros. The pieces' addresses compress
//     badly, zeros well: the pieces are joined ([join]).
//   - Names of functions, names of files and numbers of lines serve only to
//     print where a fault happened, as does what is known of arguments. They
//     are cleared ([forget]); the tables by which the runtime walks the stack
//     stay.
//   - The index from a place in the code to its function names a start from
//     which the runtime searches upwards: 64 functions share one.
//
// A fault then names its message, and no places. A program built by `go build`
// alone still names them.
package lean

import (
	"errors"
	"fmt"
)

// ErrNames says that the names could not be cleared, since this version of Go
// lays its tables out in a way that is not known here.
var ErrNames = errors.New("names and lines are kept: this version of Go lays its table of functions out in an unknown way")

// Program returns the program smaller to transfer. With [ErrNames] it returns
// one that is complete and only larger than it could be; with any other error
// the file is not WebAssembly as the Go linker writes it.
func Program(file []byte) ([]byte, error) {
	sections, err := split(file)
	if err != nil {
		return nil, err
	}
	var kept error
	for i := range sections {
		if sections[i].id != dataSection {
			continue
		}
		m, err := readMemory(sections[i].body)
		if err != nil {
			return nil, fmt.Errorf("data section: %w", err)
		}
		if err := forget(m); err != nil {
			kept = ErrNames
		}
		sections[i].body = m.join()
	}
	return join(sections), kept
}
