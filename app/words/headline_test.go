package words

import (
	"math"
	"strings"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

func moment(v float64) units.Quantity {
	return units.Of(units.MomentPerLength(v)*units.LbFtPerFt, units.LineMoment)
}

var (
	bars = []calc.Bar{{Role: calc.VerticalBar, Size: 4, Spacing: 18, Face: calc.FaceB}}
	// The wall of the format's description: 1811 asked, plain 1753, bars 4122.
	plainFails = calc.Check{ID: "plain-flexure", Demand: moment(1811.19), Capacity: moment(1752.71), State: calc.Fails}
	barsHold   = calc.Check{ID: "flexure", Demand: moment(1811.19), Capacity: moment(4121.57), State: calc.Holds, Decides: true}
	barsFail   = calc.Check{ID: "flexure", Demand: moment(4000), Capacity: moment(1400), State: calc.Fails, Decides: true, HasAt: true, At: 38}
	edgeOpen   = calc.Check{ID: "floor-edge", Demand: units.Of(321.5625*units.PLF, units.LineForce), NoValue: true, State: calc.Open, Decides: true,
		Needs: &calc.Note{ID: "needs-floor-edge", Args: []units.Quantity{units.Of(321.5625*units.PLF, units.LineForce)}}}
	slides = calc.Check{ID: "sliding", Demand: units.Quantity{Base: 1.5}, Capacity: units.Quantity{Base: 1.27}, State: calc.Fails, Decides: true}
)

func TestHeadline(t *testing.T) {
	for _, test := range []struct {
		name                 string
		r                    calc.Result
		mark, title, detail  string
		today, because, when string
	}{
		{"open", calc.Result{Verdict: calc.Open, Bars: bars, Checks: []calc.Check{plainFails, barsHold, edgeOpen},
			Today: calc.TodayAnswer{Permission: calc.FillOnlyTo, Level: 37, Governs: "sliding", Because: []calc.Note{{ID: "nothing-holds-top"}, {ID: "nothing-holds-top"}}}},
			"open", "No. 4 verticals at 18 in, on the open side", "Still open: Say what the floor edge can take: it must take 322 lb/ft.",
			"FILL ONLY TO 3 ft 1 in", "Nothing holds the top yet. What ends it: sliding of the footing.", "limited"},
		{"holds", calc.Result{Verdict: calc.Holds, Bars: bars, Checks: []calc.Check{plainFails, barsHold}, Today: calc.TodayAnswer{Permission: calc.MayFill}},
			"holds", "No. 4 verticals at 18 in, on the open side", "Every check holds. Plain concrete would carry nearly all of what is asked.",
			"MAY FILL", "", "yes"},
		{"plain", calc.Result{Verdict: calc.Holds, Plain: true, Today: calc.TodayAnswer{Permission: calc.DoNotFill, Because: []calc.Note{{ID: "nothing-holds-top"}, {ID: "slab-not-in"}}}},
			"holds", "No vertical bars needed", "Every check holds.",
			"DO NOT FILL", "Nothing holds the top yet. The slab at the foot is not in yet.", "no"},
		{"fails", calc.Result{Verdict: calc.Fails, Bars: bars, Checks: []calc.Check{edgeOpen, slides, barsFail, plainFails}},
			"fails", "Does not hold: bending in the span, and 1 more", "A third of what is asked.", "DO NOT FILL", "", "no"},
		{"fails by a factor", calc.Result{Verdict: calc.Fails, Checks: []calc.Check{slides}},
			"fails", "Does not hold: sliding of the footing", "1.27 where 1.50 is asked.", "DO NOT FILL", "", "no"},
		{"stopped", calc.Result{Stopped: true, Verdict: calc.Open, Engineer: []calc.Note{{ID: "soil-swells"}}, Today: calc.TodayAnswer{Permission: calc.MayFill}},
			"stopped", "Stopped: this ground needs an engineer", "The ground swells or is organic: no number is offered for it.", "DO NOT FILL", "Stopped: this ground needs an engineer", "no"},
		{"half an inch is no fill", calc.Result{Verdict: calc.Holds, Plain: true, Today: calc.TodayAnswer{Permission: calc.FillOnlyTo, Level: 0.5}},
			"holds", "No vertical bars needed", "Every check holds.", "DO NOT FILL", "", "no"},
	} {
		finished, today := us.Headline(test.r)
		if finished.Mark != test.mark || finished.Title != test.title || finished.Detail != test.detail {
			t.Errorf("%s: finished %+v", test.name, finished)
		}
		if today.Title != test.today || today.Detail != test.because || today.Mark != test.when {
			t.Errorf("%s: today %+v", test.name, today)
		}
	}
}

// Only a wall whose every deciding check holds is said to hold.
func TestHeadlineNeverSaysMore(t *testing.T) {
	states := []calc.State{calc.Holds, calc.Fails, calc.Open, calc.NotApplicable}
	for _, a := range states {
		for _, b := range states {
			for _, verdict := range []calc.State{calc.Holds, calc.Fails, calc.Open} {
				r := calc.Result{Verdict: verdict, Plain: true, Checks: []calc.Check{{ID: "flexure", State: a, Decides: true}, {ID: "shear", State: b, Decides: true}}}
				finished, _ := us.Headline(r)
				if verdict != calc.Holds && (finished.State == calc.Holds || strings.Contains(finished.Detail, "Every check holds")) {
					t.Errorf("%v with %v, %v: %+v", verdict, a, b, finished)
				}
			}
		}
	}
}

func TestShortfall(t *testing.T) {
	steel := func(need, have float64) calc.Check {
		return calc.Check{ID: "minimum-vertical", State: calc.Fails, Demand: units.Of(units.AreaPerLength(need)*units.In2PerFt, units.SteelArea),
			Capacity: units.Of(units.AreaPerLength(have)*units.In2PerFt, units.SteelArea)}
	}
	longer := calc.Note{ID: "slab-must-be-longer", Args: []units.Quantity{units.Of(units.Length(289), units.Level)}}
	joint := calc.Note{ID: "plain-joint"}
	for _, test := range []struct {
		c    calc.Check
		want string
	}{
		{steel(0.3, 0.1), "a third of the steel needed"}, {steel(0.3, 0.099), "less than a third"}, {steel(0.3, 0), "nothing of what is asked"},
		{calc.Check{ID: "bar-spacing", State: calc.Fails, Demand: units.Of(units.Length(24), units.Size), Capacity: units.Of(units.Length(18), units.Size)}, "bars at 24 in where 18 in is the most"},
		{calc.Check{ID: "slab-drag", State: calc.Fails, Demand: units.Quantity{Base: 1.5}, Capacity: units.Quantity{Base: 1}, Because: &longer}, "1.00 where 1.50 is asked. The slab must be at least 24 ft 1 in long."},
		{calc.Check{ID: "plain-flexure", State: calc.Fails, Demand: moment(100), Capacity: moment(0), Because: &joint}, "Plain concrete passes no bending through the joint at the footing."},
		{barsHold, ""}, {edgeOpen, ""},
	} {
		got := us.Shortfall(test.c)
		if test.want == "less than a third" {
			if got == "a third of the steel needed" || !strings.HasSuffix(got, "of the steel needed") {
				t.Errorf("0.33 of the steel reads %q", got)
			}
		} else if got != test.want {
			t.Errorf("%s: got %q, want %q", test.c.ID, got, test.want)
		}
	}
}

// A share in words is never larger than the share.
func TestFraction(t *testing.T) {
	size := map[string]float64{"nearly all": 0.95, "nine tenths": 0.9, "four fifths": 0.8, "three quarters": 0.75, "two thirds": 2.0 / 3, "three fifths": 0.6, "half": 0.5,
		"two fifths": 0.4, "a third": 1.0 / 3, "a quarter": 0.25, "a fifth": 0.2, "a tenth": 0.1, "less than a tenth": 0, "nothing": 0}
	for v := 0.0; v < 1; v += 0.003 {
		word := us.Fraction(v)
		if s, ok := size[word]; !ok || s > v+1e-9 {
			t.Errorf("%v reads %q", v, word)
		}
	}
	if got := us.Fraction(math.NaN()); got != "nothing" {
		t.Errorf("NaN reads %q", got)
	}
}
