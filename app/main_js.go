package main

import (
	"runtime/debug"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// moreGarbage lets the heap of a few megabytes grow to some twenty before it is
// cleared, in percent: clearing it holds up what a thumb moves.
const moreGarbage = 400

func main() {
	debug.SetGCPercent(moreGarbage)
	routes()
	app.RunWhenOnBrowser()
}
