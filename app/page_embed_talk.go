package main

import (
	"encoding/json"
	"slices"
	"strings"

	"standingbeam/app/embed"
	"standingbeam/app/view"
	"standingbeam/app/wallfile"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// tellAnswer tells the wall and its answer when they are others than before.
func (p *page) tellAnswer() {
	if !p.embed.ready || p.embed.ask.Lesson != "" {
		return
	}
	if told, text := p.answer(); text != p.embed.said {
		p.embed.said = text
		p.say(embed.Message{Says: "change", Answer: told})
	}
}

// answer is the wall with its answer, as it is told, and the same as a text.
func (p *page) answer() (*embed.Told, string) {
	told := &embed.Told{File: p.file(), Readable: p.seen.Stale == ""}
	for _, l := range p.seen.Lines {
		line := embed.Line{State: string(l.State), Mark: l.Mark, Title: l.Title}
		if l.ID == "finished" {
			told.Finished, told.Verdict = line, line.State
		} else {
			told.Today = line
		}
	}
	text, err := json.Marshal(told)
	if err != nil {
		return told, "" // texts only: they always marshal
	}
	return told, string(text)
}

// say sends a message to the page around, which the browser delivers only if
// that is of the origin that it said it was.
func (p *page) say(m embed.Message) {
	parent := app.Window().Get("parent")
	if p.embed.ask.Host == "" || parent.Equal(app.Window()) {
		return
	}
	parent.Call("postMessage", m.Text(), p.embed.ask.Host)
}

// sayRefused says what was wanted and cannot be, faults of the wall included.
func (p *page) sayRefused() {
	var what []string
	for _, r := range slices.Concat(p.embed.ask.Refused, p.palette().Refused) {
		what = append(what, r.Say(p.speaker))
	}
	p.refuse(append(what, p.faults(p.embed.ask.Problems())...))
}

func (p *page) refuse(what []string) {
	if len(what) > 0 {
		p.say(embed.Message{Says: "refused", What: what})
	}
}

func (p *page) faults(problems []wallfile.Problem) (lines []string) {
	for _, problem := range problems[:min(10, len(problems))] {
		lines = append(lines, problem.Line(p.speaker))
	}
	return lines
}

// hear listens to the page around and to nobody else.
func (p *page) hear(ctx app.Context) {
	window := app.Window()
	heard := app.FuncOf(func(_ app.Value, args []app.Value) any {
		e := args[0]
		host, text := p.embed.ask.Host, e.Get("data")
		if host == "" || e.Get("origin").String() != host || !e.Get("source").Equal(window.Get("parent")) || text.Type() != app.TypeString {
			return nil
		}
		if r, ok := embed.Read(text.String()); ok {
			ctx.Dispatch(func(ctx app.Context) {
				defer p.caught()
				p.obey(ctx, r)
			})
		}
		return nil
	})
	window.Call("addEventListener", "message", heard)
}

// obey does what the page around asks for.
func (p *page) obey(ctx app.Context, r embed.Request) {
	if r.Asks == "wall" {
		walls, problems := wallfile.Decode(strings.NewReader(r.File))
		if p.refuse(p.faults(problems)); len(problems) > 0 {
			return
		}
		p.walls = nil
		p.add(ctx, walls...)
		p.goTo(ctx, 0)
		return
	}
	was, ask := p.embed.ask, r.Ask
	ask.Host, ask.Keep, ask.KeepAs, ask.Lesson = was.Host, was.Keep, was.KeepAs, was.Lesson
	p.embed.ask = ask
	for i := range p.walls {
		view.CommitAll(&p.walls[i].wall, p.speaker)
	}
	p.rename(ask.Lang)
	p.speaker, p.theme = ask.Speaker(), p.palette().Theme
	p.dress()
	if !slices.Equal(was.Fields, ask.Fields) {
		p.walls = nil
		p.add(ctx, ask.Wall())
	}
	p.changed(ctx)
	p.turned()
	p.sayRefused()
}
