// Package soil turns ground into pressure on a wall: coefficients from a
// friction angle, equivalent fluids from a soil class, and the blocks of
// pressure of earth, water and a load spread on the ground.
//
// Levels are heights above the top of the footing. A pressure is a magnitude
// on the side it acts from; side a pushes toward B, side b toward A.
package soil
