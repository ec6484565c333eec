package main

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// Where the field stands that the keypad types in.

// reveal scrolls so far that the field being typed in stands between the
// picture, where that stays above it, and the keypad, with its label and what
// is wrong with it as far as there is room.
func (p *page) reveal() {
	if !p.padded() {
		return
	}
	field, sight := app.Window().GetElementByID("f-"+p.padFor), app.Window().GetElementByID("figure")
	if !field.Truthy() || !sight.Truthy() {
		return
	}
	line := field.Call("closest", ".row")
	pad := line.Call("querySelector", ".pad")
	if !pad.Truthy() {
		return // the field has changed its kind meanwhile
	}
	if app.Window().Call("getComputedStyle", pad).Get("position").String() != "fixed" {
		return // in a page of another site it stands below the field
	}
	row, entry := boxOf(line), boxOf(field)
	top, bottom := coveredBy(sight, row), boxOf(pad).top-8
	by := 0.0
	switch {
	case row.bottom > bottom:
		by = min(row.bottom-bottom, entry.top-top-4)
	case row.top < top:
		by = row.top - top
	}
	if by != 0 {
		app.Window().Call("scrollBy", map[string]any{"top": by, "behavior": "instant"})
	}
}

// coveredBy is how far down the picture covers the screen over a row, where it
// stays in view above it.
func coveredBy(sight app.Value, row edges) float64 {
	picture := boxOf(sight)
	sticks := app.Window().Call("getComputedStyle", sight).Get("position").String() == "sticky"
	if !sticks || picture.left >= row.right || row.left >= picture.right {
		return 0
	}
	height := picture.bottom - picture.top
	if stage := app.Window().GetElementByID("picture-stage"); stage.Truthy() {
		height += stage.Get("offsetHeight").Float()
	}
	return height
}

// edges are where an element stands on the screen, CSS pixels.
type edges struct{ top, bottom, left, right float64 }

func boxOf(element app.Value) edges {
	b := element.Call("getBoundingClientRect")
	return edges{b.Get("top").Float(), b.Get("bottom").Float(), b.Get("left").Float(), b.Get("right").Float()}
}
