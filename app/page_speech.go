package main

import (
	"standingbeam/app/view"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// What the script that runs before the first frame finds in localStorage, long
// before the program has come with everything else that is kept.
const (
	languageKey = "standing-beam language"
	themeKey    = "standing-beam theme"
)

// browserLanguage is the language that the browser asks for.
func browserLanguage() string {
	return words.LanguageFor(app.Window().Get("navigator").Get("language").String())
}

// languagePick offers the languages, each under its name in itself.
func languagePick(id string, s words.Speaker, do app.EventHandler) app.UI {
	options := make([]app.UI, 0, 2)
	for _, code := range words.Languages() {
		option := app.Option().Value(code).Lang(code).Text(words.LanguageName(code))
		if code == s.Language() {
			option.Selected(true)
		}
		options = append(options, option)
	}
	return app.Select().ID(id).Class("top-language").Aria("label", s.Word("page.language")).OnChange(do).Body(options...)
}

func (p *page) onLanguage(ctx app.Context, e app.Event) {
	defer p.caught()
	p.speakIn(ctx, ctx.JSSrc().Get("value").String())
}

// speakIn changes the language of everything that is shown.
func (p *page) speakIn(ctx app.Context, code string) {
	p.rename(code)
	p.speaker.Lang = code
	p.told = told{}
	p.applyLanguage()
	p.changed(ctx)
	p.turned()
}

// turned has what stands around the page and beside it drawn anew.
func (p *page) turned() {
	for _, redraw := range []func(){p.redraw, p.around} {
		if redraw != nil {
			redraw()
		}
	}
}

// rename gives the example its name in another language, unless it was given
// one of its own.
func (p *page) rename(code string) {
	then := words.Speaker{Lang: code}
	for i := range p.walls {
		if w := &p.walls[i].wall; w.Name == p.word("page.example") {
			w.Set("name", then.Word("page.example"))
		}
	}
}

// example is the wall that there is where no other is.
func (p *page) example() wallfile.Wall {
	w := view.Example()
	w.Set("name", p.word("page.example"))
	return w
}

// applyLanguage tells the browser, and the next visit, which language is spoken
// and how the page looks.
func (p *page) applyLanguage() {
	app.Window().Get("document").Get("documentElement").Set("lang", p.speaker.Language())
	if p.embed != nil {
		return // the page around has chosen it
	}
	defer func() { _ = recover() }() // a full store is told where the walls are kept
	storage := app.Window().Get("localStorage")
	storage.Call("setItem", languageKey, p.speaker.Language())
	storage.Call("setItem", themeKey, p.theme)
}

// onDecimal changes the sign between whole numbers and decimals.
func (p *page) onDecimal(ctx app.Context, e app.Event) {
	defer p.caught()
	for i := range p.walls {
		view.CommitAll(&p.walls[i].wall, p.speaker) // what is typed keeps its meaning
	}
	p.speaker.DecimalComma = ctx.JSSrc().Get("value").String() == "comma"
	p.changed(ctx)
	p.turned()
}

func (p *page) decimals() []view.Choice {
	return []view.Choice{
		{Value: "point", Label: p.word("page.decimal.point"), Chosen: !p.speaker.DecimalComma},
		{Value: "comma", Label: p.word("page.decimal.comma"), Chosen: p.speaker.DecimalComma},
	}
}
