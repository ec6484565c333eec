package words

import (
	"strconv"

	"standingbeam/calc"
)

// soft are the metric designations of the bars No. 3 to No. 11 (ASTM A615M:
// the same bars, named by their rounded diameter in millimetres).
var soft = [...]int{3: 10, 4: 13, 5: 16, 6: 19, 7: 22, 8: 25, 9: 29, 10: 32, 11: 36}

// BarSize writes the size of a bar: "No. 4"; metric "No. 4 (13 mm)".
func (s Speaker) BarSize(n int) string {
	text := "No. " + strconv.Itoa(n)
	if s.System == Metric && n >= 3 && n < len(soft) {
		text += " (" + strconv.Itoa(soft[n]) + " mm)"
	}
	return text
}

// BarSet writes a set of bars: "No. 4 at 16 in, open side"; counted "2 No. 5".
// A set that lies on no face of the wall is named without one.
func (s Speaker) BarSet(b calc.Bar) string {
	text := s.Bars(b)
	if b.Face == calc.FaceUnset || b.Count > 0 {
		return text
	}
	return s.Sentence("bar.on", text, s.Face(b.Face))
}

// Bars writes size and spacing, or number, of a set of bars.
func (s Speaker) Bars(b calc.Bar) string {
	size := s.BarSize(b.Size)
	switch {
	case b.Count > 0:
		return strconv.Itoa(b.Count) + " " + size
	case b.Spacing > 0:
		return s.Sentence("bar.at", size, s.Spacing(b.Spacing))
	}
	return size
}

// Face names a face of the wall: "soil side", "open side"; with soil on both
// sides "high side", "low side".
func (s Speaker) Face(f calc.Face) string { return s.Word(s.faceID(f)) }

// FaceFirst names a face where it is met for the first time: "open side (away
// from the soil)".
func (s Speaker) FaceFirst(f calc.Face) string {
	if id := s.faceID(f) + ".first"; s.Has(id) {
		return s.Word(id)
	}
	return s.Face(f)
}

func (s Speaker) faceID(f calc.Face) string {
	id := [...]string{calc.FaceUnset: "face.unset", calc.FaceA: "face.a", calc.FaceB: "face.b", calc.Centre: "face.center"}
	if int(f) >= len(id) {
		f = calc.FaceUnset
	}
	if s.TwoSided && (f == calc.FaceA || f == calc.FaceB) {
		return id[f] + ".two-sided"
	}
	return id[f]
}

// FaceCode is the fixed word of the file for a face.
func FaceCode(f calc.Face) string {
	switch f {
	case calc.FaceA:
		return "a"
	case calc.FaceB:
		return "b"
	case calc.Centre:
		return "center"
	}
	return ""
}
