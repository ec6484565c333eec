package main

import (
	"errors"
	"fmt"
	"io"
	"iter"
	"os"

	"standingbeam/app/entry"
	"standingbeam/app/report"
	"standingbeam/app/wallfile"
	"standingbeam/app/words"
	"standingbeam/calc"
)

// solveRequest is what the command line asks for.
type solveRequest struct {
	json  bool
	s     words.Speaker
	files []string
}

// readSolve reads the command line; false = not understood.
func readSolve(args []string) (r solveRequest, ok bool) {
	for len(args) > 0 {
		switch args[0] {
		case "-json", "--json":
			r.json = true
		case "-units", "--units":
			if len(args) < 2 {
				return r, false
			}
			args = args[1:]
			switch args[0] {
			case "us":
				r.s.System = words.US
			case "metric":
				r.s.System = words.Metric
			default:
				return r, false
			}
		case "-language", "--language":
			if len(args) < 2 || words.LanguageFor(args[1]) != args[1] {
				return r, false
			}
			args = args[1:]
			r.s.Lang = args[0]
		default:
			if len(args[0]) > 1 && args[0][0] == '-' {
				return r, false
			}
			r.files = append(r.files, args[0])
		}
		args = args[1:]
	}
	return r, len(r.files) > 0
}

// runSolve answers the walls of the given files. Exit status 0: every wall was
// computed, whatever its checks say; 1: something was refused, each fault on
// one line of stderr and nothing on stdout; 2: the command was not understood.
func runSolve(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	r, ok := readSolve(args)
	if !ok {
		fmt.Fprintln(stderr, r.s.Word("solve.usage"))
		return 2
	}
	var walls []wallfile.Wall
	refused := false
	for _, name := range r.files {
		read, faults := decodeFile(name, stdin)
		for _, f := range faults {
			refused = true
			fmt.Fprintln(stderr, r.s.Sentence("problem.place", name, f.Line(r.s)))
		}
		walls = append(walls, read...)
	}
	if refused {
		return 1
	}
	write := report.Text
	if r.json {
		write = report.JSON
	}
	var failed error
	err := write(stdout, answers(walls, &failed), r.s)
	if err = errors.Join(err, failed); err != nil {
		fmt.Fprintln(stderr, err)
		return 1
	}
	return 0
}

// decodeFile reads the walls of one file, or says every fault in it.
func decodeFile(name string, stdin io.Reader) ([]wallfile.Wall, []wallfile.Problem) {
	if name == "-" {
		return wallfile.Decode(stdin)
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, []wallfile.Problem{{ID: "file-unread"}}
	}
	defer f.Close()
	return wallfile.Decode(f)
}

// answers computes one wall after the other. They were read without a fault,
// so that the calculation refuses none of them.
func answers(walls []wallfile.Wall, failed *error) iter.Seq[calc.Result] {
	return func(yield func(calc.Result) bool) {
		for _, w := range walls {
			in, _ := w.Input(entry.Options{Strict: true})
			result, err := calc.Explain(in)
			if err != nil {
				*failed = err
				return
			}
			if !yield(result) {
				return
			}
		}
	}
}
