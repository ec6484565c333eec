package report

import (
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

type bar struct {
	Mark      calc.BarRole `json:"mark"`
	Direction string       `json:"direction"`
	Face      string       `json:"face"`
	Size      string       `json:"size"`
	Spacing   *measure     `json:"spacing"`
	Count     int          `json:"count,omitempty"`
	Levels    []measure    `json:"levels,omitempty"`
	Cover     *measure     `json:"cover,omitempty"`
	Depth     *measure     `json:"depth,omitempty"`
	Lap       measure      `json:"lap"`
	Hook      *measure     `json:"hook,omitempty"`
	Room      *measure     `json:"room for the hook,omitempty"`
	Up        *measure     `json:"up,omitempty"`
	Down      *measure     `json:"down,omitempty"`
	Length    *measure     `json:"length,omitempty"`
	Fixed     bool         `json:"fixed,omitempty"`
	Rulebook  string       `json:"rulebook"`
	Clause    string       `json:"clause,omitempty"`
}

func (p *printer) bar(b calc.Bar) bar {
	out := bar{Mark: b.Role, Direction: b.Direction, Face: words.FaceCode(b.Face), Size: words.Speaker{}.BarSize(b.Size), Spacing: p.some(b.Spacing),
		Count: b.Count, Cover: p.some(b.Cover), Depth: p.some(b.Depth), Lap: p.size(b.Lap), Hook: p.some(b.Hook), Room: p.some(b.HookAvail),
		Up: p.some(b.Up), Down: p.some(b.Down), Length: p.some(b.Length), Fixed: b.Fixed, Rulebook: b.Rulebook, Clause: b.Clause}
	for _, l := range b.Levels {
		out.Levels = append(out.Levels, p.level(l))
	}
	return out
}

type today struct {
	Permission string   `json:"permission"`
	Level      *measure `json:"level,omitempty"`
	Headline   string   `json:"headline"`
	Because    []string `json:"because"`
	Governs    string   `json:"governs,omitempty"`
	Unbraced   measure  `json:"unbraced fill"`
}

func (p *printer) today(r calc.Result, line words.Line) today {
	t := today{Permission: "do not fill", Headline: line.Title, Because: p.s.Notes(r.Today.Because), Governs: r.Today.Governs, Unbraced: p.level(r.UnbracedFill)}
	switch words.Allowed(r) {
	case calc.MayFill:
		t.Permission = "may fill"
	case calc.FillOnlyTo:
		t.Permission = "fill only to"
		level := p.level(r.Today.Level)
		t.Level = &level
	}
	return t
}

type band struct {
	Plain number `json:"plain"`
	Bars  number `json:"bars"`
	Other number `json:"bars on the other face"`
	Unit  string `json:"unit"`
	Face  string `json:"face"`
}

func (p *printer) band(b calc.Band) band {
	in := func(m units.MomentPerLength) number { return p.in(units.Of(m, units.LineMoment)) }
	return band{in(b.Plain), in(b.Bars), in(b.BarsOther), p.unit(units.LineMoment).Symbol, words.FaceCode(b.Face)}
}

type table struct {
	Name    string        `json:"name"`
	Inside  bool          `json:"inside"`
	Reasons []string      `json:"reasons"`
	Column  *measure      `json:"column,omitempty"`
	Height  *measure      `json:"height row,omitempty"`
	Fill    *measure      `json:"fill row,omitempty"`
	Plain   bool          `json:"plain"`
	Size    string        `json:"size,omitempty"`
	Spacing *measure      `json:"spacing,omitempty"`
	Note    string        `json:"footnote,omitempty"`
	Others  []alternative `json:"others,omitempty"`
}

type alternative struct {
	Size    string  `json:"size"`
	Steel   measure `json:"steel"`
	Spacing measure `json:"spacing"`
}

func (p *printer) table(t calc.TableAnswer) table {
	out := table{Name: t.Name, Inside: t.Inside, Reasons: p.s.Notes(t.Reasons), Plain: t.Plain, Spacing: p.some(t.Spacing), Note: t.Footnote}
	if t.Size > 0 {
		out.Size = words.Speaker{}.BarSize(t.Size)
	}
	if t.Row > 0 {
		column, height, fill := p.measure(units.Of(t.Column, units.Weight)), p.level(t.Row), p.level(t.FillRow)
		out.Column, out.Height, out.Fill = &column, &height, &fill
	}
	for _, o := range t.Others {
		out.Others = append(out.Others, alternative{words.Speaker{}.BarSize(o.Size), p.measure(units.Of(o.Fy, units.Strength)), p.size(o.Spacing)})
	}
	return out
}

type pair struct {
	Low     measure `json:"low"`
	High    measure `json:"high"`
	Governs string  `json:"governs,omitempty"`
}

func (p *printer) pair(l calc.LevelPair) pair {
	return pair{p.level(l.Low), p.level(l.High), l.Governs}
}

type spread struct {
	Fluid    measure  `json:"equivalent fluid"`
	Moment   measure  `json:"moment"`
	Plain    bool     `json:"plain"`
	Size     string   `json:"size,omitempty"`
	Spacing  *measure `json:"spacing,omitempty"`
	Possible bool     `json:"possible"`
}

func (p *printer) spread(s calc.Spread) spread {
	out := spread{Fluid: p.measure(units.Of(s.Fluid, units.Weight)), Moment: p.measure(units.Of(s.Moment, units.LineMoment)),
		Plain: s.Plain, Spacing: p.some(s.Spacing), Possible: s.Possible}
	if s.Size > 0 {
		out.Size = words.Speaker{}.BarSize(s.Size)
	}
	return out
}

type note struct {
	ID   string `json:"id"`
	Text string `json:"text"`
}

func (p *printer) note(n calc.Note) note { return note{n.ID, p.s.Note(n)} }
