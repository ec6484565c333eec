package sheet

import (
	"strconv"
	"strings"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// inputPart lists everything that was computed with, and what was assumed.
func (c *calculation) inputPart() {
	c.part("inputs")
	c.open("div", "sheet-inputs")
	for _, g := range []inputs{c.wallInputs(), c.soilInputs(), c.holdInputs(), c.carryInputs()} {
		c.table("sheet-table", []string{c.sp.Word(g.title), ""}, g.rows)
	}
	c.close("div")
	c.end()
	c.part("assumptions")
	if len(c.r.Assumptions) == 0 {
		c.el("p", "", c.sp.Word("sheet.no-assumptions"))
	}
	c.list("sheet-dashes", c.sp.Notes(c.r.Assumptions))
	c.end()
}

// inputs is one group of inputs: names and values.
type inputs struct {
	title string
	s     *scene
	rows  [][]string
}

func (c *calculation) group(title string) inputs { return inputs{title: title, s: c.scene} }

func (g *inputs) add(field, value string) {
	if value != "" {
		g.rows = append(g.rows, []string{g.s.sp.Field(field), value})
	}
}

// some adds a quantity that was given or assumed.
func some[T ~float64](g *inputs, field string, v T, k units.Kind) {
	if v != 0 {
		g.add(field, g.s.sp.Quantity(units.Of(v, k)))
	}
}

func (g *inputs) choice(field, value string) { g.add(field, g.s.sp.Choice(field, value)) }

func pick(list []string, i int) string { return list[min(max(i, 0), len(list)-1)] }

func yesNo(v bool) string {
	if v {
		return "yes"
	}
	return "no"
}

func (c *calculation) wallInputs() inputs {
	in, g := c.in, c.group("sheet.inputs.wall")
	g.choice("condition", pick([]string{"braced top", "free top", "tied to slab", "soil both sides"}, int(in.Condition)))
	if in.Condition == calc.SoilBothSides {
		g.choice("top", map[bool]string{true: "braced", false: "free"}[in.TopHeld])
	}
	some(&g, "height", in.Height, units.Level)
	if c.floored || c.tie != nil {
		some(&g, "brace", in.Brace, units.Level)
	}
	some(&g, "thickness", in.Thickness, units.Size)
	g.add("grade.a", c.sp.Length(in.GradeA))
	g.add("grade.b", c.sp.Length(in.GradeB))
	if in.Condition == calc.SoilBothSides {
		g.choice("low side", map[bool]string{true: "may be dug away", false: "stays"}[in.LowSideMayGo])
	}
	some(&g, "axial.dead", in.Axial.Dead, units.LineForce)
	some(&g, "axial.live", in.Axial.Live, units.LineForce)
	some(&g, "axial.eccentricity", in.Axial.Eccentricity, units.Size)
	return g
}

func (c *calculation) soilInputs() inputs {
	in, g := c.in, c.group("sheet.inputs.ground")
	g.choice("soil.by", pick([]string{"unknown", "class", "equivalent fluid", "friction angle"}, int(in.Soil.Basis)))
	switch in.Soil.Basis {
	case calc.SoilClass:
		g.add("soil.class", c.soil())
	case calc.SoilFluid:
		some(&g, "soil.equivalent fluid", in.Soil.Fluid, units.Weight)
	case calc.SoilFriction:
		some(&g, "soil.friction angle", in.Soil.Friction, units.Degrees)
	}
	if in.Soil.Pressure != calc.PressureUnsaid {
		g.choice("soil.pressure", pick([]string{"", "active", "at rest"}, int(in.Soil.Pressure)))
	}
	some(&g, "soil.unit weight", in.Soil.Weight, units.Weight)
	if in.Water.Standing {
		some(&g, "soil.saturated weight", in.Soil.Saturated, units.Weight)
		g.add("water", c.sp.Length(in.Water.Level))
	} else {
		g.add("water", c.sp.Word("page.water.drained"))
	}
	if in.Soil.Swells != calc.Unanswered {
		g.choice("swells", yesNo(in.Soil.Swells == calc.Yes))
	}
	g.add("surcharge.dead", c.sp.Quantity(units.Of(in.Surcharge.Dead, units.Pressure)))
	g.add("surcharge.live", c.sp.Quantity(units.Of(in.Surcharge.Live, units.Pressure)))
	if in.Seismic != "" {
		g.choice("seismic category", tidy(in.Seismic))
	}
	return g
}

func (c *calculation) holdInputs() inputs {
	in, g := c.in, c.group("sheet.inputs.hold")
	if c.floored {
		g.choice("floor", map[bool]string{true: "flexible", false: "rigid"}[in.Floor == calc.FloorFlexible])
		some(&g, "floor edge", in.FloorEdge, units.LineForce)
	}
	g.choice("foot.held by", pick([]string{"ground only", "slab tight to wall", "slab later"}, int(in.Foot.Held)))
	if in.Foot.Held != calc.GroundOnly {
		some(&g, "foot.slab thickness", in.Foot.SlabThickness, units.Size)
		g.add("foot.slab underside", c.sp.Length(in.Foot.SlabBase))
	}
	if in.Foot.Fixed {
		g.choice("foot.fixed", "yes")
	}
	if in.Footing.Given {
		some(&g, "footing.width", in.Footing.Width, units.Size)
		some(&g, "footing.thickness", in.Footing.Thickness, units.Size)
		g.add("footing.toe", c.sp.Size(in.Footing.Toe))
		some(&g, "footing.allowable bearing", in.Footing.Bearing, units.Pressure)
		some(&g, "footing.friction", in.Footing.Friction, units.None)
		if in.Footing.Passive {
			g.add("footing.passive from", c.sp.Length(in.Footing.PassiveFrom))
		}
	}
	if in.Condition == calc.TiedToSlab {
		some(&g, "tie.slab thickness", in.Tie.SlabThickness, units.Size)
		some(&g, "tie.slab length", in.Tie.SlabLength, units.Level)
		some(&g, "tie.friction", in.Tie.Friction, units.None)
		g.choice("tie.anchor", pick([]string{"slab drag", "opposite wall", "tie"}, int(in.Tie.Anchor)))
		some(&g, "tie.strength", in.Tie.Strength, units.LineForce)
		g.choice("tie.before the slab", pick([]string{"stands alone", "rakers"}, int(in.Tie.Before)))
	}
	return g
}

func (c *calculation) carryInputs() inputs {
	in, g := c.in, c.group("sheet.inputs.carry")
	some(&g, "concrete", in.Material.Fc, units.Strength)
	some(&g, "steel", in.Material.Fy, units.Strength)
	some(&g, "cover.a", in.Material.CoverA, units.Size)
	some(&g, "cover.b", in.Material.CoverB, units.Size)
	g.choice("joint", map[bool]string{true: "roughened", false: "as cast"}[in.Roughened])
	if in.FourThirds {
		g.choice("minimum steel", "four thirds")
	}
	for _, b := range []struct {
		path string
		bars calc.Bars
	}{{"bars.vertical", in.Vertical}, {"bars.horizontal", in.Horizontal}} {
		if b.bars.Fixed {
			g.add(b.path+".size", c.sp.Bars(calc.Bar{Size: b.bars.Size, Spacing: b.bars.Spacing}))
			g.choice(b.path+".face", words.FaceCode(b.bars.Face))
			some(&g, b.path+".depth", b.bars.Depth, units.Size)
		}
	}
	switch d := in.Dowels; {
	case d.None:
		g.choice("dowels.by", "none")
	case d.Fixed:
		g.add("dowels.size", c.sp.Bars(calc.Bar{Size: d.Size, Spacing: d.Spacing}))
		some(&g, "dowels.up", d.Up, units.Size)
	}
	some(&g, "today.concrete", in.Today.Concrete, units.Strength)
	g.choice("today.floor", yesNo(in.Today.Floor))
	g.choice("today.slab", yesNo(in.Today.Slab))
	g.choice("rulebook", map[bool]string{true: "residential", false: "engineered"}[c.r.Governs == calc.Residential])
	if len(in.Sizes) > 0 {
		sizes := make([]string, len(in.Sizes))
		for i, n := range in.Sizes {
			sizes[i] = strconv.Itoa(n)
		}
		g.add("sizes", c.sp.Sentence("sheet.sizes", strings.Join(sizes, ", ")))
	}
	return g
}
