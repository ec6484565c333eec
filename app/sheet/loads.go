package sheet

import (
	"standingbeam/calc"
	"standingbeam/calc/soil"
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

var causes = [...]string{soil.Earth: "earth", soil.Water: "water", soil.SurchargeDead: "dead", soil.SurchargeLive: "live"}

// loadPart lists the pressures of every stage with their factors.
func (c *calculation) loadPart() {
	if len(c.r.Stages) == 0 {
		return
	}
	c.part("loads")
	var rows [][]string
	for _, st := range c.r.Stages {
		for _, p := range st.Pushes {
			push, at := p.Resultant()
			side := calc.FaceA
			if p.Side == 'b' {
				side = calc.FaceB
			}
			rows = append(rows, []string{
				c.sp.Stage(st.Name), c.sp.Word("sheet.cause." + pick(causes[:], int(p.Cause))), c.sp.Face(side),
				c.sp.Sentence("sheet.from-to", c.sp.Length(p.From), c.sp.Length(p.To)),
				c.sp.Sentence("sheet.from-to", c.sp.Demand(units.Of(p.Top, units.Pressure)), c.sp.Demand(units.Of(p.Bottom, units.Pressure))),
				c.sp.Sentence("sheet.push-at", c.sp.Demand(units.Of(push, units.LineForce)), c.sp.Length(at)),
				c.sp.Number(p.Factor, 2), c.sp.Note(p.Basis)})
		}
	}
	c.table("sheet-table", c.heads("sheet.load.", "stage", "cause", "side", "levels", "pressure", "push", "factor", "basis"), rows)
	c.list("sheet-dashes", []string{c.sp.Word("sheet.load.combinations"), c.sp.Word("sheet.load.opposes"), c.sp.Word("sheet.load.stability")})
	c.end()
}

func (c *calculation) heads(prefix string, ids ...string) []string {
	out := make([]string, len(ids))
	for i, id := range ids {
		out[i] = c.sp.Word(prefix + id)
	}
	return out
}

var restraints = map[statics.Restraint]string{statics.Pinned: "pinned", statics.Fixed: "fixed"}

// stagePart shows, stage by stage, the diagrams, the reactions and the
// stability of the whole.
func (c *calculation) stagePart() {
	for i := range c.r.Stages {
		st := &c.r.Stages[i]
		c.parts++
		c.open("section", "sheet-part")
		c.el("h2", "", c.sp.Sentence("sheet.numbered", c.sp.Number(float64(c.parts), 0), c.sp.Sentence("sheet.part.stage", c.sp.Stage(st.Name))))
		width, _ := c.o.size()
		c.open("div", "sheet-drawing")
		c.WriteString(c.diagrams(st, width).svg(c.sp.Sentence("sheet.part.stage", c.sp.Stage(st.Name))))
		c.close("div")
		c.table("sheet-table", c.heads("sheet.reaction.", "at", "kind", "service", "factored", "service-moment", "factored-moment"), c.reactions(st))
		c.table("sheet-table", c.heads("sheet.peak.", "what", "at", "service", "factored", "face"), c.peaks(st))
		if st.Stability != nil {
			c.table("sheet-table", []string{c.sp.Word("sheet.stability"), ""}, c.stability(st.Stability))
		}
		c.end()
	}
}

func (c *calculation) reactions(st *calc.StageResult) (rows [][]string) {
	force := func(v units.ForcePerLength) string { return c.sp.Demand(units.Of(v, units.LineForce)) }
	moment := func(v units.MomentPerLength) string {
		if v == 0 {
			return "–"
		}
		return c.sp.Demand(units.Of(max(v, -v), units.LineMoment))
	}
	for _, x := range st.Reactions {
		kind := restraints[x.Restraint]
		if kind == "" {
			kind = "spring"
		}
		rows = append(rows, []string{c.sp.Length(x.At), c.sp.Word("sheet.restraint." + kind), force(x.Service), force(x.Factored),
			moment(x.ServiceMoment), moment(x.FactoredMoment)})
	}
	return rows
}

func (c *calculation) peaks(st *calc.StageResult) (rows [][]string) {
	for _, m := range st.Moments {
		rows = append(rows, []string{c.sp.Word("picture.bending"), c.sp.Length(m.At), c.sp.Demand(units.Of(m.Service, units.LineMoment)),
			c.sp.Demand(units.Of(m.Factored, units.LineMoment)), c.sp.Face(m.TensionFace)})
	}
	for _, v := range st.Shears {
		rows = append(rows, []string{c.sp.Word("picture.shear"), c.sp.Length(v.At), c.sp.Demand(units.Of(v.Service, units.LineForce)),
			c.sp.Demand(units.Of(v.Factored, units.LineForce)), "–"})
	}
	return rows
}

// stability is the free body of wall and footing, service level.
func (c *calculation) stability(b *calc.Stability) (rows [][]string) {
	add := func(id, value string) { rows = append(rows, []string{c.sp.Word("sheet.stability." + id), value}) }
	add("normal", c.sp.Quantity(units.Of(b.Normal, units.LineForce)))
	add("driving", c.sp.Demand(units.Of(b.Driving, units.LineForce)))
	add("resisting", c.sp.Capacity(units.Of(b.Resisting, units.LineForce)))
	add("overturning", c.sp.Demand(units.Of(b.Overturning, units.LineMoment)))
	add("righting", c.sp.Capacity(units.Of(b.Righting, units.LineMoment)))
	add("overturning-factor", c.sp.Capacity(units.Of(b.OverturningFactor, units.None)))
	add("sliding-factor", c.sp.Capacity(units.Of(b.SlidingFactor, units.None)))
	add("resultant", c.sp.Size(b.Resultant))
	if b.Overturned {
		add("bearing", c.sp.Word("sheet.stability.outside"))
		return rows
	}
	add("contact", c.sp.Size(b.Contact))
	add("bearing", c.sp.Demand(units.Of(b.BearingMax, units.Pressure)))
	return rows
}
