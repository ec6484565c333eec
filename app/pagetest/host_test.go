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
	old     http.Handler // an earlier version, of which oldFile is still served
	oldFile string
	maxAge  string        // Cache-Control, when the host lets files be stored
	odd     bool          // sends the program as an unknown type, and nothing compressed
	plain   bool          // sends nothing compressed
	half    chan struct{} // when set, half of the program waits until it is closed
	line    *line         // when set, everything goes over it
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
	handler := h.folder(dir)
	h.mu.Lock()
	defer h.mu.Unlock()
	h.handler = handler
}

// serveOld has one file come from another folder, as while a host is being
// changed. An empty dir ends that.
func (h *host) serveOld(dir, file string) {
	h.t.Helper()
	var handler http.Handler
	if dir != "" {
		handler = h.folder(dir)
	}
	h.mu.Lock()
	defer h.mu.Unlock()
	h.old, h.oldFile = handler, file
}

func (h *host) folder(dir string) http.Handler {
	h.t.Helper()
	handler, err := site.Handler(dir)
	if err != nil {
		h.t.Fatal(err)
	}
	return http.StripPrefix(strings.TrimSuffix(h.path, "/"), handler)
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
	handler, out := h.handler, &hostWriter{ResponseWriter: w, cacheControl: h.maxAge, odd: h.odd}
	if strings.HasSuffix(r.URL.Path, "/app.wasm") {
		out.half = h.half
	}
	if h.line != nil {
		out.ResponseWriter = &lineWriter{ResponseWriter: w, line: h.line}
	}
	if h.old != nil && r.URL.Path == h.oldFile {
		handler = h.old
	}
	asked := r.URL.RequestURI()
	if r.Method != http.MethodGet || r.ContentLength != 0 {
		asked = r.Method + " with a body " + asked
	}
	h.asked = append(h.asked, asked)
	h.mu.Unlock()
	if h.line != nil {
		h.line.begin(r.URL.Path)
	}
	if !strings.HasPrefix(r.URL.Path, h.path) {
		http.NotFound(w, r)
		return
	}
	if out.odd || h.plain {
		r.Header.Del("Accept-Encoding")
	}
	handler.ServeHTTP(out, r)
}

// hostWriter changes what a host says about its files.
type hostWriter struct {
	http.ResponseWriter
	cacheControl string
	odd          bool
	half         chan struct{}
}

func (w *hostWriter) Write(data []byte) (int, error) {
	if w.half == nil {
		return w.ResponseWriter.Write(data)
	}
	first, err := w.ResponseWriter.Write(data[:len(data)/2])
	if err != nil {
		return first, err
	}
	w.ResponseWriter.(http.Flusher).Flush()
	<-w.half
	second, err := w.ResponseWriter.Write(data[len(data)/2:])
	return first + second, err
}

func (w *hostWriter) WriteHeader(status int) {
	if w.cacheControl != "" {
		w.Header().Set("Cache-Control", w.cacheControl)
	}
	if w.odd && w.Header().Get("Content-Type") == "application/wasm" {
		w.Header().Set("Content-Type", "application/octet-stream")
	}
	w.ResponseWriter.WriteHeader(status)
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
