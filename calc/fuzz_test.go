package calc_test

import (
	"encoding/binary"
	"errors"
	"math"
	"reflect"
	"testing"

	"standingbeam/calc"
)

// fillFrom sets every field of v, however deep, from the bytes: numbers from
// eight of them, so that NaN and infinities come too, the rest from one.
func fillFrom(v reflect.Value, data []byte) []byte {
	take := func(n int) []byte {
		b := make([]byte, n)
		copy(b, data)
		data = data[min(n, len(data)):]
		return b
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			data = fillFrom(v.Field(i), data)
		}
	case reflect.Float64:
		v.SetFloat(math.Float64frombits(binary.LittleEndian.Uint64(take(8))))
	case reflect.Bool:
		v.SetBool(take(1)[0]&1 == 1)
	case reflect.Uint8:
		v.SetUint(uint64(take(1)[0]))
	case reflect.Int:
		v.SetInt(int64(int8(take(1)[0])))
	case reflect.String:
		v.SetString(string(take(int(take(1)[0] % 6))))
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), int(take(1)[0]%4), 4))
		for i := range v.Len() {
			data = fillFrom(v.Index(i), data)
		}
	}
	return data
}

// bytesOf writes what fillFrom reads.
func bytesOf(v reflect.Value) (out []byte) {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			out = append(out, bytesOf(v.Field(i))...)
		}
	case reflect.Float64:
		out = binary.LittleEndian.AppendUint64(nil, math.Float64bits(v.Float()))
	case reflect.Bool:
		if v.Bool() {
			return []byte{1}
		}
		return []byte{0}
	case reflect.Uint8:
		out = []byte{byte(v.Uint())}
	case reflect.Int:
		out = []byte{byte(v.Int())}
	case reflect.String:
		s := v.String()[:min(5, len(v.String()))]
		out = append([]byte{byte(len(s))}, s...)
	case reflect.Slice:
		out = []byte{byte(v.Len())}
		for i := range v.Len() {
			out = append(out, bytesOf(v.Index(i))...)
		}
	}
	return out
}

// seeds are walls of every condition, and one number of each after the other
// replaced by what is none, too great or beside its range.
func seeds() (out []calc.Input) {
	r := seeded(13)
	for range 40 {
		out = append(out, r.wall())
	}
	for _, base := range []calc.Input{tenInch(9*ft, 45*pcf), freeWall(), tiedWall(), bothWall()} {
		for _, odd := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), -1, 0, 1e-300, 1e300} {
			var put func(v reflect.Value, whole calc.Input, root reflect.Value)
			put = func(v reflect.Value, whole calc.Input, root reflect.Value) {
				switch v.Kind() {
				case reflect.Struct:
					for i := range v.NumField() {
						put(v.Field(i), whole, root)
					}
				case reflect.Float64:
					old := v.Float()
					v.SetFloat(odd)
					out = append(out, root.Interface().(calc.Input))
					v.SetFloat(old)
				}
			}
			root := reflect.New(reflect.TypeFor[calc.Input]()).Elem()
			root.Set(reflect.ValueOf(base))
			put(root, base, root)
		}
	}
	return out
}

// FuzzDesign holds that any input gets an answer of numbers, or errors that
// name their field, and never a panic.
func FuzzDesign(f *testing.F) {
	for _, in := range seeds() {
		f.Add(bytesOf(reflect.ValueOf(in)))
	}
	f.Add([]byte{})
	f.Fuzz(func(t *testing.T, data []byte) {
		var in calc.Input
		fillFrom(reflect.ValueOf(&in).Elem(), data)
		r, err := calc.Design(in)
		if err != nil {
			holdErrors(t, err)
			if len(r.Checks)+len(r.Bars)+len(r.Stages) > 0 {
				t.Error("a refused wall gets an answer")
			}
			return
		}
		r.Input = calc.Input{} // what is not read is not asked to be a number
		if path := notANumber(reflect.ValueOf(r), "result"); path != "" {
			t.Errorf("%s is no number\n%+v", path, in)
		}
		if !decides(r) && !r.Stopped {
			t.Errorf("an answer without one deciding check\n%+v", in)
		}
	})
}

// holdErrors asks that every joined error is a RangeError of a named field,
// with a text, and that its limits, where it has any, are numbers in order.
func holdErrors(t *testing.T, err error) {
	t.Helper()
	joined, ok := err.(interface{ Unwrap() []error })
	if !ok {
		t.Fatalf("%T is not a list of errors", err)
	}
	for _, e := range joined.Unwrap() {
		var r *calc.RangeError
		switch {
		case !errors.As(e, &r):
			t.Errorf("%v is no RangeError", e)
		case r.Field == "" || r.ID == "" || r.Error() == "":
			t.Errorf("%+v names no field or message", r)
		case !(r.Min.Base <= r.Max.Base) || math.IsInf(r.Min.Base, 0) || math.IsInf(r.Max.Base, 0):
			t.Errorf("%s: limits %v to %v", r.Field, r.Min, r.Max)
		}
	}
}
