package main

import (
	"context"

	"github.com/hack-pad/hackpadfs/indexeddb"
	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

func main() {
	routes()
	app.RunWhenOnBrowser()
}

func openStorage() {
	if _, err := indexeddb.NewFS(context.Background(), "empty", indexeddb.Options{}); err != nil {
		app.Log(err)
	}
}
