//go:build !js

// Command framework writes a copy of the page's framework without the half
// that serves pages, and a go.mod that builds with the copy. In the browser
// the other half is never called, but the linker keeps it: net/http, TLS and
// all they need, a sixth of what a first visit transfers.
//
//	framework DIR    then: go build -modfile DIR/go.mod
//
// Nothing of the framework is changed: files that serve are kept from the
// browser by a build constraint, and what the other files use of them is
// copied beside. `go build` without the flag builds with the whole framework.
package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

const framework = "github.com/maxence-charriere/go-app/v10"

func main() {
	if len(os.Args) != 2 {
		fmt.Fprintln(os.Stderr, "usage: framework DIR")
		os.Exit(2)
	}
	if err := write(os.Args[1]); err != nil {
		fmt.Fprintln(os.Stderr, "framework:", err)
		os.Exit(1)
	}
}

// write writes the copy and the go.mod into the folder dir.
func write(dir string) error {
	dir, err := filepath.Abs(dir)
	if err != nil {
		return err
	}
	// The copy is told by its version, so that it is made once.
	out, err := exec.Command("go", "list", "-m", "-f", "{{.Version}} {{.Dir}}", framework).Output()
	if err != nil {
		return fmt.Errorf("go list %s: %w", framework, err)
	}
	version, from, found := strings.Cut(strings.TrimSpace(string(out)), " ")
	if !found {
		if out, err := exec.Command("go", "mod", "download", framework).CombinedOutput(); err != nil {
			return fmt.Errorf("go mod download: %w\n%s", err, out)
		}
		return write(dir)
	}
	copied := filepath.Join(dir, version)
	if err := os.RemoveAll(copied); err != nil {
		return err
	}
	if err := copySources(from, copied); err != nil {
		return err
	}
	if err := split(filepath.Join(copied, "pkg/app")); err != nil {
		return err
	}
	return writeModFile(dir, copied)
}

// copySources copies the Go files, without their tests, and go.mod.
func copySources(from, to string) error {
	return filepath.WalkDir(from, func(path string, entry os.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		if name := entry.Name(); name != "go.mod" && (!strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go")) {
			return nil
		}
		name, err := filepath.Rel(from, path)
		if err != nil {
			return err
		}
		data, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		name = filepath.Join(to, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			return err
		}
		return os.WriteFile(name, data, 0o644)
	})
}

// writeModFile writes this module's go.mod, and its go.sum, with the copy in
// the framework's place.
func writeModFile(dir, copied string) error {
	out, err := exec.Command("go", "env", "GOMOD").Output()
	if err != nil {
		return fmt.Errorf("go env GOMOD: %w", err)
	}
	module := strings.TrimSpace(string(out))
	mod, err := os.ReadFile(module)
	if err != nil {
		return err
	}
	sum, err := os.ReadFile(strings.TrimSuffix(module, ".mod") + ".sum")
	if err != nil {
		return err
	}
	// Relative, since the program notes it: the same bytes wherever it is built.
	copied, err = filepath.Rel(filepath.Dir(module), copied)
	if err != nil {
		return err
	}
	mod = bytes.TrimRight(mod, "\n")
	mod = fmt.Appendf(mod, "\n\nreplace %s => ./%s\n", framework, filepath.ToSlash(copied))
	if err := os.WriteFile(filepath.Join(dir, "go.mod"), mod, 0o644); err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(dir, "go.sum"), sum, 0o644)
}
