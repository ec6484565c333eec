package main

import (
	"standingbeam/app/draw"
	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// handlePaths are the levels and edges that can be dragged. Each has one
// element that stays, over the picture that is redrawn.
var handlePaths = []string{"height", "grade.a", "grade.b", "water", "footing.width", "footing.toe"}

// renderFigure is the picture with its handles, and what can be read instead
// of it.
func (p *page) renderFigure(v view.View) app.UI {
	over := []app.UI{app.Div().Class("sight-drawn").Body(app.Raw(v.Picture.SVG))}
	for _, path := range handlePaths {
		over = append(over, p.renderHandle(path, v.Picture.Handles))
	}
	// It lies over the picture, so that nothing moves while a field is half typed.
	stale := app.P().Class("stale").ID("stale").Text(v.Stale)
	if v.Stale == "" {
		stale.Attr("hidden", "true")
	}
	over = append(over, stale)
	return app.Div().Class("figure").Body(
		app.Div().ID("figure").Class("sight").Role("group").Aria("label", v.Picture.Title).
			Aria("describedby", "picture-text").Body(over...),
		app.P().ID("picture-stage").Class("sight-stage").Text(v.Picture.Stage),
		app.P().ID("picture-text").Class("unseen").Text(v.Picture.Desc),
	)
}

// renderMore is what the picture can show instead, and its table of values. It
// stands under the steppers, on the screen as in the order of the keys.
func (p *page) renderMore(pic view.Picture) app.UI {
	return app.Div().Class("sight-more").Body(
		&fold{Page: p, ID: "more", Title: p.word("page.more"), Summary: p.word("page.more.about"), Open: p.open["more"], Body: func() []app.UI {
			return []app.UI{p.renderShows(pic.Shows), p.renderStages(pic.Stages), p.renderValues(pic)}
		}},
	)
}

// renderHandle is a named slider over the picture. Its place is set after the
// page is drawn, see [page.settle].
func (p *page) renderHandle(path string, all []draw.Handle) app.UI {
	button := app.Button().ID("handle-"+path).Type("button").DataSet("handle", path).Role("slider").
		On("pointerdown", p.onGrab).On("pointermove", p.onDrag).On("pointerup", p.onDrop).On("pointercancel", p.onDrop).
		OnKeyDown(p.onHandleKey)
	h, ok := findHandle(path, all)
	class := "handle"
	if !ok {
		return button.Class(class, "unplaced").Aria("label", p.word("picture.handle."+path)).Aria("valuenow", 0)
	}
	if !h.Vertical {
		class += " across"
	}
	if p.drag != nil && p.drag.handle.ID == path {
		class += " held"
	}
	orientation := "horizontal"
	if h.Vertical {
		orientation = "vertical"
	}
	return button.Class(class).Aria("label", h.Name).Aria("orientation", orientation).
		Aria("valuemin", plain(h.Min.Inches())).Aria("valuemax", plain(h.Max.Inches())).
		Aria("valuenow", plain(h.Now.Inches())).Aria("valuetext", h.Value)
}

func findHandle(path string, all []draw.Handle) (draw.Handle, bool) {
	for _, h := range all {
		if h.ID == path {
			return h, true
		}
	}
	return draw.Handle{}, false
}

// renderShows chooses the curve that stands beside the wall.
func (p *page) renderShows(shows []view.Choice) app.UI {
	return p.renderPick("show", p.word("page.show"), shows, p.onShow)
}

// renderStages chooses the stage that is drawn, where the wall has several.
func (p *page) renderStages(stages []view.Choice) app.UI {
	pick := p.renderPick("stage", p.word("page.stage"), stages, p.onStage)
	if len(stages) == 0 {
		pick.Attr("hidden", "true")
	}
	return pick
}

// renderPick is one choice out of a few, side by side.
func (p *page) renderPick(name, title string, choices []view.Choice, chosen app.EventHandler) app.HTMLFieldSet {
	body := []app.UI{app.Legend().Text(title)}
	for _, c := range choices {
		input := app.Input().Type("radio").Name(name).Value(c.Value).OnChange(chosen)
		if c.Chosen {
			input.Checked(true)
		}
		body = append(body, app.Label().Body(input, app.Span().Text(c.Label)))
	}
	return app.FieldSet().Class("pick").Body(body...)
}

// renderValues is the table of what the picture shows.
func (p *page) renderValues(pic view.Picture) app.UI {
	return app.Div().ID("values").Class("scroll").Role("region").Aria("label", pic.Title).TabIndex(0).Body(renderTable(pic.Head, pic.Rows))
}
