package main

import (
	"strings"

	"standingbeam/app/embed"
	"standingbeam/app/lesson"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// front is all that stands at the one address: the page of the wall, and the
// lessons in its place while the address asks for one. The page stays where it
// is meanwhile, with everything that is typed.
type front struct {
	app.Compo

	page   *page
	lang   string // of a page that is rendered for the document
	at     string // what is shown, as it stands behind the # of the address
	inside bool   // it stands in a page of another site, which gave it its address
}

func (f *front) OnInit() {
	f.page = &page{}
	f.page.speaker.Lang = f.lang
	if app.IsServer {
		return
	}
	_, f.inside = embed.Parse("#" + fragment())
	f.at = asked()
}

// fragment is what stands behind the # of the address.
func fragment() string {
	return strings.TrimPrefix(app.Window().Get("location").Get("hash").String(), "#")
}

// asked is the same, where another site has asked for a lesson as the address
// of that lesson.
func asked() string {
	at := fragment()
	ask, ok := embed.Parse("#" + at)
	switch {
	case !ok:
		return at
	case ask.Lesson == "":
		return ""
	}
	return lesson.Root + "/" + ask.Lesson
}

func (f *front) Render() app.UI {
	tool := app.Div().ID("tool").Body(f.page)
	if lesson.Is(f.at) {
		tool.Attr("hidden", "true")
	}
	return app.Div().ID("front").Body(tool, &lessonPage{Front: f, Fragment: f.at, Speaker: f.page.speaker})
}

// OnMount follows the address when it is changed by the browser's own means.
func (f *front) OnMount(ctx app.Context) {
	follow := app.FuncOf(func(app.Value, []app.Value) any {
		ctx.Dispatch(f.OnNav)
		return nil
	})
	app.Window().Call("addEventListener", "popstate", follow)
	f.page.around = func() { ctx.Dispatch(func(ctx app.Context) { ctx.ResizeContent() }) }
	f.page.visit = f.goTo
	f.page.around() // what was kept says how the lessons speak
}

// OnNav shows what the address asks for.
func (f *front) OnNav(ctx app.Context) { f.show(ctx, asked()) }

// show shows what a fragment means. The page of the wall is measured anew when
// it comes back, since it had no size while it was hidden.
func (f *front) show(ctx app.Context, at string) {
	if at == f.at {
		return
	}
	back := lesson.Is(f.at) && !lesson.Is(at)
	f.at = at
	if back {
		ctx.Defer(func(ctx app.Context) {
			app.Window().Call("dispatchEvent", app.Window().Get("Event").New("resize"))
			app.Window().Call("scrollTo", 0, 0)
		})
	}
}

// put writes a fragment into the address without a step in the history. The
// address that another site gave is left as it is.
func (f *front) put(at string) {
	f.at = at
	if f.inside {
		return
	}
	app.Window().Get("history").Call("replaceState", nil, "", "#"+at)
}

// goTo is the click on a link to another screen. The framework is kept out of
// it: it would write the address too, at a time of its own. In a page of
// another site the address and the history, which is also that page's, stay.
func (f *front) goTo(ctx app.Context, e app.Event) {
	at := strings.TrimPrefix(ctx.JSSrc().Get("hash").String(), "#")
	e.PreventDefault()
	e.StopImmediatePropagation()
	f.show(ctx, at)
	if !f.inside && fragment() != at {
		app.Window().Get("history").Call("pushState", nil, "", "#"+at)
	}
}
