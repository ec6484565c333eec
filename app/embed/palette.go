package embed

// Contrasts that are asked for.
//
// Source: WCAG 2.2, 1.4.3 (text), 1.4.6 (text in strong sun) and 1.4.11 (lines
// that mean something).
const (
	textContrast  = 4.5
	glareContrast = 7
	lineContrast  = 3
)

// glare is the theme for strong sun.
const glare = "glare"

// Colors are those that another site wants. The rest follow from them.
type Colors struct{ Paper, Ink, Push, Steel Given }

// Var is one custom property of the page's style and its value.
type Var struct{ Name, Value string }

// Palette is every color of the page.
type Palette struct {
	Theme   string // "light", "dark" or "glare", "" when no color was wanted
	Vars    []Var
	Refused []Refusal
}

// base are the page's own colors, as its style has them.
type base struct {
	paper, ink, push, steel, water, fail, hold, open string
	earth, hatch, ground, wood, grain                string
}

var bases = map[string]base{
	"light": {
		paper: "#fffdf8", ink: "#14130f", push: "#86380c", steel: "#174f7f", water: "#0b5878",
		fail: "#8f1616", hold: "#14502b", open: "#604300",
		earth: "#f5ecd9", hatch: "#d3bd92", ground: "#5a4318", wood: "#f3dfb4", grain: "#a07d3a",
	},
	"dark": {
		paper: "#14130f", ink: "#f7f3e8", push: "#ffa06b", steel: "#8fc7f7", water: "#72d2ee",
		fail: "#ffa096", hold: "#8fe0a8", open: "#f4ca62",
		earth: "#241f16", hatch: "#6b5836", ground: "#c8a863", wood: "#4a3b1d", grain: "#b8955a",
	},
	glare: {
		paper: "#ffffff", ink: "#000000", push: "#7a2500", steel: "#003c78", water: "#004556",
		fail: "#8a0000", hold: "#00401b", open: "#4a3300",
		earth: "#ffffff", hatch: "#7d6b45", ground: "#4a3300", wood: "#ffffff", grain: "#5f4512",
	},
}

// Palette chooses every color so that text has a contrast of 4.5 to 1, in glare
// 7 to 1, and lines that mean something one of 3 to 1. A color that is wanted and cannot
// have that is refused; the page then keeps its own.
func (c Colors) Palette(theme string) Palette {
	if c == (Colors{}) {
		return Palette{Theme: theme}
	}
	var p Palette
	p.Theme = c.theme(theme)
	b, text := bases[p.Theme], textContrast
	if p.Theme == glare {
		text = glareContrast
	}
	paper, ink := c.Paper.or(b.paper), c.Ink.or(b.ink)
	if Contrast(ink, paper) < text {
		p.refuse("color-paper", c.Paper)
		p.refuse("color-ink", c.Ink)
		paper, ink = hex(b.paper), hex(b.ink)
	}
	own := func(color string) Color { return toward(hex(color), ink, paper, text) }
	wanted := func(key string, g Given, color string) Color {
		if g.Is && Contrast(g.Color, paper) >= text {
			return g.Color
		}
		p.refuse(key, g)
		return own(color)
	}
	push, steel := wanted("color-push", c.Push, b.push), wanted("color-steel", c.Steel, b.steel)
	field := ground(mixed(paper, ink, 0.07), ink, paper, text)
	muted := toward(mixed(ink, paper, 0.25), ink, field, text)
	muted = toward(muted, ink, paper, text)
	line := func(color string) Color { return toward(hex(color), ink, paper, lineContrast) }
	p.set("paper", paper, "raised", paper, "ink", ink, "over", ink, "muted", muted, "soft", muted, "field", field,
		"push", push, "steel", steel, "water", own(b.water), "fail", own(b.fail), "hold", own(b.hold), "open", own(b.open),
		"line", toward(mixed(paper, ink, 0.5), ink, paper, lineContrast), "hair", mixed(paper, ink, 0.16),
		"caution", ground(mixed(paper, push, 0.08), ink, paper, text),
		"concrete", mixed(paper, ink, 0.05), "stone", mixed(paper, ink, 0.5), "band", mixed(paper, ink, 0.5),
		"earth", ground(mixed(paper, hex(b.earth), 0.6), ink, paper, text), "hatch", mixed(paper, hex(b.hatch), 0.7), "ground", line(b.ground),
		"push-tint", mixed(push, paper, 0.35), "water-tint", mixed(own(b.water), paper, 0.5),
		"wood", mixed(paper, hex(b.wood), 0.7), "grain", line(b.grain))
	if p.Theme == glare { // no tints, and every line can be seen
		p.set("field", paper, "caution", paper, "earth", paper, "concrete", paper, "wood", paper, "muted", ink, "soft", ink,
			"line", ink, "band", ink, "hair", line(b.hatch), "hatch", line(b.hatch), "stone", line(b.hatch), "push-tint", push)
	}
	return p
}

// theme is the page's own set of colors that those wanted are nearest to.
func (c Colors) theme(wanted string) string {
	const middle = 0.18 // the luminance at which black and white are read equally well, about
	switch {
	case wanted == glare:
		return glare
	case c.Paper.Is && c.Paper.Luminance() < middle, !c.Paper.Is && c.Ink.Is && c.Ink.Luminance() > middle:
		return "dark"
	case !c.Paper.Is && !c.Ink.Is && wanted == "dark":
		return "dark"
	}
	return "light"
}

// ground is a ground for text, or the paper where ink could not be read on it.
func ground(wanted, ink, paper Color, text float64) Color {
	if Contrast(wanted, ink) >= text {
		return wanted
	}
	return paper
}

func (g Given) or(own string) Color {
	if g.Is {
		return g.Color
	}
	return hex(own)
}

func (p *Palette) refuse(key string, g Given) {
	if g.Is {
		p.Refused = append(p.Refused, Refusal{key, g.String(), "contrast"})
	}
}

// set appends names and colors in turn.
func (p *Palette) set(pairs ...any) {
	for i := 0; i+1 < len(pairs); i += 2 {
		p.Vars = append(p.Vars, Var{"--" + pairs[i].(string), pairs[i+1].(Color).String()})
	}
}
