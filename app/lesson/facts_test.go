package lesson

import (
	"math"
	"strings"
	"testing"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// kits are the two systems in which the lessons are told.
func kits() map[string]*kit {
	return map[string]*kit{
		"us":     newKit(words.Speaker{}, "t", 390, 330),
		"metric": newKit(words.Speaker{System: words.Metric}, "t", 390, 330),
	}
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %v, want %v ± %v", what, got, want, tol)
	}
}

// Full height of fill: push with the square of the height, bending with its
// cube. The figures of 8, 9 and 10 ft are those of the trade's handouts; they
// follow from (9/8)², (9/8)³, (10/8)² and (10/8)³.
func TestHeightFacts(t *testing.T) {
	k := kits()["us"]
	for _, test := range []struct {
		h          units.Length
		push, bend float64
	}{{9 * ft, 1.27, 1.42}, {10 * ft, 1.56, 1.95}} {
		push, bend := k.grown(test.h)
		near(t, "push", push, test.push, 0.005)
		near(t, "bending", bend, test.bend, 0.005)
	}
	for name, k := range kits() {
		push, bend := k.grown(heightBase(k) / 2)
		near(t, name+": push of half the height", push, 1.0/4, 1e-9)
		near(t, name+": bending of half the height", bend, 1.0/8, 1e-9)
		near(t, name+": a quarter taller", float64(heightAsked(k)/heightBase(k)), 1.25, 1e-9)
		push, bend = k.grown(heightAsked(k))
		near(t, name+": about half as much again is the push", push, 1.5625, 1e-9)
		near(t, name+": nearly twice is the bending", bend, 1.953125, 1e-9)
	}
}

// A full triangle bends a simple span most h/√3 from its light end (closed
// form), which is 0.423 h from the deep one: a little off the middle.
func TestBeamFacts(t *testing.T) {
	for name, k := range kits() {
		w := k.beamWall()
		r := answer(w)
		at := most(stageOf(&r, calc.Finished)).At
		near(t, name+": where it bends most", float64(at/w.Height), 1-1/math.Sqrt(3), 1e-6)
	}
}

// sideOf is the face that tears in the lesson of the sides.
func TestSideFacts(t *testing.T) {
	for name, k := range kits() {
		for way, want := range []calc.Face{calc.FaceA, calc.FaceB, calc.FaceB} {
			r := answer(k.sideWall(float64(way)))
			m := most(stageOf(&r, calc.Finished))
			if m.TensionFace != want || m.Factored <= 0 {
				t.Errorf("%s: held by %d tears on %v, want %v", name, way, m.TensionFace, want)
			}
			if way == 0 {
				near(t, name+": level of a free wall's greatest bending", m.At.Inches(), 0, 1e-9)
			} else {
				h := r.Input.Height
				if m.At <= h/3 || m.At >= h*2/3 {
					t.Errorf("%s: held by %d bends most at %v of %v", name, way, m.At, h)
				}
			}
		}
	}
}

// Plain concrete: 5 √f'c = 273.86 psi of 3,000 psi (ACI 318-19, 14.5.2.1, by
// hand), less than a tenth. The wall of the lesson holds 6 ft of fill and not
// 7 ft: hand values 810.0 and 1,132.0 lb-ft/ft, times 1.6, against
// 0.6 · 273.86 · 128/12 = 1,752.7 lb-ft/ft.
func TestCrackFacts(t *testing.T) {
	near(t, "5 √f'c", stretched(8*in).PSI(), 273.861, 0.0005)
	if share(float64(stretched(8*in)), float64(fc)) >= 0.1 {
		t.Error("stretched concrete carries a tenth or more")
	}
	k := kits()["us"]
	for fill, want := range map[units.Length]float64{6 * ft: 810.0, 7 * ft: 1131.9926} {
		r := answer(k.held(crackHeight(k), fill))
		near(t, "bending", float64(most(stageOf(&r, calc.Finished)).Service), want, 0.05)
		near(t, "plain", float64(r.Band.Plain), 1752.7122, 0.0001)
	}
	for name, k := range kits() {
		low, full := answer(k.held(crackHeight(k), 3*ft)), answer(k.held(crackHeight(k), crackHeight(k)))
		if float64(most(stageOf(&low, calc.Finished)).Factored) > float64(low.Band.Plain) || float64(most(stageOf(&full, calc.Finished)).Factored) < float64(full.Band.Plain) {
			t.Errorf("%s: the wall does not go from whole to cracked", name)
		}
	}
}

// One No. 4 at 16 in in an 8 in wall, by hand: As = 0.15 in²/ft, a = As fy /
// (0.85 f'c 12) = 0.2941 in, φMn = 0.9 As fy (d − a/2)/12: 2,600.7 lb-ft/ft at
// d = 4 in, 4,625.7 at d = 7 in; No. 5: As = 0.2325, a = 0.4559, 3,946.5 at
// d = 4 in. Asked: 1.6 · 45 · 10³/(9√3) = 4,618.8.
func TestPlaceFacts(t *testing.T) {
	k := kits()["us"]
	middle, asked := k.carried(placeSize, 4*in)
	bigger, _ := k.carried(placeBigger, 4*in)
	moved, _ := k.carried(placeSize, 7*in)
	wrong, _ := k.carried(placeSize, 2*in)
	near(t, "asked", asked, 1.6*45*1000/(9*math.Sqrt(3)), 0.01)
	near(t, "in the middle", middle, 2600.7, 0.05)
	near(t, "a size up", bigger, 3946.5, 0.05)
	near(t, "moved", moved, 4625.7, 0.05)
	near(t, "half as much steel again", 0.31/0.20, 1.5, 0.06)
	if wrong > middle/2 {
		t.Errorf("on the wrong side the bars carry %v of %v", wrong, middle)
	}
	for name, k := range kits() {
		middle, asked := k.carried(placeSize, k.thick()/2)
		bigger, _ := k.carried(placeBigger, k.thick()/2)
		moved, _ := k.carried(placeSize, k.pick(7*in, mm(175)))
		if middle >= asked || bigger >= asked || moved < asked || moved <= bigger {
			t.Errorf("%s: middle %v, a size up %v, moved %v of %v", name, middle, bigger, moved, asked)
		}
	}
}

// Water to the top: K (γsat − γw) + γw against K γ, with K = 45/120 and
// γw = 62.4 pcf, by hand.
func TestWaterFacts(t *testing.T) {
	for name, k := range kits() {
		dry, wet := answer(k.waterWall(0)), answer(k.waterWall(waterHeight(k)))
		sat := wet.Input.Soil.Saturated.PCF()
		const K = 45.0 / 120
		want := (K*(sat-62.4) + 62.4) / 45
		near(t, name+": push", share(thrust(stageOf(&wet, calc.Finished)), thrust(stageOf(&dry, calc.Finished))), want, 1e-3)
		bend := share(float64(most(stageOf(&wet, calc.Finished)).Service), float64(most(stageOf(&dry, calc.Finished)).Service))
		near(t, name+": bending", bend, want, 1e-3)
		near(t, name+": about double", bend, 2, 0.15)
	}
}

// A full triangle: a third at the top, two thirds at the foot.
func TestHoldFacts(t *testing.T) {
	for name, k := range kits() {
		r := answer(k.held(holdHeight(k), holdHeight(k)))
		foot, top := props(stageOf(&r, calc.Finished))
		near(t, name+": top", top/(foot+top), 1.0/3, 1e-9)
		near(t, name+": foot", foot/(foot+top), 2.0/3, 1e-9)
	}
	k := kits()["us"]
	r := answer(k.held(8*ft, 7*ft))
	foot, top := props(stageOf(&r, calc.Finished))
	near(t, "top of 7 ft of fill", top*12, 321.5625, 0.00005)
	near(t, "foot of 7 ft of fill", foot*12, 780.9375, 0.00005)
}

// A free wall of 6 ft on a footing of 4 ft, by hand: push 35 · 7²/2 = 857.5
// lb/ft; wall and footing weigh 600 + 600, the soil on a heel of 40 in 2,400
// lb/ft. Sliding 0.4 · 1,200/857.5 = 0.560 with no heel, 0.4 · 3,600/857.5 =
// 1.679 with all of it.
func TestHeelFacts(t *testing.T) {
	k := kits()["us"]
	for heel, want := range map[units.Length]float64{0: 0.560, 40 * in: 1.679} {
		r := answer(k.heelWall(heel))
		near(t, "sliding", stageOf(&r, calc.Finished).Stability.SlidingFactor, want, 0.0005)
	}
	for name, k := range kits() {
		last := 0.0
		for _, s := range heelStops(k) {
			r := answer(k.heelWall(units.Length(s.at)))
			now := stageOf(&r, calc.Finished).Stability.SlidingFactor
			if now <= last {
				t.Errorf("%s: a heel of %v does not hold better: %v after %v", name, s.text, now, last)
			}
			last = now
		}
		if last < 1.5 {
			t.Errorf("%s: the whole heel does not hold: %v", name, last)
		}
	}
}

// The tie slab, by hand: a third of 45 · 8²/2 is 480 lb/ft; 1.5 times that
// over 0.35 · 75 psf are 27.4 ft beyond the 8 ft that move: 35.4 ft.
func TestSlabFacts(t *testing.T) {
	k := kits()["us"]
	near(t, "length needed", slabNeeds(k).Feet(), math.Ceil(8+1.5*480/(0.35*75)), 1e-9)
	for name, k := range kits() {
		r := answer(k.slabWall(slabNeeds(k)))
		short := answer(k.slabWall(2 * slabHeight(k)))
		if _, asked, ok := drag(&r); !ok || asked < 1.5 {
			t.Errorf("%s: the slab that is named does not hold", name)
		}
		if _, _, ok := drag(&short); ok {
			t.Errorf("%s: a slab twice the wall's height holds", name)
		}
		near(t, name+": what moves", r.Layout.Wedge.Inches(), slabHeight(k).Inches(), 1e-9)
	}
}

// Half as high ground before the wall takes off (1/2)³ of the bending.
func TestBothFacts(t *testing.T) {
	for name, k := range kits() {
		one, two, level := answer(k.bothWall(0)), answer(k.bothWall(bothHeight(k)/2)), answer(k.bothWall(bothHeight(k)))
		whole := atFoot(stageOf(&one, calc.Finished))
		near(t, name+": taken off by half", 1-atFoot(stageOf(&two, calc.Finished))/whole, 1.0/8, 1e-9)
		near(t, name+": left of level ground", atFoot(stageOf(&level, calc.Finished))/whole, 0, 1e-9)
	}
}

// Of a third, two thirds and the whole, a third is nearest to what the wall
// stands, and not above it by more than an inch or two.
func TestWaitFacts(t *testing.T) {
	for name, k := range kits() {
		r := k.waitAnswer()
		if r.Today.Permission != calc.FillOnlyTo {
			t.Fatalf("%s: today %v", name, r.Today.Permission)
		}
		near(t, name+": a third up", float64(r.Today.Level/waitHeight(k)), 1.0/3, 0.03)
		if r.Today.Level > r.UnbracedFill {
			t.Errorf("%s: filled to %v, stands to %v", name, r.Today.Level, r.UnbracedFill)
		}
	}
}

// A full triangle bends γ h³/(9√3), times 1.6: the height at which that is what
// the wall bears is (M · 9√3 / 1.6 γ)^(1/3). The engine itself says the same:
// just below the first crossing a wall needs no verticals, just above it does;
// and it bends as the curve says.
func TestSweepFacts(t *testing.T) {
	for name, k := range kits() {
		for soil := range sweepSoils {
			for thick := range sweepThick {
				for bars := range sweepBars {
					k.picks = [3]int{soil, thick, bars}
					s := k.sweep()
					top := func(m float64) float64 {
						return min(20, math.Cbrt(m*9*math.Sqrt(3)/(1.6*sweepSoils[soil].PCF())))
					}
					near(t, name+": plain", s.plainTop.Feet(), top(s.plain), 1e-6)
					near(t, name+": bars", s.barsTop.Feet(), top(s.bars), 1e-6)
				}
				s := k.sweep()
				for h := sweepLeast(k); h <= sweepMost(k); h += 1 * ft {
					r := answer(k.sweepWall(h, false))
					near(t, name+": bending", s.bends(h)/float64(most(stageOf(&r, calc.Finished)).Factored), 1, 1e-9)
				}
				if low, high := answer(k.sweepWall(s.plainTop-in/100, false)), answer(k.sweepWall(s.plainTop+in/100, false)); !low.Plain || high.Plain {
					t.Errorf("%s: %v: plain below the crossing %v, above it %v", name, k.picks, low.Plain, high.Plain)
				}
			}
		}
		k.picks = firstPicks
		up := k.sweep()
		near(t, name+": nearest of the three answers", up.plainTop.Feet(), k.pick(7*ft, mm(2100)).Feet(), 0.9)
		k.picks[1] = 1
		if thicker := k.sweep(); thicker.plainTop-up.plainTop > up.barsTop-up.plainTop {
			t.Errorf("%s: two inches of concrete do more than bars", name)
		}
	}
}

// The three walls are judged as the engine judges them.
func TestCheckFacts(t *testing.T) {
	for name, k := range kits() {
		bars := answer(barsWall(k))
		if c := checkOf(&bars, "flexure", calc.Finished); c.State != calc.Fails || !c.Decides {
			t.Errorf("%s: bars on the soil side: %+v", name, c)
		}
		moved := barsWall(k)
		moved.Vertical.Face = calc.FaceB
		right := answer(moved)
		if c := checkOf(&right, "flexure", calc.Finished); c.State != calc.Holds {
			t.Errorf("%s: the same bars on the open side: %+v", name, c)
		}
		crawl := answer(crawlWall(k))
		if crawl.Verdict != calc.Holds || !crawl.Plain {
			t.Errorf("%s: crawl space: verdict %v, plain %v", name, crawl.Verdict, crawl.Plain)
		}
		today := answer(todayWall(k))
		if today.Verdict != calc.Holds || today.Today.Permission != calc.FillOnlyTo || today.Today.Level >= today.Input.GradeA {
			t.Errorf("%s: filled today: verdict %v, today %+v", name, today.Verdict, today.Today)
		}
	}
}

// The factor that is asked of a free wall is that of IBC 2021 1807.2.3, 1.5.
func TestAskedOfAHeel(t *testing.T) {
	f := Start(words.Speaker{}, "heel")
	f.Shown, f.At, f.Width, f.Height = true, 10, 390, 330
	if v := New(f); !strings.Contains(v.Say, "1.67 times what pushes; 1.50 is asked") {
		t.Errorf("it says %q", v.Say)
	}
}

// What a sentence states is what was measured: the figures of the facts stand
// in the answers.
func TestAnswersStateTheFacts(t *testing.T) {
	for id, want := range map[string][]string{
		"height": {"1.95", "1.56"}, "crack": {"274 psi", "11"}, "place": {"1.78", "1.52"},
		"water": {"1.95"}, "hold": {"960 lb/ft", "480 lb/ft", "14,400 lb"}, "slab": {"36 ft", "480 lb/ft", "8 ft"},
		"both": {"12.5%"}, "heights": {"7 ft 2 in"}, "beam": {"3 ft 5 in", "8 ft"},
	} {
		f := Start(words.Speaker{}, id)
		f.Shown, f.Guess, f.Width, f.Height = true, 1, 390, 330
		text := New(f).Question.Answer
		for _, w := range want {
			if !strings.Contains(text, w) {
				t.Errorf("%s: %q does not state %s", id, text, w)
			}
		}
	}
}
