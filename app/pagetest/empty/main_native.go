//go:build !js

package main

import (
	"fmt"
	"os"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// main writes the framework's own static site into the folder named.
func main() {
	routes()
	icon := app.Icon{Default: "/web/icon.svg", Large: "/web/icon.svg", SVG: "/web/icon.svg"}
	err := app.GenerateStaticWebsite(os.Args[1], &app.Handler{Name: "Empty", Version: "1", Icon: icon})
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func openStorage() {}
