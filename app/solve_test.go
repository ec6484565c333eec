package main

import (
	"bytes"
	"encoding/json"
	"io"
	"strings"
	"testing"

	"standingbeam/app/wallfile"
)

const examples = "../testdata/walls/"

func solve(args []string, stdin string) (code int, out, faults string) {
	var stdout, stderr bytes.Buffer
	code = runSolve(args, strings.NewReader(stdin), &stdout, &stderr)
	return code, stdout.String(), stderr.String()
}

const goodWall = `{"format":1,"walls":[{"name":"w","condition":"braced top","height":"8 ft","thickness":"8 in","grade":{"a":"7 ft"},"soil":{"equivalent fluid":"45 pcf"},"concrete":"3000 psi","steel":"60 ksi"}]}`

func TestSolveStatus(t *testing.T) {
	bad := strings.NewReplacer(`"8 ft"`, `"25 ft"`, `"8 in"`, `8`).Replace(goodWall)
	for _, test := range []struct {
		name, stdin string
		args        []string
		code, lines int // lines on standard error
	}{
		{"no file", "", nil, 2, 1}, {"unknown option", "", []string{"-fast", "x"}, 2, 1}, {"unknown units", "", []string{"-units", "cubits", "x"}, 2, 1},
		{"units of nothing", "", []string{"-units"}, 2, 1}, {"options only", "", []string{"-json"}, 2, 1},
		{"file that is not there", "", []string{examples + "none.json"}, 1, 1}, {"folder", "", []string{examples}, 1, 1},
		{"standard input", goodWall, []string{"-"}, 0, 0}, {"metric JSON", goodWall, []string{"-json", "-units", "metric", "-"}, 0, 0},
		{"a language that is not there", "", []string{"-language", "xx", "-"}, 2, 1}, {"Spanish", goodWall, []string{"-language", "es", "-"}, 0, 0},
		{"several files", goodWall, []string{examples + "four.json", "-", examples + "free.json"}, 0, 0},
		{"walls with failing checks", "", []string{examples + "four.json"}, 0, 0},
		{"two faults", bad, []string{"-"}, 1, 2}, {"one bad file of two", bad, []string{examples + "four.json", "-"}, 1, 2}, {"empty", "", []string{"-"}, 1, 1},
	} {
		code, out, faults := solve(test.args, test.stdin)
		if code != test.code || strings.Count(faults, "\n") != test.lines {
			t.Errorf("%s: status %d, %q", test.name, code, faults)
		}
		if (out != "") != (code == 0) {
			t.Errorf("%s: status %d with %d bytes of output", test.name, code, len(out))
		}
	}
}

// A fault names file, wall, field and the permitted range with its unit.
func TestSolveFaults(t *testing.T) {
	_, _, faults := solve([]string{"-"}, strings.Replace(goodWall, `"8 ft"`, `"25 ft"`, 1))
	if want := "-: w: height: 25 ft 0 in is not between 2 ft 0 in and 20 ft 0 in.\n"; faults != want {
		t.Errorf("got %q, want %q", faults, want)
	}
	_, _, faults = solve([]string{"-units", "metric", "-"}, strings.Replace(goodWall, `"8 in"`, `"1 in"`, 1))
	if want := "-: w: thickness: 25 mm is not between 140 mm and 609 mm.\n"; faults != want {
		t.Errorf("got %q, want %q", faults, want)
	}
}

func TestSolveJSON(t *testing.T) {
	for _, name := range []string{"four.json", "braced.json", "free.json", "tied.json", "both.json"} {
		code, out, faults := solve([]string{"-json", examples + name}, "")
		var file struct {
			Format int
			Walls  []struct{ Name, Verdict, Headline string }
		}
		if err := json.Unmarshal([]byte(out), &file); err != nil || code != 0 {
			t.Fatalf("%s: status %d, %v, %s", name, code, err, faults)
		}
		for _, w := range file.Walls {
			if w.Name == "" || w.Headline == "" || w.Verdict == "" || file.Format != wallfile.Format {
				t.Errorf("%s: %+v", name, w)
			}
		}
		if _, again, _ := solve([]string{"-json", examples + name}, ""); again != out {
			t.Errorf("%s: two runs differ", name)
		}
	}
}

// Whatever the file, the command ends with a status and without a panic.
func FuzzSolve(f *testing.F) {
	f.Add(goodWall)
	f.Add(strings.Replace(goodWall, `"7 ft"`, `"0 ft"`, 1))
	f.Fuzz(func(t *testing.T, text string) {
		code, out, faults := solve([]string{"-json", "-"}, text)
		switch {
		case code == 0 && (!json.Valid([]byte(out)) || faults != ""):
			t.Fatalf("%q: %q", out, faults)
		case code == 1 && (out != "" || faults == ""):
			t.Fatalf("refused with %q, %q", out, faults)
		}
	})
}

// Ten thousand walls from their file to their JSON.
func BenchmarkSolve10000(b *testing.B) {
	wall := goodWall[strings.Index(goodWall, `{"name"`):strings.LastIndex(goodWall, "]")]
	text := `{"format":1,"walls":[` + strings.Repeat(wall+",", 9999) + wall + "]}"
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		if code := runSolve([]string{"-json", "-"}, strings.NewReader(text), io.Discard, io.Discard); code != 0 {
			b.Fatal(code)
		}
	}
}
