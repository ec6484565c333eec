package words

// enSheet holds the words of the papers that are handed over: the crew drawing
// and the calculation sheet.
var enSheet = table{
	// On the drawing.
	"sheet.view.section":   "Section",
	"sheet.view.elevation": "Elevation from the {0}",
	"sheet.view.cut":       "Level cut above the footing",
	"sheet.scale":          "{0} in = 1 ft",
	"sheet.feet":           "{0} ft",
	"sheet.metres":         "{0} m",
	"sheet.ground":         "ground",
	"sheet.ground-at":      "ground, {0} above the footing",
	"sheet.water":          "water, {0} above the footing",
	"sheet.lap":            "lap {0}",
	"sheet.up":             "up {0}",
	"sheet.side-up":        "{0}, {1} up",
	"sheet.side-cover":     "{0}, {1} clear",
	"sheet.side-lap":       "{0}, laps {1}",
	"sheet.into-slab":      "hooked in the wall, {0} into the slab",
	"sheet.at-top":         "at the top, one at each face",
	"sheet.bottom-cover":   "bottom, {0} clear",
	"sheet.top-cover":      "top, {0} clear",
	"sheet.hook-leg":       "{0} into the footing, hook leg {1}",
	"sheet.hook-flat":      "hooks laid flat",
	"sheet.hook-along":     "turned along the footing",
	"sheet.slab-tight":     "slab {0}, cast tight to the wall",
	"sheet.slab-later":     "slab {0}, comes later",
	"sheet.tie-slab":       "tie slab {0}",
	"sheet.floor-takes":    "floor edge fastened for {0}",
	"sheet.mark-at":        "{0} at {1}",

	// The bar table.
	"sheet.with-wall":    "as the wall",
	"sheet.with-footing": "as the footing",
	"sheet.straight":     "straight",
	"sheet.legs":         "90° hook: {0} × {1}, tail {2}",
	"sheet.into-wall":    "{0} into the wall",
	"sheet.one-bar":      "one bar {0}",

	// Whose it is.
	"sheet.title":       "{0} · {1}",
	"sheet.drawn-by":    "drawn by Standing Beam",
	"sheet.unit-inches": "sizes in inches, in true size in the file",
	"sheet.unit-mm":     "sizes in millimetres, in true size in the file",
	"sheet.materials":   "Concrete {0}, bars grade {1}",
	"sheet.ksi":         "{0} ksi",
	"sheet.books":       "Decided by {0}; beside it {1}",
	"sheet.line":        "{0} ({1}): {2}",
}
