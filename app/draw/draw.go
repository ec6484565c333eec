// Package draw makes the picture of a wall: a section, true to scale, with
// the ground's push, the supports, the bars where they lie, and the bending
// curve on the side that goes into tension, against what plain concrete and
// the bars carry.
//
// [Section] is a pure function of the answer. It returns the markup, the
// handles by which the wall is changed, the space that every label takes, a
// text that says what the picture shows and a table of its values. Colours and
// type are left to the page: every shape carries a class, none a colour.
//
// Labels never cover each other, a handle or the picture's edge. A label that
// finds no place is left out, the least first, and so is a lesser one that
// would lie over much of the drawing; the table still holds its value. A low
// picture, on a phone that lies, leaves out the footing's dimension and
// handles.
package draw

import (
	"standingbeam/app/words"
	"standingbeam/calc"
	"standingbeam/calc/units"
)

// Show is which curve stands beside the wall.
type Show uint8

// Curves.
const (
	Bending Show = iota
	Shear
	Deflected
)

// Options say how a picture is wanted.
type Options struct {
	Width, Height float64 // of the picture in CSS pixels
	Speaker       words.Speaker
	Show          Show
	Stage         calc.Stage // "" = finished
	// Hold is the window of an earlier picture of the same wall. While a thumb
	// drags, the caller passes that of the picture at the drag's start, so that
	// nothing is rescaled under the finger. It is given up when the wall no
	// longer fits it.
	Hold Window
	// ID is the id of the svg element, "" = "picture". The patterns' ids begin
	// with it.
	ID string
}

// Handle is a dot by which the wall is changed, on the dimension it changes.
// Moving it by p pixels (to the right, or down) changes the value by
// Sign·p/PxPerInch inches.
type Handle struct {
	ID        string // field of the wall file: "height", "grade.a", "footing.width"
	X, Y      float64
	Vertical  bool // it moves up and down
	PxPerInch float64
	Sign      float64
	Name      string // what it is called when read aloud
	Value     string // its value in words
	// Limits and the step of the arrow keys.
	Now, Min, Max, Step units.Length
}

// Picture is a drawn wall.
type Picture struct {
	SVG     string // a whole svg element
	Handles []Handle
	Boxes   []Box    // every line of type
	Lost    []string // labels that found no place
	Title   string
	Desc    string
	Head    []string   // of the table
	Rows    [][]string // values at stations up the wall
	Window  Window     // for Options.Hold
}

// picture is one picture while it is being drawn.
type picture struct {
	r  *calc.Result
	in *calc.Input
	st *calc.StageResult // nil when no number is offered
	o  Options
	sp words.Speaker
	frame
	held    bool // a floor or a slab holds the top in this stage
	curve   curve
	push    [2]profile // of side A and of side B
	until   spot       // the left end of the label of today's fill, and its line; y = 0: none
	s       sheet
	p       placer
	labels  []label
	handles []Handle
}

// Section draws the wall of an answer.
func Section(r calc.Result, o Options) Picture {
	p := newPicture(&r, o)
	p.defs()
	p.ground()
	p.slabs()
	p.bands()
	p.ghost()
	p.bearing()
	p.concrete()
	p.pushes()
	p.bars()
	p.today()
	p.drawCurve()
	p.supports()
	p.dimensions()
	p.inset()
	p.p.place(p.labels)
	boxes := p.s.letter(p.p.done)
	p.s.raw("</svg>")
	out := Picture{SVG: string(p.s.b), Handles: p.handles, Boxes: boxes, Lost: p.p.lost, Window: p.window}
	out.Title, out.Desc = p.describe()
	out.Head, out.Rows = p.table()
	return out
}

func newPicture(r *calc.Result, o Options) *picture {
	p := &picture{r: r, in: &r.Input, o: o, sp: o.Speaker.For(r.Input.Condition)}
	if p.o.ID == "" {
		p.o.ID = "picture"
	}
	p.o.Width, p.o.Height = max(p.o.Width, 240), max(p.o.Height, 220)
	p.st = stage(r, o.Stage)
	p.held = p.st != nil && len(p.st.Reactions) > 1 || p.st == nil && p.in.Condition != calc.FreeTop
	p.readPush()
	p.readCurve()
	p.fit()
	p.s.b = make([]byte, 0, 24<<10)
	p.p = placer{w: p.o.Width, h: p.o.Height, inked: newInked(p.o.Width, p.o.Height)}
	p.s.raw(`<svg id="` + p.o.ID + `" class="picture" xmlns="http://www.w3.org/2000/svg" aria-hidden="true" focusable="false" viewBox="0 0 `)
	p.s.b = appendNumber(p.s.b, p.o.Width)
	p.s.raw(" ")
	p.s.b = appendNumber(p.s.b, p.o.Height)
	p.s.raw(`">`)
	return p
}

// stage finds the stage that is wanted, else the finished one, else the first.
func stage(r *calc.Result, want calc.Stage) *calc.StageResult {
	if want == "" {
		want = calc.Finished
	}
	for i := range r.Stages {
		if r.Stages[i].Name == want {
			return &r.Stages[i]
		}
	}
	if len(r.Stages) > 0 {
		return &r.Stages[0]
	}
	return nil
}
