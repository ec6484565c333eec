//go:build browser

package pagetest

import "testing"

// What a finger does, a mouse does too.
func TestMouse(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, desk)
	p.open(h.url(""))
	p.setHeight("9 ft 0 in")
	p.wantHeight("9 ft 0 in")
	p.click(`[data-step="height+"]`)
	p.until(`document.querySelector("` + heightField + `").value !== "9 ft 0 in"`)
	p.setHeight("9 ft 0 in")
	p.wantHeight("9 ft 0 in")
	p.dragMouse("#handle-height", 0, -40, 10)
	p.until(`parseInt(document.querySelector("` + heightField + `").value) >= 9 &&
		document.querySelector("` + heightField + `").value !== "9 ft 0 in"`)
}
