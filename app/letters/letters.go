// Package letters estimates how wide a line of type is, where nothing is there
// to measure it: on paper and in drawings.
package letters

import (
	"strings"
	"unicode/utf8"
)

// Widths of letters, in thousandths of the type size, of the characters from
// space to tilde. They are the advances of DejaVu Sans and DejaVu Sans Bold
// 2.37, read from the fonts' own tables. DejaVu is wider than the sans-serif
// fonts of phones and desks, so a line that fits by this table fits there too.
var (
	plain = [95]uint16{
		318, 401, 460, 838, 637, 951, 780, 275, 391, 391, 500, 838, 318, 361, 318, 337,
		637, 637, 637, 637, 637, 637, 637, 637, 637, 637, 337, 337, 838, 838, 838, 531,
		1000, 685, 687, 699, 771, 632, 576, 775, 752, 295, 295, 656, 558, 863, 749, 788,
		604, 788, 695, 635, 611, 732, 685, 989, 686, 611, 686, 391, 337, 391, 838, 500,
		500, 613, 635, 550, 635, 616, 353, 635, 634, 278, 278, 580, 278, 975, 634, 612,
		635, 635, 412, 521, 393, 634, 592, 818, 592, 592, 525, 637, 337, 637, 838,
	}
	bold = [95]uint16{
		349, 457, 521, 838, 696, 1002, 873, 307, 458, 458, 523, 838, 380, 416, 380, 366,
		696, 696, 696, 696, 696, 696, 696, 696, 696, 696, 400, 400, 838, 838, 838, 581,
		1000, 774, 763, 734, 831, 684, 684, 821, 837, 373, 373, 775, 638, 996, 837, 851,
		733, 851, 771, 721, 683, 813, 774, 1104, 771, 725, 726, 458, 366, 458, 838, 500,
		500, 675, 716, 593, 716, 679, 436, 716, 712, 343, 343, 666, 343, 1042, 712, 688,
		716, 716, 494, 596, 479, 712, 652, 924, 646, 652, 583, 712, 366, 712, 838,
	}
)

// other is taken for any character outside the table, but signs of units and
// accented letters, whose widest are 438 and 712: the widest that is used
// (the fractions of DejaVu Sans Bold, 1.035).
const other = 1040

// Ascent and Descent of a line of type, as shares of the type size (DejaVu
// Sans, hhea table).
const (
	Ascent  = 0.929
	Descent = 0.236
)

// Width estimates how wide a line of type is, on the generous side, in the
// unit of its size.
func Width(text string, size float64, heavy bool) float64 {
	table := &plain
	if heavy {
		table = &bold
	}
	sum := 0
	for i := 0; i < len(text); {
		c := text[i]
		if c < utf8.RuneSelf {
			i++
			if c >= ' ' && c <= '~' {
				sum += int(table[c-' '])
			}
			continue
		}
		r, n := utf8.DecodeRuneInString(text[i:])
		i += n
		switch {
		case strings.ContainsRune("·²³", r):
			sum += 440
		case strings.ContainsRune("áéíóúñü", r):
			sum += 720
		default:
			sum += other
		}
	}
	return float64(sum) * size / 1000
}

// Wrap breaks text between its words into lines no wider than width. A word
// that is wider stands alone in its line.
func Wrap(text string, size float64, heavy bool, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		longer := word
		if line != "" {
			longer = line + " " + word
		}
		if line != "" && Width(longer, size, heavy) > width {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}
