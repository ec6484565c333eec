package soil

import (
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

// Cause is what a block of pressure comes from.
type Cause uint8

// Causes.
const (
	Earth Cause = iota
	Water
	SurchargeDead
	SurchargeLive
)

// Block is a stretch of one cause's pressure, linear between level From, the
// upper one, and To, the lower one. Top and Bottom are magnitudes, ≥ 0.
type Block struct {
	Cause       Cause
	Side        byte // 'a' or 'b': the side it acts from
	From, To    units.Length
	Top, Bottom units.Stress
}

// Load returns the block times factor as a load on the strip: positive from
// side a, negative from side b.
func (b Block) Load(factor float64) statics.Load {
	if b.Side == 'b' {
		factor = -factor
	}
	f := units.Stress(factor)
	return statics.Load{From: b.To, To: b.From, AtFrom: b.Bottom * f, AtTo: b.Top * f}
}

// Ground is the ground on one side of a wall, level with the wall's length.
type Ground struct {
	Grade units.Length // level of the ground
	Floor units.Length // the lowest level the pressure is wanted for

	Moist     units.UnitWeight // soil above the water
	Saturated units.UnitWeight // soil below the water, with the water in it
	K         float64          // horizontal over vertical effective stress
	Fluid     units.UnitWeight // over 0: pressure per depth above the water, in place of K·Moist

	Dead, Live units.Stress // spread on the ground

	Wet   bool
	Water units.Length // level of standing water, of a wet ground

	Side byte // 'a' or 'b'
}

// Pressure returns the blocks of pressure on the wall between the ground and
// the floor level, none of them empty and none lower than the floor:
//
//	earth above the water:  K γ z
//	earth below it:         K (γ z1 + (γsat − γw) z2)
//	water:                  γw z2
//	surcharge:              K q, from the ground down
//
// with z the depth below the ground, z1 the depth of the water's level below
// the ground and z2 the depth below that level. The earth is split at the
// water's level. Water above the ground is counted from its own level down.
// Saturated soil lighter than water counts as weightless. There is no pressure
// where the ground does not rise above the floor. Valid for numbers ≥ 0; the
// caller validates, and a block that is no number is refused by the strip.
//
// Source: IBC 2021 1610.1 (buoyant soil and full hydrostatic pressure below
// the water, surcharge added).
func Pressure(g Ground) []Block {
	if !(g.Grade > g.Floor) {
		return nil
	}
	return Append(make([]Block, 0, 5), g)
}

// Append appends the blocks of [Pressure] to out, for callers that ask often.
func Append(out []Block, g Ground) []Block {
	if !(g.Grade > g.Floor) {
		return out
	}
	add := func(c Cause, from, to units.Length, top, bottom float64) {
		if from > to && (top != 0 || bottom != 0) {
			out = append(out, Block{c, g.Side, from, to, units.Stress(top), units.Stress(bottom)})
		}
	}
	water := g.Floor
	if g.Wet {
		water = max(g.Floor, g.Water)
	}
	level := min(water, g.Grade) // where the moist earth ends
	rate := g.K * float64(g.Moist)
	if g.Fluid > 0 {
		rate = float64(g.Fluid)
	}
	buoyant := g.K * float64(max(0, g.Saturated-WaterWeight))
	atLevel := rate * float64(g.Grade-level)
	add(Earth, g.Grade, level, 0, atLevel)
	add(Earth, level, g.Floor, atLevel, atLevel+buoyant*float64(level-g.Floor))
	add(Water, water, g.Floor, 0, float64(WaterWeight)*float64(water-g.Floor))
	add(SurchargeDead, g.Grade, g.Floor, g.K*float64(g.Dead), g.K*float64(g.Dead))
	add(SurchargeLive, g.Grade, g.Floor, g.K*float64(g.Live), g.K*float64(g.Live))
	return out
}

// Thrust returns the whole push of the blocks of one side and the level at
// which it acts; 0 at level 0 where there is none.
func Thrust(blocks []Block, side byte) (push units.ForcePerLength, level units.Length) {
	var p, m float64
	for _, b := range blocks {
		if b.Side != side {
			continue
		}
		f, at := b.Resultant()
		p += float64(f)
		m += float64(f) * at.Inches()
	}
	if !(p > 0) {
		return 0, 0
	}
	return units.ForcePerLength(p), units.Length(m / p)
}

// Resultant returns the push of the block and the level at which it acts.
func (b Block) Resultant() (push units.ForcePerLength, level units.Length) {
	h, t, q := float64(b.From-b.To), b.Top.PSI(), b.Bottom.PSI()
	if !(t+q > 0) {
		return 0, b.To
	}
	return units.ForcePerLength((t + q) / 2 * h), b.To + units.Length(h/3*(2*t+q)/(t+q))
}
