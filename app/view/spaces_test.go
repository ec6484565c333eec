package view

import (
	"strings"
	"testing"
)

func TestUnbroken(t *testing.T) {
	for _, test := range []struct{ text, want string }{
		{"No. 6 verticals at 41 in, on the open side", "No._6 verticals at 41_in, on the open side"},
		{"FILL ONLY TO 2 ft 5 in", "FILL ONLY TO 2_ft_5_in"}, {"8 ft 4 1/2 in of fill", "8_ft_4_1/2_in of fill"},
		{"lap 28 1/2 in", "lap 28_1/2_in"},
		{"it must take 9.37 kN/m", "it must take 9.37_kN/m"},
		{"16 inside", "16 inside"},
	} {
		got := strings.ReplaceAll(Unbroken(test.text), noBreak, "_")
		if got != test.want {
			t.Errorf("Unbroken(%q) = %q, want %q", test.text, got, test.want)
		}
	}
}
