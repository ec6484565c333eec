package main

import (
	"standingbeam/app/lesson"
	"standingbeam/app/view"
	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// renderTop is the wall's name, which opens the kept walls, and the units.
func (p *page) renderTop(v view.View) app.UI {
	us, metric := "top-unit on", "top-unit"
	label := "page.units.to-metric"
	if p.speaker.System == words.Metric {
		us, metric, label = metric, us, "page.units.to-us"
	}
	return app.Header().Class("top-all").Body(
		app.Div().Class("top").Body(
			app.H1().Body(
				app.Button().ID("walls").Type("button").Class("top-wall").
					Aria("expanded", yesNo(p.open["walls"])).Aria("controls", "kept").
					DataSet("fold", "walls").OnClick(p.onFold).
					Body(app.Span().Text(v.Name)),
			),
			app.Button().ID("units").Type("button").Class("top-units").OnClick(p.onUnits).Body(
				app.Span().Class(us).Text(p.word("page.units.us")), app.Span().Class(metric).Text(p.word("page.units.metric")),
				app.Span().Class("unseen").Text(p.word(label)),
			),
			languagePick("language", p.speaker, p.onLanguage),
		),
		p.renderKept(),
		app.Input().ID("import-file").Type("file").Class("unseen").Accept(".json,application/json").
			TabIndex(-1).Aria("label", p.word("page.kept.import")).OnChange(p.onFile),
		p.renderFaultNote(),
	)
}

// renderAnswer is the headline and the cautions that matter today.
func (p *page) renderAnswer(v view.View) app.UI {
	body := []app.UI{p.renderLine(v.Lines[0]), p.renderLine(v.Lines[1])}
	cautions := make([]app.UI, 0, len(v.Cautions))
	for _, c := range v.Cautions {
		cautions = append(cautions, app.Li().Body(app.Span().Text(c)))
	}
	list := app.Ul().Body(cautions...)
	box := app.Div().Class("cautions").Body(list)
	section := app.Section().ID("answer").Class("answer").Aria("label", p.word("page.answer"))
	if v.Stale != "" {
		section.DataSet("stale", "true") // it is not the answer to what stands in the fields
	}
	return section.Body(append(body, box)...)
}

func (p *page) renderLine(l view.Line) app.UI {
	return app.Div().ID(l.ID).Class("answer-line").DataSet("state", string(l.State)).Body(
		shape(l.State),
		app.Div().Body(
			app.A().Class("answer-why").Href("#"+lesson.Root+"/"+l.Lesson).OnClick(p.onWhy).Body(
				app.Text(p.word("page.why")), app.Span().Class("unseen").Text(" "+p.word("lesson."+l.Lesson+".title")),
			),
			app.H2().Body(
				app.Text(l.When+": "),
				app.Span().Class("mark").Text(l.Mark),
			),
			app.P().Class("answer-title").Text(l.Title),
			app.P().Class("answer-detail").Text(l.Detail),
		),
	)
}

// onWhy goes to a lesson; the page comes back as it was left.
func (p *page) onWhy(ctx app.Context, e app.Event) { p.visit(ctx, e) }

// shape is the sign of a state. Each has a form of its own, so that nothing
// hangs on its colour: a disc with a tick, a square with a cross, a ring of
// dashes with a question mark, a bare line.
func shape(s view.State) app.UI {
	inside := ""
	switch s {
	case view.Holds:
		inside = `<circle class="solid" cx="12" cy="12" r="10"/><path class="cut" d="M7 12.5l3.5 3.5L17 8.5"/>`
	case view.Fails:
		inside = `<rect class="solid" x="2" y="2" width="20" height="20" rx="2"/><path class="cut" d="M7.5 7.5l9 9M16.5 7.5l-9 9"/>`
	case view.Open:
		inside = `<circle cx="12" cy="12" r="9.8" stroke-dasharray="4.6 3"/><path d="M9.2 9.6a2.9 2.9 0 1 1 4.4 2.5c-1 .6-1.6 1.1-1.6 2.2M12 17.4v.1"/>`
	default:
		inside = `<path d="M6 12h12"/>`
	}
	return app.Raw(`<svg class="shape" viewBox="0 0 24 24" aria-hidden="true">` + inside + `</svg>`)
}

func yesNo(b bool) string {
	if b {
		return "true"
	}
	return "false"
}
