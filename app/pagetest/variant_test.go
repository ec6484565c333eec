//go:build browser

package pagetest

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// markOf is found in every changed file of a variant.
func markOf(name string) string { return "variant-" + name }

// variants are the folders of the versions built so far, below scratch.
var variants = map[string]string{}

// variant returns the folder of another version of the site, in which the
// document, the style, the starting script and the program differ.
func variant(t *testing.T, name string) string {
	t.Helper()
	if variants[name] == "" {
		variants[name] = buildVariant(t, name, filepath.Join(scratch, "variant-"+name))
	}
	return variants[name]
}

func buildVariant(t *testing.T, name, dir string) string {
	t.Helper()
	if err := os.Mkdir(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	program, err := os.ReadFile(programFile)
	if err != nil {
		t.Fatal(err)
	}
	web := filepath.Join(dir, "web")
	if err := os.CopyFS(web, os.DirFS(webDir)); err != nil {
		t.Fatal(err)
	}
	appendTo(t, filepath.Join(web, "app.css"), "\n/* "+markOf(name)+" */\n")
	appendTo(t, filepath.Join(web, "start.js"), "\n// "+markOf(name)+"\n")
	appendTo(t, filepath.Join(web, "shell.html"), "<!-- "+markOf(name)+" -->\n")
	wasm := filepath.Join(dir, "app.wasm")
	if err := os.WriteFile(wasm, withSection(program, markOf(name)), 0o644); err != nil {
		t.Fatal(err)
	}
	out := filepath.Join(dir, "dist")
	command := exec.Command(buildTool, "build", "-quick", "-wasm", wasm, "-web", web, "-out", out)
	if said, err := command.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, said)
	}
	return out
}

func appendTo(t *testing.T, path, text string) {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, append(data, text...), 0o644); err != nil {
		t.Fatal(err)
	}
}

// withSection adds an empty custom section to a WebAssembly program, which
// changes its bytes and nothing that it does: id 0, then the length of what
// follows, then the length of the name and the name.
func withSection(program []byte, name string) []byte {
	out := bytes.Clone(program)
	out = append(out, 0, byte(len(name)+1), byte(len(name)))
	return append(out, name...)
}

// versionIn is the version of a built site.
func versionIn(t *testing.T, dir string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(dir, "index.html"))
	if err != nil {
		t.Fatal(err)
	}
	_, rest, _ := strings.Cut(string(data), `data-version="`)
	version, _, found := strings.Cut(rest, `"`)
	if !found {
		t.Fatal("index.html names no version")
	}
	return version
}

// sums are the hashes of the files of a built site that a worker keeps.
func sums(t *testing.T, dir string) map[string]string {
	t.Helper()
	out := map[string]string{}
	err := filepath.WalkDir(dir, func(path string, entry os.DirEntry, err error) error {
		name, _ := filepath.Rel(dir, path) // path lies below dir
		name = filepath.ToSlash(name)
		if err != nil || entry.IsDir() || name == "worker.js" || strings.HasPrefix(name, "embed/") || name == "es.html" || strings.HasSuffix(name, ".br") || strings.HasSuffix(name, ".gz") {
			return err
		}
		data, err := os.ReadFile(path)
		sum := sha256.Sum256(data)
		if name == "index.html" {
			name = "" // the worker keeps it as the folder
		}
		out[name] = hex.EncodeToString(sum[:])
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// cached returns the hashes of what the caches of a page's origin hold, by
// cache and by path below the page's folder.
func (p *tab) cached() map[string]map[string]string {
	p.t.Helper()
	text := eval[string](p, `(async () => {
		const all = {};
		const root = new URL("./", location.href).href;
		for (const name of await caches.keys()) {
			const cache = await caches.open(name);
			all[name] = {};
			for (const request of await cache.keys()) {
				const body = await (await cache.match(request)).arrayBuffer();
				const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", body));
				all[name][request.url.slice(root.length)] = Array.from(sum, (b) => b.toString(16).padStart(2, "0")).join("");
			}
		}
		return JSON.stringify(all);
	})()`)
	var all map[string]map[string]string
	if err := json.Unmarshal([]byte(text), &all); err != nil {
		p.t.Fatal(err)
	}
	return all
}

// versions are the caches that hold a version of the site. One that is coming
// is none.
func (p *tab) versions() map[string]map[string]string {
	p.t.Helper()
	all := p.cached()
	for name := range all {
		if !strings.HasPrefix(name, "standing-beam ") || strings.HasSuffix(name, " note") {
			delete(all, name)
		}
	}
	return all
}
