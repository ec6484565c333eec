//go:build !js

package site

import (
	"strconv"
	"strings"

	"standingbeam/app/view"
)

// forOthers is the folder of what stands in pages of other sites. The page
// itself does not need it, so the worker does not keep it.
const forOthers = "embed/"

// Size of the pictures that stand for the calculator where it cannot run.
const stillWidth, stillHeight = 720, 480

// stills are pictures of the example in each way to be held, whole files that
// need nothing beside them.
func stills(style []byte) map[string][]byte {
	files := map[string][]byte{}
	for _, card := range conditions() {
		wall := view.Example()
		view.Choose(&wall, "condition", card)
		v, _ := view.New(view.Form{Wall: wall, Width: stillWidth, Height: stillHeight}, view.Good{})
		files[forOthers+"wall-"+strings.ReplaceAll(card, " ", "-")+".svg"] = []byte(still(v.Picture, style))
	}
	return files
}

func conditions() (all []string) {
	v, _ := view.New(view.Form{Wall: view.Example(), Width: stillWidth, Height: stillHeight}, view.Good{})
	for _, card := range v.Cards {
		all = append(all, card.Value)
	}
	return all
}

// still makes a picture of the page a file of its own: its size, its title,
// its style and its ground.
func still(p view.Picture, style []byte) string {
	open, rest, _ := strings.Cut(p.SVG, ">")
	open = strings.Replace(open, ` aria-hidden="true" focusable="false"`, ` role="img" width="`+strconv.Itoa(stillWidth)+`" height="`+strconv.Itoa(stillHeight)+`"`, 1)
	return open + "><title>" + escaped(p.Title) + "</title><desc>" + escaped(p.Desc) + "</desc><style>" + escaped(string(style)) +
		".picture .p-grip { display: none; } svg { background: #fffdf8; font-family: system-ui, -apple-system, \"Segoe UI\", Roboto, \"Noto Sans\", \"DejaVu Sans\", sans-serif; }</style>" + rest
}

func escaped(text string) string {
	return strings.NewReplacer("&", "&amp;", "<", "&lt;").Replace(text)
}
