package main

import (
	"strconv"

	"standingbeam/app/lesson"
	"standingbeam/app/view"
	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// renderTop leads back to the wall and to the list, and changes the units.
func (l *lessonPage) renderTop() app.UI {
	us, metric, label := "top-unit on", "top-unit", "page.units.to-metric"
	if l.speaker().System == words.Metric {
		us, metric, label = metric, us, "page.units.to-us"
	}
	list := l.link("why-list", "quiet", lesson.Address(lesson.Form{}), l.word("all"))
	if l.seen.ID == "" {
		list.Attr("hidden", "true")
	}
	return app.Header().Class("why-top").Body(
		hidden(l.Front.inside, l.link("why-back", "quiet", "", l.word("back"))),
		list,
		app.Button().ID("why-units").Type("button").Class("top-units").OnClick(l.onUnits).Body(
			app.Span().Class(us).Text(l.speaker().Word("page.units.us")), app.Span().Class(metric).Text(l.speaker().Word("page.units.metric")),
			app.Span().Class("unseen").Text(l.speaker().Word(label)),
		),
		languagePick("why-language", l.speaker(), l.onLanguage),
	)
}

// link is a link to another screen.
func (l *lessonPage) link(id, class, fragment, text string) app.HTMLA {
	return app.A().ID(id).Class(class).Href("#" + fragment).OnClick(l.Front.goTo).Text(text)
}

func (l *lessonPage) renderTitle() app.UI {
	return app.H1().ID("why-title").Class("why-title").TabIndex(-1).Text(l.seen.Title)
}

// renderList is the list of all lessons.
func (l *lessonPage) renderList() app.UI {
	cards := make([]app.UI, 0, len(l.seen.Cards))
	for _, c := range l.seen.Cards {
		thumb := app.Span().Class("why-thumb why-thumb-check").Aria("hidden", "true").Text(c.Number)
		if c.SVG != "" {
			thumb = app.Span().Class("why-thumb").Body(app.Raw(c.SVG))
		}
		cards = append(cards, app.Li().Body(
			app.A().Class("why-card").Href("#"+c.Fragment).OnClick(l.Front.goTo).Body(
				thumb,
				app.Span().Class("why-card-text").Body(
					app.Span().Class("why-card-title").Text(c.Title),
					app.Span().Class("why-card-idea").Text(c.Idea),
				),
			),
		))
	}
	fault := app.P().Class("fault").Role("alert").Text(l.word("fault") + " " + l.fault)
	if l.fault == "" {
		fault.Attr("hidden", "true")
	}
	return app.Div().Class("why-all").Body(
		l.renderTitle(), app.P().Class("why-lead").Text(l.seen.Lead), fault, app.Ol().Class("why-cards").Body(cards...),
	)
}

// renderLesson is one lesson. Its structure stays the same through all of it:
// what is not to be seen yet is hidden.
func (l *lessonPage) renderLesson() app.UI {
	v := &l.seen
	return app.Article().Class("why-lesson").DataSet("lesson", v.ID).DataSet("asked", yesNo(v.Question.Asked)).Body(
		app.Div().Class("why-head").Body(
			app.P().Class("why-count").Text(v.Count),
			l.renderTitle(),
			app.P().Class("why-lead").Text(v.Lead),
		),
		app.Div().Class("why-see").Body(
			app.Div().ID("why-figure").Class("why-figure").Role("img").Aria("label", v.Picture.Desc).Body(app.Raw(v.Picture.SVG)),
			hidden(v.Question.Asked || !v.Bent, app.P().Class("why-drawn").Text(l.word("drawn"))),
		),
		app.Div().Class("why-do").Body(
			l.renderVerdict(),
			hidden(v.Question.Asked, app.Div().Class("why-move").Body(l.renderControl(), l.renderMeters(), app.P().ID("why-say").Class("why-say").Text(view.Unbroken(v.Say)), l.renderPicks())),
			l.renderQuestion("why-question", v.Question, -1),
			hidden(v.Question.Asked, app.P().Class("why-keep").Body(app.Strong().Text(l.word("keep")+": "), app.Span().Text(v.Keep))),
			l.renderNumbers(),
			l.renderAround(),
		),
	)
}

// hideable is an element that can be hidden.
type hideable[T any] interface {
	app.UI
	Attr(string, any) T
}

// hidden hides an element while a condition holds.
func hidden[T hideable[T]](when bool, e T) app.UI {
	if when {
		e.Attr("hidden", "true")
	}
	return e
}

// renderVerdict says whether the guess was right, and the answer.
func (l *lessonPage) renderVerdict() app.UI {
	q := l.seen.Question
	box := app.Div().ID("why-verdict").Class("why-verdict").TabIndex(-1).DataSet("state", string(verdictState(q))).Body(
		shape(verdictState(q)),
		app.P().Body(app.Strong().Class("mark").Text(q.Verdict), app.Span().Text(" "+view.Unbroken(q.Answer))),
	)
	if q.Asked {
		box.Attr("hidden", "true")
	}
	return box
}

func verdictState(q lesson.Question) view.State {
	switch {
	case q.Asked || !q.Guessed:
		return view.Idle
	case q.Right:
		return view.Holds
	}
	return view.Fails
}

// renderQuestion is a question with its answers. Of is the wall that it is
// about, -1 in a lesson.
func (l *lessonPage) renderQuestion(id string, q lesson.Question, of int) app.UI {
	choices := make([]app.UI, 0, len(q.Choices))
	for i, c := range q.Choices {
		class, mark := "why-choice", ""
		if c.Chosen {
			class, mark = class+" chosen", l.word("your-guess")
		}
		if c.Right {
			class, mark = class+" right", l.word("is-right")
		}
		button := app.Button().Type("button").Class(class).DataSet("of", strconv.Itoa(of)).DataSet("guess", strconv.Itoa(i+1)).OnClick(l.onGuess).Body(
			app.Span().Class("why-letter").Text(c.Letter), app.Span().Text(c.Text), app.Small().Text(mark),
		)
		if !q.Asked {
			button.Disabled(true)
		}
		choices = append(choices, app.Li().Body(button))
	}
	show := app.Button().Type("button").Class("quiet").DataSet("of", strconv.Itoa(of)).DataSet("guess", "0").OnClick(l.onGuess).Text(l.word("show"))
	again := app.Button().Type("button").Class("quiet").DataSet("of", strconv.Itoa(of)).OnClick(l.onAgain).Text(l.word("again"))
	if !q.Asked || of >= 0 {
		show.Attr("hidden", "true")
	}
	if q.Asked {
		again.Attr("hidden", "true")
	}
	return app.Section().ID(id).Class("why-question").Aria("labelledby", id+"-text").Body(
		app.H2().ID(id+"-text").Text(view.Unbroken(q.Text)), app.Ol().Class("why-choices").Body(choices...), show, again,
	)
}

// renderAround is what comes before and after, and what can be taken along.
func (l *lessonPage) renderAround() app.UI {
	prev := l.link("why-prev", "plain", l.seen.Prev.Fragment, "‹\u00a0"+l.word("previous"))
	prev.Aria("label", l.word("previous")+": "+l.seen.Prev.Text)
	if l.seen.Prev.Fragment == "" {
		prev.Attr("hidden", "true")
	}
	next := l.link("why-next", "plain why-next", l.seen.Next.Fragment, l.seen.Next.Text+"\u00a0›")
	next.Aria("label", l.word("next")+": "+l.seen.Next.Text)
	if l.seen.Next.Fragment == "" {
		next.Attr("hidden", "true")
	}
	return app.Div().Class("why-around").Body(
		app.Nav().Aria("label", l.word("title")).Body(prev, next),
		app.Div().Class("why-take").Body(
			app.Button().ID("why-copy").Type("button").Class("quiet").OnClick(l.onCopy).Text(l.word("copy")),
			hidden(len(l.seen.Cases) > 0, app.Button().ID("why-print").Type("button").Class("quiet").OnClick(l.onPrint).Text(l.word("paper"))),
		),
		app.P().Class("why-noted").Role("status").Text(l.noted),
	)
}
