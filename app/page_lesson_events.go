package main

import (
	"strconv"
	"time"

	"standingbeam/app/lesson"
	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// heardDelay is how long the control must rest before what it shows is read
// aloud.
const heardDelay = 600 * time.Millisecond

// moved takes a change of the form: the address follows, and what the picture
// now shows is read aloud after a rest.
func (l *lessonPage) moved(ctx app.Context) {
	l.noted = ""
	l.Front.put(lesson.Address(l.form))
	l.changes++
	now := l.changes
	ctx.Defer(l.settle)
	ctx.After(heardDelay, func(ctx app.Context) {
		defer l.caught()
		if l.changes != now || l.heard == l.seen.Say {
			ctx.PreventUpdate()
			return
		}
		l.heard = l.seen.Say
	})
}

// number reads a number from an element's data.
func number(ctx app.Context, name string) int {
	n, err := strconv.Atoi(data(ctx, name))
	if err != nil {
		return 0
	}
	return n
}

func (l *lessonPage) onSlide(ctx app.Context, e app.Event) {
	defer l.caught()
	l.moveTo(ctx, ctx.JSSrc().Get("value").String())
}

func (l *lessonPage) onChoose(ctx app.Context, e app.Event) {
	defer l.caught()
	l.moveTo(ctx, ctx.JSSrc().Get("value").String())
}

func (l *lessonPage) moveTo(ctx app.Context, text string) {
	n, err := strconv.Atoi(text)
	if err != nil || n == l.form.At {
		ctx.PreventUpdate()
		return
	}
	l.form.At = n
	l.moved(ctx)
}

func (l *lessonPage) onStep(ctx app.Context, e app.Event) {
	defer l.caught()
	at := l.form.At + number(ctx, "by")
	if at < 0 || at >= len(l.seen.Control.Stops) {
		ctx.PreventUpdate()
		return
	}
	l.form.At = at
	l.moved(ctx)
}

// onPick takes a choice beside the slider.
func (l *lessonPage) onPick(ctx app.Context, e app.Event) {
	defer l.caught()
	name := data(ctx, "pick")
	i, n := int(name[len(name)-1]-'0'), ctx.JSSrc().Get("value").String()
	at, err := strconv.Atoi(n)
	if err != nil || i < 0 || i >= len(l.form.Picks) {
		return
	}
	l.form.Picks[i] = at
	l.moved(ctx)
}

// onGuess takes an answer, or shows it without one, and moves on to what it
// says.
func (l *lessonPage) onGuess(ctx app.Context, e app.Event) {
	defer l.caught()
	of, guess := number(ctx, "of"), number(ctx, "guess")
	target := "why-verdict"
	if of >= 0 && of < len(l.form.Cases) {
		l.form.Cases[of], target = guess, "why-case-"+strconv.Itoa(of)+"-verdict"
	} else {
		l.form.Guess, l.form.Shown = guess, true
	}
	l.moved(ctx)
	ctx.Defer(func(app.Context) {
		box := app.Window().GetElementByID(target)
		if !box.Truthy() {
			return
		}
		box.Call("focus", map[string]any{"preventScroll": true})
		if of >= 0 {
			box = box.Get("parentElement").Get("parentElement")
		}
		block := "nearest"
		if matches("(max-width: 859px)") {
			block = "start" // under the picture, which stays
		}
		box.Call("scrollIntoView", map[string]any{"block": block})
	})
}

// onAgain asks the question again.
func (l *lessonPage) onAgain(ctx app.Context, e app.Event) {
	defer l.caught()
	if of := number(ctx, "of"); of >= 0 && of < len(l.form.Cases) {
		l.form.Cases[of] = 0
	} else {
		f := lesson.Start(l.speaker(), l.form.ID)
		l.form = f
	}
	l.moved(ctx)
}

func (l *lessonPage) onNumbers(ctx app.Context, e app.Event) {
	defer l.caught()
	l.form.Open = !l.form.Open
}

// onUnits changes between feet and inches and metric, for the lessons.
func (l *lessonPage) onUnits(ctx app.Context, e app.Event) {
	defer l.caught()
	system := words.Metric
	if l.speaker().System == words.Metric {
		system = words.US
	}
	l.system = &system
	l.form = lesson.Turn(l.form, l.speaker())
	l.moved(ctx)
}

// onLanguage changes the language, of the page of the wall too.
func (l *lessonPage) onLanguage(ctx app.Context, e app.Event) {
	defer l.caught()
	l.Speaker.Lang = ctx.JSSrc().Get("value").String()
	l.Front.page.speakIn(ctx, l.Speaker.Lang)
	l.form = lesson.Turn(l.form, l.speaker())
	l.moved(ctx)
}

// onCopy copies the address of the screen.
func (l *lessonPage) onCopy(ctx app.Context, e app.Event) {
	defer l.caught()
	address := app.Window().Get("location").Get("href").String()
	l.noted = address
	clipboard := app.Window().Get("navigator").Get("clipboard")
	if !clipboard.Truthy() {
		return
	}
	clipboard.Call("writeText", address).Then(func(app.Value) {
		ctx.Dispatch(func(app.Context) { l.noted = l.word("copied") })
	})
}

func (l *lessonPage) onPrint(ctx app.Context, e app.Event) {
	defer l.caught()
	ctx.PreventUpdate()
	app.Window().Call("print")
}
