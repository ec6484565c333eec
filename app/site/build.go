//go:build !js

// Package site writes the static site and serves it on this machine. The site
// is one folder of files that any host can serve, at the root of an origin or
// under a path: no file holds an absolute address.
package site

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"standingbeam/app/site/lean"
)

// Options say what a site is built from and where it goes.
type Options struct {
	Program string // the WebAssembly program
	Web     string // the folder of hand-written files
	Out     string // the folder to write; replaced as a whole
	Cache   string // compressed files of earlier builds; may be empty
	Quick   bool   // compress less well, in a fraction of the time
	Names   bool   // leave the names of functions and the lines in the program
}

// RunBuild is the build subcommand.
func RunBuild(args []string, stdout, stderr io.Writer) int {
	var o Options
	flags := flag.NewFlagSet("build", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.StringVar(&o.Program, "wasm", ".cache/app.wasm", "the WebAssembly program")
	flags.StringVar(&o.Web, "web", "web", "the folder of hand-written files")
	flags.StringVar(&o.Out, "out", "dist", "the folder to write")
	flags.StringVar(&o.Cache, "cache", ".cache/compressed", "where compressed files of earlier builds are kept")
	flags.BoolVar(&o.Quick, "quick", false, "compress less well, in a fraction of the time")
	flags.BoolVar(&o.Names, "names", false, "leave in what names the place of a fault: a larger program")
	if err := flags.Parse(args); err != nil || flags.NArg() > 0 {
		return 2
	}
	version, err := Build(o)
	if err != nil {
		fmt.Fprintln(stderr, "build:", err)
		return 1
	}
	fmt.Fprintf(stdout, "%s: version %s\n", o.Out, version)
	return 0
}

// Build writes the site and returns its version.
func Build(o Options) (string, error) {
	program, err := os.ReadFile(o.Program)
	if err != nil {
		return "", fmt.Errorf("the program is missing, build it first: %w", err)
	}
	if !o.Names {
		program, err = lean.Program(program)
	}
	if errors.Is(err, lean.ErrNames) {
		fmt.Fprintln(os.Stderr, "build:", err)
	} else if err != nil {
		return "", fmt.Errorf("the program: %w", err)
	}
	web, err := readFolder(o.Web)
	if err != nil {
		return "", err
	}
	made, err := prerender()
	if err != nil {
		return "", fmt.Errorf("prerendering: %w", err)
	}
	files, version, err := assemble(program, web, made)
	if err != nil {
		return "", err
	}
	packed, err := compressAll(files, o.Cache, o.Quick)
	if err != nil {
		return "", fmt.Errorf("compressing: %w", err)
	}
	return version, replaceFolder(o.Out, files, packed)
}

// readFolder reads every file below dir, named by its path with slashes.
func readFolder(dir string) (map[string][]byte, error) {
	files := map[string][]byte{}
	err := filepath.WalkDir(dir, func(path string, entry os.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		name, err := filepath.Rel(dir, path)
		if err != nil {
			return err
		}
		files[filepath.ToSlash(name)], err = os.ReadFile(path)
		return err
	})
	return files, err
}

// replaceFolder writes the files beside dir and then puts them in its place,
// so that a reader never meets half a site.
func replaceFolder(dir string, sets ...map[string][]byte) error {
	next, last := dir+".new", dir+".old"
	if err := removeAll(next, last); err != nil {
		return err
	}
	for _, files := range sets {
		for name, data := range files {
			path := filepath.Join(next, filepath.FromSlash(name))
			if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
				return err
			}
			if err := os.WriteFile(path, data, 0o644); err != nil {
				return err
			}
		}
	}
	if err := os.Rename(dir, last); err != nil && !os.IsNotExist(err) {
		return err
	}
	if err := os.Rename(next, dir); err != nil {
		return err
	}
	return removeAll(last)
}

func removeAll(dirs ...string) error {
	for _, dir := range dirs {
		if err := os.RemoveAll(dir); err != nil {
			return err
		}
	}
	return nil
}
