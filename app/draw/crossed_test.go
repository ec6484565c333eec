package draw

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"standingbeam/calc"
)

// flat finds the level lines that part one thing from another: the ends of the
// band of the bars, and the edges of the floor.
var flat = regexp.MustCompile(`class="p-edge p-steel" d="M([\d.]+) ([\d.]+)L([\d.]+) [\d.]+L[\d.]+ ([\d.]+)`)
var wood = regexp.MustCompile(`class="p-wood" x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)"`)

// crossed lists the labels whose letters a level line runs through.
func crossed(p Picture) (out []string) {
	through := func(x0, x1, y float64) {
		x0, x1 = min(x0, x1), max(x0, x1)
		for _, b := range p.Boxes {
			// The letters begin a few pixels below the top of their line.
			if b.X+b.W > x0+3 && b.X < x1-3 && y > b.Y+5 && y < b.Y+b.H-4 {
				out = append(out, b.Text)
			}
		}
	}
	read := func(m []string) (v [4]float64) {
		for i := range v {
			v[i], _ = strconv.ParseFloat(m[i+1], 64)
		}
		return v
	}
	for _, m := range flat.FindAllStringSubmatch(p.SVG, -1) {
		v := read(m)
		through(v[0], v[2], v[1])
		through(v[0], v[2], v[3])
	}
	for _, m := range wood.FindAllStringSubmatch(p.SVG, -1) {
		v := read(m)
		through(v[0], v[0]+v[2], v[1])
		through(v[0], v[0]+v[2], v[1]+v[3])
	}
	return out
}

// The strengths do not stand on the ends of their own bands nor on the floor's
// edge, where they could stand elsewhere; other labels seldom do.
func TestLabelsKeepOffLevelLines(t *testing.T) {
	pictures, strengths, others := 0, 0, 0
	grid(func(name string, w calc.Input) {
		r := design(t, w)
		for _, s := range sizes {
			pictures++
			for _, text := range crossed(Section(r, Options{Width: s[0], Height: s[1]})) {
				if strings.HasPrefix(text, "with bars") || strings.HasPrefix(text, "plain") {
					strengths++
				} else {
					others++
				}
			}
		}
	})
	if strengths > pictures/500 || others > pictures/12 {
		t.Errorf("of %d pictures a line runs through %d strengths and %d other labels", pictures, strengths, others)
	}
	// The wall that the page begins with, on a phone.
	w := wall(calc.BracedTop, 9*ft, 10*in, 2*ft, 0)
	w.GradeA, w.Footing.NoToe, w.Soil = 8*ft+4*in, true, calc.Soil{Basis: calc.SoilClass, Class: "SM"}
	if through := crossed(Section(design(t, w), Options{Width: 390, Height: 300})); len(through) > 0 {
		t.Errorf("a line runs through %q", through)
	}
}
