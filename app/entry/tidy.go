package entry

import "strings"

// plain maps the characters that keyboards put in the place of plain ones.
var plain = strings.NewReplacer(
	"′", "'", "’", "'", "‘", "'", "´", "'", "`", "'",
	"″", `"`, "”", `"`, "“", `"`, "''", `"`,
	"−", "-", "–", "-", "—", "-", "\u2010", "-", "\u2011", "-",
	"⁄", "/", "³", "3", "°", " deg",
	"\u00a0", " ", "\u202f", "", "\u2009", "", "\t", " ", // thin spaces part thousands
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅓", " 1/3", "⅔", " 2/3",
	"⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
)

// spanish maps the units as they are called in Spanish.
var spanish = strings.NewReplacer(
	"pies", "ft", "pie", "ft", "pulgadas", "in", "pulgada", "in", "pulg", "in", "metros", "m", "metro", "m", "grados", "deg", "grado", "deg",
)

// tidy writes a text with plain characters and single blanks.
func tidy(text string) string {
	t := plain.Replace(text)
	// Two primes may each have become one quote mark.
	t = strings.ReplaceAll(t, "''", `"`)
	return strings.Join(strings.Fields(t), " ")
}
