package draw

import (
	"math"
	"testing"
)

func TestNumbersHaveOneDecimal(t *testing.T) {
	for _, test := range []struct {
		v    float64
		want string
	}{
		{0, "0"}, {12, "12"}, {12.34, "12.3"}, {12.96, "13"}, {-0.04, "0"}, {-7.25, "-7.3"},
		{math.NaN(), "0"}, {math.Inf(1), "0"}, {math.Inf(-1), "0"}, {1e9, "0"},
	} {
		if got := string(appendNumber(nil, test.v)); got != test.want {
			t.Errorf("appendNumber(%v) = %q, want %q", test.v, got, test.want)
		}
	}
}

func TestTextIsEscaped(t *testing.T) {
	s := &sheet{}
	s.escape(`a<b>&"c"`)
	if got, want := string(s.b), "a&lt;b&gt;&amp;&quot;c&quot;"; got != want {
		t.Errorf("escape = %q, want %q", got, want)
	}
}

// The widths are those of the font's own table: 2048 units to the em, a zero
// 1303 wide, an M 1767 (DejaVu Sans 2.37, hmtx).
func TestTextWidth(t *testing.T) {
	for _, test := range []struct {
		text string
		want float64
	}{{"0", 1303.0 / 2048 * 14}, {"M", 1767.0 / 2048 * 14}, {"M0", 3070.0 / 2048 * 14}} {
		if got := textWidth(test.text, 14, false) - hinting; got < test.want-1e-9 || got > test.want+0.05 {
			t.Errorf("textWidth(%q) = %.3f, want %.3f and no less", test.text, got, test.want)
		}
	}
	if textWidth("½", 14, true) < 1.035*14 {
		t.Error("a fraction is wider than what is taken for it")
	}
}
