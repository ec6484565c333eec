package main

import (
	"math"
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
	rows := make([][]string, 0, len(c.Rows))
	for _, r := range c.Rows {
		rows = append(rows, []string{r.Low, r.High, r.Why})
	}
	return section.Body(
		title,
		app.P().Class("part-text").Text(c.Note),
		app.Div().Class("part-text").Body(app.Raw(chartSVG(c.Rows))),
		app.Div().Class("part-text").Body(renderTable([]string{c.Low, c.High, c.Governs}, rows)),
	)
}

// renderSpread is what each class that the soil may be asks for.
func (p *page) renderSpread(spread []view.Spread) app.UI {
	section := app.Section().ID("spread").Class("part").Aria("labelledby", "spread-title")
	title := app.H2().ID("spread-title").Text(p.word("page.spread"))
	if len(spread) == 0 {
		return section.Attr("hidden", "true").Body(title)
	}
	rows := make([][]string, 0, len(spread))
	for _, s := range spread {
		rows = append(rows, []string{s.Soil, s.Engineered, s.Table})
	}
	head := []string{p.word("page.spread.soil"), p.word("page.spread.engineered"), p.word("page.spread.table")}
	return section.Body(
		title,
		app.P().Class("part-text").Text(p.word("page.spread.note")),
		app.Div().Class("part-text").Body(renderTable(head, rows)),
	)
}

// renderTable is a table whose first column names the rows.
func renderTable(head []string, rows [][]string) app.HTMLTable {
	top := make([]app.UI, 0, len(head))
	for _, h := range head {
		top = append(top, app.Th().Scope("col").Text(h))
	}
	body := make([]app.UI, 0, len(rows))
	for _, row := range rows {
		cells := make([]app.UI, 0, len(row))
		for i, c := range row {
			if i == 0 {
				cells = append(cells, app.Th().Scope("row").Text(c))
			} else {
				cells = append(cells, app.Td().Text(c))
			}
		}
		body = append(body, app.Tr().Body(cells...))
	}
	return app.Table().Class("values").Body(app.THead().Body(app.Tr().Body(top...)), app.TBody().Body(body...))
}

// Sizes of the chart in its own units.
const (
	chartWidth, chartHeight, chartGap, chartFoot, chartLetters = 360.0, 150.0, 6.0, 173.0, 44.0
)

// chartSVG draws one pair of columns for each level of the low side: the low
// ground filled, its level below, and as a line what the high ground may
// reach, with that level above it. The table beside it says the same.
func chartSVG(rows []view.ChartRow) string {
	var b strings.Builder
	b.WriteString(`<svg class="chart" viewBox="0 0 360 192" aria-hidden="true">`)
	step := chartWidth / float64(max(1, len(rows)))
	every := int(math.Ceil(chartLetters / step)) // where columns are narrow, not each has room for its level
	for i, r := range rows {
		x := float64(i)*step + chartGap/2
		rect(&b, "chart-high", x, r.HighShare, step-chartGap)
		rect(&b, "chart-low", x, r.LowShare, step-chartGap)
		if i%every != 0 {
			continue
		}
		middle := x + (step-chartGap)/2
		word(&b, "", middle, chartFoot-chartHeight*min(max(r.HighShare, 0), 1)-5, short(r.High))
		word(&b, "chart-low-text", middle, chartFoot+15, short(r.Low))
	}
	b.WriteString(`<path class="chart-ground" d="M0 173H360"/></svg>`)
	return b.String()
}

func rect(b *strings.Builder, class string, x, share, width float64) {
	h := chartHeight * min(max(share, 0), 1)
	b.WriteString(`<rect class="` + class + `" x="` + plain(x) + `" y="` + plain(chartFoot-h) +
		`" width="` + plain(width) + `" height="` + plain(h) + `"/>`)
}

func word(b *strings.Builder, class string, x, y float64, text string) {
	b.WriteString(`<text class="` + class + `" x="` + plain(x) + `" y="` + plain(y) + `">` + text + `</text>`)
}

// short writes a level as narrow as its column.
func short(level string) string {
	return strings.NewReplacer(" ft ", "′", " in", "″").Replace(level)
}
