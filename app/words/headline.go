package words

import (
	"math"
	"strconv"
	"strings"

	"standingbeam/calc"
)

// Line is one line of the headline: the state, its word, what is answered and
// what that hangs on.
type Line struct {
	State  calc.State
	Mark   string
	Title  string
	Detail string
}

// Headline answers the two questions put to every wall: does it stand when it
// is finished, and may it be filled today. It says no more than the deciding
// checks do: while one fails that is the title, and while one is open the
// detail says what is missing.
func (s Speaker) Headline(r calc.Result) (finished, today Line) {
	s = s.For(r.Input.Condition)
	return s.finished(r), s.today(r)
}

func (s Speaker) finished(r calc.Result) Line {
	l := Line{State: r.Verdict, Mark: s.State(r.Verdict)}
	failing, open := sorted(r.Checks)
	switch {
	case r.Stopped:
		l.State, l.Mark = calc.Fails, s.Word("state.stopped")
		l.Title = s.Word("headline.stopped")
		l.Detail = strings.Join(s.Notes(r.Engineer), " ")
	case r.Verdict == calc.Fails && len(failing) > 0:
		l.Title = s.Sentence("headline.fails", s.inside(s.CheckName(failing[0])))
		if more := len(failing) - 1; more > 0 {
			l.Title = s.Sentence("headline.fails-more", s.inside(s.CheckName(failing[0])), strconv.Itoa(more))
		}
		l.Detail = stopped(Capital(s.Shortfall(failing[0])))
	case r.Verdict == calc.Open && len(open) > 0:
		l.Title = s.BarsAnswer(r)
		l.Detail = s.Sentence("headline.open", s.needs(open))
	case r.Verdict == calc.Holds:
		l.Title = s.BarsAnswer(r)
		l.Detail = s.plainWould(r)
	default:
		l.Title = s.Word("headline.unknown")
	}
	return l
}

// sorted returns the deciding checks that fail, worst first, and those that
// are open. A wall that turns over fails at its footing in every way: turning
// over is named first then.
func sorted(all []calc.Check) (failing, open []calc.Check) {
	worst := -1.0
	for _, c := range all {
		switch {
		case !c.Decides:
		case c.State == calc.Open:
			open = append(open, c)
		case c.State == calc.Fails:
			ratio, ok := c.Ratio()
			if !ok {
				ratio = math.MaxFloat64
			}
			if c.Because != nil && c.Because.ID == "resultant-outside" {
				ratio = 0
			}
			if failing = append(failing, c); ratio > worst {
				worst = ratio
				failing[0], failing[len(failing)-1] = c, failing[0]
			}
		}
	}
	return failing, open
}

// needs joins what the open checks lack.
func (s Speaker) needs(open []calc.Check) string {
	var out []string
	for _, c := range open {
		if c.Needs != nil {
			out = append(out, s.Note(*c.Needs))
		} else {
			out = append(out, stopped(s.CheckName(c)))
		}
	}
	return s.few(out)
}

// BarsAnswer says which verticals the wall gets and on which side, or that it
// needs none.
func (s Speaker) BarsAnswer(r calc.Result) string {
	s = s.For(r.Input.Condition)
	var sets []string
	for _, b := range r.Bars {
		if b.Role == calc.VerticalBar || b.Role == calc.SoilVerticalBar {
			sets = append(sets, s.Sentence("headline.verticals", s.BarSize(b.Size), s.Spacing(b.Spacing), s.Word("on-"+s.faceID(b.Face))))
		}
	}
	switch {
	case len(sets) > 0:
		return strings.Join(sets, s.Word("headline.and"))
	case r.Plain:
		return s.Word("headline.plain")
	}
	return s.Word("headline.no-verticals")
}

// plainWould says how much plain concrete would carry, where bars are needed.
func (s Speaker) plainWould(r calc.Result) string {
	text := s.Word("headline.holds")
	for _, c := range r.Checks {
		if c.ID == "plain-flexure" && !c.Decides && c.State == calc.Fails && c.Capacity.Base > 0 {
			return text + " " + s.Sentence("headline.plain-would", s.Fraction(c.Capacity.Base/c.Demand.Base))
		}
	}
	return text
}

// Allowed is what may be filled today, no more than the answer says: nothing
// where no number is offered, nor to a level of less than an inch.
func Allowed(r calc.Result) calc.Permission {
	if r.Stopped || r.Today.Permission == calc.FillOnlyTo && r.Today.Level < 1 {
		return calc.DoNotFill
	}
	return r.Today.Permission
}

func (s Speaker) today(r calc.Result) Line {
	because := s.Notes(r.Today.Because)
	if Allowed(r) == calc.FillOnlyTo && s.Has("name."+r.Today.Governs) && !names(r.Today.Because, r.Today.Governs) {
		because = append(because, s.Note(calc.Note{ID: "unbraced-governed", Text: r.Today.Governs}))
	}
	l := Line{State: calc.Fails, Detail: s.few(because)}
	switch Allowed(r) {
	case calc.MayFill:
		l.State, l.Mark, l.Title = calc.Holds, s.Word("today.yes"), s.Word("today.may-fill")
	case calc.FillOnlyTo:
		l.Mark, l.Title = s.Word("today.limited"), s.Sentence("today.fill-only-to", s.length(r.Today.Level, down))
	default:
		l.Mark, l.Title = s.Word("today.no"), s.Word("today.do-not-fill")
	}
	if r.Stopped {
		l.Detail = s.Word("headline.stopped")
	}
	return l
}

// names reports whether a note speaks of a check.
func names(notes []calc.Note, check string) bool {
	for _, n := range notes {
		if n.Text == check {
			return true
		}
	}
	return false
}
