package main

import (
	"standingbeam/app/lesson"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// handout is the hand-out of the lesson on the screen, kept from render to
// render while nothing that it depends on changes.
func (l *lessonPage) handout() lesson.Paper {
	f := lesson.Form{Speaker: l.speaker(), ID: l.form.ID, Picks: l.form.Picks}
	if f != l.printed {
		l.printed, l.paper = f, lesson.NewPaper(f)
	}
	return l.paper
}

// renderPaper is the hand-out, for print alone: the question over a fold, the
// answer and three pictures under it.
func (l *lessonPage) renderPaper() app.UI {
	v, p := &l.seen, l.handout()
	paper := app.Section().Class("why-paper").Aria("hidden", "true")
	if len(p.Panels) == 0 {
		return paper
	}
	boxes := make([]app.UI, 0, len(v.Question.Choices))
	for _, c := range v.Question.Choices {
		boxes = append(boxes, app.Li().Body(app.Span().Class("why-letter").Text(c.Letter), app.Span().Text(c.Text)))
	}
	panels := make([]app.UI, 0, len(p.Panels))
	for _, n := range p.Panels {
		panels = append(panels, app.Div().Class("why-panel").Body(app.Raw(n.SVG),
			app.P().Text(n.Say)))
	}
	return paper.Body(
		app.P().Class("why-count").Text(l.speaker().Word("page.name")+" · "+l.word("title")),
		app.H1().Text(v.Title),
		app.P().Text(v.Lead),
		app.Div().Class("why-paper-ask").Body(
			app.Raw(p.Asking),
			app.Div().Body(app.H2().Text(v.Question.Text), app.Ol().Body(boxes...), app.P().Text(l.word("paper.guess"))),
		),
		app.P().Class("why-fold").Text(l.word("paper.fold")),
		app.P().Body(app.Strong().Text(l.word("paper.answer")+": "+p.Answer)),
		app.Div().Class("why-panels").Body(panels...),
		app.P().Class("why-keep").Body(app.Strong().Text(l.word("keep")+": "), app.Span().Text(p.Keep)),
		hidden(!v.Bent, app.P().Class("why-drawn").Text(l.word("drawn"))),
	)
}
