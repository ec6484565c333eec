//go:build browser

package pagetest

import (
	"bytes"
	"compress/gzip"
	"io"
	"net/http"
	"os"
	"path"
	"path/filepath"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"
)

// The files that are described for nginx and Apache make real servers send
// every file of the site as it wants to be sent, under a path, and the page
// loads from them and then works without them.
func TestHosting(t *testing.T) {
	for name, start := range map[string]func(*testing.T, string) *server{"nginx": runNginx, "apache": runApache} {
		t.Run(name, func(t *testing.T) {
			www := t.TempDir()
			if err := os.Chmod(www, 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.MkdirAll(www+"/tools", 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.CopyFS(www+"/tools/beam", os.DirFS(distDir)); err != nil {
				t.Fatal(err)
			}
			s := start(t, www)
			s.sendsAll(www + "/tools/beam")
			s.sendsElse()
			p := openTab(t, phone)
			p.open(s.url("/tools/beam/"))
			p.offlineReady()
			p.sameSite(distDir)
			s.stop()
			p.reload()
			p.works()
		})
	}
}

// get asks for a path.
func (s *server) get(path string, headers ...string) (*http.Response, []byte) {
	s.t.Helper()
	request, err := http.NewRequest(http.MethodGet, s.url(path), nil)
	if err != nil {
		s.t.Fatal(err)
	}
	request.Header.Set("Accept-Encoding", "identity")
	for i := 0; i+1 < len(headers); i += 2 {
		request.Header.Set(headers[i], headers[i+1])
	}
	response, err := http.DefaultTransport.RoundTrip(request)
	if err != nil {
		s.t.Fatal(err)
	}
	defer response.Body.Close()
	body, err := io.ReadAll(response.Body)
	if err != nil {
		s.t.Fatal(err)
	}
	return response, body
}

// typesWanted of the files of the site, by the end of their names.
var typesWanted = map[string]string{
	".html": "text/html; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".css": "text/css; charset=utf-8", ".txt": "text/plain; charset=utf-8",
	".svg": "image/svg+xml", ".png": "image/png", ".woff2": "font/woff2", ".wasm": "application/wasm", ".webmanifest": "application/manifest+json", ".json": "application/json",
}

// sendsAll asks for every file of the site in every packing.
func (s *server) sendsAll(dir string) {
	s.t.Helper()
	seen := 0
	err := filepath.WalkDir(dir, func(name string, entry os.DirEntry, err error) error {
		if err != nil || entry.IsDir() || strings.HasSuffix(name, ".br") || strings.HasSuffix(name, ".gz") || entry.Name() == ".htaccess" {
			return err
		}
		seen++
		rest, err := filepath.Rel(dir, name)
		if err != nil {
			return err
		}
		s.sends("/tools/beam/"+filepath.ToSlash(rest), name)
		return nil
	})
	if err != nil || seen < 15 {
		s.t.Fatalf("%d files, %v", seen, err)
	}
	s.sends("/tools/beam/", dir+"/index.html")
	s.sends("/tools/beam/?q=1", dir+"/index.html")
	s.sends("/tools/beam/web/app.css?v=abc", dir+"/web/app.css")
}

func (s *server) sends(address, file string) {
	s.t.Helper()
	for accept, want := range map[string]string{
		"identity": "", "gzip": "gzip", "gzip, deflate, br": "br", "gzip, deflate, br, zstd": "br", "br;q=1.0, gzip;q=0.5": "br", "br;q=0, gzip": "gzip", "br;q=0.0": "", "gzip;q=0": "",
	} {
		if _, err := os.Stat(file + ".br"); err != nil {
			want = ""
		}
		response, body := s.get(address, "Accept-Encoding", accept)
		if got := response.Header.Get("Content-Encoding"); got != want || response.StatusCode != http.StatusOK {
			s.t.Errorf("%s for %q: status %d, packed %q, want %q", address, accept, response.StatusCode, got, want)
			continue
		}
		if !bytes.Equal(unpacked(s.t, body, want), readFile(s.t, file)) {
			s.t.Errorf("%s for %q: other bytes than in the file", address, accept)
		}
		s.headers(address, response.Header, typesWanted[path.Ext(file)])
		if accept != "identity" && accept != "gzip, deflate, br" {
			continue
		}
		again, body := s.get(address, "Accept-Encoding", accept, "If-None-Match", response.Header.Get("ETag"))
		if again.StatusCode != http.StatusNotModified || len(body) > 0 {
			s.t.Errorf("%s for %q: asked again with its tag it is sent again, status %d", address, accept, again.StatusCode)
		}
	}
}

func (s *server) headers(address string, got http.Header, kind string) {
	s.t.Helper()
	want := map[string]string{
		"Content-Type": kind, "Cache-Control": "no-cache", "Vary": "Accept-Encoding", "X-Content-Type-Options": "nosniff", "Referrer-Policy": "no-referrer",
		"Content-Security-Policy": "frame-ancestors *", "Permissions-Policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
		"Access-Control-Allow-Origin": "", "Cross-Origin-Resource-Policy": "", "X-Frame-Options": "", "Set-Cookie": "",
	}
	if strings.Contains(address, "/embed/") {
		want["Access-Control-Allow-Origin"], want["Cross-Origin-Resource-Policy"] = "*", "cross-origin"
	}
	for name, value := range want {
		if all := strings.Join(got.Values(name), " | "); !strings.EqualFold(all, value) {
			s.t.Errorf("%s: %s is %q, want %q", address, name, all, value)
		}
	}
}

func unpacked(t *testing.T, body []byte, encoding string) []byte {
	t.Helper()
	var r io.Reader = bytes.NewReader(body)
	switch encoding {
	case "br":
		r = brotli.NewReader(r)
	case "gzip":
		z, err := gzip.NewReader(r)
		if err != nil {
			t.Fatal(err)
		}
		r = z
	}
	out, err := io.ReadAll(r)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// sendsElse asks for what is no file of the site.
func (s *server) sendsElse() {
	s.t.Helper()
	if response, _ := s.get("/tools/beam"); response.StatusCode != http.StatusMovedPermanently || !strings.HasSuffix(response.Header.Get("Location"), "/tools/beam/") {
		s.t.Errorf("without its stroke the folder leads to %q, status %d", response.Header.Get("Location"), response.StatusCode)
	}
	for _, address := range []string{"/tools/beam/none.js", "/tools/beam/web/none.wasm", "/none", "/tools/beam/../../../../etc/hostname"} {
		if response, _ := s.get(address, "Accept-Encoding", "br"); response.StatusCode != http.StatusNotFound && response.StatusCode != http.StatusBadRequest {
			s.t.Errorf("%s: status %d", address, response.StatusCode)
		}
	}
	for _, folder := range []string{"/tools/beam/web/", "/tools/"} {
		if response, body := s.get(folder); folder == "/tools/beam/web/" && response.StatusCode < 400 {
			s.t.Errorf("%s is listed, status %d:\n%.200s", folder, response.StatusCode, body)
		}
	}
}
