package words

// enProblems holds what is wrong with a value. {0} is what was written, {1}
// and {2} are the least and the most that is permitted.
var enProblems = table{
	"problem.out-of-range": "{0} is not between {1} and {2}.",

	// One value against another, or not one of a list.
	"problem.low-side-higher":       "The ground on the open side may not be higher than that on the soil side: turn the wall around.",
	"problem.soil-class-unknown":    "No such soil class. Write one such as GW, SM, SC, ML or CL.",
	"problem.saturated-below-moist": "Soil below water weighs more than the same soil above it.",
	"problem.fluid-above-weight":    "An equivalent fluid that weighs so much more than the soil is a slip.",
	"problem.steel-grade":           "Bars come in grades of 40, 60 and 80 ksi.",
	"problem.bar-size":              "Bars run from No. 3 to No. 11.",
	"problem.seismic-category":      "The category is A, B, C, D, D0, D1, D2, E or F.",
	"problem.fixed-foot-slab":       "A fixed foot goes with a slab on the footing, not with one more than 6 in above it.",
	"problem.choice-unknown":        "There is no such choice.",
	"problem.choice":                "{0} is not one of: {1}.",

	// Reading one value.
	"problem.missing":        "This is needed.",
	"problem.empty":          "Nothing is written here.",
	"problem.no-unit":        "{0} has no unit. Write one, such as {1}.",
	"problem.unknown-unit":   "{0}: that is not a unit of this. Write one such as {1}.",
	"problem.not-a-number":   "{0} is not a number.",
	"problem.not-a-length":   "{0} cannot be read as feet and inches. Write it as 12 ft 6 1/2 in, 12.5 ft or 3.8 m.",
	"problem.inches-over-12": "{0}: behind feet there are fewer than 12 inches.",
	"problem.comma":          "{0}: a file takes a decimal point and no commas.",
	"problem.comma-unclear":  "{0}: the comma may be read in two ways. Write a decimal point.",
	"problem.too-large":      "{0} is out of all reason.",
	"problem.too-long":       "This is too long.",
	"problem.soil-two-ways":  "The soil is given in two ways: say by which with \"by\".",
	"problem.not-computed":   "This wall cannot be answered.",
}

// enFileProblems holds what is wrong with a file. {0} is the key, the value or
// the number in question.
var enFileProblems = table{
	"problem.file-json":        "This is not a wall file: the text cannot be read at line {0}.",
	"problem.file-unread":      "This file cannot be read.",
	"problem.file-object":      "An object in braces is expected here.",
	"problem.file-walls":       "A list of walls in brackets is expected here.",
	"problem.file-format":      "The format must be 1.",
	"problem.file-no-format":   "The file does not say its format.",
	"problem.file-no-walls":    "The file has no walls.",
	"problem.file-trailing":    "Something follows the end of the file's content.",
	"problem.file-too-many":    "The file has more than {0} walls.",
	"problem.file-too-big":     "The file is larger than {0} MB.",
	"problem.file-too-deep":    "The file is nested too deep.",
	"problem.file-unknown-key": "There is no such key.",
	"problem.file-doubled-key": "This key stands twice.",
	"problem.file-bare-number": "A bare number is refused: write it as text with its unit, such as \"8 ft\".",
	"problem.file-not-text":    "A text in quotes is expected here.",
	"problem.file-not-yes-no":  "true or false is expected here.",
	"problem.file-not-list":    "A list of texts in brackets is expected here.",
	"problem.place":            "{0}: {1}",
	"problem.wall-unnamed":     "wall {0}",
	"problem.permitted":        "{0} Permitted: {1} to {2}.",
	"problem.either":           "{0} or {1}",
}
