package reference

import (
	"math"
	"testing"
)

func TestHalfDigit(t *testing.T) {
	for text, want := range map[string]float64{"4557": 0.5, "16.43": 0.005, "0.110": 0.0005} {
		got := Row{t: t, cells: map[string]string{"x": text}}.HalfDigit("x")
		if math.Abs(got-want) > 1e-6*want {
			t.Errorf("half the last digit of %s is %v, want %v", text, got, want)
		}
	}
}

func TestRows(t *testing.T) {
	rows := Rows(t, "aci/bars.csv")
	if len(rows) != 9 || rows[1].Int("bar") != 4 || math.Abs(rows[1].Number("area")-0.2) > 1e-12 {
		t.Errorf("%d bars, second %v", len(rows), rows[1].cells)
	}
}
