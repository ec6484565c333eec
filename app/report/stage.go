package report

import (
	"math"

	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/soil"
	"standingbeam/calc/statics"
	"standingbeam/calc/units"
)

type stage struct {
	Name      calc.Stage `json:"name"`
	Pressures []pressure `json:"pressures"`
	Reactions []reaction `json:"reactions"`
	Moment    []moment   `json:"moment"`
	Shear     []shear    `json:"shear"`
	Stability *stability `json:"stability,omitempty"`
}

type pressure struct {
	Cause  string  `json:"cause"`
	Side   string  `json:"side"`
	From   measure `json:"from"`
	To     measure `json:"to"`
	Top    measure `json:"top"`
	Bottom measure `json:"bottom"`
	Basis  string  `json:"basis"`
	Factor number  `json:"factor"`
}

type reaction struct {
	At       measure `json:"at"`
	Support  string  `json:"support"`
	Service  number  `json:"service"`
	Factored number  `json:"factored"`
	Unit     string  `json:"unit"`
	Moment   *levels `json:"moment,omitempty"`
}

type levels struct {
	Service  number `json:"service"`
	Factored number `json:"factored"`
	Unit     string `json:"unit"`
}

type moment struct {
	levels
	At   measure `json:"at"`
	Face string  `json:"tension face"`
}

type shear struct {
	levels
	At measure `json:"at"`
}

type stability struct {
	Normal            measure `json:"normal"`
	Driving           measure `json:"driving"`
	Resisting         measure `json:"resisting"`
	Overturning       measure `json:"overturning moment"`
	Righting          measure `json:"righting moment"`
	OverturningFactor number  `json:"overturning factor"`
	SlidingFactor     number  `json:"sliding factor"`
	Eccentricity      measure `json:"eccentricity"`
	Contact           measure `json:"contact"`
	Toe               measure `json:"bearing at the toe"`
	Heel              measure `json:"bearing at the heel"`
	Most              measure `json:"greatest bearing"`
	Overturned        bool    `json:"overturned"`
	MiddleThird       bool    `json:"in the middle third"`
}

// causeCode is the fixed word for what a pressure comes from.
func causeCode(c soil.Cause) string {
	switch c {
	case soil.Water:
		return "water"
	case soil.SurchargeDead:
		return "surcharge dead"
	case soil.SurchargeLive:
		return "surcharge live"
	}
	return "soil"
}

// supportCode is the fixed word for how a support holds.
func supportCode(r statics.Restraint) string {
	switch r {
	case statics.Fixed:
		return "fixed"
	case statics.Spring:
		return "spring"
	}
	return "pinned"
}

func (p *printer) stage(r calc.StageResult) stage {
	out := stage{Name: r.Name, Pressures: []pressure{}, Reactions: []reaction{}, Moment: []moment{}, Shear: []shear{}}
	for _, b := range r.Pushes {
		out.Pressures = append(out.Pressures, pressure{causeCode(b.Cause), string(rune(b.Side)), p.level(b.From), p.level(b.To),
			p.measure(units.Of(b.Top, units.Pressure)), p.measure(units.Of(b.Bottom, units.Pressure)), p.s.Note(b.Basis), number(b.Factor)})
	}
	// The highest support first, as on the drawing.
	for i := len(r.Reactions) - 1; i >= 0; i-- {
		out.Reactions = append(out.Reactions, p.reaction(r.Reactions[i]))
	}
	for _, m := range r.Moments {
		out.Moment = append(out.Moment, moment{p.moments(m.Service, m.Factored), p.level(m.At), words.FaceCode(m.TensionFace)})
	}
	for _, v := range r.Shears {
		out.Shear = append(out.Shear, shear{p.forces(v.Service, v.Factored), p.level(v.At)})
	}
	if r.Stability != nil {
		out.Stability = p.stability(*r.Stability)
	}
	return out
}

func (p *printer) forces(service, factored units.ForcePerLength) levels {
	s := p.measure(units.Of(service, units.LineForce))
	return levels{s.Value, p.in(units.Of(factored, units.LineForce)), s.Unit}
}

func (p *printer) moments(service, factored units.MomentPerLength) levels {
	s := p.measure(units.Of(service, units.LineMoment))
	return levels{s.Value, p.in(units.Of(factored, units.LineMoment)), s.Unit}
}

func (p *printer) reaction(r calc.Reaction) reaction {
	f := p.forces(r.Service, r.Factored)
	out := reaction{At: p.level(r.At), Support: supportCode(r.Restraint), Service: f.Service, Factored: f.Factored, Unit: f.Unit}
	if r.Restraint == statics.Fixed {
		m := p.moments(r.ServiceMoment, r.FactoredMoment)
		out.Moment = &m
	}
	return out
}

func (p *printer) stability(s calc.Stability) *stability {
	force := func(v units.ForcePerLength) measure { return p.measure(units.Of(v, units.LineForce)) }
	couple := func(v units.MomentPerLength) measure { return p.measure(units.Of(v, units.LineMoment)) }
	ground := func(v units.Stress) measure { return p.measure(units.Of(v, units.Pressure)) }
	if s.Overturned { // the footing presses on no ground that could be named
		s.BearingToe, s.BearingHeel, s.BearingMax = units.Stress(math.NaN()), units.Stress(math.NaN()), units.Stress(math.NaN())
	}
	return &stability{Normal: force(s.Normal), Driving: force(s.Driving), Resisting: force(s.Resisting),
		Overturning: couple(s.Overturning), Righting: couple(s.Righting),
		OverturningFactor: number(s.OverturningFactor), SlidingFactor: number(s.SlidingFactor),
		Eccentricity: p.size(s.Eccentricity), Contact: p.size(s.Contact),
		Toe: ground(s.BearingToe), Heel: ground(s.BearingHeel), Most: ground(s.BearingMax),
		Overturned: s.Overturned, MiddleThird: s.MiddleThird}
}
