package words

import (
	"regexp"
	"strings"
	"testing"
)

// english words that no Spanish sentence has. What stands in both languages
// (no, me, son, solo, actual, …) is not among them.
var telltale = regexp.MustCompile(`(?i)\b(the|of|and|is|are|to|with|by|for|from|on|at|in the|where|which|what|not|wall|walls|footing|slab|floor|bar|bars|dowels?|verticals|horizontals|hook|lap|cover|fill|soil|ground|push|bending|shear|heel|toe|side|high|low|open|holds|fails|needed|asked|taken|given|more|less|before|after|today|above|below|pressure|load|strength|concrete|steel|height|thickness|width|length)\b`)

// inSpanish are the words of the file's format, which stay as they are.
var inSpanish = map[string]string{"problem.soil-two-ways": `"by"`}

func TestNoEnglishInSpanish(t *testing.T) {
	for id, word := range known("es").table() {
		if found := telltale.FindString(strings.Replace(word, inSpanish[id], "", 1)); found != "" {
			t.Errorf("%q has %q: %s", id, found, word)
		}
	}
}

// same are sentences that read alike in both languages: places with marks, a
// proper name, a code, a word of both.
var same = regexp.MustCompile(`^[^\p{L}]*$|^((No\.|ksi|ft|in|m|No|no|A4|Factor|Material|Standing Beam|flexible|neto|plain|[A-F][0-2]?)|\{[^}]*\}|[^\p{L}])*$`)

// What is said the same way in both languages was not translated, or is one of
// few.
func TestSpanishDiffers(t *testing.T) {
	for id, word := range known("es").table() {
		if en, _ := (Speaker{}).find(id); en == word && !same.MatchString(word) {
			t.Errorf("%q is English still: %q", id, word)
		}
	}
}

// trade is the Spanish of the trade in the United States: for each thing one
// word, and the words for it that are of other countries or of the tables of an
// engineer. To pull is jalar: tirar is to knock down in Mexico. The reader is
// usted, and is told or asked; what a button does is an infinitive.
var trade = []struct{ word, not string }{
	{"varilla", `varillas? corrugadas?|armaduras?|cabillas?|barras?`}, {"concreto", `hormig[oó]n`}, {"colar, colado", `vaciad[oa]s?|vaciar|verter`},
	{"cimbra", `encofrados?|formaletas?`}, {"zapata", `cimentaci[oó]n|cimientos?`}, {"losa", `placas?|forjados?`}, {"relleno", `terrapl[eé]n`},
	{"traslape", `empalmes?|solapes?|solapos?`}, {"gancho", `garfios?|patillas?`}, {"arranque", `espigas?|dovelas?`}, {"corona", `coronaci[oó]n|remates?`},
	{"punta", `dedos?|puntera`}, {"claro", `luces|vanos?`}, {"jalar, jalón", `tira|tire|tiran|tirar|tir[oó]n`}, {"amarre", `tirantes?|atadura`},
	{"flexión", `doblamiento`}, {"vuelco", `volteo|volcamiento`}, {"tensión", `tracci[oó]n`}, {"piso", `entrepiso|planta baja`},
	{"reglamento", `c[oó]digos?|normativa`}, {"apuntalar", `entibar`}, {"usted", `t[uú]|tus|tuy[oa]s?|ti|vos|vosotros`},
}

func TestOneWordForEachThing(t *testing.T) {
	for _, w := range trade {
		not := regexp.MustCompile(`(?i)(^|\P{L})(` + w.not + `)(\P{L}|$)`)
		for id, word := range known("es").table() {
			if found := not.FindString(word); found != "" {
				t.Errorf("%q has %q where the trade says %s: %s", id, strings.TrimSpace(found), w.word, word)
			}
		}
	}
}

// The English is that of the American trade too.
func TestAmericanEnglish(t *testing.T) {
	british := regexp.MustCompile(`(?i)\w*(metre|centre|colour|mould|grey|storey|licence|programme)\w*`)
	for id, word := range known("en").table() {
		if found := british.FindString(word); found != "" {
			t.Errorf("%q has %q: %s", id, found, word)
		}
	}
}

// Whoever reads only the headline must not take one answer for the other.
func TestSpanishMayFill(t *testing.T) {
	s := Speaker{Lang: "es"}
	for id, want := range map[string]string{
		"today.may-fill": "PUEDE RELLENAR", "today.do-not-fill": "NO RELLENE", "today.fill-only-to": "RELLENE SOLO HASTA {0}",
	} {
		if got := s.Word(id); got != want {
			t.Errorf("%s says %q, not %q", id, got, want)
		}
	}
}

func TestLanguageFor(t *testing.T) {
	for tag, want := range map[string]string{"es": "es", "es-MX": "es", "ES_us": "es", "en-US": "en", "": "en", "de-DE": "en", "est": "en"} {
		if got := LanguageFor(tag); got != want {
			t.Errorf("%q is spoken to in %q, not %q", tag, got, want)
		}
	}
	if LanguageName("es") != "Español" || LanguageName("en") != "English" {
		t.Error("a language has its name in itself")
	}
}
