package view

import (
	"math"
	"sort"
	"strconv"
	"strings"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// order in which checks are read: what fails first.
var order = map[State]int{Fails: 0, Open: 1, Holds: 2, Idle: 3}

// state of a check or of a verdict, as the page writes it.
func state(s calc.State) State {
	switch s {
	case calc.Fails:
		return Fails
	case calc.Open:
		return Open
	case calc.NotApplicable:
		return Idle
	}
	return Holds
}

// sortChecks puts the checks into the three lists of the page, each with what
// fails first and then what is nearest to failing. Only the check whose key is
// open carries its working.
func sortChecks(s words.Speaker, all []calc.Check, open string) (decide, compare, idle []Check) {
	seen := map[string]int{}
	for _, c := range all {
		key := c.ID + "@" + string(c.Stage)
		if seen[key]++; seen[key] > 1 {
			key += "#" + strconv.Itoa(seen[key])
		}
		one := check(s, c, key, key == open)
		switch {
		case c.State == calc.NotApplicable:
			idle = append(idle, one)
		case c.Decides:
			decide = append(decide, one)
		default:
			compare = append(compare, one)
		}
	}
	for _, list := range [][]Check{decide, compare} {
		sort.SliceStable(list, func(i, j int) bool {
			a, b := list[i], list[j]
			if order[a.State] != order[b.State] {
				return order[a.State] < order[b.State]
			}
			return a.Ratio > b.Ratio+1e-9
		})
	}
	return decide, compare, idle
}

func check(s words.Speaker, c calc.Check, key string, open bool) Check {
	one := Check{
		Key: key, ID: c.ID, Stage: string(c.Stage), State: state(c.State),
		Mark: s.State(c.State), Name: s.CheckName(c),
		Amount: Unbroken(Amount(s, c)),
	}
	if r, ok := c.Ratio(); ok {
		one.Ratio, one.HasRatio, one.Figure = r, true, figure(s, r)
	} else if c.State == calc.Fails {
		one.Ratio, one.HasRatio = math.MaxFloat64, true // it carries nothing
	}
	if c.State == calc.Fails {
		one.Note = s.Shortfall(c)
	}
	for _, n := range []*calc.Note{c.Needs, c.Because} {
		if n != nil && one.Note == "" {
			one.Note = s.Note(*n)
		}
	}
	if !open {
		return one
	}
	one.Question = s.CheckQuestion(c)
	one.Source = source(s, c.Rulebook, c.Clause)
	one.Working = workingOf(s, c, key)
	return one
}

// fewChecks is how many checks show at first, where not more fail or are open.
const fewChecks = 6

// FirstChecks parts the deciding checks into those that show at first, with
// all that fail or are open, and the rest, which hold.
func (v View) FirstChecks() (first, rest []Check) {
	n := 0
	for n < len(v.Checks) && (v.Checks[n].State != Holds || n < fewChecks) {
		n++
	}
	if n == len(v.Checks)-1 {
		n++ // a list of one is not worth a tap
	}
	return v.Checks[:n], v.Checks[n:]
}

// source names the edition and the clause behind a number.
func source(s words.Speaker, rulebook, clause string) string {
	rulebook, clause = s.Source(rulebook), s.Source(clause)
	switch {
	case rulebook == "":
		return clause
	case clause == "" || clause == rulebook:
		return rulebook
	case strings.HasPrefix(clause, rulebook):
		return clause
	}
	return s.Sentence("check.source", rulebook, clause)
}

// Amount is what is asked of what there is, "" where nothing is.
func Amount(s words.Speaker, c calc.Check) string {
	switch {
	case c.State == calc.NotApplicable:
		return ""
	case c.Demand.Base == 0 && (c.NoValue || c.Capacity.Base == 0):
		return ""
	case c.NoValue:
		return s.Sentence("check.asked", s.Demand(c.Demand))
	}
	demand, capacity := s.Amounts(c)
	if c.Service && c.Demand.Kind == units.None {
		return s.Sentence("check.factor", demand, capacity)
	}
	if number, unit, ok := strings.Cut(demand, " "); ok && unit == capacity[strings.Index(capacity, " ")+1:] && !strings.Contains(unit, " ") {
		demand = number // the unit is said once
	}
	return s.Sentence("check.amount", demand, capacity)
}

// figure writes a ratio rounded up, so that what is shown as 1.00 holds.
func figure(s words.Speaker, r float64) string {
	if r > 99 {
		return s.Word("check.far-over")
	}
	return s.Number(math.Ceil(r*100-1e-7)/100, 2)
}
