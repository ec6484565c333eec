package calc_test

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"standingbeam/calc"
	"standingbeam/calc/soil"
	"standingbeam/calc/units"
)

func parse(t testing.TB, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

type reader func(r calc.Result, s *calc.StageResult, y units.Length) float64

// readers find quantities of the finished stage. Below top is measured from
// the wall's top.
var readers = map[string]reader{
	"top service":  func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 { return float64(last(s).Service) },
	"top factored": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 { return float64(last(s).Factored) },
	"foot service": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return float64(s.Reactions[0].Service)
	},
	"foot factored": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return float64(s.Reactions[0].Factored)
	},
	"foot moment service": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return -float64(s.Reactions[0].ServiceMoment)
	},
	"foot moment factored": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return -float64(s.Reactions[0].FactoredMoment)
	},
	"moment B service": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return float64(peak(s, calc.FaceB).Service)
	},
	"moment B factored": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return float64(peak(s, calc.FaceB).Factored)
	},
	"moment B above foot": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return float64(peak(s, calc.FaceB).At)
	},
	"moment A factored": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return float64(peak(s, calc.FaceA).Factored)
	},
	"moment B below top": func(r calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return float64(r.Input.Height - peak(s, calc.FaceB).At)
	},
	// The moment without its sign: the face is another question.
	"moment": func(_ calc.Result, s *calc.StageResult, y units.Length) float64 {
		return math.Abs(float64(s.Service.Moment(y)))
	},
	"shear service":  func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 { return float64(s.Shears[0].Service) },
	"shear factored": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 { return float64(s.Shears[0].Factored) },
	"deflection service": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		_, d := s.Service.MaxDeflection()
		return float64(d)
	},
	"deflection below top": func(r calc.Result, s *calc.StageResult, _ units.Length) float64 {
		y, _ := s.Service.MaxDeflection()
		return float64(r.Input.Height - y)
	},
	"deflection": func(_ calc.Result, s *calc.StageResult, y units.Length) float64 {
		return float64(s.Service.Deflection(y))
	},
	"push": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 { p, _ := net(s); return p },
	"push height": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		p, m := net(s)
		return m / p
	},
	"pressure": func(_ calc.Result, s *calc.StageResult, y units.Length) float64 {
		return pressure(s, y, soil.Earth, soil.Water, soil.SurchargeDead, soil.SurchargeLive)
	},
	"soil":  func(_ calc.Result, s *calc.StageResult, y units.Length) float64 { return pressure(s, y, soil.Earth) },
	"water": func(_ calc.Result, s *calc.StageResult, y units.Length) float64 { return pressure(s, y, soil.Water) },
	"surcharge": func(_ calc.Result, s *calc.StageResult, y units.Length) float64 {
		return pressure(s, y, soil.SurchargeDead)
	},
	"effective": func(_ calc.Result, s *calc.StageResult, y units.Length) float64 {
		return pressure(s, y, soil.Earth, soil.SurchargeDead)
	},
	// A wall on two pins: the loads' moment about the foot is that of the top's
	// reaction.
	"moment about foot": func(_ calc.Result, s *calc.StageResult, _ units.Length) float64 {
		return float64(last(s).Service) * float64(last(s).At)
	},
	// Mu/Sm - Pu/Ag: the axial force adds Pu/Ag Sm to the moment that the face
	// in tension carries.
	"plain tension": func(r calc.Result, _ *calc.StageResult, _ units.Length) float64 {
		h := float64(r.Input.Thickness)
		sm := h * h / 6
		var c calc.Check
		for _, c = range r.Checks {
			if c.ID == "plain-flexure" && c.Stage == calc.Finished {
				break
			}
		}
		without := 0.60 * 5 * math.Sqrt(r.Input.Material.Fc.PSI()) * sm
		return (c.Demand.Base - (c.Capacity.Base - without)) / sm
	},
	"bar V diameter": func(r calc.Result, _ *calc.StageResult, _ units.Length) float64 {
		for _, b := range r.Bars {
			if b.Role == calc.VerticalBar {
				return 2 * float64(r.Input.Thickness-r.Input.Material.CoverB-b.Depth)
			}
		}
		return math.NaN()
	},
}

func last(s *calc.StageResult) calc.Reaction { return s.Reactions[len(s.Reactions)-1] }

func peak(s *calc.StageResult, f calc.Face) calc.MomentPeak {
	for _, m := range s.Moments {
		if m.TensionFace == f {
			return m
		}
	}
	return calc.MomentPeak{}
}

// net is the push toward B of all blocks and its moment about the foot, from
// the blocks alone.
func net(s *calc.StageResult) (p, m float64) {
	for _, b := range s.Pushes {
		h, t, q := float64(b.From-b.To), float64(b.Top), float64(b.Bottom)
		sign := 1.0
		if b.Side == 'b' {
			sign = -1
		}
		p += sign * (t + q) / 2 * h
		m += sign * (t*h*(float64(b.To)+h/2) + (q-t)*h/2*(float64(b.To)+h/3))
	}
	return p, m
}

// pressure sums the blocks of the causes just above level y, or just below
// the ground, toward B.
func pressure(s *calc.StageResult, y units.Length, causes ...soil.Cause) (sum float64) {
	for _, b := range s.Pushes {
		at := b.To <= y && y < b.From || y == s.Pushes[0].From && b.From == y
		if !at || !slices.Contains(causes, b.Cause) {
			continue
		}
		v := float64(b.Bottom) + float64(b.Top-b.Bottom)*float64((y-b.To)/(b.From-b.To))
		if b.Side == 'b' {
			v = -v
		}
		sum += v
	}
	return sum
}

// readCheck reads "id demand", "id capacity", "id ratio" or "id step symbol",
// of a step or of a term in one, the last also "rounded up".
func readCheck(t testing.TB, r calc.Result, q string) float64 {
	t.Helper()
	words := strings.Fields(q)
	c := check(t, r, words[0])
	switch words[1] {
	case "demand":
		return c.Demand.Base
	case "capacity":
		return c.Capacity.Base
	case "ratio":
		v, ok := c.Ratio()
		if !ok {
			t.Fatalf("%s: %s has no ratio", r.Input.Name, c.ID)
		}
		return v
	}
	for _, s := range c.Steps {
		if s.Symbol == words[2] {
			if len(words) > 3 {
				return math.Ceil(s.Value.Base)
			}
			return s.Value.Base
		}
		for _, term := range s.With {
			if term.Symbol == words[2] {
				return term.Value.Base
			}
		}
	}
	t.Fatalf("%s: no step %s in %s", r.Input.Name, words[2], c.ID)
	return 0
}

func readStability(t testing.TB, s *calc.StageResult, q string) float64 {
	t.Helper()
	b := s.Stability
	if b == nil {
		t.Fatal("no stability")
	}
	return map[string]float64{
		"normal": float64(b.Normal), "driving": float64(b.Driving), "resisting": float64(b.Resisting),
		"overturning": float64(b.Overturning), "righting": float64(b.Righting),
		"overturning factor": b.OverturningFactor, "sliding factor": b.SlidingFactor,
		"eccentricity": float64(b.Eccentricity), "resultant": float64(b.Resultant), "contact": float64(b.Contact),
		"toe": float64(b.BearingToe), "heel": float64(b.BearingHeel), "greatest": float64(b.BearingMax),
	}[q]
}
