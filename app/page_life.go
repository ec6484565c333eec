package main

import (
	"strconv"

	"standingbeam/app/keep"
	"standingbeam/app/view"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// OnInit fills the page before it is first drawn: what was kept, then what a
// person has already typed into the page that the document came with.
func (p *page) OnInit() {
	first, language := firstPage(), p.speaker.Lang
	first.Compo = p.Compo // what the framework has already noted in it
	*p = *first
	if app.IsServer {
		p.rename(language)
		p.speaker.Lang = language
		return
	}
	p.touch = matches("(pointer: coarse)")
	if p.beginEmbedded() {
		return
	}
	p.rename(browserLanguage())
	p.speaker.Lang = browserLanguage()
	p.takeTyped()
	p.measure()
	p.begin(keep.Here(func(r keep.Report) { p.reports <- r }))
}

// OnMount makes the page known as ready and listens for the page being left.
func (p *page) OnMount(ctx app.Context) {
	defer p.caught()
	p.self = ctx
	p.frame = app.FuncOf(p.onFrame)
	p.redraw = func() { ctx.Dispatch(func(app.Context) {}) }
	p.applyTheme()
	p.awaitLate(ctx)
	p.tellStorage(ctx)
	p.listen(ctx)
	p.installable = ctx.IsAppInstallable()
	p.apple = p.embed == nil && !app.Window().Call("goappIsAppInstalled").Truthy() && app.Window().Call("goappIsAppleBrowser").Truthy()
	p.mountEmbedded(ctx)
	document := app.Window().Get("document")
	leave := app.FuncOf(func(app.Value, []app.Value) any {
		ctx.Dispatch(func(ctx app.Context) {
			ctx.PreventUpdate()
			p.release()
			p.flush()
		})
		return nil
	})
	document.Call("addEventListener", "visibilitychange", leave)
	app.Window().Call("addEventListener", "pagehide", leave)
	app.Window().Call("addEventListener", "blur", leave)
	ctx.Defer(func(ctx app.Context) {
		p.settle(ctx)
		document.Get("documentElement").Get("dataset").Set("ready", "1")
	})
}

// listen passes on what becomes of the saves.
func (p *page) listen(ctx app.Context) {
	go func() {
		for r := range p.reports {
			ctx.Dispatch(func(ctx app.Context) {
				defer p.caught()
				p.reported(ctx, r)
			})
		}
	}()
}

// OnResize draws the picture for the space that it has.
func (p *page) OnResize(ctx app.Context) {
	defer p.caught()
	ctx.Defer(p.settle)
}

// OnAppUpdate offers the newer version; nothing is changed under the hands.
func (p *page) OnAppUpdate(ctx app.Context) {
	defer p.caught()
	p.tell(ctx, told{text: p.word("page.update"), acts: []act{{p.word("page.update.load"), func(ctx app.Context) {
		p.flush()
		ctx.Reload()
	}}}})
}

// OnAppInstallChange notes whether the page can be installed.
func (p *page) OnAppInstallChange(ctx app.Context) { p.installable = ctx.IsAppInstallable() }

func (p *page) onInstall(ctx app.Context, e app.Event) {
	defer p.caught()
	ctx.ShowAppInstallPrompt()
}

// measure asks how large the picture is, and reports whether that changed.
func (p *page) measure() bool {
	shown := app.Window().GetElementByID("figure")
	if !shown.Truthy() {
		return false
	}
	now := place{shown.Get("clientWidth").Float(), shown.Get("clientHeight").Float()}
	if now.width < 200 || now.height < 120 || now == p.size {
		return false
	}
	p.size = now
	return true
}

// settleSoon settles before the next frame is painted. It asks the browser how
// high things are, which waits for the layout: that would hold up the picture.
func (p *page) settleSoon(ctx app.Context) {
	if p.settling {
		return
	}
	p.settling = true
	app.Window().Call("requestAnimationFrame", p.frame)
}

// onFrame settles a page that was changed.
func (p *page) onFrame(app.Value, []app.Value) any {
	p.settling = false
	p.settle(app.Context{})
	return nil
}

// settle runs after the page is drawn. It puts the handles in their places,
// which the security policy allows a program but not a style attribute, and
// clears fields that the framework leaves filled.
func (p *page) settle(ctx app.Context) {
	defer p.caught()
	for _, h := range p.seen.Picture.Handles {
		button := app.Window().GetElementByID("handle-" + h.ID)
		if !button.Truthy() {
			continue
		}
		style := button.Get("style")
		style.Call("setProperty", "--x", plain(.5+(h.X-p.seen.Picture.Width/2)/p.size.width/p.scale()))
		style.Call("setProperty", "--y", plain(.5+(h.Y-p.seen.Picture.Height/2)/p.size.height/p.scale()))
	}
	p.clearEmpty()
	p.keepHeight()
	p.reveal()
	if p.drag == nil && p.measure() {
		p.self.Dispatch(func(ctx app.Context) { ctx.Defer(p.settle) })
	}
}

// keepHeight lets the headline grow but not shrink while the same wall is
// changed in the same way, so that what a thumb is on does not move each time
// a line more or less is needed.
func (p *page) keepHeight() {
	answer := app.Window().GetElementByID("answer")
	if !answer.Truthy() {
		return
	}
	key := p.wall().Condition + "/" + strconv.Itoa(p.here) + "/" + plain(p.size.width) + "/" + strconv.Itoa(int(p.speaker.System)) + p.speaker.Lang
	if p.tall.key != key {
		p.tall = tall{key: key}
		answer.Get("style").Call("removeProperty", "min-height")
	}
	if now := answer.Get("offsetHeight").Int(); now > p.tall.height {
		p.tall.height = now
		answer.Get("style").Call("setProperty", "min-height", strconv.Itoa(now)+"px")
	}
}

// tall is the greatest height that the headline had.
type tall struct {
	key    string
	height int
}

// clearEmpty empties the fields whose text was taken away by other means than
// typing: setting an empty value does not reach the element.
func (p *page) clearEmpty() {
	fields := app.Window().Get("document").Call("querySelectorAll", "input[data-path]")
	for i := 0; i < fields.Length(); i++ {
		field := fields.Index(i)
		if path := field.Get("dataset").Get("path").String(); p.wall().Field(path) == "" && field.Get("value").String() != "" {
			field.Set("value", "")
		}
	}
}

// takeTyped reads what was typed into the document's own page while the
// program was still on its way.
func (p *page) takeTyped() {
	fields := app.Window().Get("document").Call("querySelectorAll", "input[data-path]")
	for i := 0; i < fields.Length(); i++ {
		field := fields.Index(i)
		if text := field.Get("value").String(); text != field.Get("defaultValue").String() {
			path := field.Get("dataset").Get("path").String()
			p.wall().Set(path, text)
			view.Commit(p.wall(), path, p.speaker)
			p.early = true
		}
	}
	cards := app.Window().Get("document").Call("querySelector", "input[name=condition]:checked")
	if cards.Truthy() && cards.Get("value").String() != p.wall().Condition {
		view.Choose(p.wall(), "condition", cards.Get("value").String())
		p.early = true
	}
}
