package words

// enNotes holds the sentences of the calculation: what was assumed, what is
// missing, what to beware of. In them {0}, {1} are quantities, {0+} rounded
// up, {0-} rounded down, {t} a proper name or the name of a check.
var enNotes = table{
	// What was assumed.
	"note.bearing-assumed":        "Allowable bearing was not given: {0-} taken, the least that the building code presumes.",
	"note.bearing-even":           "Held at top and foot, the wall keeps its footing level: the ground is pressed evenly.",
	"note.floor-rigid":            "The floor is taken as rigid, so the ground pushes at rest.",
	"note.friction-assumed":       "Friction under the footing was not given: {0-} taken.",
	"note.low-side-left-out":      "The {0} of ground on the open side is left out: it may be dug away.",
	"note.saturated-assumed":      "Soil below the water is taken to weigh {0}.",
	"note.seismic-assumed":        "Seismic design category was not given: B taken. Ask the building department.",
	"note.slab-friction-assumed":  "Friction under the slab was not given: {0-} taken.",
	"note.slab-other-end":         "The slab is cast tight to the wall, with no isolation joint, cut or gap, and something at its other end takes the push.",
	"note.slab-steel-continuous":  "The steel of the tie slab runs on through every joint in it.",
	"note.slab-thickness-assumed": "Thickness of the floor slab was not given: {0} taken.",
	"note.today-full-strength":    "Today's concrete strength was not given: the full {0} taken. Do not fill before it is reached.",
	"note.weight-assumed":         "Weight of the soil was not given: {0} taken.",

	"note.table-note-l": "By the table's footnote l a wall of concrete of {0-} needs no verticals here.",
	"note.table-note-m": "By the table's footnote m a wall of concrete of {0-} needs no verticals here.",

	// What answer is missing.
	"note.needs-floor-edge":        "Say what the floor edge can take: it must take {0+}.",
	"note.free-top-needs-bars":     "A wall with nothing at its top needs vertical bars even where little pushes: plain concrete passes no bending through the joint at the footing.",
	"note.fill-by-chart":           "One side alone may stand only so high: raise both sides together, by the filling chart.",
	"note.needs-footing":           "Say what footing the wall stands on.",
	"note.needs-geotechnical":      "A geotechnical engineer must say what this ground does.",
	"note.needs-opposite-reaction": "Say what the opposite wall can pull back with: it must be {0+}.",
	"note.needs-seismic-earth":     "An engineer must say what the ground pushes in an earthquake.",
	"note.needs-slab-length":       "Say how long the slab is, away from the wall.",
	"note.needs-swelling-answer":   "Say whether the ground swells when wet or is organic.",
	"note.needs-tie-strength":      "Say what the tie can take.",

	// Why a check does not apply, is short, or fails.
	"note.bars-on-wrong-face":     "The bars lie on the soil side; the table puts them near the open side.",
	"note.four-thirds-chosen":     "Less than minimum steel was chosen: the bars carry four thirds of what is asked.",
	"note.no-dowels":              "There are no dowels.",
	"note.not-tension-controlled": "Too much steel for this depth: the concrete would crush before the bars give warning.",
	"note.nothing-pushes":         "Nothing pushes here.",
	"note.nothing-pulls":          "Nothing pulls on the slab.",
	"note.nothing-to-lap":         "There are no verticals to lap with.",
	"note.opposite-wall":          "The opposite wall pulls back at the same level, through a slab in one piece.",
	"note.outside-table":          "The wall is outside the residential table.",
	"note.plain-joint":            "Plain concrete passes no bending through the joint at the footing.",
	"note.plain-needs-none":       "A plain wall needs none by this rulebook.",
	"note.rakers-hold":            "Rakers hold the wall until the slab is in.",
	"note.resultant-outside":      "The load falls outside the footing: the wall turns over.",
	"note.slab-floats":            "Standing water lifts the slab: it does not hold the foot.",
	"note.slab-must-be-longer":    "The slab must be at least {0+} long.",
	"note.slab-takes-the-foot":    "The tight slab takes the push of the foot.",
	"note.slab-takes-the-rest":    "Friction alone falls short; the slab in front takes the rest.",
	"note.thickness-by-strength":  "The thickness of a free wall follows from its strength.",
	"note.levels-governed":        "What ends it: {t}.",
	"note.unbraced-governed":      "What ends it: {t}.",

	// Today.
	"note.concrete-too-young": "Today's concrete stands at {0-}; wait for {1+}.",
	"note.bracing-waived":     "Up to {0-} of fill the residential code asks for no bracing; strength and sliding are asked all the same.",
	"note.nothing-holds-top":  "Nothing holds the top yet.",
	"note.slab-not-in":        "The slab at the foot is not in yet.",
	"note.tie-slab-not-cast":  "The slab that ties the top is not cast yet.",
	"note.today-check-fails":  "{T}: fails.",
	"note.today-check-open":   "{T}: an answer is missing.",
	"note.finished-fails":     "The finished wall does not hold.",
	"note.low-side-not-first": "Do not fill the low side above {0-} before the high side: the wall would lean the other way.",
	"note.not-held-today":     "Keep people and machines away from an unbraced wall: a wall that is filled before it is held falls without warning.",

	// What an engineer must answer, and warnings.
	"note.seismic-earth":                "Earthquake: the push of more than 6 ft of ground must be given by an engineer.",
	"note.soil-swells":                  "The ground swells or is organic: no number is offered for it.",
	"note.strip-not-solved":             "The wall as it is described cannot be answered as an upright strip.",
	"note.too-slender":                  "The wall is too slender for {0+} on it.",
	"note.plain-not-in-seismic":         "Plain concrete is not allowed for this wall in its seismic design category.",
	"note.rakers-need-design":           "The rakers, and what they push against, need a design of their own.",
	"note.slab-weight-not-in-surcharge": "The slab on the fill weighs {0+}: add it to the dead load on the ground.",

	// By what a pressure was found.
	"note.basis-given":            "equivalent fluid, as given",
	"note.basis-water":            "standing water, full head",
	"note.basis-surcharge":        "load on the ground, times {0}",
	"note.basis-friction-active":  "friction angle {0}, active",
	"note.basis-friction-at-rest": "friction angle {0}, at rest",
	"note.basis-class-active":     "soil class {t}, active",
	"note.basis-class-at-rest":    "soil class {t}, at rest",
	"note.basis-unknown-active":   "soil not known: the worst class, active, {0}",
	"note.basis-unknown-at-rest":  "soil not known: the worst class, at rest, {0}",
}

// enReasons holds why a wall is outside the residential tables.
var enReasons = table{
	"note.table-not-this-condition":    "The table covers only walls that are held at top and bottom by the house.",
	"note.table-soil-not-listed":       "The table has no column for a soil given in this way.",
	"note.table-water":                 "Water stands against the wall; the table is for drained ground.",
	"note.table-surcharge":             "A live load stands on the ground; the table has none.",
	"note.table-foot-not-held":         "More than {0} of fill with no slab at the foot.",
	"note.table-seismic":               "The seismic design category asks for more than the table gives.",
	"note.table-axial":                 "The load on the wall is more than {0-}.",
	"note.table-swelling-unanswered":   "Nobody has said whether the ground swells.",
	"note.table-design-required":       "The table itself asks for a design here.",
	"note.table-height-over-table":     "The wall is taller than {0-}.",
	"note.table-fill-above-wall":       "The fill, with what lies on it, is higher than {0-}.",
	"note.table-fluid-over-table":      "The ground pushes more than {0-} for each depth.",
	"note.table-thickness-under-table": "The wall is thinner than {0+}.",
	"note.table-centred-not-eight":     "Bars in the center: the table has them for {0} walls only.",
	"note.table-fc-under-table":        "The concrete is weaker than {0+}.",
	"note.table-grade-not-offered":     "The table does not print its bars in this grade and spacing.",
	"note.table-fy-under-table":        "The steel is weaker than {0+}.",
}
