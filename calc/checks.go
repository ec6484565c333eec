package calc

import (
	"standingbeam/calc/units"
	"standingbeam/calc/working"
)

// checks are built with small options, so that each place that asks a question
// reads as one sentence.
type option func(*Check)

func at(y units.Length) option { return func(c *Check) { c.At, c.HasAt = y, true } }

func service(c *Check) { c.Service = true }

func compareOnly(c *Check) { c.Decides = false }

func decidesIf(b bool) option { return func(c *Check) { c.Decides = c.Decides && b } }

func of(r BarRole) option { return func(c *Check) { c.Bar = r } }

func steps(ch *working.Chain) option {
	return func(c *Check) {
		if ch != nil {
			c.Steps = ch.Steps
		}
	}
}

func because(n Note) option { return func(c *Check) { c.Because = &n } }

func by(rulebook string) option { return func(c *Check) { c.Rulebook = rulebook } }

// ask records a strength check: it holds when demand ≤ capacity, within a
// rounding of 1e-9.
func (w *wall) ask(id string, st Stage, demand, capacity units.Quantity, clause string, opts ...option) *Check {
	c := Check{ID: id, Stage: st, Demand: demand, Capacity: capacity, Clause: clause,
		Rulebook: w.aci.Name, Decides: true, State: Fails}
	if !over(demand.Base, capacity.Base) {
		c.State = Holds
	}
	return w.put(c, opts)
}

// put adds a check, with its options.
func (w *wall) put(c Check, opts []option) *Check {
	w.r.Checks = append(w.r.Checks, c)
	last := &w.r.Checks[len(w.r.Checks)-1]
	for _, o := range opts {
		o(last)
	}
	return last
}

// over reports whether a demand is more than the capacity, beyond the rounding
// of the sums: what meets its limit exactly holds, on every processor.
func over[Q ~float64](demand, capacity Q) bool { return !(demand <= capacity*(1+1e-9)+1e-12) }

// askFactor records a safety factor: demand is the factor asked for, capacity
// the actual one.
func (w *wall) askFactor(id string, st Stage, actual float64, clause string, opts ...option) *Check {
	opts = append([]option{by(w.ibc.Name), service}, opts...)
	return w.ask(id, st, units.Quantity{Base: w.ibc.StabilityFactor}, units.Quantity{Base: actual}, clause, opts...)
}

// leaveOpen records a check that lacks an answer.
func (w *wall) leaveOpen(id string, st Stage, demand units.Quantity, clause string, needs Note, opts ...option) {
	c := Check{ID: id, Stage: st, Demand: demand, NoValue: true, State: Open, Decides: true,
		Clause: clause, Rulebook: w.aci.Name, Needs: &needs}
	w.put(c, opts)
}

// failed records a check that fails without a number: what it asks about does
// not exist, because the reason given came first.
func (w *wall) failed(id string, st Stage, k units.Kind, clause string, why Note, opts ...option) {
	c := Check{ID: id, Stage: st, Demand: units.Quantity{Kind: k}, Capacity: units.Quantity{Kind: k}, NoValue: true,
		State: Fails, Decides: true, Clause: clause, Rulebook: w.aci.Name, Because: &why}
	w.put(c, opts)
}

// without records a check that does not apply, and why.
func (w *wall) without(id string, st Stage, clause string, why Note, opts ...option) {
	c := Check{ID: id, Stage: st, NoValue: true, State: NotApplicable, Clause: clause, Because: &why}
	if clause != "" {
		c.Rulebook = w.aci.Name
	}
	w.put(c, opts)
}

// chain makes a chain for the working of one check.
func chain() *working.Chain {
	c := new(struct {
		working.Chain
		places [4]working.Step
	})
	c.Steps = c.places[:0]
	return &c.Chain
}

// verdict is the worst state over the deciding checks: fails, else open, else
// holds.
func verdict(checks []Check) State {
	v := Holds
	for _, c := range checks {
		if !c.Decides {
			continue
		}
		if c.State == Fails {
			return Fails
		}
		if c.State == Open {
			v = Open
		}
	}
	return v
}

func term[Q ~float64](symbol string, v Q, k units.Kind) working.Term { return working.T(symbol, v, k) }

func number(symbol string, v float64) working.Term { return working.Number(symbol, v) }
