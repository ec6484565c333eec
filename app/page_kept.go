package main

import (
	"strconv"

	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// renderKept is the list of kept walls, opened by the wall's name.
func (p *page) renderKept() app.UI {
	section := app.Section().ID("kept").Class("kept").Aria("label", p.word("page.kept"))
	if !p.open["walls"] {
		return section.Attr("hidden", "true")
	}
	items := make([]app.UI, 0, len(p.walls))
	for i := range p.walls {
		items = append(items, p.renderKeptWall(i))
	}
	return section.Body(
		app.Ul().Body(items...),
		app.Div().Class("kept-file").Body(
			app.Button().ID("wall-new").Type("button").Class("plain").OnClick(p.onNew).Text(p.word("page.kept.new")),
			app.Button().ID("export").Type("button").Class("plain").OnClick(p.onExport).Text(p.word("page.kept.export")),
			app.Button().ID("import").Type("button").Class("plain").OnClick(p.onImport).Text(p.word("page.kept.import")),
		),
		app.P().ID("storage").Class("part-text").Text(p.storageText()),
	)
}

func (p *page) storageText() string {
	if p.storage == "" {
		return ""
	}
	return p.word(p.storage)
}

func (p *page) renderKeptWall(i int) app.UI {
	k := p.walls[i]
	at := strconv.Itoa(i)
	class, current := "kept-wall", ""
	if i == p.here {
		class, current = "kept-wall here", "true"
	}
	line := view.Summary(k.wall, k.good, p.speaker)
	open := app.Button().Type("button").Class("kept-open").DataSet("wall", at).OnClick(p.onOpen).Body(
		shape(line.State),
		app.Span().Body(app.Text(line.When), app.Small().Text(line.Title)),
	)
	if current != "" {
		open.Aria("current", current)
	}
	act := func(name string, do app.EventHandler) app.UI {
		return app.Button().Type("button").Class("quiet").DataSet("wall", at).DataSet("act", name).
			Aria("label", p.speaker.Sentence("page.kept."+name+".label", line.When)).OnClick(do).Text(p.word("page.kept." + name))
	}
	body := []app.UI{open, app.Div().Class("kept-acts").Body(act("copy", p.onCopy), act("delete", p.onDelete))}
	if i == p.here {
		body = append(body, app.Div().Class("kept-name").Body(
			p.row(view.Field{Path: "name", Label: p.word("field.name"), Text: k.wall.Name, Shown: k.wall.Name}),
		))
	}
	return app.Li().Class(class).DataSet("state", string(line.State)).Body(body...)
}

// renderFoot is what holds for every wall, and how the page looks.
func (p *page) renderFoot(v view.View) app.UI {
	safety := make([]app.UI, 0, len(v.Safety))
	for _, s := range v.Safety {
		safety = append(safety, app.Div().Class("warning").Body(app.P().Text(s)))
	}
	return app.Footer().Class("foot").Body(
		app.H2().Text(p.word("page.safety")),
		app.Div().Class("safety").Body(safety...),
		&fold{Page: p, ID: "about", Title: p.word("page.about"), Summary: p.word("page.about.summary"), Open: p.open["about"], Body: func() []app.UI {
			said := make([]app.UI, 0, len(v.About))
			for _, s := range v.About {
				said = append(said, app.P().Text(s))
			}
			return append(said, p.renderPrivacy()...)
		}},
		p.renderPick("decimal", p.word("page.decimal"), p.decimals(), p.onDecimal),
		p.renderPick("theme", p.word("page.theme"), p.themes(), p.onTheme),
		p.renderInstall(),
	)
}

func (p *page) themes() []view.Choice {
	var out []view.Choice
	for _, t := range []string{"", "light", "dark", glare} {
		out = append(out, view.Choice{Value: themeName(t), Label: p.word("page.theme." + themeName(t)), Chosen: t == p.theme})
	}
	return out
}

// themeName is the value of a theme in the form: an empty value would not be
// written.
func themeName(theme string) string {
	if theme == "" {
		return "device"
	}
	return theme
}
