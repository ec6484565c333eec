//go:build !js

package site

import (
	"crypto/sha256"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"net"
	"net/http"
	"os"
	"path"
	"strconv"
	"strings"
	"time"
)

// RunServe is the serve subcommand. The port is PORT in the environment
// unless -port says otherwise.
func RunServe(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("serve", flag.ContinueOnError)
	flags.SetOutput(stderr)
	dir := flags.String("dir", "dist", "the folder to serve")
	port := flags.String("port", os.Getenv("PORT"), "the port on this machine")
	if err := flags.Parse(args); err != nil || flags.NArg() > 0 {
		return 2
	}
	if *port == "" {
		*port = "8000"
	}
	if _, err := os.Stat(path.Join(*dir, "index.html")); err != nil {
		fmt.Fprintf(stderr, "serve: %s holds no site, build it first: %v\n", *dir, err)
		return 1
	}
	handler, err := Handler(*dir)
	if err != nil {
		fmt.Fprintln(stderr, "serve:", err)
		return 1
	}
	fmt.Fprintf(stdout, "http://localhost:%s\n", *port)
	server := &http.Server{
		Addr:              net.JoinHostPort("localhost", *port),
		Handler:           handler,
		ReadHeaderTimeout: 10 * time.Second,
	}
	if err := server.ListenAndServe(); !errors.Is(err, http.ErrServerClosed) {
		fmt.Fprintln(stderr, "serve:", err)
		return 1
	}
	return 0
}

// Handler serves the files of dir and nothing outside of it, links included.
// It sends the .br or .gz beside a file to those who accept it, and has every
// file asked for again with its tag.
func Handler(dir string) (http.Handler, error) {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, err
	}
	return files{root.FS()}, nil
}

type files struct{ fs fs.FS }

func (f files) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		w.Header().Set("Allow", "GET, HEAD")
		http.Error(w, "only GET and HEAD", http.StatusMethodNotAllowed)
		return
	}
	name := strings.TrimPrefix(r.URL.Path, "/")
	if name == "" || strings.HasSuffix(name, "/") {
		name += "index.html"
	}
	if !fs.ValidPath(name) {
		http.NotFound(w, r)
		return
	}
	data, encoding, err := f.read(name, r.Header.Get("Accept-Encoding"))
	if err != nil {
		http.NotFound(w, r)
		return
	}
	header := w.Header()
	header.Set("Content-Type", mediaType(name))
	header.Set("Cache-Control", "no-cache")
	header.Set("Vary", "Accept-Encoding")
	header.Set("X-Content-Type-Options", "nosniff")
	if encoding != "" {
		header.Set("Content-Encoding", encoding)
	}
	etag := fmt.Sprintf(`"%x"`, sha256.Sum256(data))
	header.Set("ETag", etag)
	if r.Header.Get("If-None-Match") == etag {
		w.WriteHeader(http.StatusNotModified)
		return
	}
	header.Set("Content-Length", strconv.Itoa(len(data)))
	w.WriteHeader(http.StatusOK)
	if r.Method == http.MethodGet {
		_, _ = w.Write(data) // a reader who has gone is no concern of ours
	}
}

// read returns the file as it is to be sent, with its content encoding.
func (f files) read(name, accepted string) ([]byte, string, error) {
	plain, err := fs.ReadFile(f.fs, name)
	if err != nil {
		return nil, "", err
	}
	for _, way := range []struct{ encoding, ending string }{{"br", ".br"}, {"gzip", ".gz"}} {
		if !accepts(accepted, way.encoding) {
			continue
		}
		if data, err := fs.ReadFile(f.fs, name+way.ending); err == nil {
			return data, way.encoding, nil
		}
	}
	return plain, "", nil
}

// accepts tells whether an Accept-Encoding header names an encoding.
func accepts(header, encoding string) bool {
	for part := range strings.SplitSeq(header, ",") {
		name, quality, _ := strings.Cut(strings.TrimSpace(part), ";")
		if strings.TrimSpace(name) == encoding && strings.ReplaceAll(quality, " ", "") != "q=0" {
			return true
		}
	}
	return false
}
