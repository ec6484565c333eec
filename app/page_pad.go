package main

import (
	"strings"

	"standingbeam/app/view"
	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// The keypad. Where a finger points, lengths and numbers are typed on keys of
// the page's own, at the lower edge of the screen; the field keeps the focus,
// so that a keyboard of the device types as well. Who prefers the device's own
// keys on the screen gets those, with a row of what they lack.

// Sets of keys.
const (
	noKeys       = ""          // a mouse and a keyboard are there
	digitKeys    = "digits"    // the keypad
	fractionKeys = "fractions" // its sixteenths of an inch, and the other units
	deviceKeys   = "device"    // what the device's own keyboard lacks
)

// key is one key: what it shows, what it types, and what it is called where
// what it shows does not say it. Some types begin with "!": they do something.
type key struct{ shown, types, name string }

var (
	back      = key{"⌫", "back", "back"}
	next      = key{"→", "!next", "next"}
	done      = key{"✓", "!done", "done"}
	toDevice  = key{"⌨", "!device", "device"}
	sixteenth = key{"x/16", "!fractions", "fractions"}
	feet      = key{"ft", "_ft_", "ft"}
	inches    = key{"in", "_in", "in"}
	metres    = key{"m", "_m", "m"}
	millis    = key{"mm", "_mm", "mm"}
	half      = key{"½", "_1/2", "half"}
)

// keysFor are the sets of keys of a field, in rows. A length has five columns,
// another number four.
func keysFor(set string, short, metric bool) []key {
	d := func(s string) key { return key{s, s, ""} }
	switch {
	case set == deviceKeys && !short:
		return []key{{"123", "!own", "own"}}
	case set == deviceKeys:
		return []key{feet, inches, metres, half, {"/", "/", "slash"}, {"123", "!own", "own"}}
	case set == fractionKeys:
		f := func(s string) key { return key{s, "_" + s, ""} }
		return []key{
			f("1/16"), f("1/8"), f("3/16"), f("1/4"), back,
			f("5/16"), f("3/8"), f("7/16"), f("1/2"), metres,
			f("9/16"), f("5/8"), f("11/16"), f("3/4"), millis,
			f("13/16"), f("7/8"), f("15/16"), {"123", "!digits", "digits"}, toDevice,
		}
	case !short:
		return []key{
			d("7"), d("8"), d("9"), back, d("4"), d("5"), d("6"), toDevice,
			d("1"), d("2"), d("3"), next, d("0"), {".", ".", "point"}, {"00", "00", ""}, done,
		}
	case metric:
		return []key{
			d("7"), d("8"), d("9"), metres, back, d("4"), d("5"), d("6"), millis, toDevice,
			d("1"), d("2"), d("3"), feet, inches, d("0"), {".", ".", "point"}, sixteenth, next, done,
		}
	}
	return []key{
		d("7"), d("8"), d("9"), feet, back, d("4"), d("5"), d("6"), inches, half,
		d("1"), d("2"), d("3"), {"¼", "_1/4", "quarter"}, {"¾", "_3/4", "three-quarters"},
		d("0"), {".", ".", "point"}, sixteenth, next, done,
	}
}

// keySet is the set of keys that a field has while it is typed in.
func (p *page) keySet(f view.Field) string {
	switch {
	case !p.touch || !f.Short && !f.Number:
		return noKeys
	case p.device:
		return deviceKeys
	case p.sixteenths && f.Short:
		return fractionKeys
	}
	return digitKeys
}

// padded reports whether the keypad lies over the lower part of the screen.
func (p *page) padded() bool { return p.touch && !p.device && p.padFor != "" && p.padFor == p.typing }

// renderPad are the keys of the field, empty while it is not typed in.
func (r *row) renderPad() app.UI {
	p := r.Page
	box := app.Div().Class("pad").Role("group").Aria("label", p.speaker.Sentence("page.pad", r.Field.Label))
	if !r.Typing || r.Closed || r.Keys == noKeys {
		return box.Attr("hidden", "true")
	}
	keys := make([]app.UI, 0, 20)
	for _, k := range keysFor(r.Keys, r.Field.Short, p.speaker.System == words.Metric) {
		if k.name == "point" && p.speaker.DecimalComma {
			k.shown, k.types = ",", ","
		}
		class := "key"
		if len(k.shown) == 1 && k.name == "" {
			class = "key digit"
		}
		if k.types == "!done" {
			class = "key finish"
		}
		button := app.Button().Type("button").Class(class).DataSet("key", k.types).DataSet("for", r.Field.Path).
			TabIndex(-1).On("pointerdown", p.onKeyDown).On("mousedown", p.onKeyDown).OnClick(p.onKey).Text(k.shown)
		if k.name != "" {
			button.Aria("label", p.word("page.key."+k.name))
		}
		keys = append(keys, button)
	}
	if !r.Field.Short {
		box.Class("of-numbers")
	}
	return box.Class("pad-" + r.Keys).Body(keys...)
}

// onKey writes what a key stands for at the caret, or does it.
func (p *page) onKey(ctx app.Context, e app.Event) {
	defer p.caught()
	path, key := data(ctx, "for"), data(ctx, "key")
	field := app.Window().GetElementByID("f-" + path)
	if !field.Truthy() {
		return
	}
	if act, ok := strings.CutPrefix(key, "!"); ok {
		p.keyActs(ctx, act, field)
		return
	}
	text, from, to := field.Get("value").String(), field.Get("selectionStart").Int(), field.Get("selectionEnd").Int()
	text, at := typed(text, from, to, key)
	field.Set("value", text)
	field.Call("setSelectionRange", at, at)
	p.sixteenths = false
	p.input(ctx, path, text)
}

func (p *page) keyActs(ctx app.Context, act string, field app.Value) {
	switch act {
	case "fractions", "digits":
		p.sixteenths = act == "fractions"
	case "done":
		p.endTyping(field)
	case "next":
		if following := p.nextField(field); following.Truthy() {
			following.Call("focus")
			return
		}
		p.endTyping(field)
	case "device", "own":
		p.device = act == "device"
		p.changed(ctx)
		// The browser asks which keys a field wants when it gets the focus.
		ctx.Defer(func(app.Context) {
			field.Call("blur")
			field.Call("focus")
		})
	}
}

// endTyping leaves a field, and the keys go at once.
func (p *page) endTyping(field app.Value) {
	field.Call("blur")
	p.typing, p.padFor, p.sixteenths = "", "", false
}

// nextField is the field behind one that the keypad types in too.
func (p *page) nextField(field app.Value) app.Value {
	all := app.Window().Get("document").Call("querySelectorAll", "#tool .entry[inputmode=none]")
	for i := 0; i+1 < all.Length(); i++ {
		if all.Index(i).Equal(field) {
			return all.Index(i + 1)
		}
	}
	return app.Null()
}
