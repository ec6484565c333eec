package hosting

import (
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// headersOf lists the headers that a file sets, by a pattern of a name and a
// value.
func headersOf(t *testing.T, name, pattern string) map[string]string {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]string{}
	for _, m := range regexp.MustCompile(`(?m)`+pattern).FindAllStringSubmatch(string(data), -1) {
		found[m[1]] = strings.Trim(m[2], `"`)
	}
	return found
}

// A list of headers cannot be tried on a server of ours, so it is held against
// the two files that are: they set the same, but for what goes with packing.
func TestSameHeaders(t *testing.T) {
	nginx := headersOf(t, "nginx.conf", `^\s*add_header (\S+)\s+(.+);$`)
	apache := headersOf(t, "htaccess", `^\s*Header (?:set|merge) (\S+) (.+)$`)
	list := headersOf(t, "_headers", `^  (\S+): (.+)$`)
	nginx["Access-Control-Allow-Origin"], nginx["Cross-Origin-Resource-Policy"] = "*", "cross-origin" // by the two maps
	for _, packing := range []string{"Content-Encoding", "Vary"} {
		delete(nginx, packing)
		delete(apache, packing)
	}
	if len(list) != 7 {
		t.Errorf("_headers sets %v", slices.Sorted(maps.Keys(list)))
	}
	if !maps.Equal(nginx, list) {
		t.Errorf("nginx.conf sets\n%v\n_headers\n%v", nginx, list)
	}
	if !maps.Equal(apache, list) {
		t.Errorf("htaccess sets\n%v\n_headers\n%v", apache, list)
	}
}
