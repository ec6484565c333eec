//go:build browser

package pagetest

import "strings"

// What the tests of loading, keeping and updating need to know of the page.
// All they ask of it stands here.

const heightField = "#f-height"

// setHeight types the height of the wall and leaves the field.
func (p *tab) setHeight(height string) {
	p.t.Helper()
	p.typeInto(heightField, height)
	eval[bool](p, `(() => { document.activeElement.blur(); return true; })()`)
}

// wantHeight waits until the field and the picture show a height, as
// "12 ft 0 in".
func (p *tab) wantHeight(height string) {
	p.t.Helper()
	p.until(`document.querySelector("` + heightField + `").value === "` + height + `" &&
		document.querySelector("#figure").textContent.includes("` + height + `")`)
}

// works tries whether the program answers.
func (p *tab) works() {
	p.t.Helper()
	height := "11 ft 0 in"
	if strings.Contains(p.text("#figure"), height) {
		height = "10 ft 0 in"
	}
	p.setHeight(height)
	p.wantHeight(height)
}

// toldSomething holds while the page shows a message.
const toldSomething = `document.querySelector("#told").textContent.trim() !== ""`
