package units

import "strings"

// Kind says what a [Quantity] measures and in which units people read it.
type Kind uint8

// Kinds of quantity. Level is a length along the wall, read in feet; Size is a
// short one, read in inches.
const (
	None Kind = iota // a pure ratio or count
	Level
	Size
	Strength   // psi, MPa
	Pressure   // psf, kPa
	Weight     // pcf, kN/m³
	LineForce  // lb/ft, kN/m
	LineMoment // lb-ft/ft, kN-m/m
	SteelArea  // in2/ft, mm2/m
	Modulus    // in3/ft, mm3/m
	Inertia    // in4/ft, mm4/m
	Degrees    // deg
	BarArea    // in2, mm2
	Load       // lb, kN
	Deflection // in, mm, small
	Stiffness  // kip-in2/ft, kN-m2/m
	kinds
)

// Unit is one way to write a kind: its symbol and how many base units
// (inches, pounds, radians) it holds.
type Unit struct {
	Symbol string
	Base   float64
	// Digits is the number of decimals a person reads.
	Digits int
}

// Sign is the symbol as people write it, with raised powers and where no line
// breaks: in², kN/m³, lb·ft/ft. The symbol itself stays one that can be typed.
func (u Unit) Sign() string { return raise.Replace(u.Symbol) }

var raise = strings.NewReplacer("2", "²", "3", "³", "4", "⁴", "-", "·")

var table = [kinds][2]Unit{
	None:       {{"", 1, 2}, {"", 1, 2}},
	Level:      {{"ft", 12, 2}, {"m", float64(Metre), 3}},
	Size:       {{"in", 1, 2}, {"mm", float64(Millimetre), 0}},
	Strength:   {{"psi", 1, 0}, {"MPa", float64(MPa), 2}},
	Pressure:   {{"psf", float64(PSF), 0}, {"kPa", float64(KPa), 2}},
	Weight:     {{"pcf", float64(PCF), 1}, {"kN/m3", float64(KNPerM3), 2}},
	LineForce:  {{"lb/ft", float64(PLF), 0}, {"kN/m", float64(KNPerM), 2}},
	LineMoment: {{"lb-ft/ft", 1, 0}, {"kN-m/m", float64(KNmPerM), 2}},
	SteelArea:  {{"in2/ft", float64(In2PerFt), 3}, {"mm2/m", float64(Millimetre * Millimetre / Metre), 0}},
	Modulus:    {{"in3/ft", 1.0 / 12, 1}, {"mm3/m", mm * mm * mm / m, 0}},
	Inertia:    {{"in4/ft", 1.0 / 12, 0}, {"mm4/m", mm * mm * mm * mm / m, 0}},
	Degrees:    {{"deg", float64(Degree), 1}, {"deg", float64(Degree), 1}},
	BarArea:    {{"in2", 1, 2}, {"mm2", mm * mm, 0}},
	Load:       {{"lb", 1, 0}, {"kN", float64(Kilonewton), 2}},
	Deflection: {{"in", 1, 3}, {"mm", mm, 1}},
	Stiffness:  {{"kip-in2/ft", 1000.0 / 12, 0}, {"kN-m2/m", float64(Kilonewton) * m * m / m, 0}},
}

const (
	mm = float64(Millimetre)
	m  = float64(Metre)
)

// US returns the inch-pound unit of k.
func (k Kind) US() Unit { return table[k%kinds][0] }

// Metric returns the metric unit of k.
func (k Kind) Metric() Unit { return table[k%kinds][1] }

// Quantity is a number with its kind, for everything that is shown: a value of
// a working, a demand, a bound of a field. Base is in inches, pounds and
// radians, per inch of wall where the kind is per length.
type Quantity struct {
	Base float64
	Kind Kind
}

// In returns the number of units u in q.
func (q Quantity) In(u Unit) float64 { return q.Base / u.Base }

// US returns q in its inch-pound unit.
func (q Quantity) US() float64 { return q.In(q.Kind.US()) }

// Of makes a quantity from any named type of this package, which all hold
// base units.
func Of[T ~float64](v T, k Kind) Quantity { return Quantity{float64(v), k} }
