package lesson

import (
	"math"
	"strconv"
	"strings"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

// sweep: bending over all heights for a soil, with what plain concrete and
// what the chosen bars carry.
var sweep = lesson{
	id: "heights", picks: true, flat: true, right: 2,
	stops: func(k *kit) []stop { return k.lengths(units.Level, sweepLeast(k), sweepMost(k), k.pick(4*in, mm(100))) },
	start: func(k *kit) float64 { return k.pick(9*ft, mm(2700)).Inches() },
	prints: func(k *kit) [3]float64 {
		return [3]float64{k.pick(6*ft, mm(1800)).Inches(), k.pick(9*ft, mm(2700)).Inches(), k.pick(11*ft, mm(3300)).Inches()}
	},
	measure: measureSweep,
	show:    showSweep,
}

func sweepLeast(k *kit) units.Length { return k.pick(4*ft, mm(1200)) }
func sweepMost(k *kit) units.Length  { return k.pick(12*ft, mm(3600)) }

// What can be chosen beside the height.
var (
	sweepSoils = []units.UnitWeight{30 * units.PCF, 45 * units.PCF, 60 * units.PCF, 100 * units.PCF}
	sweepThick = [][2]units.Length{{8 * in, mm(200)}, {10 * in, mm(250)}, {12 * in, mm(300)}}
	sweepBars  = []struct {
		size    int
		spacing [2]units.Length
	}{{4, [2]units.Length{16 * in, mm(400)}}, {5, [2]units.Length{16 * in, mm(400)}}, {5, [2]units.Length{12 * in, mm(300)}}, {6, [2]units.Length{12 * in, mm(300)}}}
	firstPicks = [3]int{1, 0, 0}
)

// ours is the length of a pair for the reader's system.
func (k *kit) ours(pair [2]units.Length) units.Length { return k.pick(pair[0], pair[1]) }

// chosen is a pick that is there.
func chosen(pick, n int) int { return min(max(pick, 0), n-1) }

// sweepWall is the wall of a height with what is chosen, filled to its top.
func (k *kit) sweepWall(h units.Length, bars bool) calc.Input {
	w := k.held(h, h)
	w.Soil.Fluid = sweepSoils[chosen(k.picks[0], len(sweepSoils))]
	w.Thickness = k.ours(sweepThick[chosen(k.picks[1], len(sweepThick))])
	if bars {
		b := sweepBars[chosen(k.picks[2], len(sweepBars))]
		w.Vertical = calc.Bars{Fixed: true, Size: b.size, Spacing: k.ours(b.spacing), Face: calc.FaceB}
	}
	return w
}

// swept is the chart's answer: what is borne, and how high the wall may be.
type swept struct {
	one               float64 // the greatest factored bending of a wall of 1 in, by the cube law
	plain, bars       float64
	plainTop, barsTop units.Length
}

// sweep answers one wall and follows from it to all heights: filled to the
// top, bending grows with the cube of the height, see [swept.bends].
func (k *kit) sweep() swept {
	r := answer(k.sweepWall(sweepLeast(k), true))
	s := swept{plain: float64(r.Band.Plain), bars: float64(r.Band.Bars)}
	h := r.Input.Height.Inches()
	s.one = share(float64(most(stageOf(&r, calc.Finished)).Factored), h*h*h)
	s.plainTop, s.barsTop = s.top(s.plain), s.top(s.bars)
	return s
}

// bends is the greatest factored bending of a wall of that height.
func (s swept) bends(h units.Length) float64 { return s.one * h.Inches() * h.Inches() * h.Inches() }

// top is the height of the wall that bends so much, 20 ft at the most.
func (s swept) top(m float64) units.Length {
	return min(20*ft, units.Length(math.Cbrt(share(m, s.one))))
}

func measureSweep(k *kit) facts {
	first := *k
	first.picks = firstPicks
	s := first.sweep()
	return facts{
		ask:     []string{k.sp.Size(k.ours(sweepThick[0])), k.sp.Quantity(units.Of(sweepSoils[1], units.Weight))},
		choices: [3][]string{{k.sp.Length(k.pick(5*ft, mm(1500)))}, {k.sp.Length(k.pick(7*ft, mm(2100)))}, {k.sp.Length(k.pick(9*ft, mm(2700)))}},
		answer:  []string{k.lowLength(s.plainTop)},
	}
}

// pickList are the choices beside the height.
func (k *kit) pickList() []Pick {
	soils := Pick{Label: k.sp.Word("lesson.heights.pick.soil"), At: chosen(k.picks[0], len(sweepSoils))}
	for _, s := range sweepSoils {
		soils.Stops = append(soils.Stops, k.sp.Quantity(units.Of(s, units.Weight)))
	}
	thick := Pick{Label: k.sp.Word("lesson.heights.pick.thick"), At: chosen(k.picks[1], len(sweepThick))}
	for _, t := range sweepThick {
		thick.Stops = append(thick.Stops, k.sp.Size(k.ours(t)))
	}
	bars := Pick{Label: k.sp.Word("lesson.heights.pick.bars"), At: chosen(k.picks[2], len(sweepBars))}
	for _, b := range sweepBars {
		bars.Stops = append(bars.Stops, k.sp.Bars(calc.Bar{Size: b.size, Spacing: k.ours(b.spacing)}))
	}
	return []Pick{soils, thick, bars}
}

// pickSlugs are the picks in an address: "45pcf", "8in", "no4-16in".
func (k *kit) pickSlugs() []string {
	b := sweepBars[chosen(k.picks[2], len(sweepBars))]
	return []string{
		strconv.FormatFloat(sweepSoils[chosen(k.picks[0], len(sweepSoils))].PCF(), 'f', 0, 64) + "pcf",
		slug(units.Size, sweepThick[chosen(k.picks[1], len(sweepThick))][0], false),
		"no" + strconv.Itoa(b.size) + "-" + slug(units.Size, b.spacing[0], false),
	}
}

// readPicks finds the picks that an address names.
func (k *kit) readPicks(parts []string) [3]int {
	out := firstPicks
	sizes := [3]int{len(sweepSoils), len(sweepThick), len(sweepBars)}
	probe := *k
	for i := range out {
		if i >= len(parts) {
			break
		}
		for n := range sizes[i] {
			probe.picks[i] = n
			if strings.EqualFold(probe.pickSlugs()[i], parts[i]) {
				out[i] = n
			}
		}
	}
	return out
}
