package sheet

import (
	"fmt"
	"os"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

const (
	ft = units.Foot
	in = units.Inch
)

// walls are one wall of each condition as a house has them.
func walls() map[string]calc.Input {
	base := func(c calc.Condition, name string) calc.Input {
		return calc.Input{Name: name, Condition: c, Height: 9 * ft, GradeA: 8 * ft, Thickness: 10 * in,
			Soil:     calc.Soil{Basis: calc.SoilClass, Class: "SM"},
			Material: calc.Material{Fc: 3000 * units.PSI, Fy: 60 * units.KSI},
			Footing:  calc.Footing{Given: true, Width: 24 * in, Thickness: 12 * in, NoToe: true, Bearing: 2000 * units.PSF, Friction: 0.4},
		}
	}
	braced := base(calc.BracedTop, "East cellar wall")
	braced.Foot.Held = calc.SlabTight
	free := base(calc.FreeTop, "Garden wall")
	free.Height, free.GradeA = 6*ft, 6*ft
	free.Footing.Width, free.Footing.NoToe, free.Footing.Toe = 5*ft, false, 18*in
	tied := base(calc.TiedToSlab, "Porch wall")
	tied.Tie = calc.Tie{SlabThickness: 4 * in, SlabLength: 30 * ft}
	tied.Footing.Width = 36 * in
	both := base(calc.SoilBothSides, "Garage wall")
	both.TopHeld, both.GradeB = true, 4*ft
	return map[string]calc.Input{"braced": braced, "free": free, "tied": tied, "both": both}
}

func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		return
	}
	for name, w := range walls() {
		r, err := calc.Design(w)
		if err != nil {
			t.Fatal(err)
		}
		for sys, sp := range map[string]words.Speaker{"us": {}, "metric": {System: words.Metric}} {
			s := newScene(&r, sp)
			d := s.layOut(7.5, 5.4)
			os.WriteFile(fmt.Sprintf("%s/%s-%s.svg", dir, name, sys), []byte(d.svg(name)), 0o644)
			fmt.Println(name, sys, d.views[0].scale, d.views[1].scale, d.views[2].scale, d.views[0].crowded, d.views[1].crowded, d.views[2].crowded)
		}
	}
}

func TestLookFiles(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		return
	}
	for name, w := range walls() {
		r, _ := calc.Design(w)
		o := Options{Job: "Mill Lane 4", Date: "25 Nov", Person: "A. Mason"}
		os.WriteFile(dir+"/"+name+".svg", []byte(SVG(r, o)), 0o644)
		os.WriteFile(dir+"/"+name+".dxf", []byte(DXF(r, o)), 0o644)
	}
}

func TestLookCrew(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		return
	}
	for name, w := range walls() {
		r, _ := calc.Design(w)
		o := Options{Job: "Mill Lane 4", Date: "25 Nov", Person: "A. Mason"}
		os.WriteFile(dir+"/"+name+"-crew.html", []byte(Crew(r, o)), 0o644)
		o.Paper, o.Speaker.System = A4, words.Metric
		os.WriteFile(dir+"/"+name+"-crew-a4.html", []byte(Crew(r, o)), 0o644)
	}
}
