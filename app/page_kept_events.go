package main

import (
	"slices"
	"strconv"
	"time"

	"standingbeam/app/view"
	"standingbeam/app/wallfile"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// wallAt is the place in the list of the wall whose button was used.
func (p *page) wallAt(ctx app.Context) (int, bool) {
	i, err := strconv.Atoi(data(ctx, "wall"))
	return i, err == nil && i >= 0 && i < len(p.walls)
}

// goTo brings a wall to the screen.
func (p *page) goTo(ctx app.Context, i int) {
	p.here, p.check, p.focus, p.drag = i, "", "", nil
	p.changed(ctx)
}

func (p *page) onOpen(ctx app.Context, e app.Event) {
	defer p.caught()
	if i, ok := p.wallAt(ctx); ok {
		p.open["walls"] = false
		p.goTo(ctx, i)
		p.focusOn("#walls")
	}
}

// focusOn gives the focus to an element of the page as it is drawn next, where
// the one that had it goes.
func (p *page) focusOn(selector string) {
	p.self.Defer(func(app.Context) {
		if element := app.Window().Get("document").Call("querySelector", selector); element.Truthy() {
			element.Call("focus")
		}
	})
}

// focusOnKept gives it to a wall in the list, or to what opens the list.
func (p *page) focusOnKept(i int) {
	if p.open["walls"] {
		p.focusOn(`.kept-open[data-wall="` + strconv.Itoa(i) + `"]`)
	} else {
		p.focusOn("#walls")
	}
}

func (p *page) onNew(ctx app.Context, e app.Event) {
	defer p.caught()
	p.add(ctx, view.Fresh(p.names(), p.speaker))
}

func (p *page) onCopy(ctx app.Context, e app.Event) {
	defer p.caught()
	if i, ok := p.wallAt(ctx); ok {
		copied := p.walls[i].wall
		copied.Name = view.FreeName(copied.Name, p.names(), p.speaker)
		p.add(ctx, copied)
	}
}

// add puts a wall at the end of the list and on the screen.
func (p *page) add(ctx app.Context, walls ...wallfile.Wall) {
	for _, w := range walls {
		p.walls = append(p.walls, kept{wall: w})
	}
	p.goTo(ctx, len(p.walls)-1)
}

func (p *page) names() []string {
	out := make([]string, 0, len(p.walls))
	for _, k := range p.walls {
		out = append(out, k.wall.Name)
	}
	return out
}

// onDelete takes a wall away and offers it back. The last one leaves the
// example behind.
func (p *page) onDelete(ctx app.Context, e app.Event) {
	defer p.caught()
	if i, ok := p.wallAt(ctx); ok {
		p.remove(ctx, i)
	}
}

func (p *page) remove(ctx app.Context, i int) {
	gone, here := p.walls[i], p.here
	p.walls = slices.Delete(slices.Clone(p.walls), i, i+1)
	last := len(p.walls) == 0
	if last {
		p.walls = []kept{{wall: p.example()}}
	}
	if here > i || here >= len(p.walls) {
		here = max(0, here-1)
	}
	p.goTo(ctx, here)
	p.tell(ctx, told{
		text: p.speaker.Sentence("page.deleted", gone.wall.Name),
		acts: []act{{p.word("page.undo"), func(ctx app.Context) {
			if last && p.walls[0].wall == p.example() {
				p.walls = nil
			}
			at := min(i, len(p.walls))
			p.walls = slices.Insert(slices.Clone(p.walls), at, gone)
			p.goTo(ctx, at)
			p.focusOnKept(at)
		}}},
	})
	p.focusOnKept(min(i, len(p.walls)-1))
}

// tell shows a message. It goes by itself when there is nothing to be done.
func (p *page) tell(ctx app.Context, t told) {
	p.tellings++
	p.told = t
	p.self.Defer(p.settle)
	if now := p.tellings; len(t.acts) == 0 {
		p.self.After(toldTime, func(app.Context) {
			if p.tellings == now {
				p.told = told{}
			}
		})
	}
}

const toldTime = 10 * time.Second

// onTold does what a message offers, or closes it.
func (p *page) onTold(ctx app.Context, e app.Event) {
	defer p.caught()
	acts := p.told.acts
	i, err := strconv.Atoi(data(ctx, "act"))
	p.told = told{}
	if err == nil && i < len(acts) {
		acts[i].do(p.self) // what is dispatched from a button that has gone never runs
	}
}

func (p *page) onFaultSaved(ctx app.Context, e app.Event) {
	defer p.caught()
	p.fault = ""
	p.takeTheirs(p.self)
	p.focusOn("#walls")
}

func (p *page) onFaultExample(ctx app.Context, e app.Event) {
	defer p.caught()
	p.fault = ""
	p.add(ctx, p.example())
	p.focusOn("#walls")
}
