package view

import "standingbeam/app/wallfile"

// ask is a question of the page: a field of the wall file or a choice of ours
// that stands for several (see choose.go), and when it is asked.
type ask struct {
	path string
	when func(w *wallfile.Wall) bool // nil = always
}

func always(paths ...string) []ask {
	out := make([]ask, 0, len(paths))
	for _, p := range paths {
		out = append(out, ask{path: p})
	}
	return out
}

func is(path string, values ...string) func(*wallfile.Wall) bool {
	return func(w *wallfile.Wall) bool {
		text := w.Field(path)
		for _, v := range values {
			if text == v {
				return true
			}
		}
		return false
	}
}

func given(path string) func(*wallfile.Wall) bool {
	return func(w *wallfile.Wall) bool { return w.Field(path) != "" }
}

func either(a ...func(*wallfile.Wall) bool) func(*wallfile.Wall) bool {
	return func(w *wallfile.Wall) bool {
		for _, f := range a {
			if f(w) {
				return true
			}
		}
		return false
	}
}

func both(a, b func(*wallfile.Wall) bool) func(*wallfile.Wall) bool {
	return func(w *wallfile.Wall) bool { return a(w) && b(w) }
}

// What the questions hang on.
var (
	onFooting  = is("condition", "free top", "tied to slab", "soil both sides")
	tied       = is("condition", "tied to slab")
	twoSided   = is("condition", "soil both sides")
	heldByFrom = either(is("condition", "braced top"), both(twoSided, is("top", "braced")))
	slabAtFoot = is("foot.held by", "slab tight to wall", "slab later")
)

// The dimensions under the thumb, in their order.
var stepperAsks = []ask{
	{"height", nil},
	{"grade.a", nil},
	{"grade.b", twoSided},
	{"top", twoSided},
	{"thickness", nil},
	{soilPath, nil},
	{"soil.equivalent fluid", is("soil.by", "equivalent fluid")},
	{"soil.friction angle", is("soil.by", "friction angle")},
	{"footing.width", onFooting},
	{"footing.toe", onFooting},
}

// The questions, in the trade's words.
var groupAsks = []struct {
	id   string
	asks []ask
}{
	{"push", []ask{
		{"soil.pressure", is("soil.by", "equivalent fluid")},
		{"soil.unit weight", nil},
		{"swells", is("soil.by", "", "unknown")},
		{waterPath, nil},
		{"water", given("water")},
		{"soil.saturated weight", given("water")},
		{"surcharge.dead", nil},
		{"surcharge.live", nil},
		{"low side", twoSided},
		{"axial.dead", nil},
		{"axial.live", nil},
		{"axial.eccentricity", either(given("axial.dead"), given("axial.live"))},
	}},
	{"hold", []ask{
		{"floor edge", heldByFrom},
		{"floor", heldByFrom},
		{"brace", heldByFrom},
		{"tie.slab thickness", tied},
		{"tie.slab length", tied},
		{"tie.anchor", tied},
		{"tie.friction", both(tied, is("tie.anchor", "", "slab drag"))},
		{"tie.strength", both(tied, is("tie.anchor", "tie"))},
		{"tie.before the slab", tied},
		{"foot.held by", nil},
		{"foot.slab thickness", slabAtFoot},
		{"foot.slab underside", slabAtFoot},
		{"foot.fixed", heldByFrom},
		{"footing.width", is("condition", "braced top")},
		{"footing.thickness", nil},
		{"footing.toe", is("condition", "braced top")},
		{"footing.allowable bearing", nil},
		{"footing.friction", nil},
		{"footing.passive from", nil},
	}},
	{"today", always("today.floor", "today.slab", "today.concrete")},
	{"carry", []ask{
		{"concrete", nil},
		{"steel", nil},
		{"cover.a", nil},
		{"cover.b", nil},
		{"sizes", nil},
		{verticalPath, nil},
		{"bars.vertical.size", given("bars.vertical.size")},
		{"bars.vertical.spacing", given("bars.vertical.size")},
		{"bars.vertical.face", given("bars.vertical.size")},
		{"bars.vertical.depth", given("bars.vertical.size")},
		{horizontalPath, nil},
		{"bars.horizontal.size", given("bars.horizontal.size")},
		{"bars.horizontal.spacing", given("bars.horizontal.size")},
		{"bars.horizontal.face", given("bars.horizontal.size")},
		{"bars.horizontal.depth", given("bars.horizontal.size")},
		{dowelPath, nil},
		{"dowels.size", is("dowels.by", "given")},
		{"dowels.spacing", is("dowels.by", "given")},
		{"dowels.up", is("dowels.by", "given")},
		{"dowels.position", is("dowels.by", "given")},
		{"joint", nil},
		{"minimum steel", nil},
		{"seismic category", nil},
	}},
}
