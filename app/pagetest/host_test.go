//go:build browser

package pagetest

import (
	"net"
	"net/http"
	"strings"
	"sync"
	"testing"

	"standingbeam/app/site"
)

// host serves a built site on a port of its own and can be stopped, started
// again at the same address, and given another version to serve.
type host struct {
	t    *testing.T
	path string // the folder of the site, "/" or "/tools/x/"
	addr string

	mu      sync.Mutex
	handler http.Handler
	maxAge  string // Cache-Control, when the host lets files be stored
	asked   []string
	server  *http.Server
}

// newHost serves the folder dir below path until the test ends.
func newHost(t *testing.T, dir, path string) *host {
	t.Helper()
	h := &host{t: t, path: path, addr: "localhost:0"}
	h.serve(dir)
	h.start()
	t.Cleanup(h.stop)
	return h
}

// url is the address of the page, with what is to follow it.
func (h *host) url(rest string) string { return "http://" + h.addr + h.path + rest }

// serve changes the site that is served, as putting a new version there does.
func (h *host) serve(dir string) {
	h.t.Helper()
	handler, err := site.Handler(dir)
	if err != nil {
		h.t.Fatal(err)
	}
	h.mu.Lock()
	defer h.mu.Unlock()
	h.handler = http.StripPrefix(strings.TrimSuffix(h.path, "/"), handler)
}

// storable makes the host tell browsers to keep files for some time.
func (h *host) storable(cacheControl string) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.maxAge = cacheControl
}

// requests returns the paths asked for since the last call.
func (h *host) requests() []string {
	h.mu.Lock()
	defer h.mu.Unlock()
	asked := h.asked
	h.asked = nil
	return asked
}

func (h *host) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	h.mu.Lock()
	handler, maxAge := h.handler, h.maxAge
	h.asked = append(h.asked, r.URL.RequestURI())
	h.mu.Unlock()
	if !strings.HasPrefix(r.URL.Path, h.path) {
		http.NotFound(w, r)
		return
	}
	if maxAge != "" {
		w = &storableWriter{w, maxAge}
	}
	handler.ServeHTTP(w, r)
}

type storableWriter struct {
	http.ResponseWriter
	cacheControl string
}

func (w *storableWriter) WriteHeader(status int) {
	w.Header().Set("Cache-Control", w.cacheControl)
	w.ResponseWriter.WriteHeader(status)
}

func (w *storableWriter) Write(data []byte) (int, error) {
	w.Header().Set("Cache-Control", w.cacheControl)
	return w.ResponseWriter.Write(data)
}

// start listens; after a stop, at the same address as before.
func (h *host) start() {
	h.t.Helper()
	listener, err := net.Listen("tcp", h.addr)
	if err != nil {
		h.t.Fatal(err)
	}
	_, port, err := net.SplitHostPort(listener.Addr().String())
	if err != nil {
		h.t.Fatal(err)
	}
	h.addr = "localhost:" + port
	h.server = &http.Server{Handler: h}
	go func(server *http.Server) { _ = server.Serve(listener) }(h.server) // ends by stop
}

// stop ends the server and every connection: the network is gone.
func (h *host) stop() {
	if h.server != nil {
		_ = h.server.Close() // nothing is to be done about a failure
		h.server = nil
	}
}
