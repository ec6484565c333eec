//go:build browser

package pagetest

// What the tests of loading, keeping and updating need to know of the page.
// All they ask of it stands here.

// setHeight types the height of the wall.
func (p *tab) setHeight(feet string) {
	p.t.Helper()
	p.typeInto("#height", feet)
}

// height is the height as the field shows it.
func (p *tab) height() string {
	p.t.Helper()
	return eval[string](p, `document.querySelector("#height").value`)
}

// works tries whether the program answers.
func (p *tab) works() {
	p.t.Helper()
	p.setHeight("11")
	p.until(`document.querySelector("#answer").textContent.includes("11 ft")`)
}
