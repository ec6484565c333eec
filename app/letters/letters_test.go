package letters

import (
	"strings"
	"testing"
)

// The expected widths are read off the advances that the fonts' hmtx tables
// give, in units of 2048 to the em: DejaVu Sans 2.37 "i" 569, "M" 1767,
// "5" 1303, space 651; Bold "M" 2038.
func TestWidth(t *testing.T) {
	for _, test := range []struct {
		text  string
		heavy bool
		units float64
	}{
		{"i", false, 569}, {"M", false, 1767}, {"5", false, 1303}, {" ", false, 651}, {"M", true, 2038}, {"i M", false, 569 + 651 + 1767},
	} {
		want := test.units / 2048 * 10
		// The table is in thousandths, rounded to the wider side.
		got := Width(test.text, 10, test.heavy)
		if got < want-0.005 || got > want+0.01*float64(len(test.text)) {
			t.Errorf("Width(%q, heavy %v) = %.4f, want %.4f", test.text, test.heavy, got, want)
		}
	}
	if Width("½", 10, false) < Width("M", 10, false) {
		t.Error("a letter outside the table is taken as narrow")
	}
}

func TestWrap(t *testing.T) {
	text := "No. 5 (16 mm) at 400 mm, on the open side, 32 mm clear"
	for _, width := range []float64{10, 40, 80, 1000} {
		lines := Wrap(text, 7, false, width)
		if strings.Join(lines, " ") != text {
			t.Errorf("width %v: words are lost: %q", width, lines)
		}
		for _, l := range lines {
			if strings.Contains(l, " ") && Width(l, 7, false) > width {
				t.Errorf("width %v: %q is wider", width, l)
			}
		}
	}
	if Wrap("  ", 7, false, 50) != nil {
		t.Error("nothing wraps to a line")
	}
}

// DejaVu Sans Bold 2.37, hmtx: "²" 897, "·" 778, "ñ" 1458 units of 2048.
func TestWidthOfSigns(t *testing.T) {
	for text, units := range map[string]float64{"²": 897, "·": 778, "ñ": 1458} {
		if got, least := Width(text, 10, true), units/2048*10; got < least || got > least+1 {
			t.Errorf("Width(%q) = %.2f, want no less than %.2f and not much more", text, got, least)
		}
	}
}
