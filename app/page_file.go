package main

import (
	"strconv"
	"strings"

	"standingbeam/app/view"
	"standingbeam/app/wallfile"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// onExport offers every wall as a file of the kind that solve reads.
func (p *page) onExport(ctx app.Context, e app.Event) {
	defer p.caught()
	p.export()
}

func (p *page) export() { download("standing-beam.json", p.file()) }

// file is the wall file of every wall, whole with their units.
func (p *page) file() []byte {
	walls := make([]wallfile.Wall, 0, len(p.walls))
	for _, k := range p.walls {
		view.CommitAll(&k.wall, p.speaker)
		walls = append(walls, k.wall)
	}
	return wallfile.Encode(walls)
}

// download hands bytes to the browser as a file to be saved.
func download(name string, data []byte) {
	window := app.Window()
	array := window.Get("Uint8Array").New(len(data))
	app.CopyBytesToJS(array, data)
	blob := window.Get("Blob").New([]any{array}, map[string]any{"type": "application/json"})
	address := window.Get("URL").Call("createObjectURL", blob)
	link := window.Get("document").Call("createElement", "a")
	link.Set("href", address)
	link.Set("download", name)
	link.Call("click")
	window.Call("setTimeout", window.Get("URL").Get("revokeObjectURL").Call("bind", window.Get("URL"), address), 60_000)
}

// onImport opens the device's list of files.
func (p *page) onImport(ctx app.Context, e app.Event) {
	defer p.caught()
	p.askFile(ctx)
}

func (p *page) askFile(app.Context) { app.Window().GetElementByID("import-file").Call("click") }

func (p *page) onFile(ctx app.Context, e app.Event) {
	defer p.caught()
	files := ctx.JSSrc().Get("files")
	if files.Length() == 0 {
		return
	}
	input := ctx.JSSrc()
	files.Index(0).Call("text").Then(func(text app.Value) {
		content := text.String()
		ctx.Dispatch(func(ctx app.Context) {
			defer p.caught()
			input.Set("value", "")
			p.take(ctx, content)
		})
	})
}

// take adds the walls of a file, or says why it cannot.
func (p *page) take(ctx app.Context, content string) {
	walls, problems := wallfile.Decode(strings.NewReader(content))
	if len(problems) > 0 {
		lines := make([]string, 0, 3)
		for _, problem := range problems[:min(3, len(problems))] {
			lines = append(lines, problem.Line(p.speaker))
		}
		p.tell(ctx, told{text: strings.Join(lines, " ")})
		return
	}
	p.open["walls"] = len(walls) > 1
	p.add(ctx, walls...)
	if len(walls) == 1 {
		p.focusOn("#walls")
		p.tell(ctx, told{text: p.speaker.Sentence("page.imported-one", walls[0].Name)})
		return
	}
	p.tell(ctx, told{text: p.speaker.Sentence("page.imported", strconv.Itoa(len(walls)))})
}
