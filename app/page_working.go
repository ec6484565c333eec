package main

import (
	"html"
	"strings"

	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// renderWorking is how a check was reached, open in its place.
func (i *checkItem) renderWorking() app.UI {
	c := i.Check
	part := app.Div().Class("working")
	if !i.Open {
		return part.Attr("hidden", "true")
	}
	body := []app.UI{app.P().Class("working-question").Text(c.Question)}
	if c.Note != "" {
		body = append(body, app.P().Class("working-note").Text(c.Note))
	}
	w := c.Working
	if w.Note != "" {
		body = append(body, app.P().Class("working-note").Text(w.Note))
	}
	for _, p := range w.Parts {
		body = append(body, i.renderPart(p))
	}
	if w.Limit != "" {
		body = append(body, app.P().Class("working-limit").Text(w.Limit))
	}
	body = append(body, app.P().Class("working-source").Text(c.Source))
	if len(w.Given) > 0 {
		body = append(body, app.H3().Text(i.Page.word("working.given")), renderGiven(w.Given))
	}
	return part.Body(body...)
}

func (i *checkItem) renderPart(p view.Part) app.UI {
	items := make([]app.UI, 0, len(p.Steps))
	for _, s := range p.Steps {
		items = append(items, i.renderStep(s))
	}
	body := []app.UI{app.H3().Text(p.Title)}
	if len(p.Sketches) > 0 {
		body = append(body, app.Raw(`<div class="sketches">`+strings.Join(p.Sketches, "")+`</div>`))
	}
	return app.Div().Class("working-part").Body(append(body, app.Ol().Body(items...))...)
}

// renderStep is symbol = formula = numbers = result, what it is, where it comes
// from, and the steps whose results it takes.
func (i *checkItem) renderStep(s view.Step) app.UI {
	lines := []app.UI{
		app.Span().Class("step-number").Aria("hidden", "true").Text(s.Number),
		app.Raw(sum(s)),
		app.P().Class("step-means").Body(app.Span().Text(s.Means), app.Span().Class("step-source").Text(s.Source)),
	}
	if len(s.Uses) > 0 {
		uses := make([]app.UI, 0, len(s.Uses)+1)
		uses = append(uses, app.Span().Class("step-with").Text(i.Page.word("working.uses")))
		for _, u := range s.Uses {
			uses = append(uses, app.Button().Type("button").Class("use").DataSet("step", u.ID).Title(u.Name).OnClick(i.Page.onUse).
				Body(app.Raw(`<span aria-hidden="true">`+u.Symbol+`</span>`), app.Small().Text(i.Page.speaker.Sentence("working.step", u.Step))))
		}
		lines = append(lines, app.P().Class("uses").Body(uses...))
	}
	return app.Li().ID(s.ID).Class("sum-step").TabIndex(-1).Body(lines...)
}

// sum is the markup of one step. Every piece of a long formula may start a
// line; to be read aloud it is one line of text. A browser without MathML shows
// that line.
func sum(s view.Step) string {
	var b strings.Builder
	b.WriteString(`<div class="sum" role="math" aria-label="` + html.EscapeString(s.Text) + `">`)
	if !setsMath() {
		b.WriteString(html.EscapeString(s.Text) + "</div>")
		return b.String()
	}
	for _, line := range [][]string{s.Formula, s.Numbers, {s.Result}} {
		if len(line) == 0 {
			continue
		}
		b.WriteString(`<span class="sum-line">`)
		b.WriteString(strings.Join(line, " "))
		b.WriteString("</span> ")
	}
	if s.Metric != "" {
		b.WriteString(`<span class="metric">` + html.EscapeString(s.Metric) + "</span>")
	}
	b.WriteString("</div>")
	return b.String()
}

// setsMath reports whether formulas can be typeset.
func setsMath() bool { return app.IsServer || app.Window().Get("MathMLElement").Truthy() }

func renderGiven(list []view.Symbol) app.UI {
	rows := make([]app.UI, 0, len(list))
	for _, g := range list {
		symbol := app.UI(app.Raw(`<span>` + g.MathML + `</span>`))
		if !setsMath() {
			symbol = app.Text(g.Text)
		}
		value := []app.UI{app.Text(g.Value)}
		if g.Metric != "" {
			value = append(value, app.Span().Class("metric").Text(g.Metric))
		}
		rows = append(rows, app.Tr().Body(app.Td().Class("given-symbol").Body(symbol), app.Td().Class("given-value").Body(value...), app.Td().Text(g.Means)))
	}
	return app.Table().Class("given").Body(app.TBody().Body(rows...))
}

// onUse goes to the step that a number comes from.
func (p *page) onUse(ctx app.Context, e app.Event) {
	defer p.caught()
	if step := app.Window().GetElementByID(data(ctx, "step")); step.Truthy() {
		step.Call("focus")
	}
}
