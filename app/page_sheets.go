package main

import (
	"standingbeam/app/sheet"
	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// sheets hands over the papers of the wall on the screen: the crew drawing and
// the calculation sheet through the browser's own printing, the drawing as SVG
// and DXF files. What is typed here stands on every paper of this house.
type sheets struct {
	app.Compo

	Page    *page
	Speaker words.Speaker
	Stale   string // why the answer is not that of the form, "" when it is
	Known   bool   // there is an answer

	job, date, person string
	paper             string
}

func (p *page) renderSheets(stale string) app.UI {
	return &sheets{Page: p, Speaker: p.speaker, Stale: stale, Known: p.walls[p.here].good.Known}
}

// sheetFields are the questions that the papers ask.
var sheetFields = [...]string{"job", "date", "person"}

func (s *sheets) Render() app.UI {
	p := s.Page
	rows := make([]app.UI, 0, len(sheetFields)+1)
	for _, id := range sheetFields {
		rows = append(rows, app.Div().Class("row").DataSet("row", "sheet."+id).Body(
			app.Label().For("sheet-"+id).Text(p.word("page.sheet."+id)),
			app.Div().Class("row-control alone typed").Body(
				app.Input().ID("sheet-"+id).Type("text").Class("entry").Attr("autocomplete", "off").Attr("maxlength", "60").
					DataSet("field", id).OnInput(s.onField),
			),
		))
	}
	rows = append(rows, s.renderPaper())
	stale := app.P().Class("row-problem").Text(s.Stale)
	if s.Stale == "" {
		stale.Attr("hidden", "true")
	}
	buttons := make([]app.UI, 0, 4)
	for _, kind := range []string{"crew", "calculation", "svg", "dxf"} {
		button := app.Button().ID("sheet-" + kind).Type("button").Class("plain").Text(p.word("page.sheet." + kind))
		if !s.Known || s.Stale != "" {
			button.Disabled(true)
		}
		buttons = append(buttons, button.DataSet("kind", kind).OnClick(s.onSheet))
	}
	return app.Section().ID("sheets").Class("part").Aria("labelledby", "sheets-title").Body(
		app.H2().ID("sheets-title").Text(p.word("page.sheets")),
		app.Div().Class("part-text").Body(rows...),
		app.Div().Class("part-text sheets-acts").Body(append(buttons, stale)...),
		app.Div().ID("sheet"), // filled only while it is printed
	)
}

func (s *sheets) renderPaper() app.UI {
	options := make([]app.UI, 0, 2)
	for _, paper := range []string{sheet.Letter, sheet.A4} {
		option := app.Option().Value(paper).Text(s.Page.word("page.sheet.paper." + paper))
		if paper == s.usedPaper() {
			option.Selected(true)
		}
		options = append(options, option)
	}
	return app.Div().Class("row").DataSet("row", "sheet.paper").Body(
		app.Label().For("sheet-paper").Text(s.Page.word("page.sheet.paper")),
		app.Div().Class("row-control alone chosen").Body(
			app.Select().ID("sheet-paper").Class("entry").DataSet("field", "paper").OnChange(s.onField).Body(options...),
		),
	)
}

// usedPaper is the paper that was chosen, else the usual one of the units.
func (s *sheets) usedPaper() string {
	switch {
	case s.paper != "":
		return s.paper
	case s.Page.speaker.System == words.Metric:
		return sheet.A4
	}
	return sheet.Letter
}

func (s *sheets) onField(ctx app.Context, e app.Event) {
	defer s.Page.caught()
	text := ctx.JSSrc().Get("value").String()
	switch data(ctx, "field") {
	case "job":
		s.job = text
	case "date":
		s.date = text
	case "person":
		s.person = text
	case "paper":
		s.paper = text
	}
}

// onSheet makes the paper that the button names.
func (s *sheets) onSheet(ctx app.Context, e app.Event) {
	defer s.Page.caught()
	good := s.Page.walls[s.Page.here].good
	if !good.Known || s.Stale != "" {
		return
	}
	r := good.Explained()
	o := sheet.Options{Speaker: s.Page.speaker, Paper: s.usedPaper(), Job: s.job, Date: s.date, Person: s.person}
	switch data(ctx, "kind") {
	case "crew":
		printSheet(sheet.Crew(r, o), sheet.FileName(o.Job, r.Input.Name, s.Page.word("page.sheet.crew")))
	case "calculation":
		printSheet(sheet.Calculation(r, o), sheet.FileName(o.Job, r.Input.Name, s.Page.word("page.sheet.calculation")))
	case "svg":
		saveAs(sheet.FileName(o.Job, r.Input.Name, s.Page.word("page.sheet.drawing"))+".svg", "image/svg+xml", sheet.SVG(r, o))
	case "dxf":
		saveAs(sheet.FileName(o.Job, r.Input.Name, s.Page.word("page.sheet.drawing"))+".dxf", "image/vnd.dxf", sheet.DXF(r, o))
	}
}

// printSheet puts a paper into the page, under a title that browsers offer as
// the name of its file, prints it, and takes it away again.
func printSheet(markup, title string) {
	window := app.Window()
	document := window.Get("document")
	holder := window.GetElementByID("sheet")
	holder.Set("innerHTML", markup)
	before := document.Get("title").String()
	document.Set("title", title)
	var done app.Func
	done = app.FuncOf(func(app.Value, []app.Value) any {
		holder.Set("innerHTML", "")
		document.Set("title", before)
		done.Release()
		return nil
	})
	window.Call("addEventListener", "afterprint", done, map[string]any{"once": true})
	window.Call("print")
}

// saveAs hands a text to the browser as a file of a kind.
func saveAs(name, kind, text string) {
	window := app.Window()
	blob := window.Get("Blob").New([]any{text}, map[string]any{"type": kind})
	address := window.Get("URL").Call("createObjectURL", blob)
	link := window.Get("document").Call("createElement", "a")
	link.Set("href", address)
	link.Set("download", name)
	link.Call("click")
	window.Call("setTimeout", window.Get("URL").Get("revokeObjectURL").Call("bind", window.Get("URL"), address), 60_000)
}
