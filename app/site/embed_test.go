//go:build !js

package site

import (
	"encoding/xml"
	"errors"
	"io"
	"os"
	"strings"
	"testing"
)

// The pictures are whole files: well formed, with a size, a title and their
// style, and nothing that would be fetched or run.
func TestStills(t *testing.T) {
	style, err := os.ReadFile("../../web/picture.css")
	if err != nil {
		t.Fatal(err)
	}
	files := stills(style)
	if len(files) != 4 {
		t.Errorf("%d pictures for four ways to be held", len(files))
	}
	for name, data := range files {
		if !strings.HasPrefix(name, forOthers) {
			t.Errorf("%s lies outside of %s", name, forOthers)
		}
		seen := map[string]int{}
		d := xml.NewDecoder(strings.NewReader(string(data)))
		for {
			token, err := d.Token()
			if errors.Is(err, io.EOF) {
				break
			}
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			element, ok := token.(xml.StartElement)
			if !ok {
				continue
			}
			seen[element.Name.Local]++
			for _, a := range element.Attr {
				if a.Name.Local == "href" || strings.HasPrefix(a.Name.Local, "on") {
					t.Errorf("%s: <%s %s=%q>", name, element.Name.Local, a.Name.Local, a.Value)
				}
				if element.Name.Local == "svg" && (a.Name.Local == "width" && a.Value != "720" || a.Name.Local == "height" && a.Value != "480") {
					t.Errorf("%s: %s is %s", name, a.Name.Local, a.Value)
				}
			}
		}
		if seen["svg"] != 1 || seen["title"] != 1 || seen["style"] != 1 || seen["text"] < 5 || seen["script"] > 0 || seen["image"] > 0 {
			t.Errorf("%s holds %v", name, seen)
		}
		if !strings.Contains(string(data), `<svg id="picture" class="picture"`) || !strings.Contains(string(data), ` width="720" height="480"`) {
			t.Errorf("%s has no size: %.300s", name, data)
		}
		if text := string(data); strings.Contains(text, "@import") || strings.Contains(text, "url(http") {
			t.Errorf("%s would fetch something", name)
		}
	}
}
