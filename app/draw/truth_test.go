package draw

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// braced is an 8 ft wall of 8 in, 7 ft of fill at 45 pcf, held by a floor and
// a slab. By hand (simple span, triangular load): foot 780.9 lb/ft, top
// 321.6 lb/ft, 1132.0 lb-ft/ft at 3.220 ft; factored by 1.6. Plain φMn of
// 3000 psi: 0.6·5·√3000·128 in³/ft = 1752.7 lb-ft/ft. No. 4 at 18 in with
// 0.75 in of cover: d = 7.0 in, φMn = 4121.6 lb-ft/ft.
func braced() calc.Input {
	return calc.Input{Height: 8 * ft, Thickness: 8 * in, GradeA: 7 * ft, Rulebook: calc.Engineered,
		Foot:     calc.Foot{Held: calc.SlabTight, SlabThickness: 4 * in},
		Soil:     calc.Soil{Basis: calc.SoilFluid, Fluid: 45 * units.PCF},
		Material: calc.Material{Fc: 3000 * units.PSI, Fy: 60 * units.KSI, CoverA: 1.5 * in, CoverB: 0.75 * in}}
}

// free is a 6 ft wall under 6 ft of fill at 30 pcf. By hand: 1080 lb-ft/ft at
// the joint, tension on the soil side, 1728 factored.
func free() calc.Input {
	w := wall(calc.FreeTop, 6*ft, 8*in, 4*ft, 0)
	w.Soil.Fluid = 30 * units.PCF
	w.Footing.Toe = 1 * ft
	return w
}

func picked(t *testing.T, w calc.Input, o Options) (Picture, frame) {
	t.Helper()
	r := design(t, w)
	if o.Width == 0 {
		o.Width, o.Height = 390, 360
	}
	p := newPicture(&r, o)
	return Section(r, o), p.frame
}

// attrs reads the number attributes of the first element of that class.
func attrs(t *testing.T, svg, class string, names ...string) []float64 {
	t.Helper()
	tag := regexp.MustCompile(`<[a-z]+ class="` + class + `"[^>]*>`).FindString(svg)
	if tag == "" {
		t.Fatalf("no %q in the picture", class)
	}
	out := make([]float64, len(names))
	for i, n := range names {
		m := regexp.MustCompile(` ` + n + `="(-?[0-9.]+)"`).FindStringSubmatch(tag)
		if m == nil {
			t.Fatalf("no %s in %s", n, tag)
		}
		out[i], _ = strconv.ParseFloat(m[1], 64)
	}
	return out
}

// numbers reads all numbers of the d of the first path of that class.
func numbers(t *testing.T, svg, class string) []float64 {
	t.Helper()
	m := regexp.MustCompile(`class="` + class + `" d="([^"]*)"`).FindStringSubmatch(svg)
	if m == nil {
		t.Fatalf("no path %q in the picture", class)
	}
	var out []float64
	for _, n := range regexp.MustCompile(`-?[0-9.]+`).FindAllString(m[1], -1) {
		v, _ := strconv.ParseFloat(n, 64)
		out = append(out, v)
	}
	return out
}

func near(a, b, tol float64) bool { return math.Abs(a-b) <= tol }

const rounding = 0.11 // pixels: coordinates have one decimal

func TestWallIsTrueToScale(t *testing.T) {
	p, f := picked(t, free(), Options{})
	s := f.window.Scale
	rects := regexp.MustCompile(`class="p-concrete" x="([0-9.]+)" y="([0-9.]+)" width="([0-9.]+)" height="([0-9.]+)"`).FindAllStringSubmatch(p.SVG, -1)
	if len(rects) != 2 {
		t.Fatalf("%d pieces of concrete, want footing and wall", len(rects))
	}
	for i, want := range [][2]float64{{48, 12}, {8, 72}} {
		w, _ := strconv.ParseFloat(rects[i][3], 64)
		h, _ := strconv.ParseFloat(rects[i][4], 64)
		if !near(w, want[0]*s, rounding) || !near(h, want[1]*s, rounding) {
			t.Errorf("piece %d is %v × %v px, want %v × %v in at %v px/in", i, w, h, want[0], want[1], s)
		}
	}
}

func TestCurveAndBandsShareOneScale(t *testing.T) {
	p, f := picked(t, braced(), Options{})
	peak := attrs(t, p.SVG, "p-peak", "cx", "cy")
	plain := numbers(t, p.SVG, "p-edge p-plain")[0]
	bars := numbers(t, p.SVG, "p-edge p-steel")[2]
	demand := peak[0] - f.faceB()
	if demand <= 0 {
		t.Fatalf("the curve of a braced wall lies on the soil side")
	}
	if got, want := demand/(plain-f.faceB()), 1.6*1132.0/1752.7; !near(got, want, 0.01) {
		t.Errorf("peak/plain = %.3f, want %.3f (hand)", got, want)
	}
	if got, want := demand/(bars-f.faceB()), 1.6*1132.0/4121.6; !near(got, want, 0.01) {
		t.Errorf("peak/with bars = %.3f, want %.3f (hand)", got, want)
	}
	if want := f.y(3.220 * 12); !near(peak[1], want, 0.2) {
		t.Errorf("peak at y = %v, want %v (3.220 ft, hand)", peak[1], want)
	}
}

// The curve is drawn by cubic pieces that must be the cubic of the textbook:
// M(y) = Rf y − γ (7 y²/2 − y³/6) below the ground.
func TestCurveIsExact(t *testing.T) {
	p, f := picked(t, braced(), Options{Width: 640, Height: 560})
	n := numbers(t, p.SVG, "p-curve")
	moment := func(y float64) float64 { // y in feet
		if y > 7 {
			return 1.6 * 321.5625 * (8 - y)
		}
		return 1.6 * (780.9375*y - 45*(7*y*y/2-y*y*y/6))
	}
	k := f.window.Curve
	checked := 0
	x0, y0 := n[2], n[3]
	for i := 4; i+5 < len(n); i += 6 {
		for _, u := range []float64{0.25, 0.5, 0.75, 1} {
			v := 1 - u
			x := v*v*v*x0 + 3*v*v*u*n[i] + 3*v*u*u*n[i+2] + u*u*u*n[i+4]
			y := v*v*v*y0 + 3*v*v*u*n[i+1] + 3*v*u*u*n[i+3] + u*u*u*n[i+5]
			h := (f.y(0) - y) / f.window.Scale / 12
			if want := f.faceB() + k*moment(h); !near(x, want, 0.3) {
				t.Errorf("curve at %.2f ft: x = %.1f, want %.1f", h, x, want)
			}
			checked++
		}
		x0, y0 = n[i+4], n[i+5]
	}
	if checked < 8 {
		t.Errorf("only %d points of the curve were checked", checked)
	}
}

func TestCurveLiesOnTheTensionSide(t *testing.T) {
	p, f := picked(t, free(), Options{})
	peak := attrs(t, p.SVG, "p-peak", "cx", "cy")
	if peak[0] >= f.faceA() {
		t.Errorf("the curve of a free wall lies on the open side: %v, face A %v", peak[0], f.faceA())
	}
	if !near(peak[1], f.y(0), rounding) {
		t.Errorf("a free wall bends most at its foot, not at y = %v", peak[1])
	}
	if strings.Contains(p.SVG, "p-band p-plain") {
		t.Error("a free wall shows a strength of plain concrete: it has none (ACI 318-19 14.2.2.2)")
	}
}

func TestBarsLieOnTheirFace(t *testing.T) {
	p, f := picked(t, braced(), Options{})
	if x := numbers(t, p.SVG, "p-bar")[0]; !near(x, f.x(7.0), rounding) {
		t.Errorf("verticals at %v, want d = 7.0 in from the soil side: %v", x, f.x(7.0))
	}
	w := braced()
	w.Vertical = calc.Bars{Fixed: true, Size: 4, Spacing: 18 * in, Face: calc.FaceA}
	p, f = picked(t, w, Options{})
	if x := numbers(t, p.SVG, "p-bar")[0]; !near(x, f.x(1.75), rounding) {
		t.Errorf("verticals on the soil side at %v, want 1.5 in + half a bar from it: %v", x, f.x(1.75))
	}
	if !strings.Contains(p.SVG, `class="p-over"`) {
		t.Error("verticals on the wrong face: what reaches beyond their strength is not marked")
	}
}

func TestOverrunIsMarkedOnlyWhereItIs(t *testing.T) {
	p, _ := picked(t, braced(), Options{})
	if strings.Contains(p.SVG, `class="p-over"`) {
		t.Error("a wall that holds shows an overrun")
	}
}
