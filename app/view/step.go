package view

import (
	"math"

	"standingbeam/app/draw"
	"standingbeam/app/entry"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc/units"
)

// stepSize is by how much one press changes a field, in the two systems.
type stepSize struct {
	us, metric units.Quantity
}

// Steps land on whole multiples, so that an odd size becomes a usual one.
var stepSizes = map[string]stepSize{
	"height":                {length(4, units.Level), millimetres(100, units.Level)},
	"grade.a":               {length(4, units.Level), millimetres(100, units.Level)},
	"grade.b":               {length(4, units.Level), millimetres(100, units.Level)},
	"thickness":             {length(2, units.Size), millimetres(50, units.Size)},
	"footing.width":         {length(4, units.Size), millimetres(100, units.Size)},
	"footing.toe":           {length(2, units.Size), millimetres(50, units.Size)},
	"soil.equivalent fluid": {units.Of(5*units.PCF, units.Weight), units.Of(1*units.KNPerM3, units.Weight)},
	"soil.friction angle":   {units.Of(1*units.Degree, units.Degrees), units.Of(1*units.Degree, units.Degrees)},
}

func length(inches units.Length, k units.Kind) units.Quantity { return units.Of(inches, k) }

func millimetres(n units.Length, k units.Kind) units.Quantity {
	return units.Of(n*units.Millimetre, k)
}

// CanStep reports whether a field has steppers.
func CanStep(path string) bool {
	_, ok := stepSizes[path]
	return ok || path == soilPath
}

// StepBy presses a stepper: by is +1 or -1, or more for as many times the step.
func StepBy(w *wallfile.Wall, path string, by int, s words.Speaker) {
	if path == soilPath {
		stepSoil(w, by)
		return
	}
	size, ok := stepSizes[path]
	info, known := infoOf(path)
	if !ok || !known {
		return
	}
	step := size.us
	if s.System == words.Metric {
		step = size.metric
	}
	step.Base *= float64(by)
	n := math.Floor(valueOf(w, path, s).Base/step.Base+1e-6) + 1
	setValue(w, info, units.Quantity{Base: n * step.Base, Kind: info.Quantity}, s)
}

// stepSoil goes through the ways to know the soil, one at a time.
func stepSoil(w *wallfile.Wall, by int) {
	by = max(-1, min(by, 1))
	values := soilValues()
	now := soilValue(w)
	for i, v := range values {
		if v == now {
			setSoil(w, values[(i+by+len(values))%len(values)])
			return
		}
	}
	setSoil(w, values[0])
}

// valueOf reads a field, as nothing where it cannot be read.
func valueOf(w *wallfile.Wall, path string, s words.Speaker) units.Quantity {
	info, _ := infoOf(path)
	v, err := entry.Quantity(w.Field(path), info.Quantity, reading(info, s))
	if err != nil {
		return units.Quantity{Kind: info.Quantity}
	}
	return v
}

// setValue writes a value within its permitted range, and takes along the
// levels that may not stand above or below it.
func setValue(w *wallfile.Wall, info wallfile.FieldInfo, v units.Quantity, s words.Speaker) {
	low, high := bounds(w, info, s)
	v.Base = math.Min(math.Max(v.Base, low), high)
	w.Set(info.Path, entry.Spell(v, s.System == words.Metric))
	takeAlong(w, info.Path, v.Base, s)
}

// takeAlong lowers what may not stand above, or reach beyond, a field that has
// become base.
func takeAlong(w *wallfile.Wall, path string, base float64, s words.Speaker) {
	switch path {
	case "height":
		lower(w, "grade.a", base, s)
		lower(w, "grade.b", base, s)
		lower(w, "water", base, s)
		lower(w, "brace", base, s)
	case "grade.a":
		lower(w, "grade.b", base, s)
		lower(w, "water", base, s)
	case "footing.width", "thickness":
		width, t := valueOf(w, "footing.width", s), valueOf(w, "thickness", s)
		lower(w, "footing.toe", math.Max(0, width.Base-t.Base), s)
	}
}

// bounds of a field that is stepped or dragged: those of the file, narrowed by
// the fields beside it.
func bounds(w *wallfile.Wall, info wallfile.FieldInfo, s words.Speaker) (low, high float64) {
	low, high = info.Min.Base, info.Max.Base
	at := func(path string) float64 { return valueOf(w, path, s).Base }
	switch info.Path {
	case "grade.a":
		high = at("height")
	case "grade.b", "water":
		high = at("grade.a")
	case "footing.width":
		low = at("thickness")
	case "footing.toe":
		low, high = 0, at("footing.width")-at("thickness")
	}
	return low, math.Max(low, high)
}

// lower takes a field down to a limit, if it is given and stands above.
func lower(w *wallfile.Wall, path string, limit float64, s words.Speaker) {
	info, ok := infoOf(path)
	v, err := entry.Quantity(w.Field(path), info.Quantity, reading(info, s))
	if ok && err == nil && v.Base > limit {
		w.Set(path, entry.Spell(units.Quantity{Base: limit, Kind: info.Quantity}, s.System == words.Metric))
	}
}

// Drag is the wall after a handle of start was dragged by so many pixels, to
// the right or down. It lands on whole inches or 10 mm.
func Drag(start wallfile.Wall, h draw.Handle, pixels float64, s words.Speaker) wallfile.Wall {
	if !(h.PxPerInch > 0) || math.IsNaN(pixels) || math.IsInf(pixels, 0) {
		return start
	}
	return moveTo(start, h, h.Now.Inches()+h.Sign*pixels/h.PxPerInch, s)
}

// Move is what a key does to a handle.
type Move uint8

// Moves.
const (
	More Move = iota
	Less
	MuchMore
	MuchLess
	Least
	Most
)

// Key is the wall after a key was pressed on a handle.
func Key(w wallfile.Wall, h draw.Handle, m Move, s words.Speaker) wallfile.Wall {
	step, big := grain(s), 12*units.Inch
	if s.System == words.Metric {
		big = 100 * units.Millimetre
	}
	to := h.Now
	switch m {
	case More:
		to += step
	case Less:
		to -= step
	case MuchMore:
		to += big
	case MuchLess:
		to -= big
	case Least:
		to = h.Min
	case Most:
		to = h.Max
	}
	return moveTo(w, h, to.Inches(), s)
}

// grain is what a handle lands on.
func grain(s words.Speaker) units.Length {
	if s.System == words.Metric {
		return 10 * units.Millimetre
	}
	return units.Inch
}

func moveTo(w wallfile.Wall, h draw.Handle, inches float64, s words.Speaker) wallfile.Wall {
	info, ok := infoOf(h.ID)
	if !ok {
		return w
	}
	g := grain(s).Inches()
	setValue(&w, info, units.Quantity{Base: g * math.Round(inches/g), Kind: info.Quantity}, s)
	return w
}
