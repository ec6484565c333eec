package draw

import (
	"math"
	"sort"

	"standingbeam/calc"
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

// peak is the greatest value of the curve on one side.
type peak struct{ value, at float64 }

// curve is what stands beside the wall: bending on the side that goes into
// tension, the size of the shear, or the exaggerated deflection. Values are
// positive toward B and negative toward A.
type curve struct {
	show         Show
	kind         units.Kind
	d            *statics.Diagram
	cuts         []float64 // levels between which it is one polynomial
	a, b         peak      // greatest toward A (as a size) and toward B
	plain        float64   // strength of plain concrete
	barsA, barsB float64   // with bars, for either side
	side         float64   // +1 or -1: the side on which shear is drawn
}

// readCurve reads the curve of the stage out of the answer. Bending and shear
// are factored; deflection is at service loads.
func (p *picture) readCurve() {
	c := &p.curve
	c.show, c.side = p.o.Show, 1
	if p.st == nil {
		return
	}
	c.d = &p.st.Factored
	if len(p.st.Moments) > 0 && p.st.Moments[0].TensionFace == calc.FaceA {
		c.side = -1
	}
	switch c.show {
	case Bending:
		c.kind = units.LineMoment
		atB, b := c.d.MaxMoment()
		atA, a := c.d.MinMoment()
		c.b, c.a = peak{math.Max(0, float64(b)), atB.Inches()}, peak{math.Max(0, -float64(a)), atA.Inches()}
		if p.held {
			// Without a brace plain concrete carries nothing (ACI 318-19 14.2.2.2).
			c.plain = float64(p.r.Band.Plain)
		}
		c.barsA, c.barsB = p.bandBars(calc.FaceA), p.bandBars(calc.FaceB)
	case Shear:
		c.kind = units.LineForce
		at, v := c.d.MaxShear()
		c.set(peak{math.Abs(float64(v)), at.Inches()}, c.side)
		c.barsA = p.capacity("shear")
		if p.held {
			c.plain = p.capacity("plain-shear")
		}
		c.barsB = c.barsA
	case Deflected:
		c.kind = units.Deflection
		c.d = &p.st.Service
		at, v := c.d.MaxDeflection()
		c.set(peak{math.Abs(float64(v)), at.Inches()}, float64(v))
	}
	c.cut(p.in.Height.Inches())
}

func (c *curve) set(v peak, side float64) {
	if side < 0 {
		c.a = v
	} else {
		c.b = v
	}
}

// bandBars is the strength with bars for tension on face f.
func (p *picture) bandBars(f calc.Face) float64 {
	if f == p.r.Band.Face {
		return float64(p.r.Band.Bars)
	}
	return float64(p.r.Band.BarsOther)
}

// capacity is the least capacity of the checks of that name in this stage.
func (p *picture) capacity(id string) float64 {
	least := 0.0
	for i := range p.r.Checks {
		c := &p.r.Checks[i]
		if c.ID == id && c.Stage == p.st.Name && !c.NoValue && c.Capacity.Base > 0 && (least == 0 || c.Capacity.Base < least) {
			least = c.Capacity.Base
		}
	}
	return least
}

// cut collects the levels at which the polynomials meet, with three more
// between each two, so that every place where the curve changes sides falls
// between two of them.
func (c *curve) cut(top float64) {
	ends := []float64{0, top}
	for _, b := range c.d.Breaks() {
		if y := b.Inches(); y > 0 && y < top {
			ends = append(ends, y)
		}
	}
	sort.Float64s(ends)
	c.cuts = append(c.cuts, 0)
	for i := 1; i < len(ends); i++ {
		lo, hi := ends[i-1], ends[i]
		if hi-lo < 1e-6 {
			continue
		}
		for k := 1; k <= 4; k++ {
			c.cuts = append(c.cuts, lo+(hi-lo)*float64(k)/4)
		}
	}
}

// at returns the value at level y; below tells which limit is meant where the
// shear jumps.
func (c *curve) at(y float64, below bool) float64 {
	l := units.Length(y)
	switch c.show {
	case Shear:
		lo, hi := c.d.Shear(l)
		if below {
			return c.side * math.Abs(float64(lo))
		}
		return c.side * math.Abs(float64(hi))
	case Deflected:
		return float64(c.d.Deflection(l))
	}
	return float64(c.d.Moment(l))
}

// slopes returns the value and the slope at both ends of the piece from lo to
// hi, which is at most a cubic for bending and a parabola for shear: a cubic
// curve drawn from them is exact.
func (c *curve) slopes(lo, hi float64) (v0, s0, v1, s1 float64) {
	v0, v1 = c.at(lo, false), c.at(hi, true)
	switch c.show {
	case Bending:
		_, a := c.d.Shear(units.Length(lo))
		b, _ := c.d.Shear(units.Length(hi))
		return v0, float64(a), v1, float64(b)
	case Deflected:
		return v0, c.d.Slope(units.Length(lo)), v1, c.d.Slope(units.Length(hi))
	}
	m := c.at((lo+hi)/2, true)
	return v0, (4*m - 3*v0 - v1) / (hi - lo), v1, (3*v1 + v0 - 4*m) / (hi - lo)
}

// root finds where the curve changes sides between lo and hi.
func (c *curve) root(lo, hi float64) float64 {
	neg := c.at(lo, false) < 0
	for range 30 {
		m := (lo + hi) / 2
		if (c.at(m, true) < 0) == neg {
			lo = m
		} else {
			hi = m
		}
	}
	return (lo + hi) / 2
}

// of returns the greatest value on the side of a face.
func (c *curve) of(f calc.Face) peak {
	if f == calc.FaceA {
		return c.a
	}
	return c.b
}

func (c *curve) bars(f calc.Face) float64 {
	if f == calc.FaceA {
		return c.barsA
	}
	return c.barsB
}

// matters reports whether the curve is worth drawing on the side of a face,
// and banded whether the bands stand there too.
func (c *curve) matters(f calc.Face) bool {
	v := c.of(f).value
	return v > 1e-9 && v > 0.01*math.Max(c.a.value, c.b.value)
}

func (c *curve) banded(f calc.Face) bool {
	return c.show != Deflected && c.of(f).value > 1e-9 && c.of(f).value >= 0.25*math.Max(c.a.value, c.b.value)
}

// need is the value that must fit the room beside a face: the greater of
// demand and strength.
func (c *curve) need(f calc.Face) float64 {
	if !c.matters(f) {
		return 0
	}
	v := c.of(f).value
	if c.banded(f) {
		v = math.Max(v, math.Max(c.plain, c.bars(f)))
	}
	return v
}
