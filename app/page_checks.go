package main

import (
	"math"
	"strconv"

	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// renderChecks is the list of what was checked. A tap opens the working in its
// place.
func (p *page) renderChecks(v view.View) app.UI {
	first, rest := v.FirstChecks()
	return app.Section().ID("checks").Class("part").Aria("labelledby", "checks-title").Body(
		app.H2().ID("checks-title").Text(p.word("page.checks")),
		app.Div().Class("check-list").Body(p.checkItems(first)...),
		p.renderCheckFold("rest", len(rest), func() []app.UI { return p.checkItems(rest) }),
		p.renderCheckFold("compared", len(v.Compared), func() []app.UI { return p.checkItems(v.Compared) }),
		p.renderCheckFold("idle", len(v.Idle), func() []app.UI { return p.checkItems(v.Idle) }),
	)
}

func (p *page) renderCheckFold(id string, n int, body func() []app.UI) app.UI {
	class := "check-fold"
	if n == 0 {
		class = "check-fold none"
	}
	return &fold{Page: p, ID: id, Title: p.speaker.Sentence("page.checks."+id, strconv.Itoa(n)), Class: class, Open: p.open[id] && n > 0, Body: body}
}

func (p *page) checkItems(list []view.Check) []app.UI {
	items := make([]app.UI, 0, len(list))
	for _, c := range list {
		items = append(items, &checkItem{Page: p, Check: c, Open: c.Key == p.check})
	}
	return items
}

// checkItem is one check, with its working when it is open.
type checkItem struct {
	app.Compo

	Page  *page
	Check view.Check
	Open  bool
}

func (i *checkItem) Render() app.UI {
	c := i.Check
	amount := []app.UI{app.Span().Class("mark").Text(c.Mark)}
	if c.Amount != "" {
		amount = append(amount, app.Text(": "+c.Amount))
	}
	return app.Div().Class("check").DataSet("check", c.ID).DataSet("stage", c.Stage).DataSet("state", string(c.State)).Body(
		app.Button().Type("button").DataSet("key", c.Key).DataSet("state", string(c.State)).Aria("expanded", yesNo(i.Open)).OnClick(i.Page.onCheck).Body(
			shape(c.State),
			app.Span().Class("check-name").Text(c.Name),
			app.Span().Class("check-figure").Text(c.Figure),
			app.Span().Class("check-amount").Body(amount...),
			ratioBar(c),
		),
		i.renderWorking(),
	)
}

// Lengths of a ratio bar: what is there fills to one, and what is asked runs
// past it.
const (
	barOne, barAll = 60.0, 96.0
)

// ratioBar draws demand over capacity. What goes beyond the mark of 1.0 leaves
// the box, in a colour and a shape of its own.
func ratioBar(c view.Check) app.UI {
	inside := `<rect class="track" x="1" y="5" width="` + plain(barOne) + `" height="10" rx="2"/>`
	if c.HasRatio {
		used := barOne * math.Min(math.Max(c.Ratio, 0), 1)
		inside += `<rect class="used" x="1" y="5" width="` + plain(used) + `" height="10" rx="2"/>`
		if over := math.Min(barOne*(c.Ratio-1), barAll-barOne-4); over > 0 {
			end, tip := plain(1+barOne+over-4), plain(1+barOne+over)
			inside += `<path class="over" d="M61 3.5H` + end + `L` + tip + ` 10L` + end + ` 16.5H61Z"/>`
		}
	}
	inside += `<path class="one" d="M61 0V20"/>`
	if c.State == view.Idle {
		inside = ""
	}
	return app.Raw(`<svg class="ratio" viewBox="0 0 96 20" aria-hidden="true">` + inside + `</svg>`)
}

// plain writes a number for an attribute.
func plain(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
