package main

import (
	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// renderChoices is everything that can be answered: how the wall is held, the
// dimensions under the thumb, and the questions.
func (p *page) renderChoices(v view.View) app.UI {
	rows := make([]app.UI, 0, len(v.Steppers))
	for _, f := range v.Steppers {
		rows = append(rows, p.row(f))
	}
	groups := make([]app.UI, 0, len(v.Groups))
	for _, g := range v.Groups {
		groups = append(groups, p.renderGroup(g))
	}
	return app.Section().Class("choices").Aria("label", p.word("page.choices")).Body(
		p.renderCards(v.Cards),
		app.Div().Class("steppers").Body(rows...),
		p.renderMore(v.Picture),
		app.Div().Class("groups").Body(groups...),
	)
}

// renderCards are the four ways to be held.
func (p *page) renderCards(cards []view.Card) app.UI {
	body := []app.UI{app.Legend().Class("unseen").Text(p.word("page.cards"))}
	for _, c := range cards {
		input := app.Input().Type("radio").Name("condition").Value(c.Value).OnChange(p.onCard)
		if c.Chosen {
			input.Checked(true)
		}
		body = append(body, app.Label().Class("card").Body(
			input,
			app.Span().Class("card-face").Body(app.Raw(c.SVG), app.Span().Text(c.Label)),
		))
	}
	return app.FieldSet().Class("cards").Body(body...)
}

func (p *page) renderGroup(g view.Group) app.UI {
	class := ""
	if g.Faulty {
		class = "group-faulty"
	}
	return &fold{Page: p, ID: g.ID, Title: g.Title, Summary: g.Summary, Class: class, Open: p.open[g.ID] || g.Faulty, Body: func() []app.UI {
		rows := make([]app.UI, 0, len(g.Fields))
		for _, f := range g.Fields {
			rows = append(rows, p.row(f))
		}
		return rows
	}}
}

// row is one question with its answer.
type row struct {
	app.Compo

	Page   *page
	Field  view.Field
	Typing bool
	Keys   string // the set of keys that it has while it is typed in
	Closed bool   // they are put away
}

func (p *page) row(f view.Field) app.UI {
	return &row{Page: p, Field: f, Typing: p.typing == f.Path, Keys: p.keySet(f), Closed: p.padFor != f.Path}
}

// CompoID ties a row to its field, so that a list that changes never hands the
// text of one field to another.
func (r *row) CompoID() string { return r.Field.Path }

func (r *row) Render() app.UI {
	f := r.Field
	id := "f-" + f.Path
	body := []app.UI{app.Label().For(id).Text(f.Label), r.renderControl(id)}
	problem := app.P().ID(id + "-problem").Class("row-problem").Text(f.Problem)
	if f.Problem == "" {
		problem.Attr("hidden", "true")
	}
	hint := app.P().ID(id + "-hint").Class("row-hint").Text(f.Help)
	if f.Help == "" {
		hint.Attr("hidden", "true")
	}
	body = append(body, problem, hint)
	if f.Short || f.Number {
		body = append(body, r.renderPad())
	}
	class := "row"
	if f.Down != "" {
		class += " stepped"
	}
	if r.Typing {
		class += " typing"
	}
	return app.Div().Class(class).DataSet("row", f.Path).Body(body...)
}

func (r *row) renderControl(id string) app.UI {
	f := r.Field
	var entry app.UI
	if f.Choices != nil {
		entry = r.renderSelect(id)
	} else {
		entry = r.renderInput(id)
	}
	if f.Down == "" {
		kind := "typed"
		if f.Choices != nil {
			kind = "chosen"
		}
		return app.Div().Class("row-control", "alone", kind).Body(entry)
	}
	less, more := "−", "+"
	if f.Choices != nil {
		less, more = "‹", "›"
	}
	return app.Div().Class("row-control").Body(
		r.renderStep(f.Path+"-", f.Down, less), entry, r.renderStep(f.Path+"+", f.Up, more),
	)
}

func (r *row) renderStep(step, label, sign string) app.UI {
	p := r.Page
	return app.Button().Type("button").Class("step").DataSet("step", step).Aria("label", label).
		OnClick(p.onStep).On("pointerdown", p.onHold).On("pointerup", p.onRelease).
		On("pointercancel", p.onRelease).On("pointerleave", p.onRelease).OnBlur(p.onRelease).Body(
		app.Span().Aria("hidden", "true").Text(sign),
	)
}

func (r *row) renderInput(id string) app.UI {
	f, p := r.Field, r.Page
	input := app.Input().ID(id).Type("text").Class("entry").DataSet("path", f.Path).
		Attr("autocomplete", "off").Attr("autocapitalize", "off").Attr("spellcheck", "false").
		Attr("enterkeyhint", "done").Attr("placeholder", f.Hint).Value(f.Shown).
		OnInput(p.onInput).OnFocus(p.onFocus).OnBlur(p.onBlur).OnKeyDown(p.onFieldKey)
	switch {
	case r.Keys == digitKeys, r.Keys == fractionKeys:
		input.Attr("inputmode", "none").OnClick(p.onAgain)
	case f.Number:
		input.Attr("inputmode", "decimal")
	}
	return r.describe(input)
}

// describe ties the field to its problem and its help.
func (r *row) describe(input app.HTMLInput) app.UI {
	by := ""
	if r.Field.Problem != "" {
		by = "f-" + r.Field.Path + "-problem"
		input.Aria("invalid", "true")
	} else if r.Field.Help != "" {
		by = "f-" + r.Field.Path + "-hint"
	}
	if by != "" {
		input.Aria("describedby", by)
	}
	return input
}

func (r *row) renderSelect(id string) app.UI {
	f := r.Field
	options := make([]app.UI, 0, len(f.Choices))
	for _, c := range f.Choices {
		option := app.Option().Attr("value", c.Value).Text(c.Label)
		if c.Chosen {
			option.Selected(true)
		}
		options = append(options, option)
	}
	return app.Select().ID(id).Class("entry").DataSet("path", f.Path).OnChange(r.Page.onChoose).Body(options...)
}
