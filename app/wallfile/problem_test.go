package wallfile

import (
	"strings"
	"testing"

	"standingbeam/app/words"
)

// Where a list is permitted and no range, the fault says the list; a number
// without a unit is not offered one.
func TestLineWithoutRange(t *testing.T) {
	for put, want := range map[string]string{
		`"steel":"60 lb"`:        "steel: “60 lb”: that is not a unit of this. Write one such as ksi or MPa. Bars come in grades of 40, 60 and 80 ksi.",
		`"seismic category":"A"`: "steel: This is needed. Bars come in grades of 40, 60 and 80 ksi.",
		`"steel":"60 ksi","footing":{"width":"2 ft","thickness":"1 ft","friction":"0.4 psf"}`: "footing.friction: “0.4 psf”: this is a number without a unit. Permitted: 0.10 to 0.80.",
	} {
		_, problems := Decode(strings.NewReader(`{"format":1,"walls":[{"name":"w","condition":"braced top","height":"8 ft","thickness":"8 in","grade":{"a":"7 ft"},"soil":{"class":"SM"},"concrete":"3000 psi",` + put + `}]}`))
		var got []string
		for _, p := range problems {
			got = append(got, p.Line(words.Speaker{}))
		}
		if len(got) != 1 || got[0] != "w: "+want {
			t.Errorf("%s\n got %q\nwant %q", put, got, want)
		}
	}
}
