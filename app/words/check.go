package words

import (
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// CheckName names a check: "Bending in the span", with its stage where that is
// not the finished wall: "Sliding, before the slab". What is asked of the
// unbraced wall says so in its name.
func (s Speaker) CheckName(c calc.Check) string {
	name := s.placed("name."+c.ID, c)
	if id := "name." + c.ID + "." + string(c.Bar); c.Bar != "" && s.Has(id) {
		name = s.Word(id)
	}
	if c.Stage == "" || c.Stage == calc.Finished || c.Stage == calc.Unbraced {
		return name
	}
	return s.Sentence("name-at-stage", name, s.Stage(c.Stage))
}

// placed returns the word of a check that is met at several places: ".foot" at
// the footing's top, ".up" above it with the level in {0}, else the plain one.
func (s Speaker) placed(id string, c calc.Check) string {
	if !c.HasAt {
		return s.Word(id)
	}
	place := ".up"
	if c.At <= 1e-6 {
		place = ".foot"
	}
	if s.Has(id + place) {
		return s.Sentence(id+place, s.Length(c.At))
	}
	return s.Word(id)
}

// CheckQuestion says in one sentence what a check asks.
func (s Speaker) CheckQuestion(c calc.Check) string { return s.placed("ask."+c.ID, c) }

// Stage names a stage, to stand after a comma.
func (s Speaker) Stage(st calc.Stage) string { return s.Word("stage." + string(st)) }

// State is the word of a state.
func (s Speaker) State(st calc.State) string { return s.Word("state." + StateCode(st)) }

// StateCode is the fixed word of the answer for a state.
func StateCode(st calc.State) string {
	switch st {
	case calc.Holds:
		return "holds"
	case calc.Fails:
		return "fails"
	case calc.Open:
		return "open"
	}
	return "not applicable"
}

// Shortfall says in plain words how far a check that fails falls short: "a
// third of the steel needed". It is empty for one that does not fail.
func (s Speaker) Shortfall(c calc.Check) string {
	if c.State != calc.Fails {
		return ""
	}
	share, known := c.Capacity.Base/c.Demand.Base, c.Demand.Base > 0 && !c.NoValue
	text := ""
	if known && share < 1 && c.Capacity.Base > 0 {
		id := "short." + c.ID
		if !s.Has(id) {
			id = shortID(c.Demand.Kind)
		}
		text = s.Sentence(id, s.Fraction(share), s.Demand(c.Demand), s.Capacity(c.Capacity))
	}
	switch {
	case c.Because != nil && text == "":
		return s.Note(*c.Because)
	case c.Because != nil:
		return s.Sentence("short-because", text, s.Note(*c.Because))
	case text == "" && known && share < 1:
		return s.Word("short-nothing")
	}
	return text
}

// Amounts are what is asked and what there is. Where a check only just holds and
// would read as failing, rounded toward safety, both go to the nearest.
func (s Speaker) Amounts(c calc.Check) (demand, capacity string) {
	if r, ok := c.Ratio(); ok && c.State == calc.Holds && r > 0.99 && s.crossed(c.Demand, c.Capacity) {
		return s.Quantity(c.Demand), s.Quantity(c.Capacity)
	}
	return s.Demand(c.Demand), s.Capacity(c.Capacity)
}

// crossed reports whether rounding up what is asked and down what there is
// would put the first above the second.
func (s Speaker) crossed(demand, capacity units.Quantity) bool {
	if demand.Kind == units.Level || demand.Kind == units.Size {
		return true // their steps are coarse
	}
	u := s.unit(demand.Kind)
	return rounded(demand.In(u), s.digits(demand, u), up) > rounded(capacity.In(u), s.digits(capacity, u), down)
}

// shortID is the id of the sentence for a check that has none of its own.
func shortID(k units.Kind) string {
	switch k {
	case units.None:
		return "short-factor"
	case units.Level, units.Size, units.Deflection:
		return "short-length"
	case units.SteelArea, units.BarArea:
		return "short-steel"
	}
	return "short-strength"
}

// fractions are the shares that have a word, largest first.
var fractions = []struct {
	least float64
	id    string
}{
	{0.95, "share.nearly"}, {0.9, "share.9/10"}, {0.8, "share.4/5"}, {0.75, "share.3/4"},
	{2.0 / 3, "share.2/3"}, {0.6, "share.3/5"}, {0.5, "share.1/2"}, {0.4, "share.2/5"}, {1.0 / 3, "share.1/3"},
	{0.25, "share.1/4"}, {0.2, "share.1/5"}, {0.1, "share.1/10"},
}

// Fraction says a share in words, rounded down to one that people use: 0.35 is
// "a third".
func (s Speaker) Fraction(share float64) string {
	for _, f := range fractions {
		if share >= f.least-slack {
			return s.Word(f.id)
		}
	}
	if share > 0 {
		return s.Word("share.less")
	}
	return s.Word("share.none")
}
