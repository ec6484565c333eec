// Package rebar knows the bars: their sizes, how far they must run into
// concrete to be held by it, how they lap and how they bend. Lengths follow
// ACI 318-19, chapter 25, for uncoated deformed bars.
package rebar

import (
	"standingbeam/calc/units"
)

// Bar is one size of deformed bar.
type Bar struct {
	Number   int
	Diameter units.Length
	Area     units.Area
	Weight   float64 // lb/ft
}

// sizes are the bars No. 3 to No. 11.
//
// Source: ASTM A615/A615M, Table 1.
var sizes = [9]Bar{
	{3, 0.375, 0.11, 0.376},
	{4, 0.500, 0.20, 0.668},
	{5, 0.625, 0.31, 1.043},
	{6, 0.750, 0.44, 1.502},
	{7, 0.875, 0.60, 2.044},
	{8, 1.000, 0.79, 2.670},
	{9, 1.128, 1.00, 3.400},
	{10, 1.270, 1.27, 4.303},
	{11, 1.410, 1.56, 5.313},
}

// Names are spelled out once, so that naming a bar allocates nothing.
var names = [9]string{"No. 3", "No. 4", "No. 5", "No. 6", "No. 7", "No. 8", "No. 9", "No. 10", "No. 11"}

// Sizes returns the bars from No. 3 to No. 11, smallest first.
func Sizes() []Bar {
	all := sizes
	return all[:]
}

// ByNumber returns the bar No. n, and false when there is none from 3 to 11.
func ByNumber(n int) (Bar, bool) {
	if n < 3 || n > 11 {
		return Bar{}, false
	}
	return sizes[n-3], true
}

// Name returns the bar as the trade writes it, "No. 5", and "" for no bar.
func (b Bar) Name() string {
	if b.Number < 3 || b.Number > 11 {
		return ""
	}
	return names[b.Number-3]
}

// PerLength returns the steel of bars at a spacing, As = Ab/s. It is zero
// when the spacing is not positive.
func (b Bar) PerLength(spacing units.Length) units.AreaPerLength {
	if !(spacing > 0) {
		return 0
	}
	return units.AreaPerLength(float64(b.Area) / spacing.Inches())
}

// SpacingFor returns the widest spacing at which the bars give the steel
// wanted, s = Ab/As. It is zero when no steel is wanted.
func (b Bar) SpacingFor(steel units.AreaPerLength) units.Length {
	if !(steel > 0) {
		return 0
	}
	return units.Length(float64(b.Area) / float64(steel))
}
