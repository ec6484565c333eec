//go:build browser

package pagetest

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"testing"

	"standingbeam/app/sheet"
)

// checkPages holds the pages of a file to the size of the paper, and counts
// them.
func checkPages(t *testing.T, file, paper string) int {
	t.Helper()
	info := tool(t, "pdfinfo", file)
	find := func(pattern string) []string {
		m := regexp.MustCompile(pattern).FindStringSubmatch(info)
		if m == nil {
			t.Fatalf("nothing of %s in\n%s", pattern, info)
		}
		return m[1:]
	}
	pages, _ := strconv.Atoi(find(`Pages: +(\d+)`)[0])
	size := find(`Page size: +([\d.]+) x ([\d.]+)`)
	// 72 points to the inch; A4 is 210 by 297 mm. Browsers round to whole
	// pixels of 1/96 in.
	want := [2]float64{612, 792}
	if paper == sheet.A4 {
		want = [2]float64{210 / 25.4 * 72, 297 / 25.4 * 72}
	}
	for i, s := range size {
		if v, _ := strconv.ParseFloat(s, 64); math.Abs(v-want[i]) > 0.75 {
			t.Errorf("the paper is %v, want %v points", size, want)
		}
	}
	return pages
}

// word is a word on paper with its place in points.
type word struct {
	Left   float64 `xml:"xMin,attr"`
	Top    float64 `xml:"yMin,attr"`
	Right  float64 `xml:"xMax,attr"`
	Bottom float64 `xml:"yMax,attr"`
	Text   string  `xml:",chardata"`
}

// checkWords fails where words on paper cover each other, or are smaller than
// 7 points.
func checkWords(t *testing.T, file string) {
	t.Helper()
	var doc struct {
		Pages []struct {
			Words []word `xml:"word"`
		} `xml:"body>doc>page"`
	}
	d := xml.NewDecoder(bytes.NewReader([]byte(tool(t, "pdftotext", "-bbox", file, "-"))))
	d.Strict, d.Entity = false, xml.HTMLEntity
	if err := d.Decode(&doc); err != nil {
		t.Fatal(err)
	}
	seen := 0
	for n, page := range doc.Pages {
		for i, a := range page.Words {
			seen++
			if min(a.Bottom-a.Top, a.Right-a.Left) > 0 && max(a.Bottom-a.Top, a.Right-a.Left) < 3 && len(a.Text) > 1 {
				t.Errorf("page %d: %q is too small to read", n+1, a.Text)
			}
			for _, b := range page.Words[:i] {
				w, h := math.Min(a.Right, b.Right)-math.Max(a.Left, b.Left), math.Min(a.Bottom, b.Bottom)-math.Max(a.Top, b.Top)
				least := math.Min((a.Right-a.Left)*(a.Bottom-a.Top), (b.Right-b.Left)*(b.Bottom-b.Top))
				// Lines are set closer than the boxes of their letters are high.
				if w > 0.5 && h > 0 && w*h > 0.3*least {
					t.Errorf("page %d: %q and %q cover each other", n+1, a.Text, b.Text)
				}
			}
		}
	}
	if seen < 100 {
		t.Errorf("only %d words", seen)
	}
}

// checkInk draws the pages and fails where something reaches the paper's edge,
// a page is empty, or there is a colour.
func checkInk(t *testing.T, file string) {
	t.Helper()
	const dpi = 72
	prefix := filepath.Join(t.TempDir(), "page")
	tool(t, "pdftoppm", "-r", strconv.Itoa(dpi), file, prefix)
	pages, err := filepath.Glob(prefix + "*.ppm")
	if err != nil || len(pages) == 0 {
		t.Fatalf("no pages: %v", err)
	}
	for n, name := range pages {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		var width, height, depth int
		if _, err := fmt.Sscanf(string(data[:20]), "P6\n%d %d\n%d\n", &width, &height, &depth); err != nil {
			t.Fatal(err)
		}
		pixels := data[len(data)-3*width*height:]
		edge, ink := dpi*3/10, 0
		for i := 0; i < len(pixels); i += 3 {
			r, g, b := pixels[i], pixels[i+1], pixels[i+2]
			if r != g || g != b {
				t.Fatalf("page %d is coloured", n+1)
			}
			x, y := i/3%width, i/3/width
			if r < 200 {
				ink++
			}
			if r < 250 && (x < edge || x >= width-edge || y < edge || y >= height-dpi*15/100) {
				t.Fatalf("page %d: ink at %d, %d of %d × %d", n+1, x, y, width, height)
			}
		}
		if share := float64(ink) / float64(width*height); share < 0.002 || share > 0.4 {
			t.Errorf("page %d: %.1f %% of it is ink", n+1, share*100)
		}
	}
}
