package main

import (
	"strings"

	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// renderChart is how high the high side may stand for each level of the low
// side: a drawing and the same as a table.
func (p *page) renderChart(c *view.Chart) app.UI {
	section := app.Section().ID("chart").Class("part").Aria("labelledby", "chart-title")
	title := app.H2().ID("chart-title").Text(p.word("page.chart"))
	if c == nil {
		return section.Attr("hidden", "true").Body(title)
	}
	rows := make([]app.UI, 0, len(c.Rows))
	for _, r := range c.Rows {
		rows = append(rows, app.Tr().Body(
			app.Th().Scope("row").Text(r.Low), app.Td().Text(r.High), app.Td().Text(r.Why),
		))
	}
	return section.Body(
		title,
		app.P().Class("part-text").Text(c.Note),
		app.Div().Class("part-text").Body(app.Raw(chartSVG(c.Rows))),
		app.Div().Class("part-text").Body(app.Table().Class("values").Body(
			app.THead().Body(app.Tr().Body(
				app.Th().Scope("col").Text(c.Low), app.Th().Scope("col").Text(c.High), app.Th().Scope("col").Text(c.Governs),
			)),
			app.TBody().Body(rows...),
		)),
	)
}

// Sizes of the chart in its own units.
const (
	chartWidth, chartHeight, chartGap = 360.0, 150.0, 6.0
)

// chartSVG draws one pair of columns for each level of the low side: the low
// ground hatched, and as a line what the high ground may reach.
func chartSVG(rows []view.ChartRow) string {
	var b strings.Builder
	b.WriteString(`<svg class="chart" viewBox="0 0 360 156" aria-hidden="true">`)
	step := chartWidth / float64(max(1, len(rows)))
	for i, r := range rows {
		x := float64(i)*step + chartGap/2
		rect(&b, "chart-high", x, r.HighShare, step-chartGap)
		rect(&b, "chart-low", x, r.LowShare, step-chartGap)
	}
	b.WriteString(`<path class="chart-ground" d="M0 153H360"/></svg>`)
	return b.String()
}

func rect(b *strings.Builder, class string, x, share, width float64) {
	h := chartHeight * min(max(share, 0), 1)
	b.WriteString(`<rect class="` + class + `" x="` + plain(x) + `" y="` + plain(153-h) +
		`" width="` + plain(width) + `" height="` + plain(h) + `"/>`)
}
