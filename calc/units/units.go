// Package units holds the named quantity types of the calculation.
//
// Every type is a float64 in inches, pounds-force and radians: the rules are
// the inch-pound edition of the standards, and differences of levels in feet
// and inches stay exact. A strip of wall is one inch wide, so a force per
// length is lb/in and a moment per length is lb·in/in. Metric is converted at
// the edge, see [Kind].
//
// Go does not check products of these types: unwrap through the accessors,
// compute with plain float64 in the units the formula is printed in, and wrap
// the result again.
package units

import "math"

// Length is a length in inches.
type Length float64

// Lengths. The international foot is 0.3048 m exactly.
const (
	Inch       Length = 1
	Foot       Length = 12
	Millimetre Length = 1 / 25.4
	Metre      Length = 1000 / 25.4
)

// Inches returns l in inches.
func (l Length) Inches() float64 { return float64(l) }

// Feet returns l in feet.
func (l Length) Feet() float64 { return float64(l) / 12 }

// Millimetres returns l in millimetres.
func (l Length) Millimetres() float64 { return float64(l) * 25.4 }

// Stress is a pressure or a strength in pounds-force per square inch.
type Stress float64

// Stresses and pressures. One pound-force is 4.4482216152605 N exactly.
const (
	PSI Stress = 1
	KSI Stress = 1000
	PSF Stress = 1.0 / 144
	MPa Stress = 25.4 * 25.4 / newtonPerPound
	KPa Stress = MPa / 1000
)

const newtonPerPound = 4.4482216152605

// PSI returns s in pounds per square inch.
func (s Stress) PSI() float64 { return float64(s) }

// KSI returns s in kips per square inch.
func (s Stress) KSI() float64 { return float64(s) / 1000 }

// PSF returns s in pounds per square foot.
func (s Stress) PSF() float64 { return float64(s) * 144 }

// UnitWeight is a weight per volume, or an equivalent fluid's pressure per
// depth, in pounds per cubic inch.
type UnitWeight float64

// Unit weights.
const (
	PCF     UnitWeight = 1.0 / 1728
	KNPerM3 UnitWeight = 1000 * 0.0254 * 0.0254 * 0.0254 / newtonPerPound
)

// PCF returns w in pounds per cubic foot, which is psf per foot of depth.
func (w UnitWeight) PCF() float64 { return float64(w) * 1728 }

// Force is a force in pounds.
type Force float64

// Forces.
const (
	Pound      Force = 1
	Kilonewton Force = 1000 / newtonPerPound
)

// Pounds returns f in pounds.
func (f Force) Pounds() float64 { return float64(f) }

// ForcePerLength is a force on a length of wall in pounds per inch.
type ForcePerLength float64

// Forces per length of wall.
const (
	PLF    ForcePerLength = 1.0 / 12
	KNPerM ForcePerLength = 1000 * 0.0254 / newtonPerPound
)

// PLF returns f in pounds per foot.
func (f ForcePerLength) PLF() float64 { return float64(f) * 12 }

// MomentPerLength is a moment on a length of wall in pound-inches per inch,
// which is the same number as pound-feet per foot.
type MomentPerLength float64

// Moments per length of wall.
const (
	LbFtPerFt MomentPerLength = 1
	KNmPerM   MomentPerLength = 1000 / newtonPerPound
)

// LbFtPerFt returns m in pound-feet per foot.
func (m MomentPerLength) LbFtPerFt() float64 { return float64(m) }

// AreaPerLength is an area of steel on a length of wall in square inches per
// inch.
type AreaPerLength float64

// In2PerFt is one square inch per foot.
const In2PerFt AreaPerLength = 1.0 / 12

// In2PerFt returns a in square inches per foot.
func (a AreaPerLength) In2PerFt() float64 { return float64(a) * 12 }

// Area is an area in square inches.
type Area float64

// Angle is an angle in radians.
type Angle float64

// Degree is one degree.
const Degree Angle = math.Pi / 180

// Degrees returns a in degrees.
func (a Angle) Degrees() float64 { return float64(a) * 180 / math.Pi }
