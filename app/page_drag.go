package main

import (
	"standingbeam/app/draw"
	"standingbeam/app/view"
	"standingbeam/app/wallfile"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// drag is a handle that is being moved: everything is reckoned from where it
// began, so that moving back gives back what was there.
type drag struct {
	pointer int
	handle  draw.Handle // as it was when it was taken
	wall    wallfile.Wall
	x, y    float64
	window  draw.Window // of the picture then, so that nothing is rescaled
}

func (p *page) onGrab(ctx app.Context, e app.Event) {
	defer p.caught()
	path := data(ctx, "handle")
	h, ok := findHandle(path, p.seen.Picture.Handles)
	if button := e.Get("button"); !ok || p.drag != nil || button.Truthy() {
		return
	}
	p.drag = &drag{
		pointer: e.Get("pointerId").Int(), handle: h, wall: *p.wall(),
		x: e.Get("clientX").Float(), y: e.Get("clientY").Float(), window: p.seen.Picture.Window,
	}
	ctx.JSSrc().Call("setPointerCapture", p.drag.pointer)
	ctx.JSSrc().Call("focus", map[string]any{"preventScroll": true})
	e.PreventDefault()
}

func (p *page) onDrag(ctx app.Context, e app.Event) {
	defer p.caught()
	if p.drag == nil || e.Get("pointerId").Int() != p.drag.pointer {
		ctx.PreventUpdate()
		return
	}
	e.PreventDefault()
	p.dragTo(ctx, e.Get("clientX").Float(), e.Get("clientY").Float())
}

// dragTo moves the handle to a place on the screen.
func (p *page) dragTo(ctx app.Context, x, y float64) {
	d := p.drag
	*p.wall() = view.Drag(d.wall, d.handle, d.pixels(x, y)*p.scale(), p.speaker)
	p.changed(ctx)
}

// pixels is how far the pointer has gone along the handle's way.
func (d *drag) pixels(x, y float64) float64 {
	if d.handle.Vertical {
		return y - d.y
	}
	return x - d.x
}

// scale is how many pixels of the picture one on the screen is: the whole of it
// is shown, however little room there is.
func (p *page) scale() float64 {
	return max(p.seen.Picture.Width/p.size.width, p.seen.Picture.Height/p.size.height)
}

func (p *page) onDrop(ctx app.Context, e app.Event) {
	defer p.caught()
	if p.drag == nil || e.Get("pointerId").Int() != p.drag.pointer {
		ctx.PreventUpdate()
		return
	}
	p.drag = nil
	p.changed(ctx)
}

// onHandleKey moves a handle by keys: arrows by an inch or 10 mm, page keys by
// a foot or 100 mm, home and end to the limits.
func (p *page) onHandleKey(ctx app.Context, e app.Event) {
	defer p.caught()
	h, ok := findHandle(data(ctx, "handle"), p.seen.Picture.Handles)
	move, known := handleKeys[e.Get("key").String()]
	if !ok || !known {
		ctx.PreventUpdate()
		return
	}
	e.PreventDefault()
	*p.wall() = view.Key(*p.wall(), h, move, p.speaker)
	p.changed(ctx)
}

var handleKeys = map[string]view.Move{
	"ArrowUp": view.More, "ArrowRight": view.More, "ArrowDown": view.Less, "ArrowLeft": view.Less,
	"PageUp": view.MuchMore, "PageDown": view.MuchLess, "Home": view.Least, "End": view.Most,
}
