// Package reference reads the published values that the tests of calc are held
// against, from testdata/reference. It serves tests only.
package reference

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// Row is one line of a file of values, read by the names of its heading. A
// fault in the file ends the test.
type Row struct {
	t     testing.TB
	file  string
	line  int
	cells map[string]string
}

// Rows reads a file below testdata/reference. Its first lines start with # and
// name the source; the next is the heading.
func Rows(t testing.TB, file string) []Row {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(root(t), filepath.FromSlash(file)))
	if err != nil {
		t.Fatal(err)
	}
	if !strings.HasPrefix(string(text), "# source: ") {
		t.Fatalf("%s names no source", file)
	}
	r := csv.NewReader(strings.NewReader(string(text)))
	r.Comment = '#'
	records, err := r.ReadAll()
	if err != nil || len(records) < 2 {
		t.Fatalf("%s: %d lines, %v", file, len(records), err)
	}
	var rows []Row
	for i, record := range records[1:] {
		row := Row{t, file, i + 1, map[string]string{}}
		for j, name := range records[0] {
			row.cells[name] = record[j]
		}
		rows = append(rows, row)
	}
	return rows
}

// root finds testdata/reference above the package under test.
func root(t testing.TB) string {
	t.Helper()
	path := filepath.Join("testdata", "reference")
	for range 8 {
		if info, err := os.Stat(path); err == nil && info.IsDir() {
			return path
		}
		path = filepath.Join("..", path)
	}
	t.Fatal("testdata/reference is not above this package")
	return ""
}

// Text returns a cell as printed.
func (r Row) Text(name string) string {
	r.t.Helper()
	text, ok := r.cells[name]
	if !ok {
		r.t.Fatalf("%s has no column %q", r.file, name)
	}
	return text
}

// Number returns a cell as a number.
func (r Row) Number(name string) float64 {
	r.t.Helper()
	v, err := strconv.ParseFloat(r.Text(name), 64)
	if err != nil {
		r.t.Fatalf("%s, row %d: %v", r.file, r.line, err)
	}
	return v
}

// Int returns a cell as a whole number.
func (r Row) Int(name string) int {
	r.t.Helper()
	v, err := strconv.Atoi(r.Text(name))
	if err != nil {
		r.t.Fatalf("%s, row %d: %v", r.file, r.line, err)
	}
	return v
}

// HalfDigit returns half a unit of the last digit printed in a cell, the
// tolerance of a value rounded to it, and a hair for the rounding of the sum.
func (r Row) HalfDigit(name string) float64 {
	half := 0.5
	if _, decimals, ok := strings.Cut(r.Text(name), "."); ok {
		for range decimals {
			half /= 10
		}
	}
	return half * (1 + 1e-9)
}

// Near holds got against a cell, within half its last digit.
func (r Row) Near(name string, got float64) {
	r.t.Helper()
	r.Within(name, got, r.HalfDigit(name))
}

// Within holds got against a cell, within tol.
func (r Row) Within(name string, got, tol float64) {
	r.t.Helper()
	want := r.Number(name)
	if !(got >= want-tol && got <= want+tol) {
		r.t.Errorf("%s, row %d: %s = %v, want %s", r.file, r.line, name, got, r.Text(name))
	}
}
