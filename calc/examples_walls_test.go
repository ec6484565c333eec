package calc_test

import (
	"math"
	"strconv"
	"strings"

	"standingbeam/calc"
	"standingbeam/calc/rebar"
	"standingbeam/calc/units"
)

const (
	ft  = units.Foot
	in  = units.Inch
	pcf = units.PCF
	psf = units.PSF
	plf = units.PLF
)

// examples are the walls of the cases of each file.
var examples = map[string]func() map[string]example{
	"strips": strips, "soil": soils, "concrete": sections, "bars": barCases, "free": bodies, "four_walls": handValues, "awkward": awkward,
}

func material(fc units.Stress) calc.Material { return calc.Material{Fc: fc, Fy: 60 * units.KSI} }

func fluid(g units.UnitWeight) calc.Soil {
	return calc.Soil{Basis: calc.SoilFluid, Fluid: g, Weight: 120 * pcf}
}

// basement is a wall of 8 in held by a floor on its top and a tight slab.
func basement(height, fill units.Length, g units.UnitWeight) calc.Input {
	return calc.Input{Condition: calc.BracedTop, Height: height, GradeA: fill, Thickness: 8 * in,
		Foot: calc.Foot{Held: calc.SlabTight, SlabThickness: 4 * in}, Soil: fluid(g),
		Material: material(3000 * units.PSI), Rulebook: calc.Engineered}
}

// stem is a free wall of 8 in without a footing.
func stem(height units.Length, s calc.Soil) calc.Input {
	return calc.Input{Condition: calc.FreeTop, Height: height, GradeA: height, Thickness: 8 * in, Soil: s,
		Material: material(3000 * units.PSI)}
}

func strips() map[string]example {
	m := map[string]example{
		"beam01": {in: basement(8*ft, 8*ft, 60*pcf)},
		"beam02": {in: basement(8*ft, 7*ft, 45*pcf)},
	}
	for _, c := range []struct {
		name string
		l, h units.Length
		q    units.UnitWeight
	}{{"L8_h4_q30", 8, 4, 30}, {"L8_h6_q60", 8, 6, 60}, {"L9_h8_q60", 9, 8, 60}, {"L10_h9_q60", 10, 9, 60}, {"L8_h8_q60", 8, 8, 60}} {
		m["beam03 "+c.name] = example{in: basement(c.l*ft, c.h*ft, c.q*pcf)}
	}
	fixed := basement(8*ft, 8*ft, 60*pcf)
	fixed.Foot.Fixed = true
	m["beam04"] = example{in: fixed}
	loaded := fixed
	loaded.Surcharge.Dead = 200 * psf // times K = 60/120
	m["beam05"] = example{in: loaded, less: &fixed}
	free := stem(6*ft, fluid(30*pcf))
	m["beam07"] = example{in: free}
	carries := free
	carries.Surcharge.Dead = 200 * psf // times K = 30/120
	m["beam07 uniform"] = example{in: carries, less: &free}
	both := basement(8*ft, 7*ft, 45*pcf)
	both.Condition, both.TopHeld, both.GradeB = calc.SoilBothSides, true, 3*ft
	m["beam11"] = example{in: both}
	buried := basement(15*ft, 15*ft, 60*pcf)
	buried.Thickness, buried.Material.Fc, buried.Foot.Fixed = 10*in, 4000*units.PSI, true
	buried.Surcharge.Dead = 240 * psf // 2 ft of soil, times K = 60/120
	m["wall01"] = example{in: buried}
	tall := stem(5*units.Metre, calc.Soil{Basis: calc.SoilFriction, Weight: 16 * units.KNPerM3, Friction: 30 * units.Degree})
	tall.Thickness = 450 * units.Millimetre
	m["rw04"] = example{in: tall}
	return m
}

func soils() map[string]example {
	friction := func(phi float64, w units.UnitWeight) calc.Soil {
		return calc.Soil{Basis: calc.SoilFriction, Weight: w, Friction: units.Angle(phi) * units.Degree}
	}
	m := map[string]example{
		"lep01": {in: stem(6*units.Metre, friction(36, 16*units.KNPerM3))},
		"lep07": {in: stem(4*units.Metre, calc.Soil{Basis: calc.SoilFluid, Fluid: 0.3872 * 15 * units.KNPerM3})},
		"lep08": {in: stem(4.6*units.Metre, calc.Soil{Basis: calc.SoilFluid, Fluid: 0.297 * 16.5 * units.KNPerM3})},
		"lep08 horizontal": {in: stem(4.6*units.Metre, calc.Soil{Basis: calc.SoilFluid,
			Fluid: units.UnitWeight(coulomb(30, 20)*16.5*math.Cos(20*math.Pi/180)) * units.KNPerM3})},
		"rw08": {in: stem(10*ft, friction(30, 115*pcf))},
	}
	wet := basement(15*ft, 15*ft, 0)
	wet.Soil = calc.Soil{Basis: calc.SoilFluid, Fluid: units.UnitWeight(100*math.Sqrt(0.5)) * pcf, Weight: 100 * pcf, Saturated: 122.4 * pcf}
	wet.Water = calc.Water{Standing: true, Level: 5 * ft}
	m["lep02"] = example{in: wet}
	for _, phi := range []float64{28, 30, 32, 34, 36, 38, 40} {
		m["lep14 "+strconv.Itoa(int(phi))] = example{in: stem(10*ft, friction(phi, 120*pcf))}
	}
	for _, phi := range []float64{30, 34} {
		w := basement(10*ft, 10*ft, 0)
		w.Soil = friction(phi, 120*pcf)
		m["lep15 "+strconv.Itoa(int(phi))] = example{in: w}
	}
	layers := basement(9*ft, 9*ft, 0)
	layers.Soil = friction(30, 120*pcf)
	layers.Soil.Saturated = 125 * pcf
	layers.Surcharge.Dead = 100 * psf
	layers.Water = calc.Water{Standing: true, Level: 3 * ft}
	m["lep22"] = example{in: layers}
	return m
}

// coulomb is Coulomb's active coefficient of a vertical wall and level ground,
// with wall friction delta, in degrees.
func coulomb(phi, delta float64) float64 {
	p, d := phi*math.Pi/180, delta*math.Pi/180
	root := 1 + math.Sqrt(math.Sin(p+d)*math.Sin(p)/math.Cos(d))
	return math.Cos(p) * math.Cos(p) / (math.Cos(d) * root * root)
}

// barsAt fixes the verticals on face B.
func barsAt(size int, spacing, depth units.Length) calc.Bars {
	return calc.Bars{Fixed: true, Size: size, Spacing: spacing, Face: calc.FaceB, Depth: depth}
}

func sections() map[string]example {
	m := map[string]example{}
	section := func(name string, thickness units.Length, size int, spacing, depth units.Length) {
		w := basement(8*ft, 7*ft, 45*pcf)
		w.Thickness, w.Vertical = thickness, barsAt(size, spacing, depth)
		m[name] = example{in: w}
	}
	section("rc03 t8_As0.20", 8*in, 4, 12*in, 6*in)
	section("rc03 t10_As0.31", 10*in, 5, 12*in, 7.5*in)
	section("rc03 t10_As0.60", 10*in, 7, 12*in, 7.5*in)
	section("rc03 t12_As0.31", 12*in, 5, 12*in, 9*in)
	section("rc03 t18_As0.44", 18*in, 6, 12*in, 14.5*in)
	section("rc04 As0.20_d6", 8*in, 4, 12*in, 6*in)
	section("rc04 As0.31_d7.5", 10*in, 5, 12*in, 7.5*in)
	section("rc04 As0.44_d9", 12*in, 6, 12*in, 9*in)
	section("rc04 As0.60_d7.5", 10*in, 7, 12*in, 7.5*in)
	section("rc04 As1.58_d12.5", 16*in, 8, 6*in, 12.5*in)
	plain := basement(8*ft, 7*ft, 45*pcf)
	m["wall03"], m["plain04"] = example{in: plain}, example{in: plain}
	plain.Axial.Dead = 930 * plf // 450 and 4.8 ft of the wall at 96 psf
	m["plain04 0.9D"] = example{in: plain}
	return m
}

func barCases() map[string]example {
	m := map[string]example{}
	for _, fc := range []string{"fc3000", "fc4000"} {
		for _, no := range []int{4, 5, 6, 7, 8} {
			w := basement(8*ft, 7*ft, 45*pcf)
			w.Thickness = 12 * in
			w.Material.Fc = units.Stress(map[string]float64{"fc3000": 3000, "fc4000": 4000}[fc])
			w.Material.CoverB = 1.5 * in
			w.Vertical = barsAt(no, 12*in, 0)
			w.Dowels = calc.Dowels{Fixed: true, Size: no, Spacing: 12 * in, Position: calc.Centre}
			w.Footing = calc.Footing{Given: true, Width: 36 * in, Thickness: 24 * in, NoToe: true}
			for _, of := range []string{"dev01", "dev03"} {
				if of == "dev03" && no == 7 {
					continue // not in the source
				}
				m[strings.Join([]string{of, fc, "no" + strconv.Itoa(no)}, " ")] = example{in: w}
			}
		}
	}
	for _, b := range rebar.Sizes() {
		w := basement(8*ft, 7*ft, 45*pcf)
		w.Thickness, w.Material.CoverB = 12*in, 1.5*in
		w.Vertical = barsAt(b.Number, 12*in, 0)
		m["qty03 no"+strconv.Itoa(b.Number)] = example{in: w}
	}
	return m
}

func bodies() map[string]example {
	return map[string]example{"rw09": {in: outsideKern()}, "rw10": {in: friction()}}
}

// outsideKern is a low wall, 2 ft by 2 ft, on a footing of 10 ft by 1 ft that
// carries what makes N = 20 kip/ft, standing where e = 2.2 ft. The ground
// behind reaches the footing's top and pushes on its depth, 15 lb/ft.
func outsideKern() calc.Input {
	const load = 20000 - 2*2*150 - 10*150
	push := 30.0 / 2 / 3 // lb-ft/ft
	arm := (20000*(5-2.2) + push - 10*150*5) / (20000 - 10*150)
	return calc.Input{Condition: calc.FreeTop, Height: 2 * ft, Thickness: 24 * in, Soil: fluid(30 * pcf),
		Material: material(3000 * units.PSI), Axial: calc.Axial{Dead: load * plf},
		Footing: calc.Footing{Given: true, Width: 10 * ft, Thickness: 12 * in, Toe: units.Length(arm-1) * ft, Bearing: 6000 * psf, Friction: 0.4}}
}

// friction is a wall of 11 ft on a footing of 8 ft by 1 ft, no toe, pushed by
// 6,000 lb/ft and pressed by 12,000 lb/ft.
func friction() calc.Input {
	const fluidOf = 2 * 6000.0 / 12 / 12
	const heel = 8 - 1.5
	const load = 12000 - 1.5*11*150 - 8*150 - heel*11*100
	return calc.Input{Condition: calc.FreeTop, Height: 11 * ft, GradeA: 11 * ft, Thickness: 18 * in,
		Soil:     calc.Soil{Basis: calc.SoilFluid, Fluid: fluidOf * pcf, Weight: 100 * pcf},
		Material: material(3000 * units.PSI), Axial: calc.Axial{Dead: load * plf},
		Footing: calc.Footing{Given: true, Width: 8 * ft, Thickness: 12 * in, Bearing: 6000 * psf, Friction: 0.45}}
}
