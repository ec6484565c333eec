package words

// enChecks holds the names of the checks, and of what ends a fill.
var enChecks = table{
	"name.plain-flexure":        "Bending of plain concrete",
	"name.plain-shear":          "Shear of plain concrete",
	"name.plain-compression":    "Load and bending of plain concrete",
	"name.flexure":              "Bending",
	"name.flexure.foot":         "Bending at the foot",
	"name.flexure.up":           "Bending in the span",
	"name.shear":                "Shear",
	"name.shear.foot":           "Shear at the foot",
	"name.shear.up":             "Shear {0} up",
	"name.minimum-vertical":     "Minimum steel, verticals",
	"name.minimum-horizontal":   "Minimum steel, horizontals",
	"name.bar-spacing":          "Spacing of the bars",
	"name.minimum-thickness":    "Least thickness",
	"name.deflection":           "How far it bends",
	"name.dowel-lap":            "Lap of dowels and verticals",
	"name.dowel-hook":           "Hook of the dowels in the footing",
	"name.dowel-steel":          "Steel across the joint",
	"name.joint-shear-friction": "Sliding on the joint at the footing",
	"name.table-bars":           "Bars of the residential table",

	"name.floor-edge":    "Floor edge holds the top",
	"name.foot-support":  "What holds the foot",
	"name.unbraced-fill": "Fill with nothing at the top",

	"name.overturning":               "Turning over",
	"name.sliding":                   "Sliding of the footing",
	"name.resultant-in-middle-third": "Load in the middle third",
	"name.bearing":                   "Pressure on the ground",
	"name.heel-flexure":              "Bending of the heel",
	"name.heel-shear":                "Shear of the heel",
	"name.toe-flexure":               "Bending of the toe",
	"name.toe-shear":                 "Shear of the toe",

	"name.tie-tension":          "Pull in the tie bars",
	"name.tie-development-wall": "Tie bars anchored in the wall",
	"name.tie-development-slab": "Tie bars anchored in the slab",
	"name.slab-drag":            "What holds the tie slab",

	"name.level-difference": "Difference of the two levels",
	"name.soil-suitable":    "Ground fit to fill with",
	"name.seismic-earth":    "Earth pressure in an earthquake",

	"name.joint-bending":        "Bending of the joint at the footing",
	"name.section-above-dowels": "Bending above the dowels",
}

// enAsks holds what each check asks, in one sentence.
var enAsks = table{
	"ask.plain-flexure":        "Does the wall carry its bending with no bars at all?",
	"ask.plain-shear":          "Does the wall carry its shear with no bars at all?",
	"ask.plain-compression":    "Does plain concrete carry the load on the wall and the bending together?",
	"ask.flexure":              "Do the bars carry the bending where they lie?",
	"ask.flexure.foot":         "Do the bars carry the bending at the foot, through the joint?",
	"ask.flexure.up":           "Do the bars carry the bending {0} above the footing?",
	"ask.shear":                "Does the wall carry the push across it?",
	"ask.shear.foot":           "Does the wall carry the push across it at the foot?",
	"ask.shear.up":             "Does the wall carry the push across it {0} above the footing?",
	"ask.minimum-vertical":     "Are there enough verticals for the wall to count as reinforced?",
	"ask.minimum-horizontal":   "Are there enough horizontals to hold cracks together?",
	"ask.bar-spacing":          "Are the bars close enough to each other?",
	"ask.minimum-thickness":    "Is the wall as thick as the rules ask for?",
	"ask.deflection":           "How far does the wall bend in the long run, against what is usual?",
	"ask.dowel-lap":            "Do the dowels and the verticals lie side by side long enough?",
	"ask.dowel-hook":           "Is the footing deep enough for the hooks of the dowels?",
	"ask.dowel-steel":          "Does as much steel cross the joint as the rules ask for?",
	"ask.joint-shear-friction": "Do the dowels keep the wall from sliding off its footing?",
	"ask.table-bars":           "Are the bars at least those that the residential table prints?",

	"ask.floor-edge":    "Can bolts and blocking at the edge of the floor take the push at the top?",
	"ask.foot-support":  "Can what lies before the foot take its push?",
	"ask.unbraced-fill": "How high may the fill go while nothing holds the top?",

	"ask.overturning":               "Is the wall safe from turning over its toe?",
	"ask.sliding":                   "Is the footing safe from sliding?",
	"ask.resultant-in-middle-third": "Does the footing press on the ground over its whole width?",
	"ask.bearing":                   "Can the ground take the pressure under the footing?",
	"ask.heel-flexure":              "Does the heel carry the soil that stands on it?",
	"ask.heel-shear":                "Does the heel carry the shear of the soil on it?",
	"ask.toe-flexure":               "Does the toe carry the pressure under it?",
	"ask.toe-shear":                 "Does the toe carry the shear of the pressure under it?",

	"ask.tie-tension":          "Do the tie bars carry the pull at the top?",
	"ask.tie-development-wall": "Is the wall thick enough for the hooks of the tie bars?",
	"ask.tie-development-slab": "Is the slab long enough for the tie bars?",
	"ask.slab-drag":            "Does something hold the slab that the wall pulls on?",

	"ask.level-difference": "Does the wall stand with the high side filled and nothing at its top?",
	"ask.soil-suitable":    "Is this a ground for which a pressure can be given?",
	"ask.seismic-earth":    "What does the ground push in an earthquake?",
}
