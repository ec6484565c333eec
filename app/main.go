// Command app is Standing Beam, a calculator for the foundation walls of
// houses. Built for the browser it is the page; built natively it writes and
// serves that page and answers wall files on the command line.
package main

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// pagePath matches the addresses at which the one page answers, relative to
// the folder it is served from. A wall lives in the fragment, never in the
// path.
const pagePath = `^/(index\.html)?$`

// routes ties the page to its address. Both the browser and the prerendering
// use it.
func routes() {
	app.RouteWithRegexp(pagePath, func() app.Composer { return &front{} })
}
