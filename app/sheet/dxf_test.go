package sheet

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
)

// pair is a line with a number and what it says.
type pair struct {
	code  int
	value string
}

// entity is what stands between two pairs of code 0, without its layer's and
// its own name.
type entity struct {
	kind, layer string
	pairs       []pair
}

func (e entity) number(t *testing.T, code int) float64 {
	t.Helper()
	for _, p := range e.pairs {
		if p.code == code {
			v, err := strconv.ParseFloat(p.value, 64)
			if err != nil {
				t.Fatal(err)
			}
			return v
		}
	}
	t.Fatalf("%s has no %d", e.kind, code)
	return 0
}

// readDXF reads a file as the reference of the format describes it, and fails
// where that is not what it finds.
func readDXF(t *testing.T, file string) (layerList []string, all []entity) {
	t.Helper()
	lines := strings.Split(strings.TrimSuffix(file, "\n"), "\n")
	if len(lines)%2 != 0 {
		t.Fatalf("%d lines are no pairs", len(lines))
	}
	section := ""
	var last *entity
	for i := 0; i < len(lines); i += 2 {
		code, err := strconv.Atoi(lines[i])
		if err != nil {
			t.Fatalf("line %d: %q is no code", i+1, lines[i])
		}
		p := pair{code, lines[i+1]}
		checkPair(t, p)
		switch {
		case p.code == 0 && p.value == "SECTION", p.code == 0 && p.value == "ENDSEC":
			section, last = "", nil
		case p.code == 2 && section == "":
			section = p.value
		case p.code == 0 && section == "ENTITIES":
			all = append(all, entity{kind: p.value})
			last = &all[len(all)-1]
		case last != nil && p.code == 8:
			last.layer = p.value
		case last != nil:
			last.pairs = append(last.pairs, p)
		case section == "TABLES" && p.code == 2 && strings.ToUpper(p.value) == p.value:
			layerList = append(layerList, p.value)
		}
	}
	if got := lines[len(lines)-2:]; strings.TrimSpace(got[0]) != "0" || got[1] != "EOF" {
		t.Errorf("the file ends with %q", got)
	}
	return layerList, all
}

// checkPair holds a pair to the kind of value that its code stands for.
func checkPair(t *testing.T, p pair) {
	t.Helper()
	switch {
	case p.code >= 10 && p.code < 60:
		if v, err := strconv.ParseFloat(p.value, 64); err != nil || math.IsNaN(v) || math.IsInf(v, 0) {
			t.Errorf("code %d says %q", p.code, p.value)
		}
	case p.code >= 60 && p.code < 80:
		if _, err := strconv.Atoi(p.value); err != nil {
			t.Errorf("code %d says %q", p.code, p.value)
		}
	}
	for _, r := range p.value {
		if r < ' ' || r > '~' {
			t.Errorf("code %d holds %q", p.code, p.value)
			return
		}
	}
}

// corners collects the corners of the polylines of a layer.
func corners(t *testing.T, all []entity, layer string) (out [][]point) {
	t.Helper()
	for i, e := range all {
		if e.kind != "POLYLINE" || e.layer != layer {
			continue
		}
		var line []point
		for _, v := range all[i+1:] {
			if v.kind != "VERTEX" {
				break
			}
			line = append(line, point{v.number(t, 10), v.number(t, 20)})
		}
		out = append(out, line)
	}
	return out
}

// has reports whether a rectangle is among closed lines.
func has(lines [][]point, x0, y0, x1, y1 float64) bool {
	for _, l := range lines {
		if len(l) != 4 {
			continue
		}
		b := box{l[0].x, l[0].y, l[0].x, l[0].y}
		for _, p := range l {
			b = b.join(box{p.x, p.y, p.x, p.y})
		}
		if math.Abs(b.x0-x0)+math.Abs(b.y0-y0)+math.Abs(b.x1-x1)+math.Abs(b.y1-y1) < 1e-4 {
			return true
		}
	}
	return false
}

// The file holds the wall and its footing in the size that was typed, each bar
// with its diameter (ASTM A615: No. n is n eighths of an inch thick up to No.
// 8), and says every set of bars.
func TestDXF(t *testing.T) {
	eachPaper(t, func(t *testing.T, r calc.Result, o Options) {
		unit := 1.0
		if o.Speaker.System == words.Metric {
			unit = 25.4
		}
		known, all := readDXF(t, DXF(r, o))
		rects := corners(t, all, "CONCRETE")
		w := r.Input
		high, thick := w.Height.Inches()*unit, w.Thickness.Inches()*unit
		if !has(rects, 0, 0, thick, high) {
			t.Error("the wall is not there in its size")
		}
		if f := w.Footing; f.Given {
			right := (w.Thickness + f.Toe).Inches() * unit
			if !has(rects, right-f.Width.Inches()*unit, -f.Thickness.Inches()*unit, right, 0) {
				t.Error("the footing is not there in its size")
			}
		}
		text := ""
		widths := map[string]int{}
		for _, e := range all {
			if !strings.Contains(" "+strings.Join(known, " ")+" ", " "+e.layer+" ") {
				t.Fatalf("%s lies on %q, which is no layer", e.kind, e.layer)
			}
			switch {
			case e.kind == "TEXT":
				for _, p := range e.pairs {
					if p.code == 1 {
						text += p.value + "\n"
					}
				}
			case e.kind == "POLYLINE" && e.layer == "STEEL":
				widths[fmt.Sprintf("%.4f", e.number(t, 40)/unit)]++
			case e.kind == "CIRCLE" && e.layer == "STEEL":
				widths[fmt.Sprintf("%.4f", 2*e.number(t, 40)/unit)]++
			}
		}
		for _, b := range r.Bars {
			if n := fmt.Sprintf("%.4f", float64(b.Size)/8); widths[n] == 0 {
				t.Errorf("no bar of No. %d: %v", b.Size, widths)
			}
			if said := string(b.Role) + ": " + dxfText(o.Speaker.Bars(b)); !strings.Contains(strings.ReplaceAll(text, "\n", " "), said) {
				t.Errorf("the file does not say %q", said)
			}
		}
	})
}

// An arc is the arc that its bulge stands for: a quarter circle to the left
// from (1, 0) to (0, 1) about the origin.
func TestArc(t *testing.T) {
	for _, test := range []struct {
		from, to       vertex
		x, y, r        float64
		begins, finish float64
	}{
		{vertex{point{1, 0}, quarter}, vertex{point: point{0, 1}}, 0, 0, 1, 0, 90},
		{vertex{point{0, 1}, -quarter}, vertex{point: point{1, 0}}, 0, 0, 1, 0, 90},
		{vertex{point{3, 2}, 1}, vertex{point: point{1, 2}}, 2, 2, 1, 0, 180}, // half a circle
	} {
		w := &dxfWriter{unit: 1, v: &figure{scale: 1}}
		w.path(path{layer: steel, points: []vertex{test.from, test.to}})
		_, all := readDXF(t, "0\nSECTION\n2\nENTITIES\n"+w.String()+"0\nENDSEC\n0\nEOF\n")
		for code, want := range map[int]float64{10: test.x, 20: test.y, 40: test.r, 50: test.begins, 51: test.finish} {
			if got := all[0].number(t, code); math.Abs(got-want) > 1e-6 {
				t.Errorf("%v: code %d is %v, want %v", test.from, code, got, want)
			}
		}
	}
}

// What is typed can never add a line to the file.
func FuzzDXF(f *testing.F) {
	for _, s := range []string{"", "Mill Lane", "a\n0\nEOF", "100 %%c ½ — ü 壁 \x00\r", "\u202e\u2028", strings.Repeat("x", 300)} {
		f.Add(s, s)
	}
	r := answered(f, wall(calc.BracedTop))
	f.Fuzz(func(t *testing.T, job, name string) {
		r.Input.Name = name
		file := DXF(r, Options{Job: job, Person: name, Date: job})
		if _, all := readDXF(t, file); len(all) < 100 {
			t.Errorf("only %d entities", len(all))
		}
	})
}
