package sheet

import (
	"strings"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// row is one line of the bar table.
type row struct {
	mark, bars, where, cover, one, bend, lap, source string
}

// schedule lists every set of bars: what the crew cuts, bends and places.
func (s *scene) schedule() []row {
	out := make([]row, 0, len(s.bars))
	for i := range s.bars {
		b := &s.bars[i]
		one := row{mark: b.mark, bars: s.sp.Bars(b.Bar), where: s.where(b), one: s.cutLength(b), bend: s.bend(b), lap: s.lap(b),
			source: s.source(b.Rulebook, b.Clause)}
		if b.Cover > 0 {
			one.cover = s.sp.Size(b.Cover)
		}
		if b.Fixed {
			one.source = joined("; ", s.sp.Word("page.bar.fixed"), one.source)
		}
		out = append(out, one)
	}
	return out
}

// where says what the bars are and on which side they lie.
func (s *scene) where(b *placed) string {
	text := s.sp.Word("page.role." + string(b.Role))
	if b.Face != calc.FaceUnset && b.Role != calc.TopBar && b.Role != calc.SoilVerticalBar {
		text = s.sp.Sentence("page.bar.where", text, s.sp.Face(b.Face))
	}
	if len(b.Levels) == 0 {
		return text
	}
	levels := make([]string, 0, len(b.Levels))
	for _, l := range b.Levels {
		levels = append(levels, s.sp.Length(l))
	}
	return joined("; ", text, s.sp.Sentence("sheet.levels", strings.Join(levels, ", ")))
}

// cutLength is the length of one bar where it follows from the wall.
func (s *scene) cutLength(b *placed) string {
	switch {
	case b.length > 0:
		return s.sp.Length(units.Length(b.length))
	case b.Role == calc.DowelBar:
		return "–"
	case b.Role == calc.FootingBar:
		return s.sp.Word("sheet.with-footing")
	}
	return s.sp.Word("sheet.with-wall")
}

// bend describes the bends: legs from outside to outside.
func (s *scene) bend(b *placed) string {
	if b.Role == calc.DowelBar && !s.said {
		return s.sp.Word("sheet.hooked")
	}
	if len(b.legs) < 2 {
		return s.sp.Word("sheet.straight")
	}
	text := s.sp.Sentence("sheet.legs", s.sp.Size(inches(b.legs[0])), s.sp.Size(inches(b.legs[1])), s.sp.Size(b.Hook))
	switch {
	case b.flat && b.Role == calc.DowelBar:
		text = joined("; ", text, s.sp.Word("sheet.hook-along"))
	case b.flat:
		text = joined("; ", text, s.sp.Word("sheet.hook-flat"))
	}
	return text
}

// lap is how far the bars lap, or run past the joint.
func (s *scene) lap(b *placed) string {
	var parts []string
	add := func(id string, l units.Length, write func(units.Length) string) {
		if l > 0 {
			parts = append(parts, s.sp.Sentence(id, write(l)))
		}
	}
	switch b.Role {
	case calc.DowelBar:
		add("sheet.up", b.Up, s.sp.AtLeast)
		add("sheet.down", b.Down, s.sp.Size)
	case calc.TieBar:
		add("sheet.in-slab", b.Length, s.sp.AtLeast)
		add("sheet.in-wall", b.HookAvail, s.sp.Size)
	default:
		add("page.bar.lap", b.Lap, s.sp.AtLeast)
	}
	if len(parts) == 0 {
		return "–"
	}
	return strings.Join(parts, ", ")
}

// plain is the row as one line of a drawing's strip.
func (r row) plain(s *scene) string {
	parts := []string{r.mark + ": " + r.bars, r.where}
	if r.cover != "" {
		parts = append(parts, s.sp.Sentence("page.bar.cover", r.cover))
	}
	if r.one != "" {
		parts = append(parts, s.sp.Sentence("sheet.one-bar", r.one))
	}
	parts = append(parts, r.bend)
	if r.lap != "–" {
		parts = append(parts, r.lap)
	}
	return strings.Join(parts, "; ")
}
