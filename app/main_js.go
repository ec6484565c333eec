package main

import "github.com/maxence-charriere/go-app/v10/pkg/app"

func main() {
	routes()
	app.RunWhenOnBrowser()
}
