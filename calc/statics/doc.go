// Package statics solves the strip: one inch of wall, a beam that stands on
// end. A piecewise-linear load gives, exactly, a piecewise-quadratic shear, a
// piecewise-cubic moment, a slope of the fourth and a deflection of the fifth
// degree; nothing is sampled. One solver serves every way to be held: a
// cantilever, a simple span, a propped or a continuous strip, with overhangs
// and on springs.
//
// # Signs
//
// y is the height above the top of the footing. A load is positive toward
// side B, a reaction positive toward side A. The shear
//
//	V(y) = everything above y that pushes toward B, less the reactions above y
//
// so that a braced wall has V > 0 at its foot. The moment is positive with
// tension on face B, and
//
//	dM/dy = V,  dV/dy = −w
//
// The deflection u is positive toward B, the slope is du/dy, and
//
//	EI d²u/dy² = −M
//
// # Method
//
// As many supports as statics needs carry the strip (the base, the stiffest
// there are); the other reactions X make the complementary energy
//
//	½ ∫ M²/EI dy + ½ Σ R²/k
//
// least, which is a small symmetric system. A determinate strip has no X and
// needs no system. Equilibrium never rests on the quality of X, because the
// base takes what is left by statics alone.
//
// Source: elementary beam theory (the force method), as in any textbook of
// structural analysis.
package statics
