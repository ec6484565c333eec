package main

import (
	"math"

	"standingbeam/app/embed"
	"standingbeam/app/keep"
	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// embedded is the page while it stands in a page of another site.
type embedded struct {
	ask    embed.Ask
	ready  bool
	said   string // the last answer that was told
	height int    // the last height that was told
	vars   []embed.Var
}

// beginEmbedded takes up what the address asks for. It is false for a page
// that stands for itself.
func (p *page) beginEmbedded() bool {
	ask, ok := embed.Parse(app.Window().Get("location").Get("hash").String())
	if !ok {
		return false
	}
	p.embed = &embedded{ask: ask}
	p.walls = []kept{{wall: ask.Wall()}}
	p.speaker = ask.Speaker()
	k := hostKeeper{tell: p.tellAnswer}
	if ask.Keep {
		k.name, k.kept = ask.KeptName(), keep.Here(func(r keep.Report) { p.reports <- r })
	}
	p.begin(k)
	if !ask.Keep {
		p.storage = notAsked
	}
	p.theme = p.palette().Theme
	return true
}

// palette is every color as the page around wants them. Whoever asks the device
// for more contrast gets it, whatever that page left open.
func (p *page) palette() embed.Palette {
	theme := p.embed.ask.Theme
	if theme == "" && matches("(prefers-contrast: more)") {
		theme = glare
	}
	return p.embed.ask.Colors.Palette(theme)
}

// matches asks the browser whether a media query holds.
func matches(query string) bool {
	return app.Window().Call("matchMedia", query).Get("matches").Bool()
}

// notAsked is said of the storage where the page around wants nothing kept.
const notAsked = "embed.not-kept"

// hostKeeper tells the page around of every change, and keeps it only where
// that page wants it kept.
type hostKeeper struct {
	kept keeper // nil: nothing is kept
	name string
	tell func()
}

func (k hostKeeper) Get(string) ([]byte, error) {
	if k.kept == nil {
		return nil, keep.ErrNotFound
	}
	return k.kept.Get(k.name)
}

func (k hostKeeper) Put(_ string, data []byte) {
	if k.kept != nil {
		k.kept.Put(k.name, data)
	}
	k.tell()
}

func (k hostKeeper) TakeMine(string) {
	if k.kept != nil {
		k.kept.TakeMine(k.name)
	}
}

// mountEmbedded dresses the page, listens to the page around, and says that
// the wall is shown once its style has come.
func (p *page) mountEmbedded(ctx app.Context) {
	if p.embed == nil {
		return
	}
	p.dress()
	p.hear(ctx)
	document := app.Window().Get("document")
	style := document.Call("createElement", "link")
	style.Set("rel", "stylesheet")
	style.Set("href", "web/embed.css?v="+document.Get("documentElement").Get("dataset").Get("version").String())
	come := app.FuncOf(func(app.Value, []app.Value) any {
		ctx.Dispatch(func(ctx app.Context) {
			defer p.caught()
			p.measure()
			ctx.Defer(p.sayReady)
		})
		return nil
	})
	style.Call("addEventListener", "load", come)
	style.Call("addEventListener", "error", come)
	document.Get("head").Call("append", style)
}

// sayReady tells the page around that the wall is shown, and from then on how
// high it is.
func (p *page) sayReady(ctx app.Context) {
	defer p.caught()
	p.settle(ctx)
	p.embed.ready = true
	p.embed.height = bodyHeight()
	ready := embed.Message{Says: "ready", Height: p.embed.height}
	if p.embed.ask.Lesson == "" {
		ready.Answer, p.embed.said = p.answer()
	} else {
		p.around() // its picture has been drawn for the space before the style
	}
	p.say(ready)
	p.sayRefused()
	watch := app.FuncOf(func(app.Value, []app.Value) any {
		ctx.Dispatch(func(ctx app.Context) {
			defer p.caught()
			if !p.measure() {
				ctx.PreventUpdate()
			}
			p.tellHeight()
		})
		return nil
	})
	app.Window().Get("ResizeObserver").New(watch).Call("observe", app.Window().Get("document").Get("body"))
}

// bodyHeight is how high the page is, CSS pixels.
func bodyHeight() int {
	box := app.Window().Get("document").Get("body").Call("getBoundingClientRect")
	return int(math.Ceil(box.Get("height").Float()))
}

func (p *page) tellHeight() {
	if now := bodyHeight(); now != p.embed.height {
		p.embed.height = now
		p.say(embed.Message{Says: "height", Height: now})
	}
}

// dress gives the page the looks that are wanted. The security policy allows a
// program to set them, but not an attribute.
func (p *page) dress() {
	p.applyTheme()
	root := app.Window().Get("document").Get("documentElement")
	root.Get("dataset").Set("embed", string(p.embed.ask.Show))
	root.Get("dataset").Delete("colors")
	for _, v := range p.embed.vars {
		root.Get("style").Call("removeProperty", v.Name)
	}
	p.embed.vars = p.palette().Vars
	for _, v := range p.embed.vars {
		root.Get("dataset").Set("colors", "own")
		root.Get("style").Call("setProperty", v.Name, v.Value)
	}
}

// renderEmbedded stands under what is shown of the wall: what holds for every
// answer, and the way to the whole of this one.
func (p *page) renderEmbedded(v view.View) app.UI {
	box := app.Footer().ID("embedded").Class("embedded")
	if p.embed == nil {
		return box.Attr("hidden", "true")
	}
	return box.Body(
		app.H1().Class("unseen").Text(v.Name),
		app.P().Text(p.word("page.safety.law")),
		app.A().ID("whole").Class("plain").Href(p.embed.ask.Fragment(*p.wall())).Target("_blank").Rel("noopener").Text(p.word("embed.whole")),
	)
}
