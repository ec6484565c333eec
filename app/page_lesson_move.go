package main

import (
	"strconv"

	"standingbeam/app/lesson"
	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// renderControl is what moves the picture: a slider between two buttons, or a
// choice out of a few. Both are there; the one that is not used is hidden.
func (l *lessonPage) renderControl() app.UI {
	c := l.seen.Control
	now := ""
	if c.At < len(c.Stops) {
		now = c.Stops[c.At]
	}
	step := func(id, by, label, sign string) app.UI {
		return app.Button().ID(id).Type("button").Class("step").DataSet("by", by).Aria("label", label).OnClick(l.onStep).
			Body(app.Span().Aria("hidden", "true").Text(sign))
	}
	slide := app.Div().Class("why-control").Body(
		app.Div().Class("why-now").Body(app.Label().For("why-slider").Text(c.Label), app.Output().For("why-slider").Text(now)),
		app.Div().Class("why-slide").Body(
			step("why-less", "-1", c.Less, "−"),
			app.Input().ID("why-slider").Type("range").Min("0").Max(strconv.Itoa(max(0, len(c.Stops)-1))).Step(1).
				Aria("valuetext", now).Value(strconv.Itoa(c.At)).OnInput(l.onSlide),
			step("why-more", "1", c.More, "+"),
		),
	)
	named := app.Div().Class("why-control").Body()
	if c.Named {
		slide.Attr("hidden", "true")
		named.Body(l.renderPick("why-at", c.Label, c.Stops, c.At, l.onChoose))
	} else {
		named.Attr("hidden", "true")
	}
	return app.Div().ID("why-control").Body(slide, named)
}

// renderPick is one choice out of a few, side by side.
func (l *lessonPage) renderPick(name, title string, stops []string, at int, chosen app.EventHandler) app.UI {
	body := []app.UI{app.Legend().Text(title)}
	for i, s := range stops {
		input := app.Input().Type("radio").Name(name).Value(strconv.Itoa(i)).DataSet("pick", name).OnChange(chosen)
		if i == at {
			input.Checked(true)
		}
		body = append(body, app.Label().Body(input, app.Span().Text(s)))
	}
	return app.FieldSet().Class("pick").Body(body...)
}

// renderPicks are the choices beside the slider, where a lesson has them.
func (l *lessonPage) renderPicks() app.UI {
	body := make([]app.UI, 0, len(l.seen.Picks))
	for i, p := range l.seen.Picks {
		body = append(body, l.renderPick("why-pick-"+strconv.Itoa(i), p.Label, p.Stops, p.At, l.onPick))
	}
	return app.Div().Class("why-picks").Body(body...)
}

// renderMeters are the measured things, always as many rows, so that nothing
// jumps.
func (l *lessonPage) renderMeters() app.UI {
	rows := make([]app.UI, 0, meterRows)
	for i := range meterRows {
		row := app.Div().Class("why-meter")
		if i >= len(l.seen.Meters) {
			rows = append(rows, row.Attr("hidden", "true"))
			continue
		}
		m := l.seen.Meters[i]
		if m.Over {
			row.Class("over")
		}
		rows = append(rows, row.Body(app.Dt().Text(m.Label), app.Dd().Class("why-value").Text(m.Value), app.Dd().Class("why-bar-row").Aria("hidden", "true").Body(app.Raw(meterSVG(m)))))
	}
	return app.Dl().Class("why-meters").Body(rows...)
}

const meterRows = 3

// meterSVG draws a meter, 200 wide: what there is, and a mark where one is, or
// what is needed. What lies beyond the mark is higher as well as coloured.
func meterSVG(m lesson.Meter) string {
	const wide = 200
	out := `<svg class="why-bar" viewBox="0 0 200 20" preserveAspectRatio="none" aria-hidden="true"><rect class="track" x="0" y="5" width="200" height="10"/>`
	used := m.Share
	if m.Over && m.Mark > 0 && m.Share > m.Mark {
		used = m.Mark
		out += `<rect class="over" x="` + plain(wide*m.Mark) + `" y="2" width="` + plain(wide*(m.Share-m.Mark)) + `" height="16"/>`
	}
	out += `<rect class="used" x="0" y="5" width="` + plain(wide*used) + `" height="10"/>`
	if m.Mark > 0 {
		out += `<path class="one" d="M` + plain(wide*m.Mark) + ` 0V20"/>`
	}
	return out + `</svg>`
}

// renderNumbers is the table of values at every place of the control.
func (l *lessonPage) renderNumbers() app.UI {
	t := l.seen.Table
	head, rows := make([]app.UI, 0, len(t.Head)), make([]app.UI, 0, len(t.Rows))
	for _, h := range t.Head {
		head = append(head, app.Th().Scope("col").Text(h))
	}
	for _, r := range t.Rows {
		cells := make([]app.UI, 0, len(r))
		for i, c := range r {
			if i == 0 {
				cells = append(cells, app.Th().Scope("row").Text(c))
			} else {
				cells = append(cells, app.Td().Text(c))
			}
		}
		rows = append(rows, app.Tr().Body(cells...))
	}
	table := app.Div().ID("why-table").Class("scroll").Role("region").Aria("label", l.word("numbers")).TabIndex(0).Body(app.Table().Class("values").Body(app.THead().Body(app.Tr().Body(head...)), app.TBody().Body(rows...)))
	if !l.form.Open {
		table.Attr("hidden", "true")
	}
	box := app.Div().Class("fold small-fold").Body(
		app.Button().ID("why-numbers").Type("button").Aria("expanded", yesNo(l.form.Open)).Aria("controls", "why-table").OnClick(l.onNumbers).
			Body(app.Span().Text(l.word("numbers"))),
		table,
	)
	return hidden(l.seen.Question.Asked || len(l.seen.Meters) == 0, box)
}

// renderCheck is the last screen: three walls to judge.
func (l *lessonPage) renderCheck() app.UI {
	body := []app.UI{app.Div().Class("why-head").Body(l.renderTitle(), app.P().Class("why-lead").Text(l.seen.Lead))}
	for i, c := range l.seen.Cases {
		id := "why-case-" + strconv.Itoa(i)
		state := verdictState(c.Question)
		verdict := app.Div().ID(id+"-verdict").Class("why-verdict").TabIndex(-1).DataSet("state", string(state)).Body(
			shape(state), app.P().Body(app.Strong().Class("mark").Text(c.Question.Verdict), app.Span().Text(" "+view.Unbroken(c.Question.Answer))),
		)
		figure := app.Div().Class("why-figure").Role("img").Aria("label", c.Picture.Desc).Body(app.Raw(c.Picture.SVG))
		if i == 0 {
			figure.ID("why-figure")
		}
		body = append(body, app.Section().Class("why-case").Aria("label", c.Title).Body(
			figure,
			app.Div().Body(app.P().Class("why-count").Text(c.Title), hidden(c.Question.Asked, verdict), l.renderQuestion(id, c.Question, i)),
		))
	}
	score := app.P().ID("why-score").Class("why-score").Role("status").Text(l.seen.Score)
	return app.Article().Class("why-check").Body(append(body, score, l.renderAround())...)
}
