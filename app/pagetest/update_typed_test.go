//go:build browser

package pagetest

import "testing"

// An update waits for a person: what is half typed and cannot be read, and the
// lesson that is open, are there before it and after it.
func TestUpdateKeepsWhatIsTyped(t *testing.T) {
	first, second := variant(t, "first"), variant(t, "second")
	h := newHost(t, first, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	p.offlineReady()
	p.reload()
	p.typeInto(heightField, "11 f")
	p.saved()
	h.serve(second)
	p.update()
	p.until(toldSomething)
	p.shot("update-offered")
	const typed = `document.querySelector("` + heightField + `").value === "11 f"`
	p.saved()
	if !eval[bool](p, typed) || p.version() != versionIn(t, first) {
		t.Error("the update did not wait")
	}
	eval[bool](p, `(location.hash = "#why/height/11ft", true)`)
	p.until(`document.getElementById("tool").hidden`)
	title := p.text("#why-title")
	p.reload()
	if got, want := p.version(), versionIn(t, second); got != want {
		t.Errorf("after a load the version is %s, want %s", got, want)
	}
	p.until(`document.getElementById("tool").hidden`)
	if got := p.text("#why-title"); got != title {
		t.Errorf("after the update the lesson is %q, was %q", got, title)
	}
	eval[bool](p, `(location.hash = "#", true)`)
	p.until(typed)
	if p.text(`[id="f-height-problem"]`) == "" {
		t.Error("what is wrong with the field is not said after the update")
	}
}
