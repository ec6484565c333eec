package words

import (
	"strings"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// walls are many walls of every kind, to meet what the calculation may say.
func walls() (out []calc.Input) {
	base := calc.Input{Height: 96, Thickness: 8, GradeA: 84, Soil: calc.Soil{Basis: calc.SoilFluid, Fluid: 45 * units.PCF},
		Material: calc.Material{Fc: 3000, Fy: 60000}}
	changes := []func(*calc.Input){
		func(*calc.Input) {},
		func(in *calc.Input) { in.Footing = calc.Footing{Given: true, Width: 24, Thickness: 10, NoToe: true} },
		func(in *calc.Input) {
			in.Footing = calc.Footing{Given: true, Width: 96, Thickness: 16, Toe: 20, Bearing: 20, Friction: 0.5, Passive: true}
		},
		func(in *calc.Input) { in.Soil = calc.Soil{} },
		func(in *calc.Input) { in.Soil = calc.Soil{Swells: calc.No} },
		func(in *calc.Input) { in.Soil = calc.Soil{Swells: calc.Yes} },
		func(in *calc.Input) { in.Soil = calc.Soil{Basis: calc.SoilClass, Class: "SM"} },
		func(in *calc.Input) { in.Soil = calc.Soil{Basis: calc.SoilClass, Class: "CH"} },
		func(in *calc.Input) {
			in.Soil = calc.Soil{Basis: calc.SoilFriction, Friction: 30 * units.Degree, Weight: 120 * units.PCF}
		},
		func(in *calc.Input) { in.Height, in.GradeA, in.Thickness = 228, 220, 6 },
		func(in *calc.Input) { in.Height, in.GradeA = 36, 30 },
		func(in *calc.Input) { in.GradeA = 0 },
		func(in *calc.Input) { in.GradeB = 36 },
		func(in *calc.Input) { in.GradeB, in.LowSideMayGo = 36, true },
		func(in *calc.Input) { in.Water = calc.Water{Standing: true, Level: 60} },
		func(in *calc.Input) { in.Surcharge = calc.Surcharge{Dead: 50 * units.PSF, Live: 100 * units.PSF} },
		func(in *calc.Input) {
			in.Axial = calc.Axial{Dead: 1200 * units.PLF, Live: 800 * units.PLF, Eccentricity: 2}
		},
		func(in *calc.Input) {
			in.Axial = calc.Axial{Dead: 20000 * units.PLF, Live: 20000 * units.PLF, Eccentricity: -2}
		},
		func(in *calc.Input) { in.Vertical = calc.Bars{Fixed: true, Size: 3, Spacing: 48, Face: calc.FaceA} },
		func(in *calc.Input) {
			in.Vertical = calc.Bars{Fixed: true, Size: 11, Spacing: 3, Face: calc.FaceB}
			in.Horizontal = calc.Bars{Fixed: true, Size: 3, Spacing: 60}
		},
		func(in *calc.Input) {
			in.FourThirds, in.Vertical = true, calc.Bars{Fixed: true, Size: 4, Spacing: 30, Face: calc.FaceB}
		},
		func(in *calc.Input) { in.Dowels = calc.Dowels{Fixed: true, None: true} },
		func(in *calc.Input) {
			in.Dowels = calc.Dowels{Fixed: true, Size: 6, Spacing: 30, Up: 8, Position: calc.FaceA}
		},
		func(in *calc.Input) { in.Material.Fc, in.Material.Fy = 4500, 40000 },
		func(in *calc.Input) { in.Seismic = "D0" },
		func(in *calc.Input) { in.Rulebook = calc.Residential },
		func(in *calc.Input) { in.Rulebook, in.FloorEdge = calc.Engineered, 50*units.PLF },
		func(in *calc.Input) { in.FloorEdge, in.Floor = 5000*units.PLF, calc.FloorFlexible },
		func(in *calc.Input) { in.Today = calc.Today{Given: true, Concrete: 1500} },
		func(in *calc.Input) { in.Today = calc.Today{Given: true, Concrete: 2600, Floor: true, Slab: true} },
		func(in *calc.Input) { in.Thickness, in.Foot.Fixed = 12, true },
	}
	holds := []func(*calc.Input){
		func(in *calc.Input) { in.Foot.Held = calc.SlabTight },
		func(in *calc.Input) { in.Foot.Held = calc.GroundOnly },
		func(in *calc.Input) { in.Condition, in.Foot.Held = calc.FreeTop, calc.SlabLater },
		func(in *calc.Input) { in.Condition = calc.FreeTop },
		func(in *calc.Input) {
			in.Condition, in.Tie = calc.TiedToSlab, calc.Tie{SlabThickness: 4, SlabLength: 288}
		},
		func(in *calc.Input) {
			in.Condition, in.Tie = calc.TiedToSlab, calc.Tie{SlabThickness: 4, Before: calc.Rakers, Anchor: calc.OppositeWall}
		},
		func(in *calc.Input) {
			in.Condition, in.Tie = calc.TiedToSlab, calc.Tie{SlabThickness: 4, Anchor: calc.TieStrength}
		},
		func(in *calc.Input) { in.Condition = calc.SoilBothSides },
		func(in *calc.Input) { in.Condition, in.TopHeld = calc.SoilBothSides, true },
	}
	for _, hold := range holds {
		for i, one := range changes {
			for j, two := range changes[:i+1] {
				if j > 0 && (i+j)%3 != 0 {
					continue // every change by itself, and a third of the pairs
				}
				in := base
				hold(&in)
				one(&in)
				two(&in)
				out = append(out, in)
			}
		}
	}
	return out
}

// Whatever the calculation says of many walls has its words, with nothing left
// open in a sentence.
func TestAnswersHaveWords(t *testing.T) {
	said := map[string]bool{}
	complain := func(id, text string) {
		if (text == "" || strings.ContainsAny(text, "{}")) && !said[id] {
			said[id] = true
			t.Errorf("%s says %q", id, text)
		}
	}
	has := func(id string) {
		if !us.Has(id) && !said[id] {
			said[id] = true
			t.Errorf("no word for %q", id)
		}
	}
	answers := 0
	for _, in := range walls() {
		r, err := calc.Design(in)
		if err != nil {
			continue
		}
		answers++
		s := us.For(in.Condition)
		notes := append(append(append(append(append([]calc.Note(nil), r.Assumptions...), r.Warnings...), r.Engineer...), r.Cautions...), r.Today.Because...)
		notes = append(notes, r.Table.Reasons...)
		for _, st := range r.Stages {
			has("stage." + string(st.Name))
			for _, p := range st.Pushes {
				notes = append(notes, p.Basis)
			}
		}
		for _, c := range r.Checks {
			has("name." + c.ID)
			has("ask." + c.ID)
			complain(c.ID, s.CheckName(c))
			complain(c.ID, s.CheckQuestion(c))
			if c.State == calc.Fails {
				complain(c.ID+" failing", s.Shortfall(c))
			}
			for _, n := range []*calc.Note{c.Because, c.Needs} {
				if n != nil {
					notes = append(notes, *n)
				}
			}
		}
		for _, n := range notes {
			has("note." + n.ID)
			complain("note."+n.ID, s.Note(n))
			if strings.HasPrefix(n.ID, "today-check-") || strings.HasSuffix(n.ID, "-governed") {
				has("name." + n.Text)
			}
		}
		for _, governs := range []string{r.Today.Governs} {
			if governs != "" {
				has("name." + governs)
			}
		}
		for _, l := range r.Chart {
			if l.Governs != "" {
				has("name." + l.Governs)
			}
		}
		for _, b := range r.Bars {
			has("role." + string(b.Role))
		}
		finished, today := s.Headline(r)
		complain("headline", finished.Title)
		complain("headline today", today.Title)
		if r.Verdict != calc.Holds && finished.State == calc.Holds {
			t.Errorf("%v is said to hold: %+v", r.Verdict, finished)
		}
	}
	if answers < 1000 {
		t.Errorf("only %d walls were answered", answers)
	}
}
