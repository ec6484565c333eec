package calc_test

import (
	"fmt"
	"math"
	"reflect"
	"testing"

	"standingbeam/calc"
)

// many is how many random walls a property is held against.
const many = 1000

// TestRandomWallsAreWithin holds the maker of random walls itself: most must
// reach the calculation, of every condition, state and permission.
func TestRandomWallsAreWithin(t *testing.T) {
	seen := map[string]int{}
	made := walls(1, many, func(in calc.Input, r calc.Result) {
		seen[fmt.Sprint("condition ", in.Condition)]++
		seen[fmt.Sprint("verdict ", r.Verdict)]++
		seen[fmt.Sprint("today ", r.Today.Permission)]++
		seen[fmt.Sprint("governs ", r.Governs)]++
		seen[fmt.Sprint("plain ", r.Plain)]++
	})
	if made < many*8/10 {
		t.Errorf("%d of %d walls are within the ranges", made, many)
	}
	for _, want := range []string{"condition 0", "condition 1", "condition 2", "condition 3", "verdict 0", "verdict 1", "verdict 2",
		"today 0", "today 1", "today 2", "governs 1", "governs 2", "plain true", "plain false"} {
		if seen[want] < 5 {
			t.Errorf("%s: %d walls", want, seen[want])
		}
	}
}

// TestEquilibrium holds every stage against the balance of forces and of
// moments about the foot, from its blocks of pressure and its reactions alone.
// An axial load without eccentricity does not enter them.
func TestEquilibrium(t *testing.T) {
	walls(2, many, func(in calc.Input, r calc.Result) {
		if in.Axial.Eccentricity < 0 || in.Axial.Eccentricity > 0 {
			return
		}
		for _, s := range r.Stages {
			var force, moment [2]float64 // service, factored
			for _, p := range s.Pushes {
				h, top, low := float64(p.From-p.To), float64(p.Top), float64(p.Bottom)
				f, m := (top+low)/2*h, top*h*(float64(p.To)+h/2)+(low-top)*h/2*(float64(p.To)+h/3)
				if p.Side == 'b' {
					f, m = -f, -m
				}
				service := 1.0
				if p.Factor <= 0 {
					service = 0
				}
				force[0], moment[0] = force[0]+service*f, moment[0]+service*m
				force[1], moment[1] = force[1]+p.Factor*f, moment[1]+p.Factor*m
			}
			scale := [2]float64{1 + math.Abs(force[0]), 1 + math.Abs(force[1])}
			arm := [2]float64{1 + math.Abs(moment[0]), 1 + math.Abs(moment[1])}
			for _, x := range s.Reactions {
				force[0], force[1] = force[0]-float64(x.Service), force[1]-float64(x.Factored)
				moment[0] += float64(x.ServiceMoment) - float64(x.Service)*float64(x.At)
				moment[1] += float64(x.FactoredMoment) - float64(x.Factored)*float64(x.At)
			}
			for i := range 2 {
				if !(math.Abs(force[i]) <= 1e-9*scale[i]) || !(math.Abs(moment[i]) <= 1e-9*(arm[i]+scale[i]*240)) {
					t.Errorf("%s: off balance by %v lb/in and %v lb-in/in\n%+v", s.Name, force, moment, in)
					return
				}
			}
		}
	})
}

// TestVerdictFollowsChecks holds states, ratios and the verdict together: a
// check holds just when its demand is within its capacity, an open one has an
// unanswered question and never counts as holding, and what does not decide
// says nothing.
func TestVerdictFollowsChecks(t *testing.T) {
	walls(3, many, func(in calc.Input, r calc.Result) {
		want := calc.Holds
		for _, c := range r.Checks {
			if c.Decides && c.State == calc.Fails {
				want = calc.Fails
			}
			if c.Decides && c.State == calc.Open && want == calc.Holds {
				want = calc.Open
			}
			within := c.Demand.Base <= c.Capacity.Base*(1+2e-9)+2e-12
			over := c.Demand.Base >= c.Capacity.Base*(1+0.5e-9)
			factor := c.ID == "overturning" || c.ID == "sliding" || c.ID == "slab-drag" || c.ID == "foot-support"
			switch {
			case c.State == calc.Holds && (c.NoValue || !within && !(factor && c.Demand.Kind == c.Capacity.Kind && within)):
				t.Errorf("%s holds with %v over %v\n%+v", c.ID, c.Demand, c.Capacity, in)
			case c.State == calc.Fails && !c.NoValue && !over && c.Because == nil:
				t.Errorf("%s fails with %v within %v\n%+v", c.ID, c.Demand, c.Capacity, in)
			case c.State == calc.Open && (!c.NoValue || c.Needs == nil && c.Because == nil):
				t.Errorf("%s is open without a question\n%+v", c.ID, in)
			case c.State == calc.NotApplicable && (c.Because == nil || c.Decides):
				t.Errorf("%s does not apply: no reason, or it decides\n%+v", c.ID, in)
			}
			if ratio, ok := c.Ratio(); ok && c.State == calc.Holds && ratio > 1+1e-6 {
				t.Errorf("%s holds at %v", c.ID, ratio)
			}
		}
		if r.Verdict != want {
			t.Errorf("verdict %v, the checks say %v\n%+v", r.Verdict, want, in)
		}
		if r.Verdict == calc.Holds && !decides(r) {
			t.Errorf("holds without one deciding check\n%+v", in)
		}
	})
}

func decides(r calc.Result) bool {
	for _, c := range r.Checks {
		if c.Decides {
			return true
		}
	}
	return false
}

// TestSameInputSameAnswer holds that nothing is kept between calls.
func TestSameInputSameAnswer(t *testing.T) {
	walls(4, many/3, func(in calc.Input, r calc.Result) {
		again, err := calc.Design(in)
		if err != nil || !reflect.DeepEqual(r, again) {
			t.Errorf("another answer, %v\n%+v", err, in)
		}
	})
}

// TestOnlyNumbers holds that no answer contains NaN or an infinite number.
func TestOnlyNumbers(t *testing.T) {
	walls(5, many, func(in calc.Input, r calc.Result) {
		if path := notANumber(reflect.ValueOf(r), "result"); path != "" {
			t.Errorf("%s is no number\n%+v", path, in)
		}
	})
}

// notANumber finds a float within v that is NaN or infinite, also in
// unexported fields, and returns where.
func notANumber(v reflect.Value, path string) string {
	switch v.Kind() {
	case reflect.Float64, reflect.Float32:
		if math.IsNaN(v.Float()) || math.IsInf(v.Float(), 0) {
			return path
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if p := notANumber(v.Field(i), path+"."+v.Type().Field(i).Name); p != "" {
				return p
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			if p := notANumber(v.Index(i), fmt.Sprintf("%s[%d]", path, i)); p != "" {
				return p
			}
		}
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			return notANumber(v.Elem(), path)
		}
	}
	return ""
}
