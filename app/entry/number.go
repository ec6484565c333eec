package entry

import (
	"strconv"
	"strings"
)

// mixed reads a whole or decimal number, a fraction, or both: 6, 6.5, 1/2,
// "6 1/2", "6-1/2". It is never negative.
func mixed(t string, o Options) (v float64, id string) {
	whole, rest, two := cutFraction(t)
	if !two {
		if strings.Contains(t, "/") {
			return fraction(t)
		}
		return decimal(t, o)
	}
	if v, id = decimal(whole, o); id != "" {
		return 0, id
	}
	part, id := fraction(rest)
	switch {
	case id != "":
		return 0, id
	case part >= 1, strings.ContainsAny(whole, ".,"):
		return 0, "not-a-number"
	}
	return v + part, ""
}

// cutFraction parts a whole number from the fraction behind it.
func cutFraction(t string) (whole, rest string, two bool) {
	i := strings.LastIndexAny(t, " -")
	if i < 0 || !strings.Contains(t[i:], "/") {
		return t, "", false
	}
	return strings.TrimSpace(t[:i]), t[i+1:], true
}

// fraction reads "1/2".
func fraction(t string) (v float64, id string) {
	above, below, _ := strings.Cut(t, "/")
	a, b := strings.TrimSpace(above), strings.TrimSpace(below)
	if !digits(a) || !digits(b) || len(a) > 4 || len(b) > 4 {
		return 0, "not-a-number"
	}
	n, _ := strconv.Atoi(a)
	d, _ := strconv.Atoi(b)
	if d == 0 {
		return 0, "not-a-number"
	}
	return float64(n) / float64(d), ""
}

// decimal reads a whole or decimal number. Only digits and their signs are
// read: no exponents, no names of numbers.
func decimal(t string, o Options) (v float64, id string) {
	if strings.Contains(t, ",") {
		if o.Strict {
			return 0, "comma"
		}
		var ok bool
		if t, ok = withoutComma(t, o.Comma); !ok {
			return 0, "comma-unclear"
		}
	}
	whole, part, point := strings.Cut(t, ".")
	if whole == "" && part == "" || whole != "" && !digits(whole) || point && part != "" && !digits(part) {
		return 0, "not-a-number"
	}
	v, err := strconv.ParseFloat("0"+t, 64)
	if err != nil {
		return 0, "not-a-number"
	}
	return v, ""
}

// withoutComma rewrites a number with commas: a comma before exactly three
// digits parts thousands, unless nothing but zeros stands before it; any other
// single comma is the decimal sign. Where decimals are written with a comma the
// one comma is always the decimal sign, and points before it part thousands.
func withoutComma(t string, decimal bool) (string, bool) {
	if decimal {
		whole, part, _ := strings.Cut(t, ",")
		groups := strings.Split(whole, ".")
		for _, g := range groups[1:] {
			if len(g) != 3 {
				return "", false
			}
		}
		return strings.Join(groups, "") + "." + part, part != "" && !strings.ContainsAny(part, ".,")
	}
	whole, part, point := strings.Cut(t, ".")
	groups := strings.Split(whole, ",")
	thousands := strings.Trim(groups[0], "0") != "" && len(groups[0]) <= 3
	for _, g := range groups[1:] {
		thousands = thousands && len(g) == 3
	}
	switch {
	case strings.Contains(part, ","):
		return "", false
	case thousands && point:
		return strings.Join(groups, "") + "." + part, true
	case thousands:
		return strings.Join(groups, ""), true
	case len(groups) == 2 && !point && groups[1] != "":
		return groups[0] + "." + groups[1], true
	}
	return "", false
}

// digits reports whether t is one digit or more and nothing else.
func digits(t string) bool {
	for i := 0; i < len(t); i++ {
		if t[i] < '0' || t[i] > '9' {
			return false
		}
	}
	return t != ""
}
