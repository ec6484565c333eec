package calc

import (
	"fmt"

	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

// RangeError reports an input outside the range that the calculation permits.
type RangeError struct {
	Field    string         // key path of the wall file: "footing.width"
	ID       string         // word id of the message
	Value    units.Quantity // what was given
	Min, Max units.Quantity // inclusive
	Source   string         // clause or reason
}

// Error returns the fault in plain inch-pound English; the page and the file
// reader say it in words of their own.
func (e *RangeError) Error() string {
	if e.ID != "out-of-range" {
		return e.Field + ": " + e.ID
	}
	u := e.Value.Kind.US()
	return fmt.Sprintf("%s: %.6g %s is not between %.6g and %.6g %s",
		e.Field, e.Value.US(), u.Symbol, e.Min.US(), e.Max.US(), u.Symbol)
}

// Limits of the inputs. The wall's are the product's; the strengths are ACI
// 318-19 Table 19.2.1.1 (2500 psi at least) and 20.2.2.4.
var (
	heightMin, heightMax       = 2 * units.Foot, 20 * units.Foot
	thicknessMin, thicknessMax = 5.5 * units.Inch, 24 * units.Inch
	fcMin, fcMax               = 2500 * units.PSI, 8000 * units.PSI
)

type ranges struct{ errs []*RangeError }

// within records an error unless lo ≤ v ≤ hi, which NaN fails. A limit typed in
// another unit than the sums' may pass it by the rounding of that.
func within[Q ~float64](r *ranges, field string, k units.Kind, v, lo, hi Q) {
	hair := 1e-12 + 1e-9*max(lo, -lo, hi, -hi)
	if v >= lo-hair && v <= hi+hair {
		return
	}
	r.errs = append(r.errs, &RangeError{Field: field, ID: "out-of-range",
		Value: units.Of(v, k), Min: units.Of(lo, k), Max: units.Of(hi, k)})
}

func (r *ranges) choice(field, id string, ok bool) {
	if !ok {
		r.errs = append(r.errs, &RangeError{Field: field, ID: id})
	}
}

// Validate returns every input outside its permitted range. A value of zero
// means "left out" for the optional ones.
func (in Input) Validate() []*RangeError {
	r := &ranges{}
	within(r, "height", units.Level, in.Height, heightMin, heightMax)
	within(r, "thickness", units.Size, in.Thickness, thicknessMin, thicknessMax)
	top := clamp(in.Height, heightMin, heightMax)
	within(r, "grade.a", units.Level, in.GradeA, 0, top)
	within(r, "grade.b", units.Level, in.GradeB, 0, top)
	r.choice("grade.b", "low-side-higher", !(in.GradeB > in.GradeA*(1+1e-9)))
	foot := clamp(footLevel(in.Foot), 0, heightMax)
	if in.Brace != 0 {
		within(r, "brace", units.Level, in.Brace, foot+1*units.Foot, top)
	}
	r.choice("condition", "choice-unknown", in.Condition <= SoilBothSides && in.Rulebook <= Residential && in.Foot.Held <= SlabLater &&
		in.Soil.Basis <= SoilFriction && in.Tie.Anchor <= TieStrength && in.Tie.Before <= Rakers && in.Floor <= FloorRigid &&
		in.Vertical.Face <= Centre && in.Horizontal.Face <= Centre && in.Dowels.Position <= Centre)
	r.choice("foot.fixed", "fixed-foot-slab", !(in.Foot.Fixed && footLevel(in.Foot) > 0))
	in.validateSoil(r)
	in.validateMaterial(r)
	in.validateFooting(r, top)
	in.validateTie(r)
	in.validateBars(r, top)
	return r.errs
}

func (in Input) validateSoil(r *ranges) {
	s := in.Soil
	switch s.Basis {
	case SoilClass:
		known, _ := soil.ClassKnown(s.Class)
		r.choice("soil.class", "soil-class-unknown", known)
	case SoilFluid:
		within(r, "soil.equivalent fluid", units.Weight, s.Fluid, 15*units.PCF, 150*units.PCF)
	case SoilFriction:
		within(r, "soil.friction angle", units.Degrees, s.Friction, 15*units.Degree, 45*units.Degree)
		within(r, "soil.unit weight", units.Weight, s.Weight, 60*units.PCF, 150*units.PCF)
	}
	if s.Weight != 0 && s.Basis != SoilFriction {
		within(r, "soil.unit weight", units.Weight, s.Weight, 60*units.PCF, 150*units.PCF)
	}
	if s.Saturated != 0 {
		within(r, "soil.saturated weight", units.Weight, s.Saturated, 80*units.PCF, 160*units.PCF)
		r.choice("soil.saturated weight", "saturated-below-moist", !(s.Saturated < s.Weight))
	}
	if s.Basis == SoilFluid && s.Weight > 0 {
		r.choice("soil.unit weight", "fluid-above-weight", !(s.Fluid > s.Weight*1.25))
	}
	within(r, "surcharge.dead", units.Pressure, in.Surcharge.Dead, 0, 2000*units.PSF)
	within(r, "surcharge.live", units.Pressure, in.Surcharge.Live, 0, 2000*units.PSF)
	if in.Water.Standing {
		within(r, "water", units.Level, in.Water.Level, 0, clamp(in.GradeA, 0, heightMax))
	}
}

func (in Input) validateMaterial(r *ranges) {
	m := in.Material
	within(r, "concrete", units.Strength, m.Fc, fcMin, fcMax)
	fy := m.Fy.KSI()
	r.choice("steel", "steel-grade", near(fy, 40) || near(fy, 60) || near(fy, 80))
	most := clamp(in.Thickness, thicknessMin, thicknessMax) / 2
	if m.CoverA != 0 {
		within(r, "cover.a", units.Size, m.CoverA, 0.5*units.Inch, most)
	}
	if m.CoverB != 0 {
		within(r, "cover.b", units.Size, m.CoverB, 0.5*units.Inch, most)
	}
	within(r, "axial.dead", units.LineForce, in.Axial.Dead, 0, 20000*units.PLF)
	within(r, "axial.live", units.LineForce, in.Axial.Live, 0, 20000*units.PLF)
	within(r, "axial.eccentricity", units.Size, in.Axial.Eccentricity, -most, most)
	within(r, "floor edge", units.LineForce, in.FloorEdge, 0, 20000*units.PLF)
	if in.Today.Concrete != 0 {
		within(r, "today.concrete", units.Strength, in.Today.Concrete, 500*units.PSI, fcMax)
	}
	if in.Foot.SlabThickness != 0 {
		within(r, "foot.slab thickness", units.Size, in.Foot.SlabThickness, 2*units.Inch, 12*units.Inch)
	}
	within(r, "foot.slab underside", units.Level, in.Foot.SlabBase, 0, in.slabLimit())
}

// slabLimit is the highest underside of a slab at the foot: a foot of wall
// must span above it.
func (in Input) slabLimit() units.Length {
	top := clamp(in.Height, heightMin, heightMax)
	if in.Brace != 0 && in.Brace >= 2*units.Foot {
		top = min(top, in.Brace)
	}
	if in.Condition == TiedToSlab {
		top = min(top, clamp(in.GradeA, heightMin, heightMax))
	}
	return min(top/2, top-1.5*units.Foot)
}

func (in Input) validateFooting(r *ranges, top units.Length) {
	f := in.Footing
	if !f.Given {
		return
	}
	t := clamp(in.Thickness, thicknessMin, thicknessMax)
	within(r, "footing.width", units.Size, f.Width, t, 20*units.Foot)
	within(r, "footing.thickness", units.Size, f.Thickness, 6*units.Inch, 36*units.Inch)
	if !f.NoToe {
		within(r, "footing.toe", units.Size, f.Toe, 0, clamp(f.Width-t, 0, 20*units.Foot))
	}
	if f.Bearing != 0 {
		within(r, "footing.allowable bearing", units.Pressure, f.Bearing, 500*units.PSF, 20000*units.PSF)
	}
	if f.Friction != 0 {
		within(r, "footing.friction", units.None, f.Friction, 0.1, 0.8)
	}
	if f.Passive {
		within(r, "footing.passive from", units.Level, f.PassiveFrom, -clamp(f.Thickness, 6*units.Inch, 36*units.Inch), 0)
	}
}

func (in Input) validateTie(r *ranges) {
	if in.Condition != TiedToSlab {
		return
	}
	within(r, "tie.slab thickness", units.Size, in.Tie.SlabThickness, 3*units.Inch, 12*units.Inch)
	if in.Tie.SlabLength != 0 {
		within(r, "tie.slab length", units.Level, in.Tie.SlabLength, 1*units.Foot, 200*units.Foot)
	}
	if in.Tie.Friction != 0 {
		within(r, "tie.friction", units.None, in.Tie.Friction, 0.1, 0.8)
	}
	if in.Tie.Strength != 0 {
		within(r, "tie.strength", units.LineForce, in.Tie.Strength, 10*units.PLF, 50000*units.PLF)
	}
}

func (in Input) validateBars(r *ranges, top units.Length) {
	for _, set := range []struct {
		path string
		b    Bars
	}{{"bars.vertical", in.Vertical}, {"bars.horizontal", in.Horizontal}} {
		if !set.b.Fixed {
			continue
		}
		r.choice(set.path+".size", "bar-size", set.b.Size >= 3 && set.b.Size <= 11)
		within(r, set.path+".spacing", units.Size, set.b.Spacing, 2*units.Inch, 96*units.Inch)
		if set.b.Depth != 0 {
			within(r, set.path+".depth", units.Size, set.b.Depth, 0.5*units.Inch, clamp(in.Thickness, thicknessMin, thicknessMax)-0.5*units.Inch)
		}
	}
	if d := in.Dowels; d.Fixed && !d.None {
		r.choice("dowels.size", "bar-size", d.Size >= 3 && d.Size <= 11)
		within(r, "dowels.spacing", units.Size, d.Spacing, 2*units.Inch, 96*units.Inch)
		if d.Up != 0 {
			within(r, "dowels.up", units.Size, d.Up, 4*units.Inch, top)
		}
	}
	for _, n := range in.Sizes {
		r.choice("sizes", "bar-size", n >= 3 && n <= 11)
	}
	r.choice("seismic category", "seismic-category", seismicKnown(in.Seismic))
}

func seismicKnown(c string) bool {
	switch c {
	case "", "A", "B", "C", "D", "D0", "D1", "D2", "E", "F":
		return true
	}
	return false
}

// clamp brings v between lo and hi; what is no number becomes lo.
func clamp[Q ~float64](v, lo, hi Q) Q {
	if !(v >= lo) {
		return lo
	}
	return min(v, hi)
}

func near[Q ~float64](a, b Q) bool {
	d := a - b
	return d < 1e-6 && d > -1e-6
}
