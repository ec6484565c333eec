package lesson

import (
	"math"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// What pushes is drawn without a jump: where the water's surface parts the
// ground, at the very level of it, the pressure is that right over and right
// under it.
func TestPressureIsOneLine(t *testing.T) {
	for system, sp := range map[string]words.Speaker{"us": {}, "metric": {System: words.Metric}} {
		k := newKit(sp, "", 80, 60)
		for _, s := range waterStops(k) {
			r := answer(k.waterWall(units.Length(s.at)))
			st := stageOf(&r, calc.Finished)
			for _, p := range st.Pushes {
				at := p.From.Inches()
				if at <= 0 || at >= r.Input.Height.Inches() {
					continue
				}
				over, here, under := pressure(st, 'a', at+1e-4), pressure(st, 'a', at), pressure(st, 'a', at-1e-4)
				if math.Abs(here-under) > 1e-3 || math.Abs(here-over) > 1e-3 {
					t.Errorf("%s, water at %s: %v psi over, %v at and %v under %v in", system, s.text, over, here, under, at)
				}
			}
		}
	}
}
