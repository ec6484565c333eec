package entry

import "strings"

// feetAndInches reads the forms that name both: 12' 6 1/2", 12 ft 6 in, 12'-6",
// 12-6 1/2. ok is false when t is none of them, so that one number with one
// unit may be tried.
func feetAndInches(t string, o Options) (v float64, id string, ok bool) {
	feet, inches, marked := cutFeet(t)
	if !marked {
		feet, inches, ok = cutHyphen(t)
	}
	if !ok && !marked || inches == "" {
		return 0, "", false
	}
	number, symbol := split(inches)
	u, known := lengthUnit(symbol)
	switch {
	case symbol == "" && o.Strict && !marked:
		return 0, "no-unit", true
	case symbol != "" && (!known || u != inch), !digits(feet):
		return 0, "not-a-length", true
	}
	f, id := decimal(feet, o)
	if id != "" {
		return 0, id, true
	}
	i, id := mixed(number, o)
	switch {
	case id != "":
		return 0, id, true
	case i >= 12:
		return 0, "inches-over-12", true
	}
	return 12*f + i, "", true
}

// cutFeet parts at the mark of the feet; a hyphen behind it is passed over.
func cutFeet(t string) (feet, rest string, ok bool) {
	for _, mark := range []string{"'", "feet", "foot", "ft.", "ft"} {
		if feet, rest, ok = strings.Cut(t, mark); ok {
			rest = strings.TrimPrefix(strings.TrimSpace(rest), "-")
			return strings.TrimSpace(feet), strings.TrimSpace(rest), true
		}
	}
	return "", "", false
}

// cutHyphen parts "12-6 1/2" at its hyphen. "6-1/2", with a fraction straight
// behind it, is one mixed number.
func cutHyphen(t string) (feet, inches string, ok bool) {
	feet, inches, ok = strings.Cut(t, "-")
	if !ok {
		return "", "", false
	}
	feet, inches = strings.TrimSpace(feet), strings.TrimSpace(inches)
	end := strings.IndexAny(inches, " -/")
	if !digits(feet) || end >= 0 && inches[end] == '/' {
		return "", "", false
	}
	return feet, inches, true
}
