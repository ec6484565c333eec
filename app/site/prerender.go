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

	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// prerendered is what the framework makes for us: the page as it first
// appears, in English and in each other language, and the script that runs a Go
// program in a browser.
type prerendered struct {
	page     string
	others   map[string]string // by their codes
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
	made := prerendered{others: map[string]string{}}
	if made.page, err = cutPage(dir, "index"); err != nil {
		return made, err
	}
	for _, code := range words.Languages()[1:] {
		if made.others[code], err = cutPage(dir, code); err != nil {
			return made, err
		}
	}
	made.wasmExec, err = os.ReadFile(filepath.Join(dir, "wasm_exec.js"))
	return made, err
}

// cutPage takes the page's own root element out of the framework's document,
// where the loader that we replace follows it.
func cutPage(dir, name string) (string, error) {
	html, err := os.ReadFile(filepath.Join(dir, name+".html"))
	if err != nil {
		return "", err
	}
	_, rest, found := strings.Cut(string(html), "<body>")
	end := strings.LastIndex(rest, "<aside")
	if !found || end < 0 {
		return "", errors.New("the framework's document has changed: no body or no loader")
	}
	page := strings.TrimSpace(rest[:end])
	if page == "" {
		return "", errors.New("the page " + name + " is empty: is it routed?")
	}
	return sortAttributes(indent.ReplaceAllString(page, "")), nil
}

// indent is what the framework parts elements by, and the program does not.
var indent = regexp.MustCompile(`\n\s*`)

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
