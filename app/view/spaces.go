package view

import (
	"regexp"
	"strings"
)

// noBreak is a blank at which no line is broken.
const noBreak = "\u00a0"

// measure is a number with the unit or the fraction behind it, and a bar size.
var measure = regexp.MustCompile(`(\d) (ft \d+(?: \d+/\d+)? in|ft|in|m|mm|psf|pcf|psi|ksi|kPa|MPa|lb|kN|deg|\d+/\d+(?: in)?)\b|\b(No\.) (\d)`)

// Unbroken keeps each number on one line with its unit.
func Unbroken(text string) string {
	return measure.ReplaceAllStringFunc(text, func(m string) string { return strings.ReplaceAll(m, " ", noBreak) })
}
