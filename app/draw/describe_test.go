package draw

import (
	"strings"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

func TestPictureIsSaidInWords(t *testing.T) {
	p := Section(design(t, braced()), Options{Width: 390, Height: 360})
	for _, want := range []string{"held by the floor", "8 ft 0 in", "7 ft 0 in", "1,812 lb·ft/ft", "open side", "1,752 lb·ft/ft", "4,121 lb·ft/ft", "No. 4 at 18 in"} {
		if !strings.Contains(p.Desc, want) {
			t.Errorf("the text lacks %q: %s", want, p.Desc)
		}
	}
}

// By hand: at 4 ft the push is 45·3 = 135 psf, the factored shear
// 1.6·(780.9 − 45·(7·4 − 8)) = −190.5 lb/ft, the moment
// 1.6·(780.9·4 − 45·(7·8 − 64/6)) = 1734 lb-ft/ft.
func TestTableOfValues(t *testing.T) {
	p := Section(design(t, braced()), Options{Width: 390, Height: 360})
	want := []string{"4 ft 0 in", "135", "191", "1,734", "open side"}
	for _, row := range p.Rows {
		if len(row) != len(p.Head) {
			t.Fatalf("row %v under head %v", row, p.Head)
		}
		if row[0] == want[0] {
			for i := range want {
				if row[i] != want[i] {
					t.Errorf("%s: %q, want %q", p.Head[i], row[i], want[i])
				}
			}
			return
		}
	}
	t.Errorf("no row for 4 ft among %d", len(p.Rows))
}

func TestEveryWordIsThere(t *testing.T) {
	grid(func(name string, w calc.Input) {
		if w.Height > 6*ft || w.Footing.Width > 4*ft {
			return
		}
		r := design(t, w)
		for _, s := range []words.System{words.US, words.Metric} {
			p := Section(r, Options{Width: 390, Height: 360, Speaker: words.Speaker{System: s}})
			all := p.Title + p.Desc + strings.Join(p.Head, "")
			for _, row := range p.Rows {
				all += strings.Join(row, "")
			}
			for _, h := range p.Handles {
				all += h.Name + h.Value
			}
			if strings.Contains(all, "picture.") || strings.Contains(all, "{") {
				t.Errorf("%s: a word is missing: %s", name, all)
			}
		}
	})
}

func TestNoNumbersForGroundThatSwells(t *testing.T) {
	w := free()
	w.Soil = calc.Soil{Basis: calc.SoilUnknown, Swells: calc.Yes}
	p := Section(design(t, w), Options{Width: 390, Height: 360})
	checkPicture(t, "swelling ground", p, 390, 360)
	if strings.Contains(p.SVG, "psf") || len(p.Rows) > 0 {
		t.Error("the picture offers numbers for ground that swells")
	}
}

func TestCardsDiffer(t *testing.T) {
	seen := map[string]calc.Condition{}
	for c := range calc.Condition(4) {
		svg := Card(c)
		sound(t, "card", svg)
		if strings.Contains(svg, " id=") {
			t.Errorf("card %d carries an id: four cards stand on one page", c)
		}
		if other, ok := seen[svg]; ok {
			t.Errorf("cards %d and %d are the same", c, other)
		}
		seen[svg] = c
	}
}

// Opposing soil is drawn on both sides, and the difference as the figure that
// counts: (7 − 3) ft · 45 pcf = 180 psf over the lowest 3 ft (hand).
func TestNetPush(t *testing.T) {
	w := wall(calc.SoilBothSides, 8*ft, 8*in, 3*ft, 0.5)
	w.GradeA, w.GradeB = 7*ft, 3*ft
	p := Section(design(t, w), Options{Width: 390, Height: 360})
	for _, want := range []string{"p-push p-faint", "p-push p-net", "net 180 psf"} {
		if !strings.Contains(p.SVG, want) {
			t.Errorf("no %q in the picture", want)
		}
	}
	if h := handle(t, p, "grade.b"); h.Max != w.GradeA || h.Now != 3*units.Foot {
		t.Errorf("grade.b: %+v", h)
	}
}

// The tied wall shows the drag of its slab, the broken slab and the stage
// before it; its foot takes more than its tie.
func TestTiedWall(t *testing.T) {
	w := wall(calc.TiedToSlab, 8*ft, 8*in, 3*ft, 0.4)
	p := Section(design(t, w), Options{Width: 390, Height: 360})
	for _, want := range []string{`class="p-drag"`, `class="p-wedge"`, `class="p-inset"`, "p-hold p-heavy", "tie pulls 480 lb/ft", "footing holds 960 lb/ft"} {
		if !strings.Contains(p.SVG, want) {
			t.Errorf("no %q in the picture", want)
		}
	}
}
