package main

import (
	"errors"
	"time"

	"standingbeam/app/keep"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// pieceName is the name under which the whole state of the page is kept.
const pieceName = "page"

// loadPatience is how long the first drawing waits for what was kept. What
// comes later is taken up when it comes.
const loadPatience = 2 * time.Second

// keeper is what the page needs of a [keep.Keeper].
type keeper interface {
	Get(name string) ([]byte, error)
	Put(name string, data []byte)
	TakeMine(name string)
}

// loaded is the outcome of reading what was kept.
type loaded struct {
	data []byte
	err  error
}

// begin reads what was kept, before the page is first drawn. It must not be
// called from an event.
func (p *page) begin(k keeper) {
	p.keeper = k
	come := make(chan loaded, 1)
	go func() {
		data, err := k.Get(pieceName)
		come <- loaded{data, err}
	}()
	select {
	case l := <-come:
		p.takeLoaded(l)
	case <-time.After(loadPatience):
		p.late = come
	}
}

// takeLoaded takes up what was kept. What was typed before it came is a wall
// of its own beside it.
func (p *page) takeLoaded(l loaded) {
	p.storage = storageWord(l.err)
	typed := p.walls
	if len(l.data) == 0 || !p.restore(l.data) {
		return
	}
	if p.early || p.changes > 0 {
		p.walls = append(p.walls, typed...)
		p.here = len(p.walls) - 1
	}
}

// awaitLate takes up what was kept when it comes after the first drawing.
func (p *page) awaitLate(ctx app.Context) {
	if p.late == nil {
		return
	}
	come := p.late
	p.late = nil
	ctx.Async(func() {
		l := <-come
		ctx.Dispatch(func(ctx app.Context) {
			defer p.caught()
			p.takeLoaded(l)
			p.tellStorage(ctx)
			p.applyTheme()
			p.turned()
			ctx.Defer(p.settle)
		})
	})
}

// storageWord is the id of what is said of the storage.
func storageWord(err error) string {
	switch {
	case err == nil, errors.Is(err, keep.ErrNotFound):
		return "page.storage.kept"
	case errors.Is(err, keep.ErrCleared):
		return "page.storage.cleared"
	case errors.Is(err, keep.ErrFull):
		return "page.storage.full"
	case errors.Is(err, keep.ErrChanged):
		return "page.storage.changed"
	case errors.Is(err, keep.ErrDamaged):
		return "page.storage.damaged"
	}
	return "page.storage.refused"
}

// tellStorage says at the start that nothing can be kept here, and offers a
// file instead.
func (p *page) tellStorage(ctx app.Context) {
	if p.storage == "" || p.storage == "page.storage.kept" || p.storage == notAsked {
		return
	}
	if p.storage == "page.storage.cleared" {
		text := p.word(p.storage)
		p.storage = "page.storage.kept" // what comes now
		p.tell(ctx, told{text: text, acts: []act{{p.word("page.kept.import"), p.askFile}}})
		return
	}
	p.tell(ctx, told{text: p.word(p.storage), acts: []act{{p.word("page.kept.export"), func(app.Context) { p.export() }}}})
}

// save has the state of the page kept.
func (p *page) save() {
	if p.keeper != nil {
		p.saved = p.changes
		p.keeper.Put(pieceName, p.record())
	}
}

// flush keeps what has changed since the last save, at once.
func (p *page) flush() {
	if p.saved != p.changes {
		p.save()
	}
}

// reported shows what came of a save: nothing while it goes well.
func (p *page) reported(ctx app.Context, r keep.Report) {
	word := storageWord(r.Err)
	if r.Err == nil && p.embed == nil {
		app.Window().Call("keepStorage")
	}
	if word == p.storage {
		return
	}
	p.storage = word
	if r.Err == nil {
		p.told = told{}
		return
	}
	acts := []act{{p.word("page.kept.export"), func(app.Context) { p.export() }}}
	if errors.Is(r.Err, keep.ErrChanged) {
		acts = []act{
			{p.word("page.storage.theirs"), p.takeTheirs},
			{p.word("page.storage.mine"), func(app.Context) { p.storage = "page.storage.kept"; go p.keeper.TakeMine(pieceName) }},
		}
	}
	p.tell(ctx, told{text: p.word(word), acts: acts})
}

// takeTheirs drops what was changed here for what another tab has kept.
func (p *page) takeTheirs(ctx app.Context) {
	ctx.Async(func() {
		data, err := p.keeper.Get(pieceName)
		ctx.Dispatch(func(ctx app.Context) {
			defer p.caught()
			p.storage = storageWord(err)
			if len(data) > 0 {
				p.restore(data)
			}
			p.saved = p.changes
			p.applyTheme()
			p.turned()
			ctx.Defer(p.settle)
		})
	})
}
