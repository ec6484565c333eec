//go:build browser

package pagetest

import "testing"

// An address that asks for a lesson, or for a part of another page, does not
// show the example first; one that asks for nothing does.
func TestNoFlash(t *testing.T) {
	h := newHost(t, distDir, "/")
	for _, test := range []struct {
		rest  string
		shown bool
	}{{"", true}, {"#wall", true}, {"#why", false}, {"#why/height/9ft", false}, {"#embed&show=picture", false}} {
		t.Run(test.rest, func(t *testing.T) {
			half := make(chan struct{})
			h.mu.Lock()
			h.half = half
			h.mu.Unlock()
			p := openTab(t, phone)
			p.visit(h.url(test.rest))
			p.until(`document.getElementById("app-wasm-loader-bar").value > 0.2`) // styled, and drawn
			if got := eval[bool](p, `document.getElementById("answer").checkVisibility({visibilityProperty: true})`); got != test.shown {
				t.Errorf("while the program comes the example is shown: %v, want %v", got, test.shown)
			}
			close(half)
			p.ready()
			p.until(`document.querySelector("#front > :not([hidden])").checkVisibility({visibilityProperty: true})`)
		})
	}
}
