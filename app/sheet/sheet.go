// Package sheet makes the papers of a wall that are handed over: the crew
// drawing and the calculation sheet as HTML for the browser to print, and the
// drawing by itself as SVG and as DXF.
//
// Everything is a pure function of the answer. The drawing is one list of
// lines, arcs, circles and texts in inches, of which the printed picture, the
// SVG and the DXF are three ways of writing: they cannot say different things.
// What people have typed is escaped, and the looks are left to web/print.css.
package sheet

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"standingbeam/app/words"
	"standingbeam/calc"
)

// Papers.
const (
	Letter = "letter"
	A4     = "a4"
)

// Options say for whom the papers are made. Job, Date and Person are as typed.
type Options struct {
	Speaker words.Speaker
	Paper   string // Letter or A4, "" = Letter
	Job     string
	Date    string
	Person  string
}

// size is what the paper leaves inside its margins, in inches.
func (o Options) size() (width, height float64) {
	if o.Paper == A4 {
		return 210/25.4 - 2*margin, 297/25.4 - topMargin - footMargin
	}
	return 8.5 - 2*margin, 11 - topMargin - footMargin
}

// Margins in inches, as in web/print.css. The foot holds the page number.
const (
	margin     = 0.5
	topMargin  = 0.4
	footMargin = 0.45
)

// tidy makes a text that was typed fit for one line: no signs of control, no
// marks that turn the direction of reading, no end of words.
func tidy(s string) string {
	const longest = 60
	var b strings.Builder
	n := 0
	for _, r := range strings.ToValidUTF8(s, "") {
		switch {
		case unicode.IsControl(r), r == '\u2028', r == '\u2029':
			r = ' '
		case unicode.Is(unicode.Cf, r), unicode.Is(unicode.Co, r), r == utf8.RuneError, r&0xfffe == 0xfffe:
			continue
		}
		if n++; n > longest {
			b.WriteString("…")
			break
		}
		b.WriteRune(r)
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// name of the wall, never empty.
func (s *scene) name() string {
	if n := tidy(s.in.Name); n != "" {
		return n
	}
	return s.sp.Word("page.unnamed")
}

// FileName is the name under which a paper is kept: job, wall and kind of
// paper, without what file systems refuse. It has no ending.
func FileName(job, wall, kind string) string {
	var parts []string
	for _, p := range []string{job, wall, kind} {
		p = strings.Map(func(r rune) rune {
			if strings.ContainsRune(`/\:*?"<>|`, r) {
				return ' '
			}
			return r
		}, tidy(p))
		if p = strings.Trim(strings.Join(strings.Fields(p), " "), ". "); p != "" {
			parts = append(parts, p)
		}
	}
	if len(parts) == 0 {
		return "Standing Beam"
	}
	return strings.Join(parts, " - ")
}

// SVG returns the drawing of the wall as a file of its own, with a strip that
// says whose it is.
func SVG(r calc.Result, o Options) string {
	s := newScene(&r, o.Speaker)
	d := s.standalone(o)
	return `<?xml version="1.0" encoding="UTF-8"?>` + "\n" + d.svg(s.title(o)) + "\n"
}

// DXF returns the drawing of the wall as a DXF file: section, elevation and
// level cut in true size, in inches or, for a metric reader, in millimetres.
func DXF(r calc.Result, o Options) string {
	s := newScene(&r, o.Speaker)
	unit := 1.0
	if o.Speaker.System == words.Metric {
		unit = 25.4
	}
	return s.standalone(o).dxf(unit, s.title(o))
}

// title names the drawing: job and wall.
func (s *scene) title(o Options) string {
	if job := tidy(o.Job); job != "" {
		return s.sp.Sentence("sheet.title", job, s.name())
	}
	return s.name()
}
