//go:build !js

package main

import (
	"fmt"
	"io"
	"os"

	"standingbeam/app/site"
	"standingbeam/app/words"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

const usage = `usage:
  app build [-wasm FILE] [-web DIR] [-out DIR] [-quick]   write the static site
  app serve [-dir DIR] [-port N]                           serve it on this machine
  app solve [-json] [-units us|metric] [-language en|es] FILE...   compute wall files
`

func main() {
	routes()
	for _, code := range words.Languages()[1:] { // what the page looks like at first to who reads it
		app.Route("/"+code, func() app.Composer { return &front{lang: code} })
	}
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// run carries out one subcommand and returns the exit status: 2 when it was
// not understood.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	if len(args) == 0 {
		fmt.Fprint(stderr, usage)
		return 2
	}
	switch args[0] {
	case "build":
		return site.RunBuild(args[1:], stdout, stderr)
	case "serve":
		return site.RunServe(args[1:], stdout, stderr)
	case "solve":
		return runSolve(args[1:], stdin, stdout, stderr)
	}
	fmt.Fprintf(stderr, "unknown command %q\n%s", args[0], usage)
	return 2
}
