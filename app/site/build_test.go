//go:build !js

package site

import (
	"bytes"
	"compress/gzip"
	"image/png"
	"io"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"
	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

const webDir = "../../web"

type testPage struct{ app.Compo }

func (p *testPage) Render() app.UI {
	return app.Main().Body(app.H1().Text("A wall"), app.Img().Src("/web/icon.svg").Alt("quoted\u00a0here"))
}

func TestMain(m *testing.M) {
	app.Route("/", func() app.Composer { return &testPage{} })
	app.Route("/es", func() app.Composer { return &testPage{} })
	os.Exit(m.Run())
}

func buildOnce(t *testing.T, program string) (dir, version string) {
	t.Helper()
	base := t.TempDir()
	wasm := filepath.Join(base, "app.wasm")
	// A file of the format with nothing in it but a section to ignore.
	if err := os.WriteFile(wasm, append([]byte("\x00asm\x01\x00\x00\x00\x00"+string(rune(len(program)))), program...), 0o644); err != nil {
		t.Fatal(err)
	}
	dir = filepath.Join(base, "dist")
	version, err := Build(Options{Program: wasm, Web: webDir, Out: dir, Quick: true})
	if err != nil {
		t.Fatal(err)
	}
	return dir, version
}

// The same input gives the same bytes, and another program another version.
func TestBuildRepeats(t *testing.T) {
	one, first := buildOnce(t, "program")
	two, second := buildOnce(t, "program")
	if first != second {
		t.Errorf("versions %s and %s of the same input", first, second)
	}
	a, err := readFolder(one)
	if err != nil {
		t.Fatal(err)
	}
	b, err := readFolder(two)
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range slices.Sorted(maps.Keys(a)) {
		if !bytes.Equal(a[name], b[name]) {
			t.Errorf("%s differs between two builds", name)
		}
	}
	if _, third := buildOnce(t, "another"); third == first {
		t.Errorf("two programs have the same version %s", third)
	}
}

// Whatever stands in the site can be read and names no place of its own.
func TestBuildIsWhole(t *testing.T) {
	dir, version := buildOnce(t, "program")
	files, err := readFolder(dir)
	if err != nil {
		t.Fatal(err)
	}
	absolute := regexp.MustCompile(`(?:href|src)="(?:/|https?:)|"(?:start_url|scope|src)": *"/|https?://`)
	for name, data := range files {
		if strings.HasSuffix(name, ".br") || strings.HasSuffix(name, ".gz") || strings.HasSuffix(name, ".svg") || name == "wasm_exec.js" {
			continue
		}
		if found := absolute.Find(data); found != nil {
			t.Errorf("%s holds an absolute address: %s", name, found)
		}
		if bytes.Contains(data, []byte("{{")) {
			t.Errorf("%s has an empty place left", name)
		}
	}
	for name, packed := range files {
		var r io.Reader
		plain := files[strings.TrimSuffix(strings.TrimSuffix(name, ".br"), ".gz")]
		switch filepath.Ext(name) {
		case ".br":
			r = brotli.NewReader(bytes.NewReader(packed))
		case ".gz":
			if r, err = gzip.NewReader(bytes.NewReader(packed)); err != nil {
				t.Fatal(err)
			}
		default:
			continue
		}
		if got, err := io.ReadAll(r); err != nil || !bytes.Equal(got, plain) {
			t.Errorf("%s does not unpack to its file: %v", name, err)
		}
	}
	index := string(files["index.html"])
	for _, want := range []string{`data-version="` + version + `"`, "<h1", "A wall", `src="web/icon.svg"`, "quoted\u00a0here"} {
		if !strings.Contains(index, want) {
			t.Errorf("index.html lacks %s", want)
		}
	}
}

// Icons are of the size that the manifest says.
func TestIcons(t *testing.T) {
	for _, size := range []int{192, 512} {
		data, err := iconPNG(size)
		if err != nil {
			t.Fatal(err)
		}
		picture, err := png.Decode(bytes.NewReader(data))
		if err != nil || picture.Bounds().Dx() != size || picture.Bounds().Dy() != size {
			t.Fatalf("icon of %d: %v, %v", size, picture.Bounds(), err)
		}
		r, g, b, _ := picture.At(size*34/64, size*30/64).RGBA()
		if steelR, steelG, steelB, _ := steel.RGBA(); r != steelR || g != steelG || b != steelB {
			t.Errorf("icon of %d: no steel in the middle of the wall", size)
		}
	}
}

func TestAssembleRefuses(t *testing.T) {
	whole, err := readFolder(webDir)
	if err != nil {
		t.Fatal(err)
	}
	made := prerendered{page: "<main></main>", wasmExec: []byte("//")}
	if _, _, err := assemble([]byte("p"), whole, made); err != nil {
		t.Fatal(err)
	}
	for name, change := range map[string]func(web map[string][]byte){
		"a shell that is missing":   func(web map[string][]byte) { delete(web, "shell.html") },
		"a worker that is missing":  func(web map[string][]byte) { delete(web, "worker.js") },
		"a style that is missing":   func(web map[string][]byte) { delete(web, "app.css") },
		"a file of an unknown kind": func(web map[string][]byte) { web["notes.doc"] = nil },
		"a link to another origin":  func(web map[string][]byte) { web["shell.html"] = []byte(`<img src="https://example.org/a.png">`) },
		"a link to the host's root": func(web map[string][]byte) { web["shell.html"] = []byte(`<link href="/web/app.css">`) },
		"an icon that is not there": func(web map[string][]byte) { web["manifest.webmanifest"] = []byte(`{"src": "web/none.png"}`) },
	} {
		web := maps.Clone(whole)
		change(web)
		if _, _, err := assemble([]byte("p"), web, made); err == nil {
			t.Errorf("assemble took %s", name)
		}
	}
}

func TestSortAttributes(t *testing.T) {
	for _, test := range []struct{ in, want string }{
		{`<p id="b" class="a">x</p>`, `<p class="a" id="b">x</p>`},
		{`<input value="8" checked id="i">`, `<input checked id="i" value="8">`},
		{`<a title="6\u00a0ft" href="x?a=1&b">y</a>`, "<a href=\"x?a=1&b\" title=\"6\u00a0ft\">y</a>"},
		{`<path d="M 0 1\n2" class="c"/>`, "<path class=\"c\" d=\"M 0 1\n2\"/>"},
		{`<b>5 < 6, a="b"</b>`, `<b>5 < 6, a="b"</b>`},
		{`<i z="1" a="x > y">`, `<i a="x > y" z="1">`},
	} {
		if got := sortAttributes(test.in); got != test.want {
			t.Errorf("sortAttributes(%s)\n got %s\nwant %s", test.in, got, test.want)
		}
	}
}

// Everything that the framework asks of the page's script, but for messages
// that we do not send, is in ours.
func TestStartServesFramework(t *testing.T) {
	dir, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", "github.com/maxence-charriere/go-app/v10").Output()
	if err != nil {
		t.Fatal(err)
	}
	start, err := os.ReadFile(filepath.Join(webDir, "start.js"))
	if err != nil {
		t.Fatal(err)
	}
	sources, err := filepath.Glob(filepath.Join(strings.TrimSpace(string(dir)), "pkg/app/*.go"))
	if err != nil || len(sources) == 0 {
		t.Fatalf("no sources of the framework: %v", err)
	}
	asked := map[string]bool{}
	name := regexp.MustCompile(`"(goapp[A-Z]\w*)"`)
	for _, source := range sources {
		data, err := os.ReadFile(source)
		if err != nil {
			t.Fatal(err)
		}
		for _, found := range name.FindAllSubmatch(data, -1) {
			asked[string(found[1])] = true
		}
	}
	unused := []string{"goappNewNotification", "goappSubscribePushNotifications", "goappKeepBodyClean"}
	if len(asked) <= len(unused) {
		t.Fatalf("the framework asks for %v only: has it changed?", asked)
	}
	for want := range asked {
		defined := regexp.MustCompile(`(?m)^(?:var|function|async function) ` + want + `\b`)
		if !slices.Contains(unused, want) && !defined.Match(start) {
			t.Errorf("start.js does not define %s", want)
		}
	}
}
