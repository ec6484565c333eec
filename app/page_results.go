package main

import (
	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// renderResults is what else follows from the answers: the bars, the two rulebooks and what is left to people.
func (p *page) renderResults(v view.View) app.UI {
	return app.Div().Class("results").Body(
		p.renderBars(v.Bars),
		p.renderChart(v.Chart),
		p.renderSpread(v.Spread),
		p.renderBooks(v.Rulebooks),
		p.renderNotes("engineer", "notes asks", v.Engineer),
		p.renderNotes("warnings", "notes", v.Warnings),
		p.renderNotes("assumptions", "notes", v.Assumptions),
		p.renderSheets(v.Stale),
	)
}

func (p *page) renderBars(bars []view.Bar) app.UI {
	items := make([]app.UI, 0, len(bars))
	for _, b := range bars {
		items = append(items, app.Li().Class("bar").Body(
			app.Span().Class("bar-mark").Text(b.Mark),
			app.Div().Body(
				app.P().Class("bar-what").Text(b.What),
				app.P().Text(b.Where),
				app.P().Class("bar-detail").Text(b.Details),
			),
		))
	}
	none := app.P().Class("part-text").Text(p.word("page.bars.none"))
	if len(bars) > 0 {
		none.Attr("hidden", "true")
	}
	return app.Section().ID("bars").Class("part").Aria("labelledby", "bars-title").Body(
		app.H2().ID("bars-title").Text(p.word("page.bars")), none, app.Ul().Body(items...),
	)
}

// renderBooks sets the two rulebooks side by side.
func (p *page) renderBooks(b view.Rulebooks) app.UI {
	reasons := make([]app.UI, 0, len(b.Reasons))
	for _, r := range b.Reasons {
		reasons = append(reasons, app.Li().Text(r))
	}
	why := app.P().Class("part-text").Text(b.Why)
	outside := app.P().Class("part-text").Text(p.word("page.books.outside"))
	if len(reasons) == 0 {
		outside.Attr("hidden", "true")
	}
	return app.Section().ID("books").Class("part").Aria("labelledby", "books-title").Body(
		app.H2().ID("books-title").Text(p.word("page.books")),
		app.Div().Class("books").Body(renderBook(b.Decides, "book decides"), renderBook(b.Other, "book")),
		why, outside, app.Ul().Class("notes").Body(reasons...),
		app.Div().Class("part-text").Body(p.row(b.Choice)),
	)
}

func renderBook(b view.Book, class string) app.UI {
	return app.Div().Class(class).Body(
		app.P().Class("book-role").Text(b.Role),
		app.P().Class("book-says").Text(b.Says),
		app.P().Class("book-edition").Text(b.Edition),
	)
}

// renderNotes is a list of sentences under a heading, absent when it is empty.
func (p *page) renderNotes(id, class string, notes []string) app.UI {
	items := make([]app.UI, 0, len(notes))
	for _, n := range notes {
		items = append(items, app.Li().Text(n))
	}
	section := app.Section().ID(id).Class("part").Aria("labelledby", id+"-title").Body(
		app.H2().ID(id+"-title").Text(p.word("page."+id)), app.Ul().Class(class).Body(items...),
	)
	if len(notes) == 0 {
		section.Attr("hidden", "true")
	}
	return section
}
