package calc

import (
	"testing"

	"standingbeam/calc/units"
)

// sample is the sort of wall that each benchmark and property starts from.
func sample(c Condition) Input {
	in := Input{Condition: c, Height: 9 * units.Foot, GradeA: 8 * units.Foot, Thickness: 10 * units.Inch,
		Soil:     Soil{Basis: SoilClass, Class: "SM"},
		Material: Material{Fc: 3000 * units.PSI, Fy: 60 * units.KSI},
		Footing:  Footing{Given: true, Width: 24 * units.Inch, Thickness: 12 * units.Inch, NoToe: true},
	}
	switch c {
	case BracedTop:
		in.Foot.Held = SlabTight
	case FreeTop:
		in.GradeA, in.Height = 6*units.Foot, 6*units.Foot
		in.Footing = Footing{Given: true, Width: 5 * units.Foot, Thickness: 12 * units.Inch, Toe: 18 * units.Inch}
	case TiedToSlab:
		in.Tie = Tie{SlabThickness: 4 * units.Inch, SlabLength: 30 * units.Foot}
	case SoilBothSides:
		in.GradeB = 4 * units.Foot
	}
	return in
}

func BenchmarkDesign(b *testing.B) {
	for _, c := range []struct {
		name string
		c    Condition
	}{{"braced", BracedTop}, {"free", FreeTop}, {"tied", TiedToSlab}, {"both", SoilBothSides}} {
		b.Run(c.name, func(b *testing.B) {
			in := sample(c.c)
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Design(in); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// BenchmarkExplain is the same answer with every working in full.
func BenchmarkExplain(b *testing.B) {
	for _, c := range []Condition{BracedTop, FreeTop, TiedToSlab, SoilBothSides} {
		b.Run([]string{"braced", "free", "tied", "both"}[c], func(b *testing.B) {
			in := sample(c)
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Explain(in); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
