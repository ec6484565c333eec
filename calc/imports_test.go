//go:build !js

package calc_test

import (
	"os/exec"
	"strings"
	"testing"
)

// TestImports holds the calculation free of browser, network, clock pages and
// the big template packages: it must build into the page and into the command
// alike. There is no go command beside the wasm; the native run asks it.
func TestImports(t *testing.T) {
	out, err := exec.Command("go", "list", "-deps", "standingbeam/calc/...").CombinedOutput()
	if err != nil {
		t.Fatalf("go list: %v\n%s", err, out)
	}
	seen := map[string]bool{}
	for _, path := range strings.Fields(string(out)) {
		seen[path] = true
		for _, banned := range []string{"github.com/maxence-charriere/go-app", "github.com/hack-pad", "syscall/js", "net/http", "text/template", "html/template",
			"standingbeam/app"} {
			if path == banned || strings.HasPrefix(path, banned+"/") {
				t.Errorf("calc imports %s", path)
			}
		}
	}
	if !seen["standingbeam/calc"] || !seen["standingbeam/calc/statics"] {
		t.Error("go list did not list calc")
	}
}
