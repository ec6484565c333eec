//go:build !js

package site

import (
	"errors"
	"os"
	"path/filepath"
	"regexp"
	"sort"
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// prerendered is what the framework makes for us: the page as it first
// appears, and the script that runs a Go program in a browser.
type prerendered struct {
	page     string
	wasmExec []byte
}

// relative resolves the addresses of the prerendered page against the folder
// the site is served from.
type relative struct{}

func (relative) Resolve(location string) string {
	return strings.TrimPrefix(location, "/")
}

// prerender renders the page natively. Of the framework's own files only two
// are used; the shell, the starting script, the worker and the manifest are
// ours.
func prerender() (prerendered, error) {
	dir, err := os.MkdirTemp("", "standing-beam-")
	if err != nil {
		return prerendered{}, err
	}
	defer os.RemoveAll(dir)
	handler := &app.Handler{
		Name:      "Standing Beam",
		Version:   "prerendered",
		Resources: relative{},
		Icon:      app.Icon{Default: "web/icon-192.png", Large: "web/icon-512.png", SVG: "web/icon.svg"},
	}
	if err := app.GenerateStaticWebsite(dir, handler); err != nil {
		return prerendered{}, err
	}
	html, err := os.ReadFile(filepath.Join(dir, "index.html"))
	if err != nil {
		return prerendered{}, err
	}
	wasmExec, err := os.ReadFile(filepath.Join(dir, "wasm_exec.js"))
	if err != nil {
		return prerendered{}, err
	}
	page, err := cutPage(string(html))
	return prerendered{page: page, wasmExec: wasmExec}, err
}

// cutPage takes the page's own root element out of the framework's document,
// where the loader that we replace follows it.
func cutPage(html string) (string, error) {
	_, rest, found := strings.Cut(html, "<body>")
	end := strings.LastIndex(rest, "<aside")
	if !found || end < 0 {
		return "", errors.New("the framework's document has changed: no body or no loader")
	}
	page := strings.TrimSpace(rest[:end])
	if page == "" {
		return "", errors.New("the page is empty: is it routed?")
	}
	return sortAttributes(page), nil
}

var (
	tag       = regexp.MustCompile(`<[a-zA-Z][a-zA-Z0-9-]*(?:\s+[^\s=<>/"']+(?:="(?:[^"\\]|\\.)*")?)+\s*/?>`)
	attribute = regexp.MustCompile(`\s+([^\s=<>/"']+)(?:="((?:[^"\\]|\\.)*)")?`)
)

// sortAttributes puts the attributes of each element in order, since the
// framework writes them in a random one, and undoes its Go quoting, which
// HTML does not read. The same page then always gives the same bytes.
func sortAttributes(html string) string {
	return tag.ReplaceAllStringFunc(html, func(element string) string {
		found := attribute.FindAllStringSubmatchIndex(element, -1)
		var parts []string
		for _, at := range found {
			name := element[at[2]:at[3]]
			if at[4] < 0 {
				parts = append(parts, " "+name)
				continue
			}
			value := element[at[4]:at[5]]
			if plain, err := strconv.Unquote(`"` + value + `"`); err == nil {
				value = strings.ReplaceAll(plain, `"`, "&quot;")
			}
			parts = append(parts, " "+name+`="`+value+`"`)
		}
		sort.Strings(parts)
		return element[:found[0][0]] + strings.Join(parts, "") + element[found[len(found)-1][1]:]
	})
}
