package draw

import (
	"math"
	"slices"
	"strings"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// conditionIDs name the ways to be held in the table of words.
var conditionIDs = [...]string{calc.BracedTop: "picture.braced", calc.FreeTop: "picture.free", calc.TiedToSlab: "picture.tied", calc.SoilBothSides: "picture.both"}

func conditionID(c calc.Condition) string {
	if int(c) < len(conditionIDs) {
		return conditionIDs[c]
	}
	return conditionIDs[0]
}

// describe says in a few sentences what the picture shows.
func (p *picture) describe() (title, text string) {
	in, sp := p.in, p.sp
	title = sp.Word(conditionID(in.Condition) + ".title")
	a, b := p.grades()
	parts := []string{sp.Sentence("picture.tells.wall", title, sp.Length(in.Height), sp.Size(in.Thickness)),
		sp.Sentence("picture.tells.ground", sp.Face(calc.FaceA), sp.Length(units.Length(a)))}
	if b > 0 {
		parts = append(parts, sp.Sentence("picture.tells.ground", sp.Face(calc.FaceB), sp.Length(units.Length(b))))
	}
	if in.Water.Standing {
		parts = append(parts, sp.Sentence("picture.tells.water", sp.Length(in.Water.Level)))
	}
	parts = append(parts, p.describeCurve()...)
	for i := range p.r.Bars {
		if bar := &p.r.Bars[i]; bar.Role == calc.VerticalBar || bar.Role == calc.SoilVerticalBar {
			parts = append(parts, sp.Sentence("picture.tells.bars", sp.BarSet(*bar)))
		}
	}
	return title, strings.Join(parts, " ")
}

// describeCurve says where the wall bends most, on which side, and what
// carries it.
func (p *picture) describeCurve() []string {
	if p.st == nil {
		return []string{p.sp.Word("picture.tells.nothing")}
	}
	if len(p.st.Moments) == 0 || p.st.Moments[0].Factored <= 1e-9 {
		return []string{p.sp.Word("picture.tells.no-bending")}
	}
	m := p.st.Moments[0]
	moment := func(v units.MomentPerLength) units.Quantity { return units.Of(v, units.LineMoment) }
	out := []string{p.sp.Sentence("picture.tells.bending", p.sp.Demand(moment(m.Factored)), p.sp.Length(m.At), p.sp.Face(m.TensionFace))}
	if p.held && p.r.Band.Plain > 0 {
		out = append(out, p.sp.Sentence("picture.tells.plain", p.sp.Capacity(moment(p.r.Band.Plain))))
	}
	if bars := p.bandBars(m.TensionFace); bars > 0 {
		out = append(out, p.sp.Sentence("picture.tells.with-bars", p.sp.Capacity(moment(units.MomentPerLength(bars)))))
	}
	return out
}

// table lists height, push, shear and bending at stations up the wall, from
// the top down: every foot (two for a tall wall), where the load changes, and
// where the bending is greatest.
func (p *picture) table() (head []string, rows [][]string) {
	if p.st == nil {
		return nil, nil
	}
	sp := p.sp
	head = []string{sp.Word("picture.table.height"),
		sp.Sentence("picture.table.push", sp.Unit(units.Pressure)),
		sp.Sentence("picture.table.shear", sp.Unit(units.LineForce)),
		sp.Sentence("picture.table.bending", sp.Unit(units.LineMoment)),
		sp.Word("picture.table.side")}
	d := &p.st.Factored
	for _, y := range slices.Backward(p.stations()) {
		l := units.Length(y)
		push := p.push[0].value(y, -1, false) - p.push[1].value(y, -1, false)
		if y < 1e-6 {
			push = p.push[0].foot - p.push[1].foot
		}
		below, above := d.Shear(l)
		v := math.Max(math.Abs(float64(below)), math.Abs(float64(above)))
		m := float64(d.Moment(l))
		side := ""
		switch {
		case m > 0.5:
			side = sp.Face(calc.FaceB)
		case m < -0.5:
			side = sp.Face(calc.FaceA)
		}
		rows = append(rows, []string{sp.Length(l), number(sp.Quantity(units.Of(units.Stress(push), units.Pressure))),
			number(sp.Quantity(units.Of(units.ForcePerLength(v), units.LineForce))),
			number(sp.Quantity(units.Of(units.MomentPerLength(math.Abs(m)), units.LineMoment))), side})
	}
	return head, rows
}

func (p *picture) stations() []float64 {
	space := 12.0
	if p.h > 120 {
		space = 24
	}
	if p.sp.System != 0 {
		space = (500 * units.Millimetre).Inches()
	}
	out := []float64{0, p.h}
	for y := space; y < p.h; y += space {
		out = append(out, y)
	}
	for _, b := range p.st.Factored.Breaks() {
		out = append(out, b.Inches())
	}
	for _, m := range p.st.Moments {
		out = append(out, m.At.Inches())
	}
	slices.Sort(out)
	out = slices.DeleteFunc(out, func(y float64) bool { return y < 0 || y > p.h })
	return slices.CompactFunc(out, func(a, b float64) bool { return math.Abs(a-b) < 0.03 })
}
