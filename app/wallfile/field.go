package wallfile

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Kind is how a field is filled in.
type Kind uint8

// Kinds of field.
const (
	Text     Kind = iota
	Choice        // one of the fixed words
	YesNo         // yes or no; true or false in the file
	Quantity      // a number with its unit
	Bar           // the size of a bar, "No. 4"
	BarList       // sizes, "No. 4, No. 5"; a list in the file
)

// FieldInfo says what a field holds.
type FieldInfo struct {
	Path       string
	Kind       Kind
	Quantity   units.Kind
	US, Metric string         // unit that is meant where none is typed
	Choices    []string       // fixed words of a Choice
	Min, Max   units.Quantity // widest permitted range; see [Wall.Range]
	Ranged     bool           // Min and Max are known
}

// field is one field: its path, what it holds, where its text is kept, and how
// a value is put into the input of the calculation.
type field struct {
	path    string
	kind    Kind
	measure units.Kind
	words   []string
	us      string // inch-pound unit that is meant, where it is not the usual one
	at      func(*Wall) *string
	number  func(*calc.Input, float64) // Quantity: base units
	pick    func(*calc.Input, int)     // Choice, YesNo: place in words; Bar: the number
}

// text makes a field of plain text.
func text(path string, at func(*Wall) *string) field { return field{path: path, at: at} }

// quantity makes a field of a quantity that is kept at to.
func quantity[T ~float64](path string, k units.Kind, at func(*Wall) *string, to func(*calc.Input) *T) field {
	return field{path: path, kind: Quantity, measure: k, at: at,
		number: func(in *calc.Input, v float64) { *to(in) = T(v) }}
}

// choice makes a field of fixed words, each of which stands for the value at
// its place.
func choice[T any](path string, at func(*Wall) *string, to func(*calc.Input) *T, words []string, values ...T) field {
	return field{path: path, kind: Choice, words: words, at: at,
		pick: func(in *calc.Input, i int) { *to(in) = values[i] }}
}

// yesNo makes a field that is true or false in the file.
func yesNo(path string, at func(*Wall) *string, to func(*calc.Input) *bool) field {
	return field{path: path, kind: YesNo, words: []string{"no", "yes"}, at: at,
		pick: func(in *calc.Input, i int) { *to(in) = i == 1 }}
}

// bar makes a field of a bar's size.
func bar(path string, at func(*Wall) *string, to func(*calc.Input) *int) field {
	return field{path: path, kind: Bar, at: at, pick: func(in *calc.Input, n int) { *to(in) = n }}
}

// find returns the field of a path.
func find(path string) (field, bool) {
	for _, f := range fields {
		if f.path == path {
			return f, true
		}
	}
	return field{}, false
}

// Fields returns every field, in the order of the file.
func Fields() []FieldInfo {
	out := make([]FieldInfo, len(fields))
	for i, f := range fields {
		out[i] = f.info()
	}
	return out
}

// Info returns the field of a path.
func Info(path string) (FieldInfo, bool) {
	f, ok := find(path)
	if !ok {
		return FieldInfo{}, false
	}
	return f.info(), true
}

func (f field) info() FieldInfo {
	i := FieldInfo{Path: f.path, Kind: f.kind, Quantity: f.measure, Choices: f.words}
	if f.kind == Quantity {
		i.US, i.Metric = f.unit(false), f.unit(true)
		i.Min, i.Max, i.Ranged = largest.Range(f.path)
	}
	return i
}

// unit is the unit that is meant where none is typed.
func (f field) unit(metric bool) string {
	switch {
	case metric:
		return f.measure.Metric().Symbol
	case f.us != "":
		return f.us
	}
	return f.measure.US().Symbol
}
