//go:build !js

package main

import (
	"bytes"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
)

// serving are the files of the framework's package app that serve pages.
var serving = []string{"http.go", "resource.go"}

// needed are the functions of resource.go that the browser's half uses.
var needed = []string{"clientResourceResolver", "resolveOGResource", "remoteLocation", "webLocation"}

// The browser's half names the type that serves in one signature.
const besideHead = `package app

import "strings"

// Handler serves pages, which the browser does not.
type Handler struct{}
`

// split keeps the serving files of the package in dir from the browser, and
// writes beside them what the browser needs of them.
func split(dir string) error {
	beside := bytes.NewBufferString(besideHead)
	for _, name := range serving {
		path := filepath.Join(dir, name)
		source, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		if err := copyNeeded(beside, name, source); err != nil {
			return err
		}
		source = append([]byte("//go:build !js\n\n"), source...)
		if err := os.WriteFile(path, source, 0o644); err != nil {
			return err
		}
	}
	if n := bytes.Count(beside.Bytes(), []byte("\nfunc ")); n != len(needed) {
		return fmt.Errorf("%d of the functions %v are there: another version of the framework?", n, needed)
	}
	return os.WriteFile(filepath.Join(dir, "beside_js.go"), beside.Bytes(), 0o644)
}

// copyNeeded writes the needed functions of a file, as they stand in it.
func copyNeeded(to *bytes.Buffer, name string, source []byte) error {
	files := token.NewFileSet()
	file, err := parser.ParseFile(files, name, source, parser.SkipObjectResolution)
	if err != nil {
		return err
	}
	for _, declared := range file.Decls {
		f, ok := declared.(*ast.FuncDecl)
		if !ok || f.Recv != nil {
			continue
		}
		for _, want := range needed {
			if f.Name.Name == want {
				fmt.Fprintf(to, "\n%s\n", source[files.Position(f.Pos()).Offset:files.Position(f.End()).Offset])
			}
		}
	}
	return nil
}
