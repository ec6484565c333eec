//go:build !js

package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// The page's program needs nothing that serves or encrypts when it is built
// with the copy.
func TestCopyServesNothing(t *testing.T) {
	dir := t.TempDir()
	if err := write(dir); err != nil {
		t.Fatal(err)
	}
	list := exec.Command("go", "list", "-modfile", filepath.Join(dir, "go.mod"), "-deps", "standingbeam/app")
	list.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	out, err := list.Output()
	if err != nil {
		t.Fatal(err)
	}
	packages := strings.Fields(string(out))
	if !slices.Contains(packages, framework+"/pkg/app") {
		t.Fatal("the framework is not there")
	}
	for _, gone := range []string{"net/http", "crypto/tls", "net"} {
		if slices.Contains(packages, gone) {
			t.Errorf("%s is still needed", gone)
		}
	}
}
