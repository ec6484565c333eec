package lesson

import (
	"math"
	"strconv"
	"strings"

	"standingbeam/app/entry"
	"standingbeam/app/words"
	"standingbeam/calc/units"
)

// stop is one place where a control can stand.
type stop struct {
	at   float64 // inches, degrees, or the number of a choice
	text string  // as it is read
	slug string  // as it stands in an address
}

// metric reports whether the reader reads metric units.
func (k *kit) metric() bool { return k.sp.System == words.Metric }

// pick is a length for the one system or the other.
func (k *kit) pick(us, metric units.Length) units.Length {
	if k.metric() {
		return metric
	}
	return us
}

// mm are millimetres as a length.
func mm(n float64) units.Length { return units.Length(n) * units.Millimetre }

// lengths are stops from one length to another.
func (k *kit) lengths(kind units.Kind, from, to, step units.Length) []stop {
	n := int(math.Round(float64((to - from) / step)))
	out := make([]stop, 0, n+1)
	for i := 0; i <= n; i++ {
		l := from + units.Length(i)*step
		out = append(out, stop{at: l.Inches(), text: k.length(kind, l), slug: slug(kind, l, k.metric())})
	}
	return out
}

func (k *kit) length(kind units.Kind, l units.Length) string {
	if kind == units.Size {
		return k.sp.Size(l)
	}
	return k.sp.Length(l)
}

// slug is a length in an address: "9ft4in", "6.5in", "2.7m", "165mm".
func slug(kind units.Kind, l units.Length, metric bool) string {
	short := func(v float64) string { return strconv.FormatFloat(math.Round(v*1000)/1000, 'f', -1, 64) }
	switch {
	case metric && kind == units.Size:
		return short(math.Round(l.Millimetres())) + "mm"
	case metric:
		return short(l.Millimetres()/1000) + "m"
	case kind == units.Size:
		return short(l.Inches()) + "in"
	}
	feet := math.Floor(l.Feet() + 1e-9)
	inches := l.Inches() - 12*feet
	if inches < 1e-6 {
		return short(feet) + "ft"
	}
	return short(feet) + "ft" + short(inches) + "in"
}

// choices are the stops of a control that chooses out of a few.
func (k *kit) choices(lesson string, names ...string) []stop {
	out := make([]stop, 0, len(names))
	for i, n := range names {
		out = append(out, stop{at: float64(i), text: k.sp.Word("lesson." + lesson + ".at." + n), slug: n})
	}
	return out
}

// nearest is the stop that stands nearest to a value.
func nearest(all []stop, at float64) int {
	best := 0
	for i, s := range all {
		if math.Abs(s.at-at) < math.Abs(all[best].at-at)-1e-9 {
			best = i
		}
	}
	return best
}

// stopOf is the stop that an address names: by its slug, else by the length
// that it writes, in whatever unit.
func stopOf(all []stop, text string) (int, bool) {
	for i, s := range all {
		if s.slug == text {
			return i, true
		}
	}
	if !strings.HasSuffix(text, "in") && !strings.HasSuffix(text, "ft") && !strings.HasSuffix(text, "m") {
		return 0, false
	}
	l, err := entry.Length(text, entry.Options{Strict: true})
	if err != nil {
		return 0, false
	}
	return nearest(all, l.Inches()), true
}
