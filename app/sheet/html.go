package sheet

import (
	"html"
	"strings"
)

// markup writes HTML. What it is given as text is escaped; classes and tags
// are its own. There are no styles and no scripts in it: the page's security
// policy permits neither.
type markup struct{ strings.Builder }

func (m *markup) open(tag, class string) {
	m.WriteString("<" + tag)
	if class != "" {
		m.WriteString(` class="` + class + `"`)
	}
	m.WriteString(">")
}

func (m *markup) close(tags ...string) {
	for _, t := range tags {
		m.WriteString("</" + t + ">")
	}
}

func (m *markup) text(s string) { m.WriteString(html.EscapeString(s)) }

// el writes one element with a text, nothing where there is none.
func (m *markup) el(tag, class, s string) {
	if s == "" {
		return
	}
	m.open(tag, class)
	m.text(s)
	m.close(tag)
}

// list writes a list, nothing where it is empty.
func (m *markup) list(class string, items []string) {
	if len(items) == 0 {
		return
	}
	m.open("ul", class)
	for _, s := range items {
		m.el("li", "", s)
	}
	m.close("ul")
}

// table writes a table whose head is repeated on each page that it reaches.
func (m *markup) table(class string, head []string, rows [][]string) {
	if len(rows) == 0 {
		return
	}
	m.open("table", class)
	if len(head) > 0 {
		m.open("thead", "")
		m.row("th", head)
		m.close("thead")
	}
	m.open("tbody", "")
	for _, r := range rows {
		m.row("td", r)
	}
	m.close("tbody", "table")
}

func (m *markup) row(tag string, cells []string) {
	m.open("tr", "")
	for _, c := range cells {
		m.open(tag, "")
		m.text(c)
		m.close(tag)
	}
	m.close("tr")
}
