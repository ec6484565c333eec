//go:build !js

package site

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"maps"
	"mime"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// mediaTypes of everything the site may hold. A file of another kind stops
// the build, since a host might serve it as something else.
var mediaTypes = map[string]string{
	".html":        "text/html; charset=utf-8",
	".js":          "text/javascript; charset=utf-8",
	".css":         "text/css; charset=utf-8",
	".svg":         "image/svg+xml",
	".png":         "image/png",
	".wasm":        "application/wasm",
	".woff2":       "font/woff2",
	".txt":         "text/plain; charset=utf-8",
	".json":        "application/json",
	".webmanifest": "application/manifest+json",
}

// The hand-written files that stand at the root of the site, under the name
// they get there. All others stay in its folder web.
var rootFiles = map[string]string{
	"shell.html":            "index.html",
	"early.js":              "early.js",
	"start.js":              "start.js",
	"worker.js":             "worker.js",
	"manifest.webmanifest":  "manifest.webmanifest",
	"embed.js":              forOthers + "element.js",
	"embed-demo/index.html": forOthers + "index.html",
	"embed-demo/demo.css":   forOthers + "demo.css",
	"embed-demo/demo.js":    forOthers + "demo.js",
}

const workerFile = "worker.js"

// assemble puts the site together and returns its files and its version, a
// hash of everything that went in.
func assemble(program []byte, web map[string][]byte, made prerendered) (map[string][]byte, string, error) {
	files := map[string][]byte{"wasm_exec.js": made.wasmExec, "web/app.wasm": program}
	for code, page := range made.others {
		files[code+".html"] = []byte(page)
	}
	for size, name := range map[int]string{192: "web/icon-192.png", 512: "web/icon-512.png"} {
		icon, err := iconPNG(size)
		if err != nil {
			return nil, "", err
		}
		files[name] = icon
	}
	files["web/icon.svg"] = []byte(iconSVG())
	maps.Copy(files, stills(web["picture.css"]))
	for name, data := range web {
		if root, ok := rootFiles[name]; ok {
			files[root] = data
		} else {
			files["web/"+name] = data
		}
	}
	for from, name := range rootFiles {
		if files[name] == nil {
			return nil, "", fmt.Errorf("web/%s is missing", from)
		}
	}
	for name := range files {
		if mediaTypes[path.Ext(name)] == "" {
			return nil, "", fmt.Errorf("%s: no media type is known for it", name)
		}
	}
	if err := checkLinks(files, "index.html", "manifest.webmanifest"); err != nil {
		return nil, "", err
	}
	files["index.html"] = fill(files["index.html"], "page", made.page)
	languages, err := json.Marshal(slices.Sorted(maps.Keys(made.others)))
	if err != nil {
		return nil, "", err
	}
	files["early.js"] = fill(files["early.js"], "languages", string(languages))
	version := versionOf(files)
	files["index.html"] = fill(files["index.html"], "version", version)
	files["manifest.webmanifest"] = fill(files["manifest.webmanifest"], "version", version)
	start := fill(fill(files["start.js"], "version", version), "programLength", strconv.Itoa(len(program)))
	files["start.js"] = fill(start, "programSum", fmt.Sprintf("%x", sha256.Sum256(program)))
	list, err := workerList(files)
	if err != nil {
		return nil, "", err
	}
	files[workerFile] = fill(fill(files[workerFile], "version", version), "files", list)
	return files, version, nil
}

var link = regexp.MustCompile(`(?:href|src)"?\s*[=:]\s*"([^"?#]*)`)

// checkLinks fails when one of the named files points at a file that the site
// lacks, or anywhere but below its own folder.
func checkLinks(files map[string][]byte, names ...string) error {
	for _, name := range names {
		for _, found := range link.FindAllSubmatch(files[name], -1) {
			if to := string(found[1]); files[to] == nil {
				return fmt.Errorf("%s points at %q, which is no file of the site", name, to)
			}
		}
	}
	return nil
}

// fill puts value in the place of each {{name}}.
func fill(data []byte, name, value string) []byte {
	return []byte(strings.ReplaceAll(string(data), "{{"+name+"}}", value))
}

// versionOf is a hash of the names and contents of the files.
func versionOf(files map[string][]byte) string {
	hash := sha256.New()
	for _, name := range slices.Sorted(maps.Keys(files)) {
		fmt.Fprintf(hash, "%s %d\n", name, len(files[name]))
		hash.Write(files[name])
	}
	return hex.EncodeToString(hash.Sum(nil))[:16]
}

// workerList names, in JSON, each file that the worker keeps, with its hash. The
// first page in other languages is none: what is kept starts as fast.
func workerList(files map[string][]byte) (string, error) {
	type entry struct {
		Path   string `json:"path"`
		Type   string `json:"type"`
		SHA256 string `json:"sha256"`
	}
	var list []entry
	for _, name := range slices.Sorted(maps.Keys(files)) {
		if name == workerFile || strings.HasPrefix(name, forOthers) || path.Ext(name) == ".html" && name != "index.html" {
			continue
		}
		sum := sha256.Sum256(files[name])
		e := entry{Path: name, Type: mediaType(name), SHA256: hex.EncodeToString(sum[:])}
		if name == "index.html" {
			e.Path = "./"
		}
		list = append(list, e)
	}
	data, err := json.MarshalIndent(list, "", "  ")
	return string(data), err
}

// mediaType of a file of the site, by the end of its name.
func mediaType(name string) string {
	if t := mediaTypes[path.Ext(name)]; t != "" {
		return t
	}
	if t := mime.TypeByExtension(path.Ext(name)); t != "" {
		return t
	}
	return "application/octet-stream"
}
