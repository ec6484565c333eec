package main

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// renderPrivacy says what is kept where and who sees what, and offers to erase
// it. In a page of another site, that page says what it keeps.
func (p *page) renderPrivacy() []app.UI {
	erase := app.Button().ID("erase").Type("button").Class("plain").OnClick(p.onErase).Text(p.word("page.erase"))
	if p.embed != nil {
		erase.Attr("hidden", "true")
	}
	return []app.UI{
		app.H3().Text(p.word("page.privacy")),
		app.P().Text(p.word("page.about.private")),
		app.P().Text(p.word("page.about.kept")),
		app.P().Text(p.word("page.about.server")),
		erase,
	}
}

// onErase asks before everything goes.
func (p *page) onErase(ctx app.Context, e app.Event) {
	defer p.caught()
	p.tell(ctx, told{text: p.word("page.erase.sure"), acts: []act{
		{p.word("page.kept.export"), func(app.Context) { p.export() }},
		{p.word("page.erase.do"), p.erase},
	}})
}

// erase removes what is kept and begins anew.
func (p *page) erase(ctx app.Context) {
	k, ok := p.keeper.(interface{ Erase() error })
	if !ok {
		return
	}
	p.keeper = nil // nothing is kept from here on
	ctx.Async(func() {
		err := k.Erase()
		ctx.Dispatch(func(ctx app.Context) {
			defer p.caught()
			if err != nil {
				p.tell(ctx, told{text: p.word("page.storage.refused")})
				return
			}
			storage := app.Window().Get("localStorage")
			storage.Call("removeItem", languageKey)
			storage.Call("removeItem", themeKey)
			ctx.Reload()
		})
	})
}

// renderInstall offers to install the page, where the browser can, and says
// how where it cannot be asked.
func (p *page) renderInstall() app.UI {
	button := app.Button().ID("install").Type("button").Class("plain").OnClick(p.onInstall).Text(p.word("page.install"))
	if !p.installable {
		button.Attr("hidden", "true")
	}
	hint := app.P().ID("install-apple").Class("part-text").Text(p.word("page.install.apple"))
	if !p.apple {
		hint.Attr("hidden", "true")
	}
	return app.Div().Body(button, hint)
}
